package evenwater.chemistry.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import javax.measure.Unit;

/**
 * The size of every unit in coherent SI units, worked out once more and in decimal arithmetic, from definitions alone.
 *
 * <p>Inch, pound and grain: international yard and pound agreement of 1959. US gallon (231 cubic inches): NIST Handbook 44, Appendix
 * C. Imperial gallon: UK Weights and Measures Act 1985, Schedule 1. Atomic weights, abridged: T. Prohaska et al., Pure Appl. Chem. 94
 * (2022) 573, Table 2. Citations from memory.
 */
final class PinnedScales {

    private static final MathContext DIGITS = MathContext.DECIMAL128;

    private static final BigDecimal CUBIC_INCH = number("0.0254").pow(3); // m³
    private static final BigDecimal US_GALLON = CUBIC_INCH.multiply(number("231"));
    private static final BigDecimal CUBIC_FOOT = CUBIC_INCH.multiply(number("1728"));
    private static final BigDecimal IMPERIAL_GALLON = number("0.00454609");
    private static final BigDecimal LITRE = number("0.001");
    private static final BigDecimal CUBIC_METRE = BigDecimal.ONE;

    private static final BigDecimal GRAIN = number("0.00006479891"); // kg
    private static final BigDecimal POUND = number("0.45359237");
    private static final BigDecimal MILLIGRAM = number("0.000001");
    private static final BigDecimal GRAM = number("0.001");

    private static final BigDecimal CALCIUM_CARBONATE = perMole("40.078", "12.011", "15.999", "15.999", "15.999");
    private static final BigDecimal CALCIUM_OXIDE = perMole("40.078", "15.999");
    private static final BigDecimal BICARBONATE = perMole("1.008", "12.011", "15.999", "15.999", "15.999");

    private static final BigDecimal MINUTE = number("60"); // s
    private static final BigDecimal HOUR = number("3600");
    private static final BigDecimal DAY = number("86400");

    private static final Map<Unit<?>, BigDecimal> SIZES = new IdentityHashMap<>();

    static {
        hardness();
        alkalinity();
        concentrations();
        softener();
        everyday();
    }

    private PinnedScales() {}

    /** Sizes in coherent units; for temperatures the size of a degree. */
    static Map<Unit<?>, BigDecimal> sizes() {
        return Collections.unmodifiableMap(SIZES);
    }

    /** Counts alkaline earths: one for each CaCO₃ or CaO, half of one for each equivalent. */
    private static void hardness() {
        pin(Hardness.MILLIMOLE_PER_LITRE, "1");
        pin(Hardness.MOLE_PER_CUBIC_METRE, "1");
        pin(Hardness.MILLIEQUIVALENT_PER_LITRE, "0.5");
        pin(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, amount(MILLIGRAM, CALCIUM_CARBONATE, LITRE));
        pin(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_OXIDE, amount(MILLIGRAM, CALCIUM_OXIDE, LITRE));
        pin(Hardness.GERMAN_DEGREE, amount(times(MILLIGRAM, 10), CALCIUM_OXIDE, LITRE));
        pin(Hardness.FRENCH_DEGREE, amount(times(MILLIGRAM, 10), CALCIUM_CARBONATE, LITRE));
        pin(Hardness.ENGLISH_DEGREE, amount(GRAIN, CALCIUM_CARBONATE, IMPERIAL_GALLON));
        pin(Hardness.GRAIN_PER_US_GALLON, amount(GRAIN, CALCIUM_CARBONATE, US_GALLON));
        pin(CompensatedHardness.GRAIN_PER_US_GALLON, amount(GRAIN, CALCIUM_CARBONATE, US_GALLON));
        pin(CompensatedHardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, amount(MILLIGRAM, CALCIUM_CARBONATE, LITRE));
        pin(CompensatedHardness.GERMAN_DEGREE, amount(times(MILLIGRAM, 10), CALCIUM_OXIDE, LITRE));
    }

