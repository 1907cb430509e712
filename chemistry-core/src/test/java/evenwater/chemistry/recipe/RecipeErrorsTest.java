package evenwater.chemistry.recipe;

import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.analysis.CalciumToMagnesium;
import evenwater.chemistry.control.StockSolution;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecipeErrorsTest {

    private static RecipeBuilder builder() {
        return Recipe.builder(Water.pure(), litres(60));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void weightsMustBePositiveNumbers(double weight) {
        Refused.argument(
                "weight of a target near 1 mmol/L must be above 0 and finite, but was " + weight,
                () -> Target.near(hardness(1), weight));
    }

    @Test
    void whatMustBeMetHasNoWeight() {
        Refused.argument(
                "target of at most 1 mmol/L must be met and has no weight, but was given 2.0",
                () -> new Target<>(Aim.AT_MOST, hardness(1), 2));
        Refused.asNull("value", () -> Target.exactly(null));
        Refused.asNull("aim", () -> new Target<>(null, hardness(1), 1));
    }

    @Test
    void volumesMustBePositive() {
        Refused.argument("volume of a recipe must be positive, but was 0 L", () -> Recipe.blending(litres(0)));
        Refused.argument(
                "volume of a recipe must be positive, but was -3 L", () -> Recipe.builder(Water.pure(), litres(-3)));
    }

    @Test
    void targetsMustNotBeNegative() {
        Refused.argument(
                "target of hardness must not be negative, but was -1 mmol/L",
                () -> builder().hardness(Target.atMost(hardness(-1))));
        Refused.argument(
                "target of Na⁺ must not be negative, but was -1 mmol/L",
                () -> builder().total(Ion.SODIUM, Target.atMost(mmol(-1))));
        Refused.argument(
                "target of conductivity must not be negative, but was -1 µS/cm",
                () -> builder()
                        .conductivity(Target.near(Conductivity.of(-1, Conductivity.MICROSIEMENS_PER_CENTIMETRE))));
    }

    @Test
    void ionsWithoutATotalAreRefused() {
        Refused.argument(
                "HCO₃⁻ has no total of its own: it is counted in inorganic carbon and alkalinity",
                () -> builder().total(Ion.BICARBONATE, Target.exactly(mmol(1))));
        Refused.argument(
                "HCO₃⁻ has no total of its own: it is counted in inorganic carbon and alkalinity",
                () -> IonRatio.byAmount(Ion.CALCIUM, Ion.BICARBONATE, 1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void ratiosMustBePositive(double ratio) {
        Refused.argument(
                "ratio of Cl⁻ to SO₄²⁻ must be positive, but was " + ratio,
                () -> IonRatio.byMass(Ion.CHLORIDE, Ion.SULFATE, ratio));
    }

    @Test
    void aRatioNeedsTwoIons() {
        Refused.argument("ratio of Cl⁻ to itself says nothing", () -> IonRatio.byMass(Ion.CHLORIDE, Ion.CHLORIDE, 1));
        assertEquals(
                new IonRatio(Ion.CALCIUM, Ion.MAGNESIUM, 2.5, true), IonRatio.from(CalciumToMagnesium.byMass(2.5)));
        assertEquals(
                "2.5 : 1 by mass", IonRatio.from(CalciumToMagnesium.byMass(2.5)).toString());
    }

    @Test
    void theShelfHoldsACompoundInOneWay() {
        StockSolution stock =
                StockSolution.of(Compound.SODIUM_CHLORIDE, MassConcentration.of(100, MassConcentration.GRAM_PER_LITRE));
        Refused.argument(
                "sodium chloride must be on the shelf in one way, dry or in one stock, but was there twice",
                () -> builder().shelf(Compound.SODIUM_CHLORIDE).stock(stock));
        Refused.asNull("compound", () -> builder().shelf((Compound) null));
        Refused.asNull("stock", () -> builder().stock(null));
    }

    @Test
    void watersAndTheirSharesMustFit() {
        Refused.argument(
                "a recipe needs a water, pure water for one",
                () -> Recipe.blending(litres(1)).solve());
        Refused.argument(
                "two waters of a recipe must not both be called the water",
                () -> builder().source("the water", Water.pure()));
        Refused.argument(
                "present shares must be as many as the 1 waters, but were 2",
                () -> builder().presentShares(0.5, 0.5).solve());
        Refused.argument(
                "present shares must add up to 1, but were [0.5, 0.4]",
                () -> builder().presentShares(0.5, 0.4));
        Refused.argument(
                "present shares must be from 0 to 1, but one was NaN",
                () -> builder().presentShares(Double.NaN));
        Refused.argument(
                "share of tap must be from 0 to 1, but was NaN",
                () -> new SourceShare("tap", Water.pure(), Double.NaN, WaterUnits.volume(1, WaterUnits.LITRE)));
        Refused.asNull("water", () -> builder().source("tap", null));
        Refused.asNull("dosing", () -> new RecipeDose(null, Optional.empty(), WaterUnits.volume(1, WaterUnits.LITRE)));
    }
}
