package evenwater.chemistry.analysis;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * The water behind a report, with everything that was assumed and the range that it leaves open.
 *
 * <p>Readings below a detection limit and assumptions such as calcium to magnesium are open: {@link #water} takes the middle of the
 * interval and the assumption as stated, {@link #bounds} tries all ends of them. Immutable and thread-safe.
 */
public final class Interpretation {

    private final LabReport report;
    private final Corners corners;
    private final Water water;
    private final List<Water> waters;
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
        this.waters = corners.all();
        this.assumptions = List.copyOf(assumptions);
        this.findings = List.copyOf(findings);
        this.notMeasured = List.copyOf(notMeasured);
        this.measured = Set.copyOf(measured);
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
     * <p>All combinations of ends for up to ten open points; beyond that all low, all high, and each point alone at its other end.
     *
     * @return one or more waters; the water itself if nothing is open
     */
    public List<Water> corners() {
        return waters;
    }

    /**
     * Returns a result with the range in which it may lie: its least and largest value over the {@link #corners}.
     *
     * <p>For results that rise or fall all the way with each open point, as sums and blends do, the range is exact. With more than ten
     * open points, whether it rises or falls is tried for each point alone, and the range is exact if the others do not turn it round.
     *
     * @param <Q> kind of the result
     * @param result computed from a water, possibly through a treatment
     * @return the result for {@link #water} and its bounds
     * @throws evenwater.chemistry.quantity.NoAnswerException if a treatment has no answer for one of the corners
     */
    public <Q extends WaterQuantity<Q>> Bounds<Q> bounds(Function<Water, Q> result) {
        Q value = result.apply(water);
        List<Q> ends = new ArrayList<>();
        ends.add(value);
        waters.forEach(corner -> ends.add(result.apply(corner)));
        corners.towardsEnds(result).forEach(corner -> ends.add(result.apply(corner)));
        Q low = value;
        Q high = value;
        for (Q end : ends) {
            low = end.compareTo(low) < 0 ? end : low;
            high = end.compareTo(high) > 0 ? end : high;
        }
        return new Bounds<>(low, value, high);
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
     * sulfate.
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
     */
    public boolean isMeasured(Ion ion) {
        return measured.contains(ion);
    }
}
