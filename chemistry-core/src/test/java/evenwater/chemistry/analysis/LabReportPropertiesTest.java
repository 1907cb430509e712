package evenwater.chemistry.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Unit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Laws of reading and of concluding. */
class LabReportPropertiesTest {

    /** What a row may be of, with its unit and basis; each at most once in a report, so that nothing contradicts. */
    private static final List<String> ANALYTES = List.of(
            "hardness | °dH |",
            "alkalinity | meq/L |",
            "sodium | mg/L |",
            "K | mg/L |",
            "Chloride | mg/L |",
            "SO4 | mg/L |",
            "nitrate | mg/L | N",
            "ammonia | mg/L | NH4",
            "phosphate | mg/L | PO4",
            "silica | mg/L | SiO2",
            "iron | mg/L |",
            "bromide | µg/L |");

    private static final List<Function<Water, AmountConcentration>> AMOUNTS = List.of(
            water -> water.total(Ion.CALCIUM),
            water -> water.total(Ion.MAGNESIUM),
            water -> water.total(Ion.SODIUM),
            water -> water.total(Ion.CHLORIDE),
            water -> Softener.withSodium().treat(water).total(Ion.SODIUM),
            Water::ionicStrength);

    private static final Assumptions CARRIED = Assumptions.usual().carrying(Ion.CHLORIDE, Ion.SODIUM);

    @Provide
    Arbitrary<List<ReportRow>> reports() {
        Arbitrary<String> value = Combinators.combine(
                        Arbitraries.of("", "", "<"), Arbitraries.integers().between(1, 5000))
                .as((sign, hundredths) -> sign + hundredths / 100.0);
        Arbitrary<Set<String>> analytes = Arbitraries.of(ANALYTES).set().ofMinSize(1);
        return analytes.flatMap(chosen -> value.list().ofSize(chosen.size()).map(values -> {
            List<ReportRow> rows = new ArrayList<>();
            for (String analyte : chosen) {
                String[] f = (analyte + " ").split("\\|");
                rows.add(new ReportRow(rows.size() + 1, f[0], values.get(rows.size()), f[1], f[2]));
            }
            return rows;
        }));
    }

    private static LabReport read(List<ReportRow> rows) {
        return LabReport.read(rows, ReportOptions.none());
    }

    @Property
    void rowsInAnyOrderGiveTheSameWater(@ForAll("reports") List<ReportRow> rows, @ForAll Random random) {
        List<ReportRow> shuffled = new ArrayList<>(rows);
        Collections.shuffle(shuffled, random);
        Interpretation one = read(rows).interpret();
        Interpretation other = read(shuffled).interpret();
        assertEquals(one.water(), other.water());
        assertEquals(Set.copyOf(one.notMeasured()), Set.copyOf(other.notMeasured()));
        Bounds<EquivalentConcentration> charge = one.bounds(Water::unmeasuredCharge);
        Bounds<EquivalentConcentration> shuffledCharge = other.bounds(Water::unmeasuredCharge);
        // sums over points in another order: equal but for rounding
        assertEquals(charge.low().getValue(), shuffledCharge.low().getValue(), 1e-12 * 1000);
        assertEquals(charge.high().getValue(), shuffledCharge.high().getValue(), 1e-12 * 1000);
    }

    @Property
    void readingsThatAgreeMayComeInAnyOrder(
            @ForAll @DoubleRange(min = 1, max = 100) double value,
            @ForAll @DoubleRange(min = -0.03, max = 0.03) double off,
            @ForAll @DoubleRange(min = -0.03, max = 0.03) double otherOff,
            @ForAll boolean below) {
        ReportRow one = new ReportRow(1, "sodium", Double.toString(value), "mg/L", "");
        ReportRow two = new ReportRow(2, "sodium", Double.toString(value * (1 + off)), "mg/L", "");
        ReportRow three = new ReportRow(3, "sodium", (below ? "<" : "") + value * (1 + otherOff), "mg/L", "");
        List<Object> results = new ArrayList<>();
        for (List<ReportRow> order : List.of(
                List.of(one, two, three),
                List.of(one, three, two),
                List.of(two, one, three),
                List.of(two, three, one),
                List.of(three, one, two),
                List.of(three, two, one))) {
            results.add(waterOrRefusal(order));
        }
        assertEquals(Collections.nCopies(6, results.get(0)), results);
    }

    private static Object waterOrRefusal(List<ReportRow> rows) {
        try {
            return read(rows).interpret().water();
        } catch (UnusableReportException e) {
            return "refused";
        }
    }

    @Property
    void theUnitOfTheHardnessDoesNotMatter(@ForAll @DoubleRange(min = 0.01, max = 50) double millimoles) {
        Hardness stated = Hardness.of(millimoles, Hardness.MILLIMOLE_PER_LITRE);
        double expected = softened(LabReport.builder().hardness(stated).build());
        for (Unit<Hardness> unit : Hardness.units()) {
            Hardness same = stated.to(unit);
            assertEquals(expected, softened(LabReport.builder().hardness(same).build()), 1e-12 * expected);
            ReportRow row = new ReportRow(1, "hardness", same.getValue().toString(), unit.getSymbol(), "");
            assertEquals(expected, softened(read(List.of(row))), 1e-12 * expected);
        }
    }

