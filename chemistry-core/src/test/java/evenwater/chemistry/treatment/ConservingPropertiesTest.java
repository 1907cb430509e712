package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.carbonOf;
import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.KnownWaters;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Water;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What treatments leave alone, and by how much together they move what they move. */
class ConservingPropertiesTest {

    private static final Set<Ion> HARDNESS =
            Set.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.STRONTIUM, Ion.BARIUM, Ion.IRON_II, Ion.MANGANESE_II);

    @Provide
    Arbitrary<Water> waters() {
        return Arbitraries.oneOf(KnownWaters.balanced(), KnownWaters.analysed());
    }

    @Provide
    Arbitrary<Double> shares() {
        return Waters.shares();
    }

    /** Every ion but these stays as it was, and so does the charge that nobody measured. */
    private static void assertStays(Water before, Water after, Set<Ion> moved) {
        assertEquals(before.unmeasuredCharge(), after.unmeasuredCharge());
        assertEquals(before.temperature(), after.temperature());
        Set<Ion> all = new TreeSet<>(before.ions());
        all.addAll(after.ions());
        all.removeAll(moved);
        for (Ion ion : all) {
            assertEquals(before.total(ion), after.total(ion));
        }
    }

    private static double gained(Ion ion, Water before, Water after) {
        return of(ion, after) - of(ion, before);
    }

    private static void assertGains(double equivalents, double carbon, Water before, Water after) {
        double rounding = 1e-12 * (chargesIn(before) + chargesIn(after));
        assertEquals(alkalinityOf(before) + equivalents, alkalinityOf(after), rounding);
        assertEquals(
                carbonOf(before) + carbon, carbonOf(after), rounding + 1e-12 * (carbonOf(before) + carbonOf(after)));
    }

    @Provide
    Arbitrary<Neutralizer> neutralizers() {
        return Combinators.combine(Arbitraries.oneOf(Arbitraries.just(0.0), KnownWaters.uniform(0, 0.5)), shares())
                .as((magnesia, share) ->
                        Neutralizer.withCalcite().withMagnesia(magnesia).reaching(share));
    }

    /** Two equivalents for each mole of calcite or magnesia, and carbon with calcite alone. */
    @Property(tries = 300)
    void aNeutralizerDissolvesItsFillingAndNothingElse(
            @ForAll("waters") Water water, @ForAll("neutralizers") Neutralizer filter) {
        Water after = filter.treat(water);
        assertStays(water, after, Set.of(Ion.CALCIUM, Ion.MAGNESIUM));
        double calcite = gained(Ion.CALCIUM, water, after);
        double magnesia = gained(Ion.MAGNESIUM, water, after);
        assertTrue(calcite >= 0 && magnesia >= 0);
        assertGains(2 * (calcite + magnesia), calcite, water, after);
        assertTrue(Speciation.of(after).pH() >= Speciation.of(water).pH());
    }

    @Property
    void aerationMovesCarbonAlone(@ForAll("waters") Water water, @ForAll("shares") double share) {
        Water after = Aeration.withOutdoorAir().reaching(share).treat(water);
        assertStays(water, after, Set.of());
        assertEquals(water.alkalinity(), after.alkalinity());
        assertStays(water, Aeration.withOutdoorAir().treat(water), Set.of());
    }

    @Property(tries = 200)
    void boilingDropsCalciumAndTwiceItsAlkalinity(@ForAll("waters") Water water) {
        Water after = Boiling.inOpenPot().treat(water);
        assertStays(water, after, Set.of(Ion.CALCIUM));
        double calcium = gained(Ion.CALCIUM, water, after);
        assertTrue(calcium <= 0);
        assertEquals(
                alkalinityOf(water) + 2 * calcium, alkalinityOf(after), 1e-12 * (chargesIn(water) + chargesIn(after)));
        assertEquals(-calcium, Boiling.inOpenPot().dropped(water).getValue(), 1e-12 * chargesIn(water));
    }

    /** Hydrogen takes the place of every equivalent: alkalinity falls by it, carbon stays and pH falls. */
    @Property
    void aDealkalizerTakesHardnessAndItsEquivalentsOfAlkalinity(@ForAll("waters") Water water) {
        Water after = Dealkalizer.withWeakAcidResin().treat(water);
        assertStays(water, after, HARDNESS);
        double equivalents = 0;
        for (Ion ion : HARDNESS) {
            double taken = -gained(ion, water, after);
            assertTrue(taken >= 0);
            equivalents += 2 * taken;
        }
        assertGains(-equivalents, 0, water, after);
        assertEquals(water.carbon(), after.carbon());
        assertTrue(alkalinityOf(after) >= -1e-12 * chargesIn(water));
        assertTrue(equivalents == 0
                || Speciation.of(after).pH() < Speciation.of(water).pH());
    }

    @Property
    void aStrongAcidResinLeavesAnionsAndCarbon(@ForAll("waters") Water water) {
        Water after = Dealkalizer.withStrongAcidResin().treat(water);
        Set<Ion> cations = new TreeSet<>(water.ions());
        cations.removeIf(ion -> ion.chargeNumber() <= 0);
        assertStays(water, after, cations);
        double equivalents = 0;
        for (Ion ion : cations) {
            assertEquals(0, of(ion, after));
            equivalents += ion.chargeNumber() * of(ion, water);
        }
        assertGains(-equivalents, 0, water, after);
        assertEquals(water.carbon(), after.carbon());
    }

    /** What the last acid leaves is in equilibrium with the air, however many steps led there. */
    @Property(tries = 200)
    void reducedAlkalinityIsTradedForTheAnionOfTheAcid(
            @ForAll("waters") Water water, @ForAll("shares") double share, @ForAll boolean sulfuric) {
        Water aerated = Aeration.withOutdoorAir().treat(water);
        double target = share * alkalinityOf(aerated);
        AlkalinityReduction hydrochloric = AlkalinityReduction.to(alkalinity(target));
        AlkalinityReduction reduction = sulfuric ? hydrochloric.withSulfuricAcid() : hydrochloric;
        Ion anion = sulfuric ? Ion.SULFATE : Ion.CHLORIDE;
        Water after = reduction.treat(aerated);
        assertStays(water, after, Set.of(anion));
        double rounding = 1e-12 * (chargesIn(water) + chargesIn(after));
        assertEquals(target, alkalinityOf(after), rounding);
        assertEquals(alkalinityOf(water) - target, gained(anion, water, after) * -anion.chargeNumber(), rounding);
        assertEquals(carbonOf(Aeration.withOutdoorAir().treat(after)), carbonOf(after), 1e-12 * carbonOf(after));
        for (AcidStep step : reduction.plan(aerated)) {
            double held = step.atOnce().carbonDioxide().in(Ion.CARBON_DIOXIDE.milligramPerLitre());
            assertTrue(held <= 30 * (1 + 1e-9));
        }
    }
}
