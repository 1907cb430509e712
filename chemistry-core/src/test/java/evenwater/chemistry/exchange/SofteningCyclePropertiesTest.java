package evenwater.chemistry.exchange;

import static evenwater.chemistry.exchange.Feeds.END_POINT;
import static evenwater.chemistry.exchange.Feeds.pounds;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.litres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class SofteningCyclePropertiesTest {

    @Provide
    Arbitrary<Water> feeds() {
        return Combinators.combine(
                        Arbitraries.doubles().between(3, 40).ofScale(3),
                        Arbitraries.doubles().between(0, 5).ofScale(3))
                .as(Feeds::feed);
    }

    @Provide
    Arbitrary<Regeneration> regenerations() {
        return Combinators.combine(
                        Arbitraries.doubles().between(8, 20).ofScale(2),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false),
                        Arbitraries.doubles().between(2, 8).ofScale(2))
                .as((dose, up, potassium, flow) -> {
                    Regeneration way = up ? Regeneration.counterFlow(pounds(dose)) : Regeneration.coFlow(pounds(dose));
                    return (potassium ? way.withPotassiumChloride() : way).withBrineFlow(flow);
                });
    }

    private static SofteningCycle cycle(Water feed, Regeneration regeneration) {
        ResinBed bed = ResinBed.of(Resin.gel(), litres(10), ResinLoading.of(Map.of(Ion.SODIUM, 1.0)), 25);
        return SofteningCycle.steady(bed, feed, bed.flow(16), END_POINT, regeneration);
    }

    /** In a steady cycle the waste carries what the run took, beside the hardness of its own water. */
    @Property(tries = 40)
    void theWasteCarriesWhatTheRunTook(
            @ForAll("feeds") Water feed, @ForAll("regenerations") Regeneration regeneration) {
        SofteningCycle cycle = cycle(feed, regeneration);
        double carried = 0;
        for (RegenerationRun.Waste waste : cycle.regeneration().waste()) {
            carried += hardnessOf(waste.water()) * waste.volume().in(WaterUnits.LITRE);
        }
        boolean softened = regeneration.direction() == Regeneration.Direction.COUNTER_FLOW;
        double raw = cycle.regeneration().waste().stream()
                .filter(waste -> !softened || waste.name().equals("fast rinse"))
                .mapToDouble(waste -> waste.volume().in(WaterUnits.LITRE))
                .sum();
        double taken = cycle.capacity().in(ExchangeCapacity.EQUIVALENT_PER_LITRE) * 10 * 1e3 / 2;
        assertEquals(taken, carried - raw * hardnessOf(feed), 1e-3 * taken);
    }

    /** In eq per litre of bed, with the water between the beads: what came less what left is what is there. */
    @Property(tries = 40)
    void everyIonIsConservedOverACycle(
            @ForAll("feeds") Water feed, @ForAll("regenerations") Regeneration regeneration) {
        ResinBed before = cycle(feed, regeneration).service().bedAfter();
        RegenerationRun brine = before.regenerate(regeneration, feed);
        ServiceRun service = brine.bedAfter().serviceUntil(feed, before.flow(16), END_POINT);
        ResinBed after = service.bedAfter();
        double softened = regeneration.direction() == Regeneration.Direction.COUNTER_FLOW
                ? brine.waste().stream()
                                .filter(waste -> !waste.name().equals("fast rinse"))
                                .mapToDouble(waste -> waste.volume().in(WaterUnits.LITRE))
                                .sum()
                        / 10
                : 0;
        double all = brine.mixedWaste().volume().in(WaterUnits.LITRE) / 10;
        double strength = 0;
        for (Ion ion : CATIONS) {
            strength += equivalents(ion, feed);
        }
        for (Ion ion : CATIONS) {
            double came = equivalents(ion, feed) * (all - softened + service.bedVolumes());
            came += ion.equals(regeneration.cation()) ? strength * softened + regeneration.equivalentsPerLitre() : 0;
            double left = equivalents(ion, service.meanWater()) * service.bedVolumes();
            for (RegenerationRun.Waste waste : brine.waste()) {
                left += equivalents(ion, waste.water()) * waste.volume().in(WaterUnits.LITRE) / 10;
            }
            assertEquals(before.content(ion) + came - left, after.content(ion), 1e-9 * (2 + came), ion.symbol());
        }
    }

    private static final List<Ion> CATIONS = List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM);

    private static double equivalents(Ion ion, Water water) {
        return water.total(ion).getValue() * ion.chargeNumber() / 1000;
    }

    @Property(tries = 40)
    void nothingButCationsAndChlorideMoves(
            @ForAll("feeds") Water feed, @ForAll("regenerations") Regeneration regeneration) {
        SofteningCycle cycle = cycle(feed, regeneration);
        Water soft = cycle.service().meanWater();
        assertEquals(feed.alkalinity(), soft.alkalinity());
        assertEquals(0, Change.between(feed, soft).unmeasuredCharge().getValue());
        assertTrue(soft.total(Ion.CHLORIDE).compareTo(feed.total(Ion.CHLORIDE)) >= 0);
        assertTrue(hardnessOf(soft) < hardnessOf(feed));
        double chloride = cycle.regeneration().discharged(Ion.CHLORIDE).in(WaterUnits.GRAM);
        double salt = cycle.regeneration().salt().in(WaterUnits.GRAM);
        double inSalt = regeneration.salt().ions().get(Ion.CHLORIDE)
                * 35.45
                / (regeneration.cation().equals(Ion.SODIUM) ? 58.44 : 74.548);
        double inWater = feed.total(Ion.CHLORIDE).in(Ion.CHLORIDE.milligramPerLitre())
                * cycle.regeneration().mixedWaste().volume().in(WaterUnits.LITRE)
                / 1000;
        assertTrue(chloride <= (salt * inSalt + inWater) * 1.001, chloride + " of " + salt);
        assertTrue(chloride > 0.97 * (salt * inSalt + inWater), chloride + " of " + salt);
    }

    @Property(tries = 20)
    void theVolumeOfTheBedDoesNotMatter(@ForAll("feeds") Water feed) {
        Regeneration regeneration = Regeneration.coFlow(pounds(10));
        ResinBed large = ResinBed.of(Resin.gel(), litres(1000), ResinLoading.of(Map.of(Ion.SODIUM, 1.0)), 25);
        SofteningCycle scaled = SofteningCycle.steady(large, feed, large.flow(16), END_POINT, regeneration);
        assertEquals(
                cycle(feed, regeneration).service().bedVolumes(),
                scaled.service().bedVolumes(),
                1e-9 * scaled.service().bedVolumes());
    }
}
