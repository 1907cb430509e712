package evenwater.chemistry.exchange;

import static evenwater.chemistry.quantity.EquivalentConcentration.EQUIVALENT_PER_LITRE;

import evenwater.chemistry.kernel.EffluentCurve;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/** What a bed let through between two regenerations: every ion over throughput. Immutable and thread-safe. */
public final class ServiceRun {

    private final Water feed;
    private final ExchangingIons ions;
    private final EffluentCurve curve;
    private final ResinBed before;
    private final ResinBed after;

    ServiceRun(Water feed, ExchangingIons ions, EffluentCurve curve, ResinBed before, ResinBed after) {
        this.feed = feed;
        this.ions = ions;
        this.curve = curve;
        this.before = before;
        this.after = after;
    }

    /**
     * What left the bed during one step of the computation.
     *
     * @param bedVolumes throughput at the end of the step, in volumes of the bed
     * @param concentrations of the exchanging ions, in the order of {@link ServiceRun#ions}
     */
    public record Sample(double bedVolumes, List<EquivalentConcentration> concentrations) {

        /**
         * Copies the list.
         *
         * @param bedVolumes see the record
         * @param concentrations see the record
         */
        public Sample {
            concentrations = List.copyOf(concentrations);
        }
    }

    /**
     * Returns the ions that were exchanged.
     *
     * @return those of the feed and of the bed, in their order
     */
    public List<Ion> ions() {
        return ions.ions();
    }

    /**
     * Returns the effluent over throughput.
     *
     * @return one row for each step, in the order of time
     */
    public List<Sample> effluent() {
        return IntStream.range(0, curve.count())
                .mapToObj(row -> new Sample(
                        curve.throughput(row),
                        IntStream.range(0, ions.size())
                                .mapToObj(i ->
                                        EquivalentConcentration.of(curve.concentration(row, i), EQUIVALENT_PER_LITRE))
                                .toList()))
                .toList();
    }

    /**
     * Returns how much water the run gave.
     *
     * @return in litres
     */
    public WaterQuantity<Volume> volume() {
        return WaterUnits.volume(curve.throughput() * litres(), WaterUnits.LITRE);
    }

    /**
     * Returns how much water the run gave for its bed.
     *
     * @return volumes of the bed; no unit
     */
    public double bedVolumes() {
        return curve.throughput();
    }

    /**
     * Returns the water that left at some throughput.
     *
     * @param throughput above 0, at most {@link #volume}
     * @return the water; what a cation resin lets pass is that of the feed
     * @throws IllegalArgumentException if the run gave less
     */
    public Water waterAt(Quantity<Volume> throughput) {
        WaterQuantity<Volume> stated = WaterUnits.volume(Objects.requireNonNull(throughput, "throughput"));
        double bedVolumes = stated.in(WaterUnits.LITRE) / litres();
        int row = 0;
        while (row < curve.count() && curve.throughput(row) < bedVolumes * (1 - 1e-12)) {
            row++;
        }
        if (!(bedVolumes > 0) || row == curve.count()) {
            throw new IllegalArgumentException("throughput must be above 0 and at most the "
                    + volume().toText(Locale.ROOT, 6) + " of the run, but was " + stated);
        }
        return water(row);
    }

    private Water water(int row) {
        double[] left = new double[ions.size()];
        Arrays.setAll(left, i -> curve.concentration(row, i));
        return Streams.of(feed, ions, left);
    }

    /**
     * Returns all water of the run mixed, as in a tank behind the softener.
     *
     * @return the water; in its ions as much less hardness than the feed as the resin took
     */
    public Water meanWater() {
        double[] mean = new double[ions.size()];
        Arrays.setAll(mean, i -> curve.sum(i) / curve.throughput());
        return Streams.of(feed, ions, mean);
    }

    /**
     * Returns what the bed lets through before hardness breaks through: the hardness of the water in the middle of the run.
     *
     * @return calcium and magnesium
     */
    public Hardness leakage() {
        return waterAt(volume().divide(2)).hardness();
    }

    /**
     * Returns the hardness of all water of the run mixed, the breakthrough at its end included.
     *
     * @return calcium and magnesium
     */
    public Hardness meanHardness() {
        return meanWater().hardness();
    }

    /**
     * Returns the softest water of the run.
     *
     * @return calcium and magnesium of one step
     */
    public Hardness lowestHardness() {
        int lowest = 0;
        for (int row = 1; row < curve.count(); row++) {
            lowest = hardness(row) < hardness(lowest) ? row : lowest;
        }
        return water(lowest).hardness();
    }

    private double hardness(int row) {
        double sum = 0;
        for (int i = 0; i < ions.size(); i++) {
            boolean counts = ions.ion(i).equals(Ion.CALCIUM) || ions.ion(i).equals(Ion.MAGNESIUM);
            sum += counts ? curve.concentration(row, i) : 0;
        }
        return sum;
    }

    /**
     * Returns the hardness that the run took out, for its bed: the operating capacity if it went to the end point.
     *
     * @return charges of calcium and magnesium per volume of resin
     */
    public ExchangeCapacity capacity() {
        double taken = feed.hardness().subtract(meanHardness()).in(Hardness.MILLIEQUIVALENT_PER_LITRE) / 1000;
        return ExchangeCapacity.of(taken * curve.throughput(), ExchangeCapacity.EQUIVALENT_PER_LITRE);
    }

    /**
     * Returns the feed.
     *
     * @return raw water
     */
    public Water feed() {
        return feed;
    }

    /**
     * Returns the bed that the run left.
     *
     * @return the bed after
     */
    public ResinBed bedAfter() {
        return after;
    }

    private double litres() {
        return before.volume().in(WaterUnits.LITRE);
    }
}
