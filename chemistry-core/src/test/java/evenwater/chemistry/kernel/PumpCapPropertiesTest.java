package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Random lives of a pump against a ledger that knows the true time and what really flowed. */
class PumpCapPropertiesTest {

    @Property(tries = 300)
    void theCapHoldsInAny24HoursOfTrueTime(@ForAll long seed) {
        PumpLife life = new PumpLife(seed);
        life.live(400);
        assertTrue(life.mostIn24Hours() <= life.s[PumpSettings.CAP], life::toString);
    }

    @Property(tries = 300)
    void threeCapsHoldEvenIfReportsOfFewerStepsAreFalse(@ForAll long seed) {
        PumpLife life = new PumpLife(seed);
        life.lies = true;
        life.live(400);
        assertTrue(life.mostIn24Hours() <= 3 * life.s[PumpSettings.CAP], life::toString);
    }

    @Property(tries = 300)
    void theCapHoldsOnEveryCalendarDayIfTheClockIsNotSet(@ForAll long seed) {
        PumpLife life = new PumpLife(seed);
        life.clockIsSet = false;
        life.live(400);
        assertTrue(life.mostOnADay() <= life.s[PumpSettings.CAP], life::toString);
    }

    @Property(tries = 300)
    void nothingGetsLostBetweenReservoirTankAndDrain(@ForAll long seed) {
        PumpLife life = new PumpLife(seed);
        life.live(400);
        assertEquals(life.counted, life.m[PumpMemory.DOSED]);
        assertEquals(life.primed, life.m[PumpMemory.PRIMED]);
        assertEquals(life.filled, life.m[PumpMemory.FILLED]);
        assertEquals(life.filled - life.counted - life.primed, life.m[PumpMemory.LEVEL]);
        assertTrue(life.flowed <= life.counted, life::toString); // never more in the tank than in the book
    }

    @Property(tries = 200)
    void aSaveGoesOnAsIfNothingHadBeen(@ForAll long seed) {
        PumpLife one = new PumpLife(seed);
        one.live(150);
        long[] block = new long[PumpMemory.LENGTH + SavedNumbers.OVERHEAD];
        SavedNumbers.write(PumpMemory.VERSION, 1, one.m, block);
        one.live(150);

        PumpLife other = new PumpLife(seed);
        other.live(150);
        Arrays.fill(other.m, -1);
        assertEquals(SavedNumbers.WHOLE, SavedNumbers.read(PumpMemory.VERSION, 1, block, other.m));
        assertTrue(PumpMemory.isUsable(other.m));
        other.live(150);
        assertArrayEquals(one.m, other.m);
    }

    /** The time of the next portion is a short cut: a life that forgets it before each event goes on alike. */
    @Property(tries = 200)
    void theNextPortionIsOnlyRemembered(@ForAll long seed) {
        PumpLife one = new PumpLife(seed);
        PumpLife other = new PumpLife(seed);
        for (int i = 0; i < 300; i++) {
            one.live(1);
            other.m[PumpMemory.NEXT] = 0;
            other.live(1);
            other.m[PumpMemory.NEXT] = one.m[PumpMemory.NEXT];
            assertArrayEquals(one.m, other.m);
        }
    }

    @Property(tries = 50)
    void everyMixtureOfTwoSavesIsSeen(@ForAll long seed) {
        PumpLife life = new PumpLife(seed);
        life.live(50);
        long[] before = life.save();
        life.live(20);
        long[] after = life.save();
        for (int cut = 1; cut < before.length; cut++) {
            long[] mixed = after.clone();
            System.arraycopy(before, 0, mixed, 0, cut);
            int status = SavedNumbers.read(PumpMemory.VERSION, 1, mixed, new long[PumpMemory.LENGTH]);
            boolean same = Arrays.equals(mixed, before) || Arrays.equals(mixed, after);
            assertEquals(same ? SavedNumbers.WHOLE : SavedNumbers.TORN, status, "cut at " + cut);
        }
    }

    @Property(tries = 50)
    void aMemoryWithAnyNumberOutOfRangeIsRefused(@ForAll long seed) {
        PumpLife life = new PumpLife(seed);
        life.live(100);
        for (int place = 0; place < PumpMemory.WINDOW_TIMES; place++) {
            for (long hostile : new long[] {Long.MIN_VALUE, Long.MAX_VALUE, -100_000}) {
                long[] m = life.m.clone();
                m[place] = hostile;
                int where = place;
                assertTrue(!PumpMemory.isUsable(m), () -> where + " " + hostile);
            }
        }
    }
}
