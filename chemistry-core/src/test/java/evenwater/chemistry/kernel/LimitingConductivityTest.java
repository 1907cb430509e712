package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Csv;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class LimitingConductivityTest {

    private static final double KELVIN_25 = 298.15;

    /** Ions that make most of the conductivity of natural waters. */
    private static final Set<String> MAIN = Set.of("Ca²⁺", "Mg²⁺", "Na⁺", "K⁺", "Cl⁻", "SO₄²⁻", "NO₃⁻");

    /** Where the two handbooks differ by more than they claim. */
    private static final Map<String, Double> DISPUTED =
            Map.of("H₂PO₄⁻", 0.10, "HPO₄²⁻", 0.75, "PO₄³⁻", 0.35, "HSO₄⁻", 0.05, "Mn²⁺", 0.08);

    private static Stream<Map<String, String>> table(String source) {
        return Csv.rows("limiting-conductivities.csv").stream()
                .filter(row -> source.equals(row.get("source")))
                .filter(row -> ion(row).isPresent());
    }

    private static Stream<Map<String, String>> crc() {
        return table("CRC");
    }

    private static Stream<Map<String, String>> marcus() {
        return table("Marcus");
    }

    private static Stream<Map<String, String>> lange() {
        return table("Lange");
    }

    private static Optional<LimitingConductivity> ion(Map<String, String> row) {
        return Arrays.stream(LimitingConductivity.values())
                .filter(ion -> ion.symbol().equals(row.get("ion")))
                .findAny();
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    @ParameterizedTest
    @MethodSource("crc")
    void theHandbookIsCopiedToTheLastDigit(Map<String, String> row) {
        LimitingConductivity ion = ion(row).orElseThrow();
        assertEquals(number(row, "charge"), ion.chargeNumber());
        assertEquals(number(row, "lambda [S cm2/eq]"), ion.squareCentimetreSiemensPerEquivalent(KELVIN_25), 1e-11);
    }

    @ParameterizedTest
    @MethodSource("marcus")
    void anotherHandbookSaysTheSame(Map<String, String> row) {
        double theirs = number(row, "lambda [S cm2/eq]");
        double allowed = theirs * DISPUTED.getOrDefault(row.get("ion"), 0.011);
        assertEquals(theirs, ion(row).orElseThrow().squareCentimetreSiemensPerEquivalent(KELVIN_25), allowed);
    }

    @ParameterizedTest
    @MethodSource("lange")
    void temperatureFollowsTheTable(Map<String, String> row) {
        double theirs = number(row, "lambda [S cm2/eq]") / at25(row.get("ion"));
        double kelvin = number(row, "temperature [C]") + 273.15;
        LimitingConductivity ion = ion(row).orElseThrow();
        double ours =
                ion.squareCentimetreSiemensPerEquivalent(kelvin) / ion.squareCentimetreSiemensPerEquivalent(KELVIN_25);
        assertEquals(theirs, ours, theirs * (MAIN.contains(row.get("ion")) ? 0.021 : 0.065));
    }

    private static double at25(String symbol) {
        return lange().filter(row -> symbol.equals(row.get("ion")) && number(row, "temperature [C]") == 25)
                .mapToDouble(row -> number(row, "lambda [S cm2/eq]"))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest(name = "{0} of {1} and {2}")
    @CsvSource({
        "CALCIUM_BICARBONATE, CALCIUM, BICARBONATE",
        "MAGNESIUM_BICARBONATE, MAGNESIUM, BICARBONATE",
        "SODIUM_CARBONATE, SODIUM, CARBONATE",
        "SODIUM_SULFATE, SODIUM, SULFATE",
        "POTASSIUM_SULFATE, POTASSIUM, SULFATE"
    })
    void aPairHasTheVolumeOfItsIons(LimitingConductivity pair, LimitingConductivity one, LimitingConductivity other) {
        double radiusCubed = Math.pow(mobility(one), -3) + Math.pow(mobility(other), -3);
        assertEquals(Math.pow(radiusCubed, -1.0 / 3), mobility(pair), 0.005);
    }

    @ParameterizedTest(name = "{0} as {1}")
    @CsvSource({"CALCIUM_HYDROXIDE, CALCIUM", "MAGNESIUM_HYDROXIDE, MAGNESIUM"})
    void aHydroxideMovesAsItsIon(LimitingConductivity pair, LimitingConductivity ion) {
        assertEquals(mobility(ion), mobility(pair), 0.006);
    }

    @Test
    void hydrogenCitrateIsHalfWayBetweenItsNeighbours() {
        double middle =
                (mobility(LimitingConductivity.DIHYDROGEN_CITRATE) + mobility(LimitingConductivity.CITRATE)) / 2;
        assertEquals(middle, mobility(LimitingConductivity.HYDROGEN_CITRATE), 0.005);
    }

    private static double mobility(LimitingConductivity ion) {
        return ion.squareCentimetreSiemensPerEquivalent(KELVIN_25) / Math.abs(ion.chargeNumber());
    }

    @Test
    void everyChargedSpeciesHasAnIonOfItsName() {
        for (Species species : Species.values()) {
            if (species.chargeNumber() != 0) {
                LimitingConductivity ion = LimitingConductivity.valueOf(species.name());
                assertEquals(species.symbol(), ion.symbol());
                assertEquals(species.chargeNumber(), ion.chargeNumber());
            }
        }
    }

    @Test
    void everyIonOfTheLibraryIsThere() {
        List<String> symbols = Arrays.stream(LimitingConductivity.values())
                .map(LimitingConductivity::symbol)
                .toList();
        for (Ion ion : Ion.all()) {
            assertTrue(ion.chargeNumber() == 0 || symbols.contains(ion.symbol()), ion.symbol());
        }
    }

    @ParameterizedTest
    @EnumSource
    void warmIonsMoveFaster(LimitingConductivity ion) {
        double last = 0;
        for (int celsius = 0; celsius <= 100; celsius++) {
            double now = ion.squareCentimetreSiemensPerEquivalent(celsius + 273.15);
            assertTrue(now > last, celsius + " °C");
            last = now;
        }
    }

    @ParameterizedTest
    @CsvSource({"273.15", "298.15", "310", "373.15"})
    void allAtOnceAreAsOneByOne(double kelvin) {
        double[] all = new double[LimitingConductivity.values().length];
        LimitingConductivity.write(kelvin, all);
        for (LimitingConductivity ion : LimitingConductivity.values()) {
            assertEquals(ion.squareCentimetreSiemensPerEquivalent(kelvin), all[ion.place()], ion.symbol());
        }
    }
}
