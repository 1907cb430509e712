package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.EquilibriumConstant.BORIC_ACID;
import static evenwater.chemistry.kernel.EquilibriumConstant.CARBONIC_ACID_1;
import static evenwater.chemistry.kernel.EquilibriumConstant.CARBONIC_ACID_2;
import static evenwater.chemistry.kernel.EquilibriumConstant.CITRIC_ACID_1;
import static evenwater.chemistry.kernel.EquilibriumConstant.CITRIC_ACID_2;
import static evenwater.chemistry.kernel.EquilibriumConstant.CITRIC_ACID_3;
import static evenwater.chemistry.kernel.EquilibriumConstant.PHOSPHORIC_ACID_1;
import static evenwater.chemistry.kernel.EquilibriumConstant.PHOSPHORIC_ACID_2;
import static evenwater.chemistry.kernel.EquilibriumConstant.PHOSPHORIC_ACID_3;
import static evenwater.chemistry.kernel.EquilibriumConstant.SILICIC_ACID;
import static evenwater.chemistry.kernel.Places.CA;
import static evenwater.chemistry.kernel.Places.CA_CO3;
import static evenwater.chemistry.kernel.Places.CA_HCO3;
import static evenwater.chemistry.kernel.Places.CA_OH;
import static evenwater.chemistry.kernel.Places.CA_SO4;
import static evenwater.chemistry.kernel.Places.CO2;
import static evenwater.chemistry.kernel.Places.CO3;
import static evenwater.chemistry.kernel.Places.H;
import static evenwater.chemistry.kernel.Places.HCO3;
import static evenwater.chemistry.kernel.Places.HSO4;
import static evenwater.chemistry.kernel.Places.K;
import static evenwater.chemistry.kernel.Places.K_SO4;
import static evenwater.chemistry.kernel.Places.MG;
import static evenwater.chemistry.kernel.Places.MG_CO3;
import static evenwater.chemistry.kernel.Places.MG_HCO3;
import static evenwater.chemistry.kernel.Places.MG_OH;
import static evenwater.chemistry.kernel.Places.MG_SO4;
import static evenwater.chemistry.kernel.Places.NA;
import static evenwater.chemistry.kernel.Places.NA_CO3;
import static evenwater.chemistry.kernel.Places.NA_HCO3;
import static evenwater.chemistry.kernel.Places.NA_SO4;
import static evenwater.chemistry.kernel.Places.OH;
import static evenwater.chemistry.kernel.Places.SO4;

/**
 * Equilibrium constants at an ionic strength: molality of each species over what it is made of.
 *
 * <p>H⁺, CO₂ and SO₄²⁻ count by their activities h, a, s; the cations and the reference forms of the weak acids by their molalities.
 * So m(HCO₃⁻) is this times a/h, m(CaSO₄) is this times m(Ca²⁺) s, m(NH₃) is this times m(NH₄⁺)/h.
 */
final class ConditionalConstants {

    private ConditionalConstants() {}

