package evenwater.chemistry.kernel;

/**
 * A block of whole numbers with a version before it and a checksum behind it, so that a save that was cut off or mixed is seen.
 *
 * <p>Layout: version, fingerprint of what the numbers belong to, the numbers, checksum: a 64-bit cyclic redundancy check. A change of one number alone is always
 * seen; a mixture of two saves is missed once in 2⁶⁴. It is no proof against forgers. Keep two places and write them in turn: then one of them is
 * whole at any time.
 */
public final class SavedNumbers {

    /** The block is whole and of the version and fingerprint asked for. */
    public static final int WHOLE = 0;

    /** The block has another length than the numbers need. */
    public static final int WRONG_LENGTH = 1;

    /** The block is of another version or kind. */
    public static final int OTHER_VERSION = 2;

    /** The checksum does not fit: the block is torn, mixed or damaged. */
    public static final int TORN = 3;

    /** The block is whole, but belongs to something with another fingerprint. */
    public static final int OTHER_FINGERPRINT = 4;

    /** Numbers that a block has besides its contents. */
    public static final int OVERHEAD = 3;

    private SavedNumbers() {}

    /**
     * Returns the checksum of the first numbers of an array.
     *
     * @param numbers any
     * @param count how many of them; 0 to the length; less counts as 0
     * @return 64 bits
     */
    public static long checksum(long[] numbers, int count) {
        return CyclicRedundancyCheck.of(numbers, count);
    }

    /**
     * Writes a block.
     *
     * @param version of the layout, different for each kind of contents
     * @param fingerprint of what the numbers belong to, such as a checksum of settings
     * @param numbers contents
     * @param block receives the block; as long as the contents and {@link #OVERHEAD} more
     * @return {@link #WHOLE} or {@link #WRONG_LENGTH}
     */
    public static int write(long version, long fingerprint, long[] numbers, long[] block) {
        if (block.length != numbers.length + OVERHEAD) {
            return WRONG_LENGTH;
        }
        block[0] = version;
        block[1] = fingerprint;
        System.arraycopy(numbers, 0, block, 2, numbers.length);
        block[block.length - 1] = checksum(block, block.length - 1);
        return WHOLE;
    }

    /**
     * Reads a block.
     *
     * @param version expected
     * @param fingerprint expected
     * @param block what was saved
     * @param numbers receives the contents if the block is whole, also with another fingerprint; otherwise left as they are
     * @return {@link #WHOLE}, or why not
     */
    public static int read(long version, long fingerprint, long[] block, long[] numbers) {
        if (block.length != numbers.length + OVERHEAD) {
            return WRONG_LENGTH;
        }
        if (block[block.length - 1] != checksum(block, block.length - 1)) {
            return block[0] == version ? TORN : OTHER_VERSION;
        }
        if (block[0] != version) {
            return OTHER_VERSION;
        }
        System.arraycopy(block, 2, numbers, 0, numbers.length);
        return block[1] == fingerprint ? WHOLE : OTHER_FINGERPRINT;
    }
}
