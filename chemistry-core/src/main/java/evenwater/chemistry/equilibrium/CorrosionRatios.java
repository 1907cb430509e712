package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Objects;

/**
 * Ratios of anions that say how a water treats pipes.
 *
 * <p>They need totals alone. An ion that nobody stated counts as 0, so without sulfate the Larson ratio is a lower bound. Softening changes
 * neither of them, since it leaves the anions as they are. No ratio replaces a plan for lead or copper, which depend on pH, alkalinity,
 * orthophosphate and disinfectant.
 */
public final class CorrosionRatios {

    private CorrosionRatios() {}

    /**
     * Returns the ratio of Larson: {@code (Cl⁻ + SO₄²⁻) / alkalinity}, all in equivalents.
     *
     * <p>Alkalinity stands for bicarbonate. The higher, the more the water corrodes steel; {@link LarsonScheme} has the bounds in print.
     *
     * @param water with chloride or sulfate, and an alkalinity above 0
     * @return the ratio; no unit; above 0
     * @throws NoAnswerException if the alkalinity is not above 0, or the water holds neither chloride nor sulfate
     * @see "T. E. Larson and R. V. Skold, Laboratory studies relating mineral quality of water to corrosion of steel and cast iron,
     *     Corrosion 14 (1958) 285 (from memory)"
     */
    public static double larson(Water water) {
        Objects.requireNonNull(water, "water");
        double alkalinity = water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        if (!(alkalinity > 0)) {
            throw new NoAnswerException(
                    "the Larson ratio needs an alkalinity above 0, but it was " + water.alkalinity(),
                    water.alkalinity());
        }
        double anions = equivalents(water, Ion.CHLORIDE) + equivalents(water, Ion.SULFATE);
        if (!(anions > 0)) {
            throw new NoAnswerException(
                    "the Larson ratio needs chloride or sulfate, but the water holds neither",
                    water.total(Ion.CHLORIDE),
                    water.total(Ion.SULFATE));
        }
        return finite(anions / alkalinity, "the Larson ratio");
    }

    /**
     * Returns the ratio of the masses of chloride and sulfate, CSMR.
     *
     * <p>Above 0.5 to 0.6 in a water of less than 50 mg/L of alkalinity as CaCO₃, lead in contact with copper corrodes (Edwards and
     * Triantafyllidou 2007, from memory).
     *
     * @param water with sulfate
     * @return mg of Cl⁻ per mg of SO₄²⁻; 0 without chloride
     * @throws NoAnswerException if the water holds no sulfate
     * @see "M. Edwards and S. Triantafyllidou, Chloride-to-sulfate mass ratio and lead leaching to water, J. Am. Water Works Assoc. 99
     *     (2007) 96 (from memory)"
     */
    public static double chlorideToSulfate(Water water) {
        Objects.requireNonNull(water, "water");
        double sulfate = water.total(Ion.SULFATE).in(Ion.SULFATE.milligramPerLitre());
        if (!(sulfate > 0)) {
            throw new NoAnswerException(
                    "the chloride-to-sulfate mass ratio needs sulfate, but the water holds none",
                    water.total(Ion.SULFATE));
        }
        double chloride = water.total(Ion.CHLORIDE).in(Ion.CHLORIDE.milligramPerLitre());
        return finite(chloride / sulfate, "the chloride-to-sulfate mass ratio");
    }

    private static double equivalents(Water water, Ion ion) {
        return ion.equivalents(water.total(ion)).in(MILLIEQUIVALENT_PER_LITRE);
    }

    private static double finite(double ratio, String what) {
        if (!(ratio <= Double.MAX_VALUE)) {
            throw new NoAnswerException(what + " is too large for a double: the divisor is nearly 0");
        }
        return ratio;
    }
}
