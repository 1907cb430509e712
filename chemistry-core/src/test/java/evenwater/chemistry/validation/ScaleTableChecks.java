package evenwater.chemistry.validation;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;

/** The whole cross table of the scales of hardness, and the scales of alkalinity. */
final class ScaleTableChecks {

    /** The order of {@link #CROSS_TABLE}. */
    static final List<Unit<Hardness>> SCALES = List.of(
            Hardness.GERMAN_DEGREE,
            Hardness.FRENCH_DEGREE,
            Hardness.ENGLISH_DEGREE,
            Hardness.GRAIN_PER_US_GALLON,
            Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE,
            Hardness.MILLIMOLE_PER_LITRE,
            Hardness.MILLIEQUIVALENT_PER_LITRE);

    /** Value in the unit of the row of one unit in the head of the column; whole powers of ten are exact. */
    private static final String CROSS_TABLE = """
            1 0.560288152 0.798621707 0.959104679 0.0560288152 5.60770000 2.80385000
            1.78479591 1 1.42537675 1.71180610 0.1 10.0086 5.00430
            1.25215730 0.701568900 1 1.20094993 0.0701568900 7.02172249 3.51086125
            1.04263906 0.584178312 0.832674185 1 0.0584178312 5.84680705 2.92340352
            17.8479591 10 14.2537675 17.1180610 1 100.086 50.0430
            0.178326230 0.0999140739 0.142415198 0.171033522 0.00999140739 1 0.5
            0.356652460 0.199828148 0.284830396 0.342067043 0.0199828148 2 1
            """;

    private ScaleTableChecks() {}

    static Topic hardness() {
        List<String[]> rows =
                CROSS_TABLE.lines().map(line -> line.split(" ", -1)).toList();
        List<PublishedCheck> checks = new ArrayList<>();
        for (int column = 0; column < SCALES.size(); column++) {
            for (int row = 0; row < SCALES.size(); row++) {
                if (row != column) {
                    checks.add(cell(SCALES.get(column), SCALES.get(row), rows.get(row)[column]));
                }
            }
        }
        return new Topic(
                "Scales of hardness, cross table",
                "Every scale in every other. With the definitions exact, these factors hang on the atomic weights of Ca, C and O "
                        + "alone.",
                checks);
    }

    private static PublishedCheck cell(Unit<Hardness> from, Unit<Hardness> to, String expected) {
        return PublishedCheck.of(
                crossId(from, to),
                "1 " + from,
                to.toString(),
                Source.ARITHMETIC,
                Status.COMPUTED,
                figure(expected),
                Hardness.of(1, from).in(to));
    }

    static String crossId(Unit<Hardness> from, Unit<Hardness> to) {
        return "cross-" + from + "-" + to;
    }

    /** Nine digits are rounded; fewer are all there are. */
    private static Figure figure(String expected) {
        String digits = expected.replace(".", "").replaceFirst("^0+", "");
        return digits.length() >= 9 ? Figure.printed(expected) : Figure.exact(expected);
    }

    static Topic alkalinity() {
        List<PublishedCheck> checks = new ArrayList<>(List.of(
                printed(
                                Alkalinity.MILLIEQUIVALENT_PER_LITRE,
                                Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE,
                                Source.SM_2320,
                                Status.FROM_MEMORY,
                                "50.0")
                        .remarking("the method multiplies by a plain 50 000; results with it are 0.09 % apart"),
                printed(
                        Alkalinity.MILLIEQUIVALENT_PER_LITRE,
                        Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE,
                        Source.LABORATORIES,
                        Status.COMMON_PRACTICE,
                        "61.0"),
                aquarists(Alkalinity.MILLIEQUIVALENT_PER_LITRE, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS, "2.8"),
                aquarists(
                        Alkalinity.DEGREE_OF_CARBONATE_HARDNESS,
                        Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE,
                        "17.85"),
                aquarists(
                        Alkalinity.DEGREE_OF_CARBONATE_HARDNESS, Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE, "21.8")));
        checks.addAll(row(Alkalinity.MILLIEQUIVALENT_PER_LITRE, "1", "50.0430", "61.016"));
        checks.addAll(row(Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "0.0199828148", "1", "1.21927143"));
        checks.addAll(row(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS, "0.356652460", "17.8479591", "21.7615065"));
        checks.addAll(row(Alkalinity.FRENCH_DEGREE, "0.199828148", "10", "12.1927143"));
        checks.addAll(row(Alkalinity.ENGLISH_DEGREE, "0.284830396", "14.2537675", "17.3792"));
        return new Topic(
                "Scales of alkalinity",
                "Alkalinity is counted in equivalents of acid, hardness in moles of double-charged ions.",
                checks);
    }

    private static List<PublishedCheck> row(
            Unit<Alkalinity> from, String milliequivalents, String calciumCarbonate, String bicarbonate) {
        List<PublishedCheck> checks = new ArrayList<>();
        List<Unit<Alkalinity>> units = List.of(
                Alkalinity.MILLIEQUIVALENT_PER_LITRE,
                Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE,
                Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE);
        List<String> expected = List.of(milliequivalents, calciumCarbonate, bicarbonate);
        for (int i = 0; i < units.size(); i++) {
            if (!units.get(i).equals(from)) {
                checks.add(printed(from, units.get(i), Source.ARITHMETIC, Status.COMPUTED, expected.get(i)));
            }
        }
        return checks;
    }

    private static PublishedCheck aquarists(Unit<Alkalinity> from, Unit<Alkalinity> to, String published) {
        return printed(from, to, Source.AQUARISTS, Status.COMMON_PRACTICE, published);
    }

    private static PublishedCheck printed(
            Unit<Alkalinity> from, Unit<Alkalinity> to, Source source, Status status, String published) {
        return PublishedCheck.of(
                "alkalinity-" + from + "-" + to + "-" + published,
                "1 " + from,
                to.toString(),
                source,
                status,
                published.equals("10") ? Figure.exact(published) : Figure.printed(published),
                Alkalinity.of(1, from).in(to));
    }
}
