package evenwater.chemistry.aquarium;

import static evenwater.chemistry.testing.Amounts.grams;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Change;
import org.junit.jupiter.api.Test;

class NitrateLoadTest {

    private static final TankVolume VOLUME = TankVolume.estimatedFrom(litres(120));

    /** 10 mg/L of nitrate, 62.004 g/mol, are 0.16128 mmol/L a week: 0.45 °dKH. */
    @Test
    void aRiseOfNitrateCostsAlkalinity() {
        Change daily = NitrateLoad.measured(AmountConcentration.of(10, Ion.NITRATE.milligramPerLitre()));
        assertEquals(10 / 62.004 / 7, of(Ion.NITRATE, daily), 1e-14);
        assertEquals(-0.4522 / 7, daily.alkalinity().in(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS), 1e-5);
    }

    /** 1 g of food, 40 % protein, 6.25 g for each gram of N: 64 mg, of which 70 % are 44.8 mg or 3.198 mmol in 100 L. */
    @Test
    void foodMakesNitrateByItsProtein() {
        Change daily = NitrateLoad.ofFood(grams(1), 0.4, 0.7, VOLUME);
        assertEquals(44.8 / 14.007 / 100, of(Ion.NITRATE, daily), 1e-14);
    }

    @Test
    void whatIsOutOfRangeIsRefused() {
        Refused.argument(
                "mass of food must not be negative, but was -1 g",
                () -> NitrateLoad.ofFood(grams(-1), 0.4, 0.7, VOLUME));
        Refused.argument(
                "share of protein in the food must be from 0 to 1, but was 40.0",
                () -> NitrateLoad.ofFood(grams(1), 40, 0.7, VOLUME));
        Refused.argument(
                "share of nitrogen that is given off must be from 0 to 1, but was NaN",
                () -> NitrateLoad.ofFood(grams(1), 0.4, Double.NaN, VOLUME));
        Refused.asNull("food", () -> NitrateLoad.ofFood(null, 0.4, 0.7, VOLUME));
    }
}
