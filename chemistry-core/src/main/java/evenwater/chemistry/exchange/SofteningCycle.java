package evenwater.chemistry.exchange;

import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.Water;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;

/**
 * Service to an end point and regeneration, again and again, until one cycle is like the next.
 *
 * <p>A new bed gives more than an old one: what the salt does not bring back in the first cycles stays. Immutable and thread-safe.
 */
public final class SofteningCycle {

    /** Capacities that differ by less than this share are the same. */
    private static final double STEADY = 1e-5;

    private static final int MOST_CYCLES = 200;

    private final ServiceRun service;
    private final RegenerationRun regeneration;
    private final int cycles;

    private SofteningCycle(ServiceRun service, RegenerationRun regeneration, int cycles) {
        this.service = service;
        this.regeneration = regeneration;
        this.cycles = cycles;
    }

    /**
     * Runs a bed until its capacity changes by less than 1e-5 from one cycle to the next.
     *
     * @param bed to begin with; the steady cycle does not depend on it
     * @param feed raw water, harder than the end point
     * @param flow in service; above 0
     * @param endPoint hardness of the effluent at which the bed is regenerated; above 0
     * @param regeneration how it is brought back
     * @return the steady cycle
     * @throws IllegalArgumentException if flow or end point are not positive
     * @throws NoAnswerException if the feed is not harder than the end point, the bed comes to leak more than that from the start, or no steady cycle is reached
     */
    public static SofteningCycle steady(
            ResinBed bed, Water feed, Quantity<FlowRate> flow, Quantity<Hardness> endPoint, Regeneration regeneration) {
        Objects.requireNonNull(bed, "bed");
        Objects.requireNonNull(regeneration, "regeneration");
        ResinBed fresh = bed;
        double before = Double.NaN;
        for (int cycle = 1; cycle <= MOST_CYCLES; cycle++) {
            ServiceRun service = fresh.serviceUntil(feed, flow, endPoint);
            RegenerationRun brine = service.bedAfter().regenerate(regeneration, feed);
            double capacity = service.capacity().in(ExchangeCapacity.EQUIVALENT_PER_LITRE);
            if (Math.abs(capacity - before) <= STEADY * capacity) {
                return new SofteningCycle(service, brine, cycle);
            }
            before = capacity;
            fresh = brine.bedAfter();
        }
        ExchangeCapacity last = ExchangeCapacity.of(before, ExchangeCapacity.EQUIVALENT_PER_LITRE);
        throw new NoAnswerException(
                "no steady cycle after " + MOST_CYCLES + " regenerations with " + regeneration
                        + ": the capacity was still changing at " + last.toText(Locale.ROOT, 4),
                last);
    }

    /**
     * Returns the run in service.
     *
     * @return effluent, volume and leakage
     */
    public ServiceRun service() {
        return service;
    }

    /**
     * Returns the regeneration after it.
     *
     * @return salt, waste and the bed for the next run
     */
    public RegenerationRun regeneration() {
        return regeneration;
    }

    /**
     * Returns how many cycles it took.
     *
     * @return 2 or more
     */
    public int cycles() {
        return cycles;
    }

    /**
     * Returns what a regeneration is worth.
     *
     * @return hardness taken to the end point per volume of resin
     */
    public ExchangeCapacity capacity() {
        return service.capacity();
    }

    /**
     * Returns how well the salt is used.
     *
     * @return charges of hardness taken per charge of salt
     */
    public SaltEfficiency efficiency() {
        return new SaltEfficiency(capacity().in(ExchangeCapacity.EQUIVALENT_PER_LITRE)
                / regeneration.regeneration().equivalentsPerLitre());
    }
}
