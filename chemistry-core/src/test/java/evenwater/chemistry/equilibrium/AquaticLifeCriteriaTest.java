package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Criteria for ammonia and copper: their figures, and where they end. */
class AquaticLifeCriteriaTest {

    @ParameterizedTest(name = "{0} at pH {1}, {2} °C")
    @CsvSource(delimiter = '|', textBlock = """
            # mg/L N, from the published equations in a second program
            ACUTE_1999_SALMONIDS_PRESENT      | 6.5 | 25 | 32.6079
            ACUTE_1999_SALMONIDS_PRESENT      | 9   |  5 | 0.884677
            ACUTE_1999_SALMONIDS_ABSENT       | 8   | 25 | 8.40758
            CHRONIC_1999_EARLY_STAGES_PRESENT | 7   |  0 | 5.90954
            CHRONIC_1999_EARLY_STAGES_PRESENT | 7   | 20 | 4.15027
            CHRONIC_1999_EARLY_STAGES_ABSENT  | 7   |  0 | 9.59570
            CHRONIC_1999_EARLY_STAGES_ABSENT  | 7   | 20 | 4.15027
            ACUTE_2013_SALMONIDS_PRESENT      | 7   | 10 | 24.1032
            ACUTE_2013_SALMONIDS_PRESENT      | 7   | 20 | 16.7602
            ACUTE_2013_SALMONIDS_ABSENT       | 7   | 10 | 37.6453
            ACUTE_2013_SALMONIDS_ABSENT       | 7   | 20 | 16.7602
            CHRONIC_2013                      | 7   | 20 | 1.88702
            CHRONIC_2013                      | 9   | 30 | 0.0814682
            """)
    void ammonia(AmmoniaCriterion criterion, double pH, double celsius, double expected) {
        assertEquals(
                expected,
                criterion.limit(pH, celsius(celsius)).in(Ion.AMMONIUM.milligramPerLitreAs(Element.NITROGEN)),
                expected * 1e-5);
    }

    @Test
    void aCriterionSaysWhatItIs() {
        assertEquals(
                "[US EPA 1999 acute ammonia criterion with salmonids present, "
                        + "US EPA 1999 acute ammonia criterion with salmonids absent, "
                        + "US EPA 1999 chronic ammonia criterion with early life stages present, "
                        + "US EPA 1999 chronic ammonia criterion with early life stages absent, "
                        + "US EPA 2013 acute ammonia criterion with salmonids present, "
                        + "US EPA 2013 acute ammonia criterion with salmonids absent, "
                        + "US EPA 2013 chronic ammonia criterion]",
                List.of(AmmoniaCriterion.values()).toString());
        assertEquals(
                "[US EPA 1995 acute copper criterion, US EPA 1995 chronic copper criterion]",
                List.of(CopperCriterion.values()).toString());
        assertEquals(
                "mg/L N",
                AmmoniaCriterion.CHRONIC_2013.limit(7, celsius(20)).getUnit().toString());
    }

    @ParameterizedTest
    @EnumSource
    void everyAmmoniaCriterionHasItsYearTimeAndSource(AmmoniaCriterion criterion) {
        assertTrue(criterion.name().contains("_" + criterion.year()));
        assertEquals(
                criterion.name().startsWith("ACUTE")
                        ? WaterUnits.time(1, WaterUnits.HOUR)
                        : WaterUnits.time(30, WaterUnits.DAY),
                criterion.averagingTime());
        assertTrue(criterion.source().contains(criterion.year() == 1999 ? "EPA-822-R-99-014" : "EPA-822-R-13-001"));
    }

    @ParameterizedTest
    @EnumSource
    void everyCopperCriterionHasItsYearAndSource(CopperCriterion criterion) {
        assertEquals(1995, criterion.year());
        assertTrue(criterion.source().contains("EPA-820-B-96-001 (from memory)"));
    }

    @ParameterizedTest
    @EnumSource
    void theEndsOfTheRangeAreInside(AmmoniaCriterion criterion) {
        for (double pH : new double[] {6.5, 9}) {
            assertEquals(
                    criterion.limit(pH, celsius(30)).getValue(),
                    criterion
                            .limit(pH, WaterUnits.temperature(86, WaterUnits.FAHRENHEIT))
                            .getValue(),
                    1e-12);
            assertEquals(
                    criterion.limit(pH, celsius(0)).getValue(),
                    criterion
                            .limit(pH, WaterUnits.temperature(273.15, WaterUnits.KELVIN))
                            .getValue(),
                    1e-12);
        }
    }

