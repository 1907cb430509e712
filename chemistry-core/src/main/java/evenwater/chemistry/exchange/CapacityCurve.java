package evenwater.chemistry.exchange;

import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.water.Water;
import java.util.Collections;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import javax.measure.Quantity;

/**
 * Operating capacity against salt dose: the table of the trade, the points of the bed model, or one's own figures.
 *
 * <p>Between its points linear; outside of them it has no answer. Immutable and thread-safe.
 */
public final class CapacityCurve {

    private static final double[] MODELLED_POUNDS = {4, 5, 6, 8, 10, 12, 15, 20};

    /** In grams of sodium chloride per litre and equivalents per litre of resin. */
    private final NavigableMap<Double, Double> points;

    private final String source;

    private CapacityCurve(NavigableMap<Double, Double> points, String source) {
        this.points = Collections.unmodifiableNavigableMap(points);
        this.source = source;
    }

    /**
     * Returns the table of the trade for a gel resin of 8 % divinylbenzene, co-flow, with about 10 grains per gallon of hardness (common practice, no source).
     *
     * <p>In lb/ft³ and kgr/ft³: 4 gives 16.5, 6 gives 20, 8 gives 24, 10 gives 27, 15 gives 30, 20 gives 33; other tables have 21, 25 to 26, 32 and 35 at 6, 10, 15 and 20.
     *
     * @return the curve from 4 to 20 lb/ft³
     */
    public static CapacityCurve ofTheTrade() {
        double[] pounds = {4, 6, 8, 10, 15, 20};
        double[] kilograins = {16.5, 20, 24, 27, 30, 33};
        Map<SaltDose, ExchangeCapacity> points = new HashMap<>();
        for (int i = 0; i < pounds.length; i++) {
            points.put(
                    SaltDose.of(pounds[i], SaltDose.POUND_PER_CUBIC_FOOT),
                    ExchangeCapacity.of(kilograins[i], ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT));
        }
        return of(points, "table of the trade (common practice)");
    }

    /**
     * Returns the capacities of the bed model in its steady cycle, at 4, 5, 6, 8, 10, 12, 15 and 20 lb/ft³ of sodium chloride or its equivalents.
     *
     * @param bed to begin with
     * @param feed raw water, harder than the end point
     * @param flow in service; above 0
     * @param endPoint hardness of the effluent at which the bed is regenerated; above 0
     * @param regeneration how it is brought back, but for the dose
     * @return the curve; doses at which no steady cycle stays below the end point are left out, with all that are less
     * @throws IllegalArgumentException if flow or end point are not positive
     * @throws NoAnswerException if fewer than two doses give water below the end point
     */
    public static CapacityCurve modelled(
            ResinBed bed, Water feed, Quantity<FlowRate> flow, Quantity<Hardness> endPoint, Regeneration regeneration) {
        Objects.requireNonNull(bed, "bed");
        Objects.requireNonNull(regeneration, "regeneration");
        ResinBed start = bed;
        double massOfSalt = regeneration.dose().ratioTo(regeneration.sodiumChlorideDose());
        NavigableMap<Double, Double> found = new TreeMap<>();
        for (int i = MODELLED_POUNDS.length - 1; i >= 0; i--) {
            double grams = SaltDose.of(MODELLED_POUNDS[i], SaltDose.POUND_PER_CUBIC_FOOT)
                    .in(SaltDose.GRAM_PER_LITRE);
            SaltDose dose = SaltDose.of(grams * massOfSalt, SaltDose.GRAM_PER_LITRE);
            try {
                SofteningCycle cycle = SofteningCycle.steady(start, feed, flow, endPoint, regeneration.with(dose));
                found.put(grams, cycle.capacity().in(ExchangeCapacity.EQUIVALENT_PER_LITRE));
                start = cycle.regeneration().bedAfter();
            } catch (NoAnswerException tooLittleSalt) {
                if (found.size() < 2) {
                    throw tooLittleSalt;
                }
                break;
            }
        }
        return new CapacityCurve(
                found,
                "bed model, "
                        + (regeneration.direction() == Regeneration.Direction.CO_FLOW ? "co-flow" : "counter-flow"));
    }

