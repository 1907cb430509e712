package evenwater.chemistry.instrument;

import static evenwater.chemistry.instrument.ReferenceSolution.SODIUM_CHLORIDE;
import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.Conductivity.MILLISIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.MassConcentration.GRAM_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SolutionScaleMeterTest {

    private static final MassConcentration END = milligrams(10_000);

    /** A curve that bends like that of a salt and is easy to do by hand. */
    private static final SolutionScaleMeter METER =
            SolutionScaleMeter.of(SODIUM_CHLORIDE, END, SolutionScaleMeterTest::toy);

    private static double toy(double milligrams) {
        return 0.055 + 2 * milligrams - 0.005 * milligrams * Math.sqrt(milligrams);
    }

    private static Conductivity microsiemens(double value) {
        return Conductivity.of(value, MICROSIEMENS_PER_CENTIMETRE);
    }

    private static MassConcentration milligrams(double value) {
        return MassConcentration.of(value, MILLIGRAM_PER_LITRE);
    }

    @Test
    void aReadingIsTheConcentrationOfTheSolutionWithThatConductivity() {
        // at 400 mg/L: 0.055 + 800 − 0.005 · 400 · 20 = 760.055
        assertEquals(400, METER.reading(microsiemens(760.055)).in(MILLIGRAM_PER_LITRE), 1e-11);
        assertEquals(760.055, METER.conductivity(milligrams(400)).in(MICROSIEMENS_PER_CENTIMETRE), 1e-12);
        assertEquals(SODIUM_CHLORIDE, METER.solution());
    }

    @Test
    void theFactorGrowsWithTheConcentration() {
        double dilute = METER.reading(microsiemens(100)).getValue() / 100;
        double strong = METER.reading(microsiemens(5000)).getValue() / 5000;
        assertTrue(strong > 1.1 * dilute, () -> dilute + " and " + strong);
    }

    @Test
    void bothEndsBelongToTheScale() {
        assertEquals(milligrams(0), METER.reading(microsiemens(0.055)));
        assertEquals(END, METER.reading(METER.conductivity(END)));
        assertEquals(
                10_000,
                METER.reading(METER.conductivity(END).to(MILLISIEMENS_PER_CENTIMETRE))
                        .getValue(),
                1e-8);
        assertEquals(METER.conductivity(END), METER.conductivity(MassConcentration.of(10, GRAM_PER_LITRE)));
    }

    /** CRC Handbook (NaCl read in a source that cites it) and Standard Methods 2510 (from memory), at 0.01 mol/L. */
    @Test
    void saltsOfKnownConductivityReadAsWhatTheyAre() {
        SolutionScaleMeter sodium = SolutionScaleMeter.of(SODIUM_CHLORIDE);
        assertEquals(584.4, sodium.reading(microsiemens(1184.5)).getValue(), 584.4 * 0.01);
        SolutionScaleMeter potassium = SolutionScaleMeter.of(ReferenceSolution.POTASSIUM_CHLORIDE);
        assertEquals(745.5, potassium.reading(microsiemens(1412)).getValue(), 745.5 * 0.01);
    }

    /** Common practice for usual waters: 0.65 to 0.85 on the scale of the mixture, 0.47 to 0.5 on that of NaCl, 0.5 to 0.57 on that of KCl. */
    @ParameterizedTest
    @CsvSource({
        "SULFATE_BICARBONATE_CHLORIDE, 0.65, 0.85",
        "SODIUM_CHLORIDE, 0.47, 0.502",
        "POTASSIUM_CHLORIDE, 0.5, 0.57"
    })
    void factorsOfTheScales(ReferenceSolution solution, double least, double most) {
        SolutionScaleMeter meter = SolutionScaleMeter.of(solution);
        for (double conductivity : new double[] {300, 1000}) {
            double factor = meter.reading(microsiemens(conductivity)).getValue() / conductivity;
            assertTrue(least < factor && factor < most, () -> "factor " + factor + " at " + conductivity);
        }
    }

    @ParameterizedTest
    @EnumSource(ReferenceSolution.class)
    void aCalculatedScaleLeadsBothWaysAndEndsAtTenGrams(ReferenceSolution solution) {
        SolutionScaleMeter meter = SolutionScaleMeter.of(solution);
        for (double shown : new double[] {0, 0.5, 40, 500, 3000, 10_000}) {
            assertEquals(
                    shown, meter.reading(meter.conductivity(milligrams(shown))).getValue(), 1e-9 * Math.max(1, shown));
        }
        Refused.withoutAnswer(
                "reading 11 g/L is above the 10000 mg/L where the scale of " + solution + " ends",
                List.of(MassConcentration.of(11, GRAM_PER_LITRE), END),
                () -> meter.conductivity(MassConcentration.of(11, GRAM_PER_LITRE)));
    }

    @Test
    void whatIsNotOnTheScaleHasNoReading() {
        Refused.withoutAnswer(
                "conductivity 0.01 µS/cm is below the 0.055 µS/cm of pure water, where the scale of sodium chloride starts",
                List.of(microsiemens(0.01), microsiemens(0.055)),
                () -> METER.reading(microsiemens(0.01)));
        Refused.withoutAnswer(
                "conductivity 20 mS/cm is above the 15,000 µS/cm of 10000 mg/L, where the scale of sodium chloride ends",
                List.of(Conductivity.of(20, MILLISIEMENS_PER_CENTIMETRE), microsiemens(15_000.055), END),
                () -> METER.reading(Conductivity.of(20, MILLISIEMENS_PER_CENTIMETRE)));
        Refused.withoutAnswer(
                "reading 11 g/L is above the 10000 mg/L where the scale of sodium chloride ends",
                List.of(MassConcentration.of(11, GRAM_PER_LITRE), END),
                () -> METER.conductivity(MassConcentration.of(11, GRAM_PER_LITRE)));
    }

    @Test
    void nothingIsNegative() {
        Refused.argument("conductivity must not be negative, but was -1 µS/cm", () -> METER.reading(microsiemens(-1)));
        Refused.argument(
                "reading of dissolved solids must not be negative, but was -1 mg/L",
                () -> METER.conductivity(milligrams(-1)));
    }

    @Test
    void aScaleHasToRise() {
        Refused.argument(
                "end of the scale must be above 0 mg/L, but was 0 mg/L",
                () -> SolutionScaleMeter.of(SODIUM_CHLORIDE, milligrams(0), SolutionScaleMeterTest::toy));
        Refused.argument(
                "conductivity of sodium chloride must rise with its concentration, but was 100.0 µS/cm at 0 mg/L and "
                        + "0.0 µS/cm at 100 mg/L",
                () -> SolutionScaleMeter.of(SODIUM_CHLORIDE, milligrams(100), c -> 100 - c));
        Refused.argument(
                "conductivity of sodium chloride must rise with its concentration, but was 7.0 µS/cm at 0 mg/L and "
                        + "7.0 µS/cm at 100 mg/L",
                () -> SolutionScaleMeter.of(SODIUM_CHLORIDE, milligrams(100), c -> 7));
        Refused.argument(
                "conductivity of sodium chloride must rise with its concentration, but was NaN µS/cm at 0 mg/L and "
                        + "NaN µS/cm at 100 mg/L",
                () -> SolutionScaleMeter.of(SODIUM_CHLORIDE, milligrams(100), c -> Double.NaN));
        Refused.argument(
                "conductivity of sodium chloride must rise with its concentration, but was 0.0 µS/cm at 0 mg/L and "
                        + "Infinity µS/cm at 100 mg/L",
                () -> SolutionScaleMeter.of(SODIUM_CHLORIDE, milligrams(100), c -> c * Double.MAX_VALUE));
        Refused.argument(
                "conductivity of sodium chloride must rise with its concentration, but was -1.0 µS/cm at 0 mg/L and "
                        + "99.0 µS/cm at 100 mg/L",
                () -> SolutionScaleMeter.of(SODIUM_CHLORIDE, milligrams(100), c -> c - 1));
    }

    @Test
    void textSaysWhatAReadingIs() {
        assertEquals(
                "400 mg/L (shown as ppm): sodium chloride scale on 760 µS/cm at 25 °C",
                METER.toText(microsiemens(760.055), Locale.ROOT, 3));
        assertEquals("dissolved-solids meter, sodium chloride scale", METER.toString());
    }

    @Test
    void nullIsNamed() {
        Refused.asNull("solution", () -> SolutionScaleMeter.of(null));
        Refused.asNull("solution", () -> SolutionScaleMeter.of(null, END, SolutionScaleMeterTest::toy));
        Refused.asNull("end", () -> SolutionScaleMeter.of(SODIUM_CHLORIDE, null, SolutionScaleMeterTest::toy));
        Refused.asNull("law", () -> SolutionScaleMeter.of(SODIUM_CHLORIDE, END, null));
        Refused.asNull("at25Celsius", () -> METER.reading(null));
        Refused.asNull("reading", () -> METER.conductivity(null));
    }
}
