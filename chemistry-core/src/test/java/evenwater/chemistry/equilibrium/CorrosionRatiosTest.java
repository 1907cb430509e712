package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Ratios of anions, their classes, and waters that have none. */
class CorrosionRatiosTest {

    private static Water water(double chloride, double sulfate, double alkalinity) {
        return Water.builder()
                .total(Ion.CALCIUM, mmol(2))
                .total(Ion.CHLORIDE, mmol(chloride))
                .total(Ion.SULFATE, mmol(sulfate))
                .alkalinity(alkalinity(alkalinity))
                .build();
    }

    @ParameterizedTest(name = "Cl {0}, SO4 {1} mmol/L, alkalinity {2} meq/L")
    @CsvSource({ // (Cl + 2 SO₄) / alkalinity, by hand
        "1, 0.5, 4, 0.5",
        "1, 0, 4, 0.25",
        "0, 1, 4, 0.5",
        "3, 1, 0.5, 10"
    })
    void larson(double chloride, double sulfate, double alkalinity, double expected) {
        assertEquals(expected, CorrosionRatios.larson(water(chloride, sulfate, alkalinity)));
    }

    @Test
    void chlorideToSulfateIsARatioOfMasses() {
        Water water = Water.builder()
                .total(Ion.CHLORIDE, AmountConcentration.of(30, Ion.CHLORIDE.milligramPerLitre()))
                .total(Ion.SULFATE, AmountConcentration.of(50, Ion.SULFATE.milligramPerLitre()))
                .build();
        assertEquals(0.6, CorrosionRatios.chlorideToSulfate(water), 1e-15);
        assertEquals(0, CorrosionRatios.chlorideToSulfate(water(0, 1, 4)));
    }

    @Test
    void softeningLeavesThemAsTheyAre() {
        Water raw = water(1, 0.5, 2);
        Water soft = Softener.withSodium().leaking(hardness(0.1)).treat(raw);
        assertEquals(CorrosionRatios.larson(raw), CorrosionRatios.larson(soft));
        assertEquals(CorrosionRatios.chlorideToSulfate(raw), CorrosionRatios.chlorideToSulfate(soft));
    }

    @Test
    void aWaterWithoutADivisorHasNoRatio() {
        Refused.withoutAnswer(
                "the Larson ratio needs an alkalinity above 0, but it was -0.5 meq/L",
                List.of(alkalinity(-0.5)),
                () -> CorrosionRatios.larson(water(1, 1, -0.5)));
        Refused.withoutAnswer(
                "the Larson ratio needs an alkalinity above 0, but it was 0 meq/L",
                List.of(alkalinity(0)),
                () -> CorrosionRatios.larson(water(1, 1, 0)));
        Refused.withoutAnswer(
                "the chloride-to-sulfate mass ratio needs sulfate, but the water holds none",
                List.of(mmol(0)),
                () -> CorrosionRatios.chlorideToSulfate(water(1, 0, 4)));
    }

    @Test
    void aWaterOfWhichNothingIsKnownHasNoRatio() {
        Refused.withoutAnswer(
                "the Larson ratio needs chloride or sulfate, but the water holds neither",
                List.of(mmol(0), mmol(0)),
                () -> CorrosionRatios.larson(water(0, 0, 4)));
        Refused.withoutAnswer(
                "the Larson ratio needs an alkalinity above 0, but it was 0 meq/L",
                List.of(alkalinity(0)),
                () -> CorrosionRatios.larson(Water.pure()));
        Refused.withoutAnswer(
                "the chloride-to-sulfate mass ratio needs sulfate, but the water holds none",
                List.of(mmol(0)),
                () -> CorrosionRatios.chlorideToSulfate(Water.pure()));
        Refused.asNull("water", () -> CorrosionRatios.larson(null));
        Refused.asNull("water", () -> CorrosionRatios.chlorideToSulfate(null));
    }

    @Test
    void aRatioBeyondTheDoublesIsNoNumber() {
        Refused.withoutAnswer(
                "the Larson ratio is too large for a double: the divisor is nearly 0",
                List.of(),
                () -> CorrosionRatios.larson(water(1e50, 0, 1e-300)));
        Refused.withoutAnswer(
                "the chloride-to-sulfate mass ratio is too large for a double: the divisor is nearly 0",
                List.of(),
                () -> CorrosionRatios.chlorideToSulfate(water(1e50, 1e-300, 1)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({ // bounds from memory: Larson and Skold 1958, and a study of the Great Lakes
        "LARSON_AND_SKOLD_1958, 0, low",
        "LARSON_AND_SKOLD_1958, 0.19, low",
        "LARSON_AND_SKOLD_1958, 0.2, moderate",
        "LARSON_AND_SKOLD_1958, 0.1999999999999, moderate",
        "LARSON_AND_SKOLD_1958, 0.5, moderate",
        "LARSON_AND_SKOLD_1958, 0.5000000000001, moderate",
        "LARSON_AND_SKOLD_1958, 0.51, high",
        "LARSON_AND_SKOLD_1958, 100, high",
        "GREAT_LAKES, 0.79, low",
        "GREAT_LAKES, 0.8, moderate",
        "GREAT_LAKES, 1.2, moderate",
        "GREAT_LAKES, 1.21, high"
    })
    void classes(LarsonScheme scheme, double ratio, String expected) {
        assertEquals(expected, scheme.classOf(ratio));
    }

    @Test
    void oneWaterIsHighToSomeAndNotToOthers() {
        Water water = water(2, 0.5, 4); // 0.75
        assertEquals("high", LarsonScheme.LARSON_AND_SKOLD_1958.classOf(water));
        assertEquals("low", LarsonScheme.GREAT_LAKES.classOf(water));
    }

    @ParameterizedTest
    @EnumSource
    void whatIsNoRatioHasNoClass(LarsonScheme scheme) {
        Refused.argument("Larson ratio must be 0 or more, but was -0.1", () -> scheme.classOf(-0.1));
        Refused.argument("Larson ratio must be 0 or more, but was NaN", () -> scheme.classOf(Double.NaN));
        Refused.asNull("water", () -> scheme.classOf(null));
    }
}
