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

class RegenerationSaveTest {

    private static final int LENGTH = RegenerationSave.LENGTH;

    private final MeteredSoftener softener = new MeteredSoftener();

    @BeforeEach
    void someWeeks() {
        softener.begun(100);
        softener.steps(300, 7);
        RegenerationEvents.started(softener.state);
        softener.steps(2, 3);
        RegenerationEvents.finished(softener.state, 987 * LITRE);
        softener.steps(200, 5);
    }

    private long[] save() {
        long[] save = new long[LENGTH];
        assertEquals(RegenerationSave.OK, RegenerationSave.write(softener.settings, softener.state, save));
        return save;
    }

    /** Reads, and holds that a save that is refused changes nothing. */
    private int read(long[] save) {
        RegenerationState target = softener.copy();
        int status = RegenerationSave.read(softener.settings, target, save);
        assertTrue(status == RegenerationSave.OK || target.isSameAs(softener.state));
        return status;
    }

    private static long[] signed(long[] save) {
        save[LENGTH - 1] = CyclicRedundancyCheck.of(save, LENGTH - 1);
        return save;
    }

    @Test
    void aSaveComesBackBitForBit() {
        RegenerationState restored = new RegenerationState();
        assertEquals(RegenerationSave.OK, RegenerationSave.read(softener.settings, restored, save()));
        assertTrue(restored.isSameAs(softener.state));
        long[] again = new long[LENGTH];
        RegenerationSave.write(softener.settings, restored, again);
        assertArrayEquals(save(), again);
    }

    @Test
    void statesThatDifferInOneNumberAreNotTheSame() {
        for (int i = 0; i < RegenerationState.COUNT; i++) {
            RegenerationState other = softener.copy();
            other.counts[i]++;
            assertFalse(other.isSameAs(softener.state));
        }
        for (int i = 0; i < RegenerationState.LEARNED; i++) {
            RegenerationState other = softener.copy();
            other.learned[i] = Math.nextUp(other.learned[i]);
            assertFalse(other.isSameAs(softener.state));
        }
    }

    @Test
    void aStateOfFirstAndOneOfLargestNumbersComeBack() {
        softener.begun(0);
        assertEquals(RegenerationSave.OK, read(save()));
        for (RegenerationCount count : RegenerationCount.values()) {
            softener.state.counts[count.place()] = count.most();
        }
        softener.state.counts[RegenerationState.READING] = 0xFFFF;
        softener.state.counts[RegenerationState.SUSPECT] = 0xFFFF;
        softener.state.learned[0] = UseLearning.MOST_NANOLITRES;
        assertEquals(RegenerationSave.OK, read(save()));
    }

