package evenwater.chemistry.quantity;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;

/**
 * Units of the kinds that javax.measure itself has, as households and the trade use them, and a light way to state quantities in
 * them.
 *
 * <p>Any library's {@code Quantity<Volume>}, {@code Quantity<Mass>} and so on is accepted wherever this library asks for one;
 * {@link #volume(double, Unit)} and its siblings make one without waking another library. Gallons are US or imperial by name: there
 * is no plain gallon here.
 *
 * <p>Temperatures add up as people mean it: {@code 20 °C + 5 K} is 25 °C; a difference stated in °C is refused.
 */
public final class WaterUnits {

    /** Litre. */
    public static final Unit<Volume> LITRE = volume("L", "L", Definition.under(Factor.LITRES));

    /** Millilitre. */
    public static final Unit<Volume> MILLILITRE =
            volume("mL", "mL", Definition.under(Factor.MILLILITRES, Factor.LITRES));

    /** Cubic metre. */
    public static final Unit<Volume> CUBIC_METRE = volume("m³", "m3", Definition.ONE);

    /** US liquid gallon: 231 cubic inches, exactly 3.785411784 L. */
    public static final Unit<Volume> US_GALLON =
            volume("gal(US)", "[gal_us]", Definition.of(Factor.US_GALLON, Factor.LITRES));

    /** Imperial gallon: exactly 4.54609 L. */
    public static final Unit<Volume> IMPERIAL_GALLON =
            volume("gal(imp)", "[gal_br]", Definition.of(Factor.IMPERIAL_GALLON, Factor.LITRES));

    /** Cubic foot: exactly 28.316846592 L. */
    public static final Unit<Volume> CUBIC_FOOT =
            volume("ft³", "[cft_i]", Definition.of(Factor.CUBIC_FOOT, Factor.LITRES));

    /** US teaspoon: 1/768 US gallon, exactly 4.92892159375 mL. */
    public static final Unit<Volume> US_TEASPOON =
            volume("tsp(US)", "[tsp_us]", Definition.of(Factor.US_TEASPOON, Factor.MILLILITRES, Factor.LITRES));

    /** US tablespoon: 3 teaspoons. */
    public static final Unit<Volume> US_TABLESPOON =
            volume("tbsp(US)", "[tbs_us]", Definition.of(Factor.US_TABLESPOON, Factor.MILLILITRES, Factor.LITRES));

    /** US cup: 1/16 US gallon. */
    public static final Unit<Volume> US_CUP =
            volume("cup(US)", "[cup_us]", Definition.of(Factor.US_CUP, Factor.MILLILITRES, Factor.LITRES));

    /** Metre. */
    public static final Unit<Length> METRE = length("m", "m", Definition.ONE);

    /** Millimetre. */
    public static final Unit<Length> MILLIMETRE = length("mm", "mm", Definition.under(Factor.MILLIMETRES));

    /** Inch: exactly 25.4 mm. */
    public static final Unit<Length> INCH = length("in", "[in_i]", Definition.of(Factor.INCH, Factor.MILLIMETRES));

    /** Gram. */
    public static final Unit<Mass> GRAM = mass("g", "g", Definition.under(Factor.GRAMS));

    /** Milligram. */
    public static final Unit<Mass> MILLIGRAM = mass("mg", "mg", Definition.under(Factor.MILLIGRAMS, Factor.GRAMS));

    /** Kilogram. */
    public static final Unit<Mass> KILOGRAM = mass("kg", "kg", Definition.ONE);

    /** Grain: exactly 64.79891 mg. */
    public static final Unit<Mass> GRAIN =
            mass("grain", "[gr]", Definition.of(Factor.GRAIN, Factor.MILLIGRAMS, Factor.GRAMS));

    /** Avoirdupois pound: exactly 453.59237 g. */
    public static final Unit<Mass> POUND = mass("lb", "[lb_av]", Definition.of(Factor.POUND, Factor.GRAMS));

    /** Avoirdupois ounce: 1/16 pound. */
    public static final Unit<Mass> OUNCE = mass("oz", "[oz_av]", Definition.of(Factor.OUNCE, Factor.GRAMS));

