package evenwater.chemistry.exchange;

import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;

/**
 * How strongly a resin prefers each ion to sodium: a constant K for each, with its source and its convention.
 *
 * <p>{@code K = (y/y(Na)ᶻ) · (x(Na)ᶻ/x) · (C/Q)^(z−1)} with equivalent fractions y in the resin and x in the water, the charge number z of the ion, the strength C of
 * the water and the capacity Q of the resin, both in eq/L. For a single charge K is the separation factor; for a double charge the preference
 * grows as the water gets weaker, without any change of K. The constants are those of dilute solutions at 25 °C; they are taken as constant.
 *
 * <p>Immutable and thread-safe.
 */
public final class Selectivity {

    private static final String BONNER_SMITH = "O. D. Bonner and L. L. Smith 1957 (from memory)";
    private static final String HANDBOOK = "handbook table relative to H⁺ = 1 (from memory)";

    private final String source;
    private final Map<Ion, Double> scale;
    private final SelectivityConvention convention;

    private Selectivity(String source, Map<Ion, Double> scale, SelectivityConvention convention) {
        this.source = source;
        this.scale = Collections.unmodifiableMap(new TreeMap<>(scale));
        this.convention = convention;
    }

    /**
     * Returns the constants from the scale of Bonner and Smith (1957), read as plain ratios.
     *
     * <p>Iron and manganese, which that scale lacks, are put beside its magnesium in the ratio of the {@linkplain #handbook handbook table}.
     *
     * @param crossLinking divinylbenzene in the resin; 4 % to 16 %; between 4, 8 and 16 % linear (own rule)
     * @return the constants
     * @throws IllegalArgumentException if the cross-linking is out of range
     */
    public static Selectivity bonnerAndSmith(Quantity<Dimensionless> crossLinking) {
        var share = WaterUnits.share(Objects.requireNonNull(crossLinking, "crossLinking"));
        Map<Ion, Double> scale = SelectivityTable.at("bonner-smith", share);
        Map<Ion, Double> handbook = SelectivityTable.at("handbook", share);
        double perMagnesium = scale.getOrDefault(Ion.MAGNESIUM, 0.0) / handbook.getOrDefault(Ion.MAGNESIUM, 1.0);
        handbook.forEach((ion, value) -> scale.putIfAbsent(ion, value * perMagnesium));
        return new Selectivity(BONNER_SMITH, scale, SelectivityConvention.PLAIN_RATIO);
    }

    /**
     * Returns the constants from the table that resin makers and handbooks print, relative to H⁺ = 1, read as plain ratios.
     *
     * @param crossLinking divinylbenzene in the resin; 4 % to 16 %; between 4, 8, 12 and 16 % linear (own rule)
     * @return the constants
     * @throws IllegalArgumentException if the cross-linking is out of range
     */
    public static Selectivity handbook(Quantity<Dimensionless> crossLinking) {
        var share = WaterUnits.share(Objects.requireNonNull(crossLinking, "crossLinking"));
        return new Selectivity(HANDBOOK, SelectivityTable.at("handbook", share), SelectivityConvention.PLAIN_RATIO);
    }

    /**
     * Returns constants of a table of one's own.
     *
     * @param source where the values are from, for the reader of a result
     * @param scale relative affinity of each cation, of any zero; sodium among them; above 0
     * @param convention how K follows
     * @return the constants
     * @throws IllegalArgumentException if sodium is missing, a value is not positive, or an ion is no single- or double-charged cation
     */
    public static Selectivity of(String source, Map<Ion, Double> scale, SelectivityConvention convention) {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(convention, "convention");
        scale.forEach((ion, value) -> {
            if (ion.chargeNumber() < 1 || ion.chargeNumber() > 2 || !ion.isReferenceForm()) {
                throw new IllegalArgumentException(
                        "a selectivity belongs to a cation of charge 1 or 2, but was given for " + ion);
            }
            if (!(value > 0 && value <= Double.MAX_VALUE)) {
                throw new IllegalArgumentException("selectivity of " + ion + " must be positive, but was " + value);
            }
        });
        if (!scale.containsKey(Ion.SODIUM)) {
            throw new IllegalArgumentException("selectivities must include " + Ion.SODIUM
                    + ", against which the others are counted, but were of " + new TreeMap<>(scale).keySet());
        }
        return new Selectivity(source, scale, convention);
    }

    /**
     * Returns the same scale read in another way.
     *
     * @param other how K follows
     * @return the constants
     */
    public Selectivity with(SelectivityConvention other) {
        return new Selectivity(source, scale, Objects.requireNonNull(other, "convention"));
    }

    /**
     * Returns K of an ion against sodium.
     *
     * @param ion one of {@link #ions}
     * @return K; no unit where the charge is 1; with equivalents per litre in both phases where it is 2; above 0
     * @throws IllegalArgumentException if there is no value for the ion
     */
    public double constant(Ion ion) {
        return convention.constant(value(ion), value(Ion.SODIUM), ion.chargeNumber());
    }

    private double value(Ion ion) {
        Double value = scale.get(Objects.requireNonNull(ion, "ion"));
        if (value == null) {
            throw new IllegalArgumentException(
                    "no selectivity of " + ion + " is known to " + source + ", only of " + scale.keySet());
        }
        return value;
    }

    /**
     * Returns the ions that the resin exchanges.
     *
     * @return those with a constant, in the order of the ions
     */
    public List<Ion> ions() {
        return List.copyOf(scale.keySet());
    }

    /**
     * Returns where the values are from.
     *
     * @return a phrase for people
     */
    public String source() {
        return source;
    }

    /**
     * Returns how K follows from the scale.
     *
     * @return the convention
     */
    public SelectivityConvention convention() {
        return convention;
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return that instanceof Selectivity s
                && s.source.equals(source)
                && s.scale.equals(scale)
                && s.convention == convention;
    }

    @Override
    public int hashCode() {
        return Objects.hash(source, scale, convention);
    }

    /** Returns the scale with its source and convention, for logs. */
    @Override
    public String toString() {
        return source + ", " + convention + ": " + scale;
    }
}
