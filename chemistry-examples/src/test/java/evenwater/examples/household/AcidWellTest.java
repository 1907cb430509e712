package evenwater.examples.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A soft acid well with a neutralizer and a softener: pH, alkalinity, sodium and conductivity at every stage. */
class AcidWellTest {

    @TempDir
    static Path folder;

    private static final Run RUN = Run.of("--bundled", "fern-hollow");

    private static final String WELL = """
            analyte,value,unit,as
            calcium,8,mg/L,
            magnesium,2,mg/L,
            sodium,6,mg/L,
            potassium,1.2,mg/L,
            chloride,10,mg/L,
            sulfate,7,mg/L,
            alkalinity,20,mg/L,CaCO3
            temperature,11,°C,
            """;

    @TestFactory
    Stream<DynamicTest> itSays() {
        return Stream.of(
                        "hardness, °dH alkalinity, °dKH sodium, mg/L pH µS/cm at 25 °C",
                        "source 1.58 1.12 6.00 5.90 97.54",
                        "behind neutralizer 8.41 7.95 6.00 7.63 319.3",
                        "behind softener 0.000 7.95 74.98 7.65 312.4",
                        "pH 5.9 taken as read at 11 °C; with the alkalinity it means 60.6 mg/L CO₂",
                        "saturation index of calcite -3.35",
                        "saturation index of calcite 0.000",
                        "a \"TDS\" meter of factor 0.5 shows, ppm 159.6",
                        "conductivity calculated by Standard Methods 2510 over measured: 1.00, wanted 0.9 to 1.1: accepted",
                        "conductivity calculated from ions and pairs over measured: 1.04, wanted 0.93 to 1.07: accepted",
                        "The pH of the raw water, 5.9 here, must be a field value, read at the tap at once",
                        "5.60 2.10 13.37 12.91 7.25 109.7",
                        "6.20 0.664 5.30 4.84 8.04 43.47",
                        "Acid water takes up copper and lead from pipes",
                        "pH and CO₂ are computed closed to the air, as in a pipe.",
                        "at rest with the open air the water behind the last stage has pH 8.53.")
                .map(phrase -> DynamicTest.dynamicTest(
                        phrase,
                        () -> assertTrue(BundledHouseholdTest.flat(RUN.out()).contains(phrase), RUN::out)));
    }

    @Test
    void itRunsWithoutAWordOfError() {
        assertEquals(0, RUN.exitCode());
        assertEquals("", RUN.err());
        RUN.out().lines().forEach(line -> assertTrue(line.length() <= 115, line));
    }

    /** The same well from a bottle that stood open promises half of the sodium. */
    @Test
    void theLaboratoryPHHalvesTheSodium() {
        assertTrue(summary("pH,5.9,,\n").contains("behind softener 0.000 7.95 74.9"), summary("pH,5.9,,\n"));
        assertTrue(summary("pH,6.6,,\n").contains("behind softener 0.000 2.72 32.10 8.64"), summary("pH,6.6,,\n"));
    }

    private static String summary(String pH) {
        return BundledHouseholdTest.flat(Run.on(folder, WELL + pH, "--neutralizer", "calcite", "--softener", "sodium")
                .out());
    }

    @Test
    void anIntervalOfThePHGoesThroughTheHouse() {
        String out = summary("pH,5.7-6.1,,\n");
        assertTrue(out.contains("source 1.58 1.12 6.00 5.70 to 6.10"), out);
        assertTrue(out.matches(".*behind softener 0\\.000 [0-9.]+ to [0-9.]+ [0-9.]+ to [0-9.]+ .*"), out);
    }

    @Test
    void magnesiaIsWarnedOf() {
        String out = BundledHouseholdTest.flat(
                Run.on(folder, WELL + "pH,5.9,,\n", "--neutralizer", "calcite", "--magnesia", "40 %")
                        .out());
        assertTrue(out.contains("neutralizer with calcite and 40 % magnesia"), out);
        assertTrue(out.contains("Water that stands in the bed goes on dissolving magnesia, in the end to pH 10."), out);
    }

