package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.Places.CA;
import static evenwater.chemistry.kernel.Places.CA_HCO3;
import static evenwater.chemistry.kernel.Places.CO2;
import static evenwater.chemistry.kernel.Places.CO3;
import static evenwater.chemistry.kernel.Places.H;
import static evenwater.chemistry.kernel.Places.HCO3;
import static evenwater.chemistry.kernel.Places.HSO4;
import static evenwater.chemistry.kernel.Places.K;
import static evenwater.chemistry.kernel.Places.K_SO4;
import static evenwater.chemistry.kernel.Places.MG;
import static evenwater.chemistry.kernel.Places.MG_HCO3;
import static evenwater.chemistry.kernel.Places.NA;
import static evenwater.chemistry.kernel.Places.NA_CO3;
import static evenwater.chemistry.kernel.Places.NA_HCO3;
import static evenwater.chemistry.kernel.Places.NA_SO4;
import static evenwater.chemistry.kernel.Places.OH;
import static evenwater.chemistry.kernel.Places.SO4;

/**
 * Molalities of all species at given activities of H⁺, CO₂ and SO₄²⁻, their sums, and how the sums move.
 *
 * <p>Cations bind ligands and weak acids protons, each within its own total, so their free parts follow without iteration: what is
 * left are three sums (alkalinity, carbon, sulfate) in three unknowns u = −ln h, v = ln a, w = ln s. The sums are the gradient of a
 * convex function of these unknowns, and their derivatives are second moments of what each species holds, which Newton's method
 * needs.
 */
final class MassBalances {

    /** Places in {@link SpeciationState#sums}: the sums, what they add without regard to sign, and their derivatives. */
    static final int ALKALINITY = 0;

    static final int CARBON = 1;
    static final int SULFATE = 2;
    static final int GROSS_ALKALINITY = 3;
    static final int AA = 4;
    static final int AC = 5;
    static final int AS = 6;
    static final int CC = 7;
    static final int CS = 8;
    static final int SS = 9;
    static final int COUNT = 10;

    private static final int NONE = -1;

    /** Weak acids and bases: which total, then species with 1 proton more, the reference form, with 1 and with 2 protons less. */
    private static final int[][] WEAK = {
        {Component.AMMONIA.place(), NONE, Species.AMMONIUM.place(), Species.AMMONIA.place(), NONE},
        {
            Component.PHOSPHATE.place(),
            Species.PHOSPHORIC_ACID.place(),
            Species.DIHYDROGEN_PHOSPHATE.place(),
            Species.HYDROGEN_PHOSPHATE.place(),
            Species.PHOSPHATE.place()
        },
        {Component.BORATE.place(), NONE, Species.BORIC_ACID.place(), Species.BORATE.place(), NONE},
        {Component.SILICA.place(), NONE, Species.SILICIC_ACID.place(), Species.SILICATE.place(), NONE},
        {Component.FLUORIDE.place(), Species.HYDROGEN_FLUORIDE.place(), Species.FLUORIDE.place(), NONE, NONE},
        {Component.SULFIDE.place(), NONE, Species.HYDROGEN_SULFIDE.place(), Species.BISULFIDE.place(), NONE},
        {
            Component.CITRATE.place(),
            Species.CITRIC_ACID.place(),
            Species.DIHYDROGEN_CITRATE.place(),
            Species.HYDROGEN_CITRATE.place(),
            Species.CITRATE.place()
        }
    };

    private MassBalances() {}

    /**
     * Writes the sums, with derivatives where another step of Newton's method follows and molalities where none does; h, a and s are
     * activities in mol/kg; a and s may be 0.
     */
    static void evaluate(SpeciationState state, double h, double a, double s, boolean derivatives) {
        double[] q = state.conditional;
        double[] m = state.molality;
        double[] sums = state.sums;
        double inverse = 1 / h;
        double x1 = a * inverse;
        double x2 = x1 * inverse;

        double hydrogen = q[H] * h;
        double hydroxide = q[OH] * inverse;
        double co2 = q[CO2] * a;
        double hco3 = q[HCO3] * x1;
        double co3 = q[CO3] * x2;
        double so4 = q[SO4] * s;
        double hso4 = q[HSO4] * s * h;
        if (!derivatives) {
            m[H] = hydrogen;
            m[OH] = hydroxide;
            m[CO2] = co2;
            m[HCO3] = hco3;
            m[CO3] = co3;
            m[SO4] = so4;
            m[HSO4] = hso4;
        }
        sums[ALKALINITY] = hydroxide + hco3 + 2 * co3 - hydrogen - hso4;
        sums[GROSS_ALKALINITY] = hydroxide + hco3 + 2 * co3 + hydrogen + hso4;
        sums[CARBON] = co2 + hco3 + co3;
        sums[SULFATE] = so4 + hso4;
        if (derivatives) {
            sums[AA] = hydroxide + hco3 + 4 * co3 + hydrogen + hso4;
            sums[AC] = hco3 + 2 * co3;
            sums[AS] = -hso4;
            sums[CC] = co2 + hco3 + co3;
            sums[CS] = 0;
            sums[SS] = so4 + hso4;
        }
        cation(state, Component.CALCIUM.place(), CA, CA_HCO3, inverse, x1, x2, s, derivatives);
        cation(state, Component.MAGNESIUM.place(), MG, MG_HCO3, inverse, x1, x2, s, derivatives);
        sodiumAndPotassium(state, x1, x2, s, derivatives);
        if (state.hasWeakAcids()) {
            weakAcids(state, h, inverse);
        }
    }

