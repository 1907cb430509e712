package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CyclicRedundancyCheckTest {

    /** Byte for byte, so that the published value for nine digits can be had. */
    private static long byteByByte(byte[] bytes) {
        long remainder = -1;
        for (byte b : bytes) {
            remainder ^= (long) b << 56;
            for (int bit = 0; bit < 8; bit++) {
                remainder = remainder < 0 ? (remainder << 1) ^ 0x42F0E1EBA9EA3693L : remainder << 1;
            }
        }
        return ~remainder;
    }

    @Test
    void theOtherWayOfComputingItGivesThePublishedValue() {
        // check value of CRC-64/WE, from memory
        assertEquals(0x62EC59E3F1A4F00AL, byteByByte("123456789".getBytes(StandardCharsets.US_ASCII)));
    }

    @Test
    void numbersAreCheckedAsTheirBytes() {
        Random random = new Random(64);
        for (int length = 0; length < 40; length++) {
            long[] numbers = random.longs(length).toArray();
            ByteBuffer bytes = ByteBuffer.allocate(8 * length);
            bytes.asLongBuffer().put(numbers);
            assertEquals(byteByByte(bytes.array()), CyclicRedundancyCheck.of(numbers, length));
        }
    }

    @Test
    void leadingZerosCount() {
        assertNotEquals(CyclicRedundancyCheck.of(new long[4], 3), CyclicRedundancyCheck.of(new long[4], 4));
        assertNotEquals(0, CyclicRedundancyCheck.of(new long[4], 4));
    }
}
