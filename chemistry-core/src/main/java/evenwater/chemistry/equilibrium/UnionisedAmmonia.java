package evenwater.chemistry.equilibrium;

import evenwater.chemistry.kernel.AmmoniaKernel;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * The poisonous part of the ammonia, NH₃, from what a test finds as a whole, by the formula of the published tables.
 *
 * <p>For fresh water, without activities: it takes a pH and a temperature and nothing else of the water. The salts of a tap water lower the
 * true share by 5 to 11 % of itself; {@link Speciation#unionisedAmmonia} counts them. Raising the pH by one makes nearly ten times as much
 * NH₃ of the same ammonia: measure ammonia before anything that raises the pH.
 *
 * @see "K. Emerson, R. C. Russo, R. E. Lund and R. V. Thurston, J. Fish. Res. Board Can. 32 (1975) 2379 (coefficients read in public
 *     copies that cite it)"
 */
public final class UnionisedAmmonia {

    private UnionisedAmmonia() {}

    /**
     * Returns the un-ionised fraction: {@code 1 / (1 + 10^(pKa − pH))}, {@code pKa = 0.09018 + 2729.92 / T}.
     *
     * @param pH no unit; 0 to 14
     * @param temperature from 0 to 50 °C
     * @return NH₃ over NH₃ and NH₄⁺; no unit, 0 to 1; 0.00564 at pH 7 and 25 °C
     * @throws IllegalArgumentException if pH or temperature are out of range
     */
    public static double fraction(double pH, Quantity<Temperature> temperature) {
        WaterQuantity<Temperature> stated = Checked.temperature(temperature);
        double celsius = stated.in(WaterUnits.CELSIUS);
        if (!(celsius >= -Checked.ROUNDING && celsius <= 50 + Checked.ROUNDING)) {
            throw new IllegalArgumentException("temperature must be from 0 °C to 50 °C, but was " + stated);
        }
        return AmmoniaKernel.unionisedFraction(Checked.pH(pH), stated.in(WaterUnits.KELVIN));
    }

    /**
     * Returns the un-ionised part of a total ammonia.
     *
     * <p>Tests state ammonia as NH₃, as NH₄⁺ or as N; each is another unit of {@code totalAmmonia}. So is the answer:
     * {@code .to(Ion.AMMONIA.milligramPerLitreAs(Element.NITROGEN))} restates it as N.
     *
     * @param totalAmmonia NH₃ and NH₄⁺ together; 0 or more
     * @param pH no unit; 0 to 14
     * @param temperature from 0 to 50 °C
     * @return NH₃ in mg/L NH₃
     * @throws IllegalArgumentException if an argument is out of range or the amount is in the mass of another substance
     */
    public static AmountConcentration concentration(
            Quantity<AmountConcentration> totalAmmonia, double pH, Quantity<Temperature> temperature) {
        AmountConcentration total = ammonia(totalAmmonia, "totalAmmonia", "total ammonia");
        return total.to(Ion.AMMONIA.milligramPerLitre()).multiply(fraction(pH, temperature));
    }

    /**
     * Returns the total ammonia of which so much is un-ionised; what a limit for NH₃ means for a test.
     *
     * @param unionisedAmmonia NH₃; 0 or more
     * @param pH no unit; 0 to 14
     * @param temperature from 0 to 50 °C
     * @return NH₃ and NH₄⁺ together, in the unit of {@code unionisedAmmonia}
     * @throws IllegalArgumentException if an argument is out of range or the amount is in the mass of another substance
     */
    public static AmountConcentration totalAmmonia(
            Quantity<AmountConcentration> unionisedAmmonia, double pH, Quantity<Temperature> temperature) {
        AmountConcentration unionised = ammonia(unionisedAmmonia, "unionisedAmmonia", "un-ionised ammonia");
        return unionised.divide(fraction(pH, temperature));
    }

    private static AmountConcentration ammonia(Quantity<AmountConcentration> stated, String parameter, String what) {
        Objects.requireNonNull(stated, parameter);
        return Checked.notNegative(Ion.AMMONIUM.concentration(stated), what);
    }
}
