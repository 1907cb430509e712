package evenwater.chemistry.exchange;

import static evenwater.chemistry.quantity.Hardness.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.kernel.BedRun;
import evenwater.chemistry.kernel.EffluentCurve;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/**
 * A bed of resin with what each of its slices holds, before or after a run.
 *
 * <p>The model: water flows through slices of equal volume; in each, ions pass a film and the bead by linear driving forces ({@link ExchangeRates}), in equilibrium at the
 * surface of the bead ({@link Resin}). Both phases are neutral at every moment, every ion is conserved. More slices make sharper fronts. Left out: channels, fouling, oxidised iron,
 * broken beads, swelling, temperature, hydrogen ions. What has no selectivity passes, cations of charge 3 among it. Immutable and thread-safe; a run gives the bed that it leaves.
 */
public final class ResinBed {

    private static final int MOST_CELLS = 1000;
    private static final double MOST_STEPS = 1e6;
    private static final List<Ion> HARDNESS = List.of(Ion.CALCIUM, Ion.MAGNESIUM);

    private final Resin resin;
    private final WaterQuantity<Volume> volume;
    private final ExchangeRates rates;
    private final BedContents contents;

    private ResinBed(Resin resin, WaterQuantity<Volume> volume, ExchangeRates rates, BedContents contents) {
        this.resin = resin;
        this.volume = volume;
        this.rates = rates;
        this.contents = contents;
    }

    /**
     * Returns a new bed of 100 slices in the sodium form.
     *
     * @param resin what it is made of
     * @param volume of the settled bed; above 0
     * @return the bed, with the {@linkplain ExchangeRates#ofBead rates} of its beads
     * @throws IllegalArgumentException if the volume is not positive
     */
    public static ResinBed of(Resin resin, Quantity<Volume> volume) {
        return of(resin, volume, ResinLoading.of(Map.of(Ion.SODIUM, 1.0)), 100);
    }

    /**
     * Returns a bed that holds the same everywhere.
     *
     * @param resin what it is made of
     * @param volume of the settled bed; above 0
     * @param loading what it holds
     * @param cells slices; 1 to 1000; the run takes time as their square
     * @return the bed, with the {@linkplain ExchangeRates#ofBead rates} of its beads
     * @throws IllegalArgumentException if volume or slices are out of range, there is no selectivity of an ion of the loading, or it has hydrogen ions
     */
    public static ResinBed of(Resin resin, Quantity<Volume> volume, ResinLoading loading, int cells) {
        Objects.requireNonNull(resin, "resin");
        Objects.requireNonNull(loading, "loading");
        WaterQuantity<Volume> stated = WaterUnits.volume(Objects.requireNonNull(volume, "volume"));
        if (!(stated.getValue() > 0)) {
            throw new IllegalArgumentException("volume of a bed must be positive, but was " + stated);
        }
        if (cells < 1 || cells > MOST_CELLS) {
            throw new IllegalArgumentException("slices of a bed must be from 1 to 1000, but were " + cells);
        }
        if (loading.fraction(Ion.HYDROGEN) > 0) {
            throw new IllegalArgumentException(
                    "a bed in the hydrogen form makes acid of its water and is left out: loading with " + Ion.HYDROGEN
                            + " must be 0, but was " + loading.fraction(Ion.HYDROGEN));
        }
        ExchangingIons ions = ExchangingIons.of(loading.ions(), resin.selectivity());
        double[] held = new double[ions.size()];
        Arrays.setAll(held, i -> loading.fraction(ions.ion(i)) * resin.equivalentsPerLitre());
        return new ResinBed(resin, stated, ExchangeRates.ofBead(resin.bead()), BedContents.dry(ions, cells, held));
    }

    /**
     * Returns the bed with other rates.
     *
     * @param other such as {@link ExchangeRates#LOCAL_EQUILIBRIUM}
     * @return the bed
     */
    public ResinBed with(ExchangeRates other) {
        return new ResinBed(resin, volume, Objects.requireNonNull(other, "rates"), contents);
    }

