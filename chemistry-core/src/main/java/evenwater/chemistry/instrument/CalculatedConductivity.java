package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;

import evenwater.chemistry.equilibrium.CarbonateSystem;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.water.Water;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * The conductivity that the ions of a water have.
 *
 * <p>{@link #at25Celsius}, {@link #at} and {@link #of} follow the law of Onsager and Fuoss for mixtures, on free ions and charged pairs: within 1 %
 * rms of measured salts and 3 % rms of measured natural waters to 5000 µS/cm, 3 % high in sea water. {@link #byStandardMethods2510} is the estimate of
 * Standard Methods, for comparison.
 *
 * <p><b>What is not known.</b> Where a water states neither inorganic carbon nor pH, its alkalinity counts as HCO₃⁻. An ion of your own, of
 * which the {@linkplain evenwater.chemistry.kernel.LimitingConductivity table} knows nothing, counts as Na⁺ or Cl⁻ for each equivalent.
 *
 * <p><b>Unmeasured charge</b> carries nothing here. In a full analysis it is the error of a reading as often as a missing ion: counted as Na⁺
 * or Cl⁻ it makes 59 natural waters 2.0 % too high by the median, not counted 0.05 % too low. Where chloride or sodium were not measured at
 * all, the figure is a lower bound; let {@code Assumptions.carrying} of the analysis say who carries the charge.
 *
 * <p>Amounts are those of a litre at 25 °C; the expansion of the water is counted.
 */
public final class CalculatedConductivity {

    private CalculatedConductivity() {}

    /**
     * Returns the conductivity at 25 °C, whatever the temperature of the water: what a compensated meter means to show.
     *
     * @param water any water; a measured pH is read at its own temperature, above 50 °C with extrapolated constants
     * @return κ at 25 °C in µS/cm
     * @throws NoAnswerException if pH and alkalinity contradict each other, or the ionic strength is above 1 mol/L
     */
    public static Conductivity at25Celsius(Water water) {
        return at(water, WaterUnits.temperature(25, WaterUnits.CELSIUS));
    }

    /**
     * Returns the conductivity at a temperature: what a meter without compensation shows.
     *
     * @param water any water; a measured pH is read at its own temperature, above 50 °C with extrapolated constants
     * @param temperature of the water in the cell; 0 to 50 °C
     * @return κ at that temperature in µS/cm
     * @throws NoAnswerException if pH and alkalinity contradict each other, or the ionic strength is above 1 mol/L
     * @throws IllegalArgumentException if a temperature is out of range
     */
    public static Conductivity at(Water water, Quantity<Temperature> temperature) {
        Water known = withCarbon(Objects.requireNonNull(water, "water"));
        return of(Speciation.of(known.with(Checked.temperature(temperature))));
    }

    /**
     * Returns the conductivity of species that are known already, at their temperature.
     *
     * @param speciation of a water
     * @return κ at the temperature of that water in µS/cm
     */
    public static Conductivity of(Speciation speciation) {
        ConductingIons ions = ConductingIons.of(Objects.requireNonNull(speciation, "speciation"));
        return Conductivity.of(ions.byOnsagerFuoss(), MICROSIEMENS_PER_CENTIMETRE);
    }

    /**
     * Returns the estimate of Standard Methods 2510 A for 25 °C, from totals without ion pairs; alkalinity counts as HCO₃⁻, mineral acid as H⁺.
     *
     * <p>It runs 8 to 18 % low in waters of sodium chloride and has 6 % rms on natural waters.
     *
     * @param water any water
     * @return k = k° y² in µS/cm
     * @throws NoAnswerException if the ionic strength is above 0.5 mol/L, for which the estimate was not made
     */
    public static Conductivity byStandardMethods2510(Water water) {
        ConductingIons ions = ConductingIons.totals(Objects.requireNonNull(water, "water"));
        AmountConcentration strength = ions.ionicStrength();
        if (strength.in(AmountConcentration.MILLIMOLE_PER_LITRE) > 500) {
            throw new NoAnswerException(
                    "ionic strength must be at most 500 mmol/L for the conductivity of Standard Methods 2510, but is "
                            + strength,
                    strength);
        }
        return Conductivity.of(ions.byStandardMethods2510(), MICROSIEMENS_PER_CENTIMETRE);
    }

    /** The carbon that a reading of pH means; without one, all alkalinity is HCO₃⁻. */
    private static Water withCarbon(Water water) {
        if (water.carbon().isPresent()) {
            return water;
        }
        if (water.measuredPH().isPresent()) {
            // also where the pH tells the carbon badly: there hydrogen or hydroxide outweigh what it carries
            return CarbonateSystem.of(water)
                    .withPH(water.measuredPH().getAsDouble())
                    .withItsAlkalinity()
                    .solve()
                    .water();
        }
        double milliequivalents = Math.max(0, water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE));
        return water.withCarbon(AmountConcentration.of(milliequivalents, AmountConcentration.MILLIMOLE_PER_LITRE));
    }
}
