package evenwater.chemistry.exchange;

/**
 * How a scale of relative affinities becomes the constant K of an ion against sodium. Both ways are in print and they differ: with calcium 5.16 and
 * sodium 1.98, one says 2.61 and the other 1.32. The value of calcium itself, 5.16, is never K against sodium.
 */
public enum SelectivityConvention {

    /** {@code K = value / value of sodium}: the usual practice of handbooks (MWH, Water Treatment; from memory). */
    PLAIN_RATIO,

    /**
     * {@code K = value / (value of sodium)ᶻ}: the values are constants of mass action against the ion at 1, and two sodium stand against one calcium.
     */
    MASS_ACTION;

    double constant(double value, double ofSodium, int charge) {
        return this == PLAIN_RATIO || charge == 1 ? value / ofSodium : value / (ofSodium * ofSodium);
    }
}
