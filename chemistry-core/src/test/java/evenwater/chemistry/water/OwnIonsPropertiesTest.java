package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** An ion of one's own behaves like the constant of the same charge, its twin, in any water. */
class OwnIonsPropertiesTest {

    /** Relative rounding of a few operations, which run in another order for ions at another place. */
    private static final double ROUNDING = 1e-14;

    private static final Map<Integer, Ion> TWINS = Map.of(
            -2, Ion.THIOSULFATE,
            -1, Ion.IODIDE,
            0, Ion.HYDROGEN_SULFIDE,
            1, Ion.LITHIUM,
            2, Ion.ZINC,
            3, Ion.ALUMINIUM);

    @Provide
    Arbitrary<Ion> newIons() {
        return Waters.newIons();
    }

    @Provide
    Arbitrary<Water> waters() {
        return Waters.any();
    }

    @Provide
    Arbitrary<Double> shares() {
        return Waters.shares();
    }

    private static Ion twin(Ion ion) {
        return TWINS.get(ion.chargeNumber());
    }

    /** The water with one more ion, or another amount of it, and the alkalinity that this makes. */
    private static Water with(Ion ion, double millimoles, Water water) {
        WaterBuilder builder = Water.builder().unmeasuredCharge(water.unmeasuredCharge());
        water.ions().stream()
                .filter(other -> !other.equals(Waters.LEAD) && !other.equals(Ion.ALUMINIUM)) // a new ion or its twin
                .forEach(other -> builder.total(other, water.total(other)));
        return builder.total(ion, mmol(millimoles)).build();
    }

    @Property
    void viewsOfBothAreAlike(
            @ForAll("newIons") Ion ion,
            @ForAll @DoubleRange(min = 0, max = 5) @Scale(6) double amount,
            @ForAll("waters") Water rest) {
        Water own = with(ion, amount, rest);
        Water builtIn = with(twin(ion), amount, rest);
        double rounding = ROUNDING * chargesIn(own);
        assertEquals(mmol(amount), own.total(ion));
        assertEquals(alkalinityOf(builtIn), alkalinityOf(own), rounding);
        assertEquals(builtIn.ionicStrength().getValue(), own.ionicStrength().getValue(), rounding);
        assertEquals(
                builtIn.ionBalance().cations().getValue(),
                own.ionBalance().cations().getValue(),
                rounding);
        assertEquals(
                builtIn.ionBalance().anions().getValue(),
                own.ionBalance().anions().getValue(),
                rounding);
        assertEquals(builtIn.hardness(), own.hardness());
        assertEquals(builtIn.ions().size(), own.ions().size());
        assertEquals(0, own.netCharge().getValue(), 1e-12 * chargesIn(own));
    }

    @Property
    void blendsOfBothAreAlike(
            @ForAll("newIons") Ion ion,
            @ForAll @DoubleRange(min = 0, max = 5) @Scale(6) double amount,
            @ForAll("waters") Water rest,
            @ForAll("waters") Water other,
            @ForAll @DoubleRange(min = 0, max = 5) @Scale(6) double amountOfOther,
            @ForAll("shares") double share) {
        Water own = with(ion, amount, rest).mixedWith(with(ion, amountOfOther, other), share);
        Water builtIn = with(twin(ion), amount, rest).mixedWith(with(twin(ion), amountOfOther, other), share);
        assertEquals(builtIn.total(twin(ion)), own.total(ion));
        assertEquals(alkalinityOf(builtIn), alkalinityOf(own), ROUNDING * (chargesIn(own) + chargesIn(other)));
        assertEquals(builtIn.total(Ion.CALCIUM), own.total(Ion.CALCIUM));
        assertEquals(builtIn.dilutedBy(3).total(twin(ion)), own.dilutedBy(3).total(ion));
    }

    @Property
    void bothAreExchangedAlike(
            @ForAll("newIons") Ion ion,
            @ForAll @DoubleRange(min = 0, max = 5) @Scale(6) double amount,
            @ForAll("waters") Water rest,
            @ForAll("shares") double share) {
        Assume.that(ion.chargeNumber() > 0);
        Water own = with(ion, amount, rest);
        Water builtIn = with(twin(ion), amount, rest);
        Water ofOwn = own.plus(Change.exchanging(own, List.of(ion), Ion.SODIUM, share));
        Water ofBuiltIn = builtIn.plus(Change.exchanging(builtIn, List.of(twin(ion)), Ion.SODIUM, share));
        assertEquals(ofBuiltIn.total(twin(ion)), ofOwn.total(ion));
        assertEquals(ofBuiltIn.total(Ion.SODIUM), ofOwn.total(Ion.SODIUM));
        assertEquals(own.alkalinity(), ofOwn.alkalinity());
        Water takenUp = own.plus(Change.exchanging(own, List.of(Ion.CALCIUM), ion, share));
        double entered = 2 * share * of(Ion.CALCIUM, own) / ion.chargeNumber();
        assertEquals(amount + entered, of(ion, takenUp), ROUNDING * (amount + entered));
    }

    @Property
    void watersOfTwoNewIonsAreEqualIfTheIonsAre(
            @ForAll("newIons") Ion one,
            @ForAll("newIons") Ion other,
            @ForAll @DoubleRange(min = 1e-6, max = 5) @Scale(6) double amount,
            @ForAll("waters") Water rest) {
        Water a = with(one, amount, rest);
        Water b = with(other, amount, rest);
        assertEquals(one.equals(other), a.equals(b));
        assertEquals(one.equals(other), a.toString().equals(b.toString()));
        assertTrue(!a.equals(b) || a.hashCode() == b.hashCode());
        assertNotEquals(a, with(one, 0, rest));
        assertEquals(with(other, 0, rest), with(one, 0, rest));
    }
}
