package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.analysis.IronCompensation;
import evenwater.chemistry.instrument.TemperatureCompensation;
import evenwater.chemistry.kernel.MembraneKernel;
import evenwater.chemistry.kernel.SofteningKernel;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The double functions of C beside the typed library, at random arguments from tiny to huge, and at what they refuse. */
class DoubleFunctionsTest {

    private static final int CASES = 10_000;
    private static final double PROMISED = 1e-12;
    private static final int OK = 0;
    private static final int NULL_OR_RANGE = -2;
    private static final int NO_ANSWER = -3;

    private static final NumberCalls CALLS = new NumberCalls();
    private static final List<double[]> EXPECTED = new ArrayList<>();
    private static final Random RANDOM = new Random(20_26);

    @BeforeAll
    static void askTheLibrary() {
        for (int i = 0; i < CASES; i++) {
            scales();
            softening();
            compensation();
        }
    }

    private static void expect(double answer, int code, Number... arguments) {
        expectWithin(PROMISED * Math.abs(answer), answer, code, arguments);
    }

    private static void expectWithin(double tolerance, double answer, int code, Number... arguments) {
        CALLS.add(code, arguments);
        EXPECTED.add(new double[] {answer, tolerance});
    }

    /** From 1e-6 to 1e6, evenly by its logarithm. */
    private static double amount() {
        return Math.pow(10, 12 * RANDOM.nextDouble() - 6);
    }

    private static void scales() {
        double v = RANDOM.nextBoolean() ? amount() : -amount();
        int a = RANDOM.nextInt(Hardness.units().size());
        int b = RANDOM.nextInt(Hardness.units().size());
        expect(Hardness.of(v, Hardness.units().get(a)).in(Hardness.units().get(b)), 0, a, b, v);
        int c = RANDOM.nextInt(Alkalinity.units().size());
        int d = RANDOM.nextInt(Alkalinity.units().size());
        expect(Alkalinity.of(v, Alkalinity.units().get(c)).in(Alkalinity.units().get(d)), 1, c, d, v);
        int e = RANDOM.nextInt(Conductivity.units().size());
        int f = RANDOM.nextInt(Conductivity.units().size());
        expect(
                Conductivity.of(v, Conductivity.units().get(e))
                        .in(Conductivity.units().get(f)),
                2,
                e,
                f,
                v);
        int g = RANDOM.nextInt(FlowRate.units().size());
        int h = RANDOM.nextInt(FlowRate.units().size());
        expect(FlowRate.of(v, FlowRate.units().get(g)).in(FlowRate.units().get(h)), 3, g, h, v);
        int from = RANDOM.nextInt(3);
        int to = RANDOM.nextInt(3);
        double degrees = 200 * RANDOM.nextDouble() - 50;
        double expected = WaterUnits.temperature(
                        degrees, TemperatureScale.all().get(from).unit())
                .in(TemperatureScale.all().get(to).unit());
        // near the zero of a scale the digits of the absolute temperature are what is left
        expectWithin(PROMISED * 500, expected, 4, from, to, degrees);
    }

    private static void softening() {
        double raw = amount();
        double soft = raw * RANDOM.nextDouble();
        double target = soft + (raw - soft) * RANDOM.nextDouble();
        double leakage = amount();
        double share = RANDOM.nextDouble();
        Water water = ofCalcium(raw);
        Water behind = Softener.withSodium()
                .leaking(Hardness.of(leakage, Hardness.MILLIMOLE_PER_LITRE))
                .behindResin(water);
        // the softener takes away what it exchanges, so that the digits of the raw water are what its answer keeps
        expectWithin(PROMISED * raw, behind.hardness().in(Hardness.MILLIMOLE_PER_LITRE), 5, raw, leakage);
        expect(raw * SofteningKernel.leakageFraction(raw, leakage), 5, raw, leakage);
        expect(SofteningKernel.bypassShare(raw, soft, target), 6, raw, soft, target);
        Water softer = ofCalcium(soft);
        expect(softer.mixedWith(water, share).hardness().in(Hardness.MILLIMOLE_PER_LITRE), 7, raw, soft, share);
        int unit = RANDOM.nextInt(Hardness.units().size());
        double sodium = Softener.withSodium().treat(water).total(Ion.SODIUM).in(Ion.SODIUM.milligramPerLitre());
        expect(sodium, 8, unit, water.hardness().in(Hardness.units().get(unit)));
        double recovery = 0.99 * RANDOM.nextDouble();
        expect(MembraneKernel.concentrate(raw, soft, recovery), 12, raw, soft, recovery);
    }

