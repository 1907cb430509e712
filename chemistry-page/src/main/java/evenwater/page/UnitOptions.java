package evenwater.page;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import java.util.Map;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;

/** The units to choose from, by their symbols, with what people call them. */
final class UnitOptions {

    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("mmol/L", "millimoles per litre"),
            Map.entry("mol/m³", "moles per cubic metre"),
            Map.entry("meq/L", "milliequivalents per litre"),
            Map.entry("mg/L CaCO3", "as calcium carbonate"),
            Map.entry("mg/L CaO", "as calcium oxide"),
            Map.entry("mg/L HCO3", "as bicarbonate"),
            Map.entry("°dH", "German degrees"),
            Map.entry("°dKH", "German degrees of alkalinity"),
            Map.entry("°fH", "French degrees"),
            Map.entry("°e", "English degrees"),
            Map.entry("gpg", "grains per US gallon"));

    static final List<Control.Option> HARDNESS =
            Hardness.units().stream().map(UnitOptions::option).toList();
    static final List<Control.Option> ALKALINITY =
            Alkalinity.units().stream().map(UnitOptions::option).toList();
    static final List<Control.Option> TEMPERATURE =
            List.of(option(WaterUnits.CELSIUS), option(WaterUnits.FAHRENHEIT), option(WaterUnits.KELVIN));
    static final List<Control.Option> PERCENT = List.of(option(WaterUnits.PERCENT));

    /** For a pH, which has no unit. */
    static final List<Control.Option> NONE = List.of(new Control.Option("", ""));

    private UnitOptions() {}

    static List<Control.Option> of(Ion ion) {
        return List.of(option(ion.milligramPerLitre()), option(AmountConcentration.MILLIMOLE_PER_LITRE));
    }

    static Control.Option option(Unit<?> unit) {
        String symbol = unit.getSymbol();
        String name = name(symbol);
        return new Control.Option(symbol, name.equals(symbol) ? symbol : symbol + " – " + name);
    }

    /** What people call a unit, or its symbol where that says it. */
    static String name(String symbol) {
        return NAMES.getOrDefault(symbol, symbol);
    }

    /** The unit of an ion's concentration that an option means. */
    static Unit<AmountConcentration> unitOf(Ion ion, String symbol) {
        Unit<AmountConcentration> amount = AmountConcentration.MILLIMOLE_PER_LITRE;
        return symbol.equals(amount.getSymbol()) ? amount : ion.milligramPerLitre();
    }

    /** The unit of a temperature that an option means. */
    static Unit<Temperature> temperature(String symbol) {
        return switch (symbol) {
            case "°F" -> WaterUnits.FAHRENHEIT;
            case "K" -> WaterUnits.KELVIN;
            default -> WaterUnits.CELSIUS;
        };
    }
}