    /** Kelvin; the unit of temperature differences. */
    public static final Unit<Temperature> KELVIN = temperature("K", "K", Definition.ONE, 0);

    /** Degree Celsius: t + 273.15 kelvin. */
    public static final Unit<Temperature> CELSIUS = temperature("°C", "Cel", Definition.ONE, 273.15);

    /** Degree Fahrenheit: (t + 459.67) · 5/9 kelvin. */
    public static final Unit<Temperature> FAHRENHEIT =
            temperature("°F", "[degF]", Definition.ONE.times(5, "K", "").over(9, "°F", ""), 459.67);

    /** Pascal. */
    public static final Unit<Pressure> PASCAL = pressure("Pa", "Pa", Definition.ONE);

    /** Kilopascal. */
    public static final Unit<Pressure> KILOPASCAL = pressure("kPa", "kPa", Definition.ONE.times(1000, "Pa", "kPa"));

    /** Bar: 100 kPa. */
    public static final Unit<Pressure> BAR = pressure("bar", "bar", Definition.ONE.times(100_000, "Pa", "bar"));

    /** Millibar, the same as hectopascal. */
    public static final Unit<Pressure> MILLIBAR = pressure("mbar", "mbar", Definition.ONE.times(100, "Pa", "mbar"));

    /** Standard atmosphere: exactly 101325 Pa. */
    public static final Unit<Pressure> ATMOSPHERE = pressure("atm", "atm", Definition.ONE.times(101_325, "Pa", "atm"));

    /** Millionth of a standard atmosphere: what one part per million by volume of a gas at 1 atm exerts. */
    public static final Unit<Pressure> MICROATMOSPHERE = pressure(
            "µatm", "10*-6.atm", Definition.ONE.over(1000_000, "µatm", "atm").times(101_325, "Pa", "atm"));

    /** Second. */
    public static final Unit<Time> SECOND = time("s", "s", Definition.ONE);

    /** Minute. */
    public static final Unit<Time> MINUTE = time("min", "min", Definition.of(Factor.SECONDS));

    /** Hour. */
    public static final Unit<Time> HOUR = time("h", "h", Definition.of(Factor.HOUR));

    /** Day of 24 hours. */
    public static final Unit<Time> DAY = time("d", "d", Definition.of(Factor.DAY));

    /** The number one. */
    public static final Unit<Dimensionless> ONE = share("", "1", Definition.ONE);

    /** Percent. */
    public static final Unit<Dimensionless> PERCENT = share("%", "%", Definition.ONE.over(100, "%", ""));

    /** Milligram per kilogram: parts per million by mass; needs a density to become mg/L. */
    public static final Unit<Dimensionless> MILLIGRAM_PER_KILOGRAM =
            share("mg/kg", "mg/kg", Definition.ONE.over(1000_000, "mg", "kg"));

    /** Grain per pound: 1/7000, as salt efficiency is stated. */
    public static final Unit<Dimensionless> GRAIN_PER_POUND =
            share("grain/lb", "[gr]/[lb_av]", Definition.ONE.over(7000, "grain", "lb"));

    /** Gram per kilogram, as solubilities per mass of water are stated. */
    public static final Unit<Dimensionless> GRAM_PER_KILOGRAM = share("g/kg", "g/kg", Definition.under(Factor.GRAMS));

    private WaterUnits() {}

    /**
     * Returns a volume.
     *
     * @param value number in {@code unit}; finite
     * @param unit a unit of volume, ours or foreign
     * @return the volume as stated
     */
    public static WaterQuantity<Volume> volume(double value, Unit<Volume> unit) {
        return new StatedVolume(value, unit);
    }

    /**
     * Returns any library's volume as ours.
     *
     * @param quantity a volume
     * @return the same statement
     */
    public static WaterQuantity<Volume> volume(Quantity<Volume> quantity) {
        return quantity instanceof StatedVolume ours
                ? ours
                : WaterQuantity.adopt(quantity, Volume.class, WaterUnits::volume);
    }