    private static Water ofCalcium(double millimolesPerLitre) {
        return Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(millimolesPerLitre, AmountConcentration.MILLIMOLE_PER_LITRE))
                .build();
    }

    private static void compensation() {
        double conductivity = amount();
        Conductivity measured = Conductivity.of(conductivity, Conductivity.MICROSIEMENS_PER_CENTIMETRE);
        double celsius = 100 * RANDOM.nextDouble();
        double perKelvin = 0.03 * RANDOM.nextDouble();
        expect(
                TemperatureCompensation.linear(perKelvin)
                        .toReference(measured, WaterUnits.temperature(celsius, WaterUnits.CELSIUS))
                        .in(Conductivity.MICROSIEMENS_PER_CENTIMETRE),
                9,
                conductivity,
                celsius,
                perKelvin);
        double cool = RANDOM.nextBoolean() ? 35.9 * RANDOM.nextDouble() : RANDOM.nextInt(360) / 10.0;
        expect(
                TemperatureCompensation.ISO_7888
                        .toReference(measured, WaterUnits.temperature(cool, WaterUnits.CELSIUS))
                        .in(Conductivity.MICROSIEMENS_PER_CENTIMETRE),
                10,
                conductivity,
                cool);
        double iron = amount();
        double manganese = amount();
        double perIron = 5 * RANDOM.nextDouble();
        double perManganese = 5 * RANDOM.nextDouble();
        expect(
                new IronCompensation(perIron, perManganese)
                        .of(
                                Hardness.of(conductivity, Hardness.GRAIN_PER_US_GALLON),
                                AmountConcentration.of(iron, Ion.IRON_II.milligramPerLitre()),
                                AmountConcentration.of(manganese, Ion.MANGANESE_II.milligramPerLitre()))
                        .in(CompensatedHardness.GRAIN_PER_US_GALLON),
                11,
                conductivity,
                iron,
                manganese,
                perIron,
                perManganese);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-O2", "-O3", "-O0 -fsanitize=undefined -fno-sanitize-recover=all"})
    void tenThousandCasesOfEachFunctionAreTheLibrarys(String flags) {
        Compiler.assumeHere("gcc");
        assertAnswers(CALLS.run(NumberCalls.driver("gcc", flags)));
    }

    @Test
    void clangGivesTheSame() {
        Compiler.assumeHere("clang");
        assertAnswers(CALLS.run(NumberCalls.driver("clang", "-O2")));
    }

    private static void assertAnswers(List<NumberCalls.Answer> answers) {
        for (int i = 0; i < answers.size(); i++) {
            int call = i;
            assertEquals(OK, answers.get(i).status(), () -> "call " + call);
            assertEquals(EXPECTED.get(i)[0], answers.get(i).real(), EXPECTED.get(i)[1], () -> "call " + call);
        }
    }

    @Test
    void whatIsOutOfRangeIsRefusedAndNothingIsWritten() {
        Compiler.assumeHere("gcc");
        NumberCalls calls = new NumberCalls();
        List<Integer> statuses = new ArrayList<>();
        for (double wrong : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            for (int kind = 0; kind < 5; kind++) {
                refuse(calls, statuses, NULL_OR_RANGE, kind, 0, 1, wrong);
            }
            refuse(calls, statuses, NULL_OR_RANGE, 5, wrong, 1.0);
            refuse(calls, statuses, NULL_OR_RANGE, 6, 3.0, wrong, 2.0);
            refuse(calls, statuses, NULL_OR_RANGE, 7, 3.0, 1.0, wrong);
            refuse(calls, statuses, NULL_OR_RANGE, 8, 0, wrong);
            refuse(calls, statuses, NULL_OR_RANGE, 9, 300.0, 20.0, wrong);
            refuse(calls, statuses, NULL_OR_RANGE, 10, 300.0, wrong);
            refuse(calls, statuses, NULL_OR_RANGE, 11, 1.0, 1.0, 1.0, wrong, 1.0);
            refuse(calls, statuses, NULL_OR_RANGE, 12, 1.0, 1.0, wrong);
        }
        for (int kind = 0; kind < 5; kind++) {
            refuse(calls, statuses, NULL_OR_RANGE, kind, -1, 0, 1.0);
            refuse(calls, statuses, NULL_OR_RANGE, kind, 0, 9, 1.0);
        }
        refuse(calls, statuses, NULL_OR_RANGE, 0, 0, 3, 1e308); // the answer would be infinite
        refuse(calls, statuses, NULL_OR_RANGE, 8, 9, 1.0);
        refuse(calls, statuses, NULL_OR_RANGE, 8, 0, -1e-9);
        refuse(calls, statuses, NULL_OR_RANGE, 10, 300.0, 35.90001);
        refuse(calls, statuses, NULL_OR_RANGE, 9, 300.0, 20.0, 2.0); // per cent taken for a share
        refuse(calls, statuses, NULL_OR_RANGE, 12, 1.0, 0.1, 1.0);
        refuse(calls, statuses, NO_ANSWER, 6, 3.0, 1.0, 4.0);
        refuse(calls, statuses, NO_ANSWER, 6, 3.0, 1.0, 0.5);
        refuse(calls, statuses, NO_ANSWER, 6, 3.0, 3.0, 3.0);
        refuse(calls, statuses, NO_ANSWER, 9, 300.0, 0.0, 0.05);
        List<NumberCalls.Answer> answers = calls.run(NumberCalls.driver("gcc", "-O2"));
        for (int i = 0; i < answers.size(); i++) {
            int call = i;
            assertEquals((int) statuses.get(i), answers.get(i).status(), () -> "call " + call);
            assertEquals(NumberCalls.UNTOUCHED, answers.get(i).real(), () -> "call " + call);
        }
    }

    private static void refuse(NumberCalls calls, List<Integer> statuses, int status, int code, Number... arguments) {
        calls.add(code, arguments);
        statuses.add(status);
    }

    /** The published check of the core's softener: 7.864 mg/L of sodium for each grain per US gallon. */
    @Test
    void theSodiumOfAGrainIsTheOneOfTheSoftener() {
        Compiler.assumeHere("gcc");
        NumberCalls calls = new NumberCalls();
        calls.add(8, 8, 1.0);
        assertEquals(7.864, calls.run(NumberCalls.driver("gcc", "-O2")).get(0).real(), 5e-4);
    }
}