    /** Counts the acid taken up: two for each CaCO₃ or CaO, one for each HCO₃⁻. */
    private static void alkalinity() {
        pin(Alkalinity.MILLIEQUIVALENT_PER_LITRE, "1");
        pin(Alkalinity.MILLIMOLE_PER_LITRE, "1");
        pin(Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, times(amount(MILLIGRAM, CALCIUM_CARBONATE, LITRE), 2));
        pin(Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE, amount(MILLIGRAM, BICARBONATE, LITRE));
        pin(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS, times(amount(times(MILLIGRAM, 10), CALCIUM_OXIDE, LITRE), 2));
        pin(Alkalinity.FRENCH_DEGREE, times(amount(times(MILLIGRAM, 10), CALCIUM_CARBONATE, LITRE), 2));
        pin(Alkalinity.ENGLISH_DEGREE, times(amount(GRAIN, CALCIUM_CARBONATE, IMPERIAL_GALLON), 2));
        pin(Alkalinity.GRAIN_PER_US_GALLON, times(amount(GRAIN, CALCIUM_CARBONATE, US_GALLON), 2));
    }

    private static void concentrations() {
        pin(AmountConcentration.MOLE_PER_LITRE, "1000");
        pin(AmountConcentration.MILLIMOLE_PER_LITRE, "1");
        pin(AmountConcentration.MICROMOLE_PER_LITRE, "0.001");
        pin(AmountConcentration.NANOMOLE_PER_LITRE, "0.000001");
        pin(AmountConcentration.MOLE_PER_CUBIC_METRE, "1");
        pin(EquivalentConcentration.EQUIVALENT_PER_LITRE, "1000");
        pin(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE, "1");
        pin(EquivalentConcentration.MICROEQUIVALENT_PER_LITRE, "0.001");
        pin(EquivalentConcentration.EQUIVALENT_PER_CUBIC_METRE, "1");
        pin(MassConcentration.GRAM_PER_LITRE, ratio(GRAM, LITRE));
        pin(MassConcentration.MILLIGRAM_PER_LITRE, ratio(MILLIGRAM, LITRE));
        pin(MassConcentration.MICROGRAM_PER_LITRE, ratio(number("0.000000001"), LITRE));
        pin(MassConcentration.KILOGRAM_PER_LITRE, ratio(BigDecimal.ONE, LITRE));
        pin(MassConcentration.KILOGRAM_PER_CUBIC_METRE, "1");
        pin(MassConcentration.MILLIGRAM_PER_CUBIC_METRE, ratio(MILLIGRAM, CUBIC_METRE));
        pin(MassConcentration.GRAIN_PER_US_GALLON, ratio(GRAIN, US_GALLON));
        pin(MassConcentration.POUND_PER_US_GALLON, ratio(POUND, US_GALLON));
        pin(MolarMass.GRAM_PER_MOLE, GRAM);
        pin(MolarMass.KILOGRAM_PER_MOLE, "1");
        pin(EquivalentMass.GRAM_PER_EQUIVALENT, GRAM);
        pin(EquivalentMass.KILOGRAM_PER_EQUIVALENT, "1");
        pin(Conductivity.MICROSIEMENS_PER_CENTIMETRE, "0.0001");
        pin(Conductivity.MILLISIEMENS_PER_CENTIMETRE, "0.1");
        pin(Conductivity.MILLISIEMENS_PER_METRE, "0.001");
        pin(Conductivity.SIEMENS_PER_METRE, "1");
    }

    private static void softener() {
        pin(ExchangeCapacity.EQUIVALENT_PER_LITRE, "1000");
        pin(
                ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT,
                times(amount(times(GRAIN, 1000), CALCIUM_CARBONATE, CUBIC_FOOT), 2));
        pin(ExchangeCapacity.GRAM_PER_LITRE_CALCIUM_CARBONATE, times(amount(GRAM, CALCIUM_CARBONATE, LITRE), 2));
        pin(SaltDose.GRAM_PER_LITRE, ratio(GRAM, LITRE));
        pin(SaltDose.POUND_PER_CUBIC_FOOT, ratio(POUND, CUBIC_FOOT));
        pin(FlowRate.LITRE_PER_MINUTE, ratio(LITRE, MINUTE));
        pin(FlowRate.LITRE_PER_HOUR, ratio(LITRE, HOUR));
        pin(FlowRate.CUBIC_METRE_PER_HOUR, ratio(CUBIC_METRE, HOUR));
        pin(FlowRate.US_GALLON_PER_MINUTE, ratio(US_GALLON, MINUTE));
        pin(FlowRate.IMPERIAL_GALLON_PER_MINUTE, ratio(IMPERIAL_GALLON, MINUTE));
        pin(FlowRate.US_GALLON_PER_DAY, ratio(US_GALLON, DAY));
        pin(FlowRate.LITRE_PER_DAY, ratio(LITRE, DAY));
    }

