package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be read is refused with text, place and what is allowed. */
class UnreadableTextTest {

    private static final String NUMBER_EXPECTED = "expected a number with '.' and a unit such as mmol/L";
    private static final String UNITS =
            "expected one of mmol/L, mol/m³, meq/L, mg/L CaCO3, mg/L CaO, °dH, °fH, °e, gpg";

    private static void assertUnreadable(
            String thing, String text, String problem, int index, Function<String, ?> reader) {
        UnreadableTextException refusal =
                assertThrows(UnreadableTextException.class, () -> reader.apply(text), () -> text + " was read");
        assertEquals(
                "cannot read " + thing + " '" + text + "': " + problem + ", at index " + index, refusal.getMessage());
        assertEquals(index, refusal.index());
        assertEquals(problem, refusal.problem());
    }

    private static void assertUnreadableHardness(String text, String problem, int index) {
        assertUnreadable("hardness", text, problem, index, Hardness::parse);
    }

    @Test
    void aCommaIsRefusedWherePeopleDisagreeAboutIt() {
        String problem = "a comma may be a decimal sign or a thousand: use a point and no grouping";
        assertUnreadableHardness("3,2 °dH", problem, 1);
        assertUnreadableHardness("1,234 mmol/L", problem, 1);
        assertUnreadableHardness("1.234,5 mmol/L", problem, 5);
        assertUnreadableHardness("3,", problem, 1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12 mg/L  | mg/L as CaCO3 (100.086 mg/mmol) or as CaO (56.077 mg/mmol): add one",
                "12 MG/l  | mg/L as CaCO3 (100.086 mg/mmol) or as CaO (56.077 mg/mmol): add one",
                "12 ppm   | mg/L as CaCO3 (100.086 mg/mmol) or as CaO (56.077 mg/mmol): add one",
                "12 gr    | grains per US gallon (write gpg) or grams",
                "12 grains| grains per US gallon (write gpg) or grams",
                "12 °F    | French degrees (write °fH) or degrees Fahrenheit",
                "12 degF  | French degrees (write °fH) or degrees Fahrenheit",
                "12 °     | German (°dH), French (°fH) or English (°e) degrees",
                "12 Deg   | German (°dH), French (°fH) or English (°e) degrees"
            })
    void ambiguousHardnessIsRefusedWithBothReadings(String text, String readings) {
        assertUnreadableHardness(text, "'" + text.substring(3) + "' may be " + readings, 3);
    }

    @Test
    void otherAmbiguousSpellingsAreRefusedWithBothReadings() {
        assertUnreadable(
                "alkalinity",
                "120 mg/L",
                "'mg/L' may be mg/L as CaCO3 (50.043 mg/meq) or as HCO3 (61.016 mg/meq): add one",
                4,
                Alkalinity::parse);
        assertUnreadable(
                "volume",
                "5 gal",
                "'gal' may be US gallons of 3.785411784 L (write US gal) or imperial gallons of 4.54609 L (write imp gal)",
                2,
                WaterUnits::parseVolume);
        assertUnreadable(
                "volume",
                "2 cups",
                "'cups' may be US cups of 236.5882365 mL (write US cup) or metric cups of 250 mL",
                2,
                WaterUnits::parseVolume);
        assertUnreadable(
                "mass",
                "3 gr",
                "'gr' may be grams (write g) or grains of 64.79891 mg (write grain)",
                2,
                WaterUnits::parseMass);
        assertUnreadable(
                "temperature",
                "25 deg",
                "'deg' may be degrees Celsius (write °C) or Fahrenheit (write °F)",
                3,
                WaterUnits::parseTemperature);
        assertUnreadable(
                "flow rate",
                "5 gpm",
                "'gpm' may be US gallons (write gal(US)/min) or imperial gallons (write gal(imp)/min) per minute",
                2,
                FlowRate::parse);
        assertUnreadable(
                "mass concentration",
                "35 ppm",
                "'ppm' may be mg/L in dilute water or mg/kg, which needs a density: see"
                        + " MassConcentration.ofMassFraction",
                3,
                MassConcentration::parse);
        assertUnreadable("conductivity", "640 μS", "'μS' may be µS/cm or µS/m: add the length", 4, Conductivity::parse);
        assertUnreadable("conductivity", "mS", "'mS' may be mS/cm or mS/m: add the length", 0, Conductivity::parseUnit);
    }

    @ParameterizedTest
    @CsvSource({
        "5e, 1",
        "22 gpg ± 1, 3",
        "22 gallons, 3",
        "22 dH °, 3",
        "0x10 mmol/L, 1",
        "1d mmol/L, 1",
        "1 000 gpg, 2",
        "5 5 gpg, 2"
    })
    void unknownUnitsAreRefusedWithTheKnownOnes(String text, int index) {
        assertUnreadableHardness(text, "unknown unit, " + UNITS, index);
    }

    @ParameterizedTest
    @CsvSource({"22, 2", "22., 3", "' 22 ', 4", "1e5, 3", "7e+, 1"})
    void aNumberAloneIsRefused(String text, int index) {
        String problem = text.endsWith("+") ? "unknown unit, " + UNITS : "a unit is missing, " + UNITS;
        assertUnreadableHardness(text, problem, index);
    }

