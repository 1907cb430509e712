package evenwater.examples.benchmark;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.equilibrium.CalciumCarbonateIndices;
import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.Component;
import evenwater.chemistry.kernel.Given;
import evenwater.chemistry.kernel.SpeciationKernel;
import evenwater.chemistry.kernel.SpeciationState;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * What the equilibrium of a water with itself costs, beside a program written for this one question, and what the typed analysis costs
 * beside its kernels.
 *
 * <p>Sixteen invented waters of seven ions and 25 species at 12 °C, one after the other; a figure is for one of them.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
@Fork(
        value = 2,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m", "-XX:+AlwaysPreTouch"})
public class EquilibriumBenchmark {

    private static final int SIZE = 16;
    private static final double KELVIN = 285.15;
    private static final Species[] SPECIES = Species.values();

    /** Amounts in mol/L: Ca, Mg, Na, K, SO₄, Cl, NO₃. */
    private final double[][] totals = new double[SIZE][];

    private final double[] pH = new double[SIZE];
    private final double[] alkalinity = new double[SIZE];
    private final double[] carbon = new double[SIZE];
    private final double[] inert = new double[SIZE];
    private final Water[] waters = new Water[SIZE];
    private final Water[] watersOfKnownPH = new Water[SIZE];

    private final StraightLineSpeciation straightLine = new StraightLineSpeciation(KELVIN);
    private final SpeciationState state = new SpeciationState();
    private final KernelAnalysis analysis = new KernelAnalysis(KELVIN);

    /** Makes the waters, and checks that all ways find the same in them. */
    public EquilibriumBenchmark() {
        state.temperature(KELVIN);
        Random random = new Random(25);
        for (int i = 0; i < SIZE; i++) {
            double[] t = {
                random.nextDouble(0.3e-3, 3e-3),
                random.nextDouble(0.1e-3, 1.5e-3),
                random.nextDouble(0.2e-3, 4e-3),
                random.nextDouble(0.02e-3, 0.2e-3),
                random.nextDouble(0.1e-3, 1.2e-3),
                random.nextDouble(0.2e-3, 2e-3),
                random.nextDouble(0.01e-3, 0.6e-3)
            };
            totals[i] = t;
            pH[i] = random.nextDouble(6.8, 8.4);
            alkalinity[i] = random.nextDouble(1e-3, 6e-3);
            double charge = 2 * t[0] + 2 * t[1] + t[2] + t[3] - 2 * t[4] - t[5] - t[6];
            inert[i] = t[5] + t[6] + Math.abs(alkalinity[i] - charge);
            watersOfKnownPH[i] = water(t, alkalinity[i], pH[i]);
            carbon[i] = Speciation.of(watersOfKnownPH[i]).carbon().in(MILLIMOLE_PER_LITRE) * 1e-3;
            waters[i] = watersOfKnownPH[i].withCarbon(millimoles(carbon[i]));
            check(i);
        }
    }

    private static Water water(double[] t, double alkalinity, double pH) {
        return Water.builder()
                .total(Ion.CALCIUM, millimoles(t[0]))
                .total(Ion.MAGNESIUM, millimoles(t[1]))
                .total(Ion.SODIUM, millimoles(t[2]))
                .total(Ion.POTASSIUM, millimoles(t[3]))
                .total(Ion.SULFATE, millimoles(t[4]))
                .total(Ion.CHLORIDE, millimoles(t[5]))
                .total(Ion.NITRATE, millimoles(t[6]))
                .alkalinity(Alkalinity.of(alkalinity * 1e3, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .measuredPH(pH)
                .temperature(WaterUnits.temperature(12, WaterUnits.CELSIUS))
                .build();
    }

    private static AmountConcentration millimoles(double molesPerLitre) {
        return AmountConcentration.of(molesPerLitre * 1e3, MILLIMOLE_PER_LITRE);
    }

    private void check(int i) {
        int evaluations = byHand(i);
        same(kernel(i, Given.PH_AND_ALKALINITY, pH[i], alkalinity[i]), SpeciationKernel.CONVERGED);
        same(evaluations, state.iterations());
        same(straightLine.ionicStrength, state.ionicStrength());
        for (int j = 0; j < straightLine.molality.length; j++) {
            same(straightLine.molality[j], state.molality(SPECIES[j]));
        }
        same(kernel(i, Given.ALKALINITY_AND_CARBON, alkalinity[i], carbon[i]), SpeciationKernel.CONVERGED);
        same(-state.lnAcid() / Math.log(10), pH[i]);
        same(straightLine.lnCarbonDioxide, Math.log(state.carbonDioxideActivity()));

        Speciation typed = Speciation.of(waters[i]);
        analysis.write(state, totals[i][5], totals[i][6], inert[i]);
        same(typed.pH(), pH[i]);
        same(
                CalculatedConductivity.of(typed).in(Conductivity.MICROSIEMENS_PER_CENTIMETRE),
                analysis.microsiemensPerCentimetre);
        same(typed.saturationIndex(Mineral.CALCITE).orElseThrow(), analysis.calcite);
        same(typed.saturationIndex(Mineral.GYPSUM).orElseThrow(), analysis.gypsum);
        same(typed.saturationIndex(Mineral.DOLOMITE).orElseThrow(), analysis.dolomite);
        same(CalciumCarbonateIndices.of(typed).ryznar().orElseThrow(), analysis.ryznar);
    }

    private static void same(double found, double expected) {
        if (!(Math.abs(found - expected) <= 1e-9 * Math.abs(expected))) {
            throw new IllegalStateException(found + " instead of " + expected);
        }
    }

    private int byHand(int i) {
        double[] t = totals[i];
        return straightLine.solve(pH[i], alkalinity[i], t[0], t[1], t[2], t[3], t[4], inert[i]);
    }

    private int kernel(int i, Given given, double first, double second) {
        double[] t = totals[i];
        state.temperature(KELVIN);
        state.total(Component.CALCIUM, t[0]);
        state.total(Component.MAGNESIUM, t[1]);
        state.total(Component.SODIUM, t[2]);
        state.total(Component.POTASSIUM, t[3]);
        state.total(Component.SULFATE, t[4]);
        state.inert(inert[i]);
        return SpeciationKernel.solve(state, ActivityLaw.TRUESDELL_JONES, given, first, second);
    }

    /** Known pH and alkalinity, written by hand. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public double handWrittenAtKnownPH() {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            sum += byHand(i) + straightLine.ionicStrength;
        }
        return sum;
    }

    /** Known pH and alkalinity, by the kernel. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public double kernelAtKnownPH() {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            sum += kernel(i, Given.PH_AND_ALKALINITY, pH[i], alkalinity[i]) + state.ionicStrength();
        }
        return sum;
    }

    /** pH from alkalinity and carbon, by the kernel. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public double kernelOfAlkalinityAndCarbon() {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            sum += kernel(i, Given.ALKALINITY_AND_CARBON, alkalinity[i], carbon[i]) + state.lnAcid();
        }
        return sum;
    }

    /** Species, conductivity and indices by the kernels, from alkalinity and carbon. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public double kernelAnalysis() {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            kernel(i, Given.ALKALINITY_AND_CARBON, alkalinity[i], carbon[i]);
            sum += analysis.write(state, totals[i][5], totals[i][6], inert[i]);
        }
        return sum;
    }

    /** The same at a known pH. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public double kernelAnalysisAtKnownPH() {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            kernel(i, Given.PH_AND_ALKALINITY, pH[i], alkalinity[i]);
            sum += analysis.write(state, totals[i][5], totals[i][6], inert[i]);
        }
        return sum;
    }

    /** Species, conductivity and indices by the typed classes, from alkalinity and carbon. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public void typedAnalysis(Blackhole hole) {
        for (Water water : waters) {
            analyse(water, hole);
        }
    }

    /** The same from a measured pH. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public void typedAnalysisAtKnownPH(Blackhole hole) {
        for (Water water : watersOfKnownPH) {
            analyse(water, hole);
        }
    }

    private static void analyse(Water water, Blackhole hole) {
        Speciation speciation = Speciation.of(water);
        CalciumCarbonateIndices indices = CalciumCarbonateIndices.of(speciation);
        hole.consume(speciation.pH());
        hole.consume(CalculatedConductivity.of(speciation));
        hole.consume(indices.langelierByActivities());
        hole.consume(indices.ryznar());
        hole.consume(speciation.saturationIndex(Mineral.GYPSUM));
        hole.consume(speciation.saturationIndex(Mineral.DOLOMITE));
    }

    /** Of the typed analysis, the species alone. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public void typedSpeciation(Blackhole hole) {
        for (Water water : waters) {
            hole.consume(Speciation.of(water));
        }
    }
}
