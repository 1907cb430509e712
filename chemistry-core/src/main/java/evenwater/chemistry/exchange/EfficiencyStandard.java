package evenwater.chemistry.exchange;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import javax.measure.quantity.Dimensionless;

/**
 * What rules ask of the salt that a softener uses: hardness removed over sodium chloride used, by mass.
 *
 * <p>Only the limit for salt: the rules ask for more, such as regeneration by demand, a limit for the water to the drain and a test with a feed of 20
 * grains per US gallon. To be above the limit here does not make a softener comply.
 */
public enum EfficiencyStandard {

    /** NSF/ANSI 44, softeners rated for efficiency, which regenerate by demand; potassium chloride counts by equivalents (number from memory). */
    NSF_ANSI_44(3350, "NSF/ANSI 44 (number from memory)"),

    /** California, appliances installed from 2000 to 2001. */
    CALIFORNIA_2000(3350, "California Health and Safety Code 116785"),

    /** California, appliances installed from 2002. */
    CALIFORNIA_2002(4000, "California Health and Safety Code 116785"),

    /** California, controlled by a clock, installed before 1980. */
    CALIFORNIA_BY_CLOCK(2850, "California Health and Safety Code 116790");

    private final double grainsPerPound;
    private final String source;

    EfficiencyStandard(double grainsPerPound, String source) {
        this.grainsPerPound = grainsPerPound;
        this.source = source;
    }

    /**
     * Returns the least that is asked for.
     *
     * @return mass of hardness as CaCO₃ over mass of sodium chloride
     */
    public WaterQuantity<Dimensionless> least() {
        return WaterUnits.share(grainsPerPound, WaterUnits.GRAIN_PER_POUND);
    }

    /**
     * Returns where the number stands.
     *
     * @return a phrase for people
     */
    public String source() {
        return source;
    }
}
