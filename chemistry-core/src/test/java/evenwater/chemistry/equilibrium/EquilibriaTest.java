package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.WaterUnits.ATMOSPHERE;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Gas, minerals and the carbonate system from two figures, against handbooks and by their own laws. */
class EquilibriaTest {

    private static final Water SOFT = Water.builder()
            .total(Ion.CALCIUM, mmol(0.5))
            .total(Ion.SODIUM, mmol(0.4))
            .total(Ion.CHLORIDE, mmol(0.4))
            .carbon(mmol(1.2))
            .build();

    @ParameterizedTest(name = "{0} atm")
    @CsvSource({ // 5.65 by Stumm and Morgan 1996 (from memory) at 10^-3.5 atm; the rest by a second implementation
        "0.000316227766, 5.65, 0.02",
        "0.000316227766, 5.659, 0.001",
        "0.00042, 5.598, 0.001"
    })
    void pureWaterInAir(double atmospheres, double expected, double tolerance) {
        Water water = GasExchange.equilibrated(Water.pure(), WaterUnits.pressure(atmospheres, ATMOSPHERE));
        assertEquals(expected, Speciation.of(water).pH(), tolerance);
    }

    @Test
    void calciteInAir() { // pH 8.3 (8.26 to 8.40), Ca 0.5 mmol/L: Stumm and Morgan 1996, Snoeyink and Jenkins 1980
        // (from memory)
        Water water = MineralEquilibrium.saturated(
                Water.pure(), Mineral.CALCITE, WaterUnits.pressure(0.000316227766, ATMOSPHERE));
        assertEquals(8.279, Speciation.of(water).pH(), 0.001);
        assertEquals(0.494, water.total(Ion.CALCIUM).in(MILLIMOLE_PER_LITRE), 0.001);
        assertEquals(0.988, water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), 0.002);
    }

    @ParameterizedTest
    @EnumSource
    void everyMineralCanBeInEquilibriumWithPureWater(Mineral mineral) {
        Water water = MineralEquilibrium.saturated(Water.pure(), mineral);
        assertEquals(0, Speciation.of(water).saturationIndex(mineral).orElseThrow(), 1e-9);
        assertEquals(0, MineralEquilibrium.dissolved(water, mineral).in(MILLIMOLE_PER_LITRE), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({ // mmol/L in pure water at 25 °C, handbook solubilities from memory; the tolerance is the spread in
        // print
        "GYPSUM, 15.3, 0.5", // 2.6 g/L
        "AMORPHOUS_SILICA, 1.93, 0.1", // 116 mg/L of SiO₂
        "BRUCITE, 0.14, 0.03", // 8 mg/L
        "FLUORITE, 0.20, 0.01" // 16 mg/L
    })
    void solubilities(Mineral mineral, double expected, double tolerance) {
        assertEquals(
                expected, MineralEquilibrium.dissolved(Water.pure(), mineral).in(MILLIMOLE_PER_LITRE), tolerance);
    }

    @Test
    void degassingTakesCarbonAndLeavesAlkalinity() {
        Speciation before = Speciation.of(SOFT);
        Water after = GasExchange.degassed(SOFT, 0.9);
        assertEquals(SOFT.alkalinity(), after.alkalinity());
        assertEquals(
                1.2 - 0.9 * before.carbonDioxide().in(MILLIMOLE_PER_LITRE),
                after.carbon().orElseThrow().in(MILLIMOLE_PER_LITRE),
                1e-12);
        assertEquals(SOFT, GasExchange.aerated(SOFT, GasExchange.OUTDOOR_AIR, 0));
        assertEquals(
                Speciation.of(GasExchange.equilibrated(SOFT, GasExchange.OUTDOOR_AIR))
                        .pH(),
                Speciation.of(GasExchange.aerated(SOFT, GasExchange.OUTDOOR_AIR, 1))
                        .pH(),
                1e-12);
    }

    @Test
    void injectionReachesItsTarget() {
        AmountConcentration wanted = AmountConcentration.of(20, Ion.CARBON_DIOXIDE.milligramPerLitre());
        Speciation rich = Speciation.of(GasExchange.injected(SOFT, wanted));
        assertEquals(20, rich.carbonDioxide().in(Ion.CARBON_DIOXIDE.milligramPerLitre()), 1e-9);
        assertEquals(6.5, Speciation.of(GasExchange.injectedToPH(SOFT, 6.5)).pH(), 1e-12);
        Refused.withoutAnswer(
                "CO₂ that is let in cannot lead to pH 8.5: the water holds 8.84 mg/L CO₂ already, at pH 7.02",
                List.of(Speciation.of(SOFT).carbonDioxide().to(Ion.CARBON_DIOXIDE.milligramPerLitre())),
                () -> GasExchange.injectedToPH(SOFT, 8.5));
    }

    @Test
    void anyTwoFiguresFindTheOthers() {
        Speciation truth = Speciation.of(SOFT);
        CarbonateSystem system = CarbonateSystem.of(SOFT);
        List<CarbonateSystem> pairs = List.of(
                system.withPH(truth.pH()).withItsAlkalinity(),
                system.withPH(truth.pH()).withCarbon(truth.carbon()),
                system.withPH(truth.pH()).withCarbonDioxide(truth.carbonDioxide()),
                system.withPH(truth.pH()).withPartialPressure(truth.partialPressureOfCarbonDioxide()),
                system.withItsAlkalinity().withCarbon(truth.carbon()),
                system.withItsAlkalinity().withCarbonDioxide(truth.carbonDioxide()),
                system.withItsAlkalinity().withPartialPressure(truth.partialPressureOfCarbonDioxide()),
                system.withCarbon(truth.carbon()).withCarbonDioxide(truth.carbonDioxide()),
                system.withCarbon(truth.carbon()).withPartialPressure(truth.partialPressureOfCarbonDioxide()));
        for (CarbonateSystem pair : pairs) {
            Speciation found = pair.solve();
            assertEquals(truth.pH(), found.pH(), 1e-10);
            assertEquals(1.2, found.water().carbon().orElseThrow().in(MILLIMOLE_PER_LITRE), 1e-10);
            assertEquals(1.0, found.water().alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), 1e-10);
            assertEquals(found.pH(), Speciation.of(found.water()).pH(), 1e-10);
        }
    }

    @Test
    void fewerOrMoreThanTwoFiguresAreRefused() {
        CarbonateSystem one = CarbonateSystem.of(SOFT).withPH(7);
        Refused.argument(
                "exactly two of pH, alkalinity, inorganic carbon, CO₂ and its partial pressure must be stated, but 1 was",
                one::solve);
        Refused.argument(
                "exactly two of pH, alkalinity, inorganic carbon, CO₂ and its partial pressure must be stated, but 3 were",
                () -> one.withItsAlkalinity().withCarbon(mmol(1)).solve());
        Refused.argument(
                "CO₂ and its partial pressure must not both be stated: one follows from the other",
                () -> CarbonateSystem.of(SOFT)
                        .withCarbonDioxide(mmol(1))
                        .withPartialPressure(GasExchange.OUTDOOR_AIR)
                        .solve());
        Refused.argument("pH must be from 0 to 14, but was NaN", () -> one.withPH(Double.NaN));
        Refused.argument(
                "partial pressure of CO₂ must be from 0 atm to 10 atm, but was 11 atm",
                () -> one.withPartialPressure(WaterUnits.pressure(11, ATMOSPHERE)));
        Refused.argument(
                "concentration of CO₂ must not be negative, but was -1 mmol/L", () -> one.withCarbonDioxide(mmol(-1)));
    }

    @Test
    void sharesOutOfRangeAreRefused() {
        Refused.argument(
                "share of the dissolved CO₂ must be from 0 to 1, but was 1.5", () -> GasExchange.degassed(SOFT, 1.5));
        Refused.argument(
                "share of the way to equilibrium must be from 0 to 1, but was NaN",
                () -> GasExchange.aerated(SOFT, GasExchange.OUTDOOR_AIR, Double.NaN));
    }
}
