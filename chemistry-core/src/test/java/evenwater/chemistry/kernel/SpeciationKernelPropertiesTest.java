package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.DoubleRange;

class SpeciationKernelPropertiesTest {

    /** A water of random totals, some of them absent, with pH and carbon. */
    private record Case(double kelvin, double[] totals, double inert, double pH, double carbon, ActivityLaw law) {

        SpeciationState state() {
            SpeciationState state = new SpeciationState();
            state.temperature(kelvin);
            for (Component component : Component.values()) {
                state.total(component, totals[component.place()]);
            }
            state.inert(inert);
            return state;
        }
    }

    @Property
    void anyPHAndCarbonHaveASolutionWhoseBalancesHold(@ForAll("cases") Case water) {
        SpeciationState state = water.state();
        solve(state, water.law(), Given.PH_AND_CARBON, water.pH(), water.carbon());
        assertTrue(state.residual() <= 1e-12);
        double calcium = state.molality(Species.CALCIUM)
                + state.molality(Species.CALCIUM_BICARBONATE)
                + state.molality(Species.CALCIUM_CARBONATE)
                + state.molality(Species.CALCIUM_SULFATE)
                + state.molality(Species.CALCIUM_HYDROXIDE);
        assertRelative(water.totals()[Component.CALCIUM.place()], calcium);
        double phosphate = state.molality(Species.PHOSPHORIC_ACID)
                + state.molality(Species.DIHYDROGEN_PHOSPHATE)
                + state.molality(Species.HYDROGEN_PHOSPHATE)
                + state.molality(Species.PHOSPHATE);
        assertRelative(water.totals()[Component.PHOSPHATE.place()], phosphate);
    }

    /** Σ z m of all species is the charge of the totals in their reference forms less the alkalinity. */
    @Property
    void chargesOfSpeciesAreThoseOfTheTotals(@ForAll("cases") Case water) {
        SpeciationState state = water.state();
        solve(state, water.law(), Given.PH_AND_CARBON, water.pH(), water.carbon());
        double charge = 0;
        double gross = 0;
        for (Species s : Species.values()) {
            charge += s.chargeNumber() * state.molality(s);
            gross += Math.abs(s.chargeNumber()) * state.molality(s);
        }
        double[] t = water.totals();
        double ofTotals = 2 * t[Component.CALCIUM.place()]
                + 2 * t[Component.MAGNESIUM.place()]
                + t[Component.SODIUM.place()]
                + t[Component.POTASSIUM.place()]
                - 2 * t[Component.SULFATE.place()]
                + t[Component.AMMONIA.place()]
                - t[Component.PHOSPHATE.place()]
                - t[Component.FLUORIDE.place()]
                - t[Component.CITRATE.place()];
        assertEquals(ofTotals - state.alkalinity(), charge, 1e-12 * gross);
    }

    @Property
    void alkalinityAndCarbonLeadBackToThePH(@ForAll("cases") Case water) {
        SpeciationState state = water.state();
        solve(state, water.law(), Given.PH_AND_CARBON, water.pH(), water.carbon());
        double alkalinity = state.alkalinity();
        double carbonDioxide = state.carbonDioxideActivity();
        solve(state, water.law(), Given.ALKALINITY_AND_CARBON, alkalinity, water.carbon());
        assertEquals(water.pH(), pH(state), 1e-9);
        solve(state, water.law(), Given.ALKALINITY_AND_CARBON_DIOXIDE, alkalinity, carbonDioxide);
        assertEquals(water.pH(), pH(state), 1e-9);
        solve(state, water.law(), Given.PH_AND_CARBON_DIOXIDE, water.pH(), carbonDioxide);
        assertEquals(water.carbon(), state.carbon(), 1e-9 * water.carbon());
    }

    /** No jump above 1e-9 for a relative step of 1e-9: nothing is switched on or off on the way. */
    @Property
    void theSolutionIsContinuousInEveryTotal(@ForAll("cases") Case water) {
        SpeciationState state = water.state();
        solve(state, water.law(), Given.PH_AND_CARBON, water.pH(), water.carbon());
        double ionicStrength = state.ionicStrength();
        double alkalinity = state.alkalinity();
        double gross = ionicStrength + water.carbon();
        for (Component component : Component.values()) {
            double total = water.totals()[component.place()];
            double step = total > 0 ? total * 1e-9 : 1e-12; // also from absent to a trace
            state.total(component, total + step);
            solve(state, water.law(), Given.PH_AND_CARBON, water.pH(), water.carbon());
            assertEquals(ionicStrength, state.ionicStrength(), 1e-9 * gross + 10 * step);
            assertEquals(alkalinity, state.alkalinity(), 1e-9 * gross + 10 * step);
            state.total(component, total);
        }
    }

    @Property
    void moreCarbonMeansLessPHAtOneAlkalinity(
            @ForAll("cases") Case water, @ForAll @DoubleRange(min = 1.01, max = 5) double factor) {
        SpeciationState state = water.state();
        solve(state, water.law(), Given.PH_AND_CARBON, water.pH(), water.carbon());
        double alkalinity = state.alkalinity();
        solve(state, water.law(), Given.ALKALINITY_AND_CARBON, alkalinity, water.carbon() * factor);
        assertTrue(pH(state) < water.pH());
    }

    @Property
    void hostileInputGetsAStatusAndNoException(
            @ForAll double first, @ForAll double second, @ForAll double total, @ForAll Given given) {
        SpeciationState state = new SpeciationState();
        state.total(Component.CALCIUM, total);
        int status = SpeciationKernel.solve(state, ActivityLaw.TRUESDELL_JONES, given, first, second);
        if (status == SpeciationKernel.CONVERGED) {
            assertTrue(state.residual() <= 1e-12);
            assertTrue(Double.isFinite(state.lnAcid()));
            assertTrue(Double.isFinite(state.alkalinity()) && Double.isFinite(state.carbon()));
        }
    }

    @Provide
    Arbitrary<Case> cases() {
        Arbitrary<Double> major = Arbitraries.oneOf(Arbitraries.just(0.0), logarithmic(-8, -1.7));
        Arbitrary<Double> trace =
                Arbitraries.frequencyOf(Tuple.of(3, Arbitraries.just(0.0)), Tuple.of(1, logarithmic(-8, -3)));
        Arbitrary<double[]> totals = Combinators.combine(
                        major.list().ofSize(5), trace.list().ofSize(Component.values().length - 5))
                .as((majors, traces) -> {
                    double[] all = new double[Component.values().length];
                    for (int i = 0; i < all.length; i++) {
                        all[i] = i < 5 ? majors.get(i) : traces.get(i - 5);
                    }
                    return all;
                });
        return Combinators.combine(
                        Arbitraries.doubles().between(273.15, 323.15),
                        totals,
                        major,
                        Arbitraries.doubles().between(3, 11),
                        logarithmic(-6, -1.5),
                        Arbitraries.of(ActivityLaw.class))
                .as(Case::new);
    }

    private static Arbitrary<Double> logarithmic(double least, double most) {
        return Arbitraries.doubles().between(least, most).map(lg -> Math.pow(10, lg));
    }

    private static void solve(SpeciationState state, ActivityLaw law, Given given, double first, double second) {
        assertEquals(SpeciationKernel.CONVERGED, SpeciationKernel.solve(state, law, given, first, second));
    }

    private static void assertRelative(double expected, double actual) {
        assertEquals(expected, actual, 1e-12 * expected);
    }

    private static double pH(SpeciationState state) {
        return -state.lnAcid() / Math.log(10);
    }
}
