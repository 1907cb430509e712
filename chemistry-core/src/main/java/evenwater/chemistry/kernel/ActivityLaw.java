package evenwater.chemistry.kernel;

import java.util.stream.IntStream;

/** How an activity coefficient follows from the ionic strength. */
public enum ActivityLaw {

    /**
     * Truesdell and Jones: {@code ln γ = −A z² √I / (1 + B a √I) + b I ln 10}, the default; to about 1 mol/kg where chloride and
     * sodium prevail. Ions without a b of their own follow the extended Debye–Hückel law, b = 0, good to about 0.1 mol/kg.
     */
    TRUESDELL_JONES,

    /** Davies (1962): {@code ln γ = −A z² (√I / (1 + √I) − 0.3 I)}; to about 0.5 mol/kg. */
    DAVIES;

    /** Neutral solutes salt out alike: lg γ = 0.1 I; common practice, and what Plummer and Busenberg used for CO₂ (from memory). */
    private static final double LN_NEUTRAL = 0.1 * Math.log(10);

    private static final double LN_10 = Math.log(10);

    private static final Species[] SPECIES = Species.values();

    /** For each species the first one with the same size and slope, whose single-charged coefficient it shares. */
    private static final int[] ALIKE = new int[SPECIES.length];

    private static final int[] CHARGE = new int[SPECIES.length];
    private static final double[] CHARGE_SQUARED = new double[SPECIES.length];
    private static final double[] SIZE = new double[SPECIES.length];
    private static final double[] SLOPE = new double[SPECIES.length];

    /** The species that take an exponential of their own, and those that do not. */
    private static final int[] OWN;

    private static final int[] SHARED;

    static {
        for (int i = 0; i < SPECIES.length; i++) {
            Species s = SPECIES[i];
            CHARGE[i] = Math.abs(s.chargeNumber());
            CHARGE_SQUARED[i] = (double) CHARGE[i] * CHARGE[i];
            SIZE[i] = s.sizeInAngstrom();
            SLOPE[i] = s.slopeInKilogramPerMole() * LN_10;
            ALIKE[i] = i;
            for (int j = i - 1; j >= 0; j--) {
                if (CHARGE[j] == 1 && SIZE[j] == SIZE[i] && SLOPE[j] == 0 && SLOPE[i] == 0) {
                    ALIKE[i] = j;
                }
            }
        }
        OWN = placesOf(true);
        SHARED = placesOf(false);
    }

    private static int[] placesOf(boolean own) {
        return IntStream.range(0, SPECIES.length)
                .filter(i -> own == (CHARGE[i] != 0 && ALIKE[i] == i))
                .toArray();
    }

    /**
     * Returns the logarithm of an activity coefficient.
     *
     * @param chargeNumber elementary charges; no unit; 0 for a neutral solute
     * @param sizeInAngstrom a in Å; not used by Davies
     * @param slopeInKilogramPerMole b in kg/mol; not used by Davies
     * @param ionicStrength I in mol/kg; 0 or more
     * @param a Debye–Hückel A for natural logarithms, in (kg/mol)^½
     * @param b Debye–Hückel B in (kg/mol)^½ per Å
     * @return ln γ; 0 at I = 0
     */
    public double lnGamma(
            int chargeNumber,
            double sizeInAngstrom,
            double slopeInKilogramPerMole,
            double ionicStrength,
            double a,
            double b) {
        if (chargeNumber == 0) {
            return LN_NEUTRAL * ionicStrength;
        }
        double s = Math.sqrt(ionicStrength);
        double z2 = (double) chargeNumber * chargeNumber;
        return this == DAVIES
                ? -a * z2 * (s / (1 + s) - 0.3 * ionicStrength)
                : -a * z2 * s / (1 + b * sizeInAngstrom * s) + slopeInKilogramPerMole * LN_10 * ionicStrength;
    }

    /**
     * Writes the activity coefficients of all species.
     *
     * @param ionicStrength I in mol/kg; 0 or more
     * @param a Debye–Hückel A for natural logarithms, in (kg/mol)^½
     * @param b Debye–Hückel B in (kg/mol)^½ per Å
     * @param gamma receives γ by {@link Species#place()}
     * @param count how many species, from the first
     */
    void fill(double ionicStrength, double a, double b, double[] gamma, int count) {
        double s = Math.sqrt(ionicStrength);
        double neutral = Math.exp(LN_NEUTRAL * ionicStrength);
        if (this == DAVIES) {
            double single = Math.exp(-a * (s / (1 + s) - 0.3 * ionicStrength));
            for (int i = 0; i < count; i++) {
                gamma[i] = CHARGE[i] == 0 ? neutral : toTheSquareOf(CHARGE[i], single);
            }
            return;
        }
        double limiting = -a * s;
        double bs = b * s;
        for (int i = 0; i < count; i++) { // all divisions in one plain loop, which a compiler takes several at a time
            gamma[i] = CHARGE_SQUARED[i] * limiting / (1 + bs * SIZE[i]) + SLOPE[i] * ionicStrength;
        }
        exponentials(gamma, count);
        shared(gamma, count, neutral);
    }

    /** A small method of its own, which a compiler treats alike in every run. */
    private static void exponentials(double[] gamma, int count) {
        int[] own = OWN;
        for (int k = 0; k < own.length && own[k] < count; k++) {
            gamma[own[k]] = Math.exp(gamma[own[k]]);
        }
    }

    private static void shared(double[] gamma, int count, double neutral) {
        int[] places = SHARED;
        for (int k = 0; k < places.length && places[k] < count; k++) {
            int i = places[k];
            gamma[i] = CHARGE[i] == 0 ? neutral : toTheSquareOf(CHARGE[i], gamma[ALIKE[i]]);
        }
    }

    /** Without another exponential: charge enters ln γ as its square. */
    private static double toTheSquareOf(int charge, double single) {
        double fourth = single * single;
        fourth *= fourth;
        return switch (charge) {
            case 1 -> single;
            case 2 -> fourth;
            default -> fourth * fourth * single;
        };
    }
}