    /**
     * Reads a volume, such as {@code 40 gal(US)} or {@code 150 L}.
     *
     * @param text a number with a decimal point and a unit
     * @return the volume as stated
     * @throws UnreadableTextException if it cannot be read; a gallon without US or imperial is refused
     */
    public static WaterQuantity<Volume> parseVolume(String text) {
        return QuantityText.parse(text, WaterUnitNames.VOLUME, WaterUnits::volume);
    }

    /**
     * Returns a mass.
     *
     * @param value number in {@code unit}; finite
     * @param unit a unit of mass, ours or foreign
     * @return the mass as stated
     */
    public static WaterQuantity<Mass> mass(double value, Unit<Mass> unit) {
        return new StatedMass(value, unit);
    }

    /**
     * Returns any library's mass as ours.
     *
     * @param quantity a mass
     * @return the same statement
     */
    public static WaterQuantity<Mass> mass(Quantity<Mass> quantity) {
        return quantity instanceof StatedMass ours ? ours : WaterQuantity.adopt(quantity, Mass.class, WaterUnits::mass);
    }

    /**
     * Reads a mass, such as {@code 3 g}.
     *
     * @param text a number with a decimal point and a unit
     * @return the mass as stated
     * @throws UnreadableTextException if it cannot be read; "gr", gram or grain, is refused
     */
    public static WaterQuantity<Mass> parseMass(String text) {
        return QuantityText.parse(text, WaterUnitNames.MASS, WaterUnits::mass);
    }

    /**
     * Returns a temperature.
     *
     * @param value number in {@code unit}; finite, not below absolute zero unless it is a difference in kelvin
     * @param unit a unit of temperature, ours or foreign
     * @return the temperature as stated
     */
    public static WaterQuantity<Temperature> temperature(double value, Unit<Temperature> unit) {
        return new StatedTemperature(value, unit);
    }

    /**
     * Returns any library's temperature as ours.
     *
     * @param quantity a temperature
     * @return the same statement; a difference in kelvin if the other library calls it relative
     */
    public static WaterQuantity<Temperature> temperature(Quantity<Temperature> quantity) {
        return quantity instanceof StatedTemperature ours ? ours : StatedTemperature.adopt(quantity);
    }

    /**
     * Reads a temperature, such as {@code 25 °C} or {@code 77 °F}.
     *
     * @param text a number with a decimal point and a unit
     * @return the temperature as stated
     * @throws UnreadableTextException if it cannot be read
     */
    public static WaterQuantity<Temperature> parseTemperature(String text) {
        return QuantityText.parse(text, WaterUnitNames.TEMPERATURE, WaterUnits::temperature);
    }

    /**
     * Returns a pressure, such as the partial pressure of a gas.
     *
     * @param value number in {@code unit}; finite
     * @param unit a unit of pressure, ours or foreign
     * @return the pressure as stated
     */
    public static WaterQuantity<Pressure> pressure(double value, Unit<Pressure> unit) {
        return new StatedPressure(value, unit);
    }

    /**
     * Returns any library's pressure as ours.
     *
     * @param quantity a pressure
     * @return the same statement
     */
    public static WaterQuantity<Pressure> pressure(Quantity<Pressure> quantity) {
        return quantity instanceof StatedPressure ours
                ? ours
                : WaterQuantity.adopt(quantity, Pressure.class, WaterUnits::pressure);
    }

    /**
     * Reads a pressure, such as {@code 420 µatm} or {@code 1013 mbar}.
     *
     * @param text a number with a decimal point and a unit
     * @return the pressure as stated
     * @throws UnreadableTextException if it cannot be read; "ppm" is refused, as it is a share of the air and no pressure
     */
    public static WaterQuantity<Pressure> parsePressure(String text) {
        return QuantityText.parse(text, WaterUnitNames.PRESSURE, WaterUnits::pressure);
    }

    /**
     * Returns a time span.
     *
     * @param value number in {@code unit}; finite
     * @param unit a unit of time, ours or foreign
     * @return the time as stated
     */
    public static WaterQuantity<Time> time(double value, Unit<Time> unit) {
        return new StatedTime(value, unit);
    }

