package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.testing.KnownWaters;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Water;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A filter of calcite leads to saturation and no further, and a softener behind it takes back the hardness alone. */
class NeutralizerPropertiesTest {

    @Provide
    Arbitrary<Water> waters() {
        return Arbitraries.oneOf(KnownWaters.balanced(), KnownWaters.analysed());
    }

    @Provide
    Arbitrary<Double> shares() {
        return Waters.shares();
    }

    private static OptionalDouble calcite(Water water) {
        return Speciation.of(water).saturationIndex(Mineral.CALCITE);
    }

    /** A water beyond saturation drops nothing in a filter of our kind; any other ends at it. */
    @Property(tries = 300)
    void calciteSaturatesOrPasses(@ForAll("waters") Water water) {
        Water after = Neutralizer.withCalcite().treat(water);
        if (calcite(water).orElse(-1) >= 0) {
            assertEquals(water, after);
        } else {
            assertEquals(0, calcite(after).orElseThrow(), 1e-9);
            assertTrue(hardnessOf(after) > hardnessOf(water));
        }
    }

    @Property(tries = 300)
    void moreContactDissolvesMoreAndRaisesThePH(
            @ForAll("waters") Water water, @ForAll("shares") double one, @ForAll("shares") double two) {
        Water less = Neutralizer.withCalcite().reaching(Math.min(one, two)).treat(water);
        Water more = Neutralizer.withCalcite().reaching(Math.max(one, two)).treat(water);
        assertTrue(hardnessOf(less) <= hardnessOf(more));
        assertTrue(Speciation.of(less).pH() <= Speciation.of(more).pH());
    }

    /** The measured pH of the outlet tells how much dissolved, as the share of saturation does. */
    @Property(tries = 200)
    void aMeasuredOutletLeadsToItsPH(@ForAll("waters") Water water, @ForAll("shares") double share) {
        Water partly = Neutralizer.withCalcite().reaching(share).treat(water);
        double measured = Speciation.of(partly).pH();
        Water again = Neutralizer.withCalcite().toPH(measured).treat(water);
        assertEquals(measured, Speciation.of(again).pH(), 1e-9);
    }

    @Property(tries = 300)
    void aSoftenerBehindItTakesTheHardnessAlone(@ForAll("waters") Water water) {
        Water behind = Neutralizer.withCalcite().treat(water);
        Water soft = Train.of(Neutralizer.withCalcite(), Softener.withSodium()).treat(water);
        assertEquals(0, hardnessOf(soft));
        assertEquals(behind.alkalinity(), soft.alkalinity());
        assertEquals(behind.carbon(), soft.carbon());
        assertEquals(behind.unmeasuredCharge(), soft.unmeasuredCharge());
        assertEquals(OptionalDouble.empty(), calcite(soft));
    }

    /** Less calcium outweighs the activity coefficients, which rise as sodium takes its place. */
    @Property
    void softeningLowersTheCalciteIndex(@ForAll("waters") Water water, @ForAll("shares") double leaking) {
        Softener softener = Softener.withSodium().leaking(hardness(leaking * hardnessOf(water)));
        Water soft = softener.treat(water);
        assertEquals(water.alkalinity(), soft.alkalinity());
        assertEquals(water.carbon(), soft.carbon());
        OptionalDouble before = calcite(water);
        OptionalDouble after = calcite(soft);
        if (leaking < 1 && before.isPresent() && after.isPresent()) {
            assertTrue(after.getAsDouble() < before.getAsDouble());
        } else {
            assertTrue(leaking == 1 || after.isEmpty());
        }
    }
}
