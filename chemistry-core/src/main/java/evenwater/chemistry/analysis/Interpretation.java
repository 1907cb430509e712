package evenwater.chemistry.analysis;

import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.Quantity;

/**
 * The water behind a report, with everything that was assumed and the range that it leaves open.
 *
 * <p>Readings below a detection limit and assumptions such as calcium to magnesium are open: {@link #water} takes the middle of the
 * interval and the assumption as stated, {@link #bounds} tries all ends of them. What nobody measured counts as 0, and where it matters
 * a result is open towards more or less. Immutable and thread-safe.
 */
public final class Interpretation {

    /** What moves a result by less, of 1 in its unit or of itself, is rounding; 1 mmol/L of an ion moves it more or not at all. */
    private static final double ROUNDING = 1e-12;

    /** A result that a hundredfold moves by a smaller share of itself has come to an end. */
    private static final double ENDED = 1e-4;

    private final LabReport report;
    private final Corners corners;
    private final Water water;
    private final Supplier<List<Water>> waters;
    private final Supplier<List<Corners.Pair>> beyond;
    private final List<String> assumptions;
    private final List<String> findings;
    private final List<String> notMeasured;
    private final Set<Ion> measured;

    Interpretation(
            LabReport report,
            Corners corners,
            List<String> assumptions,
            List<String> findings,
            List<String> notMeasured,
            Set<Ion> measured) {
        this.report = report;
        this.corners = corners;
        this.water = corners.nominal();
        this.waters = known(report, corners::all);
        this.beyond = known(report, corners::beyond);
        this.assumptions = List.copyOf(assumptions);
        this.findings = List.copyOf(findings);
        this.notMeasured = List.copyOf(notMeasured);
        this.measured = Set.copyOf(measured);
    }

    /** Of a report that was drawn, one of thousands, computed when asked for; of any other at once, so that what fails does so early. */
    private static <T> Supplier<T> known(LabReport report, Supplier<T> computed) {
        if (report.isDrawn()) {
            return computed;
        }
        T value = computed.get();
        return () -> value;
    }

    /**
     * Returns the report that was interpreted.
     *
     * @return the readings
     */
    public LabReport report() {
        return report;
    }

    /**
     * Returns the water, by the best guess.
     *
     * @return the middle of every open interval, and every assumption as stated
     */
    public Water water() {
        return water;
    }

    /**
     * Returns waters at the ends of everything that the report leaves open.
     *
     * <p>All combinations of ends for up to eight open points; beyond that all low, all high, and each point alone at its other end. What
     * was {@linkplain #notMeasured() not measured} and follows from nothing else is 0 in all of them.
     *
     * @return one or more waters; the water itself if nothing is open
     */
    public List<Water> corners() {
        return waters.get();
    }

    /**
     * Returns a result with the range in which it may lie: its least and largest value over the {@link #corners}.
     *
     * <p>For results that rise or fall all the way with each open point, as sums and blends do, the range is exact. With more than eight
     * open points, whether it rises or falls is tried for each point alone, and the range is exact if the others do not turn it round. A result
     * that turns round within an interval may leave its range there: so do sums over the ions of a permeate, such as its ionic strength
     * and dissolved solids, where the unmeasured charge of the feed passes through zero.
     *
     * <p>Where some more of something that was {@linkplain #notMeasured() not measured} moves the result, the range is open that way:
     * the sodium of a report without sodium is {@code 0 mg/L Na⁺ or more}. That is tried for a trace and for much of each and of all
     * together; where even far more than dissolves moves the result no further, as behind a membrane, the range ends there. Behind a membrane with a named carrier of missing charge, a result may turn round in between and leave the range.
     *
     * @param <K> kind of the result
     * @param <Q> type of the result, such as {@code Hardness} or {@code WaterQuantity<Mass>}
     * @param result computed from a water, possibly through a treatment; for a share, {@code WaterUnits.share(…)}
     * @return the result for {@link #water} and its bounds
     * @throws NoAnswerException if a treatment has no answer for the water, or for one that the report leaves open as well
     */
    public <K extends Quantity<K>, Q extends WaterQuantity<K>> Bounds<Q> bounds(Function<Water, Q> result) {
        Objects.requireNonNull(result, "result");
        Q value = Objects.requireNonNull(result.apply(water), "result for the water");
        Function<Water, Q> other = corner -> atCorner(result, corner);
        Q low = value;
        Q high = value;
        for (Q end : Stream.concat(waters.get().stream(), corners.towardsEnds(other).stream())
                .map(other)
                .toList()) {
            low = end.compareTo(low) < 0 ? end : low;
            high = end.compareTo(high) > 0 ? end : high;
        }
        boolean openBelow = false;
        boolean openAbove = false;
        List<Q> reached = new ArrayList<>(List.of(low, high));
        for (Corners.Pair pair : beyond.get()) {
            Q moved = other.apply(pair.with());
            double by = by(other.apply(pair.without()), moved);
            openBelow |= by < 0;
            openAbove |= by > 0;
            reached.add(moved);
        }
        if (openBelow || openAbove) {
            boolean endless = isEndless(result, reached);
            Q least = Collections.min(reached);
            openBelow &= endless && (low.getValue() != 0 || least.getValue() < 0); // what is down at nothing ends there
            openAbove &= endless;
            low = endless ? low : least;
            high = endless ? high : Collections.max(reached);
        }
        return new Bounds<>(low, value, high, openBelow, openAbove);
    }