    private static void weakAcids(SpeciationState state, double h, double inverse) {
        for (int[] acid : WEAK) {
            if (state.totals[acid[0]] > 0) {
                weak(state, acid, h, inverse);
            }
        }
    }

    /** Calcium or magnesium, whose four pairs stand one after the other: with HCO₃⁻, CO₃²⁻, SO₄²⁻, OH⁻. */
    private static void cation(
            SpeciationState state,
            int component,
            int free,
            int pairs,
            double inverse,
            double x1,
            double x2,
            double s,
            boolean derivatives) {
        double[] q = state.conditional;
        double[] m = state.molality;
        double bicarbonate = q[pairs] * x1;
        double carbonate = q[pairs + 1] * x2;
        double sulfate = q[pairs + 2] * s;
        double hydroxide = q[pairs + 3] * inverse;
        double total = state.totals[component];
        double fraction = 1 / (1 + bicarbonate + carbonate + sulfate + hydroxide);
        double n = total * fraction;
        if (!derivatives) {
            m[free] = n;
            m[pairs] = bicarbonate * n;
            m[pairs + 1] = carbonate * n;
            m[pairs + 2] = sulfate * n;
            m[pairs + 3] = hydroxide * n;
        }
        double alkalinity = bicarbonate + 2 * carbonate + hydroxide;
        double carbon = bicarbonate + carbonate;
        double[] sums = state.sums;
        sums[ALKALINITY] += n * alkalinity;
        sums[GROSS_ALKALINITY] += n * alkalinity;
        sums[CARBON] += n * carbon;
        sums[SULFATE] += n * sulfate;
        if (derivatives) {
            sums[AA] += n * (bicarbonate + 4 * carbonate + hydroxide - alkalinity * alkalinity * fraction);
            sums[AC] += n * (bicarbonate + 2 * carbonate - alkalinity * carbon * fraction);
            sums[AS] -= n * alkalinity * sulfate * fraction;
            sums[CC] += n * (carbon - carbon * carbon * fraction);
            sums[CS] -= n * carbon * sulfate * fraction;
            sums[SS] += n * (sulfate - sulfate * sulfate * fraction);
        }
    }

    private static void sodiumAndPotassium(SpeciationState state, double x1, double x2, double s, boolean derivatives) {
        double[] q = state.conditional;
        double[] m = state.molality;
        double[] sums = state.sums;
        double bicarbonate = q[NA_HCO3] * x1;
        double carbonate = q[NA_CO3] * x2;
        double sulfate = q[NA_SO4] * s;
        double fraction = 1 / (1 + bicarbonate + carbonate + sulfate);
        double n = state.totals[Component.SODIUM.place()] * fraction;
        if (!derivatives) {
            m[NA] = n;
            m[NA_HCO3] = bicarbonate * n;
            m[NA_CO3] = carbonate * n;
            m[NA_SO4] = sulfate * n;
        }
        double alkalinity = bicarbonate + 2 * carbonate;
        double carbon = bicarbonate + carbonate;
        sums[ALKALINITY] += n * alkalinity;
        sums[GROSS_ALKALINITY] += n * alkalinity;
        sums[CARBON] += n * carbon;
        if (derivatives) {
            sums[AA] += n * (bicarbonate + 4 * carbonate - alkalinity * alkalinity * fraction);
            sums[AC] += n * (alkalinity - alkalinity * carbon * fraction);
            sums[AS] -= n * alkalinity * sulfate * fraction;
            sums[CC] += n * (carbon - carbon * carbon * fraction);
            sums[CS] -= n * carbon * sulfate * fraction;
        }

        double withPotassium = q[K_SO4] * s;
        double ofPotassium = 1 / (1 + withPotassium);
        double potassium = state.totals[Component.POTASSIUM.place()] * ofPotassium;
        if (!derivatives) {
            m[K] = potassium;
            m[K_SO4] = withPotassium * potassium;
        }
        sums[SULFATE] += n * sulfate + withPotassium * potassium;
        if (derivatives) {
            sums[SS] += n * (sulfate - sulfate * sulfate * fraction) + withPotassium * potassium * ofPotassium;
        }
    }

    private static void weak(SpeciationState state, int[] places, double h, double inverse) {
        double[] q = state.conditional;
        double[] m = state.molality;
        double plus = places[1] < 0 ? 0 : q[places[1]] * h;
        double minus = places[3] < 0 ? 0 : q[places[3]] * inverse;
        double minusTwo = places[4] < 0 ? 0 : q[places[4]] * inverse * inverse;
        double fraction = 1 / (1 + plus + minus + minusTwo);
        double n = state.totals[places[0]] * fraction;
        m[places[2]] = n;
        if (places[1] >= 0) {
            m[places[1]] = plus * n;
        }
        if (places[3] >= 0) {
            m[places[3]] = minus * n;
        }
        if (places[4] >= 0) {
            m[places[4]] = minusTwo * n;
        }
        double alkalinity = minus + 2 * minusTwo - plus;
        state.sums[ALKALINITY] += n * alkalinity;
        state.sums[GROSS_ALKALINITY] += n * (minus + 2 * minusTwo + plus);
        state.sums[AA] += n * (plus + minus + 4 * minusTwo - alkalinity * alkalinity * fraction);
    }
}
