package evenwater.chemistry.equilibrium;

import evenwater.chemistry.kernel.EquilibriumConstant;
import evenwater.chemistry.kernel.SpeciationState;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.substance.Ion;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * A mineral that a water may dissolve or drop.
 *
 * <p>An index above 0 says that a mineral may form, not that it does: dolomite, quartz and chalcedony hardly ever do from cold water,
 * calcite not below about 0.3 to 0.5 without a seed. Water of crystallisation counts with the activity
 * of water.
 */
public enum Mineral {
    /** Calcite, CaCO₃. */
    CALCITE("calcite", "CaCO₃", EquilibriumConstant.CALCITE, 0, Map.of(Ion.CALCIUM, 1, Ion.CARBONATE, 1)),
    /** Aragonite, CaCO₃. */
    ARAGONITE("aragonite", "CaCO₃", EquilibriumConstant.ARAGONITE, 0, Map.of(Ion.CALCIUM, 1, Ion.CARBONATE, 1)),
    /** Vaterite, CaCO₃. */
    VATERITE("vaterite", "CaCO₃", EquilibriumConstant.VATERITE, 0, Map.of(Ion.CALCIUM, 1, Ion.CARBONATE, 1)),
    /** Gypsum, CaSO₄·2H₂O. */
    GYPSUM("gypsum", "CaSO₄·2H₂O", EquilibriumConstant.GYPSUM, 2, Map.of(Ion.CALCIUM, 1, Ion.SULFATE, 1)),
    /** Anhydrite, CaSO₄. */
    ANHYDRITE("anhydrite", "CaSO₄", EquilibriumConstant.ANHYDRITE, 0, Map.of(Ion.CALCIUM, 1, Ion.SULFATE, 1)),
    /** Ordered dolomite, CaMg(CO₃)₂. */
    DOLOMITE(
            "dolomite",
            "CaMg(CO₃)₂",
            EquilibriumConstant.DOLOMITE,
            0,
            Map.of(Ion.CALCIUM, 1, Ion.MAGNESIUM, 1, Ion.CARBONATE, 2)),
    /** Fluorite, CaF₂. */
    FLUORITE("fluorite", "CaF₂", EquilibriumConstant.FLUORITE, 0, Map.of(Ion.CALCIUM, 1, Ion.FLUORIDE, 2)),
    /** Brucite, Mg(OH)₂. */
    BRUCITE("brucite", "Mg(OH)₂", EquilibriumConstant.BRUCITE, 0, Map.of(Ion.MAGNESIUM, 1, Ion.HYDROXIDE, 2)),
    /** Amorphous silica, SiO₂. */
    AMORPHOUS_SILICA("amorphous silica", "SiO₂", EquilibriumConstant.AMORPHOUS_SILICA, -2, Map.of(Ion.SILICA, 1)),
    /** Chalcedony, SiO₂. */
    CHALCEDONY("chalcedony", "SiO₂", EquilibriumConstant.CHALCEDONY, -2, Map.of(Ion.SILICA, 1)),
    /** Quartz, SiO₂. */
    QUARTZ("quartz", "SiO₂", EquilibriumConstant.QUARTZ, -2, Map.of(Ion.SILICA, 1));

    private final String words;
    private final String formula;
    private final EquilibriumConstant constant;
    /** Molecules of water set free by dissolving one formula unit. */
    private final int waters;

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable map
    private final Map<Ion, Integer> ions;

    /** The free ions as the solver has them, and how many of each. */
    @SuppressWarnings("ImmutableEnumChecker") // nobody writes to it
    private final Species[] species;

    @SuppressWarnings("ImmutableEnumChecker") // nobody writes to it
    private final int[] counts;

    Mineral(String words, String formula, EquilibriumConstant constant, int waters, Map<Ion, Integer> ions) {
        this.words = words;
        this.formula = formula;
        this.constant = constant;
        this.waters = waters;
        this.ions = Collections.unmodifiableMap(new TreeMap<>(ions));
        this.species = this.ions.keySet().stream().map(Free::speciesOf).toArray(Species[]::new);
        this.counts = this.ions.values().stream().mapToInt(Integer::intValue).toArray();
    }

    /**
     * Returns what one formula unit dissolves into.
     *
     * @return ions or solutes, and how many of each
     */
    public Map<Ion, Integer> ions() {
        return ions;
    }

    /**
     * Returns the formula.
     *
     * @return such as {@code CaSO₄·2H₂O}
     */
    public String formula() {
        return formula;
    }

    EquilibriumConstant constant() {
        return constant;
    }

    double lnActivityProduct(SpeciationState state, double waterActivity) {
        double sum = waters == 0 ? 0 : waters * Math.log(waterActivity);
        for (int i = 0; i < species.length; i++) {
            double molality = state.molality(species[i]);
            if (!(molality > 0)) {
                return Double.NEGATIVE_INFINITY;
            }
            sum += counts[i] * Math.log(molality * state.gamma(species[i]));
        }
        return sum;
    }

    /** Returns the name in words, such as "amorphous silica". */
    @Override
    public String toString() {
        return words;
    }

    /** A holder, since constants of an enum are made before its static fields. */
    private static final class Free {
        static final Map<Ion, Species> IONS = Map.of(
                Ion.CALCIUM, Species.CALCIUM,
                Ion.MAGNESIUM, Species.MAGNESIUM,
                Ion.CARBONATE, Species.CARBONATE,
                Ion.SULFATE, Species.SULFATE,
                Ion.FLUORIDE, Species.FLUORIDE,
                Ion.HYDROXIDE, Species.HYDROXIDE,
                Ion.SILICA, Species.SILICIC_ACID);

        static Species speciesOf(Ion ion) {
            return Objects.requireNonNull(IONS.get(ion));
        }
    }
}
