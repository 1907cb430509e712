package evenwater.chemistry.quantity;

import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;

/** The spellings of the units in {@link WaterUnits}; loaded when text is read, not before. */
final class WaterUnitNames {

    static final UnitNames<Volume> VOLUME = new UnitNames<Volume>("volume")
            .unit(WaterUnits.LITRE, "l", "litre", "litres", "liter", "liters")
            .unit(WaterUnits.MILLILITRE, "ml", "cm³", "cc", "millilitre", "millilitres", "milliliter", "milliliters")
            .unit(WaterUnits.CUBIC_METRE, "m^3", "cubic metre", "cubic metres", "cubic meter", "cubic meters")
            .unit(WaterUnits.US_GALLON, "US gal", "gal US", "US gallon", "US gallons", "gal_us")
            .unit(
                    WaterUnits.IMPERIAL_GALLON,
                    "imp gal",
                    "gal imp",
                    "UK gal",
                    "gal UK",
                    "imperial gallon",
                    "imperial gallons",
                    "gal_br")
            .unit(WaterUnits.CUBIC_FOOT, "ft^3", "cu ft", "cubic foot", "cubic feet")
            .unit(WaterUnits.US_TEASPOON, "US tsp", "US teaspoon", "US teaspoons")
            .unit(WaterUnits.US_TABLESPOON, "US tbsp", "US tablespoon", "US tablespoons")
            .unit(WaterUnits.US_CUP, "US cup", "US cups")
            .ambiguous(
                    "US gallons of 3.785411784 L (write US gal) or imperial gallons of 4.54609 L (write imp gal)",
                    "gal",
                    "gallon",
                    "gallons")
            .ambiguous(
                    "US teaspoons of 4.92892159375 mL (write US tsp) or metric teaspoons of 5 mL",
                    "tsp",
                    "teaspoon",
                    "teaspoons")
            .ambiguous(
                    "US tablespoons of 14.78676478125 mL (write US tbsp) or metric tablespoons of 15 or 20 mL",
                    "tbsp",
                    "tablespoon",
                    "tablespoons")
            .ambiguous("US cups of 236.5882365 mL (write US cup) or metric cups of 250 mL", "cup", "cups");

    static final UnitNames<Mass> MASS = new UnitNames<Mass>("mass")
            .unit(WaterUnits.GRAM, "gram", "grams", "gramme", "grammes")
            .unit(WaterUnits.MILLIGRAM, "milligram", "milligrams")
            .unit(WaterUnits.KILOGRAM, "kilogram", "kilograms")
            .unit(WaterUnits.GRAIN, "grains")
            .unit(WaterUnits.POUND, "lbs", "pound", "pounds")
            .unit(WaterUnits.OUNCE, "ounce", "ounces")
            .ambiguous("grams (write g) or grains of 64.79891 mg (write grain)", "gr");

    static final UnitNames<Temperature> TEMPERATURE = new UnitNames<Temperature>("temperature")
            .unit(WaterUnits.CELSIUS, "C", "degC", "℃", "celsius", "degrees celsius")
            .unit(WaterUnits.FAHRENHEIT, "F", "degF", "℉", "fahrenheit", "degrees fahrenheit")
            .unit(WaterUnits.KELVIN, "kelvin")
            .ambiguous("degrees Celsius (write °C) or Fahrenheit (write °F)", "°", "deg", "degree", "degrees");

    static final UnitNames<Pressure> PRESSURE = new UnitNames<Pressure>("pressure")
            .unit(WaterUnits.PASCAL, "pascal")
            .unit(WaterUnits.KILOPASCAL, "kilopascal")
            .unit(WaterUnits.BAR)
            .unit(WaterUnits.MILLIBAR, "hPa", "millibar", "hectopascal")
            .unit(WaterUnits.ATMOSPHERE, "atmosphere", "atmospheres")
            .unit(WaterUnits.MICROATMOSPHERE, "microatmosphere", "microatmospheres")
            .ambiguous("a share of the air, no pressure: at 1 atm, 1 ppm by volume is 1 µatm", "ppm", "ppmv");

    static final UnitNames<Dimensionless> SHARE = new UnitNames<Dimensionless>("share")
            .unit(WaterUnits.PERCENT, "percent", "per cent")
            .unit(WaterUnits.ONE, "1")
            .unit(WaterUnits.MILLIGRAM_PER_KILOGRAM, "ppm")
            .unit(WaterUnits.GRAM_PER_KILOGRAM)
            .unit(WaterUnits.GRAIN_PER_POUND, "grains/lb", "grains per pound", "gr/lb");

    private WaterUnitNames() {}
}
