package evenwater.chemistry.aquarium;

import static evenwater.chemistry.aquarium.TankTest.HUNDRED_LITRES;
import static evenwater.chemistry.aquarium.TankTest.PURE;
import static evenwater.chemistry.aquarium.TankTest.days;
import static evenwater.chemistry.aquarium.TankTest.litresADay;
import static evenwater.chemistry.aquarium.TankTest.salt;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.equilibrium.Metabolism;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TankErrorsTest {

    private static TankBuilder builder() {
        return Tank.builder(HUNDRED_LITRES, salt(1));
    }

    @Test
    void whatIsOutOfRangeIsRefused() {
        Refused.argument(
                "fraction of a water change must be from 0 to 1, but was 1.1",
                () -> builder().changing(1.1, days(7), PURE));
        Refused.argument(
                "fraction of a water change must be from 0 to 1, but was NaN",
                () -> builder().changing(Double.NaN, days(7), PURE));
        Refused.argument(
                "interval between water changes must be from 0.01 d to 10000 d, but was 0 d",
                () -> builder().changing(0.1, days(0), PURE));
        Refused.argument(
                "drip must be above 0, at most 1000 net volumes a day, but was 0 L/d into 100 L",
                () -> builder().dripping(litresADay(0), PURE));
        Refused.argument(
                "evaporation must be from 0 L/d to below the 100 L of the tank in a day, but was -1 L/d",
                () -> builder().evaporatingToppedOffWith(litresADay(-1), PURE));
        Refused.argument(
                "evaporation must be from 0 L/d to below the 100 L of the tank in a day, but was 100 L/d",
                () -> builder().evaporatingUntilChange(litresADay(100)));
        Refused.argument(
                "time in the life of a tank must be from 0 d to 1000000 d, but was -1 d",
                () -> builder().build().after(days(-1)));
        Refused.argument(
                "share of the way to the steady state must be from 0 to below 1, but was 1.0",
                () -> builder().build().timeUntil(1));
        Refused.asNull("start", () -> Tank.builder(HUNDRED_LITRES, null));
        Refused.asNull("time", () -> builder().build().after(null));
    }

    @Test
    void whatDoesNotGoTogetherIsRefused() {
        Refused.argument(
                "a dose at each water change needs water changes, but none are stated",
                () -> builder().atEachChange(Change.of(Map.of())).build());
        Refused.argument(
                "evaporation of 70 L between two changes leaves less than the 40 % that a change takes out of 100 L",
                () -> builder()
                        .changing(0.4, days(7), PURE)
                        .evaporatingUntilChange(litresADay(10))
                        .build());
        Refused.argument(
                "a drip keeps the level, so evaporation cannot wait for a water change",
                () -> builder()
                        .dripping(litresADay(1), PURE)
                        .evaporatingUntilChange(litresADay(1))
                        .build());
        Refused.argument(
                "a course has at most 100000 moments, but this period has 100001: ask for single days",
                () -> builder().build().course(days(100_001)));
    }

    @Test
    void withoutChangesThereIsNoSteadyState() {
        String why = "no steady state: without water changes nothing leaves the tank";
        Tank fed = builder().daily(Metabolism.nitrateFromFood(mmol(0.01))).build();
        Refused.withoutAnswer(why, List.of(), fed::steadyState);
        Refused.withoutAnswer(why, List.of(), () -> fed.timeUntil(0.5));
        Refused.withoutAnswer(
                why,
                List.of(),
                builder().evaporatingToppedOffWith(litresADay(1), salt(1)).build()::steadyState);
        Refused.withoutAnswer(
                why,
                List.of(),
                builder()
                        .changing(0, days(7), PURE)
                        .daily(Metabolism.nitrateFromFood(mmol(0.01)))
                        .build()::steadyState);
    }

    @Test
    void aTankThatNobodyRefillsDries() {
        Tank tank = builder().evaporatingUntilChange(litresADay(4)).build();
        assertEquals(10, tank.after(days(22.5)).total(Ion.SODIUM).getValue(), 1e-12);
        Refused.withoutAnswer(
                "the tank is dry on day 25.0: nothing makes up for evaporation",
                List.of(days(25)),
                () -> tank.after(days(30)));
    }

    /** 1 mmol/L of potassium, 0.032 a day taken up: 31.25 days. */
    @Test
    void whatRunsOutIsNamedWithItsDay() {
        Water start = Water.builder()
                .total(Ion.POTASSIUM, mmol(1))
                .total(Ion.CHLORIDE, mmol(1))
                .build();
        Tank tank = Tank.builder(HUNDRED_LITRES, start)
                .daily(Metabolism.takingUpPotassium(mmol(0.032)))
                .build();
        assertEquals(31.25, tank.exhaustionOf(Ion.POTASSIUM).orElseThrow().in(WaterUnits.DAY), 1e-12);
        assertEquals(0, tank.after(days(31.25)).total(Ion.POTASSIUM).getValue(), 1e-14);
        Refused.withoutAnswer(
                "potassium runs out on day 31.3: more is taken up than the tank has and gets",
                List.of(days(31.25)),
                () -> tank.after(days(32)));
        Refused.withoutAnswer(
                "potassium runs out on day 31.3: more is taken up than the tank has and gets",
                List.of(days(31.25)),
                () -> tank.after(days(31.25 * (1 + 1e-10)))); // an instant later
        assertEquals(
                "potassium runs out on day 31.3: what is taken up from then on is less than stated",
                tank.findings().get(1));
    }

    @Test
    void aSteadyStateBelowNothingIsNone() {
        Water start = Water.builder()
                .total(Ion.POTASSIUM, mmol(1))
                .total(Ion.CHLORIDE, mmol(1))
                .build();
        Tank tank = Tank.builder(HUNDRED_LITRES, start)
                .changing(0.1, days(10), start)
                .daily(Metabolism.takingUpPotassium(mmol(0.032)))
                .build();
        Refused.withoutAnswer(
                "no steady state: potassium runs out, as more is taken up than the tank gets",
                List.of(),
                tank::steadyState);
        // in a loop: after each change, until an interval takes more than is left
        double day = tank.exhaustionOf(Ion.POTASSIUM).orElseThrow().in(WaterUnits.DAY);
        double left = 1;
        double simulated = 0;
        while (left > 0.32) {
            left = 0.9 * (left - 0.32) + 0.1;
            simulated += 10;
        }
        assertEquals(simulated + left / 0.032, day, 1e-9);
    }

    @Test
    void carbonThatIsBookedMayRunOut() {
        Tank tank = Tank.builder(HUNDRED_LITRES, Water.pure().withCarbon(mmol(1)))
                .daily(Metabolism.takingUpCarbonDioxide(mmol(0.1)))
                .build();
        Refused.withoutAnswer(
                "inorganic carbon runs out on day 10.0: more is taken up than the tank has and gets",
                List.of(days(10)),
                () -> tank.after(days(11)));
    }
}
