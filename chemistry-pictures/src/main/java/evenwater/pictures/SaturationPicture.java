package evenwater.pictures;

import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;

/**
 * The saturation index of calcite against temperature, of water that is closed to the air as in a pipe or a warm tank.
 *
 * <p>Each point is {@link Speciation#saturationIndex} of the water at another temperature: it keeps its carbon, and its pH follows.
 */
public final class SaturationPicture extends Picture {

    private static final int STEPS = 50;

    /** In the unit, as is the other end. */
    private final double from;

    private final double to;
    private final Unit<Temperature> unit;
    private final List<Course> courses;

    private SaturationPicture(double from, double to, Unit<Temperature> unit, List<Course> courses) {
        this.from = from;
        this.to = to;
        this.unit = unit;
        this.courses = courses;
    }

    private record Course(String name, List<Point> points) {}

    /**
     * Returns the picture of a water.
     *
     * @param name of the water
     * @param water with calcium and known carbon, or alkalinity and pH
     * @param from least temperature; 0 °C or more
     * @param to greatest temperature, above the least; at most the 50 °C that {@link Speciation} holds for
     * @param unit of the temperature
     * @return the picture
     * @throws IllegalArgumentException if the range is none, or the water has no calcium or no carbon
     * @throws evenwater.chemistry.quantity.NoAnswerException if its pH is unknown
     */
    public static SaturationPicture of(
            String name, Water water, Quantity<Temperature> from, Quantity<Temperature> to, Unit<Temperature> unit) {
        WaterQuantity<Temperature> least = WaterUnits.temperature(Objects.requireNonNull(from, "from"));
        WaterQuantity<Temperature> greatest = WaterUnits.temperature(Objects.requireNonNull(to, "to"));
        Objects.requireNonNull(unit, "unit");
        if (least.compareTo(greatest) >= 0) {
            throw new IllegalArgumentException(
                    "the greatest temperature must be above the least, but they were " + greatest + " and " + least);
        }
        return new SaturationPicture(least.in(unit), greatest.in(unit), unit, List.of()).with(name, water);
    }

    /**
     * Draws another water.
     *
     * @param name of the water
     * @param water as in {@link #of}
     * @return the picture with it
     * @throws IllegalArgumentException if it has no calcium or no carbon, or there are too many to tell apart
     * @throws evenwater.chemistry.quantity.NoAnswerException if its pH is unknown
     */
    public SaturationPicture with(String name, Water water) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(water, "water");
        if (courses.size() == Theme.STYLES) {
            throw Named.tooMany("waters", Theme.STYLES);
        }
        Water closed =
                water.withCarbon(Speciation.of(water).carbon()); // a measured pH holds at its own temperature only
        at(name, closed, to); // refuses a range that is too wide by its end
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double degrees = i == STEPS ? to : from + (to - from) * i / STEPS;
            points.add(at(name, closed, degrees));
        }
        return new SaturationPicture(from, to, unit, Named.plus(courses, new Course(name, List.copyOf(points))));
    }

    private Point at(String name, Water closed, double degrees) {
        WaterQuantity<Temperature> temperature = WaterUnits.temperature(degrees, unit);
        double index = Speciation.of(closed.with(temperature))
                .saturationIndex(Mineral.CALCITE)
                .orElseThrow(() -> new IllegalArgumentException(
                        name + ": a saturation index of calcite needs calcium and carbon, and this water lacks one"));
        return new Point(degrees, index);
    }

    @Override
    public String title() {
        return "Will it scale? Saturation with calcite against temperature";
    }

    @Override
    public String description() {
        return "The saturation index of calcite, closed to the air, is for "
                + courses.stream()
                        .map(course -> course.name + " from " + end(course, 0) + " to "
                                + end(course, course.points.size() - 1))
                        .collect(Collectors.joining("; "))
                + ". Above 0 calcite can drop out as scale, below 0 it dissolves.";
    }

    private String end(Course course, int index) {
        Point point = course.points.get(index);
        return String.format(Locale.ROOT, "%.2f", point.y()).replace('-', '−') + " at " + Figures.text(point.x()) + " "
                + unit;
    }

    @Override
    void draw(Sheet sheet) {
        sheet.subtitle("Closed to the air. Above 0 calcite can drop out as scale, below 0 it dissolves; "
                + "the index is good to some 0.05, or to what the pH is good to.");
        Chart chart = new Chart("temperature, " + unit, "saturation index of calcite").guide(0, "in equilibrium");
        for (int i = 0; i < courses.size(); i++) {
            chart.line(courses.get(i).name, i, courses.get(i).points);
        }
        chart.draw(sheet);
    }
}
