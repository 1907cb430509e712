package evenwater.chemistry.treatment;

import evenwater.chemistry.exchange.Regeneration;
import evenwater.chemistry.exchange.ResinBed;
import evenwater.chemistry.exchange.SofteningCycle;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.Water;
import java.util.Objects;
import javax.measure.Quantity;

/**
 * A softener as the bed of resin that it is: its leakage follows from salt, direction, flow and water, ion by ion.
 *
 * <p>{@link Softener} keeps the books with a leakage that one states; this one computes it, over the run of its steady cycle. What the bed leaves out
 * ({@link ResinBed}) is left out here; its two rates are calibrated on the capacity that the trade expects, not on its leakage. For a bypass put
 * {@link Bypass} around it. A measured pH is dropped, as with every treatment. Immutable and thread-safe.
 */
public final class ResinBedSoftener implements Treatment {

    private final ResinBed bed;
    private final FlowRate flow;
    private final Hardness endPoint;
    private final Regeneration regeneration;

    private ResinBedSoftener(ResinBed bed, FlowRate flow, Hardness endPoint, Regeneration regeneration) {
        this.bed = bed;
        this.flow = flow;
        this.endPoint = endPoint;
        this.regeneration = regeneration;
    }

    /**
     * Returns a softener.
     *
     * @param bed its resin
     * @param flow in service; above 0
     * @param endPoint hardness behind the resin at which it is regenerated; above 0
     * @param regeneration how
     * @return the softener
     * @throws IllegalArgumentException if flow or end point are not positive
     */
    public static ResinBedSoftener of(
            ResinBed bed, Quantity<FlowRate> flow, Quantity<Hardness> endPoint, Regeneration regeneration) {
        FlowRate statedFlow = FlowRate.from(flow);
        Hardness statedEnd = Hardness.from(endPoint);
        if (!(statedFlow.getValue() > 0 && statedEnd.getValue() > 0)) {
            throw new IllegalArgumentException(
                    "flow and end point of a softener must be positive, but were " + statedFlow + " and " + statedEnd);
        }
        return new ResinBedSoftener(
                Objects.requireNonNull(bed, "bed"),
                statedFlow,
                statedEnd,
                Objects.requireNonNull(regeneration, "regeneration"));
    }

    /**
     * Returns the cycle that repeats itself with a water: the effluent over the run, its capacity, the waste.
     *
     * @param source raw water
     * @return the steady cycle; takes some tenths of a second
     * @throws NoAnswerException if the water is not harder than the end point, or the bed leaks more than that from the start
     */
    public SofteningCycle cycle(Water source) {
        return SofteningCycle.steady(bed, source, flow, endPoint, regeneration);
    }

    /**
     * Returns all water of a run mixed.
     *
     * @param source raw water
     * @return the water behind the softener
     * @throws NoAnswerException if the water is not harder than the end point, or the bed leaks more than that from the start
     */
    @Override
    public Water treat(Water source) {
        return cycle(source).service().meanWater();
    }

    @Override
    public String name() {
        return "softener of " + bed.volume() + " of resin, " + regeneration;
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name();
    }
}
