package evenwater.chemistry.aquarium;

import static evenwater.chemistry.quantity.FlowRate.LITRE_PER_DAY;
import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.grams;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.equilibrium.Metabolism;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;

class TankTest {

    static final TankVolume HUNDRED_LITRES = TankVolume.measured(litres(100));
    static final Water PURE = Water.pure();

    static WaterQuantity<Time> days(double days) {
        return WaterUnits.time(days, WaterUnits.DAY);
    }

    static FlowRate litresADay(double flow) {
        return FlowRate.of(flow, LITRE_PER_DAY);
    }

    static Water salt(double millimoles) {
        return Water.builder()
                .total(Ion.SODIUM, mmol(millimoles))
                .total(Ion.CHLORIDE, mmol(millimoles))
                .carbon(mmol(0))
                .build();
    }

    private static double sodium(Water water) {
        return of(Ion.SODIUM, water);
    }

    /** 8 mmol/L, a quarter changed for pure water each week: 8, 6, 4.5, 3.375. */
    @Test
    void repeatedChangesDilute() {
        Tank tank = Tank.builder(HUNDRED_LITRES, salt(8))
                .changing(0.25, days(7), PURE)
                .build();
        double[] expected = {8, 6, 4.5, 3.375};
        for (int week = 0; week < expected.length; week++) {
            assertEquals(expected[week], sodium(tank.afterWeeks(week)), 1e-14);
            assertEquals(expected[week], sodium(tank.after(days(7 * week + 6.99))), 1e-14);
        }
        assertEquals(0, sodium(tank.steadyState().afterChange()));
    }

    /**
     * 10 % a week, 5 % evaporate a week, topped off with softened water of 4 mmol/L; change water of 1 mmol/L. At rest: before a change 1 + 0.05/0.1 ·
     * 4 = 3, after it 0.9 · 3 + 0.1 · 1 = 2.8, and 2.8 + 0.05 · 4 = 3 again.
     */
    @Test
    void toppingOffWithSoftenedWaterPilesUpSodium() {
        Tank tank = Tank.builder(HUNDRED_LITRES, salt(1))
                .changing(0.1, days(7), salt(1))
                .evaporatingToppedOffWith(litresADay(5.0 / 7), salt(4))
                .build();
        assertEquals(2.8, sodium(tank.steadyState().afterChange()), 1e-13);
        assertEquals(3, sodium(tank.steadyState().beforeChange()), 1e-13);
        assertEquals(1.2, sodium(tank.after(days(6.9999999))), 1e-7);
        assertEquals(0.9 * 1.2 + 0.1, sodium(tank.afterWeeks(1)), 1e-14);
        assertEquals(2.8, sodium(tank.afterWeeks(10_000)), 1e-13);
        // 90 % of the way: ln 0.1 / ln 0.9 = 21.85
        assertEquals(days(22 * 7), tank.timeUntil(0.9));
        assertTrue(sodium(tank.after(tank.timeUntil(0.9))) >= 1 + 0.9 * 1.8);
    }

    @Test
    void pureTopOffRaisesNothing() {
        Tank tank = Tank.builder(HUNDRED_LITRES, salt(1))
                .changing(0.1, days(7), salt(1))
                .evaporatingToppedOffWith(litresADay(2), PURE)
                .build();
        assertEquals(1, sodium(tank.steadyState().afterChange()), 1e-15);
        assertEquals(1, sodium(tank.afterWeeks(5)), 1e-15);
    }

    /**
     * The level falls by 20 % a week, then 30 L are drawn and 50 L filled in, all of 2 mmol/L. First week: 2 / 0.8 = 2.5; left are 50 L of 2.5; after:
     * (50 · 2.5 + 50 · 2) / 100 = 2.25. At rest: k = 0.5/0.8 = 0.625, C* = 0.5 · 2 / 0.375 = 2.6667, before the change 3.3333.
     */
    @Test
    void aFallingLevelConcentrates() {
        Tank tank = Tank.builder(HUNDRED_LITRES, salt(2))
                .changing(0.3, days(7), salt(2))
                .evaporatingUntilChange(litresADay(20.0 / 7))
                .build();
        assertEquals(2 / 0.9, sodium(tank.after(days(3.5))), 1e-14);
        assertEquals(2.25, sodium(tank.afterWeeks(1)), 1e-14);
        assertEquals(1 / 0.375, sodium(tank.steadyState().afterChange()), 1e-14);
        assertEquals(1 / 0.375 / 0.8, sodium(tank.steadyState().beforeChange()), 1e-14);
    }

