package evenwater.pictures;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.exchange.ServiceRun;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Volume;

/**
 * What leaves a bed of resin while water runs through it: every ion that is exchanged, against the throughput.
 *
 * <p>The lines are the samples of {@link ServiceRun#effluent}, thinned to some 200. Ions that never come to 3 % of the greatest
 * concentration are left out.
 */
public final class BreakthroughPicture extends Picture {

    private static final int MOST_SAMPLES = 200;
    private static final double LEAST_SHARE = 0.03;

    private final ServiceRun run;
    private final Unit<Volume> unit;
    private final List<ServiceRun.Sample> samples;
    private final Optional<Hardness> endPoint;

    private BreakthroughPicture(
            ServiceRun run, Unit<Volume> unit, List<ServiceRun.Sample> samples, Optional<Hardness> endPoint) {
        this.run = run;
        this.unit = unit;
        this.samples = samples;
        this.endPoint = endPoint;
    }

    /**
     * Returns the picture of a run.
     *
     * @param run through a bed
     * @param unit of the throughput
     * @return the picture
     */
    public static BreakthroughPicture of(ServiceRun run, Unit<Volume> unit) {
        Objects.requireNonNull(run, "run");
        return new BreakthroughPicture(run, Objects.requireNonNull(unit, "unit"), run.effluent(), Optional.empty());
    }

    /**
     * Marks the throughput from which on the water is harder than an end point.
     *
     * @param hardness end point of the service
     * @return the picture with the mark, if the run gets there
     */
    public BreakthroughPicture endingAt(Quantity<Hardness> hardness) {
        return new BreakthroughPicture(run, unit, samples, Optional.of(Hardness.from(hardness)));
    }

    @Override
    public String title() {
        return "What leaves the resin as it is used up";
    }

    @Override
    public String description() {
        return "Over " + Figures.text(run.volume().in(unit)) + " " + unit
                + ", from feed to effluent at the end, in meq/L: "
                + shown().stream()
                        .map(i -> run.ions().get(i).name() + " from "
                                + Figures.text(feed(run.ions().get(i))) + " to "
                                + Figures.text(of(samples.get(samples.size() - 1), i)) + ", at most "
                                + Figures.text(most(i)))
                        .collect(Collectors.joining("; "))
                + "."
                + endPoint.map(end -> " "
                                + (end().isPresent()
                                        ? "From " + Figures.text(end().getAsDouble()) + " " + unit
                                                + " on the water is harder than "
                                        : "The water at the end is not harder than ")
                                + end.toText(Locale.ROOT, 3) + ".")
                        .orElse("");
    }

    @Override
    void draw(Sheet sheet) {
        sheet.subtitle("What the resin holds less strongly passes its feed first. The feed, in meq/L: "
                + shown().stream()
                        .map(i -> run.ions().get(i))
                        .map(ion -> ion.name() + "\u00A0" + Figures.few(feed(ion)))
                        .collect(Collectors.joining(", "))
                + ".");
        Chart chart = new Chart("water through the bed, " + unit, "in the water that leaves, meq/L")
                .fromZero()
                .fromNothing();
        int style = 0;
        for (int i : shown()) {
            chart.line(run.ions().get(i).name(), style, line(i));
            style++;
        }
        endPoint.ifPresent(hardness -> end().ifPresent(volume ->
                chart.upright(volume, hardness.toText(Locale.ROOT, 3) + " at " + Figures.text(volume, unit))));
        chart.draw(sheet);
    }

    private List<Point> line(int ion) {
        int every = Math.max(1, (samples.size() + MOST_SAMPLES - 1) / MOST_SAMPLES);
        List<Point> points = new ArrayList<>();
        for (int row = (samples.size() - 1) % every; row < samples.size(); row += every) { // so that the last is one
            points.add(new Point(volume(samples.get(row)), of(samples.get(row), ion)));
        }
        return points;
    }

    private double volume(ServiceRun.Sample sample) {
        return run.volume().in(unit) * sample.bedVolumes() / run.bedVolumes();
    }

    private static double of(ServiceRun.Sample sample, int ion) {
        return sample.concentrations().get(ion).in(MILLIEQUIVALENT_PER_LITRE);
    }

    private double feed(Ion ion) {
        Water feed = run.feed();
        return ion.equivalents(feed.total(ion)).in(MILLIEQUIVALENT_PER_LITRE);
    }

    private double most(int ion) {
        return samples.stream().mapToDouble(sample -> of(sample, ion)).max().orElse(0);
    }

    /** The ions that count, at most as many as can be told apart. */
    private List<Integer> shown() {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < run.ions().size(); i++) {
            all.add(i);
        }
        double most = all.stream().mapToDouble(this::most).max().orElse(0);
        return all.stream()
                .filter(i -> most(i) >= LEAST_SHARE * most)
                .limit(Theme.STYLES)
                .toList();
    }

    /** The throughput after which the hardness stays above the end point; empty if the run ends below it. */
    private OptionalDouble end() {
        double limit = endPoint.orElseThrow().in(Hardness.MILLIEQUIVALENT_PER_LITRE);
        int first = samples.size();
        while (first > 0 && hardness(samples.get(first - 1)) > limit) {
            first--;
        }
        return first == samples.size() ? OptionalDouble.empty() : OptionalDouble.of(volume(samples.get(first)));
    }

    private double hardness(ServiceRun.Sample sample) {
        double sum = 0;
        for (Ion ion : List.of(Ion.CALCIUM, Ion.MAGNESIUM)) {
            int i = run.ions().indexOf(ion);
            sum += i < 0 ? 0 : of(sample, i);
        }
        return sum;
    }
}
