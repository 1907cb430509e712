package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The size of every unit, against sizes worked out independently and against printed ones. */
class ScaleFactorsTest {

    /** Promise of the library; a handful of double roundings need 1e-15. */
    private static final double PROMISED = 1e-12;

    private static List<Kind<?>> proportional() {
        return Kind.proportional();
    }

    private static List<Kind<?>> all() {
        return Kind.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyUnitConstantIsListedAndPinned(Kind<?> kind) throws IllegalAccessException {
        Set<Unit<?>> listed = Collections.newSetFromMap(new IdentityHashMap<>());
        listed.addAll(kind.units());
        for (Unit<?> constant : constants(kind)) {
            assertTrue(listed.remove(constant), () -> constant + " of " + kind + " is missing in units()");
            assertTrue(PinnedScales.sizes().containsKey(constant), () -> constant + " of " + kind + " has no pin");
        }
        assertEquals(Set.of(), listed, "units without a constant");
    }

    private static List<Unit<?>> constants(Kind<?> kind) throws IllegalAccessException {
        List<Unit<?>> constants = new ArrayList<>();
        for (Field field : kind.home().getFields()) {
            boolean ofKind = field.getGenericType() instanceof ParameterizedType type
                    && type.getRawType() == Unit.class
                    && type.getActualTypeArguments()[0] == kind.type();
            if (ofKind && Modifier.isStatic(field.getModifiers())) {
                constants.add((Unit<?>) field.get(null));
            }
        }
        return constants;
    }

    @Test
    void noPinIsLeftOver() {
        int units = Kind.all().stream().mapToInt(kind -> kind.units().size()).sum();
        assertEquals(units, PinnedScales.sizes().size());
    }

    @ParameterizedTest
    @MethodSource("proportional")
    void everyPairOfUnitsConvertsByTheRatioOfTheirSizes(Kind<?> kind) {
        assertPairs(kind);
    }

    private static <Q extends Quantity<Q>> void assertPairs(Kind<Q> kind) {
        for (Unit<Q> from : kind.units()) {
            for (Unit<Q> to : kind.units()) {
                double expected =
                        size(from).divide(size(to), MathContext.DECIMAL128).doubleValue();
                assertRelative(expected, kind.of(1, from).in(to), "1 " + from + " in " + to);
                assertRelative(
                        7 * expected, kind.of(7, from).to(to).getValue().doubleValue(), "7 " + from + " to " + to);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("proportional")
    void everyUnitHasItsSizeInUnitsOfAnotherLibraryInBothDirections(Kind<?> kind) throws IncommensurableException {
        assertCoherent(kind);
    }

    private static <Q extends Quantity<Q>> void assertCoherent(Kind<Q> kind) throws IncommensurableException {
        for (Unit<Q> unit : kind.units()) {
            double size = size(unit).doubleValue();
            double perCoherent =
                    BigDecimal.ONE.divide(size(unit), MathContext.DECIMAL128).doubleValue();
            assertRelative(size, kind.of(1, unit).in(kind.coherent()), unit + " in coherent units");
            assertRelative(perCoherent, kind.of(1, kind.coherent()).in(unit), "coherent unit in " + unit);
            // what indriya reads out of our unit
            assertRelative(size, unit.getConverterToAny(kind.coherentUnit()).convert(1.0), "indriya: " + unit);
            assertRelative(
                    perCoherent, kind.coherentUnit().getConverterToAny(unit).convert(1.0), "indriya to " + unit);
        }
    }

    @Test
    void degreesOfTemperatureHaveTheirSizes() {
        for (Unit<Temperature> from : Kind.TEMPERATURE.units()) {
            for (Unit<Temperature> to : Kind.TEMPERATURE.units()) {
                double step = WaterUnits.temperature(1001, from).in(to)
                        - WaterUnits.temperature(1, from).in(to);
                double expected =
                        size(from).divide(size(to), MathContext.DECIMAL128).doubleValue();
                assertRelative(expected, step / 1000, from + " in " + to);
            }
        }
    }

    /**
     * One unit of each scale as the reference table prints it: DIN 38409-6 (°dH), French usage (°fH), Clark 1841 (°e), Hem, USGS
     * Water-Supply Paper 2254 (gpg), ISO 6059 (mmol/L); all from memory, worked with M(CaCO₃) = 100.086 and M(CaO) = 56.077 g/mol.
     */
    @ParameterizedTest
    @CsvSource({
        "°dH,        0.178326230,   0.356652460,  17.8479591",
        "°fH,        0.0999140739,  0.199828148,  10.0000000",
        "°e,         0.142415198,   0.284830396,  14.2537675",
        "gpg,        0.171033522,   0.342067043,  17.1180610",
        "mg/L CaCO3, 0.00999140739, 0.0199828148, 1.00000000",
        "mmol/L,     1.00000000,    2.00000000,   100.086000",
        "meq/L,      0.500000000,   1.00000000,   50.0430000"
    })
    void hardnessAgreesWithThePrintedTable(String unit, String millimoles, String milliequivalents, String milligrams) {
        Hardness one = Hardness.of(1, Hardness.parseUnit(unit));
        assertPrinted(millimoles, one.in(Hardness.MILLIMOLE_PER_LITRE));
        assertPrinted(milliequivalents, one.in(Hardness.MILLIEQUIVALENT_PER_LITRE));
        assertPrinted(milligrams, one.in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
    }

    /** The upper triangle of the printed cross table; the lower one is the other direction. */
    @ParameterizedTest
    @CsvSource({
        "°dH, °fH, 0.560288152, 1.78479591",
        "°dH, °e,  0.798621707, 1.25215730",
        "°dH, gpg, 0.959104679, 1.04263906",
        "°fH, °e,  1.42537675,  0.701568900",
        "°fH, gpg, 1.71180610,  0.584178312",
        "°e,  gpg, 1.20094992,  0.832674185",
        "°dH, mmol/L, 5.60770000, 0.178326230",
        "°fH, mmol/L, 10.0086000, 0.0999140739",
        "°e,  mmol/L, 7.02172249, 0.142415198",
        "gpg, mmol/L, 5.84680705, 0.171033522"
    })
    void crossTableOfHardness(String row, String column, String ofColumnInRow, String ofRowInColumn) {
        assertPrinted(ofColumnInRow, Hardness.of(1, Hardness.parseUnit(column)).in(Hardness.parseUnit(row)));
        assertPrinted(ofRowInColumn, Hardness.of(1, Hardness.parseUnit(row)).in(Hardness.parseUnit(column)));
    }

    /** ISO 9963-1 (acid capacity), Standard Methods 2320 (CaCO₃), German and French trade usage; from memory. */
    @ParameterizedTest
    @CsvSource({
        "meq/L,      1.00000000,   50.0430000, 61.0160000",
        "mg/L CaCO3, 0.0199828148, 1.00000000, 1.21927143",
        "°dKH,       0.356652460,  17.8479591, 21.7615065",
        "°e,         0.284830396,  14.2537675, 17.3792",
        "°fH,        0.199828148,  10.0000000, 12.1927143"
    })
    void alkalinityAgreesWithThePrintedTable(
            String unit, String milliequivalents, String asCarbonate, String asBicarbonate) {
        Alkalinity one = Alkalinity.of(1, Alkalinity.parseUnit(unit));
        assertPrinted(milliequivalents, one.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE));
        assertPrinted(asCarbonate, one.in(Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
        assertPrinted(asBicarbonate, one.in(Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE));
    }

    /** Round values of handbooks, good to 0.1 %: their M(CaCO₃) runs from 100.0 to 100.09 g/mol. */
    @ParameterizedTest
    @CsvSource({
        "1, gpg, 17.12, mg/L CaCO3", // USGS Water-Supply Paper 2254, table of hardness scales; from memory
        "1, °dH, 17.85, mg/L CaCO3",
        "2.8, °dH, 1, meq/L", // 2.8 for 2.80385, off by 0.14 %
        "1, mmol/L, 5.6, °dH",
        "5, mg/L CaCO3, 0.1, meq/L"
    })
    void handbooksAgreeWithinTheirRounding(double value, String unit, double expected, String expectedUnit) {
        assertEquals(
                expected,
                Hardness.of(value, Hardness.parseUnit(unit)).in(Hardness.parseUnit(expectedUnit)),
                expected * 1.5e-3);
    }

    @Test
    void theGallonsDifferByTheirLegalRatio() {
        // 4.54609 / 3.785411784, whatever calcium carbonate weighs
        assertRelative(
                1.200949925504855,
                Hardness.of(1, Hardness.GRAIN_PER_US_GALLON).in(Hardness.ENGLISH_DEGREE),
                "grain per US gallon in grains per imperial gallon");
    }

    private static BigDecimal size(Unit<?> unit) {
        return PinnedScales.sizes().get(unit);
    }

    private static void assertRelative(double expected, double actual, String what) {
        assertEquals(expected, actual, Math.abs(expected) * PROMISED, what);
    }

    /** Equal but for one in the last printed digit: the table cuts off some and rounds others. */
    private static void assertPrinted(String printed, double actual) {
        BigDecimal expected = new BigDecimal(printed);
        assertEquals(expected.doubleValue(), actual, expected.ulp().doubleValue());
    }
}
