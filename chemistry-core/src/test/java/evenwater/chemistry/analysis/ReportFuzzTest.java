package evenwater.chemistry.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.FuzzTexts;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Whatever rows come in: a water of finite numbers or our exception, nothing else. */
class ReportFuzzTest {

    private static final long SEED = 20_261_125;

    /** Rows that can be read, at least with the options below. */
    private static final List<ReportRow> ROWS = Reports.rows(
            "calcium | 80 | mg/L | ",
            "Magnesium, dissolved | 20 | mg/L | Mg",
            "Na | <2 | mg/L | ",
            "Kalium | 1,250.5 | µg/L | ",
            "NO3-N | 4.1 | mg/L | N",
            "nitrate | 8 | mg/L | ",
            "Nitrate (as NO3) | 8 | ppm | NO3-",
            "SO₄²⁻ | 2 | meq/L | ",
            "chlorides | 30 | mg/kg | ",
            "phosphate | ND (0.05) | mg/L as P | ",
            "silica as Si | 10 | mg/L | ",
            "boric acid | 1 | mmol/L | ",
            "iron(II) | 0.3 | mg/L | ",
            "hardness | 22 | gr/gal | CaCO3",
            "Gesamthärte | 21.1 | °dH | ",
            "Calcium hardness | 200 | mg/L CaCO3 | ",
            "carbonate hardness | 9.5 | °dH | ",
            "KH | 9.5 | dKH | ",
            "alkalinity | 200 | mg/L | CaCO3",
            "bicarbonate | 207 | mg/L | ",
            "CO3 | <1 | mg/L | ",
            "hydroxide | 0 | mmol/L | ",
            "compensated hardness | 25 | gpg | ",
            "pH | 7.6 | | ",
            "conductivity | 640 | µS/cm @25°C | ",
            "temperature | 54 | °F | ",
            "TDS | 400 | mg/L | -",
            "arsenic | <0.001 | mg/L | ",
            "E. coli | absent | /100 mL | ",
            "TA | 10 | °fH | ",
            "sodum | 1 250 | µmol/L | ",
            "sodium, ICP | n/a | | ");

    private static final ReportOptions SETTLED = ReportOptions.none()
            .with(DecimalSign.POINT)
            .basis("nitrate", "N")
            .basis("phosphate", "P")
            .basis("hardness", "CaCO3")
            .unit("alkalinity", "°dKH")
            .unit("conductivity", "µS/cm")
            .naming("TA", "alkalinity")
            .naming("sodum", "sodium")
            .ignoring("sodium, ICP")
            .density(MassConcentration.of(0.997, MassConcentration.KILOGRAM_PER_LITRE));

    private static final List<Assumptions> ASSUMED = List.of(
            Assumptions.usual(),
            Assumptions.usual().carrying(Ion.CHLORIDE, Ion.SODIUM).with(CalciumToMagnesium.byMass(3)));

    private final Random random = new Random(SEED);
    private final FuzzTexts names = texts(1, ReportRow::analyte);
    private final FuzzTexts values = texts(2, ReportRow::value);
    private final FuzzTexts units = texts(3, ReportRow::unit);
    private final FuzzTexts bases = texts(4, ReportRow::as);

    private static FuzzTexts texts(int number, Function<ReportRow, String> field) {
        return new FuzzTexts(SEED + number, ROWS.stream().map(field).toList());
    }

    @Test
    void everyReportReadsOrThrowsOurException() {
        int rows = 0;
        int reports = 0;
        int read = 0;
        while (rows < FuzzTexts.count()) {
            List<ReportRow> report = report();
            reports++;
            rows += report.size();
            read += reads(report) ? 1 : 0;
        }
        int least = reports / 20; // else what stands behind the first check is not tested
        String share = read + " of " + reports + " reports could be read";
        assertTrue(read >= least && read < reports, share);
    }

    /** One to four rows, of which most have one field spoilt. */
    private List<ReportRow> report() {
        List<ReportRow> rows = new ArrayList<>();
        int size = 1 + random.nextInt(4);
        for (int i = 1; i <= size; i++) {
            ReportRow row = ROWS.get(random.nextInt(ROWS.size()));
            rows.add(
                    switch (random.nextInt(6)) {
                        case 0 -> new ReportRow(i, names.next(), row.value(), row.unit(), row.as());
                        case 1 -> new ReportRow(i, row.analyte(), values.next(), row.unit(), row.as());
                        case 2 -> new ReportRow(i, row.analyte(), row.value(), units.next(), row.as());
                        case 3 -> new ReportRow(i, row.analyte(), row.value(), row.unit(), bases.next());
                        default -> new ReportRow(i, row.analyte(), row.value(), row.unit(), row.as());
                    });
        }
        return rows;
    }

    private boolean reads(List<ReportRow> rows) {
        try {
            LabReport report = LabReport.read(rows, random.nextBoolean() ? ReportOptions.none() : SETTLED);
            Interpretation interpretation = report.interpret(ASSUMED.get(random.nextInt(ASSUMED.size())));
            check(rows, report, interpretation);
            return true;
        } catch (UnusableReportException e) {
            assertTrue(e.line() >= 0 && e.line() <= rows.size(), () -> "line " + e.line() + " of " + shown(rows));
            assertTrue(e.getMessage().length() <= 401, e::getMessage);
            assertFalse(e.getMessage().isBlank(), () -> shown(rows));
            assertTrue(e.getMessage().chars().noneMatch(Character::isISOControl), e::getMessage);
            return false;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return fail(shown(rows), e);
        }
    }

    private static void check(List<ReportRow> rows, LabReport report, Interpretation read) {
        for (Water water : read.corners()) {
            double charge = water.ionBalance().cations().getValue()
                    + water.ionBalance().anions().getValue();
            assertTrue(Double.isFinite(charge) && charge <= 1e6, () -> shown(rows));
            assertEquals(0, water.netCharge().getValue(), 1e-12 * charge, () -> shown(rows));
        }
        Bounds<AmountConcentration> sodium = read.bounds(water -> water.total(Ion.SODIUM));
        assertTrue(sodium.low().getValue() >= 0, () -> shown(rows));
        report.pH().ifPresent(pH -> assertTrue(pH >= 0 && pH <= 14, () -> shown(rows)));
        report.conductivity().ifPresent(c -> assertTrue(c.getValue() >= 0 && c.getValue() <= 1e6, () -> shown(rows)));
        for (UnusedRow unused : report.unusedRows()) {
            assertTrue(rows.contains(unused.row()), () -> shown(rows));
        }
    }

    private static String shown(List<ReportRow> rows) {
        StringBuilder escaped = new StringBuilder();
        rows.toString()
                .chars()
                .limit(400)
                .forEach(c -> escaped.append(
                        c < 128 && c >= ' ' ? String.valueOf((char) c) : String.format(Locale.ROOT, "\\u%04x", c)));
        return escaped.toString();
    }
}