    @Test
    void ammoniaOutsideTheRangeHasNoCriterion() {
        Refused.withoutAnswer(
                "US EPA 2013 chronic ammonia criterion is stated for pH 6.5 to 9, but pH was 6.4",
                List.of(WaterUnits.share(6.4, WaterUnits.ONE)),
                () -> AmmoniaCriterion.CHRONIC_2013.limit(6.4, celsius(20)));
        Refused.withoutAnswer(
                "US EPA 1999 acute ammonia criterion with salmonids absent is stated for pH 6.5 to 9, but pH was 9.1",
                List.of(WaterUnits.share(9.1, WaterUnits.ONE)),
                () -> AmmoniaCriterion.ACUTE_1999_SALMONIDS_ABSENT.limit(9.1, celsius(20)));
        Refused.withoutAnswer(
                "US EPA 2013 chronic ammonia criterion is stated for 0 °C to 30 °C, but temperature was 90 °F",
                List.of(WaterUnits.temperature(90, WaterUnits.FAHRENHEIT)),
                () -> AmmoniaCriterion.CHRONIC_2013.limit(7, WaterUnits.temperature(90, WaterUnits.FAHRENHEIT)));
        Refused.withoutAnswer(
                "US EPA 2013 chronic ammonia criterion is stated for 0 °C to 30 °C, but temperature was -1 °C",
                List.of(celsius(-1)),
                () -> AmmoniaCriterion.CHRONIC_2013.limit(7, celsius(-1)));
    }

    @ParameterizedTest
    @EnumSource
    void whatIsNoPHIsNoArgument(AmmoniaCriterion criterion) {
        Refused.argument("pH must be from 0 to 14, but was NaN", () -> criterion.limit(Double.NaN, celsius(20)));
        Refused.argument("pH must be from 0 to 14, but was 15.0", () -> criterion.limit(15, celsius(20)));
        Refused.asNull("temperature", () -> criterion.limit(7, null));
    }

    @ParameterizedTest(name = "{0} °dH")
    @CsvSource({ // H = 17.84796 mg/L CaCO₃ per °dH: 0.96 exp(0.9422 ln H − 1.700) and 0.96 exp(0.8545 ln H − 1.702)
        "5, 12.0722, 8.12558",
        "20, 44.5705, 26.5653"
    })
    void copper(double degrees, double acute, double chronic) {
        Hardness hardness = Hardness.of(degrees, Hardness.GERMAN_DEGREE);
        Unit<AmountConcentration> micrograms =
                Ion.COPPER_II.unit(MassConcentration.MICROGRAM_PER_LITRE, Ion.COPPER_II.formula());
        assertEquals(acute, CopperCriterion.ACUTE_1995.limit(hardness).in(micrograms), acute * 1e-5);
        assertEquals(chronic, CopperCriterion.CHRONIC_1995.limit(hardness).in(micrograms), chronic * 1e-5);
        assertEquals(micrograms, CopperCriterion.ACUTE_1995.limit(hardness).getUnit());
    }

    @Test
    void copperAtTheHardnessOfSoftenedWaterHasNoCriterion() {
        Water raw = Water.builder().total(Ion.CALCIUM, mmol(2)).build();
        Hardness softened =
                Softener.withSodium().leaking(hardness(0.05)).treat(raw).hardness();
        Refused.withoutAnswer(
                "US EPA 1995 acute copper criterion is stated for a hardness of 25 to 400 mg/L CaCO3, "
                        + "but hardness was 0.05 mmol/L (5.0043 mg/L CaCO3)",
                List.of(softened),
                () -> CopperCriterion.ACUTE_1995.limit(softened));
        Hardness brine = Hardness.of(401, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
        Refused.withoutAnswer(
                "US EPA 1995 chronic copper criterion is stated for a hardness of 25 to 400 mg/L CaCO3, "
                        + "but hardness was 401 mg/L CaCO3",
                List.of(brine),
                () -> CopperCriterion.CHRONIC_1995.limit(brine));
        Refused.argument(
                "hardness must not be negative, but was -1 gpg",
                () -> CopperCriterion.ACUTE_1995.limit(Hardness.of(-1, Hardness.GRAIN_PER_US_GALLON)));
        Refused.asNull("hardness", () -> CopperCriterion.ACUTE_1995.limit(null));
    }

    @Test
    void theEndsOfHardnessAreInsideInEveryUnit() {
        Stream.of(25.0, 400.0).forEach(milligrams -> {
            Hardness end = Hardness.of(milligrams, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
            double expected = CopperCriterion.ACUTE_1995.limit(end).getValue();
            Hardness.units()
                    .forEach(unit -> assertEquals(
                            expected,
                            CopperCriterion.ACUTE_1995.limit(end.to(unit)).getValue(),
                            1e-12));
        });
    }
}
