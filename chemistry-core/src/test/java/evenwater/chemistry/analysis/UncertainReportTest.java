package evenwater.chemistry.analysis;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.uncertainty.MonteCarlo;
import evenwater.chemistry.uncertainty.Uncertain;
import evenwater.chemistry.uncertainty.UncertainResult;
import evenwater.chemistry.uncertainty.UncertaintyBudget;
import evenwater.chemistry.water.Water;
import java.util.List;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UncertainReportTest {

    private static final int DRAWS = 2000;
    private static final MonteCarlo RUN = MonteCarlo.seeded(17).draws(DRAWS);

    private static Hardness hardness(double millimoles) {
        return Hardness.of(millimoles, Hardness.MILLIMOLE_PER_LITRE);
    }

    private static Alkalinity alkalinity(double milliequivalents) {
        return Alkalinity.of(milliequivalents, Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }

    private static AmountConcentration millimoles(double value) {
        return AmountConcentration.of(value, MILLIMOLE_PER_LITRE);
    }

    private static WaterQuantity<Temperature> kelvin(double value) {
        return WaterUnits.temperature(value, WaterUnits.KELVIN);
    }

    private static ReportRow row(int line, String analyte, String value, String unit, String uncertainty) {
        return new ReportRow(line, analyte, value, unit, "", uncertainty);
    }

    private static UncertainReport read(ReportRow... rows) {
        return LabReport.read(List.of(rows), ReportOptions.none()).uncertain();
    }

    private static double u(Uncertain<?> input) {
        return input.standardUncertainty().getValue().doubleValue();
    }

    @Test
    void aBuilderTakesUncertaintiesOfItsReadings() {
        UncertainReport report = LabReport.builder()
                .hardness(hardness(3), hardness(0.1))
                .calciumHardness(hardness(2))
                .alkalinity(alkalinity(4), alkalinity(0.2))
                .total(Ion.SODIUM, millimoles(1), millimoles(0.03))
                .total(Ion.CHLORIDE, millimoles(2))
                .totalBelow(Ion.NITRATE, millimoles(0.1))
                .total(Ion.POTASSIUM, millimoles(0.5), millimoles(0))
                .pH(7.3, 0.1)
                .temperature(WaterUnits.temperature(11, WaterUnits.CELSIUS), kelvin(0.5))
                .uncertainty(0.05)
                .build()
                .uncertain();
        assertEquals(
                List.of(
                        "hardness",
                        "calcium hardness",
                        "alkalinity",
                        "sodium",
                        "chloride",
                        "nitrate",
                        "pH",
                        "temperature"),
                report.inputs().stream().map(Uncertain::name).toList());
        double[] expected = {0.1, 0.1, 0.2, 0.03, 0.1, 0.05 / Math.sqrt(3), 0.1, 0.5};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(
                    expected[i],
                    u(report.inputs().get(i)),
                    1e-9,
                    report.inputs().get(i).name());
        }
        assertEquals(millimoles(0.05), report.inputs().get(5).value());
        assertEquals(3, report.report().hardness().orElseThrow().getValue());
    }

    @ParameterizedTest(name = "{0} {1} {2}, {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "total hardness | 20   | °dH  | 5 %         | 1.0",
                "total hardness | 20   | °dH  | 5%          | 1.0",
                "total hardness | 20   | °dH  | 0.4         | 0.4",
                "total hardness | 20   | °dH  | 0,4         | 0.4",
                "total hardness | 20   | °dH  | 0.4 k=2     | 0.2",
                "total hardness | 20   | °dH  | ± 0.4 (k = 2) | 0.2",
                "total hardness | 20   | °dH  | +/-10 %, k=2 | 1.0",
                "total hardness | 20   | °dH  | 10 % (k=2.5) | 0.8",
                "total hardness | 20   | °dH  | ±10%(K=2)   | 1.0"
            })
    void aRowTakesAnUncertainty(String analyte, String value, String unit, String uncertainty, double degrees) {
        Uncertain<?> input =
                read(row(2, analyte, value, unit, uncertainty)).inputs().get(0);
        double expected = Hardness.of(degrees, Hardness.GERMAN_DEGREE).in(Hardness.MILLIMOLE_PER_LITRE);
        assertEquals(expected, u(input), 1e-12);
    }

    @Test
    void anUncertaintyIsInTheUnitOfItsRow() {
        UncertainReport report = read(
                row(2, "nitrate as NO3", "62", "mg/L", "6.2"),
                row(3, "pH", "7.4", "", "0.1"),
                row(4, "temperature", "50", "°F", "0.9"),
                row(5, "alkalinity", "100", "mg/L CaCO3", "2 %"),
                row(6, "sodium", "23", "mg/L", ""));
        assertEquals(4, report.inputs().size());
        AmountConcentration nitrate = AmountConcentration.of(6.2, Ion.NITRATE.milligramPerLitre());
        assertEquals(nitrate.in(MILLIMOLE_PER_LITRE), u(report.inputs().get(0)), 1e-12);
        assertEquals(0.1, u(report.inputs().get(1)), 1e-12);
        assertEquals(0.5, u(report.inputs().get(2)), 1e-12);
        Alkalinity twoPercent = Alkalinity.of(2, Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
        assertEquals(
                twoPercent.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                u(report.inputs().get(3)),
                1e-12);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "20 | ±0.4 | ± may be a standard or an expanded uncertainty: leave ± out, or add k=2",
                "20 | -0.4 | expected a number that is not negative",
                "20 | <0.4 | expected a number that is not negative",
                "20 | k=2  | expected a standard uncertainty such as 5 % or 0.2, or an expanded one such as 0.4 k=2",
                "20 | 5 %% | expected a standard uncertainty such as 5 % or 0.2, or an expanded one such as 0.4 k=2",
                "20 | 0.4 k=0 | k must be 1 or more",
                "20 | 0.4 k=2 % | expected a standard uncertainty such as 5 % or 0.2, or an expanded one such as 0.4 k=2"
            })
    void whatMayBeTwoUncertaintiesOrNoneIsRefused(String value, String uncertainty, String problem) {
        UnusableReportException refusal = assertThrows(
                UnusableReportException.class, () -> read(row(2, "total hardness", value, "°dH", uncertainty)));
        assertEquals("total hardness '" + value + " °dH': " + problem, refusal.getMessage());
        assertEquals(2, refusal.line());
    }

    @Test
    void otherRefusalsNameTheReading() {
        assertEquals(
                "sodium '<2 mg/L': an interval has its uncertainty in itself, but the row states 5 % as well",
                assertThrows(UnusableReportException.class, () -> read(row(3, "sodium", "<2", "mg/L", "5 %")))
                        .getMessage());
        assertEquals(
                "pH '7.4': a share of a pH or of a temperature has no meaning: state a number",
                assertThrows(UnusableReportException.class, () -> read(row(3, "pH", "7.4", "", "5 %")))
                        .getMessage());
        Refused.argument(
                "standard uncertainty of pH must be a number from 0, but was NaN",
                () -> LabReport.builder().pH(7, Double.NaN));
        Refused.argument(
                "standard uncertainty of hardness must be a number from 0, but was -0.1 mmol/L",
                () -> LabReport.builder().hardness(hardness(1), hardness(-0.1)));
        Refused.argument(
                "relative uncertainty must be from 0 to 1, but was 5.0",
                () -> LabReport.builder().uncertainty(5));
        Refused.argument(
                "a temperature difference must be stated in K, but was 0.5 °C",
                () -> LabReport.builder().temperature(kelvin(285), WaterUnits.temperature(0.5, WaterUnits.CELSIUS)));
        Refused.asNull("standardUncertainty", () -> LabReport.builder().hardness(hardness(1), null));
        Refused.asNull("uncertainty", () -> new ReportRow(1, "", "", "", "", null));
        assertEquals("", new ReportRow(1, "a", "1", "", "").uncertainty());
    }

    @Test
    void aReportWithoutUncertaintiesIsItself() {
        UncertainReport report = LabReport.builder()
                .hardness(hardness(3))
                .alkalinity(alkalinity(4))
                .build()
                .uncertain();
        assertEquals(List.of(), report.inputs());
        List<Water> waters = RUN.outcomes(
                report.inputs(), draw -> report.drawn(draw).interpret().water());
        assertEquals(report.report().interpret().water(), waters.get(DRAWS - 1));
    }

    /** Sodium behind a softener by charge: Na + 2 (Ca + Mg). */
    @Test
    void aReportIsPropagatedBothWays() {
        UncertainReport report = LabReport.builder()
                .hardness(hardness(3), hardness(0.1))
                .alkalinity(alkalinity(4))
                .total(Ion.SODIUM, millimoles(1), millimoles(0.05))
                .build()
                .uncertain();
        UncertainResult<AmountConcentration> drawn = RUN.propagate(
                report.inputs(), draw -> soft(report.drawn(draw).interpret().water()));
        UncertaintyBudget<AmountConcentration> law = UncertaintyBudget.of(
                report.inputs(), draw -> soft(report.drawn(draw).interpret().water()));
        double u = Math.hypot(0.2, 0.05);
        assertEquals(u, law.standardUncertainty().getValue(), 1e-9);
        assertEquals(2, law.contributions().get(0).sensitivity(), 1e-9);
        assertEquals("hardness", law.contributions().get(0).input());
        assertEquals(u, drawn.standardUncertainty().getValue(), 4 * u / Math.sqrt(2.0 * DRAWS));
        assertEquals(7, drawn.mean().getValue(), 4 * u / Math.sqrt(DRAWS));
    }

    private static AmountConcentration soft(Water water) {
        return water.total(Ion.SODIUM)
                .add(water.total(Ion.CALCIUM).multiply(2))
                .add(water.total(Ion.MAGNESIUM).multiply(2));
    }

    @Test
    void calciumThatIsDrawnAboveTheHardnessLeavesNoMagnesium() {
        UncertainReport report = LabReport.builder()
                .hardness(hardness(2), hardness(0.2))
                .total(Ion.CALCIUM, millimoles(2), millimoles(0.2))
                .build()
                .uncertain();
        UncertainResult<AmountConcentration> magnesium = RUN.propagate(
                report.inputs(), draw -> report.drawn(draw).interpret().water().total(Ion.MAGNESIUM));
        double u = Math.hypot(0.2, 0.2);
        // of a normal around 0 whose lower half is put at 0: mean u/√(2π)
        assertEquals(u / Math.sqrt(2 * Math.PI), magnesium.mean().getValue(), 4 * 0.6 * u / Math.sqrt(DRAWS));
        assertEquals(0, magnesium.symmetricInterval().low().getValue());
        assertEquals(0.5, magnesium.probabilityAbove(millimoles(0)), 4 * 0.5 / Math.sqrt(DRAWS));
        List<List<String>> findings = RUN.outcomes(
                report.inputs(), draw -> report.drawn(draw).interpret().findings());
        assertTrue(findings.contains(
                List.of("calcium 2 mmol/L is more than the hardness 2 mmol/L; magnesium counted as 0")));
    }

    @Test
    void aContradictionOfTheReportItselfIsRefused() {
        LabReport report = LabReport.builder()
                .hardness(hardness(1), hardness(0.2))
                .total(Ion.CALCIUM, millimoles(2), millimoles(0.2))
                .build();
        assertThrows(UnusableReportException.class, report::uncertain);
    }

    @Test
    void noDrawIsOutsideOfWhatIsPossible() {
        UncertainReport report = LabReport.builder()
                .total(Ion.SODIUM, millimoles(0), millimoles(0.5))
                .total(Ion.NITRATE, millimoles(0.01), millimoles(0.5))
                .alkalinity(alkalinity(0), alkalinity(0.5))
                .pH(13.9, 0.5)
                .temperature(WaterUnits.temperature(0, WaterUnits.CELSIUS), kelvin(2))
                .build()
                .uncertain();
        List<double[]> drawn = RUN.outcomes(
                report.inputs(),
                draw -> report.inputs().stream().mapToDouble(draw::valueOf).toArray());
        double[] least = {0, 0, -3, 0, 273.15 - 1e-9};
        double[] most = {3, 3, 3, 14, 373.15};
        for (double[] numbers : drawn) {
            for (int i = 0; i < least.length; i++) {
                assertTrue(
                        numbers[i] >= least[i] && numbers[i] <= most[i],
                        report.inputs().get(i) + ": " + numbers[i]);
            }
        }
        assertTrue(drawn.stream().anyMatch(numbers -> numbers[2] < -0.3), "an alkalinity may be negative");
        RUN.outcomes(report.inputs(), draw -> report.drawn(draw).interpret().water());
    }

    @Test
    void aUsualUncertaintyIsThatOfEveryConcentrationWithoutOne() {
        LabReport report = LabReport.read(
                List.of(
                        new ReportRow(1, "hardness", "10", "°dH", "", "0.5"),
                        new ReportRow(2, "KH", "5", "°dKH", ""),
                        new ReportRow(3, "sodium", "<2", "mg/L", ""),
                        new ReportRow(4, "pH", "7.4", "", "")),
                ReportOptions.none());
        assertEquals(
                List.of("hardness", "sodium"),
                report.uncertain().inputs().stream().map(Uncertain::name).toList());
        UncertainReport more = report.uncertain(0.1);
        assertEquals(
                List.of("hardness", "alkalinity", "sodium"),
                more.inputs().stream().map(Uncertain::name).toList());
        assertEquals(
                Alkalinity.of(0.5, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS).in(Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                more.inputs().get(1).standardUncertainty().getValue(),
                1e-12);
        assertEquals(
                Hardness.of(0.5, Hardness.GERMAN_DEGREE).in(Hardness.MILLIMOLE_PER_LITRE),
                more.inputs().get(0).standardUncertainty().getValue(),
                1e-12);
        Refused.argument("relative uncertainty must be from 0 to 1, but was 5.0", () -> report.uncertain(5));
    }

    @Test
    void aShareOfMoreThanTheReadingIsRefused() {
        UnusableReportException refusal = assertThrows(
                UnusableReportException.class,
                () -> LabReport.read(List.of(new ReportRow(1, "KH", "5", "°dKH", "", "500 %")), ReportOptions.none()));
        assertTrue(
                refusal.getMessage().contains("a share of more than 100 % of the reading says nothing"),
                refusal::getMessage);
    }
}
