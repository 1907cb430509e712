package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.Unit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What is written is read back. */
class QuantityTextPropertiesTest {

    @Provide
    Arbitrary<Kind<?>> kinds() {
        return Arbitraries.of(Kind.all()).filter(kind -> kind.parse().isPresent());
    }

    /** Any finite double: all bit patterns, not only those that a person would write. */
    @Provide
    Arbitrary<Double> finite() {
        return Arbitraries.oneOf(
                Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite),
                Arbitraries.doubles().between(-1e4, 1e4).ofScale(3),
                Arbitraries.of(0.0, -0.0, Double.MIN_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, 1e7, 1e-3, 2e-3));
    }

    @Property(tries = 2000)
    void parseReadsWhatToStringWrites(@ForAll("kinds") Kind<?> kind, @ForAll("finite") double value, @ForAll int pick) {
        assertReadBack(kind, value, pick);
    }

    private static <Q extends Quantity<Q>> void assertReadBack(Kind<Q> kind, double value, int pick) {
        // below absolute zero there is only a difference, in kelvin
        Unit<Q> unit = kind == (Kind<?>) Kind.TEMPERATURE && value < 0
                ? Unchecked.unit(WaterUnits.KELVIN)
                : any(kind.units(), pick);
        WaterQuantity<Q> stated = kind.of(value, unit);
        assertEquals(stated, read(kind, stated.toString()));
    }

    @Property
    void spacesAndCapitalsMakeNoDifference(
            @ForAll("kinds") Kind<?> kind,
            @ForAll @IntRange(min = 0, max = 9999) int value,
            @ForAll int pick,
            @ForAll long seed) {
        assertReadHoweverWritten(kind, value, pick, new Random(seed));
    }

    private static <Q extends Quantity<Q>> void assertReadHoweverWritten(
            Kind<Q> kind, int value, int pick, Random random) {
        Unit<Q> unit = any(kind.units(), pick);
        StringBuilder written = new StringBuilder(" ".repeat(random.nextInt(3))).append(value);
        for (char c : unit.getSymbol().toCharArray()) {
            written.append(" ".repeat(random.nextInt(2)))
                    .append(random.nextBoolean() ? Character.toUpperCase(c) : Character.toLowerCase(c));
        }
        assertEquals(kind.of(value, unit), read(kind, written + " ".repeat(random.nextInt(3))));
    }

    @Property
    void textForPeopleOfAllDigitsHasTheNumber(@ForAll("thousands") double value) {
        // below 1000 there is no grouping, and 17 digits tell every double from its neighbours
        Hardness stated = Hardness.of(value, Hardness.GERMAN_DEGREE);
        assertEquals(stated, Hardness.parse(stated.toText(Locale.ROOT, 17)));
    }

    @Provide
    Arbitrary<Double> thousands() {
        return Arbitraries.doubles()
                .between(-1000, false, 1000, false)
                .ofScale(9)
                .map(value -> value / 7);
    }

    @Property
    void textForPeopleIsWithinHalfOfItsLastDigit(
            @ForAll("thousands") double value, @ForAll @IntRange(min = 1, max = 17) int digits) {
        double rounded = Hardness.parse(
                        Hardness.of(value, Hardness.GERMAN_DEGREE).toText(Locale.ROOT, digits))
                .getValue();
        // half a unit in the last of the digits, and the rounding of the double read back
        double halfDigit = value == 0 ? 0 : 0.5 * Math.pow(10, Math.floor(Math.log10(Math.abs(value))) + 1 - digits);
        assertEquals(value, rounded, halfDigit * (1 + 1e-9) + Math.ulp(value));
    }

    @Property
    void aCommaIsNeverReadAsSomethingElse(
            @ForAll("kinds") Kind<?> kind,
            @ForAll @IntRange(min = 0, max = 9999) int whole,
            @ForAll @IntRange(min = 0, max = 9999) int rest,
            @ForAll int pick) {
        String text = whole + "," + rest + " " + any(kind.units(), pick).getSymbol();
        UnreadableTextException refusal = assertThrows(UnreadableTextException.class, () -> read(kind, text));
        assertEquals(text.indexOf(','), refusal.index());
    }

    private static <Q extends Quantity<Q>> WaterQuantity<Q> read(Kind<Q> kind, String text) {
        return kind.parse().orElseThrow().apply(text);
    }

    private static <T> T any(List<T> choices, int pick) {
        return choices.get(Math.floorMod(pick, choices.size()));
    }
}
