package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.WaterUnits.GRAM;
import static evenwater.chemistry.quantity.WaterUnits.ONE;
import static evenwater.chemistry.quantity.WaterUnits.PERCENT;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.WaterUnits;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LevelTeaspoonTest {

    private static LevelTeaspoon of(double grams, double percent) {
        return new LevelTeaspoon(WaterUnits.mass(grams, GRAM), WaterUnits.share(percent, PERCENT), "a scale");
    }

    @ParameterizedTest(name = "{0}: {1} g, {2}")
    @CsvSource({
        "NaHCO3,      4.6, 0.1, USDA FoodData Central (from memory)",
        "NaCl,        6.0, 0.1, USDA FoodData Central (from memory)",
        "MgSO4·7H2O,  4.9, 0.2, 'common practice, no source'",
        "CaCl2·2H2O,  4.1, 0.2, 'common practice, no source'",
    })
    void teaspoonsOfTheTableSayHowFarTheyMayBeOff(String formula, double grams, double uncertainty, String source) {
        LevelTeaspoon teaspoon = Compound.named(formula).teaspoon().orElseThrow();
        assertAll(
                () -> assertEquals(grams, teaspoon.mass().in(GRAM)),
                () -> assertEquals(uncertainty, teaspoon.relativeUncertainty().in(ONE)),
                () -> assertEquals(source, teaspoon.source()));
    }

    @Test
    void allTeaspoonsWithoutASourceMayBeOffByAFifth() {
        for (Compound compound : Compound.all()) {
            compound.teaspoon().ifPresent(t -> {
                double expected = t.source().startsWith("USDA") ? 0.1 : 0.2;
                assertEquals(expected, t.relativeUncertainty().in(ONE), compound.name());
            });
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaOH", "HCl", "H2SO4", "H3PO4", "NaF", "MgSO4"})
    void nobodyMeasuresTheseByTeaspoon(String formula) {
        assertEquals(Optional.empty(), Compound.named(formula).teaspoon());
    }

    @Test
    void massesArePlausibleForAPowder() {
        for (Compound compound : Compound.all()) {
            compound.teaspoon().ifPresent(t -> {
                double gramsPerMillilitre = t.mass().in(GRAM) / 4.92892159375;
                assertTrue(gramsPerMillilitre >= 0.3 && gramsPerMillilitre <= 1.5, compound.name());
            });
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0 g", "-0.1, -0.1 g"})
    void massesArePositive(double grams, String stated) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> of(grams, 20));
        assertEquals("mass of a level teaspoon must be positive, but was " + stated, e.getMessage());
    }

    @ParameterizedTest
    @CsvSource({"-1, -1 %", "100, 100 %", "120, 120 %"})
    void uncertaintiesAreFromZeroToBelowHundredPercent(double percent, String stated) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> of(5, percent));
        assertEquals(
                "relative uncertainty of a teaspoon must be from 0 to below 100 %, but was " + stated, e.getMessage());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 99.9})
    void uncertaintiesInsideTheRangeAreKept(double percent) {
        assertEquals(percent, of(5, percent).relativeUncertainty().in(PERCENT));
    }

    @Test
    void partsAreNeeded() {
        var mass = WaterUnits.mass(5, GRAM);
        var share = WaterUnits.share(20, PERCENT);
        assertAll(
                () -> assertThrows(NullPointerException.class, () -> new LevelTeaspoon(null, share, "")),
                () -> assertThrows(NullPointerException.class, () -> new LevelTeaspoon(mass, null, "")),
                () -> assertEquals(
                        "source",
                        assertThrows(NullPointerException.class, () -> new LevelTeaspoon(mass, share, null))
                                .getMessage()));
    }
}