    @Test
    void everySingleNumberThatIsWrongIsSeen() {
        for (int i = 0; i < LENGTH; i++) {
            for (int bit = 0; bit < Long.SIZE; bit++) {
                long[] save = save();
                save[i] ^= 1L << bit;
                assertEquals(i == 0 ? RegenerationSave.UNKNOWN_VERSION : RegenerationSave.TORN, read(save));
            }
            for (long wrong : new long[] {0, -1, Long.MIN_VALUE, Long.MAX_VALUE, 0x5555_5555_5555_5555L}) {
                long[] save = save();
                if (save[i] != wrong) {
                    save[i] = wrong;
                    assertEquals(i == 0 ? RegenerationSave.UNKNOWN_VERSION : RegenerationSave.TORN, read(save));
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
            assertEquals(whole ? RegenerationSave.OK : RegenerationSave.TORN, read(torn), "cut " + cut);
            mixed += whole ? 0 : 1;
        }
        assertTrue(mixed > 20, "cuts that mix: " + mixed);
    }

    @Test
    void anEmptyMemoryIsNoSave() {
        assertEquals(RegenerationSave.UNKNOWN_VERSION, read(new long[LENGTH]));
        long[] erased = new long[LENGTH];
        Arrays.fill(erased, -1);
        assertEquals(RegenerationSave.UNKNOWN_VERSION, read(erased));
    }

    @ParameterizedTest
    @ValueSource(ints = {-LENGTH, -1, 1})
    void anotherLengthIsRefused(int more) {
        assertEquals(RegenerationSave.WRONG_LENGTH, read(Arrays.copyOf(save(), LENGTH + more)));
        assertEquals(
                RegenerationSave.WRONG_LENGTH,
                RegenerationSave.write(softener.settings, softener.state, new long[LENGTH + more]));
    }

    @Test
    void anotherVersionIsRefused() {
        long[] save = save();
        save[0]++;
        assertEquals(RegenerationSave.UNKNOWN_VERSION, read(signed(save)));
    }

    @ParameterizedTest
    @EnumSource(RegenerationSetting.class)
    void aSaveUnderAnyOtherSettingIsRefusedUnlessItIsDeclared(RegenerationSetting setting) {
        long[] save = save();
        long value = softener.settings.value(setting);
        softener.with(setting, value == setting.most() ? value - 1 : value + 1);
        assertEquals(RegenerationSave.OTHER_SETTINGS, read(save));

        RegenerationState restored = new RegenerationState();
        assertEquals(RegenerationSave.OK, RegenerationSave.readUnderOtherSettings(softener.settings, restored, save));
        assertEquals(0, restored.count(RegenerationCount.WHOLE_DAY));
        softener.state.counts[RegenerationState.WHOLE_DAY] = 0; // all else is as saved
        assertTrue(restored.isSameAs(softener.state));
    }

    @ParameterizedTest
    @EnumSource(RegenerationCount.class)
    void aNumberOutOfItsRangeIsRefusedThoughTheCheckFits(RegenerationCount count) {
        for (long wrong : new long[] {-1, Long.MIN_VALUE, count.most() + 1, Long.MAX_VALUE}) {
            long[] save = save();
            save[2 + count.place()] = wrong;
            assertEquals(RegenerationSave.OUT_OF_RANGE, read(signed(save)));
            RegenerationState restored = softener.copy();
            assertEquals(
                    RegenerationSave.OUT_OF_RANGE,
                    RegenerationSave.readUnderOtherSettings(softener.settings, restored, save));
            assertTrue(restored.isSameAs(softener.state));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, 1e20})
    void whatNobodyLearnsIsRefused(double wrong) {
        for (int place : new int[] {LENGTH - 2, LENGTH - 3}) {
            long[] save = save();
            save[place] = Double.doubleToRawLongBits(wrong);
            assertEquals(RegenerationSave.OUT_OF_RANGE, read(signed(save)));
        }
    }

    @Test
    void numbersThatContradictEachOtherAreRefused() {
        long[] moreThanAll = save();
        moreThanAll[2 + RegenerationState.LEFT] = moreThanAll[2 + RegenerationState.CAPACITY] + 1;
        assertEquals(RegenerationSave.OUT_OF_RANGE, read(signed(moreThanAll)));
        long[] none = save();
        none[2 + RegenerationState.CAPACITY] = 0;
        none[2 + RegenerationState.LEFT] = 0;
        assertEquals(RegenerationSave.OUT_OF_RANGE, read(signed(none)));
        for (int place : new int[] {RegenerationState.READING, RegenerationState.SUSPECT}) {
            long[] wide = save();
            wide[2 + place] = 65_536; // of a counter of 16 bits
            assertEquals(RegenerationSave.OUT_OF_RANGE, read(signed(wide)));
        }
    }

    @Test
    void aStateThatHasNotBegunIsNotSaved() {
        long[] save = new long[LENGTH];
        assertEquals(
                RegenerationSave.OUT_OF_RANGE,
                RegenerationSave.write(softener.settings, new RegenerationState(), save));
        assertArrayEquals(new long[LENGTH], save);
    }
}
