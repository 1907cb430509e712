package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;

class SavedNumbersTest {

    private static final long VERSION = 7;
    private static final long PRINT = 99;

    private static long[] save(long... numbers) {
        long[] block = new long[numbers.length + SavedNumbers.OVERHEAD];
        assertEquals(SavedNumbers.WHOLE, SavedNumbers.write(VERSION, PRINT, numbers, block));
        return block;
    }

    private static int read(long[] block, long... numbers) {
        return SavedNumbers.read(VERSION, PRINT, block, numbers);
    }

    @Test
    void whatWasWrittenIsRead() {
        long[] numbers = {1, -2, Long.MAX_VALUE};
        long[] read = new long[3];
        assertEquals(SavedNumbers.WHOLE, read(save(numbers), read));
        assertArrayEquals(numbers, read);
    }

    @Test
    void everyBlockThatDoesNotFitIsAnswered() {
        long[] block = save(1, 2);
        assertEquals(SavedNumbers.WRONG_LENGTH, read(block, new long[3]));
        assertEquals(SavedNumbers.WRONG_LENGTH, SavedNumbers.write(1, 1, new long[2], new long[4]));
        assertEquals(SavedNumbers.OTHER_VERSION, SavedNumbers.read(8, PRINT, block, new long[2]));
        assertEquals(SavedNumbers.OTHER_FINGERPRINT, SavedNumbers.read(VERSION, 98, block, new long[2]));
        assertEquals(SavedNumbers.OTHER_VERSION, read(new long[5], new long[2])); // never written
        block[2] = 3;
        long[] untouched = {5, 6};
        assertEquals(SavedNumbers.TORN, read(block, untouched));
        assertArrayEquals(new long[] {5, 6}, untouched);
    }

    @Test
    void everyFlippedBitIsSeen() {
        long[] block = save(0, -1, 123_456_789);
        for (int i = 0; i < block.length; i++) {
            for (int bit = 0; bit < 64; bit++) {
                long[] flipped = block.clone();
                flipped[i] ^= 1L << bit;
                assertNotEquals(SavedNumbers.WHOLE, read(flipped, new long[3]), i + ", bit " + bit);
            }
        }
    }

    @Test
    void numbersThatChangedPlacesAreSeen() {
        long[] block = save(1, 2, 3);
        long[] swapped = block.clone();
        swapped[2] = 2;
        swapped[3] = 1;
        assertEquals(SavedNumbers.TORN, read(swapped, new long[3]));
    }
}
