package evenwater.pictures;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.verdict.Backing;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirement;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.measure.Unit;

/**
 * The sodium behind a softener against the hardness in front of it, with what is published about sodium in water.
 *
 * <p>The line is {@link Softener#treat} of waters that hold the sodium of the raw water and more and more hardness, as calcium: it is
 * exchanged by its charge, as magnesium is. The raw water itself, with the iron and manganese that the resin takes too, is a dot.
 */
public final class SodiumPicture extends Picture {

    private static final int STEPS = 60;
    private static final double BEYOND = 1.3;
    private static final Hardness LEAST = Hardness.of(15, Hardness.GERMAN_DEGREE);

    private final Softener softener;
    private final Water raw;
    private final Unit<Hardness> unit;
    private final Requirements published;

    private SodiumPicture(Softener softener, Water raw, Unit<Hardness> unit, Requirements published) {
        this.softener = softener;
        this.raw = raw;
        this.unit = unit;
        this.published = published;
    }

    /**
     * Returns the picture of a softener, with the published values for drinking water.
     *
     * @param softener regenerated with sodium
     * @param raw the water in front of it
     * @param unit of the hardness
     * @return the picture
     * @throws IllegalArgumentException if the softener gives another ion
     * @throws NoAnswerException if no bypass makes the wanted hardness of this water
     */
    public static SodiumPicture of(Softener softener, Water raw, Unit<Hardness> unit) {
        Objects.requireNonNull(softener, "softener");
        Objects.requireNonNull(raw, "raw");
        Objects.requireNonNull(unit, "unit");
        if (!softener.regenerant().equals(Ion.SODIUM)) {
            throw new IllegalArgumentException("the picture of sodium needs a softener with sodium, but was one with "
                    + softener.regenerant().name());
        }
        softener.treat(raw); // refuses here what it cannot soften, not while the picture is drawn
        return new SodiumPicture(softener, raw, unit, Requirements.ofDrinkingWater());
    }

    /**
     * Draws the limits of sodium of other requirements, such as those of a tank.
     *
     * @param requirements those that speak of sodium count
     * @return the picture with them in the place of the ones before
     */
    public SodiumPicture with(Requirements requirements) {
        return new SodiumPicture(softener, raw, unit, Objects.requireNonNull(requirements, "requirements"));
    }

    @Override
    public String title() {
        return "Sodium behind a softener against the hardness in front of it";
    }

    @Override
    public String description() {
        return "This water comes with " + raw.hardness().to(unit).toText(Locale.ROOT, 3) + " of hardness and "
                + Figures.text(sodium(raw)) + " mg/L of sodium, and has " + Figures.text(sodium(softener.treat(raw)))
                + " mg/L of sodium behind the " + softener.name()
                + ". Sodium comes for hardness by charge: two sodium ions for one of calcium or magnesium. Published: "
                + String.join(". ", notes()) + ".";
    }

    @Override
    void draw(Sheet sheet) {
        sheet.subtitle("Two sodium ions come for each calcium or magnesium. " + Figures.capital(softener.name())
                + "; the raw water brings " + Figures.text(sodium(raw)) + " mg/L itself.");
        Chart chart = new Chart("hardness in front of the softener, " + unit, "sodium behind the softener, mg/L")
                .fromZero()
                .line("sodium behind the softener", 0, points());
        limits().keySet().forEach(limit -> chart.guide(limit, Figures.text(limit) + " mg/L"));
        Point here = new Point(raw.hardness().in(unit), sodium(softener.treat(raw)));
        chart.mark(here, 0, "this water: " + Figures.text(here.x(), unit) + ", " + Figures.text(here.y(), "mg/L"));
        chart.draw(sheet);
        sheet.gap();
        notes().forEach(sheet::note);
    }

    private List<Point> points() {
        double most = BEYOND * Math.max(raw.hardness().in(unit), LEAST.in(unit));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            Hardness hardness = Hardness.of(most * i / STEPS, unit);
            Water water = Water.builder()
                    .total(
                            Ion.CALCIUM,
                            AmountConcentration.of(hardness.in(Hardness.MILLIMOLE_PER_LITRE), MILLIMOLE_PER_LITRE))
                    .total(Ion.SODIUM, raw.total(Ion.SODIUM))
                    .build();
            points.add(new Point(hardness.in(unit), sodium(softened(water))));
        }
        return points;
    }

    /** A water that is softer than the bypass shall make it goes past the resin as it is. */
    private Water softened(Water water) {
        try {
            return softener.treat(water);
        } catch (NoAnswerException e) {
            return water;
        }
    }

    private static double sodium(Water water) {
        return water.total(Ion.SODIUM).in(Ion.SODIUM.milligramPerLitre());
    }

    private List<String> notes() {
        return limits().entrySet().stream()
                .map(limit -> Figures.text(limit.getKey()) + " mg/L: " + String.join("; ", limit.getValue()))
                .toList();
    }

    /** What is said about each limit, the lowest first. */
    private Map<Double, List<String>> limits() {
        return published.list().stream()
                .filter(requirement -> requirement.parameter() == Parameter.SODIUM)
                .filter(requirement -> requirement.most().isPresent())
                .collect(Collectors.groupingBy(
                        SodiumPicture::limit,
                        TreeMap::new,
                        Collectors.mapping(SodiumPicture::words, Collectors.toList())));
    }

    private static double limit(Requirement<?> requirement) {
        AmountConcentration most = (AmountConcentration) requirement.most().orElseThrow(); // as of the parameter sodium
        return most.in(Ion.SODIUM.milligramPerLitre());
    }

    private static String words(Requirement<?> requirement) {
        Backing backing = requirement.citation().backing();
        if (backing == Backing.COMMON_PRACTICE || backing == Backing.OWN_RULE) {
            return requirement.meaning() + " (" + requirement.citation() + ")";
        }
        return requirement.meaning() + " (" + requirement.citation().text() + ", "
                + requirement.citation().year() + (requirement.citation().isVerified() ? ")" : ", from memory)");
    }
}
