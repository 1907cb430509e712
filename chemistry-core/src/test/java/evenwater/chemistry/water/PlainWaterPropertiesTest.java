package evenwater.chemistry.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Amounts;
import evenwater.chemistry.testing.Json;
import evenwater.chemistry.testing.Waters;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What the plain form of a water keeps: everything, to the last bit, whoever writes and reads it. */
class PlainWaterPropertiesTest {

    @Provide
    Arbitrary<Water> waters() {
        return Waters.any();
    }

    @Provide
    Arbitrary<Change> additions() {
        return Waters.additions();
    }

    @Provide
    Arbitrary<Double> shares() {
        return Waters.shares();
    }

    @Provide
    Arbitrary<Ion> newIons() {
        return Waters.newIons();
    }

    /** Equal text says more than equality: it shows all digits, the names of own ions do not count in either. */
    private static void assertKept(Water water) {
        PlainWater plain = water.toPlain();
        for (PlainWater read : new PlainWater[] {
            plain,
            Json.throughJackson(plain, PlainWater.class),
            Json.throughGson(plain, PlainWater.class),
            Json.throughDoubles(plain, PlainWater.class)
        }) {
            Water back = Water.from(read);
            assertEquals(water, back);
            assertEquals(water.toString(), back.toString());
            assertEquals(water.netCharge(), back.netCharge()); // both sides of the double entry as they were
            assertEquals(plain, back.toPlain());
        }
    }

    @Property
    void aStatedWaterComesBackToTheLastBit(@ForAll("waters") Water water) {
        assertKept(water);
    }

    @Property
    void soDoesOneWithAHistory(
            @ForAll("waters") Water water,
            @ForAll("waters") Water other,
            @ForAll("additions") Change change,
            @ForAll("shares") double share) {
        assertKept(
                water.mixedWith(other, share).concentratedBy(7.3).plus(change).dilutedBy(1 / 0.7));
    }

    @Property
    void soDoIonsThatNobodyHasNamedBefore(@ForAll("waters") Water water, @ForAll("newIons") Ion ion) {
        Assume.that(ion.isReferenceForm());
        WaterBuilder builder = Water.builder().total(ion, Amounts.mmol(0.001));
        water.ions().forEach(known -> builder.total(known, water.total(known)));
        Water own = builder.build();
        assertKept(own);
        assertEquals(
                ion.name(),
                Water.from(own.toPlain()).ions().stream()
                        .filter(ion::equals)
                        .findFirst()
                        .orElseThrow()
                        .name());
    }
}
