package evenwater.chemistry.analysis;

import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import java.util.Objects;

/**
 * A test of one ion that could be made beside hardness, alkalinity, pH and conductivity, with the error that it usually has.
 *
 * <p>The constants have errors of simple tests by colour, turbidity or drops (common practice, no source); a laboratory is better.
 *
 * @param ion Ca²⁺, Mg²⁺, Na⁺, K⁺, Cl⁻, SO₄²⁻ or NO₃⁻
 * @param relativeError half the width of what a result leaves open, over the result; no unit, 0 to 1
 * @param leastError the same where the ion is scarce; 0 or more; the larger of the two counts
 */
public record ExtraTest(Ion ion, double relativeError, AmountConcentration leastError) {

    /** Chloride: 10 %, at least 5 mg/L. */
    public static final ExtraTest CHLORIDE = usual(Ion.CHLORIDE, 0.1, 5);

    /** Sulfate: 15 %, at least 10 mg/L. */
    public static final ExtraTest SULFATE = usual(Ion.SULFATE, 0.15, 10);

    /** Nitrate: 20 %, at least 2.5 mg/L. */
    public static final ExtraTest NITRATE = usual(Ion.NITRATE, 0.2, 2.5);

    /** Calcium: 5 %, at least 5 mg/L. */
    public static final ExtraTest CALCIUM = usual(Ion.CALCIUM, 0.05, 5);

    /** Potassium: 15 %, at least 1 mg/L. */
    public static final ExtraTest POTASSIUM = usual(Ion.POTASSIUM, 0.15, 1);

    /** Sodium: 10 %, at least 2 mg/L. */
    public static final ExtraTest SODIUM = usual(Ion.SODIUM, 0.1, 2);

    private static final List<ExtraTest> USUAL = List.of(CHLORIDE, SULFATE, NITRATE, CALCIUM, POTASSIUM, SODIUM);

    /**
     * Checks the ion and the errors.
     *
     * @param ion see the record
     * @param relativeError see the record
     * @param leastError see the record
     */
    public ExtraTest {
        KitIons.quantityOf(Objects.requireNonNull(ion, "ion"));
        Objects.requireNonNull(leastError, "leastError");
        if (!(relativeError >= 0 && relativeError <= 1)) {
            throw new IllegalArgumentException(
                    "relative error of a test must be from 0 to 1, but was " + relativeError);
        }
        if (leastError.getValue() < 0) {
            throw new IllegalArgumentException("least error of a test must not be negative, but was " + leastError);
        }
    }

    private static ExtraTest usual(Ion ion, double relativeError, double milligramsPerLitre) {
        return new ExtraTest(ion, relativeError, AmountConcentration.of(milligramsPerLitre, ion.milligramPerLitre()));
    }

    /**
     * Returns the six tests of this class.
     *
     * @return chloride, sulfate, nitrate, calcium, potassium, sodium
     */
    public static List<ExtraTest> usual() {
        return USUAL;
    }

    KitQuantity quantity() {
        return KitIons.quantityOf(ion);
    }

    /** What a result leaves open, in eq/L. */
    KitRange around(double equivalents) {
        double least = KitIons.equivalents(ion, leastError);
        double error = Math.max(least, relativeError * equivalents);
        return new KitRange(Math.max(0, equivalents - error), equivalents + error);
    }

    /** Returns the test, such as {@code chloride test}. */
    @Override
    public String toString() {
        return quantity() + " test";
    }
}
