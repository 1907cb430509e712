package evenwater.examples.benchmark;

import evenwater.chemistry.kernel.ConductivityScratch;
import evenwater.chemistry.kernel.EquilibriumConstant;
import evenwater.chemistry.kernel.LimitingConductivity;
import evenwater.chemistry.kernel.OnsagerFuoss;
import evenwater.chemistry.kernel.SolventWater;
import evenwater.chemistry.kernel.SpeciationState;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.kernel.WaterViscosity;

/** Conductivity and indices from the numbers of a speciation, by the kernels alone; allocates nothing. */
final class KernelAnalysis {

    private static final double LN_10 = Math.log(10);
    private static final Species[] SPECIES = Species.values();
    private static final double DENSITY_AT_25 = SolventWater.density(298.15);

    double microsiemensPerCentimetre;
    double calcite;
    double gypsum;
    double dolomite;
    double ryznar;

    private final double kelvin;
    private final Species[] carriers = new Species[SPECIES.length];
    private final int[] limitingPlace = new int[SPECIES.length];
    private final int count;
    private final double[] molesPerLitre = new double[SPECIES.length + 2];
    private final double[] chargeNumber = new double[SPECIES.length + 2];
    private final double[] limiting = new double[SPECIES.length + 2];
    private final double[] limitingByPlace = new double[LimitingConductivity.values().length];
    private final ConductivityScratch scratch = new ConductivityScratch(SPECIES.length + 2);

    KernelAnalysis(double kelvin) {
        this.kelvin = kelvin;
        int n = 0;
        for (Species species : SPECIES) {
            for (LimitingConductivity ion : LimitingConductivity.values()) {
                if (ion.symbol().equals(species.symbol())) {
                    carriers[n] = species;
                    chargeNumber[n] = species.chargeNumber();
                    limitingPlace[n] = ion.place();
                    n++;
                }
            }
        }
        count = n;
    }

    /** Writes what this class holds; Cl⁻, NO₃⁻ and all that reacts with nothing in mol/L. Returns the sum of it. */
    double write(SpeciationState state, double chloride, double nitrate, double inertAmount) {
        LimitingConductivity.write(kelvin, limitingByPlace);
        double litresAt25 = SolventWater.density(kelvin) / DENSITY_AT_25;
        for (int i = 0; i < count; i++) {
            molesPerLitre[i] = state.molality(carriers[i]) * litresAt25;
            limiting[i] = limitingByPlace[limitingPlace[i]];
        }
        spectator(count, chloride * litresAt25, LimitingConductivity.CHLORIDE);
        spectator(count + 1, nitrate * litresAt25, LimitingConductivity.NITRATE);
        microsiemensPerCentimetre = OnsagerFuoss.microsiemensPerCentimetre(
                count + 2,
                molesPerLitre,
                chargeNumber,
                limiting,
                kelvin,
                SolventWater.dielectricConstant(kelvin),
                WaterViscosity.pascalSeconds(kelvin),
                scratch);

        double dissolved = inertAmount;
        for (Species species : SPECIES) {
            dissolved += state.molality(species);
        }
        double lnWater = Math.log(1 - 0.017 * dissolved);
        double lnCalcium = lnActivity(state, Species.CALCIUM);
        double lnMagnesium = lnActivity(state, Species.MAGNESIUM);
        double lnCarbonate = lnActivity(state, Species.CARBONATE);
        double lnSulfate = lnActivity(state, Species.SULFATE);
        calcite = (lnCalcium + lnCarbonate - state.lnConstant(EquilibriumConstant.CALCITE)) / LN_10;
        gypsum = (lnCalcium + lnSulfate + 2 * lnWater - state.lnConstant(EquilibriumConstant.GYPSUM)) / LN_10;
        dolomite = (lnCalcium + lnMagnesium + 2 * lnCarbonate - state.lnConstant(EquilibriumConstant.DOLOMITE)) / LN_10;
        ryznar = -state.lnAcid() / LN_10 - 2 * calcite;
        return microsiemensPerCentimetre + calcite + gypsum + dolomite + ryznar;
    }

    private static double lnActivity(SpeciationState state, Species species) {
        return Math.log(state.molality(species) * state.gamma(species));
    }

    private void spectator(int i, double amount, LimitingConductivity ion) {
        molesPerLitre[i] = amount;
        chargeNumber[i] = ion.chargeNumber();
        limiting[i] = limitingByPlace[ion.place()];
    }
}