    static void fill(SpeciationState state) {
        double[] q = state.conditional;
        double[] k = state.constants().value;
        double[] g = state.gamma;
        double k1 = k[CARBONIC_ACID_1.place()];
        double k12 = k1 * k[CARBONIC_ACID_2.place()];
        double neutral = 1 / g[CO2];

        q[H] = 1 / g[H];
        q[OH] = k[EquilibriumConstant.WATER.place()] / g[OH];
        q[CO2] = neutral;
        q[HCO3] = k1 / g[HCO3];
        q[CO3] = k12 / g[CO3];
        q[SO4] = 1 / g[SO4];
        q[HSO4] = k[EquilibriumConstant.BISULFATE.place()] / g[HSO4];

        double calcium = g[CA];
        q[CA_HCO3] = calcium * k1 * k[EquilibriumConstant.CALCIUM_BICARBONATE_PAIR.place()] / g[CA_HCO3];
        q[CA_CO3] = calcium * k12 * k[EquilibriumConstant.CALCIUM_CARBONATE_PAIR.place()] * neutral;
        q[CA_SO4] = calcium * k[EquilibriumConstant.CALCIUM_SULFATE_PAIR.place()] * neutral;
        q[CA_OH] = calcium * k[EquilibriumConstant.CALCIUM_HYDROXIDE_PAIR.place()] / g[CA_OH];

        double magnesium = g[MG];
        q[MG_HCO3] = magnesium * k1 * k[EquilibriumConstant.MAGNESIUM_BICARBONATE_PAIR.place()] / g[MG_HCO3];
        q[MG_CO3] = magnesium * k12 * k[EquilibriumConstant.MAGNESIUM_CARBONATE_PAIR.place()] * neutral;
        q[MG_SO4] = magnesium * k[EquilibriumConstant.MAGNESIUM_SULFATE_PAIR.place()] * neutral;
        q[MG_OH] = magnesium * k[EquilibriumConstant.MAGNESIUM_HYDROXIDE_PAIR.place()] / g[MG_OH];

        double sodium = g[NA];
        q[NA_HCO3] = sodium * k1 * k[EquilibriumConstant.SODIUM_BICARBONATE_PAIR.place()] * neutral;
        q[NA_CO3] = sodium * k12 * k[EquilibriumConstant.SODIUM_CARBONATE_PAIR.place()] / g[NA_CO3];
        q[NA_SO4] = sodium * k[EquilibriumConstant.SODIUM_SULFATE_PAIR.place()] / g[NA_SO4];
        q[K_SO4] = g[K] * k[EquilibriumConstant.POTASSIUM_SULFATE_PAIR.place()] / g[K_SO4];
        if (state.hasWeakAcids()) {
            weak(state);
        }
    }

    /** The acids and bases that most waters lack. */
    private static void weak(SpeciationState state) {
        double[] t = state.totals;
        if (t[Component.AMMONIA.place()] > 0) {
            ratio(state, Species.AMMONIUM, Species.AMMONIA, EquilibriumConstant.AMMONIUM);
        }
        if (t[Component.PHOSPHATE.place()] > 0) {
            ratio(state, Species.DIHYDROGEN_PHOSPHATE, Species.PHOSPHORIC_ACID, 1 / value(state, PHOSPHORIC_ACID_1));
            ratio(state, Species.DIHYDROGEN_PHOSPHATE, Species.HYDROGEN_PHOSPHATE, PHOSPHORIC_ACID_2);
            ratio(
                    state,
                    Species.DIHYDROGEN_PHOSPHATE,
                    Species.PHOSPHATE,
                    value(state, PHOSPHORIC_ACID_2) * value(state, PHOSPHORIC_ACID_3));
        }
        if (t[Component.BORATE.place()] > 0) {
            ratio(state, Species.BORIC_ACID, Species.BORATE, BORIC_ACID);
        }
        if (t[Component.SILICA.place()] > 0) {
            ratio(state, Species.SILICIC_ACID, Species.SILICATE, SILICIC_ACID);
        }
        if (t[Component.FLUORIDE.place()] > 0) {
            ratio(state, Species.FLUORIDE, Species.HYDROGEN_FLUORIDE, EquilibriumConstant.HYDROGEN_FLUORIDE);
        }
        if (t[Component.SULFIDE.place()] > 0) {
            ratio(state, Species.HYDROGEN_SULFIDE, Species.BISULFIDE, EquilibriumConstant.HYDROGEN_SULFIDE);
        }
        if (t[Component.CITRATE.place()] > 0) {
            ratio(state, Species.DIHYDROGEN_CITRATE, Species.CITRIC_ACID, 1 / value(state, CITRIC_ACID_1));
            ratio(state, Species.DIHYDROGEN_CITRATE, Species.HYDROGEN_CITRATE, CITRIC_ACID_2);
            ratio(
                    state,
                    Species.DIHYDROGEN_CITRATE,
                    Species.CITRATE,
                    value(state, CITRIC_ACID_2) * value(state, CITRIC_ACID_3));
        }
    }

    private static double value(SpeciationState state, EquilibriumConstant constant) {
        return state.constants().value[constant.place()];
    }

    private static void ratio(SpeciationState state, Species from, Species to, EquilibriumConstant constant) {
        ratio(state, from, to, value(state, constant));
    }

    private static void ratio(SpeciationState state, Species from, Species to, double k) {
        state.conditional[to.place()] = k * state.gamma[from.place()] / state.gamma[to.place()];
    }
}
