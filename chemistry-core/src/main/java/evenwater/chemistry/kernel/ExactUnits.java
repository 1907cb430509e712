package evenwater.chemistry.kernel;

/**
 * Customary units by their exact legal definitions, as integers of a small decimal unit so that any ratio of them is exact.
 *
 * <p>Sources: international yard and pound agreement of 1959 and NIST SP 811 (2008) Appendix B for pound and grain; NIST Handbook
 * 44 Appendix C for the US gallon (231 cubic inches) and the cubic foot; UK Weights and Measures Act 1985 Schedule 1 for the
 * imperial gallon. The definitions are exact; the citations are from memory.
 */
public final class ExactUnits {

    /** One grain in units of 1e-5 mg: 64.79891 mg, exact. */
    public static final long GRAIN_IN_1E_5_MILLIGRAM = 64_79891L;

    /** One avoirdupois pound in units of 1e-5 g: 453.59237 g, exact; 7000 grains. */
    public static final long POUND_IN_1E_5_GRAM = 453_59237L;

    /** One US liquid gallon in units of 1e-9 L: 3.785411784 L, exact; 231 cubic inches. */
    public static final long US_GALLON_IN_1E_9_LITRE = 3_785411784L;

    /** One imperial gallon in units of 1e-5 L: 4.54609 L, exact. */
    public static final long IMPERIAL_GALLON_IN_1E_5_LITRE = 4_54609L;

    /** One cubic foot in units of 1e-9 L: 28.316846592 L, exact; 1728 cubic inches. */
    public static final long CUBIC_FOOT_IN_1E_9_LITRE = 28_316846592L;

    private ExactUnits() {}
}
