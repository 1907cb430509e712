package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.carbonOf;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.KnownWaters;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/**
 * No figure of a speciation jumps by more than 1e-9 where an input moves by a part in 1e9.
 *
 * <p>How far a figure moves is no jump: near pH 7 a water without buffer turns by 1e-6 for 1e-9 meq/L of acid, and rightly. So two
 * equal steps are compared: a smooth figure moves alike in both, and a jump is what one of them has more than the other.
 */
class ContinuityPropertiesTest {

    private static final double STEP = 1e-9;
    private static final double JUMP = 1e-9;

    /** What the solver tells of a water, each of which may move by about its share where inputs do. */
    private record Figures(double pH, double lnCarbonDioxide, double lnIonicStrength, double calciteIndex) {

        static Figures of(Water water) {
            Speciation found = Speciation.of(water);
            return new Figures(
                    found.pH(),
                    ln(found.carbonDioxide()),
                    ln(found.ionicStrength()),
                    found.saturationIndex(Mineral.CALCITE).orElse(Double.NEGATIVE_INFINITY));
        }

        private static double ln(AmountConcentration amount) {
            return Math.log(amount.in(AmountConcentration.MILLIMOLE_PER_LITRE));
        }

        double[] all() {
            return new double[] {pH, lnCarbonDioxide, lnIonicStrength, calciteIndex};
        }

        double distance(Figures other) {
            double most = 0;
            for (int i = 0; i < all().length; i++) {
                double apart = Math.abs(all()[i] - other.all()[i]);
                most = Double.isNaN(apart) || Double.isInfinite(apart) ? most : Math.max(most, apart);
            }
            return most;
        }
    }

    /** What the second of two equal steps has more than the first, for each figure that is there at all three points. */
    private static void assertNoJump(String input, DoubleFunction<Water> waters, double from, double step) {
        double[] a = Figures.of(waters.apply(from)).all();
        double[] b = Figures.of(waters.apply(from + step)).all();
        double[] c = Figures.of(waters.apply(from + 2 * step)).all();
        for (int i = 0; i < a.length; i++) {
            double jump = c[i] - 2 * b[i] + a[i];
            if (Double.isFinite(jump)) {
                String name = List.of("pH", "ln CO₂", "ln ionic strength", "calcite index")
                        .get(i);
                assertEquals(0, jump, JUMP, () -> name + " at a step of " + input + " from " + from);
            }
        }
    }

    @Provide
    Arbitrary<Water> waters() {
        return Arbitraries.oneOf(KnownWaters.balanced(), KnownWaters.analysed());
    }

    @Property
    void nothingJumpsWhereOneInputMoves(@ForAll("waters") Water water) {
        for (Ion ion : water.ions()) {
            double total = of(ion, water);
            assertNoJump(ion.name(), x -> with(water, ion, x), total, total * STEP);
        }
        double alkalinity = alkalinityOf(water);
        assertNoJump("alkalinity", x -> withAlkalinity(water, x), alkalinity, alkalinity * STEP);
        double carbon = carbonOf(water);
        assertNoJump("carbon", x -> water.withCarbon(mmol(x)), carbon, carbon * STEP);
        double kelvin = water.temperature().in(WaterUnits.KELVIN);
        double step = kelvin > 322 ? -kelvin * STEP : kelvin * STEP;
        assertNoJump("temperature", x -> water.with(WaterUnits.temperature(x, WaterUnits.KELVIN)), kelvin, step);
    }

    /** What a water lacks may come in traces: pairs and weak acids start from nothing. */
    @Property
    void nothingJumpsWhereAnIonAppears(@ForAll("waters") Water water, @ForAll("ions") Ion ion) {
        assertNoJump(ion.name(), x -> with(water, ion, x), 0, STEP);
    }

    @Provide
    Arbitrary<Ion> ions() {
        List<Ion> counted = new ArrayList<>(List.of(
                Ion.CALCIUM,
                Ion.MAGNESIUM,
                Ion.SODIUM,
                Ion.POTASSIUM,
                Ion.SULFATE,
                Ion.CHLORIDE,
                Ion.AMMONIUM,
                Ion.DIHYDROGEN_PHOSPHATE,
                Ion.BORIC_ACID,
                Ion.SILICA,
                Ion.FLUORIDE,
                Ion.HYDROGEN_SULFIDE,
                Ion.DIHYDROGEN_CITRATE,
                Ion.IRON_II));
        counted.addAll(List.of(Waters.LEAD, Waters.PERCHLORATE, Waters.UREA, Waters.DIHYDROGEN_ARSENATE));
        return Arbitraries.of(counted);
    }

