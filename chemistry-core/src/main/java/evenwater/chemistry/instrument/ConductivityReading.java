package evenwater.chemistry.instrument;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * What a conductivity meter shows, with the temperature that the number is for.
 *
 * <p>That is the temperature of the water if the meter does not compensate, and the meter's reference temperature if it does. So a
 * reading that was compensated to 25 °C is never compensated twice.
 *
 * @param shown the number on the display; 0 or more
 * @param temperature temperature that the number is for; 0 °C to 100 °C
 * @param isCompensated whether the meter has taken the number to that temperature itself
 */
public record ConductivityReading(Conductivity shown, WaterQuantity<Temperature> temperature, boolean isCompensated) {

    /**
     * Checks the ranges.
     *
     * @param shown see the record
     * @param temperature see the record
     * @param isCompensated see the record
     */
    public ConductivityReading {
        Checked.conductivity(shown, "shown");
        Checked.celsius(Objects.requireNonNull(temperature, "temperature"));
    }

    /**
     * Returns a reading that the meter left as it was, at the temperature of the water.
     *
     * @param conductivity what it shows; 0 or more
     * @param temperature temperature of the water; 0 °C to 100 °C
     * @return the reading
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static ConductivityReading uncompensated(
            Quantity<Conductivity> conductivity, Quantity<Temperature> temperature) {
        return new ConductivityReading(
                Checked.conductivity(conductivity, "conductivity"), Checked.temperature(temperature), false);
    }

    /**
     * Returns a reading that the meter has taken to 25 °C, as most do.
     *
     * @param conductivity what it shows; 0 or more
     * @return the reading
     * @throws IllegalArgumentException if it is negative
     */
    public static ConductivityReading compensatedTo25Celsius(Quantity<Conductivity> conductivity) {
        return compensated(conductivity, 25);
    }

    /**
     * Returns a reading that the meter has taken to 20 °C.
     *
     * @param conductivity what it shows; 0 or more
     * @return the reading
     * @throws IllegalArgumentException if it is negative
     */
    public static ConductivityReading compensatedTo20Celsius(Quantity<Conductivity> conductivity) {
        return compensated(conductivity, 20);
    }

    private static ConductivityReading compensated(Quantity<Conductivity> conductivity, double celsius) {
        return new ConductivityReading(
                Checked.conductivity(conductivity, "conductivity"),
                WaterUnits.temperature(celsius, WaterUnits.CELSIUS),
                true);
    }

    /**
     * Returns the conductivity at 25 °C.
     *
     * <p>A reading for 25 °C is returned as it is, whatever the law. One for 20 °C is multiplied by 1.116 under ISO 7888: its factors to
     * 20 °C are f25/1.116.
     *
     * @param compensation law for what the meter has not done; the meter's own where it is known
     * @return the conductivity at 25 °C, in the unit of the reading
     * @throws IllegalArgumentException if the temperature is out of the range of the law
     */
    public Conductivity at25Celsius(TemperatureCompensation compensation) {
        return Objects.requireNonNull(compensation, "compensation").toReference(shown, temperature);
    }

    /** Returns the reading, such as {@code 448 µS/cm at 15 °C, not compensated} or {@code 640 µS/cm, compensated to 25 °C}. */
    @Override
    public String toString() {
        return isCompensated
                ? shown + ", compensated to " + temperature
                : shown + " at " + temperature + ", not compensated";
    }
}
