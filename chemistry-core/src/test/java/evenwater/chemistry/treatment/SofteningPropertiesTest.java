package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.HardnessCount;
import evenwater.chemistry.water.Water;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.Unit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of ion-exchange softening. */
class SofteningPropertiesTest {

    /** Relative rounding of a few operations. */
    private static final double ROUNDING = 1e-14;

    @Provide
    Arbitrary<Water> waters() {
        return Waters.any();
    }

    @Provide
    Arbitrary<Water> hardWaters() {
        return Waters.hard();
    }

    @Provide
    Arbitrary<Double> shares() {
        return Waters.shares();
    }

    /** Softeners with and without leakage, which is below the hardness of hard waters. */
    @Provide
    Arbitrary<Softener> softeners() {
        Arbitrary<Double> leakage =
                Arbitraries.doubles().between(0, 0.15).ofScale(6).injectNull(0.4);
        return Combinators.combine(Arbitraries.of(true, false), leakage).as((sodium, leaking) -> {
            Softener softener = sodium ? Softener.withSodium() : Softener.withPotassium();
            return leaking == null ? softener : softener.leaking(hardness(leaking));
        });
    }

    @Property
    void alkalinityAndUnmeasuredChargeStayBitForBit(
            @ForAll("softeners") Softener softener, @ForAll("waters") Water water, @ForAll("shares") double part) {
        double soft = hardnessOf(softener.treat(water));
        Softener withBypass = softener.bypassFor(hardness(soft + part * (hardnessOf(water) - soft)));
        for (Water treated : new Water[] {softener.treat(water), withBypass.treat(water)}) {
            assertEquals(water.alkalinity(), treated.alkalinity());
            assertEquals(water.unmeasuredCharge(), treated.unmeasuredCharge());
            assertEquals(water.carbon(), treated.carbon());
            assertEquals(water.temperature(), treated.temperature());
        }
    }

    @Property
    void equivalentsOfCationsAreConserved(@ForAll("softeners") Softener softener, @ForAll("waters") Water water) {
        Water soft = softener.treat(water);
        double removed = 0;
        for (Ion ion : HardnessCount.EDTA_TITRATION.ions()) {
            removed += 2 * (of(ion, water) - of(ion, soft));
        }
        double entered = of(softener.regenerant(), soft) - of(softener.regenerant(), water);
        assertEquals(removed, entered, ROUNDING * chargesIn(water));
        assertEquals(
                water.ionBalance().cations().getValue(),
                soft.ionBalance().cations().getValue(),
                ROUNDING * chargesIn(water));
        assertEquals(0, soft.netCharge().getValue(), 1e-12 * chargesIn(soft));
    }

    @Property
    void whatIsNotExchangedIsConserved(@ForAll("softeners") Softener softener, @ForAll("waters") Water water) {
        Water soft = softener.treat(water);
        Set<Ion> others = new TreeSet<>(water.ions());
        others.addAll(soft.ions());
        others.removeAll(HardnessCount.EDTA_TITRATION.ions());
        others.remove(softener.regenerant());
        others.forEach(ion -> assertEquals(water.total(ion), soft.total(ion)));
    }

    @Property
    void hardnessBehindTheResinIsTheLeakageOrThatOfASofterWater(
            @ForAll("waters") Water water, @ForAll @DoubleRange(min = 0, max = 2) @Scale(6) double leakage) {
        Water soft = Softener.withSodium().leaking(hardness(leakage)).behindResin(water);
        assertEquals(Math.min(leakage, hardnessOf(water)), hardnessOf(soft), ROUNDING * hardnessOf(water));
    }

    @Property
    void aHarderWaterGetsMoreSodiumAndNoSofter(
            @ForAll("softeners") Softener softener,
            @ForAll("hardWaters") Water water,
            @ForAll @DoubleRange(min = 0.01, max = 3) @Scale(6) double more) {
        Water harder = Water.builder()
                .total(Ion.CALCIUM, mmol(of(Ion.CALCIUM, water) + more))
                .total(Ion.MAGNESIUM, water.total(Ion.MAGNESIUM))
                .build();
        Water hard = Water.builder()
                .total(Ion.CALCIUM, water.total(Ion.CALCIUM))
                .total(Ion.MAGNESIUM, water.total(Ion.MAGNESIUM))
                .build();
        Ion added = softener.regenerant();
        assertTrue(of(added, softener.treat(harder)) > of(added, softener.treat(hard)));
        double slack = ROUNDING * hardnessOf(harder); // leakage is a small rest of it
        assertTrue(hardnessOf(softener.treat(harder)) >= hardnessOf(softener.treat(hard)) - slack);
    }

