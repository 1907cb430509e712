package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.carbonOf;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.KnownWaters;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Water;
import java.util.Set;
import javax.measure.quantity.Pressure;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of gas, minerals, heating and blending: what stays, which way pH goes, and where nothing moves any more. */
class EquilibriumPropertiesTest {

    @Provide
    Arbitrary<Water> waters() {
        return Arbitraries.oneOf(KnownWaters.balanced(), KnownWaters.analysed());
    }

    @Provide
    Arbitrary<Double> shares() {
        return Waters.shares();
    }

    @Provide
    Arbitrary<Double> temperatures() {
        return KnownWaters.uniform(0, 50);
    }

    /** Of CO₂, from a tenth of the air's to a sparkling water's. */
    @Provide
    Arbitrary<WaterQuantity<Pressure>> gases() {
        return KnownWaters.logarithmic(4e-5, 1).map(atm -> WaterUnits.pressure(atm, WaterUnits.ATMOSPHERE));
    }

    private static double pH(Water water) {
        return Speciation.of(water).pH();
    }

    private static void assertOnlyCarbonMoved(Water before, Water after) {
        assertIonsStay(before, after, Set.of());
        assertEquals(before.alkalinity(), after.alkalinity());
        assertEquals(before.temperature(), after.temperature());
    }

    private static void assertIonsStay(Water before, Water after, Set<Ion> moved) {
        assertEquals(before.unmeasuredCharge(), after.unmeasuredCharge());
        for (Ion ion : before.ions()) {
            if (!moved.contains(ion)) {
                assertEquals(before.total(ion), after.total(ion));
            }
        }
        for (Ion ion : after.ions()) {
            assertTrue(moved.contains(ion) || before.ions().contains(ion), ion.name());
        }
    }

    @Property
    void gasMovesCarbonAlone(
            @ForAll("waters") Water water,
            @ForAll("gases") WaterQuantity<Pressure> gas,
            @ForAll("shares") double share) {
        assertOnlyCarbonMoved(water, GasExchange.equilibrated(water, gas));
        assertOnlyCarbonMoved(water, GasExchange.aerated(water, gas, share));
        assertOnlyCarbonMoved(water, GasExchange.degassed(water, share));
        Speciation before = Speciation.of(water);
        Water injected = GasExchange.injected(water, before.carbonDioxide().multiply(1 + share));
        assertOnlyCarbonMoved(water, injected);
        assertOnlyCarbonMoved(
                water, GasExchange.injectedToPH(water, before.pH() - 0.3 * share)); // more could take above 10 atm
    }

    @Property
    void heatingMovesNothingThatIsConserved(@ForAll("waters") Water water, @ForAll("temperatures") double degrees) {
        Water heated = water.with(celsius(degrees));
        assertIonsStay(water, heated, Set.of());
        assertEquals(water.alkalinity(), heated.alkalinity());
        assertEquals(water.carbon(), heated.carbon());
        Speciation hot = Speciation.of(heated);
        assertEquals(carbonOf(water), hot.carbon().getValue(), 1e-12 * carbonOf(water));
        assertEquals(alkalinityOf(water), hot.alkalinity().getValue(), 1e-12 * alkalinityOf(water));
    }

    /** pH of a blend is no mean of any kind, but carbon and alkalinity of its species are. */
    @Property
    void carbonAndAlkalinityOfTheSpeciesBlendLinearly(
            @ForAll("waters") Water a, @ForAll("waters") Water b, @ForAll("shares") double share) {
        Speciation blend = Speciation.of(a.mixedWith(b, share));
        double carbon = carbonOf(a) + share * (carbonOf(b) - carbonOf(a));
        double alkalinity = alkalinityOf(a) + share * (alkalinityOf(b) - alkalinityOf(a));
        assertEquals(carbon, blend.carbon().getValue(), 1e-12 * (carbonOf(a) + carbonOf(b)));
        assertEquals(alkalinity, blend.alkalinity().getValue(), 1e-12 * (chargesIn(a) + chargesIn(b)));
    }

    @Property
    void theOrderOfBlendingDoesNotMatter(
            @ForAll("waters") Water a,
            @ForAll("waters") Water b,
            @ForAll("waters") Water c,
            @ForAll("shares") double s,
            @ForAll("shares") double t) {
        Water one = a.mixedWith(b, s).mixedWith(c, t);
        double partOfB = s * (1 - t);
        double others = 1 - partOfB;
        Water other = others == 0 ? b : a.mixedWith(c, Math.min(1, t / others)).mixedWith(b, partOfB);
        assertEquals(pH(one), pH(other), 1e-9);
        double conductivity = conductivity(one);
        assertEquals(conductivity, conductivity(other), 1e-9 * conductivity);
    }

    private static double conductivity(Water water) {
        return CalculatedConductivity.at25Celsius(water).in(Conductivity.MICROSIEMENS_PER_CENTIMETRE);
    }

    @Property
    void carbonDioxideLowersThePH(@ForAll("waters") Water water, @ForAll("additions") double share) {
        double more = carbonOf(water) * (1 + share);
        assertTrue(pH(water.withCarbon(mmol(more))) < pH(water));
        assertTrue(pH(water.plus(Metabolism.breathing(mmol(carbonOf(water) * share)))) < pH(water));
        Speciation before = Speciation.of(water);
        Water injected = GasExchange.injected(water, before.carbonDioxide().multiply(1 + share));
        assertTrue(pH(injected) < before.pH());
        assertTrue(carbonOf(injected) > carbonOf(water));
    }