    /**
     * Returns any library's time span as ours.
     *
     * @param quantity a time
     * @return the same statement
     */
    public static WaterQuantity<Time> time(Quantity<Time> quantity) {
        return quantity instanceof StatedTime ours ? ours : WaterQuantity.adopt(quantity, Time.class, WaterUnits::time);
    }

    /**
     * Returns a length, such as the depth of a bed.
     *
     * @param value number in {@code unit}; finite
     * @param unit a unit of length, ours or foreign
     * @return the length as stated
     */
    public static WaterQuantity<Length> length(double value, Unit<Length> unit) {
        return new StatedLength(value, unit);
    }

    /**
     * Returns any library's length as ours.
     *
     * @param quantity a length
     * @return the same statement
     */
    public static WaterQuantity<Length> length(Quantity<Length> quantity) {
        return quantity instanceof StatedLength ours
                ? ours
                : WaterQuantity.adopt(quantity, Length.class, WaterUnits::length);
    }

    /**
     * Returns a plain number or a share.
     *
     * @param value number in {@code unit}; finite
     * @param unit such as {@link #PERCENT}
     * @return the number as stated
     */
    public static WaterQuantity<Dimensionless> share(double value, Unit<Dimensionless> unit) {
        return new StatedShare(value, unit);
    }

    /**
     * Returns any library's plain number as ours.
     *
     * @param quantity a number, a share, parts per million by mass
     * @return the same statement
     */
    public static WaterQuantity<Dimensionless> share(Quantity<Dimensionless> quantity) {
        return quantity instanceof StatedShare ours
                ? ours
                : WaterQuantity.adopt(quantity, Dimensionless.class, WaterUnits::share);
    }

    /**
     * Reads a share, such as {@code 96 %} or {@code 0.96}.
     *
     * @param text a number with a decimal point, possibly with a unit
     * @return the share as stated
     * @throws UnreadableTextException if it cannot be read
     */
    public static WaterQuantity<Dimensionless> parseShare(String text) {
        return QuantityText.parse(text, WaterUnitNames.SHARE, WaterUnits::share);
    }

    /**
     * Returns the code of a unit in the Unified Code for Units of Measure (UCUM), case-sensitive form.
     *
     * <p>Equivalents are written {@code eq}. Scales that weigh CaCO₃, CaO or another basis as an amount have no UCUM code, nor has
     * hardness in meq/L: to UCUM, 1 meq/L is 1 mmol/L, and of hardness it is half of that.
     *
     * @param unit a unit of this library
     * @return the code, such as {@code [gal_us]}; empty if UCUM has none or the unit is not of this library
     */
    public static Optional<String> ucumCode(Unit<?> unit) {
        String code = KindScale.ucumCodeOf(Objects.requireNonNull(unit, "unit"));
        return code.isEmpty() ? Optional.empty() : Optional.of(code);
    }

    private static Unit<Volume> volume(String symbol, String ucum, Definition definition) {
        return KindScale.unit(Volume.class, Coherent.CUBIC_METRE, symbol, ucum, definition);
    }

    private static Unit<Length> length(String symbol, String ucum, Definition definition) {
        return KindScale.unit(Length.class, Coherent.METRE, symbol, ucum, definition);
    }

    private static Unit<Mass> mass(String symbol, String ucum, Definition definition) {
        return KindScale.unit(Mass.class, Coherent.KILOGRAM, symbol, ucum, definition);
    }

    private static Unit<Temperature> temperature(String symbol, String ucum, Definition definition, double zero) {
        return KindScale.shiftedUnit(Temperature.class, Coherent.KELVIN, symbol, ucum, definition, zero);
    }

    private static Unit<Pressure> pressure(String symbol, String ucum, Definition definition) {
        return KindScale.unit(Pressure.class, Coherent.PASCAL, symbol, ucum, definition);
    }

    private static Unit<Time> time(String symbol, String ucum, Definition definition) {
        return KindScale.unit(Time.class, Coherent.SECOND, symbol, ucum, definition);
    }

    private static Unit<Dimensionless> share(String symbol, String ucum, Definition definition) {
        return KindScale.unit(Dimensionless.class, Coherent.ONE, symbol, ucum, definition);
    }
}
