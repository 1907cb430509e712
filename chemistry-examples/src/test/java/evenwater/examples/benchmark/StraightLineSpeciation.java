package evenwater.examples.benchmark;

import static evenwater.chemistry.kernel.EquilibriumConstant.BISULFATE;
import static evenwater.chemistry.kernel.EquilibriumConstant.CALCIUM_BICARBONATE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.CALCIUM_CARBONATE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.CALCIUM_HYDROXIDE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.CALCIUM_SULFATE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.CARBONIC_ACID_1;
import static evenwater.chemistry.kernel.EquilibriumConstant.CARBONIC_ACID_2;
import static evenwater.chemistry.kernel.EquilibriumConstant.MAGNESIUM_BICARBONATE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.MAGNESIUM_CARBONATE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.MAGNESIUM_HYDROXIDE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.MAGNESIUM_SULFATE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.POTASSIUM_SULFATE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.SODIUM_BICARBONATE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.SODIUM_CARBONATE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.SODIUM_SULFATE_PAIR;
import static evenwater.chemistry.kernel.EquilibriumConstant.WATER;

import evenwater.chemistry.kernel.EquilibriumConstant;
import evenwater.chemistry.kernel.SolventWater;

/**
 * What a program written for this one question would do: 25 species at a known pH and alkalinity, as one method of plain doubles.
 *
 * <p>The same law (Truesdell and Jones), constants, iteration and tolerances as the kernel. It knows that the pH is fixed and that there
 * are no weak acids, so it leaves out every derivative and exponential that this saves, and all checks.
 */
final class StraightLineSpeciation {

    private static final double LN_10 = Math.log(10);
    private static final int ROUNDS = 14;
    private static final int STEPS = 100;

    /** Molalities of the 23 species that the kernel has too, in its order; Cl⁻ and NO₃⁻ stay what they are. */
    final double[] molality = new double[23];

    double ionicStrength;
    double lnCarbonDioxide;

    private final double slopeA;
    private final double slopeB;
    private final double k1;
    private final double k2;
    private final double kw;
    private final double kHSO4;
    private final double kCaHCO3;
    private final double kCaCO3;
    private final double kCaSO4;
    private final double kCaOH;
    private final double kMgHCO3;
    private final double kMgCO3;
    private final double kMgSO4;
    private final double kMgOH;
    private final double kNaHCO3;
    private final double kNaCO3;
    private final double kNaSO4;
    private final double kKSO4;

    StraightLineSpeciation(double kelvin) {
        slopeA = SolventWater.debyeHueckelA(kelvin);
        slopeB = SolventWater.debyeHueckelB(kelvin);
        k1 = value(CARBONIC_ACID_1, kelvin);
        k2 = value(CARBONIC_ACID_2, kelvin);
        kw = value(WATER, kelvin);
        kHSO4 = value(BISULFATE, kelvin);
        kCaHCO3 = value(CALCIUM_BICARBONATE_PAIR, kelvin);
        kCaCO3 = value(CALCIUM_CARBONATE_PAIR, kelvin);
        kCaSO4 = value(CALCIUM_SULFATE_PAIR, kelvin);
        kCaOH = value(CALCIUM_HYDROXIDE_PAIR, kelvin);
        kMgHCO3 = value(MAGNESIUM_BICARBONATE_PAIR, kelvin);
        kMgCO3 = value(MAGNESIUM_CARBONATE_PAIR, kelvin);
        kMgSO4 = value(MAGNESIUM_SULFATE_PAIR, kelvin);
        kMgOH = value(MAGNESIUM_HYDROXIDE_PAIR, kelvin);
        kNaHCO3 = value(SODIUM_BICARBONATE_PAIR, kelvin);
        kNaCO3 = value(SODIUM_CARBONATE_PAIR, kelvin);
        kNaSO4 = value(SODIUM_SULFATE_PAIR, kelvin);
        kKSO4 = value(POTASSIUM_SULFATE_PAIR, kelvin);
    }

    private static double value(EquilibriumConstant constant, double kelvin) {
        return Math.exp(constant.ln(kelvin));
    }

