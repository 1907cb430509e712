package evenwater.chemistry.aquarium;

import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.testing.Amounts.litres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.testing.Refused;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;

class TankVolumeTest {

    private static WaterQuantity<Length> millimetres(double length) {
        return WaterUnits.length(length, WaterUnits.MILLIMETRE);
    }

    @Test
    void aDoseForTheNominalVolumeIsAFifthTooStrong() {
        TankVolume volume = TankVolume.estimatedFrom(litres(120));
        assertEquals(100, volume.net().in(LITRE), 1e-12);
        assertEquals(0.2, volume.overdose(), 1e-12);
        assertEquals(litres(120), volume.nominal());
        assertEquals(0, TankVolume.measured(litres(93)).overdose());
        assertEquals(0.5, TankVolume.of(litres(90), litres(60)).overdose(), 1e-15);
    }

    /** 1.0 m · 0.4 m · 0.45 m = 180 L, less 0.6 · 20 L of stone in the gravel and 8 L of rock: 160 L; 180/160 − 1 = 0.125. */
    @Test
    void gravelAndRockTakeTheirRoom() {
        TankVolume box = TankVolume.inside(millimetres(1000), millimetres(400), millimetres(450));
        assertEquals(180, box.net().in(LITRE), 1e-12);
        TankVolume tank = box.withoutGravel(litres(20)).without(litres(8));
        assertEquals(160, tank.net().in(LITRE), 1e-12);
        assertEquals(180, tank.nominal().in(LITRE), 1e-12);
        assertEquals(0.125, tank.overdose(), 1e-12);
    }

    @Test
    void equalVolumesAreStatedAlike() {
        TankVolume volume = TankVolume.of(litres(120), litres(100));
        assertEquals(TankVolume.of(litres(120), litres(100)), volume);
        assertEquals(TankVolume.of(litres(120), litres(100)).hashCode(), volume.hashCode());
        assertNotEquals(TankVolume.measured(litres(100)), volume);
        assertNotEquals(TankVolume.of(litres(120), litres(99)), volume);
        assertEquals("100 L of water in a tank of 120 L", volume.toString());
    }

    @Test
    void volumesOutOfRangeAreRefused() {
        Refused.argument(
                "net volume of a tank must not be above the nominal 100 L, but was 101 L",
                () -> TankVolume.of(litres(100), litres(101)));
        Refused.argument(
                "net volume of a tank must be above 0 L, at most 1000000000 L, but was 0 L",
                () -> TankVolume.measured(litres(0)));
        Refused.argument(
                "nominal volume of a tank must be above 0 L, at most 1000000000 L, but was -5 L",
                () -> TankVolume.estimatedFrom(litres(-5)));
        Refused.argument(
                "water height of a tank must be positive, but was 0 mm",
                () -> TankVolume.inside(millimetres(1), millimetres(1), millimetres(0)));
        TankVolume tank = TankVolume.measured(litres(100));
        Refused.argument(
                "displaced volume must be from 0 L to below the 100 L of the tank, but was of 100 L",
                () -> tank.without(litres(100)));
        Refused.argument(
                "stone of the gravel must be from 0 L to below the 100 L of the tank, but was of -1 L",
                () -> tank.withoutGravel(litres(-1)));
        Refused.asNull("net", () -> TankVolume.measured(null));
        Refused.asNull("nominal", () -> TankVolume.estimatedFrom(null));
    }
}