    private static double softened(LabReport report) {
        return Softener.withSodium()
                .treat(report.interpret().water())
                .total(Ion.SODIUM)
                .in(Ion.SODIUM.milligramPerLitre());
    }

    @Property
    void boundsContainTheBestGuessAndEveryCorner(
            @ForAll("reports") List<ReportRow> rows, @ForAll boolean carried, @ForAll @IntRange(max = 5) int which) {
        Function<Water, AmountConcentration> amount = AMOUNTS.get(which);
        Interpretation read = read(rows).interpret(carried ? CARRIED : Assumptions.usual());
        Bounds<AmountConcentration> bounds = read.bounds(amount);
        assertEquals(amount.apply(read.water()), bounds.value());
        assertTrue(bounds.low().compareTo(bounds.value()) <= 0);
        assertTrue(bounds.high().compareTo(bounds.value()) >= 0);
        for (Water corner : read.corners()) {
            assertTrue(bounds.low().compareTo(amount.apply(corner)) <= 0);
            assertTrue(bounds.high().compareTo(amount.apply(corner)) >= 0);
        }
    }

    @Property
    void wideningALimitWidensTheBounds(
            @ForAll("reports") List<ReportRow> rows,
            @ForAll @DoubleRange(min = 1, max = 10) double factor,
            @ForAll @IntRange(max = 3) int which) { // none that a difference of the limits could turn round
        List<ReportRow> wider = rows.stream()
                .map(row -> row.value().startsWith("<")
                        ? new ReportRow(
                                row.line(),
                                row.analyte(),
                                "<" + Double.parseDouble(row.value().substring(1)) * factor,
                                row.unit(),
                                row.as())
                        : row)
                .toList();
        Function<Water, AmountConcentration> amount = AMOUNTS.get(which);
        Bounds<AmountConcentration> narrow = read(rows).interpret().bounds(amount);
        Bounds<AmountConcentration> wide = read(wider).interpret().bounds(amount);
        assertTrue(wide.low().compareTo(narrow.low()) <= 0, () -> narrow + " in " + wide);
        assertTrue(wide.high().compareTo(narrow.high()) >= 0, () -> narrow + " in " + wide);
    }

    @Property(tries = 50)
    void readingDoesNotDependOnTheDefaultLocale(@ForAll("reports") List<ReportRow> rows) {
        Locale before = Locale.getDefault();
        Interpretation expected = read(rows).interpret(CARRIED);
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                List<ReportRow> loud = rows.stream()
                        .map(row -> new ReportRow(
                                row.line(), row.analyte().toUpperCase(Locale.ROOT), row.value(), row.unit(), row.as()))
                        .toList();
                Interpretation read = read(loud).interpret(CARRIED);
                assertEquals(expected.water(), read.water(), tag);
                assertEquals(expected.assumptions(), read.assumptions(), tag);
                assertEquals(expected.findings(), read.findings(), tag);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Property
    void everythingOpenIsMentioned(@ForAll("reports") List<ReportRow> rows) {
        Interpretation read = read(rows).interpret(CARRIED);
        String said = String.join("; ", read.assumptions());
        for (ReportRow row : rows) {
            if (row.value().startsWith("<")) {
                assertTrue(said.contains(" " + row.value() + " " + row.unit()), said);
            }
        }
        boolean shared = rows.stream().anyMatch(row -> row.analyte().equals("hardness"));
        assertEquals(shared, said.contains("calcium to magnesium 3 : 1 by amount assumed"), said);
        boolean open = !read.corners().equals(List.of(read.water()));
        boolean mentioned = shared
                || rows.stream().anyMatch(row -> row.value().startsWith("<"))
                || said.contains("that nobody measured counted as")
                || (said.contains("alkalinity not measured")
                        && read.water().alkalinity().getValue() > 0);
        assertEquals(mentioned, open, said);
    }

    @Property
    void theDoubleEntryHoldsAtEveryCorner(@ForAll("reports") List<ReportRow> rows, @ForAll boolean carried) {
        Interpretation read = read(rows).interpret(carried ? CARRIED : Assumptions.usual());
        for (Water water : read.corners()) {
            double charges = water.ionBalance().cations().getValue()
                    + water.ionBalance().anions().getValue();
            assertEquals(0, water.netCharge().getValue(), 1e-12 * charges);
            if (carried) {
                assertEquals(0, water.unmeasuredCharge().getValue(), 0);
            }
        }
    }

    @Property
    void whatIsNotMeasuredHasNoReading(@ForAll("reports") List<ReportRow> rows) {
        Interpretation read = read(rows).interpret();
        Set<String> missing = Set.copyOf(read.notMeasured());
        for (Ion ion : List.of(Ion.SODIUM, Ion.POTASSIUM, Ion.CHLORIDE, Ion.SULFATE)) {
            assertEquals(!read.isMeasured(ion), missing.contains(ion.name()));
        }
        Set<String> names = rows.stream().map(ReportRow::analyte).collect(Collectors.toSet());
        assertEquals(!names.contains("alkalinity"), missing.contains("alkalinity"));
        assertEquals(names.contains("sodium"), read.isMeasured(Ion.SODIUM));
    }
}
