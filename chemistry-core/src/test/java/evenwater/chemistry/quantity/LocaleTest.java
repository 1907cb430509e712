package evenwater.chemistry.quantity;

import static evenwater.chemistry.quantity.Hardness.GERMAN_DEGREE;
import static evenwater.chemistry.quantity.Refusals.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Text for people follows the locale that is asked for; everything else follows none. */
class LocaleTest {

    private final Locale defaultLocale = Locale.getDefault();
    private final TimeZone defaultZone = TimeZone.getDefault();

    @AfterEach
    void restoreDefaults() {
        Locale.setDefault(defaultLocale);
        TimeZone.setDefault(defaultZone);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = { // digits, marks and grouping of the CLDR that comes with the JDK
                "de-DE            | 1.234,5 °dH",
                "en-US            | 1,234.5 °dH",
                "und              | 1,234.5 °dH",
                "hi-IN-u-nu-deva  | १,२३४.५ °dH",
                "ar-EG-u-nu-arab  | ١٬٢٣٤٫٥ °dH"
            })
    void textForPeopleFollowsTheLocale(String tag, String expected) {
        assertEquals(expected, Hardness.of(1234.5, GERMAN_DEGREE).toText(Locale.forLanguageTag(tag), 6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "21.100302942653812 | 3  | 21,1",
                "21.100302942653812 | 1  | 20",
                "21.100302942653812 | 17 | 21,100302942653812",
                "22                 | 3  | 22",
                "0.1                | 3  | 0,1",
                "0.5                | 3  | 0,5",
                "0.30000000000000004| 15 | 0,3",
                "0.30000000000000004| 17 | 0,30000000000000004",
                "9.996              | 3  | 10",
                "-0.00012345        | 2  | -0,00012",
                "1234567            | 2  | 1.200.000",
                "0                  | 3  | 0",
                "2.5                | 1  | 3" // half up, as people round
            })
    void textForPeopleKeepsTheDigitsThatCount(double value, int digits, String expected) {
        assertEquals(expected + " °dH", Hardness.of(value, GERMAN_DEGREE).toText(Locale.GERMANY, digits));
    }

    @Test
    void aShareNeedsNoUnitInText() {
        assertEquals("0,96", WaterUnits.share(0.96, WaterUnits.ONE).toText(Locale.GERMANY, 3));
        assertEquals("96 %", WaterUnits.share(96, WaterUnits.PERCENT).toText(Locale.GERMANY, 3));
    }

    @ParameterizedTest
    @ValueSource(ints = {Integer.MIN_VALUE, 0, 18})
    void digitsThatADoubleDoesNotHaveAreRefused(int digits) {
        assertRefused(
                "significant digits must be from 1 to 17, but were " + digits,
                () -> Hardness.of(1, GERMAN_DEGREE).toText(Locale.ROOT, digits));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "th-TH-u-nu-thai", "lt-LT"})
    void theDefaultLocaleAndZoneChangeNothing(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
        assertEquals(
                "21.100302942653812 °dH",
                Hardness.parse("22 GPG").to(GERMAN_DEGREE).toString());
        // the small letter of I is ı in Turkish
        assertEquals("3 gal(imp)", WaterUnits.parseVolume("3 IMPERIAL GALLONS").toString());
        assertEquals("1,234.5 °dH", Hardness.of(1234.5, GERMAN_DEGREE).toText(Locale.ROOT, 6));
        assertRefused(
                UnreadableTextException.class,
                "cannot read conductivity '5 I': unknown unit, expected one of µS/cm, mS/cm, mS/m, S/m, at index 2",
                () -> Conductivity.parse("5 I"));
        assertRefused(
                "compensated hardness must be a finite number, but was NaN gpg",
                () -> CompensatedHardness.of(Double.NaN, CompensatedHardness.GRAIN_PER_US_GALLON));
        assertRefused(
                "mass concentration cannot be stated in gpg, a unit of hardness",
                () -> MassConcentration.of(1, Unchecked.unit(Hardness.GRAIN_PER_US_GALLON)));
    }
}
