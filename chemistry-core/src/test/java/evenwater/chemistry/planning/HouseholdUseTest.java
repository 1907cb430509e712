package evenwater.chemistry.planning;

import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.quantity.WaterUnits.US_GALLON;
import static evenwater.chemistry.testing.Amounts.litres;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import org.junit.jupiter.api.Test;

class HouseholdUseTest {

    @Test
    void peopleAreCountedInGallonsUnlessOneSaysOtherwise() {
        assertEquals(300, HouseholdUse.ofPeople(4).daily().in(US_GALLON), 1e-12);
        assertEquals("4 people at 75 gal(US) a day", HouseholdUse.ofPeople(4).toString());
        assertEquals(260, HouseholdUse.ofPeople(2, litres(130)).daily().in(LITRE));
        assertEquals(
                "1 person at 130 L a day", HouseholdUse.ofPeople(1, litres(130)).toString());
    }

    @Test
    void measuredDaysHaveAMeanAndABusiestDay() {
        HouseholdUse use = HouseholdUse.ofDays(List.of(litres(200), litres(0), litres(700)));
        assertEquals(300, use.daily().in(LITRE), 1e-12);
        assertEquals(700, use.busiestDay().in(LITRE));
        assertEquals("3 measured days", use.toString());
        assertEquals("1 measured day", HouseholdUse.ofDays(List.of(litres(1))).toString());
        assertEquals(500, HouseholdUse.ofDaily(litres(500)).busiestDay().in(LITRE));
        assertEquals("500 L a day", HouseholdUse.ofDaily(litres(500)).toString());
    }

    @Test
    void nonsenseIsRefused() {
        Refused.argument("people of a household must be from 1 to 10000, but were 0", () -> HouseholdUse.ofPeople(0));
        Refused.argument(
                "water for each person must be from 0.1 L to 1000000 m³, but was 0 L",
                () -> HouseholdUse.ofPeople(1, litres(0)));
        Refused.argument(
                "water of a day must be from 0.1 L to 1000000 m³, but was -5 L",
                () -> HouseholdUse.ofDaily(litres(-5)));
        Refused.argument(
                "water of a day must be from 0 L to 1000000 m³, but was -5 L",
                () -> HouseholdUse.ofDays(List.of(litres(1), litres(-5))));
        Refused.argument(
                "a measured use needs a day with water, 0.1 L at least, but had []",
                () -> HouseholdUse.ofDays(List.of()));
        Refused.argument(
                "a measured use needs a day with water, 0.1 L at least, but had [0 L]",
                () -> HouseholdUse.ofDays(List.of(litres(0))));
        Refused.asNull("volume", () -> HouseholdUse.ofDaily(null));
        Refused.argument(
                "water of a day must be from 0 L to 1000000 m³, but was 1.7E308 L",
                () -> HouseholdUse.ofDays(List.of(WaterUnits.volume(1.7e308, LITRE))));
    }
}
