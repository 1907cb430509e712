package evenwater.chemistry.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Measured waters from the lists of laboratories. */
class RealWatersReferenceTest {

    private static final Map<String, Ion> IONS = Map.of(
            "Ca_mg_L", Ion.CALCIUM,
            "Mg_mg_L", Ion.MAGNESIUM,
            "Na_mg_L", Ion.SODIUM,
            "K_mg_L", Ion.POTASSIUM,
            "Cl_mg_L", Ion.CHLORIDE,
            "SO4_mg_L", Ion.SULFATE,
            "NO3_mg_L", Ion.NITRATE,
            "SiO2_mg_L", Ion.SILICA);

    /** One sample: its figures by the head of their column. */
    private record Sample(Map<String, String> fields) {

        boolean has(String column) {
            return !text(column).isEmpty();
        }

        String text(String column) {
            return Objects.requireNonNull(fields.get(column), column);
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }

        @Override
        public String toString() {
            return text("id");
        }
    }

    private static List<Sample> samples() {
        List<String> lines = lines();
        List<String> columns = List.of(lines.get(0).split(","));
        return lines.stream()
                .skip(1)
                .map(line -> line.split(",", -1))
                .map(f -> new Sample(
                        IntStream.range(0, columns.size()).boxed().collect(Collectors.toMap(columns::get, i -> f[i]))))
                .toList();
    }

    private static List<String> lines() {
        try (InputStream in = RealWatersReferenceTest.class.getResourceAsStream("/reference/real-waters-open.csv")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static LabReport report(Sample sample) {
        LabReportBuilder builder = LabReport.builder()
                .pH(sample.number("pH"))
                .alkalinity(Alkalinity.of(sample.number("alkalinity_meq_L"), Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .conductivity(Conductivity.of(sample.number("EC25_uS_cm"), Conductivity.MICROSIEMENS_PER_CENTIMETRE));
        IONS.forEach((column, ion) -> {
            if (sample.has(column)) {
                builder.total(ion, AmountConcentration.of(sample.number(column), ion.milligramPerLitre()));
            }
        });
        if (sample.has("temperature_C")) {
            builder.temperature(WaterUnits.temperature(sample.number("temperature_C"), WaterUnits.CELSIUS));
        }
        if (sample.has("tds_measured_mg_L")) {
            builder.dissolvedSolids(
                    MassConcentration.of(sample.number("tds_measured_mg_L"), MassConcentration.MILLIGRAM_PER_LITRE));
        }
        return builder.build();
    }

    /** The same sample as rows of text. */
    private static LabReport rows(Sample sample) {
        List<ReportRow> rows = new ArrayList<>();
        sample.fields().forEach((column, value) -> {
            String name = column.replaceFirst("_.*", "").replace("EC25", "conductivity");
            String unit = Map.of("alkalinity", "meq/L", "conductivity", "uS/cm", "temperature", "C", "pH", "")
                    .getOrDefault(name, "mg/L");
            String as = List.of("NO3", "SiO2").contains(name) ? name : "";
            if (!List.of("id", "dataset", "site").contains(name)) {
                rows.add(new ReportRow(rows.size() + 1, name, value, unit, as));
            }
        });
        return LabReport.read(rows, ReportOptions.none());
    }

    @Test
    void thereAre59Samples() {
        assertEquals(59, samples().size());
        assertEquals(
                8, samples().stream().filter(s -> s.has("tds_measured_mg_L")).count());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everySampleBalancesWithinTheFilterOfTheCollection(Sample sample) {
        Interpretation read = report(sample).interpret();
        assertEquals(0, read.water().ionBalance().percentDifference(), 5);
        assertEquals(List.of(), read.notMeasured());
        assertEquals(List.of(), read.findings());
        assertEquals(
                sample.has("temperature_C") ? List.of() : List.of("temperature not stated: 25 °C"),
                read.assumptions().stream().filter(a -> !a.startsWith("pH ")).toList());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void rowsOfTextMakeTheSameWater(Sample sample) {
        LabReport rows = rows(sample);
        LabReport built = report(sample);
        assertEquals(built.interpret().water(), rows.interpret().water());
        assertEquals(built.conductivity(), rows.conductivity());
        assertEquals(built.dissolvedSolids(), rows.dissolvedSolids());
        assertEquals(built.pH(), rows.pH());
    }

    @Test
    void standardMethodsAreStricterThanTheFilterOfTheCollection() {
        List<Acceptance> checks = samples().stream()
                .map(sample -> AcceptanceCriteria.ionBalance(
                        report(sample).interpret().water().ionBalance()))
                .toList();
        // the collection was filtered by 5 %, Standard Methods allow 2 % between 3 and 10 meq/L: nine of those fail
        List<Acceptance> failed =
                checks.stream().filter(check -> !check.accepted()).toList();
        assertEquals(9, failed.size());
        failed.forEach(check -> assertEquals(2, check.high(), check::toString));
    }

    @Test
    void weighedResiduesAreAFewPercentAboveTheSumOfConstituents() {
        double[] percent = samples().stream()
                .filter(sample -> sample.has("tds_measured_mg_L"))
                .mapToDouble(sample -> {
                    Water water = report(sample).interpret().water();
                    double sum = water.residueAt180Celsius().in(MassConcentration.MILLIGRAM_PER_LITRE);
                    return 100 * (sum / sample.number("tds_measured_mg_L") - 1);
                })
                .sorted()
                .toArray();
        double median = (percent[3] + percent[4]) / 2;
        double rms = Math.sqrt(Arrays.stream(percent).map(p -> p * p).average().orElseThrow());
        // The weighed residue holds water of crystallisation as well. These eight rows are part of a larger collection
        // with a median of
        // -4.3 % and an rms of 5.5 %; by themselves they have -3.12 % and 4.37 %, worked from the same atomic weights.
        assertEquals(-3.12, median, 0.005);
        assertEquals(4.37, rms, 0.005);
        assertEquals(-6.04, percent[0], 0.005);
        assertEquals(4.92, percent[7], 0.005);
    }
}