    @Test
    void aKitThatKnowsNoIonsIsAnsweredByABestGuess() {
        String out = BundledHouseholdTest.flat(Run.on(
                        folder,
                        "analyte,value,unit,as\nhardness,3,°dH,\nKH,2,°dKH,\npH,6.2,,\nconductivity,300,µS/cm,\n",
                        "--neutralizer",
                        "calcite")
                .out());
        assertTrue(out.contains("behind neutralizer about 7.69 about 6.69 not known"), out);
        assertTrue(
                out.contains(
                        "What was measured conducts 89.11 µS/cm at 25 °C of the 300.0 that the meter showed: what was "
                                + "not measured carries the rest."),
                out);
    }

    @Test
    void aConductivityBelowThatOfTheIonsIsAWrongReading() {
        String out = BundledHouseholdTest.flat(
                Run.on(folder, "analyte,value,unit,as\nhardness,3,°dH,\nKH,2,°dKH,\npH,7.2,,\nconductivity,30,µS/cm,\n")
                        .out());
        assertTrue(out.contains("of the 30.00 that the meter showed: that is too much, so a reading is wrong."), out);
    }

    @Test
    void carbonDioxideThatSuffocatesIsNamed() {
        String out = BundledHouseholdTest.flat(
                Run.on(folder, WELL + "pH,5.9,,\n", "--no-treatment").out());
        assertTrue(
                out.contains("carbon dioxide 60.7 mg/L CO₂: above 30 mg/L CO₂, by 30.7 mg/L CO₂; aerate the water"),
                out);
    }

    @TestFactory
    Stream<DynamicTest> whatCannotBeIsRefusedInOneLine() {
        return Stream.of(
                        List.of(
                                "--neutralizer: the report must state pH and alkalinity: the CO₂ that dissolves calcite "
                                        + "follows from them",
                                "--neutralizer",
                                "calcite"),
                        List.of(
                                "--neutralizer: 'lime' is no filling known here; expected calcite",
                                "--neutralizer",
                                "lime"),
                        List.of("--magnesia, --reaching and --outlet-ph need --neutralizer", "--magnesia", "0.1"),
                        List.of(
                                "--reaching and --outlet-ph contradict each other: leave one out",
                                "--neutralizer",
                                "calcite",
                                "--reaching",
                                "0.8",
                                "--outlet-ph",
                                "7.4"),
                        List.of(
                                "--outlet-ph: 'neutral' is no pH such as 7.4",
                                "--neutralizer",
                                "calcite",
                                "--outlet-ph",
                                "neutral"),
                        List.of(
                                "--bundled shows a household without a file: leave one of the two out",
                                "--bundled",
                                "fern-hollow"))
                .map(line -> DynamicTest.dynamicTest(line.get(0), () -> {
                    Run run = Run.on(folder, WELL, line.subList(1, line.size()).toArray(String[]::new));
                    assertEquals(2, run.exitCode());
                    assertEquals("", run.out());
                    assertEquals(line.get(0) + "\n", run.err());
                }));
    }

    @Test
    void aPHThatTellsNoCarbonIsNamedWithItsReason() {
        Run acid = Run.on(
                folder, WELL.replace("alkalinity,20", "alkalinity,-30") + "pH,3.5,,\n", "--neutralizer", "calcite");
        assertEquals(2, acid.exitCode());
        assertTrue(acid.err().startsWith("--neutralizer: pH 3.5 not used: no water with these ions "), acid::err);
        Run hot = Run.on(
                folder, WELL.replace("temperature,11", "temperature,51") + "pH,6,,\n", "--neutralizer", "calcite");
        assertEquals("--neutralizer: pH 6.0 not used: no equilibrium is computed above 50 °C\n", hot.err());
    }

    @Test
    void anUnknownHouseholdIsRefused() {
        Run run = Run.of("--bundled", "oak-ridge");
        assertEquals(2, run.exitCode());
        assertEquals("--bundled: 'oak-ridge' is none of larch-lane and fern-hollow\n", run.err());
    }
}
