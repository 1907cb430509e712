package evenwater.chemistry.instrument;

import evenwater.chemistry.kernel.TemperatureCompensationKernel;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * How a meter takes a conductivity at the temperature of the water to the one it would have at 25 °C.
 *
 * <p>A rule for all waters: the water's own ions are not asked. Natural waters follow {@link #ISO_7888}; linear laws with the
 * coefficients in use differ from it by up to 2 % at 15 °C or 35 °C and by up to 9 % at 5 °C. Acids, alkalis and ultrapure water follow
 * neither.
 *
 * <p>Immutable and thread-safe.
 */
public final class TemperatureCompensation {

    /**
     * The factors of ISO 7888 (EN 27888) for natural waters, which meters call nonlinear (nLF); 0 °C to 35.9 °C.
     *
     * <p>Made for some 60 to 1000 µS/cm; what is outside is not refused, since meters do not refuse it either.
     */
    public static final TemperatureCompensation ISO_7888 = new TemperatureCompensation(Double.NaN);

    /** Linear with 1.91 % per kelvin: Standard Methods 2510 (from memory); also a maker's default (read in a manual). */
    public static final TemperatureCompensation STANDARD_METHODS_2510 = linear(0.0191);

    /** Linear with 2 % per kelvin, the usual default of simple meters (common practice). */
    public static final TemperatureCompensation TWO_PERCENT_PER_KELVIN = linear(0.02);

    /** Linear with 2.12 % per kelvin, for sodium chloride solutions (common practice). */
    public static final TemperatureCompensation SODIUM_CHLORIDE = linear(0.0212);

    /** More than ultrapure water has, about 0.05 per kelvin: what is above was meant in percent. */
    private static final double LARGEST_PER_KELVIN = 0.1;

    /** NaN for the factors of ISO 7888. */
    private final double perKelvin;

    private TemperatureCompensation(double perKelvin) {
        this.perKelvin = perKelvin;
    }

    /**
     * Returns the linear law {@code κ(25) = κ(t) / (1 + α (t − 25))}.
     *
     * @param perKelvin temperature coefficient α in 1/K, counted from 25 °C; 0 to 0.1; 0 leaves a conductivity as it is, 0.019 to 0.022
     *     is usual
     * @return the law, for 0 °C to 100 °C as far as it stays above 0
     * @throws IllegalArgumentException if the coefficient is out of range
     */
    public static TemperatureCompensation linear(double perKelvin) {
        if (!(perKelvin >= 0 && perKelvin <= LARGEST_PER_KELVIN)) {
            throw new IllegalArgumentException("temperature coefficient must be from 0 to " + LARGEST_PER_KELVIN
                    + " per kelvin, but was " + perKelvin + " (2 % per kelvin is 0.02)");
        }
        return new TemperatureCompensation(perKelvin + 0.0); // -0.0 is 0
    }

    /**
     * Returns the factor that takes a conductivity to 25 °C, f25 of ISO 7888.
     *
     * @param temperature temperature t of the water; 0 °C to 35.9 °C for ISO 7888; for a linear law 0 °C to 100 °C, and warmer than
     *     {@code 25 °C − 1/α}
     * @return κ(25)/κ(t); no unit; above 0; exactly 1 at 25 °C
     * @throws IllegalArgumentException if the temperature is out of range
     */
    public double factor(Quantity<Temperature> temperature) {
        WaterQuantity<Temperature> stated = Checked.temperature(temperature);
        return isOfIso7888()
                ? TemperatureCompensationKernel.naturalWaterFactor(
                        Checked.celsius(stated, 35.9, "from 0 °C to 35.9 °C for the factors of ISO 7888"))
                : linearFactor(stated);
    }

    private double linearFactor(WaterQuantity<Temperature> temperature) {
        double ratio = TemperatureCompensationKernel.linearRatio(Checked.celsius(temperature), perKelvin);
        if (!(ratio > 0)) {
            throw new IllegalArgumentException("temperature must be above "
                    + WaterUnits.temperature(25 - 1 / perKelvin, WaterUnits.CELSIUS)
                            .toText(Locale.ROOT, 4)
                    + " for a compensation of " + perKelvin + " per kelvin, but was " + temperature);
        }
        return 1 / ratio;
    }

    /**
     * Returns what a meter shows for 25 °C.
     *
     * @param measured conductivity at the temperature of the water, not compensated; 0 or more
     * @param temperature temperature of the water, in the range of {@link #factor}
     * @return the conductivity at 25 °C, in the unit of {@code measured}
     * @throws IllegalArgumentException if an argument is out of range
     */
    public Conductivity toReference(Quantity<Conductivity> measured, Quantity<Temperature> temperature) {
        return Checked.conductivity(measured, "measured").multiply(factor(temperature));
    }

    /**
     * Returns the conductivity at the temperature of the water that a meter shows as this one at 25 °C.
     *
     * @param at25Celsius conductivity at 25 °C; 0 or more
     * @param temperature temperature of the water, in the range of {@link #factor}
     * @return the conductivity at that temperature, in the unit of {@code at25Celsius}
     * @throws IllegalArgumentException if an argument is out of range
     */
    public Conductivity fromReference(Quantity<Conductivity> at25Celsius, Quantity<Temperature> temperature) {
        return Checked.conductivity(at25Celsius, "at25Celsius").divide(factor(temperature));
    }

    private boolean isOfIso7888() {
        return Double.isNaN(perKelvin);
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return that instanceof TemperatureCompensation other && Double.compare(perKelvin, other.perKelvin) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(perKelvin);
    }

    /** Returns the law, such as {@code ISO 7888} or {@code linear, 0.0191 per kelvin}. */
    @Override
    public String toString() {
        return isOfIso7888() ? "ISO 7888" : "linear, " + perKelvin + " per kelvin";
    }
}
