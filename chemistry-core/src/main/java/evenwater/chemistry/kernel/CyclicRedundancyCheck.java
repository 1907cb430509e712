package evenwater.chemistry.kernel;

/**
 * The 64-bit cyclic redundancy check of whole numbers, without a table.
 *
 * <p>Polynomial {@code 0x42F0E1EBA9EA3693} (that of ECMA-182, from memory), most significant bit first, starting from all ones and
 * inverted at the end. A remainder by a polynomial of degree 64 sees every change within 64 bits in a row, hence every change of a
 * single number however many of its bits turn; any other change is missed once in 2⁶⁴. The start from all ones makes leading zeros
 * count.
 */
final class CyclicRedundancyCheck {

    private static final long POLYNOMIAL = 0x42F0E1EBA9EA3693L;

    private CyclicRedundancyCheck() {}

    /**
     * Returns the check of the first numbers of an array.
     *
     * @param numbers any
     * @param count how many of them; at most their length
     * @return the remainder
     */
    static long of(long[] numbers, int count) {
        long remainder = -1;
        for (int i = 0; i < count; i++) {
            remainder ^= numbers[i];
            for (int bit = 0; bit < Long.SIZE; bit++) {
                long carry = remainder >> (Long.SIZE - 1); // all ones if the bit that is shifted out is one
                remainder = (remainder << 1) ^ (carry & POLYNOMIAL);
            }
        }
        return ~remainder;
    }
}
