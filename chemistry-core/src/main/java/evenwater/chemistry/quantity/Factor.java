package evenwater.chemistry.quantity;

import static evenwater.chemistry.kernel.ExactUnits.CUBIC_FOOT_IN_1E_9_LITRE;
import static evenwater.chemistry.kernel.ExactUnits.GRAIN_IN_1E_5_MILLIGRAM;
import static evenwater.chemistry.kernel.ExactUnits.IMPERIAL_GALLON_IN_1E_5_LITRE;
import static evenwater.chemistry.kernel.ExactUnits.POUND_IN_1E_5_GRAM;
import static evenwater.chemistry.kernel.ExactUnits.US_GALLON_IN_1E_9_LITRE;

import java.io.Serializable;
import java.math.BigDecimal;

/**
 * An exact factor that definitions of units are made of: {@code num / den} of a unit for each one of another.
 *
 * @param num numerator; above 0
 * @param den denominator; above 0; the quotient is a finite decimal
 * @param unit what is counted
 * @param perUnit for one of what
 */
record Factor(long num, long den, String unit, String perUnit) implements Serializable {

    static final Factor GRAIN = new Factor(GRAIN_IN_1E_5_MILLIGRAM, 1_00000, "mg", "grain");
    static final Factor KILOGRAIN = whole(1000, "grain", "kgr");
    static final Factor POUND = new Factor(POUND_IN_1E_5_GRAM, 1_00000, "g", "lb");
    static final Factor OUNCE = new Factor(POUND_IN_1E_5_GRAM, 16_00000, "g", "oz");
    static final Factor US_GALLON = new Factor(US_GALLON_IN_1E_9_LITRE, 1_000_000_000, "L", "gal(US)");
    static final Factor US_TEASPOON = new Factor(US_GALLON_IN_1E_9_LITRE, 768_000_000, "mL", "tsp(US)");
    static final Factor US_TABLESPOON = new Factor(US_GALLON_IN_1E_9_LITRE, 256_000_000, "mL", "tbsp(US)");
    static final Factor US_CUP = new Factor(US_GALLON_IN_1E_9_LITRE, 16_000_000, "mL", "cup(US)");
    static final Factor IMPERIAL_GALLON = new Factor(IMPERIAL_GALLON_IN_1E_5_LITRE, 1_00000, "L", "gal(imp)");
    static final Factor CUBIC_FOOT = new Factor(CUBIC_FOOT_IN_1E_9_LITRE, 1_000_000_000, "L", "ft³");

    static final Factor CALCIUM_CARBONATE = new Factor(MolarMasses.CALCIUM_CARBONATE, 1_0000, "mg CaCO3", "mmol");
    static final Factor CALCIUM_OXIDE = new Factor(MolarMasses.CALCIUM_OXIDE, 1_0000, "mg CaO", "mmol");
    static final Factor BICARBONATE = new Factor(MolarMasses.BICARBONATE, 1_0000, "mg HCO3", "mmol");

    /** Of an ion or a mineral of charge two. */
    static final Factor CHARGE_TWO = whole(2, "meq", "mmol");

    static final Factor GERMAN_DEGREE = whole(10, "(mg/L CaO)", "°dH");
    static final Factor DEGREE_OF_CARBONATE_HARDNESS = whole(10, "(mg/L CaO)", "°dKH");
    static final Factor FRENCH_DEGREE = whole(10, "(mg/L CaCO3)", "°fH");

    static final Factor INCH = new Factor(254, 10, "mm", "in");

    static final Factor LITRES = whole(1000, "L", "m³");
    static final Factor MILLILITRES = whole(1000, "mL", "L");
    static final Factor MILLIMETRES = whole(1000, "mm", "m");
    static final Factor GRAMS = whole(1000, "g", "kg");
    static final Factor MILLIGRAMS = whole(1000, "mg", "g");
    static final Factor MICROGRAMS = whole(1000, "µg", "mg");
    static final Factor SECONDS = whole(60, "s", "min");
    static final Factor MINUTES = whole(60, "min", "h");
    static final Factor HOUR = whole(3600, "s", "h");
    static final Factor DAY = whole(86_400, "s", "d");
    static final Factor HOURS = whole(24, "h", "d");

    static Factor whole(long number, String unit, String perUnit) {
        return new Factor(number, 1, unit, perUnit);
    }

    BigDecimal number() {
        return BigDecimal.valueOf(num).divide(BigDecimal.valueOf(den));
    }
}
