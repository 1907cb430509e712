package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.MeteredSoftener.LITRE;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ValveSaveTest {

    private static final int LENGTH = ValveSave.LENGTH;

    private final MeteredSoftener softener = new MeteredSoftener();

    @BeforeEach
    void someWeeks() {
        softener.begun(100);
        softener.steps(300, 7);
        ValveEvents.started(softener.settings, softener.state);
        softener.steps(2, 3);
        ValveEvents.finished(softener.settings, softener.state, 987 * LITRE);
        softener.steps(200, 5);
    }

    private long[] save() {
        long[] save = new long[LENGTH];
        assertEquals(ValveSave.OK, ValveSave.write(softener.settings, softener.state, save));
        return save;
    }

    /** Reads, and holds that a save that is refused changes nothing. */
    private int read(long[] save) {
        ValveState target = softener.copy();
        int status = ValveSave.read(softener.settings, target, save);
        assertTrue(status == ValveSave.OK || target.isSameAs(softener.state));
        return status;
    }

    private static long[] signed(long[] save) {
        save[LENGTH - 1] = CyclicRedundancyCheck.of(save, LENGTH - 1);
        return save;
    }

    @Test
    void aSaveComesBackBitForBit() {
        ValveState restored = new ValveState();
        assertEquals(ValveSave.OK, ValveSave.read(softener.settings, restored, save()));
        assertTrue(restored.isSameAs(softener.state));
        long[] again = new long[LENGTH];
        ValveSave.write(softener.settings, restored, again);
        assertArrayEquals(save(), again);
    }

    @Test
    void statesThatDifferInOneNumberAreNotTheSame() {
        for (int i = 0; i < ValveState.COUNT; i++) {
            ValveState other = softener.copy();
            other.counts[i]++;
            assertFalse(other.isSameAs(softener.state));
        }
        for (int i = 0; i < ValveState.LEARNED; i++) {
            ValveState other = softener.copy();
            other.learned[i] = Math.nextUp(other.learned[i]);
            assertFalse(other.isSameAs(softener.state));
        }
    }

    @Test
    void aStateOfFirstAndOneOfLargestNumbersComeBack() {
        softener.begun(0);
        assertEquals(ValveSave.OK, read(save()));
        for (ValveCount count : ValveCount.values()) {
            softener.state.counts[count.place()] = count.most();
        }
        softener.state.counts[ValveState.READING] = 0xFFFF;
        softener.state.counts[ValveState.SUSPECT] = 0xFFFF;
        softener.state.learned[0] = UseLearning.MOST_NANOLITRES;
        assertEquals(ValveSave.OK, read(save()));
    }

    @Test
    void everySingleNumberThatIsWrongIsSeen() {
        for (int i = 0; i < LENGTH; i++) {
            for (int bit = 0; bit < Long.SIZE; bit++) {
                long[] save = save();
                save[i] ^= 1L << bit;
                assertEquals(i == 0 ? ValveSave.OTHER_VERSION : ValveSave.TORN, read(save));
            }
            for (long wrong : new long[] {0, -1, Long.MIN_VALUE, Long.MAX_VALUE, 0x5555_5555_5555_5555L}) {
                long[] save = save();
                if (save[i] != wrong) {
                    save[i] = wrong;
                    assertEquals(i == 0 ? ValveSave.OTHER_VERSION : ValveSave.TORN, read(save));
                }
            }
        }
    }

    @Test
    void halvesOfTwoSavesAreSeenAtEveryCut() {
        long[] older = save();
        softener.steps(1, 1); // as alike as two saves can be
        long[] newer = save();
        int mixed = 0;
        for (int cut = 0; cut <= LENGTH; cut++) {
            long[] torn = Arrays.copyOf(newer, LENGTH);
            System.arraycopy(older, cut, torn, cut, LENGTH - cut);
            boolean whole = Arrays.equals(torn, newer) || Arrays.equals(torn, older);
            assertEquals(whole ? ValveSave.OK : ValveSave.TORN, read(torn), "cut " + cut);
            mixed += whole ? 0 : 1;
        }
        assertTrue(mixed > 20, "cuts that mix: " + mixed);
    }

    @Test
    void anEmptyMemoryIsNoSave() {
        assertEquals(ValveSave.OTHER_VERSION, read(new long[LENGTH]));
        long[] erased = new long[LENGTH];
        Arrays.fill(erased, -1);
        assertEquals(ValveSave.OTHER_VERSION, read(erased));
    }

    @ParameterizedTest
    @ValueSource(ints = {-LENGTH, -1, 1})
    void anotherLengthIsRefused(int more) {
        assertEquals(ValveSave.WRONG_LENGTH, read(Arrays.copyOf(save(), LENGTH + more)));
        assertEquals(
                ValveSave.WRONG_LENGTH, ValveSave.write(softener.settings, softener.state, new long[LENGTH + more]));
    }

    @Test
    void anotherVersionIsRefused() {
        long[] save = save();
        save[0]++;
        assertEquals(ValveSave.OTHER_VERSION, read(signed(save)));
    }

    @ParameterizedTest
    @EnumSource(ValveSetting.class)
    void aSaveUnderAnyOtherSettingIsRefusedUnlessItIsDeclared(ValveSetting setting) {
        long[] save = save();
        long value = softener.settings.value(setting);
        softener.with(setting, value == setting.most() ? value - 1 : value + 1);
        assertEquals(ValveSave.OTHER_SETTINGS, read(save));

        ValveState restored = new ValveState();
        assertEquals(ValveSave.OK, ValveSave.readUnderNewSettings(softener.settings, restored, save));
        assertEquals(0, restored.count(ValveCount.WHOLE_DAY));
        softener.state.counts[ValveState.WHOLE_DAY] = 0; // all else is as saved
        assertTrue(restored.isSameAs(softener.state));
    }

    @ParameterizedTest
    @EnumSource(ValveCount.class)
    void aNumberOutOfItsRangeIsRefusedThoughTheCheckFits(ValveCount count) {
        for (long wrong : new long[] {-1, Long.MIN_VALUE, count.most() + 1, Long.MAX_VALUE}) {
            long[] save = save();
            save[2 + count.place()] = wrong;
            assertEquals(ValveSave.OUT_OF_RANGE, read(signed(save)));
            ValveState restored = softener.copy();
            assertEquals(ValveSave.OUT_OF_RANGE, ValveSave.readUnderNewSettings(softener.settings, restored, save));
            assertTrue(restored.isSameAs(softener.state));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, 1e20})
    void whatNobodyLearnsIsRefused(double wrong) {
        for (int place : new int[] {LENGTH - 2, LENGTH - 3}) {
            long[] save = save();
            save[place] = Double.doubleToRawLongBits(wrong);
            assertEquals(ValveSave.OUT_OF_RANGE, read(signed(save)));
        }
    }

    @Test
    void numbersThatContradictEachOtherAreRefused() {
        long[] moreThanAll = save();
        moreThanAll[2 + ValveState.LEFT] = moreThanAll[2 + ValveState.CAPACITY] + 1;
        assertEquals(ValveSave.OUT_OF_RANGE, read(signed(moreThanAll)));
        long[] none = save();
        none[2 + ValveState.CAPACITY] = 0;
        none[2 + ValveState.LEFT] = 0;
        assertEquals(ValveSave.OUT_OF_RANGE, read(signed(none)));
        for (int place : new int[] {ValveState.READING, ValveState.SUSPECT}) {
            long[] wide = save();
            wide[2 + place] = 65_536; // of a counter of 16 bits
            assertEquals(ValveSave.OUT_OF_RANGE, read(signed(wide)));
        }
    }

    @Test
    void aStateThatHasNotBegunIsNotSaved() {
        long[] save = new long[LENGTH];
        assertEquals(ValveSave.OUT_OF_RANGE, ValveSave.write(softener.settings, new ValveState(), save));
        assertArrayEquals(new long[LENGTH], save);
    }
}
