package evenwater.pictures;

import evenwater.chemistry.aquarium.TankCourse;
import evenwater.chemistry.aquarium.TankMoment;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.uncertainty.CoverageInterval;
import evenwater.chemistry.uncertainty.UncertainResult;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.measure.Unit;

/**
 * A figure of a tank over weeks, with the band in which it lies for the most part of many draws.
 *
 * <p>A line goes through every {@link TankMoment} of a course; the band is, at each moment, the symmetric interval of
 * {@link UncertainResult} of the draws.
 *
 * @param <Q> kind of the figure, such as {@code Hardness}
 */
public final class TankPicture<Q extends WaterQuantity<Q>> extends Picture {

    private static final double DAYS = 7;
    private static final double SAME_DAY = 1e-6;

    private final String figure;
    private final Unit<Q> unit;
    private final Function<Water, Q> view;
    private final List<Tank> tanks;
    private final List<Limit<Q>> limits;

    private TankPicture(String figure, Unit<Q> unit, Function<Water, Q> view, List<Tank> tanks, List<Limit<Q>> limits) {
        this.figure = figure;
        this.unit = unit;
        this.view = view;
        this.tanks = tanks;
        this.limits = limits;
    }

    private record Tank(String name, List<Point> line, List<Point> low, List<Point> high, int draws, double coverage) {}

    private record Limit<Q>(String name, Q value) {}

    /**
     * Returns the picture of a tank.
     *
     * @param <Q> kind of the figure
     * @param figure what it is, such as "sodium"
     * @param unit of the figure
     * @param view takes the figure from a water, such as {@code Water::hardness}
     * @param name of the tank, or of how it is kept
     * @param course by the best guess of everything
     * @return the picture
     */
    public static <Q extends WaterQuantity<Q>> TankPicture<Q> of(
            String figure, Unit<Q> unit, Function<Water, Q> view, String name, TankCourse course) {
        Objects.requireNonNull(figure, "figure");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(view, "view");
        return new TankPicture<>(figure, unit, view, List.<Tank>of(), List.<Limit<Q>>of()).with(name, course);
    }