    /**
     * Returns the resin.
     *
     * @return what the bed is made of
     */
    public Resin resin() {
        return resin;
    }

    /**
     * Returns the volume of the settled bed.
     *
     * @return as stated
     */
    public WaterQuantity<Volume> volume() {
        return volume;
    }

    /**
     * Returns a flow as the trade of resins counts it.
     *
     * @param bedVolumesPerHour 16 BV/h are 2 US gallons per minute and cubic foot
     * @return volume per time through this bed
     * @throws IllegalArgumentException if it is no finite number
     */
    public FlowRate flow(double bedVolumesPerHour) {
        return FlowRate.of(bedVolumesPerHour * litres(), FlowRate.LITRE_PER_HOUR);
    }

    /**
     * Returns what each slice holds.
     *
     * @return loadings from the inlet of service to its outlet
     */
    public List<ResinLoading> profile() {
        return IntStream.range(0, contents.cells())
                .mapToObj(cell -> loading(List.of(cell)))
                .toList();
    }

    /**
     * Returns what the whole bed holds.
     *
     * @return the mean of its slices
     */
    public ResinLoading loading() {
        return loading(IntStream.range(0, contents.cells()).boxed().toList());
    }

    /** What the resin and the water between the beads hold of an ion, in eq per litre of bed. */
    double content(Ion ion) {
        double water = 0;
        for (int cell = 0; cell < contents.cells(); cell++) {
            water += contents.water(cell, ion) / contents.cells();
        }
        return contents.loading(ion) + resin.voidFraction() * water;
    }

    private ResinLoading loading(List<Integer> cells) {
        Map<Ion, Double> held = new LinkedHashMap<>();
        for (Ion ion : contents.ions().ions()) {
            held.put(
                    ion,
                    cells.stream()
                            .mapToDouble(cell -> contents.resin(cell, ion))
                            .sum());
        }
        return ResinLoading.of(held);
    }

    /**
     * Lets water through until hardness breaks through.
     *
     * @param feed raw water, harder than the end point
     * @param flow above 0
     * @param endPoint hardness of the effluent at which the run ends; above 0; the trade calls water below 1 gpg soft
     * @return the run
     * @throws IllegalArgumentException if flow or end point are not positive, or there is no selectivity of calcium or magnesium of the feed
     * @throws NoAnswerException if the feed is not harder than the end point, or the bed leaks more than that from the start
     */
    public ServiceRun serviceUntil(Water feed, Quantity<FlowRate> flow, Quantity<Hardness> endPoint) {
        Objects.requireNonNull(feed, "feed");
        double bedVolumesPerHour = bedVolumesPerHour(flow);
        Hardness stated = Hardness.from(endPoint);
        if (!(stated.getValue() > 0)) {
            throw new IllegalArgumentException("end point must be positive, but was " + stated);
        }
        if (feed.hardness().compareTo(stated) <= 0) {
            Hardness raw = feed.hardness().to(stated.getUnit());
            throw new NoAnswerException(
                    "the end point of " + stated + " is not below the hardness of the feed, "
                            + raw.toText(Locale.ROOT, 6) + ": the bed would never be spent",
                    stated,
                    raw);
        }
        for (Ion ion : HARDNESS) {
            if (feed.total(ion).getValue() > 0) {
                resin.selectivity().constant(ion); // which refuses an ion that would pass uncounted
            }
        }
        RunningBed run = start(feed, List.of());
        EffluentCurve curve = new EffluentCurve(run.ions().size(), run.mostSteps() + 1);
        double limit = stated.in(MILLIEQUIVALENT_PER_LITRE) / 1000;
        int status = run.serve(bedVolumesPerHour, limit, curve);
        if (status == BedRun.LEAKS) {
            throw new NoAnswerException(
                    "the bed leaks more than the end point of " + stated
                            + " from the start: more salt, counter-flow or a higher end point would help",
                    stated);
        }
        refuse(status);
        return new ServiceRun(feed, run.ions(), curve, this, after(run));
    }

