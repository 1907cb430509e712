package evenwater.chemistry.quantity;

import static evenwater.chemistry.quantity.Refusals.assertRefused;

import java.util.ArrayList;
import java.util.List;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Kinds that share a dimension do not mix, not even where raw types hide them from the compiler. */
class OtherKindsRefusedTest {

    private final Hardness hardness = Hardness.of(1, Hardness.GERMAN_DEGREE);
    private final Quantity<Hardness> disguised = Unchecked.quantity(Alkalinity.of(2, Alkalinity.FRENCH_DEGREE));
    private final Unit<Hardness> disguisedUnit = Unchecked.unit(Alkalinity.FRENCH_DEGREE);

    @Test
    void quantitiesOfAnotherKindAreRefusedByName() {
        String message = "expected a quantity of kind hardness, but was 2 °fH, of kind alkalinity";
        assertRefused(message, () -> hardness.add(disguised));
        assertRefused(message, () -> hardness.subtract(disguised));
        assertRefused(message, () -> hardness.compareTo(disguised));
        assertRefused(message, () -> hardness.isEquivalentTo(disguised));
        assertRefused(message, () -> hardness.ratioTo(disguised));
        assertRefused(message, () -> Hardness.from(disguised));
    }

    @Test
    void unitsOfAnotherKindAreRefusedByName() {
        String message = "hardness cannot be stated in °fH, a unit of alkalinity";
        assertRefused(message, () -> Hardness.of(1, disguisedUnit));
        assertRefused(message, () -> hardness.in(disguisedUnit));
        assertRefused(message, () -> hardness.to(disguisedUnit));
    }

    @Test
    @SuppressWarnings({"rawtypes", "unchecked"})
    void rawTypesAreNoWayRound() {
        Quantity raw = hardness;
        Unit rawUnit = Alkalinity.FRENCH_DEGREE;
        assertRefused(
                "expected a quantity of kind hardness, but was 2 °fH, of kind alkalinity",
                () -> raw.add(Alkalinity.of(2, Alkalinity.FRENCH_DEGREE)));
        assertRefused("hardness cannot be stated in °fH, a unit of alkalinity", () -> raw.to(rawUnit));
    }

    @Test
    void aCastOfTheUnitIsNoWayRound() {
        // indriya's asType compares dimensions at most
        assertRefused(
                "alkalinity cannot be stated in °dH, a unit of hardness",
                () -> Alkalinity.of(1, Hardness.GERMAN_DEGREE.asType(Alkalinity.class)));
    }

    @Test
    void aStatementInAForeignUnitStillKnowsItsKind() {
        Unit<Alkalinity> molePerLitre = Unchecked.unit(Units.MOLE.divide(Units.LITRE));
        Quantity<Hardness> foreign = Unchecked.quantity(Alkalinity.of(2, molePerLitre));
        String message = "expected a quantity of kind hardness, but was 2 mol/l, of kind alkalinity";
        assertRefused(message, () -> Hardness.from(foreign));
        assertRefused(message, () -> hardness.add(foreign));
    }

    @Test
    void multiplesOfAUnitStillKnowItsKind() {
        assertRefused(
                "alkalinity cannot be stated in °dH*2, a unit of hardness",
                () -> Alkalinity.of(1, Unchecked.unit(Hardness.GERMAN_DEGREE.multiply(2))));
        assertRefused(
                "alkalinity cannot be stated in m°dH, a unit of hardness",
                () -> Alkalinity.of(1, Unchecked.unit(MetricPrefix.MILLI(Hardness.GERMAN_DEGREE))));
        assertRefused(
                "hardness cannot be stated in k(m(mmol/L)), a unit of amount concentration",
                () -> Hardness.of(
                        1,
                        Unchecked.unit(
                                MetricPrefix.KILO(MetricPrefix.MILLI(AmountConcentration.MILLIMOLE_PER_LITRE)))));
    }

    @Test
    void quantitiesOfAnotherLibraryInOurUnitsKnowTheirKindToo() {
        Quantity<Hardness> foreign = Unchecked.quantity(Quantities.getQuantity(2, Alkalinity.FRENCH_DEGREE));
        String message = "hardness cannot be stated in °fH, a unit of alkalinity";
        assertRefused(message, () -> Hardness.from(foreign));
        assertRefused(message, () -> hardness.add(foreign));
        assertRefused(message, () -> hardness.compareTo(foreign));
    }

    @Test
    void unitsOfAnotherDimensionAreRefusedWithBothDimensions() {
        assertRefused(
                "hardness cannot be stated in g/l, a unit of [M]/[L]³, but only in units of [N]/[L]³",
                () -> Hardness.of(1, Unchecked.unit(Units.GRAM.divide(Units.LITRE))));
        assertRefused(
                "hardness cannot be stated in m, a unit of [L], but only in units of [N]/[L]³",
                () -> hardness.in(Unchecked.unit(Units.METRE)));
        assertRefused(
                "hardness cannot be stated in g/L, a unit of mass concentration",
                () -> hardness.to(Unchecked.unit(MassConcentration.GRAM_PER_LITRE)));
        assertRefused(
                "hardness cannot be stated in kg, a unit of [M], but only in units of [N]/[L]³",
                () -> hardness.add(Unchecked.quantity(Quantities.getQuantity(1, Units.KILOGRAM))));
    }

    @ParameterizedTest(name = "{0} and {1}")
    @MethodSource("pairsOfKinds")
    void noTwoKindsMix(Kind<?> kind, Kind<?> other) {
        assertNoMix(kind, other);
    }

    private static <Q extends Quantity<Q>, R extends Quantity<R>> void assertNoMix(Kind<Q> kind, Kind<R> other) {
        WaterQuantity<Q> ours = kind.of(300, kind.units().get(0));
        WaterQuantity<R> theirs = other.of(300, other.units().get(0));
        String expected = "expected a quantity of kind " + kindName(kind) + ", but was " + theirs + ", of kind "
                + kindName(other);
        assertRefused(expected, () -> ours.add(Unchecked.quantity(theirs)));
        assertRefused(expected, () -> ours.compareTo(Unchecked.quantity(theirs)));
        if (!kind.name().equals("time")) { // times have no from
            assertRefused(expected, () -> kind.from().apply(Unchecked.quantity(theirs)));
        }
        assertRefused(
                kindName(kind) + " cannot be stated in " + theirs.getUnit() + ", a unit of " + kindName(other),
                () -> ours.in(Unchecked.unit(theirs.getUnit())));
    }

    private static String kindName(Kind<?> kind) {
        return kind.name().equals("share") ? "dimensionless" : kind.name();
    }

    private static List<Arguments> pairsOfKinds() {
        List<Arguments> pairs = new ArrayList<>();
        for (Kind<?> kind : Kind.all()) {
            for (Kind<?> other : Kind.all()) {
                if (kind != other) {
                    pairs.add(Arguments.of(kind, other));
                }
            }
        }
        return pairs;
    }
}