    /** Refilled with pure water, the tank holds just before each change what the change water holds. */
    @Test
    void aFallingLevelRefilledWithPureWaterSwingsUpToTheChangeWater() {
        Tank tank = Tank.builder(HUNDRED_LITRES, salt(5))
                .changing(0.3, days(7), salt(2))
                .evaporatingUntilChange(litresADay(20.0 / 7), PURE)
                .build();
        assertEquals(2, sodium(tank.steadyState().beforeChange()), 1e-14);
        assertEquals(1.6, sodium(tank.steadyState().afterChange()), 1e-14);
    }

    /** 10 L/d into 100 L: C = 2 + 6 exp(−t/10); half of the way after 10 ln 2 days. */
    @Test
    void aDripLeadsThereByAnExponential() {
        Tank tank = Tank.builder(HUNDRED_LITRES, salt(8))
                .dripping(litresADay(10), salt(2))
                .build();
        assertEquals(2 + 6 * Math.exp(-0.7), sodium(tank.after(days(7))), 1e-13);
        assertEquals(2, sodium(tank.steadyState().afterChange()), 1e-15);
        assertEquals(tank.steadyState().afterChange(), tank.steadyState().beforeChange());
        assertEquals(10 * Math.log(2), tank.timeUntil(0.5).in(WaterUnits.DAY), 1e-12);
    }

    /** 58.44 g/mol: 1 mmol/L with each change, 0.1 mmol/L a day. Before the first change 0.35, after it 0.9 · 0.35 + 1 = 1.315. */
    @Test
    void dosesComeEveryDayAndWithEachChange() {
        Tank tank = Tank.builder(HUNDRED_LITRES, PURE)
                .changing(0.1, days(3.5), PURE)
                .atEachChange(Compound.SODIUM_CHLORIDE, grams(5.844))
                .daily(Compound.SODIUM_CHLORIDE, grams(0.5844))
                .build();
        assertEquals(0.3, sodium(tank.after(days(3))), 1e-14);
        assertEquals(1.315, sodium(tank.after(days(3.5))), 1e-14);
        // at rest 10 · (0.315 + 1) just after a change
        assertEquals(13.15, sodium(tank.steadyState().afterChange()), 1e-12);
        assertEquals(13.5, sodium(tank.steadyState().beforeChange()), 1e-12);
    }

    /**
     * A soft tank of 1 meq/L loses 0.02 meq/L a day by nitrate from food, half of the water is changed every 100 days: used up after 50 days, and it goes on
     * below zero, with an answer: at day 60 it is −0.2 meq/L, acid.
     */
    @Test
    void alkalinityIsUsedUpAndTheWaterTurnsAcid() {
        Water soft =
                Water.builder().total(Ion.CALCIUM, mmol(0.5)).carbon(mmol(1)).build();
        Tank tank = Tank.builder(HUNDRED_LITRES, soft)
                .changing(0.5, days(100), soft)
                .daily(Metabolism.nitrateFromFood(mmol(0.02)))
                .build();
        assertEquals(50, tank.exhaustionOfAlkalinity().orElseThrow().in(WaterUnits.DAY), 1e-9);
        assertEquals(-0.2, alkalinityOf(tank.after(days(60))), 1e-12);
        Water aerated = GasExchange.equilibrated(tank.after(days(60)), GasExchange.OUTDOOR_AIR);
        assertTrue(Speciation.of(aerated).pH() < 4.2);
        assertEquals(
                List.of(
                        "alkalinity used up on day 50.0: the pH crashes, and bacteria stop oxidising ammonia; more or larger "
                                + "changes, or a dose of bicarbonate, hold it up"),
                tank.findings());
    }

    /** 0.5 meq/L in 25 days against half of 1.1 meq/L: at rest C = (C − 0.5)/2 + 0.55 = 0.6 just after a change, 0.1 before. */
    @Test
    void enoughChangesHoldTheAlkalinity() {
        Water soft = Water.builder().total(Ion.CALCIUM, mmol(0.55)).build();
        Tank tank = Tank.builder(HUNDRED_LITRES, soft)
                .changing(0.5, days(25), soft)
                .daily(NitrateLoad.measured(mmol(0.14)))
                .build();
        assertEquals(Optional.empty(), tank.exhaustionOfAlkalinity());
        assertEquals(List.of(), tank.findings());
        assertEquals(0.1, alkalinityOf(tank.steadyState().beforeChange()), 1e-12);
        assertEquals(0.6, alkalinityOf(tank.steadyState().afterChange()), 1e-12);
        assertEquals(0.5, of(Ion.NITRATE, tank.steadyState().afterChange()), 1e-12);
    }

