package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.quantity.Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE;

import evenwater.chemistry.kernel.AquaticLifeKernel;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Copper criteria of the US EPA for aquatic life in fresh water, against hardness.
 *
 * <p>Dissolved copper; stated for a hardness of 25 to 400 mg/L as CaCO₃. Outside it refuses: softened water has nearly no hardness, and
 * there copper harms most. In 2007 a criterion that also asks for pH, organic carbon and the major ions took the place of these (from
 * memory).
 *
 * <p>The formulas stand in {@link AquaticLifeKernel}.
 */
public enum CopperCriterion {
    /** Acute criterion of 1995: {@code 0.960 · exp(0.9422 ln H − 1.700)} µg/L; 13 µg/L at 100 mg/L as CaCO₃. */
    ACUTE_1995("acute"),

    /** Chronic criterion of 1995: {@code 0.960 · exp(0.8545 ln H − 1.702)} µg/L; 9.0 µg/L at 100 mg/L as CaCO₃. */
    CHRONIC_1995("chronic");

    private static final double LEAST_MILLIGRAMS = 25;
    private static final double MOST_MILLIGRAMS = 400;

    private final String words;

    CopperCriterion(String words) {
        this.words = words;
    }

    /**
     * Returns the most copper that there should be.
     *
     * @param hardness calcium and magnesium; 25 to 400 mg/L as CaCO₃
     * @return dissolved copper in µg/L Cu²⁺
     * @throws NoAnswerException if the criterion is not stated for this hardness; names it and the range
     * @throws IllegalArgumentException if the hardness is negative
     */
    public AmountConcentration limit(Quantity<Hardness> hardness) {
        Hardness stated = Checked.notNegative(Hardness.from(Objects.requireNonNull(hardness, "hardness")), "hardness");
        double milligrams = stated.in(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
        if (!(milligrams >= LEAST_MILLIGRAMS * (1 - Checked.ROUNDING)
                && milligrams <= MOST_MILLIGRAMS * (1 + Checked.ROUNDING))) {
            throw new NoAnswerException(
                    this + " is stated for a hardness of 25 to 400 mg/L CaCO3, but hardness was " + text(stated),
                    stated);
        }
        double micrograms = this == ACUTE_1995
                ? AquaticLifeKernel.acuteCopper1995(milligrams)
                : AquaticLifeKernel.chronicCopper1995(milligrams);
        return AmountConcentration.of(micrograms, microgramPerLitre());
    }

    private static Unit<AmountConcentration> microgramPerLitre() {
        return Ion.COPPER_II.unit(MassConcentration.MICROGRAM_PER_LITRE, Ion.COPPER_II.formula());
    }

    private static String text(Hardness stated) {
        String words = rounded(stated, 12);
        return stated.getUnit().equals(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)
                ? words
                : words + " (" + rounded(stated.to(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE), 6) + ")";
    }

    /** Without the digits that arithmetic leaves, and without grouping. */
    private static String rounded(Hardness hardness, int digits) {
        BigDecimal value = new BigDecimal(hardness.getValue()).round(new MathContext(digits));
        return Hardness.of(value.doubleValue(), hardness.getUnit()).toString();
    }

    /**
     * Returns when it was published.
     *
     * @return 1995
     */
    public int year() {
        return 1995;
    }

    /**
     * Returns who says so.
     *
     * @return publisher, title and year, and how it was consulted
     */
    public String source() {
        return "US EPA, 1995 Updates: Water Quality Criteria Documents for the Protection of Aquatic Life in Ambient Water, "
                + "EPA-820-B-96-001 (from memory)";
    }

    /** Returns it in words, such as {@code US EPA 1995 acute copper criterion}. */
    @Override
    public String toString() {
        return "US EPA 1995 " + words + " copper criterion";
    }
}
