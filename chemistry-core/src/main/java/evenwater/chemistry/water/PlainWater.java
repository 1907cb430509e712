package evenwater.chemistry.water;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A {@link Water} in numbers and texts, which any library for JSON or documents writes and reads without annotations.
 *
 * <p>It is made by {@link Water#toPlain} or by such a library, carries whatever came, also nothing where something was missing, and promises nothing:
 * {@link Water#from(PlainWater)} checks it. All that a water holds is in it, to the last bit, if numbers are written with all their digits; what can be
 * computed from that, such as hardness, is not. Immutable and thread-safe.
 *
 * @param version of this form, {@link #VERSION}
 * @param temperatureInKelvin in K; 273.15 to 373.15
 * @param millimolesPerLitre total of each ion in its reference form in mmol/L, 0 or more, by its symbol, such as {@code Ca²⁺}; read also by other
 *     spellings of {@link evenwater.chemistry.substance.Ion#parse}
 * @param namesOfOwnIons the name in words of each ion among these that is not one of the constants, by its symbol; empty, or missing, if there is none
 * @param alkalinityInMilliequivalentsPerLitre in meq/L; any sign
 * @param unmeasuredChargeInMilliequivalentsPerLitre in meq/L; any sign; stands beside the alkalinity, which it closes the charges with
 * @param inorganicCarbonInMillimolesPerLitre in mmol/L; 0 or more; null if it is unknown
 * @param measuredPH no unit; 0 to 14; null if there is none, and where inorganic carbon is known
 */
public record PlainWater(
        @Nullable Integer version,
        @Nullable Double temperatureInKelvin,
        @Nullable Map<String, @Nullable Double> millimolesPerLitre,
        @Nullable Map<String, @Nullable String> namesOfOwnIons,
        @Nullable Double alkalinityInMilliequivalentsPerLitre,
        @Nullable Double unmeasuredChargeInMilliequivalentsPerLitre,
        @Nullable Double inorganicCarbonInMillimolesPerLitre,
        @Nullable Double measuredPH) {

    /** The version of the form that this library writes, and the newest that it reads. */
    public static final int VERSION = 1;

    /**
     * Takes what came; nothing is checked here.
     *
     * @param version see the record, as the others
     * @param temperatureInKelvin in K
     * @param millimolesPerLitre in mmol/L; copied
     * @param namesOfOwnIons by symbol; copied
     * @param alkalinityInMilliequivalentsPerLitre in meq/L
     * @param unmeasuredChargeInMilliequivalentsPerLitre in meq/L
     * @param inorganicCarbonInMillimolesPerLitre in mmol/L
     * @param measuredPH no unit
     */
    public PlainWater {
        millimolesPerLitre = copy(millimolesPerLitre);
        namesOfOwnIons = copy(namesOfOwnIons);
    }

    /** Keeps the order, and null where a reader left it, unlike {@link Map#copyOf}. */
    private static <V extends @Nullable Object> @Nullable Map<String, V> copy(@Nullable Map<String, V> map) {
        return map == null ? null : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