    /** 20 mg/L of calcite a day dissolve from gravel: 0.2 mmol/L of calcium, 0.4 meq/L. */
    @Test
    void gravelDissolves() {
        Change gravel = Change.of(Map.of(Ion.CALCIUM, mmol(0.2), Ion.CARBONATE, mmol(0.2)));
        Tank tank = Tank.builder(HUNDRED_LITRES, PURE).daily(gravel).build();
        assertEquals(1.0, of(Ion.CALCIUM, tank.after(days(5))), 1e-15);
        assertEquals(2.0, alkalinityOf(tank.after(days(5))), 1e-15);
    }

    @Test
    void theChangeWaterMayComeFromATreatment() {
        Water hard = Water.builder()
                .total(Ion.CALCIUM, mmol(2))
                .total(Ion.CHLORIDE, mmol(4))
                .build();
        Tank tank = Tank.builder(HUNDRED_LITRES, hard)
                .changing(0.5, days(7), Softener.withSodium(), hard)
                .build();
        assertEquals(2, sodium(tank.afterWeeks(1)), 1e-15);
        assertEquals(4, sodium(tank.steadyState().afterChange()), 1e-15);
    }

    @Test
    void theTankKeepsItsTemperatureAndForgetsCarbonThatNobodyKnew() {
        Water warm = Water.builder()
                .total(Ion.SODIUM, mmol(1))
                .temperature(celsius(26))
                .build();
        Tank tank = Tank.builder(HUNDRED_LITRES, warm)
                .changing(0.5, days(7), salt(1).with(celsius(10)))
                .build();
        assertEquals(celsius(26), tank.afterWeeks(1).temperature());
        assertTrue(tank.afterWeeks(1).carbon().isEmpty());
        assertFalse(tank.steadyState().afterChange().carbon().isEmpty());
    }

    /** A dose and an uptake of the same size, 0.1 + 0.2 against 0.3, leave nothing but rounding. */
    @Test
    void aDoseThatIsTakenUpLeavesNothing() {
        Change uptake = Change.of(Map.of(Ion.POTASSIUM, mmol(-0.3), Ion.CHLORIDE, mmol(-0.3)));
        Tank tank = Tank.builder(HUNDRED_LITRES, salt(1))
                .daily(Change.of(Map.of(Ion.POTASSIUM, mmol(0.1), Ion.CHLORIDE, mmol(0.1))))
                .daily(Change.of(Map.of(Ion.POTASSIUM, mmol(0.2), Ion.CHLORIDE, mmol(0.2))))
                .daily(uptake)
                .build();
        assertEquals(Optional.empty(), tank.exhaustionOf(Ion.POTASSIUM));
        for (double day = 0; day < 1000; day += 37.7) {
            assertEquals(0, of(Ion.POTASSIUM, tank.after(days(day))), 1e-13);
        }
    }

    @Test
    void aTankWithoutAnythingRestsAsItIs() {
        Tank still = Tank.builder(HUNDRED_LITRES, salt(2)).build();
        assertEquals(salt(2), still.steadyState().afterChange());
        assertEquals(days(0), still.timeUntil(0.5));
        Tank dunked = Tank.builder(HUNDRED_LITRES, salt(2))
                .changing(0, days(10), salt(9))
                .evaporatingUntilChange(litresADay(5), PURE)
                .build();
        assertEquals(2, sodium(dunked.steadyState().afterChange()));
        assertEquals(4, sodium(dunked.steadyState().beforeChange()), 1e-15);
        assertEquals("tank with 100 L of water in a tank of 100 L", still.toString());
        assertEquals(HUNDRED_LITRES, still.volume());
    }

    @Test
    void aWholeChangeLeavesNothingOfBefore() {
        Tank tank = Tank.builder(HUNDRED_LITRES, salt(8))
                .changing(1, days(7), salt(3))
                .evaporatingToppedOffWith(litresADay(1), salt(1))
                .build();
        assertEquals(3, sodium(tank.afterWeeks(1)));
        assertEquals(3.07, sodium(tank.steadyState().beforeChange()), 1e-15);
        assertEquals(days(7), tank.timeUntil(0.99));
    }
}