    private static void everyday() {
        pin(WaterUnits.LITRE, LITRE);
        pin(WaterUnits.MILLILITRE, ratio(LITRE, number("1000")));
        pin(WaterUnits.CUBIC_METRE, CUBIC_METRE);
        pin(WaterUnits.US_GALLON, US_GALLON);
        pin(WaterUnits.IMPERIAL_GALLON, IMPERIAL_GALLON);
        pin(WaterUnits.CUBIC_FOOT, CUBIC_FOOT);
        pin(WaterUnits.US_CUP, ratio(US_GALLON, number("16")));
        pin(WaterUnits.US_TABLESPOON, ratio(US_GALLON, number("256")));
        pin(WaterUnits.US_TEASPOON, ratio(US_GALLON, number("768")));
        pin(WaterUnits.METRE, "1");
        pin(WaterUnits.MILLIMETRE, "0.001");
        pin(WaterUnits.INCH, "0.0254");
        pin(WaterUnits.GRAM, GRAM);
        pin(WaterUnits.MILLIGRAM, MILLIGRAM);
        pin(WaterUnits.KILOGRAM, "1");
        pin(WaterUnits.GRAIN, GRAIN);
        pin(WaterUnits.POUND, POUND);
        pin(WaterUnits.OUNCE, ratio(POUND, number("16")));
        pin(WaterUnits.SECOND, "1");
        pin(WaterUnits.MINUTE, MINUTE);
        pin(WaterUnits.HOUR, HOUR);
        pin(WaterUnits.PASCAL, "1");
        pin(WaterUnits.KILOPASCAL, "1000");
        pin(WaterUnits.BAR, "100000");
        pin(WaterUnits.MILLIBAR, "100");
        pin(WaterUnits.ATMOSPHERE, "101325");
        pin(WaterUnits.MICROATMOSPHERE, "0.101325");
        pin(WaterUnits.DAY, DAY);
        pin(WaterUnits.ONE, "1");
        pin(WaterUnits.PERCENT, "0.01");
        pin(WaterUnits.MILLIGRAM_PER_KILOGRAM, "0.000001");
        pin(WaterUnits.GRAM_PER_KILOGRAM, "0.001");
        pin(WaterUnits.GRAIN_PER_POUND, ratio(GRAIN, POUND));
        pin(WaterUnits.KELVIN, "1");
        pin(WaterUnits.CELSIUS, "1");
        pin(WaterUnits.FAHRENHEIT, ratio(number("5"), number("9")));
    }

    private static void pin(Unit<?> unit, String size) {
        pin(unit, number(size));
    }

    private static void pin(Unit<?> unit, BigDecimal size) {
        SIZES.put(unit, size);
    }

    /** Amount of a substance per volume, in mol/m³. */
    private static BigDecimal amount(BigDecimal kilograms, BigDecimal kilogramsPerMole, BigDecimal cubicMetres) {
        return ratio(ratio(kilograms, kilogramsPerMole), cubicMetres);
    }

    private static BigDecimal perMole(String... atomicWeights) {
        BigDecimal sum = BigDecimal.ZERO;
        for (String atomicWeight : atomicWeights) {
            sum = sum.add(number(atomicWeight));
        }
        return ratio(sum, number("1000"));
    }

    private static BigDecimal ratio(BigDecimal a, BigDecimal b) {
        return a.divide(b, DIGITS);
    }

    private static BigDecimal times(BigDecimal a, int factor) {
        return a.multiply(BigDecimal.valueOf(factor));
    }

    private static BigDecimal number(String decimal) {
        return new BigDecimal(decimal);
    }
}