    /**
     * Lets a volume of water through.
     *
     * @param feed raw water
     * @param flow above 0
     * @param throughput above 0, at most 100000 volumes of the bed
     * @return the run
     * @throws IllegalArgumentException if flow or volume are out of range
     * @throws NoAnswerException if the feed has no cation that the resin exchanges
     */
    public ServiceRun serviceFor(Water feed, Quantity<FlowRate> flow, Quantity<Volume> throughput) {
        Objects.requireNonNull(feed, "feed");
        double bedVolumesPerHour = bedVolumesPerHour(flow);
        WaterQuantity<Volume> stated = WaterUnits.volume(throughput);
        double bedVolumes = stated.in(WaterUnits.LITRE) / litres();
        if (!(bedVolumes > 0 && bedVolumes <= 100_000)) {
            throw new IllegalArgumentException("throughput must be above 0 and at most 100000 volumes of the bed of "
                    + volume + ", but was " + stated);
        }
        RunningBed run = start(feed, List.of());
        double steps = run.steps(bedVolumes);
        if (steps > MOST_STEPS) {
            throw new IllegalArgumentException("throughput of " + stated + " of this water takes " + (long) steps
                    + " steps of computation, more than a million: less water or fewer slices would do");
        }
        EffluentCurve curve = new EffluentCurve(run.ions().size(), (int) steps);
        refuse(run.pass(bedVolumes, bedVolumesPerHour, curve));
        return new ServiceRun(feed, run.ions(), curve, this, after(run));
    }

    /**
     * Brings the bed back with salt: once. What a softener gives again and again is a {@link SofteningCycle}.
     *
     * @param regeneration salt, strength, water and direction
     * @param feed raw water, which washes, rinses and makes up the brine, softened where the regeneration says so
     * @return the run with its waste
     * @throws NoAnswerException if the feed has no cation that the resin exchanges
     */
    public RegenerationRun regenerate(Regeneration regeneration, Water feed) {
        Objects.requireNonNull(regeneration, "regeneration");
        Objects.requireNonNull(feed, "feed");
        RunningBed run = start(feed, List.of(regeneration.cation()));
        int salt = run.ions().place(regeneration.cation());
        List<RegenerationRun.Waste> waste = new ArrayList<>();
        for (Regeneration.Part part : regeneration.parts()) {
            EffluentCurve curve = new EffluentCurve(run.ions().size(), 0);
            refuse(run.pass(part, salt, curve));
            double[] mean = new double[run.ions().size()];
            Arrays.setAll(mean, i -> curve.sum(i) / curve.throughput());
            waste.add(new RegenerationRun.Waste(
                    part.name(),
                    WaterUnits.volume(part.bedVolumes() * litres(), WaterUnits.LITRE),
                    Streams.of(feed, run.ions(), mean)));
        }
        return new RegenerationRun(regeneration, this, waste, after(run));
    }

    private RunningBed start(Water feed, List<Ion> others) {
        return RunningBed.of(contents, resin, rates, feed, others);
    }

    private ResinBed after(RunningBed run) {
        return new ResinBed(resin, volume, rates, run.contents());
    }

    private static void refuse(int status) {
        if (status != BedRun.ENDED) {
            throw new NoAnswerException(
                    status == BedRun.NOT_REACHED
                            ? "the effluent did not reach the end point within four times what the resin can hold"
                            : "the balance of a slice of the bed could not be solved (status " + status + ")");
        }
    }

    private double bedVolumesPerHour(Quantity<FlowRate> flow) {
        FlowRate stated = FlowRate.from(Objects.requireNonNull(flow, "flow"));
        if (!(stated.getValue() > 0)) {
            throw new IllegalArgumentException("flow through a bed must be positive, but was " + stated);
        }
        return stated.in(FlowRate.LITRE_PER_HOUR) / litres();
    }

    private double litres() {
        return volume.in(WaterUnits.LITRE);
    }

    /** Returns resin and volume, for logs. */
    @Override
    public String toString() {
        return volume + " of " + resin + ", in " + contents.cells() + " slices";
    }
}
