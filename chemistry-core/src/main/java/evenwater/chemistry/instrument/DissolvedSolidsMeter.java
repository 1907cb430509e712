package evenwater.chemistry.instrument;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import java.util.Locale;
import javax.measure.Quantity;

/**
 * A handheld "TDS" meter: a conductivity meter with a scale in mg/L, which makers print as ppm.
 *
 * <p>It weighs nothing. Its number is a conductivity by another name, and two meters with different scales show different numbers for
 * one water; dissolved solids over conductivity go from 0.46 to 0.88 mg/L for each µS/cm in ordinary and softened waters. To compare a
 * reading with anything else, take it back to the {@linkplain #conductivity conductivity} first.
 *
 * <p>Immutable and thread-safe.
 */
public sealed interface DissolvedSolidsMeter permits FactorMeter, SolutionScaleMeter {

    /**
     * Returns what the meter shows.
     *
     * @param at25Celsius conductivity of the water at 25 °C; 0 or more, and on the scale of the meter
     * @return the number on the display in mg/L
     * @throws IllegalArgumentException if the conductivity is negative
     * @throws evenwater.chemistry.quantity.NoAnswerException if it is not on the scale
     */
    MassConcentration reading(Quantity<Conductivity> at25Celsius);

    /**
     * Returns the conductivity behind a reading.
     *
     * @param reading the number on the display; ppm are mg/L here; 0 or more, and on the scale of the meter
     * @return conductivity of the water at 25 °C in µS/cm
     * @throws IllegalArgumentException if the reading is negative
     * @throws evenwater.chemistry.quantity.NoAnswerException if it is not on the scale
     */
    Conductivity conductivity(Quantity<MassConcentration> reading);

    /**
     * Returns the scale in words.
     *
     * @return such as {@code factor 0.5} or {@code sodium chloride}
     */
    String scale();

    /**
     * Returns a reading for people with what it is, such as {@code 320 mg/L (shown as ppm): factor 0.5 on 640 µS/cm at 25 °C}.
     *
     * @param at25Celsius as in {@link #reading}
     * @param locale whose decimal sign to use
     * @param significantDigits digits of the reading; 1 to 17
     * @return rounded text; not meant to be read back
     */
    default String toText(Quantity<Conductivity> at25Celsius, Locale locale, int significantDigits) {
        return reading(at25Celsius).toText(locale, significantDigits) + " (shown as ppm): " + scale() + " on "
                + Conductivity.from(at25Celsius).toText(locale, significantDigits) + " at 25 °C";
    }
}
