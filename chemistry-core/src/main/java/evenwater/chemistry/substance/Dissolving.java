package evenwater.chemistry.substance;

/** Whether an amount dissolves, as far as a solubility per mass of water tells of a volume of solution. */
public enum Dissolving {
    /** It surely dissolves. */
    DISSOLVES("dissolves"),
    /** It lies so near saturation that the density of the solution, which the data lack, decides. */
    MAY_NOT_DISSOLVE("may not dissolve"),
    /** Some of it surely stays undissolved. */
    DOES_NOT_DISSOLVE("does not dissolve");

    private final String words;

    Dissolving(String words) {
        this.words = words;
    }

    /** Returns the answer in words. */
    @Override
    public String toString() {
        return words;
    }
}
