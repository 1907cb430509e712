package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import javax.measure.Quantity;

/**
 * A dissolved-solids meter that multiplies the conductivity by one factor.
 *
 * <p>Scales are also named after the ppm that they show at 1 mS/cm: the 500 scale has the factor 0.5.
 *
 * @param factor mg/L for each µS/cm at 25 °C; 0.4 to 1
 */
public record FactorMeter(double factor) implements DissolvedSolidsMeter {

    /** The 500 scale, near that of sodium chloride: the factor of most simple meters (common practice). */
    public static final FactorMeter SCALE_500 = new FactorMeter(0.5);

    /** The 640 scale: USDA Handbook 60, 1954 (from memory). */
    public static final FactorMeter SCALE_640 = new FactorMeter(0.64);

    /** The 700 scale, near that of the mixture called 442 (common practice). */
    public static final FactorMeter SCALE_700 = new FactorMeter(0.7);

    private static final double LEAST = 0.4;
    private static final double MOST = 1;

    /**
     * Checks the factor.
     *
     * @param factor see the record
     */
    public FactorMeter {
        if (!(factor >= LEAST && factor <= MOST)) {
            throw new IllegalArgumentException("factor of a dissolved-solids meter must be from " + LEAST + " to "
                    + MOST + " mg/L for each µS/cm, but was " + factor + " (the 640 scale is 0.64)");
        }
    }

    /**
     * Returns a meter with a factor.
     *
     * @param factor mg/L for each µS/cm at 25 °C; 0.4 to 1; dilute sodium chloride has 0.46 to 0.5, natural
     *     waters 0.54 to 0.96 (Hem 1985, from memory)
     * @return the meter
     * @throws IllegalArgumentException if the factor is out of range
     */
    public static FactorMeter of(double factor) {
        return new FactorMeter(factor);
    }

    @Override
    public MassConcentration reading(Quantity<Conductivity> at25Celsius) {
        Conductivity stated = Checked.conductivity(at25Celsius, "at25Celsius");
        return MassConcentration.of(factor * stated.in(MICROSIEMENS_PER_CENTIMETRE), MILLIGRAM_PER_LITRE);
    }

    @Override
    public Conductivity conductivity(Quantity<MassConcentration> reading) {
        return Conductivity.of(Checked.reading(reading).in(MILLIGRAM_PER_LITRE) / factor, MICROSIEMENS_PER_CENTIMETRE);
    }

    @Override
    public String scale() {
        return "factor " + factor;
    }

    /** Returns the meter, such as {@code dissolved-solids meter, factor 0.5}. */
    @Override
    public String toString() {
        return "dissolved-solids meter, " + scale();
    }
}
