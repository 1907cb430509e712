package evenwater.chemistry.quantity;

import static evenwater.chemistry.testing.Refused.argument;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.substance.Ion;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.Units;

class UnitConversionTest {

    private static List<Kind<?>> all() {
        return Kind.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void theFactorsLeadToTheAnswerOfTheConversion(Kind<?> kind) {
        compareAllPairs(kind);
    }

    private static <Q extends Quantity<Q>> void compareAllPairs(Kind<Q> kind) {
        for (Unit<Q> from : kind.units()) {
            for (Unit<Q> to : kind.units()) {
                WaterQuantity<Q> quantity = kind.of(333, from);
                double answer = quantity.in(to);
                // a double for each factor, and the digits that an offset such as 273.15 swallows
                double rounding = 1e-14
                        * Math.max(
                                Math.abs(answer),
                                1000 * quantity.conversionTo(to).subtracted());
                assertEquals(
                        answer, followed(quantity, to), Math.max(rounding, 1e-14 * answer), () -> from + " to " + to);
            }
        }
    }

    private static <Q extends Quantity<Q>> double followed(WaterQuantity<Q> quantity, Unit<Q> unit) {
        UnitConversion conversion = quantity.conversionTo(unit);
        BigDecimal value = BigDecimal.valueOf(quantity.getValue()).add(BigDecimal.valueOf(conversion.added()));
        BigDecimal divisor = BigDecimal.ONE;
        for (ConversionFactor factor : conversion.factors()) {
            if (factor.divides()) {
                divisor = divisor.multiply(factor.number());
            } else {
                value = value.multiply(factor.number());
            }
        }
        return value.divide(divisor, MathContext.DECIMAL128)
                .subtract(BigDecimal.valueOf(conversion.subtracted()))
                .doubleValue();
    }

    @ParameterizedTest
    @CsvSource({
        "22 gpg, mg/L CaCO3, × 64.79891 mg/grain ÷ 3.785411784 L/gal(US)",
        "22 gpg, °e, ÷ 3.785411784 L/gal(US) × 4.54609 L/gal(imp)",
        "1 °dH, mmol/L, × 10 (mg/L CaO)/°dH ÷ 56.077 mg CaO/mmol",
        "1 °dH, °fH, × 10 (mg/L CaO)/°dH ÷ 56.077 mg CaO/mmol × 100.086 mg CaCO3/mmol ÷ 10 (mg/L CaCO3)/°fH",
        "1 mmol/L, meq/L, × 2 meq/mmol",
        "1 mmol/L, mol/m³, ''"
    })
    void customaryUnitsAreLedBackToTheirLegalDefinitions(String hardness, String unit, String factors) {
        assertEquals(factors, shown(Hardness.parse(hardness).conversionTo(Hardness.parseUnit(unit))));
    }

    private static String shown(UnitConversion conversion) {
        return conversion.factors().stream().map(ConversionFactor::toString).collect(Collectors.joining(" "));
    }

    @Test
    void aWeighedAmountIsDividedByItsMolarMass() {
        AmountConcentration calcium = AmountConcentration.of(80, Ion.CALCIUM.milligramPerLitre());
        assertEquals("÷ 40.078 mg Ca²⁺/mmol", shown(calcium.conversionTo(AmountConcentration.MILLIMOLE_PER_LITRE)));

        Unit<AmountConcentration> gramPerLitre =
                Ion.CALCIUM.unit(MassConcentration.GRAM_PER_LITRE, Ion.CALCIUM.formula());
        assertEquals(
                "÷ 40.078 g Ca²⁺/mol × 1000 mmol/mol",
                shown(AmountConcentration.of(1, gramPerLitre).conversionTo(AmountConcentration.MILLIMOLE_PER_LITRE)));
        assertEquals(80 / 40.078, followed(calcium, AmountConcentration.MILLIMOLE_PER_LITRE), 1e-15);
    }

    @Test
    void aTemperatureHasOffsets() {
        UnitConversion conversion = WaterUnits.parseTemperature("77 °F").conversionTo(WaterUnits.CELSIUS);
        assertEquals(459.67, conversion.added());
        assertEquals(273.15, conversion.subtracted());
        assertEquals("× 5 K ÷ 9 °F", shown(conversion));
    }

    @Test
    void aForeignUnitIsOneFactor() {
        WaterQuantity<javax.measure.quantity.Volume> litres = WaterUnits.volume(2, Units.LITRE);
        assertEquals(
                "× 0.001 m³/l × 1000 L/m³ ÷ 3.785411784 L/gal(US)", shown(litres.conversionTo(WaterUnits.US_GALLON)));
    }

    @Test
    void aFactorHasAnInverse() {
        ConversionFactor grain = new ConversionFactor(new BigDecimal("64.79891"), "mg", "grain", false);
        assertEquals("÷ 64.79891 mg/grain", grain.inverse().toString());
        assertEquals(64.79891, grain.value());
        assertEquals(1 / 64.79891, grain.inverse().value());
        assertEquals("K", new ConversionFactor(BigDecimal.valueOf(5), "K", "", false).label());
    }

    @Test
    void aFactorIsPositive() {
        argument(
                "factor must be positive, but was 0 mg",
                () -> new ConversionFactor(BigDecimal.ZERO, "mg", "grain", false));
        assertThrows(NullPointerException.class, () -> Hardness.parse("1 gpg").conversionTo(null));
    }
}
