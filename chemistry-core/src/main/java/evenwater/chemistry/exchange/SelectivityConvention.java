package evenwater.chemistry.exchange;

/**
 * How a scale of relative affinities becomes the constant K of an ion against sodium. Both ways are in print and they differ: with calcium 5.16 and
 * sodium 1.98, one says 2.61 and the other 1.32. The value of calcium itself, 5.16, is never K against sodium.
 */
public enum SelectivityConvention {

    /**
     * {@code K = value / value of sodium}: the usual practice of handbooks (MWH, Water Treatment; from memory).
     *
     * <p>It depends on the ion against which one counts: calcium against potassium follows as 2.61/1.46² = 1.21, while the same table read against potassium would say
     * 5.16/2.90 = 1.78. What potassium chloride gives in place of sodium chloride hangs on it: 12 % more capacity at 10 lb/ft³ with the one, 6 % with the other.
     */
    PLAIN_RATIO,

    /**
     * {@code K = value / (value of sodium)ᶻ}: the values are constants of mass action against the ion at 1, and two sodium stand against one calcium.
     */
    MASS_ACTION;

    double constant(double value, double ofSodium, int charge) {
        return this == PLAIN_RATIO || charge == 1 ? value / ofSodium : value / (ofSodium * ofSodium);
    }
}
