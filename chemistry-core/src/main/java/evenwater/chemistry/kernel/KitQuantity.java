package evenwater.chemistry.kernel;

/**
 * What a kit fixes or leaves open of a water, counted in equivalents: eight amounts and three sums of them.
 *
 * <p>The charges balance: hardness and alkali metals together are as much as alkalinity and strong anions together.
 */
public enum KitQuantity {
    /** Calcium. */
    CALCIUM("calcium"),
    /** Magnesium. */
    MAGNESIUM("magnesium"),
    /** Sodium. */
    SODIUM("sodium"),
    /** Potassium. */
    POTASSIUM("potassium"),
    /** Alkalinity, which a KH kit titrates. */
    ALKALINITY("alkalinity"),
    /** Chloride. */
    CHLORIDE("chloride"),
    /** Sulfate. */
    SULFATE("sulfate"),
    /** Nitrate. */
    NITRATE("nitrate"),
    /** Calcium and magnesium, which a GH kit titrates. */
    HARDNESS("hardness"),
    /** Sodium and potassium together. */
    SODIUM_AND_POTASSIUM("sodium and potassium"),
    /** Chloride, sulfate and nitrate together. */
    STRONG_ANIONS("chloride, sulfate and nitrate");

    private static final KitQuantity[] ALL = values();

    private final String words;

    KitQuantity(String words) {
        this.words = words;
    }

    /**
     * Returns the place of this quantity in arrays.
     *
     * @return an index from 0, without gaps
     */
    @SuppressWarnings("EnumOrdinal") // arrays are what the kernel is made of; this is the one place that says so
    public int place() {
        return ordinal();
    }

    static int count() {
        return ALL.length;
    }

    /** Returns the quantity in words, such as {@code sodium and potassium}. */
    @Override
    public String toString() {
        return words;
    }
}