    /**
     * Draws another tank.
     *
     * @param name of the tank, or of how it is kept
     * @param course by the best guess of everything
     * @return the picture with it
     * @throws IllegalArgumentException if there are too many to tell apart
     */
    public TankPicture<Q> with(String name, TankCourse course) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(course, "course");
        return withTank(new Tank(name, line(course), List.of(), List.of(), 0, 0));
    }

    private TankPicture<Q> withTank(Tank tank) {
        if (tanks.size() == Theme.STYLES) {
            throw Named.tooMany("tanks", Theme.STYLES);
        }
        return new TankPicture<>(figure, unit, view, Named.plus(tanks, tank), limits);
    }

    /**
     * Draws the band of the last tank.
     *
     * @param draws courses of the same tank with what is uncertain drawn, as {@code MonteCarlo.outcomes} gives them; with the same moments
     * @param coverage part of the draws inside the band; above 0, with at least one draw outside
     * @return the picture with it
     * @throws IllegalArgumentException if the moments are others, there are fewer than two draws, or the coverage is out of range
     */
    public TankPicture<Q> withDraws(List<TankCourse> draws, double coverage) {
        Objects.requireNonNull(draws, "draws");
        Tank last = tanks.get(tanks.size() - 1);
        draws.forEach(draw -> requireSameMoments(last, Objects.requireNonNull(draw, "draw")));
        List<Point> low = new ArrayList<>();
        List<Point> high = new ArrayList<>();
        for (int i = 0; i < last.line.size(); i++) {
            int moment = i;
            List<Q> outcomes = draws.stream()
                    .map(draw -> view.apply(draw.moments().get(moment).water()).to(unit))
                    .toList();
            CoverageInterval<Q> interval =
                    UncertainResult.of(outcomes, coverage).symmetricInterval();
            double weeks = last.line.get(i).x();
            low.add(new Point(weeks, interval.low().in(unit)));
            high.add(new Point(weeks, interval.high().in(unit)));
        }
        List<Tank> others = new ArrayList<>(tanks.subList(0, tanks.size() - 1));
        others.add(new Tank(last.name, last.line, List.copyOf(low), List.copyOf(high), draws.size(), coverage));
        return new TankPicture<>(figure, unit, view, List.copyOf(others), limits);
    }

    private static void requireSameMoments(Tank tank, TankCourse draw) {
        boolean same = draw.moments().size() == tank.line.size()
                && IntStream.range(0, tank.line.size())
                        .allMatch(i -> Math.abs(weeks(draw.moments().get(i))
                                        - tank.line.get(i).x())
                                <= SAME_DAY);
        if (!same) {
            throw new IllegalArgumentException("draws of " + tank.name
                    + " must have the moments of its course: the same period and the same days of change");
        }
    }

    /**
     * Draws a limit.
     *
     * @param name what it is, such as "most for plants"
     * @param limit of the figure
     * @return the picture with it
     */
    public TankPicture<Q> withLimit(String name, Q limit) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(limit, "limit");
        return new TankPicture<>(figure, unit, view, tanks, Named.plus(limits, new Limit<>(name, limit)));
    }

    @Override
    public String title() {
        return Figures.capital(figure) + " of the tank over weeks";
    }

    @Override
    public String description() {
        return tanks.stream().map(this::words).map(Figures::capital).collect(Collectors.joining(". "))
                + limits.stream()
                        .map(limit -> ". " + Figures.capital(limit.name) + ": " + Figures.text(limit.value.in(unit))
                                + " " + unit)
                        .collect(Collectors.joining())
                + ".";
    }

    private String words(Tank tank) {
        Point first = tank.line.get(0);
        int end = tank.line.size() - 1;
        String band = tank.low.isEmpty()
                ? ""
                : " (" + Figures.text(100 * tank.coverage) + " % of " + tank.draws + " draws between "
                        + Figures.text(tank.low.get(end).y()) + " and "
                        + Figures.text(tank.high.get(end).y()) + ")";
        return tank.name + ": from " + Figures.text(first.y()) + " to "
                + Figures.text(tank.line.get(end).y()) + " " + unit + " in "
                + Figures.text(tank.line.get(end).x()) + " weeks" + band;
    }

    @Override
    void draw(Sheet sheet) {
        tanks.stream()
                .filter(tank -> !tank.low.isEmpty())
                .findFirst()
                .ifPresent(tank -> sheet.subtitle("Shaded: " + Figures.text(100 * tank.coverage) + " % of " + tank.draws
                        + " draws of what is uncertain. Steps are changes of water."));
        Chart chart = new Chart("weeks", figure + ", " + unit);
        if (isNearZero()) {
            chart.fromZero();
        }
        for (int i = 0; i < tanks.size(); i++) {
            Tank tank = tanks.get(i);
            if (!tank.low.isEmpty()) {
                chart.area(i, tank.low, tank.high);
            }
            chart.line(tank.name, i, tank.line);
        }
        limits.forEach(limit ->
                chart.guide(limit.value.in(unit), limit.name + ": " + Figures.text(limit.value.in(unit), unit)));
        chart.draw(sheet);
    }

    /** Beside a 0 that is as near as this, what lies above would seem to grow more than it does. */
    private boolean isNearZero() {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (Tank tank : tanks) {
            for (Point point : tank.line) {
                least = Math.min(least, point.y());
                most = Math.max(most, point.y());
            }
        }
        return least >= 0 && least <= most / 2;
    }

    private List<Point> line(TankCourse course) {
        return course.moments().stream()
                .map(moment ->
                        new Point(weeks(moment), view.apply(moment.water()).in(unit)))
                .toList();
    }

    private static double weeks(TankMoment moment) {
        return moment.time().in(WaterUnits.DAY) / DAYS;
    }
}