    @ParameterizedTest
    @CsvSource({
        "'', 0",
        "'   ', 3",
        "gpg, 0",
        "NaN mmol/L, 0",
        "Infinity mmol/L, 0",
        "-Infinity mmol/L, 0",
        "'  - 5 gpg', 2",
        "--5 gpg, 0",
        "., 0",
        "-.e5 gpg, 0",
        "'\u066122 gpg', 0", // an Arabic digit
        "e5 gpg, 0",
        "'\u22125 gpg', 0" // a minus sign that is none of a keyboard
    })
    void textWithoutANumberIsRefused(String text, int index) {
        assertUnreadableHardness(text, NUMBER_EXPECTED, index);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e400 gpg", "-1e309 gpg", "2e99999999999999999999 gpg"})
    void numbersTooLargeForADoubleAreRefused(String text) {
        assertUnreadableHardness(text, "the number is too large", 0);
    }

    @Test
    void numbersThatTheKindDoesNotHaveAreRefused() {
        assertUnreadable(
                "temperature",
                " -300 °C",
                "temperature must not be below absolute zero, but was -300 °C",
                1,
                WaterUnits::parseTemperature);
    }

    @Test
    void amountsGetAHintAboutMasses() {
        assertUnreadable(
                "amount concentration",
                "5 mg/L",
                "unknown unit, expected one of mol/L, mmol/L, µmol/L, nmol/L, mol/m³; a mass such as mg/L needs the"
                        + " substance and the basis: ask the ion to read it",
                2,
                AmountConcentration::parse);
    }

    @Test
    void theUnitWithoutASymbolIsNotOfferedAsNothing() {
        assertUnreadable(
                "share", "5 x", "unknown unit, expected one of %, mg/kg, g/kg, grain/lb", 2, WaterUnits::parseShare);
    }

    @Test
    void aUnitAloneIsCountedFromItsStart() {
        assertUnreadable("hardness", "mmol", "unknown unit, " + UNITS, 0, Hardness::parseUnit);
        assertUnreadable("hardness", "", "a unit is missing, " + UNITS, 0, Hardness::parseUnit);
    }

    @Test
    void longTextIsShownByItsHead() {
        String sixty = "22 gpg or so, as the neighbour said on the phone last week, ";
        assertEquals(60, sixty.length());
        assertUnreadableHardness(sixty, "unknown unit, " + UNITS, 3);
        UnreadableTextException refusal =
                assertThrows(UnreadableTextException.class, () -> Hardness.parse(sixty + "or"));
        assertTrue(refusal.getMessage().startsWith("cannot read hardness '" + sixty + "…': unknown unit"));
    }

    @Test
    void aCharacterOfTwoCharsIsNotCutInTwo() {
        String text = "2 ".concat("x".repeat(57)).concat("\ud83d\udca7 of water");
        UnreadableTextException refusal = assertThrows(UnreadableTextException.class, () -> Hardness.parse(text));
        assertTrue(refusal.getMessage().startsWith("cannot read hardness '2 " + "x".repeat(57) + "…': unknown unit"));
    }

    @Test
    void theMessageIsOneLineWhateverCameIn() {
        UnreadableTextException refusal =
                assertThrows(UnreadableTextException.class, () -> Hardness.parse("2\r\nf\u0000oo\u001b"));
        assertTrue(refusal.getMessage().startsWith("cannot read hardness '2  f oo ': unknown unit"));
        assertEquals("2  f oo ", refusal.text());
        String padded = "3 m" + "\n".repeat(1000) + "g/L";
        UnreadableTextException ambiguous = assertThrows(UnreadableTextException.class, () -> Hardness.parse(padded));
        assertFalse(ambiguous.getMessage().contains("\n"));
        assertEquals(
                "cannot read hardness '3 m" + " ".repeat(57) + "…': 'm" + " ".repeat(59)
                        + "…' may be mg/L as CaCO3 (100.086 mg/mmol) or as CaO (56.077 mg/mmol): add one, at index 2",
                ambiguous.getMessage());
    }

    @Test
    void aMegabyteOfTextIsRefusedSoon() {
        int million = 1 << 20;
        // some milliseconds each; a quadratic reader would need minutes
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            for (String text : new String[] {
                "1 " + "x".repeat(million),
                " ".repeat(million),
                "1 " + "( ) ".repeat(million / 4),
                "1 " + "per ".repeat(million / 4),
                "x".repeat(million),
                "1".repeat(million) + " gpg",
                "1e" + "9".repeat(million) + " gpg"
            }) {
                assertThrows(UnreadableTextException.class, () -> Hardness.parse(text));
            }
        });
    }

    @Test
    void aMegabyteOfDigitsIsANumber() {
        String ones = "0." + "1".repeat(1 << 20);
        assertEquals(Hardness.of(1.0 / 9, Hardness.GERMAN_DEGREE), Hardness.parse(ones + " °dH"));
    }
}
