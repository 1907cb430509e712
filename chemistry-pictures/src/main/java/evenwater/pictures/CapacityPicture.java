package evenwater.pictures;

import evenwater.chemistry.exchange.CapacityCurve;
import evenwater.chemistry.exchange.SaltEfficiency;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The operating capacity of a resin against the salt of a regeneration, beside what the salt could do if none of it were wasted.
 *
 * <p>Each line is {@link CapacityCurve#capacity} at 65 doses; a share of theory is that of {@link SaltEfficiency}.
 */
public final class CapacityPicture extends Picture {

    private static final int STEPS = 64;

    private final Unit<SaltDose> doseUnit;
    private final Unit<ExchangeCapacity> capacityUnit;
    private final List<CapacityCurve> curves;
    private final List<Marked> marked;

    private CapacityPicture(
            Unit<SaltDose> doseUnit,
            Unit<ExchangeCapacity> capacityUnit,
            List<CapacityCurve> curves,
            List<Marked> marked) {
        this.doseUnit = doseUnit;
        this.capacityUnit = capacityUnit;
        this.curves = curves;
        this.marked = marked;
    }

    private record Marked(String name, SaltDose dose, ExchangeCapacity capacity) {}

    /**
     * Returns the picture of a curve.
     *
     * @param curve of the trade, of a model or one's own
     * @param dose unit of the salt
     * @param capacity unit of the capacity
     * @return the picture
     */
    public static CapacityPicture of(CapacityCurve curve, Unit<SaltDose> dose, Unit<ExchangeCapacity> capacity) {
        Objects.requireNonNull(curve, "curve");
        Objects.requireNonNull(dose, "dose");
        Objects.requireNonNull(capacity, "capacity");
        return new CapacityPicture(dose, capacity, List.of(curve), List.of());
    }

    /**
     * Draws another curve.
     *
     * @param curve to compare
     * @return the picture with it
     * @throws IllegalArgumentException if there are too many to tell apart
     */
    public CapacityPicture with(CapacityCurve curve) {
        Objects.requireNonNull(curve, "curve");
        if (curves.size() == Theme.STYLES - 1) {
            throw Named.tooMany("curves", Theme.STYLES - 1);
        }
        return new CapacityPicture(doseUnit, capacityUnit, Named.plus(curves, curve), marked);
    }

    /**
     * Marks a dose with the capacity that it gives.
     *
     * @param name what it is, such as "planned"
     * @param dose as sodium chloride; above 0
     * @param capacity that it gives
     * @return the picture with the mark
     */
    public CapacityPicture marking(String name, Quantity<SaltDose> dose, Quantity<ExchangeCapacity> capacity) {
        Objects.requireNonNull(name, "name");
        Marked mark = new Marked(name, SaltDose.from(dose), ExchangeCapacity.from(capacity));
        SaltEfficiency.of(mark.capacity, mark.dose); // refuses a dose that is none
        return new CapacityPicture(doseUnit, capacityUnit, curves, Named.plus(marked, mark));
    }

    @Override
    public String title() {
        return "Capacity of a resin against the salt of a regeneration";
    }

    @Override
    public String description() {
        return curves.stream()
                        .map(curve -> curve.source() + ": from " + text(curve, curve.least()) + " to "
                                + text(curve, curve.most()))
                        .collect(Collectors.joining("; "))
                + marked.stream().map(mark -> "; " + words(mark)).collect(Collectors.joining())
                + ". Theory is where every sodium of the salt changes places with hardness.";
    }

    private String text(CapacityCurve curve, SaltDose dose) {
        ExchangeCapacity capacity = curve.capacity(dose);
        return capacity.to(capacityUnit).toText(Locale.ROOT, 3) + " at "
                + dose.to(doseUnit).toText(Locale.ROOT, 3) + ", " + share(capacity, dose);
    }

    private String words(Marked mark) {
        return mark.name + ": " + mark.capacity.to(capacityUnit).toText(Locale.ROOT, 3) + " at "
                + Figures.text(mark.dose.in(doseUnit), doseUnit) + ", " + share(mark.capacity, mark.dose);
    }

    private static String share(ExchangeCapacity capacity, SaltDose dose) {
        return Figures.text(100 * SaltEfficiency.of(capacity, dose).shareOfTheory(), "%") + " of theory";
    }

    @Override
    void draw(Sheet sheet) {
        sheet.subtitle("Theory is where every sodium of the salt changes places with hardness: the flatter the line "
                + "below it, the more salt goes to the drain.");
        Chart chart = new Chart(
                        "salt as sodium chloride for the volume of resin, " + doseUnit,
                        "hardness taken up before the next regeneration, " + capacityUnit)
                .fromZero();
        chart.line("theory", Theme.STYLES - 1, theory());
        int style = 0;
        for (CapacityCurve curve : curves) {
            chart.line(curve.source(), style, line(curve));
            style++;
        }
        int colour = 0;
        for (Marked mark : marked) {
            chart.mark(
                    new Point(mark.dose.in(doseUnit), mark.capacity.in(capacityUnit)),
                    colour % Theme.STYLES,
                    mark.name + ": " + Figures.text(mark.dose.in(doseUnit), doseUnit) + ", "
                            + share(mark.capacity, mark.dose));
            colour++;
        }
        chart.draw(sheet);
    }

    private List<Point> line(CapacityCurve curve) {
        double least = curve.least().in(SaltDose.GRAM_PER_LITRE);
        double most = curve.most().in(SaltDose.GRAM_PER_LITRE);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double grams = i == STEPS ? most : least + (most - least) * i / STEPS;
            SaltDose dose = SaltDose.of(Math.min(most, grams), SaltDose.GRAM_PER_LITRE);
            points.add(new Point(dose.in(doseUnit), curve.capacity(dose).in(capacityUnit)));
        }
        return points;
    }

    /** From nothing to the capacity that is the highest of all others. */
    private List<Point> theory() {
        double highest = Double.max(
                curves.stream()
                        .flatMap(curve -> line(curve).stream())
                        .mapToDouble(Point::y)
                        .max()
                        .orElseThrow(),
                marked.stream()
                        .mapToDouble(mark -> mark.capacity.in(capacityUnit))
                        .max()
                        .orElse(0));
        double perGram = new SaltEfficiency(1).perSalt().in(WaterUnits.ONE);
        double grams = ExchangeCapacity.of(highest, capacityUnit).in(ExchangeCapacity.GRAM_PER_LITRE_CALCIUM_CARBONATE)
                / perGram;
        return List.of(
                new Point(0, 0),
                new Point(SaltDose.of(grams, SaltDose.GRAM_PER_LITRE).in(doseUnit), highest));
    }
}