    @Provide
    Arbitrary<Double> additions() {
        return KnownWaters.logarithmic(1e-6, 1);
    }

    @Property
    void degassingRaisesThePH(
            @ForAll("waters") Water water, @ForAll("shares") double less, @ForAll("shares") double more) {
        double low = Math.min(less, more);
        double high = Math.max(less, more);
        double little = pH(GasExchange.degassed(water, low));
        double much = pH(GasExchange.degassed(water, high));
        assertTrue(low == 0 ? little == pH(water) : little > pH(water));
        assertTrue(low == high ? little == much : much > little);
    }

    /** From either side, and never past the equilibrium. */
    @Property
    void aerationMovesThePHTowardsThatOfTheAir(
            @ForAll("waters") Water water,
            @ForAll("gases") WaterQuantity<Pressure> gas,
            @ForAll("shares") double share) {
        double start = pH(water);
        double end = pH(GasExchange.equilibrated(water, gas));
        double between = pH(GasExchange.aerated(water, gas, share));
        double held = Speciation.of(water)
                .partialPressureOfCarbonDioxide()
                .to(gas.getUnit())
                .getValue()
                .doubleValue();
        assertEquals(Math.signum(held - gas.getValue().doubleValue()), Math.signum(end - start));
        double low = Math.min(start, end);
        double high = Math.max(start, end);
        assertTrue(between >= low - 1e-12 && between <= high + 1e-12);
        assertTrue(share < 1e-3 || Math.signum(between - start) == Math.signum(end - start));
    }

    @Property
    void equilibriumWithAGasIsAFixedPoint(@ForAll("waters") Water water, @ForAll("gases") WaterQuantity<Pressure> gas) {
        Water once = GasExchange.equilibrated(water, gas);
        Water twice = GasExchange.equilibrated(once, gas);
        assertEquals(carbonOf(once), carbonOf(twice), 1e-12 * carbonOf(once));
        assertEquals(pH(once), pH(twice), 1e-12 * pH(once));
        double held = Speciation.of(once).partialPressureOfCarbonDioxide().in(WaterUnits.ATMOSPHERE);
        assertEquals(gas.in(WaterUnits.ATMOSPHERE), held, 1e-11 * held);
        assertEquals(carbonOf(once), carbonOf(GasExchange.aerated(once, gas, 0.5)), 1e-12 * carbonOf(once));
    }

    @Property(tries = 300)
    void closedToTheAirCalciteEndsAtItsSaturation(@ForAll("waters") Water water) {
        Water after = MineralEquilibrium.saturated(water, Mineral.CALCITE);
        assertSaturated(after, Mineral.CALCITE);
        assertIonsStay(water, after, Set.of(Ion.CALCIUM));
        double dissolved = of(Ion.CALCIUM, after) - of(Ion.CALCIUM, water);
        double rounding = 1e-12 * (chargesIn(water) + chargesIn(after));
        assertEquals(alkalinityOf(water) + 2 * dissolved, alkalinityOf(after), rounding);
        assertEquals(carbonOf(water) + dissolved, carbonOf(after), 1e-12 * (carbonOf(water) + carbonOf(after)));
        assertEquals(
                dissolved, MineralEquilibrium.dissolved(water, Mineral.CALCITE).getValue(), rounding);
    }

    @Property(tries = 300)
    void openToAGasCalciteEndsAtItsSaturation(
            @ForAll("waters") Water water, @ForAll("gases") WaterQuantity<Pressure> gas) {
        Water after = MineralEquilibrium.saturated(water, Mineral.CALCITE, gas);
        assertSaturated(after, Mineral.CALCITE);
        assertIonsStay(water, after, Set.of(Ion.CALCIUM));
        double dissolved = of(Ion.CALCIUM, after) - of(Ion.CALCIUM, water);
        assertEquals(
                alkalinityOf(water) + 2 * dissolved,
                alkalinityOf(after),
                1e-12 * (chargesIn(water) + chargesIn(after)));
        double held = Speciation.of(after).partialPressureOfCarbonDioxide().in(WaterUnits.ATMOSPHERE);
        assertEquals(gas.in(WaterUnits.ATMOSPHERE), held, 1e-11 * held);
    }

    @Property(tries = 300)
    void gypsumEndsAtItsSaturationAndLeavesAlkalinityAndCarbon(@ForAll("waters") Water water) {
        Water after = MineralEquilibrium.saturated(water, Mineral.GYPSUM);
        assertSaturated(after, Mineral.GYPSUM);
        assertIonsStay(water, after, Set.of(Ion.CALCIUM, Ion.SULFATE));
        double rounding = 1e-12 * (chargesIn(water) + chargesIn(after));
        double dissolved = of(Ion.CALCIUM, after) - of(Ion.CALCIUM, water);
        assertEquals(of(Ion.SULFATE, water) + dissolved, of(Ion.SULFATE, after), rounding);
        assertEquals(alkalinityOf(water), alkalinityOf(after), rounding);
        assertEquals(water.carbon(), after.carbon());
    }

    private static void assertSaturated(Water water, Mineral mineral) {
        assertEquals(0, Speciation.of(water).saturationIndex(mineral).orElseThrow(), 1e-9);
    }
}
