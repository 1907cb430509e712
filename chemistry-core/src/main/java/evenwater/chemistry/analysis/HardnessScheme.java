package evenwater.chemistry.analysis;

import evenwater.chemistry.quantity.Hardness;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Who calls what hard: published classes of hardness, each with its own bounds.
 *
 * <p>A value on a bound belongs to the softer class, except where the scheme says "below". Some schemes print gaps between whole
 * numbers (60 and 61); here each class ends where the next begins. A value within 1e-9 of a bound is on it, whatever unit it was
 * stated in.
 */
@SuppressWarnings(
        "ImmutableEnumChecker") // units are immutable, the bounds are never handed out and the list is made by List.of
public enum HardnessScheme {

    /** Soft up to 60, moderately hard up to 120, hard up to 180 mg/L as CaCO₃ (Durfor and Becker 1964, USGS WSP 1812 p. 27). */
    USGS(
            Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE,
            0,
            new double[] {60, 120, 180},
            "soft",
            "moderately hard",
            "hard",
            "very hard"),

    /** Soft below 60, moderately hard below 120, hard below 180 mg/L as CaCO₃ (WHO 2011, Hardness in Drinking-water). */
    WHO(
            Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE,
            3,
            new double[] {60, 120, 180},
            "soft",
            "moderately hard",
            "hard",
            "very hard"),

    /** Soft below 1, slightly hard to 3.5, moderately hard to 7, hard to 10.5 grains per US gallon (ASAE S339, of the trade). */
    SOFTENING_TRADE(
            Hardness.GRAIN_PER_US_GALLON,
            1,
            new double[] {1, 3.5, 7, 10.5},
            "soft",
            "slightly hard",
            "moderately hard",
            "hard",
            "very hard"),

    /** Soft up to 75, moderately hard up to 150, hard up to 300 mg/L as CaCO₃ (Sawyer and McCarty, from memory). */
    SAWYER_AND_MCCARTY(
            Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE,
            0,
            new double[] {75, 150, 300},
            "soft",
            "moderately hard",
            "hard",
            "very hard"),

    /** Soft below 1.5, medium to 2.5, hard above 2.5 mmol/L (German detergents act WRMG 2007, section 9, from memory). */
    GERMANY(Hardness.MILLIMOLE_PER_LITRE, 1, new double[] {1.5, 2.5}, "soft", "medium", "hard"),

    /** Very soft up to 4, soft 8, medium 12, fairly hard 18, hard 30 German degrees (aquarists: common practice, no source). */
    AQUARISTS(
            Hardness.GERMAN_DEGREE,
            0,
            new double[] {4, 8, 12, 18, 30},
            "very soft",
            "soft",
            "medium",
            "fairly hard",
            "hard",
            "very hard");

    /** A bound that is reached from another unit misses the last digits. */
    private static final double ROUNDING = 1e-9;

    private final Unit<Hardness> unit;
    private final int boundsBelow;
    private final double[] bounds;
    private final List<String> classes;

    /** Takes how many of the first bounds the scheme words as "below": a value on them is harder. */
    HardnessScheme(Unit<Hardness> unit, int boundsBelow, double[] bounds, String... classes) {
        this.unit = unit;
        this.boundsBelow = boundsBelow;
        this.bounds = bounds;
        this.classes = List.of(classes);
    }

    /**
     * Returns the class of a hardness.
     *
     * @param hardness 0 or more
     * @return the name of the class in this scheme
     * @throws IllegalArgumentException if the hardness is negative
     */
    public String classOf(Quantity<Hardness> hardness) {
        double value = Hardness.from(hardness).in(unit);
        if (value < 0) {
            throw new IllegalArgumentException("hardness must not be negative, but was " + hardness);
        }
        int i = 0;
        while (i < bounds.length && value > bounds[i] * (i < boundsBelow ? 1 - ROUNDING : 1 + ROUNDING)) {
            i++;
        }
        return classes.get(i);
    }
}