    /** How much a result moves in its unit; 0 if that is rounding. */
    private static <K extends Quantity<K>, Q extends WaterQuantity<K>> double by(Q from, Q to) {
        double moved = to.in(from.getUnit());
        double by = moved - from.in(from.getUnit());
        return Math.abs(by) <= ROUNDING * Math.max(1, Math.abs(moved)) ? 0 : by;
    }

    /** Whether a result goes on moving with ever more of what nobody measured; if not, adds where it ends. */
    private <K extends Quantity<K>, Q extends WaterQuantity<K>> boolean isEndless(
            Function<Water, Q> result, List<Q> reached) {
        for (Corners.Pair pair : corners.extremes()) {
            try {
                Q much = result.apply(pair.without());
                Q more = result.apply(pair.with());
                if (Math.abs(by(much, more)) > ENDED * Math.abs(much.getValue().doubleValue())) {
                    return true;
                }
                reached.add(more);
            } catch (NoAnswerException | IllegalArgumentException | ArithmeticException e) {
                return true; // nobody knows
            }
        }
        return false;
    }

    private static <Q> Q atCorner(Function<Water, Q> result, Water corner) {
        try {
            return result.apply(corner);
        } catch (NoAnswerException e) {
            throw new NoAnswerException(
                    "for another water that the report leaves open, " + e.getMessage(),
                    e.numbers().toArray(Quantity<?>[]::new));
        }
    }

    /** Returns the water by the best guess, what it assumes and what was not measured, for logs. */
    @Override
    public String toString() {
        return water + "; assumed: " + assumptions + "; disagreeing: " + findings + "; not measured: " + notMeasured;
    }

    /**
     * Returns everything that was taken for granted.
     *
     * @return assumptions in words, first those of reading the text; possibly empty
     */
    public List<String> assumptions() {
        return assumptions;
    }

    /**
     * Returns where readings disagree.
     *
     * @return findings in words; possibly empty
     */
    public List<String> findings() {
        return findings;
    }

    /**
     * Returns which of the major parts of a water were not measured: calcium, magnesium, sodium, potassium, alkalinity, chloride,
     * sulfate. A lower bound is no measurement.
     *
     * @return names; an ion balance says little unless this is empty
     */
    public List<String> notMeasured() {
        return notMeasured;
    }

    /**
     * Tells whether an ion was measured, as a number or as an interval, or follows from two readings, as magnesium does from hardness
     * and calcium.
     *
     * @param ion a reference form
     * @return false if its total in {@link #water} is zero or assumed for want of a reading
     * @throws IllegalArgumentException if the ion has no total of its own, as bicarbonate and carbonate in the alkalinity
     */
    public boolean isMeasured(Ion ion) {
        water.total(ion);
        return measured.contains(ion);
    }
}
