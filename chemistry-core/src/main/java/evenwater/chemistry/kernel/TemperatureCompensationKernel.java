package evenwater.chemistry.kernel;

/** What conductivity meters do about temperature, on plain doubles. */
public final class TemperatureCompensationKernel {

    /** Share of the conductivity that follows the viscosity of water; no unit. */
    private static final double A = 0.962144;

    /** Exponent of the viscosity; no unit. */
    private static final double N = 0.965078;

    /** What {@link #viscosity} subtracts; no unit. */
    private static final double VISCOSITY_A = 0.198058;

    /** Exponent that {@link #viscosity} subtracts; no unit. */
    private static final double VISCOSITY_B = 1.992186;

    /** In °C. */
    private static final double VISCOSITY_C = 231.17628;

    /** In °C. */
    private static final double VISCOSITY_D = 86.39123;

    private static final double AT_25_CELSIUS = naturalWater(25);

    private TemperatureCompensationKernel() {}

    /**
     * Returns conductivity at a temperature over that at 25 °C by the linear law of meters.
     *
     * <p>{@code κ(t) / κ(25) = 1 + α (t − 25)}. Exactly 1 at 25 °C.
     *
     * @param celsius temperature t in °C
     * @param perKelvin temperature coefficient α in 1/K, counted from 25 °C
     * @return the ratio; no unit; 0 or below where the law has lost its meaning
     */
    public static double linearRatio(double celsius, double perKelvin) {
        return 1 + perKelvin * (celsius - 25);
    }

    /**
     * Returns the factor f25 of ISO 7888 that takes the conductivity of a natural water to 25 °C.
     *
     * <p>{@code κ(25) = f25(t) κ(t)}. The standard prints f25 with three decimals for each tenth of a degree. Here those figures come
     * from the formula of Wagner, divided by its own value at 25 °C and rounded alike; between two tenths they are interpolated.
     * This gives all 36 figures of whole degrees to the last digit; the tenths in between were not compared one by one. Exactly 1 at
     * 25 °C.
     *
     * @param celsius temperature t in °C; 0 to 35.9
     * @return f25; no unit; from 1.918 down to 0.808
     * @see "ISO 7888:1985 (EN 27888:1993), table of f25 for natural waters (whole degrees read in two manuals that reprint it); R.
     *     Wagner, Temperaturkorrekturfaktoren für die elektrische Leitfähigkeit von Wässern, Z. Wasser Abwasser Forsch. 13 (1980) (from
     *     memory)"
     */
    public static double naturalWaterFactor(double celsius) {
        double tenths = Math.floor(10 * celsius);
        double lower = printedFactor(tenths / 10);
        double upper = printedFactor((tenths + 1) / 10);
        return lower + (10 * celsius - tenths) * (upper - lower);
    }

    private static double printedFactor(double celsius) {
        return Math.rint(1000 * naturalWater(celsius) / AT_25_CELSIUS) / 1000;
    }

    /** {@code (1 − a) + a ηⁿ}, which is κ(20) / κ(t). */
    private static double naturalWater(double celsius) {
        return (1 - A) + A * Math.pow(viscosity(celsius), N);
    }

    /** Viscosity of water over that at 20 °C: {@code η = exp(−B + C / (t + D)) − A}. */
    private static double viscosity(double celsius) {
        return Math.exp(VISCOSITY_C / (celsius + VISCOSITY_D) - VISCOSITY_B) - VISCOSITY_A;
    }
}