    /**
     * Returns a curve of one's own figures.
     *
     * @param points two or more doses of sodium chloride, above 0, with the capacity at each, above 0
     * @param source where they are from, for the reader of a plan
     * @return the curve
     * @throws IllegalArgumentException if there are fewer than two or one is not positive
     */
    public static CapacityCurve of(Map<SaltDose, ExchangeCapacity> points, String source) {
        Objects.requireNonNull(points, "points");
        Objects.requireNonNull(source, "source");
        NavigableMap<Double, Double> sorted = new TreeMap<>();
        points.forEach((dose, capacity) -> {
            if (!(dose.getValue() > 0 && capacity.getValue() > 0)) {
                throw new IllegalArgumentException(
                        "dose and capacity must be positive, but were " + dose + " and " + capacity);
            }
            sorted.put(dose.in(SaltDose.GRAM_PER_LITRE), capacity.in(ExchangeCapacity.EQUIVALENT_PER_LITRE));
        });
        if (sorted.size() < 2) {
            throw new IllegalArgumentException("a curve needs two doses or more, but had " + sorted.size());
        }
        return new CapacityCurve(sorted, source);
    }

    /**
     * Returns what a dose gives.
     *
     * @param sodiumChloride salt per volume of resin; from {@link #least} to {@link #most}
     * @return hardness taken per volume of resin
     * @throws NoAnswerException if the dose is outside the curve
     */
    public ExchangeCapacity capacity(Quantity<SaltDose> sodiumChloride) {
        SaltDose stated = SaltDose.from(sodiumChloride);
        double grams = stated.in(SaltDose.GRAM_PER_LITRE);
        if (!(grams >= points.firstKey() * (1 - 1e-12) && grams <= points.lastKey() * (1 + 1e-12))) {
            throw new NoAnswerException(
                    "the " + source + " knows doses from " + text(least(), stated) + " to " + text(most(), stated)
                            + ", not " + stated,
                    stated);
        }
        double inside = Math.max(points.firstKey(), Math.min(points.lastKey(), grams));
        return ExchangeCapacity.of(Interpolation.linear(points, inside), ExchangeCapacity.EQUIVALENT_PER_LITRE);
    }

    private static String text(SaltDose end, SaltDose stated) {
        return end.to(stated.getUnit()).toText(Locale.ROOT, 6);
    }

    /**
     * Returns the dose that takes most hardness for its salt among those that give enough, when some of the capacity is kept and not used.
     *
     * <p>{@code (capacity − kept) / dose} is largest. Between two points of the curve it only rises or falls; so the best is a point, or where the
     * capacity is just met.
     *
     * @param needed capacity at least, what is kept included; 0 or more
     * @param kept capacity that is thrown away with every regeneration, such as a reserve; 0 or more, below {@code needed}
     * @return the dose of sodium chloride; empty if no dose of the curve gives so much
     */
    public Optional<SaltDose> mostEfficientDose(Quantity<ExchangeCapacity> needed, Quantity<ExchangeCapacity> kept) {
        double least = ExchangeCapacity.from(needed).in(ExchangeCapacity.EQUIVALENT_PER_LITRE);
        double lost = ExchangeCapacity.from(kept).in(ExchangeCapacity.EQUIVALENT_PER_LITRE);
        double best = Double.NaN;
        double most = Double.NEGATIVE_INFINITY;
        double low = points.firstKey();
        for (double high : points.keySet()) {
            for (double grams : new double[] {met(low, high, least), high}) {
                double capacity = Interpolation.linear(points, grams);
                double used = (capacity - lost) / grams;
                if (capacity >= least * (1 - 1e-12) && used > most) {
                    best = grams;
                    most = used;
                }
            }
            low = high;
        }
        return Double.isNaN(best) ? Optional.empty() : Optional.of(SaltDose.of(best, SaltDose.GRAM_PER_LITRE));
    }

    /** Where between two neighbours the capacity is just met; one of them if nowhere. */
    private double met(double low, double high, double least) {
        double below = Interpolation.linear(points, low);
        double above = Interpolation.linear(points, high);
        double part = (least - below) / (above - below);
        return part > 0 && part < 1 ? low + part * (high - low) : high;
    }

    /**
     * Returns the least dose that the curve knows.
     *
     * @return sodium chloride per volume of resin
     */
    public SaltDose least() {
        return SaltDose.of(points.firstKey(), SaltDose.GRAM_PER_LITRE);
    }

    /**
     * Returns the largest dose that the curve knows.
     *
     * @return sodium chloride per volume of resin
     */
    public SaltDose most() {
        return SaltDose.of(points.lastKey(), SaltDose.GRAM_PER_LITRE);
    }

    /**
     * Returns where the figures are from.
     *
     * @return a phrase for people
     */
    public String source() {
        return source;
    }

    /** Returns the source, for people and logs. */
    @Override
    public String toString() {
        return source;
    }
}
