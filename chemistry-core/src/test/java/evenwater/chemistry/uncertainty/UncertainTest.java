package evenwater.chemistry.uncertainty;

import static evenwater.chemistry.quantity.Hardness.GERMAN_DEGREE;
import static evenwater.chemistry.quantity.Hardness.MILLIMOLE_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UncertainTest {

    private static Hardness degrees(double value) {
        return Hardness.of(value, GERMAN_DEGREE);
    }

    private static WaterQuantity<Temperature> celsius(double value) {
        return WaterUnits.temperature(value, WaterUnits.CELSIUS);
    }

    private static WaterQuantity<Temperature> kelvin(double value) {
        return WaterUnits.temperature(value, WaterUnits.KELVIN);
    }

    @Test
    void everyFormHasItsStandardUncertainty() {
        assertEquals(degrees(0.5), Uncertain.normal(degrees(8), degrees(0.5)).standardUncertainty());
        assertEquals(
                0.5,
                Uncertain.normal(degrees(8), degrees(0.5).to(MILLIMOLE_PER_LITRE))
                        .standardUncertainty()
                        .in(GERMAN_DEGREE),
                1e-15);
        assertEquals(degrees(0.5), Uncertain.expanded(degrees(8), degrees(1), 2).standardUncertainty());
        assertEquals(degrees(0.5), Uncertain.relative(degrees(10), 0.05).standardUncertainty());
        assertEquals(degrees(0.5), Uncertain.relative(degrees(-10), 0.05).standardUncertainty());
        assertEquals(degrees(0), Uncertain.relative(degrees(0), 0.05).standardUncertainty());
        assertEquals(degrees(0), Uncertain.exact(degrees(8)).standardUncertainty());
        Uncertain<Hardness> drop = Uncertain.between(degrees(4), degrees(5));
        assertEquals(degrees(4.5), drop.value());
        assertEquals(0.5 / Math.sqrt(3), drop.standardUncertainty().in(GERMAN_DEGREE), 1e-15);
        Uncertain<Hardness> flask = Uncertain.triangularBetween(degrees(4), degrees(5));
        assertEquals(degrees(4.5), flask.expectation());
        assertEquals(0.5 / Math.sqrt(6), flask.standardUncertainty().in(GERMAN_DEGREE), 1e-15);
        Uncertain<WaterQuantity<Dimensionless>> pH = Uncertain.normal(7.2, 0.1);
        assertEquals(0.1, pH.standardUncertainty().getValue());
        assertEquals("7.2", pH.name());
        assertEquals("pH 7.2 (u = 0.1)", pH.named("pH").toString());
    }

    @Test
    void aTemperatureHasItsUncertaintyInKelvin() {
        Uncertain<WaterQuantity<Temperature>> well = Uncertain.normal(celsius(11), kelvin(0.5));
        assertEquals(celsius(11), well.value());
        assertEquals(kelvin(0.5), well.standardUncertainty());
        Uncertain<WaterQuantity<Temperature>> house = Uncertain.between(celsius(10), kelvin(286.15));
        assertEquals(11.5, house.value().in(WaterUnits.CELSIUS), 1e-12);
        assertEquals(1.5 / Math.sqrt(3), house.standardUncertainty().in(WaterUnits.KELVIN), 1e-12);
        assertEquals(
                0.5,
                Uncertain.normal(WaterUnits.temperature(50, WaterUnits.FAHRENHEIT), kelvin(0.5))
                        .standardUncertainty()
                        .in(WaterUnits.KELVIN));
        Refused.argument(
                "a temperature difference must be stated in K, but was 0.5 °C",
                () -> Uncertain.normal(celsius(11), celsius(0.5)));
        assertEquals(
                "11 °C times 0.05 depends on the zero of its scale: convert it to K first",
                assertThrows(ArithmeticException.class, () -> Uncertain.relative(celsius(11), 0.05))
                        .getMessage());
    }

    @Test
    void anInputIsItselfAndNotItsNumbers() {
        Uncertain<Hardness> one = Uncertain.normal(degrees(8), degrees(0.5));
        assertEquals(one, one);
        assertNotEquals(one, Uncertain.normal(degrees(8), degrees(0.5)));
        assertNotEquals(one, one.named("GH"));
        assertEquals("GH", one.named("GH").name());
        assertEquals("GH", one.named("GH").notNegative().name());
    }

    @ParameterizedTest(name = "floor {0} u below the value")
    @CsvSource({ // λ = φ(α)/(1 - Φ(α)) of tables of φ and Φ; moved by λ, u times √(1 + αλ - λ²)
        "0, 0.797885, 0.602810",
        "1, 0.287600, 0.793528",
        "2, 0.055248, 0.941516",
        "3, 0.004438, 0.993311",
        "9, 0.000000, 1.000000"
    })
    void aFloorMovesTheExpectation(double below, double moved, double narrowed) {
        Uncertain<Hardness> cut = Uncertain.normal(degrees(8), degrees(0.5)).notBelow(degrees(8 - 0.5 * below));
        assertEquals(degrees(8), cut.value());
        assertEquals(8 + 0.5 * moved, cut.expectation().in(GERMAN_DEGREE), 1e-6);
        assertEquals(0.5 * narrowed, cut.standardUncertainty().in(GERMAN_DEGREE), 1e-6);
        Uncertain<Hardness> other = Uncertain.normal(degrees(8), degrees(0.5)).notAbove(degrees(8 + 0.5 * below));
        assertEquals(8 - 0.5 * moved, other.expectation().in(GERMAN_DEGREE), 1e-6);
        assertEquals(0.5 * narrowed, other.standardUncertainty().in(GERMAN_DEGREE), 1e-6);
    }

    @Test
    void noDrawIsBeyondAFloorOrACeiling() {
        Uncertain<Hardness> x =
                Uncertain.normal(degrees(1), degrees(1)).notNegative().notAbove(degrees(2));
        List<Double> drawn = MonteCarlo.seeded(1).outcomes(List.of(x), draw -> draw.valueOf(x));
        assertEquals(List.of(), drawn.stream().filter(d -> d < 0 || d > 2).toList());
        assertEquals(10_000, drawn.stream().distinct().count(), "none is moved to an end");
        assertEquals(degrees(1), x.expectation());
    }

    @Test
    void whatIsImpossibleIsRefused() {
        Refused.argument(
                "-1 °dH (u = 0.5 °dH) must not be below 0 °dH",
                () -> Uncertain.normal(degrees(-1), degrees(0.5)).notNegative());
        Refused.argument(
                "GH 1 °dH (u = 1.1547005383792517 °dH) must not be below 0 °dH: state ends that are possible instead of -1.0 and 3.0",
                () -> Uncertain.between(degrees(-1), degrees(3)).named("GH").notNegative());
        Refused.argument(
                "8 °dH (u = 0 °dH) must not be above 7 °dH",
                () -> Uncertain.exact(degrees(8)).notAbove(degrees(7)));
        Refused.argument(
                "8 °dH (u = 3.480326689956208 °dH) must not be above 8.01 °dH: less than a hundredth of it is possible: state an interval instead",
                () -> Uncertain.normal(degrees(8), degrees(5.7735026))
                        .notBelow(degrees(8))
                        .notAbove(degrees(8.01)));
        assertEquals(
                degrees(2),
                Uncertain.between(degrees(1), degrees(3)).notNegative().value());
        assertEquals(
                degrees(0),
                Uncertain.normal(degrees(0), degrees(0)).notNegative().expectation());
    }

    @Test
    void badNumbersAreRefused() {
        Refused.argument(
                "standard uncertainty of 8 °dH must not be negative, but was -0.5 °dH",
                () -> Uncertain.normal(degrees(8), degrees(-0.5)));
        Refused.argument("dimensionless must be a finite number, but was NaN ", () -> Uncertain.normal(7, Double.NaN));
        Refused.argument(
                "dimensionless must be a finite number, but was Infinity ",
                () -> Uncertain.between(7, Double.POSITIVE_INFINITY));
        Refused.argument(
                "ends must be in order, but were 5 °dH and 4 °dH", () -> Uncertain.between(degrees(5), degrees(4)));
        Refused.argument(
                "ends must be in order, but were 5 °dH and 4 °dH",
                () -> Uncertain.triangularBetween(degrees(5), degrees(4)));
        Refused.argument("-1.0E308 and 1.0E308 are too far apart for a double", () -> Uncertain.between(-1e308, 1e308));
        for (double k : new double[] {0, -2, Double.NaN, Double.POSITIVE_INFINITY}) {
            Refused.argument(
                    "coverage factor of 8 °dH must be positive and finite, but was " + k,
                    () -> Uncertain.expanded(degrees(8), degrees(1), k));
        }
        Refused.argument(
                "expanded uncertainty of 8 °dH must not be negative or too large, but was -1 °dH",
                () -> Uncertain.expanded(degrees(8), degrees(-1), 2));
        for (double share : new double[] {-0.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            Refused.argument(
                    "relative uncertainty of 8 °dH must be a finite number from 0, but was " + share,
                    () -> Uncertain.relative(degrees(8), share));
        }
        Refused.argument(
                "name of 8 °dH (u = 0 °dH) must not be blank",
                () -> Uncertain.exact(degrees(8)).named(" "));
        Refused.asNull("value", () -> Uncertain.exact(null));
        Refused.asNull("standardUncertainty", () -> Uncertain.normal(degrees(8), null));
    }

    @Test
    @SuppressWarnings({"unchecked", "rawtypes"})
    void anotherKindIsRefusedEvenThroughRawTypes() {
        Quantity wrong = Alkalinity.of(1, Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        Refused.argument(
                "expected a quantity of kind hardness, but was 1 meq/L, of kind alkalinity",
                () -> Uncertain.normal(degrees(8), wrong));
    }
}