    /** Solves; all in mol/kg; sulfate and carbonates above 0. Returns the evaluations of the balances, or -1. */
    int solve(
            double pH,
            double alkalinity,
            double calcium,
            double magnesium,
            double sodium,
            double potassium,
            double sulfate,
            double inert) {
        double h = Math.exp(-pH * LN_10);
        double inverse = 1 / h;
        double a = (alkalinity - kw * inverse + h) / (k1 * inverse * (1 + 2 * k2 * inverse));
        double s = sulfate / 2;
        double v = Math.log(a);
        double w = Math.log(s);
        double at = (inert + 4 * (calcium + magnesium + sulfate) + sodium + potassium + alkalinity) / 2 + 1e-9;
        double before = at;
        double lackBefore = 0;
        int evaluations = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double smallStep = round == 0 ? 0.1 : round == 1 ? 1e-4 : 1e-8;

            double root = Math.sqrt(at);
            double limiting = -slopeA * root;
            double b = slopeB * root;
            double neutral = Math.exp(-0.1 * LN_10 * at); // 1 / γ
            double gH = Math.exp(limiting / (1 + b * 9.0));
            double g35 = Math.exp(limiting / (1 + b * 3.5));
            double g40 = Math.exp(limiting / (1 + b * 4.0));
            double g45 = Math.exp(limiting / (1 + b * 4.5));
            double g54 = Math.exp(limiting / (1 + b * 5.4));
            double g60 = Math.exp(limiting / (1 + b * 6.0));
            double g65 = Math.exp(limiting / (1 + b * 6.5));
            double gCa = Math.exp(4 * limiting / (1 + b * 5.0) + 0.165 * LN_10 * at);
            double gMg = Math.exp(4 * limiting / (1 + b * 5.5) + 0.20 * LN_10 * at);
            double gNa = Math.exp(limiting / (1 + b * 4.0) + 0.075 * LN_10 * at);
            double gK = Math.exp(limiting / (1 + b * 3.5) + 0.015 * LN_10 * at);
            double gSO4 = Math.exp(4 * limiting / (1 + b * 5.0) - 0.04 * LN_10 * at);
            double g54Squared = g54 * g54;

            // per activity of CO₂ or of SO₄²⁻; the pH is known
            double perCO2 = k1 * inverse;
            double perCO3 = perCO2 * k2 * inverse;
            double hydrogen = h / gH;
            double hydroxide = kw * inverse / g35;
            double qHCO3 = perCO2 / g54;
            double qCO3 = perCO3 / (g54Squared * g54Squared);
            double qSO4 = 1 / gSO4;
            double qHSO4 = kHSO4 * h / g45;
            double qCaHCO3 = gCa * perCO2 * kCaHCO3 / g60;
            double qCaCO3 = gCa * perCO3 * kCaCO3 * neutral;
            double qCaSO4 = gCa * kCaSO4 * neutral;
            double caOH = gCa * kCaOH * inverse / g60;
            double qMgHCO3 = gMg * perCO2 * kMgHCO3 / g40;
            double qMgCO3 = gMg * perCO3 * kMgCO3 * neutral;
            double qMgSO4 = gMg * kMgSO4 * neutral;
            double mgOH = gMg * kMgOH * inverse / g65;
            double qNaHCO3 = gNa * perCO2 * kNaHCO3 * neutral;
            double qNaCO3 = gNa * perCO3 * kNaCO3 / g54;
            double qNaSO4 = gNa * kNaSO4 / g54;
            double qKSO4 = gK * kKSO4 / g54;

            double found = Double.NaN;
            double size = Double.MAX_VALUE;
            for (int step = 0; step <= STEPS; step++) {
                evaluations++;
                double hco3 = qHCO3 * a;
                double co3 = qCO3 * a;
                double so4 = qSO4 * s;
                double hso4 = qHSO4 * s;
                double caHCO3 = qCaHCO3 * a;
                double caCO3 = qCaCO3 * a;
                double caSO4 = qCaSO4 * s;
                double caFraction = 1 / (1 + caHCO3 + caCO3 + caSO4 + caOH);
                double ca = calcium * caFraction;
                double mgHCO3 = qMgHCO3 * a;
                double mgCO3 = qMgCO3 * a;
                double mgSO4 = qMgSO4 * s;
                double mgFraction = 1 / (1 + mgHCO3 + mgCO3 + mgSO4 + mgOH);
                double mg = magnesium * mgFraction;
                double naHCO3 = qNaHCO3 * a;
                double naCO3 = qNaCO3 * a;
                double naSO4 = qNaSO4 * s;
                double naFraction = 1 / (1 + naHCO3 + naCO3 + naSO4);
                double na = sodium * naFraction;
                double kSO4 = qKSO4 * s;
                double kFraction = 1 / (1 + kSO4);
                double k = potassium * kFraction;
                if (size <= smallStep) {
                    found = (inert
                                    + hydrogen
                                    + hydroxide
                                    + hco3
                                    + 4 * co3
                                    + 4 * so4
                                    + hso4
                                    + ca * (4 + caHCO3 + caOH)
                                    + mg * (4 + mgHCO3 + mgOH)
                                    + na * (1 + naCO3 + naSO4)
                                    + k * (1 + kSO4))
                            / 2;
                    if (round > 1 && Math.abs(found - at) <= 2e-13 * at) {
                        double[] m = molality;
                        m[0] = hydrogen;
                        m[1] = hydroxide;
                        m[2] = a * neutral;
                        m[3] = hco3;
                        m[4] = co3;
                        m[5] = ca;
                        m[6] = mg;
                        m[7] = na;
                        m[8] = k;
                        m[9] = so4;
                        m[10] = hso4;
                        m[11] = ca * caHCO3;
                        m[12] = ca * caCO3;
                        m[13] = ca * caSO4;
                        m[14] = ca * caOH;
                        m[15] = mg * mgHCO3;
                        m[16] = mg * mgCO3;
                        m[17] = mg * mgSO4;
                        m[18] = mg * mgOH;
                        m[19] = na * naHCO3;
                        m[20] = na * naCO3;
                        m[21] = na * naSO4;
                        m[22] = k * kSO4;
                        ionicStrength = at;
                        lnCarbonDioxide = v;
                        return evaluations;
                    }
                    break;
                }
                double caAlkalinity = caHCO3 + 2 * caCO3 + caOH;
                double mgAlkalinity = mgHCO3 + 2 * mgCO3 + mgOH;
                double naAlkalinity = naHCO3 + 2 * naCO3;
                double caCarbon = caHCO3 + caCO3;
                double mgCarbon = mgHCO3 + mgCO3;
                double naCarbon = naHCO3 + naCO3;
                double lackA = alkalinity
                        - (hydroxide + hco3 + 2 * co3 - hydrogen - hso4)
                        - (ca * caAlkalinity + mg * mgAlkalinity + na * naAlkalinity);
                double lackS = sulfate - (so4 + hso4 + ca * caSO4 + mg * mgSO4 + na * naSO4 + k * kSO4);
                double ac = hco3
                        + 2 * co3
                        + ca * (caHCO3 + 2 * caCO3 - caAlkalinity * caCarbon * caFraction)
                        + mg * (mgHCO3 + 2 * mgCO3 - mgAlkalinity * mgCarbon * mgFraction)
                        + na * (naAlkalinity - naAlkalinity * naCarbon * naFraction);
                double as = -hso4
                        - ca * caAlkalinity * caSO4 * caFraction
                        - mg * mgAlkalinity * mgSO4 * mgFraction
                        - na * naAlkalinity * naSO4 * naFraction;
                double cs = -ca * caCarbon * caSO4 * caFraction
                        - mg * mgCarbon * mgSO4 * mgFraction
                        - na * naCarbon * naSO4 * naFraction;
                double ss = so4
                        + hso4
                        + ca * (caSO4 - caSO4 * caSO4 * caFraction)
                        + mg * (mgSO4 - mgSO4 * mgSO4 * mgFraction)
                        + na * (naSO4 - naSO4 * naSO4 * naFraction)
                        + k * kSO4 * kFraction;
                double perSulfate = 1 / ss;
                double dv = cut((lackA - as * lackS * perSulfate) / (ac - as * cs * perSulfate));
                double dw = cut((lackS - cs * dv) * perSulfate);
                v += dv;
                w += dw;
                a = Math.exp(v);
                s = Math.exp(w);
                size = Math.max(Math.abs(dv), Math.abs(dw));
            }
            double lack = found - at;
            double next = found;
            if (round > 0 && lack != lackBefore) {
                double secant = at - lack * (at - before) / (lack - lackBefore);
                if (Math.abs(secant - found) <= found) {
                    next = secant;
                }
            }
            before = at;
            lackBefore = lack;
            at = next;
        }
        return -1;
    }

    private static double cut(double step) {
        return step > 4 ? 4 : step < -4 ? -4 : step;
    }
}
