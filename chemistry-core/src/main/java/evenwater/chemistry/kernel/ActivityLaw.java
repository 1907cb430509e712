package evenwater.chemistry.kernel;

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
    private static final double[] SIZE = new double[SPECIES.length];
    private static final double[] SLOPE = new double[SPECIES.length];

    static {
        for (int i = 0; i < SPECIES.length; i++) {
            Species s = SPECIES[i];
            CHARGE[i] = Math.abs(s.chargeNumber());
            SIZE[i] = s.sizeInAngstrom();
            SLOPE[i] = s.slopeInKilogramPerMole() * LN_10;
            ALIKE[i] = i;
            for (int j = i - 1; j >= 0; j--) {
                if (CHARGE[j] == 1 && SIZE[j] == SIZE[i] && SLOPE[j] == 0 && SLOPE[i] == 0) {
                    ALIKE[i] = j;
                }
            }
        }
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
        double davies = this == DAVIES ? Math.exp(-a * (s / (1 + s) - 0.3 * ionicStrength)) : 0;
        double limiting = -a * s;
        double bs = b * s;
        for (int i = 0; i < count; i++) {
            int z = CHARGE[i];
            int alike = ALIKE[i];
            if (z == 0) {
                gamma[i] = neutral;
            } else if (this == DAVIES) {
                gamma[i] = toTheSquareOf(z, davies);
            } else if (alike < i) {
                gamma[i] = toTheSquareOf(z, gamma[alike]);
            } else {
                gamma[i] = Math.exp(z * z * limiting / (1 + bs * SIZE[i]) + SLOPE[i] * ionicStrength);
            }
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