    /** Between acid and alkaline water there is nothing to buffer where carbon lacks: the finest steps are the fair ones. */
    @Property
    void nothingJumpsAtNoAlkalinity(@ForAll("waters") Water water, @ForAll("fewCarbon") double carbon) {
        Water with = water.withCarbon(mmol(carbon));
        assertNoJump("alkalinity", x -> withAlkalinity(with, x), 0, STEP);
        assertNoJump("alkalinity", x -> withAlkalinity(with, x), 0, -STEP);
        assertNoJump("alkalinity", x -> withAlkalinity(with, x), -STEP, STEP);
    }

    @Property
    void nothingJumpsWhereCarbonAppears(@ForAll("waters") Water water, @ForAll("nearNoAlkalinity") double alkalinity) {
        Water with = withAlkalinity(water, alkalinity);
        assertNoJump("carbon", x -> with.withCarbon(mmol(x)), 0, STEP);
    }

    @Provide
    Arbitrary<Double> fewCarbon() {
        return Arbitraries.frequencyOf(Tuple.of(1, Arbitraries.just(0.0)), Tuple.of(4, logarithmic(1e-6, 10)));
    }

    @Provide
    Arbitrary<Double> nearNoAlkalinity() {
        Arbitrary<Double> sizes = logarithmic(1e-6, 1);
        return Arbitraries.oneOf(Arbitraries.just(0.0), sizes, sizes.map(x -> -x));
    }

    private static Arbitrary<Double> logarithmic(double least, double most) {
        return KnownWaters.logarithmic(least, most);
    }

    /**
     * A jump anywhere on the way from one water to another is closed in on: where four points in a row differ most from a parabola, the way
     * between them is walked again in finer steps, until those are a part in 1e13. What is left of a slope then is nothing, and a jump is
     * left as it was.
     */
    @Property(tries = 150)
    void noJumpLiesOnTheWayFromOneWaterToAnother(
            @ForAll("farApart") Water a,
            @ForAll("farApart") Water b,
            @ForAll("starts") double start,
            @ForAll("lengths") double length) {
        double low = start;
        double high = Math.min(0.999, start + length);
        for (int steps = 512; high - low > 1e-13; steps = 12) {
            Figures[] way = new Figures[steps + 1];
            for (int i = 0; i <= steps; i++) {
                way[i] = Figures.of(a.mixedWith(b, low + (high - low) * i / steps));
            }
            int roughest = 0;
            for (int i = 0; i + 3 <= steps; i++) {
                roughest = roughness(way, i) > roughness(way, roughest) ? i : roughest;
            }
            double step = (high - low) / steps;
            low += roughest * step;
            high = low + 3 * step;
        }
        double at = low;
        double left = Figures.of(a.mixedWith(b, low)).distance(Figures.of(a.mixedWith(b, high)));
        assertTrue(left <= JUMP, () -> left + " at share " + at + ": " + Figures.of(a.mixedWith(b, at)));
    }

    /** The greatest third difference of any figure. */
    private static double roughness(Figures[] way, int from) {
        double most = 0;
        for (int i = 0; i < way[from].all().length; i++) {
            double third = way[from + 3].all()[i]
                    - 3 * way[from + 2].all()[i]
                    + 3 * way[from + 1].all()[i]
                    - way[from].all()[i];
            most = Double.isFinite(third) ? Math.max(most, Math.abs(third)) : most;
        }
        return most;
    }

    /** Any water, some of mineral acid and some without carbon, so that the way between two leads through all branches. */
    @Provide
    Arbitrary<Water> farApart() {
        Arbitrary<Double> acid =
                Arbitraries.frequencyOf(Tuple.of(2, Arbitraries.just(0.0)), Tuple.of(1, KnownWaters.uniform(0, 1)));
        Arbitrary<Double> carbonLeft =
                Arbitraries.frequencyOf(Tuple.of(2, Arbitraries.just(1.0)), Tuple.of(1, logarithmic(1e-9, 1)));
        return Combinators.combine(waters(), acid, carbonLeft).as((water, negative, left) -> {
            Water less = water.withCarbon(mmol(left * carbonOf(water)));
            return negative == 0 ? less : withAlkalinity(less, -negative);
        });
    }

    @Provide
    Arbitrary<Double> starts() {
        return KnownWaters.uniform(0.001, 0.998);
    }

    @Provide
    Arbitrary<Double> lengths() {
        return logarithmic(1e-5, 1);
    }

    /** With another total of an ion and the same alkalinity: what nobody measured takes the charge. */
    private static Water with(Water water, Ion ion, double millimoles) {
        return builder(water).total(ion, mmol(millimoles)).build();
    }

    private static Water withAlkalinity(Water water, double milliequivalents) {
        return builder(water).alkalinity(alkalinity(milliequivalents)).build();
    }

    private static WaterBuilder builder(Water water) {
        WaterBuilder builder = Water.builder()
                .temperature(celsius(water.temperature().in(WaterUnits.CELSIUS)))
                .alkalinity(water.alkalinity())
                .carbon(mmol(carbonOf(water)));
        for (Ion ion : water.ions()) {
            builder.total(ion, water.total(ion));
        }
        return builder;
    }
}