    @Property
    void moreLeakageMeansLessSodium(
            @ForAll("hardWaters") Water water,
            @ForAll @DoubleRange(min = 0, max = 0.1) @Scale(6) double less,
            @ForAll @DoubleRange(min = 0.11, max = 0.2) @Scale(6) double more) {
        Water tight = Softener.withSodium().leaking(hardness(less)).treat(water);
        Water leaky = Softener.withSodium().leaking(hardness(more)).treat(water);
        assertTrue(of(Ion.SODIUM, leaky) < of(Ion.SODIUM, tight));
        assertTrue(hardnessOf(leaky) > hardnessOf(tight));
    }

    @Property
    void theBypassHitsItsTarget(
            @ForAll("softeners") Softener softener, @ForAll("hardWaters") Water water, @ForAll("shares") double part) {
        double soft = hardnessOf(softener.treat(water));
        double target = soft + part * (hardnessOf(water) - soft);
        Softener withBypass = softener.bypassFor(hardness(target));
        double share = withBypass.bypassShare(water);
        assertTrue(share >= 0 && share <= 1);
        assertEquals(target, hardnessOf(withBypass.treat(water)), ROUNDING * hardnessOf(water));
    }

    @Property
    void theUnitOfTheTargetDoesNotMatter(@ForAll("hardWaters") Water water, @ForAll("shares") double part) {
        Hardness target = hardness(part * hardnessOf(water));
        for (Unit<Hardness> unit : Hardness.units()) {
            Water blend = Softener.withSodium().bypassFor(target.to(unit)).treat(water);
            assertEquals(part * hardnessOf(water), hardnessOf(blend), ROUNDING * hardnessOf(water), unit::toString);
        }
    }

    @Property
    void sodiumOfTheBlendDoesNotDependOnTheLeakage(
            @ForAll("hardWaters") Water water,
            @ForAll @DoubleRange(min = 0, max = 0.2) @Scale(6) double leakage,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double part) {
        double target = 0.2 + part * (hardnessOf(water) - 0.2); // hard waters have at least 0.2
        Softener tight = Softener.withSodium().bypassFor(hardness(target));
        Water ofTight = tight.treat(water);
        Water ofLeaky = tight.leaking(hardness(leakage)).treat(water);
        assertEquals(of(Ion.SODIUM, ofTight), of(Ion.SODIUM, ofLeaky), 10 * ROUNDING * chargesIn(water));
    }

    @Property
    void softeningTwiceIsSofteningOnce(
            @ForAll("softeners") Softener softener, @ForAll("hardWaters") Water water, @ForAll("shares") double part) {
        double soft = hardnessOf(softener.treat(water));
        Softener withBypass = softener.bypassFor(hardness(soft + part * (hardnessOf(water) - soft)));
        Water once = withBypass.treat(water);
        Water twice = withBypass.treat(once);
        for (Ion ion : water.ions()) {
            assertEquals(of(ion, once), of(ion, twice), 10 * ROUNDING * chargesIn(water), ion::symbol);
        }
    }

    @Property
    void softeningABlendIsBlendingTheSoftened(
            @ForAll("waters") Water a, @ForAll("waters") Water b, @ForAll("shares") double share) {
        Water blended = Softener.withSodium().treat(a.mixedWith(b, share));
        Water softened =
                Softener.withSodium().treat(a).mixedWith(Softener.withSodium().treat(b), share);
        assertEquals(of(Ion.SODIUM, softened), of(Ion.SODIUM, blended), ROUNDING * (chargesIn(a) + chargesIn(b)));
        assertEquals(0, hardnessOf(blended));
        assertEquals(0, hardnessOf(softened));
    }
}
