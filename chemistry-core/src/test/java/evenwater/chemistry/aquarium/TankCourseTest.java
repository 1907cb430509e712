package evenwater.chemistry.aquarium;

import static evenwater.chemistry.aquarium.TankTest.HUNDRED_LITRES;
import static evenwater.chemistry.aquarium.TankTest.PURE;
import static evenwater.chemistry.aquarium.TankTest.days;
import static evenwater.chemistry.aquarium.TankTest.litresADay;
import static evenwater.chemistry.aquarium.TankTest.salt;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import org.junit.jupiter.api.Test;

class TankCourseTest {

    private static final Tank TANK = Tank.builder(HUNDRED_LITRES, salt(2))
            .changing(0.5, days(2.5), PURE)
            .evaporatingUntilChange(litresADay(10), PURE)
            .build();

    @Test
    void eachDayAndBothSidesOfEachChangeAreThere() {
        List<TankMoment> moments = TANK.course(days(5)).moments();
        assertEquals(
                List.of(0.0, 1.0, 2.0, 2.5, 2.5, 3.0, 4.0, 5.0, 5.0),
                moments.stream().map(moment -> moment.time().getValue()).toList());
        assertFalse(moments.get(3).afterChange());
        assertTrue(moments.get(4).afterChange());
        assertEquals(litres(75), moments.get(3).volume());
        assertEquals(litres(100), moments.get(4).volume());
        // 2 / 0.75, then 25 L of it in 100 L
        assertEquals(2 / 0.75, of(Ion.SODIUM, moments.get(3).water()), 1e-14);
        assertEquals(0.5 / 0.75, of(Ion.SODIUM, moments.get(4).water()), 1e-14);
    }

    @Test
    void theLeastAndTheGreatestSayWhen() {
        TankCourse course = TANK.course(days(5));
        assertEquals(days(2.5), course.greatest(water -> of(Ion.SODIUM, water)).time());
        assertEquals(days(5), course.least(water -> of(Ion.SODIUM, water)).time());
        assertTrue(course.least(water -> of(Ion.SODIUM, water)).afterChange());
    }

    @Test
    void aTankWithoutChangesHasItsDays() {
        Tank still = Tank.builder(HUNDRED_LITRES, salt(2)).build();
        assertEquals(1, still.course(days(0.5)).moments().size());
        assertEquals(4, still.course(days(3)).moments().size());
        Refused.asNull("view", () -> still.course(days(1)).least(null));
    }
}
