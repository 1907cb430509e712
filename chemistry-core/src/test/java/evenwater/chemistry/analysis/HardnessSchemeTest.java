package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.assertIllegal;
import static evenwater.chemistry.analysis.Reports.assertNullRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Hardness;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class HardnessSchemeTest {

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # bounds: Durfor and Becker 1964; WHO 2011; ASAE S339; Sawyer and McCarty; WRMG 2007; hobby
            USGS               | 0      | mg/L CaCO3 | soft
            USGS               | 60     | mg/L CaCO3 | soft
            USGS               | 60.01  | mg/L CaCO3 | moderately hard
            USGS               | 120    | mg/L CaCO3 | moderately hard
            USGS               | 120.01 | mg/L CaCO3 | hard
            USGS               | 180    | mg/L CaCO3 | hard
            USGS               | 180.01 | mg/L CaCO3 | very hard
            USGS               | 1e6    | mg/L CaCO3 | very hard
            WHO                | 0      | mg/L CaCO3 | soft
            WHO                | 59.99  | mg/L CaCO3 | soft
            WHO                | 60     | mg/L CaCO3 | moderately hard
            WHO                | 119.99 | mg/L CaCO3 | moderately hard
            WHO                | 120    | mg/L CaCO3 | hard
            WHO                | 179.99 | mg/L CaCO3 | hard
            WHO                | 180    | mg/L CaCO3 | very hard
            SOFTENING_TRADE    | 0      | gpg        | soft
            SOFTENING_TRADE    | 0.99   | gpg        | soft
            SOFTENING_TRADE    | 1      | gpg        | slightly hard
            SOFTENING_TRADE    | 3.5    | gpg        | slightly hard
            SOFTENING_TRADE    | 3.51   | gpg        | moderately hard
            SOFTENING_TRADE    | 7      | gpg        | moderately hard
            SOFTENING_TRADE    | 7.01   | gpg        | hard
            SOFTENING_TRADE    | 10.5   | gpg        | hard
            SOFTENING_TRADE    | 10.51  | gpg        | very hard
            SAWYER_AND_MCCARTY | 75     | mg/L CaCO3 | soft
            SAWYER_AND_MCCARTY | 75.01  | mg/L CaCO3 | moderately hard
            SAWYER_AND_MCCARTY | 150    | mg/L CaCO3 | moderately hard
            SAWYER_AND_MCCARTY | 150.01 | mg/L CaCO3 | hard
            SAWYER_AND_MCCARTY | 300    | mg/L CaCO3 | hard
            SAWYER_AND_MCCARTY | 300.01 | mg/L CaCO3 | very hard
            GERMANY            | 1.49   | mmol/L     | soft
            GERMANY            | 1.5    | mmol/L     | medium
            GERMANY            | 2.5    | mmol/L     | medium
            GERMANY            | 2.51   | mmol/L     | hard
            AQUARISTS          | 4      | °dH        | very soft
            AQUARISTS          | 4.01   | °dH        | soft
            AQUARISTS          | 8      | °dH        | soft
            AQUARISTS          | 8.01   | °dH        | medium
            AQUARISTS          | 12     | °dH        | medium
            AQUARISTS          | 12.01  | °dH        | fairly hard
            AQUARISTS          | 18     | °dH        | fairly hard
            AQUARISTS          | 18.01  | °dH        | hard
            AQUARISTS          | 30     | °dH        | hard
            AQUARISTS          | 30.01  | °dH        | very hard
            """)
    void classesEndAtTheirBounds(HardnessScheme scheme, double value, String unit, String name) {
        assertEquals(name, scheme.classOf(Hardness.of(value, Hardness.parseUnit(unit))));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "USGS, 60, mg/L CaCO3, soft",
        "USGS, 120, mg/L CaCO3, moderately hard",
        "USGS, 180, mg/L CaCO3, hard",
        "WHO, 60, mg/L CaCO3, moderately hard",
        "WHO, 120, mg/L CaCO3, hard",
        "WHO, 180, mg/L CaCO3, very hard",
        "SOFTENING_TRADE, 1, gpg, slightly hard",
        "SOFTENING_TRADE, 3.5, gpg, slightly hard",
        "SOFTENING_TRADE, 10.5, gpg, hard",
        "GERMANY, 1.5, mmol/L, medium",
        "GERMANY, 2.5, mmol/L, medium",
        "AQUARISTS, 4, °dH, very soft",
        "AQUARISTS, 30, °dH, hard"
    })
    void aBoundIsABoundInEveryUnit(HardnessScheme scheme, double value, String unit, String name) {
        Hardness bound = Hardness.of(value, Hardness.parseUnit(unit));
        for (Unit<Hardness> other : Hardness.units()) {
            assertEquals(name, scheme.classOf(bound.to(other)), other::toString);
        }
    }

    @Test
    void oneWaterIsHardToSomeAndNotToOthers() {
        Hardness hardness = Hardness.of(9, Hardness.GERMAN_DEGREE); // 160.6 mg/L, 9.38 gpg, 1.605 mmol/L
        assertEquals(
                "[hard, hard, hard, hard, medium, medium]",
                Stream.of(HardnessScheme.values())
                        .map(scheme -> scheme.classOf(hardness))
                        .toList()
                        .toString());
    }

    @ParameterizedTest
    @EnumSource(HardnessScheme.class)
    void aDifferenceHasNoClass(HardnessScheme scheme) {
        assertIllegal(
                "hardness must not be negative, but was -1 °fH",
                () -> scheme.classOf(Hardness.of(-1, Hardness.FRENCH_DEGREE)));
        assertNullRefused("quantity", () -> scheme.classOf(null));
    }
}
