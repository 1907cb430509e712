package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.kernel.AquaticLifeKernel.acuteAmmonia1999SalmonidsAbsent;
import static evenwater.chemistry.kernel.AquaticLifeKernel.acuteAmmonia1999SalmonidsPresent;
import static evenwater.chemistry.kernel.AquaticLifeKernel.acuteAmmonia2013SalmonidsAbsent;
import static evenwater.chemistry.kernel.AquaticLifeKernel.acuteAmmonia2013SalmonidsPresent;
import static evenwater.chemistry.kernel.AquaticLifeKernel.chronicAmmonia1999EarlyStagesAbsent;
import static evenwater.chemistry.kernel.AquaticLifeKernel.chronicAmmonia1999EarlyStagesPresent;
import static evenwater.chemistry.kernel.AquaticLifeKernel.chronicAmmonia2013;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * Ammonia criteria of the US EPA for aquatic life in fresh water, by year and by what lives there.
 *
 * <p>Each states total ammonia as N against pH and temperature, for pH 6.5 to 9 and 0 to 30 °C (the ranges of its tables, from memory);
 * outside it refuses. An acute criterion is meant for the mean of an hour, a chronic one for the mean of 30 days, in which no four days shall
 * exceed 2.5 times the figure; both may be passed once in three years (from memory). Those of 2013 replace those of 1999: mussels are
 * more sensitive than fish. They are made for rivers and lakes; what an aquarium should have is none.
 *
 * <p>The formulas stand in {@link evenwater.chemistry.kernel.AquaticLifeKernel}.
 */
public enum AmmoniaCriterion {
    /** Acute criterion of 1999 where salmonids are present; 24.1 mg/L N at pH 7. Temperature makes no difference. */
    ACUTE_1999_SALMONIDS_PRESENT(1999, true, "acute ammonia criterion with salmonids present"),

    /** Acute criterion of 1999 where salmonids are absent; 36.1 mg/L N at pH 7. Temperature makes no difference. */
    ACUTE_1999_SALMONIDS_ABSENT(1999, true, "acute ammonia criterion with salmonids absent"),

    /** Chronic criterion of 1999 where early life stages of fish are present; 4.15 mg/L N at pH 7 and 20 °C. */
    CHRONIC_1999_EARLY_STAGES_PRESENT(1999, false, "chronic ammonia criterion with early life stages present"),

    /** Chronic criterion of 1999 where early life stages of fish are absent; 4.15 mg/L N at pH 7 and 20 °C, more below 14.5 °C. */
    CHRONIC_1999_EARLY_STAGES_ABSENT(1999, false, "chronic ammonia criterion with early life stages absent"),

    /** Acute criterion of 2013 where salmonids are present; 17 mg/L N at pH 7 and 20 °C. */
    ACUTE_2013_SALMONIDS_PRESENT(2013, true, "acute ammonia criterion with salmonids present"),

    /** Acute criterion of 2013 where salmonids are absent; 17 mg/L N at pH 7 and 20 °C, more than with them below 15.6 °C. */
    ACUTE_2013_SALMONIDS_ABSENT(2013, true, "acute ammonia criterion with salmonids absent"),

    /** Chronic criterion of 2013; 1.9 mg/L N at pH 7 and 20 °C. */
    CHRONIC_2013(2013, false, "chronic ammonia criterion");

    private static final double LEAST_PH = 6.5;
    private static final double MOST_PH = 9;
    private static final double MOST_CELSIUS = 30;

    private final int year;
    private final boolean acute;
    private final String words;

    AmmoniaCriterion(int year, boolean acute, String words) {
        this.year = year;
        this.acute = acute;
        this.words = words;
    }

    /**
     * Returns the most ammonia that there should be.
     *
     * @param pH no unit; 6.5 to 9
     * @param temperature from 0 to 30 °C
     * @return total ammonia, NH₃ and NH₄⁺ together, in mg/L N
     * @throws NoAnswerException if the criterion is not stated for this pH or temperature; says which and the range
     * @throws IllegalArgumentException if the pH is not from 0 to 14
     */
    public AmountConcentration limit(double pH, Quantity<Temperature> temperature) {
        double celsius = celsius(Checked.temperature(temperature));
        if (!(Checked.pH(pH) >= LEAST_PH && pH <= MOST_PH)) {
            throw new NoAnswerException(
                    this + " is stated for pH 6.5 to 9, but pH was " + pH, WaterUnits.share(pH, WaterUnits.ONE));
        }
        return AmountConcentration.of(
                milligramsOfNitrogen(pH, celsius), Ion.AMMONIUM.milligramPerLitreAs(Element.NITROGEN));
    }

    private double celsius(WaterQuantity<Temperature> temperature) {
        double celsius = temperature.in(WaterUnits.CELSIUS);
        if (!(celsius >= -Checked.ROUNDING && celsius <= MOST_CELSIUS + Checked.ROUNDING)) {
            throw new NoAnswerException(
                    this + " is stated for 0 °C to 30 °C, but temperature was " + temperature, temperature);
        }
        return celsius;
    }

    private double milligramsOfNitrogen(double pH, double celsius) {
        return switch (this) {
            case ACUTE_1999_SALMONIDS_PRESENT -> acuteAmmonia1999SalmonidsPresent(pH);
            case ACUTE_1999_SALMONIDS_ABSENT -> acuteAmmonia1999SalmonidsAbsent(pH);
            case CHRONIC_1999_EARLY_STAGES_PRESENT -> chronicAmmonia1999EarlyStagesPresent(pH, celsius);
            case CHRONIC_1999_EARLY_STAGES_ABSENT -> chronicAmmonia1999EarlyStagesAbsent(pH, celsius);
            case ACUTE_2013_SALMONIDS_PRESENT -> acuteAmmonia2013SalmonidsPresent(pH, celsius);
            case ACUTE_2013_SALMONIDS_ABSENT -> acuteAmmonia2013SalmonidsAbsent(pH, celsius);
            case CHRONIC_2013 -> chronicAmmonia2013(pH, celsius);
        };
    }

    /**
     * Returns when it was published.
     *
     * @return 1999 or 2013
     */
    public int year() {
        return year;
    }

    /**
     * Returns over what time ammonia is averaged before it is compared.
     *
     * @return 1 h for an acute criterion, 30 d for a chronic one
     */
    public WaterQuantity<Time> averagingTime() {
        return acute ? WaterUnits.time(1, WaterUnits.HOUR) : WaterUnits.time(30, WaterUnits.DAY);
    }

    /**
     * Returns who says so.
     *
     * @return publisher, title and year, and how it was consulted
     */
    public String source() {
        return year == 1999
                ? "US EPA, 1999 Update of Ambient Water Quality Criteria for Ammonia, EPA-822-R-99-014 "
                        + "(equations read in a public rule that quotes them)"
                : "US EPA, Aquatic Life Ambient Water Quality Criteria for Ammonia - Freshwater 2013, "
                        + "EPA-822-R-13-001 (from memory)";
    }

    /** Returns it in words, such as {@code US EPA 2013 chronic ammonia criterion}. */
    @Override
    public String toString() {
        return "US EPA " + year + " " + words;
    }
}
