package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.equilibrium.SolverInput.MOLES_PER_MILLIMOLE;
import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.Given;
import evenwater.chemistry.kernel.MonotoneInverse;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.water.Water;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Whether a water drops or dissolves calcium carbonate, by the indices of the water trade.
 *
 * <p>The name of Langelier stands for several numbers that differ by up to 0.45: each has its own method here. All speak of calcite alone:
 * lead, copper and softened water need other measures, and a pipe plan more than an index.
 *
 * <p>Immutable and thread-safe.
 *
 * @see "W. F. Langelier, J. Am. Water Works Assoc. 28 (1936) 1500 (from memory)"
 */
public final class CalciumCarbonateIndices {

    private static final double LOWEST_PH = 3;
    private static final double HIGHEST_PH = 12;
    private static final double STEP = 0.25;

    private static final double GRAMS_PER_MOLE =
            Formula.parse("CaCO3").molarMass().in(MolarMass.GRAM_PER_MOLE);

    private final Speciation speciation;

    private CalciumCarbonateIndices(Speciation speciation) {
        this.speciation = speciation;
    }

    /**
     * Returns the indices of a water.
     *
     * @param speciation of the water
     * @return the indices
     */
    public static CalciumCarbonateIndices of(Speciation speciation) {
        return new CalciumCarbonateIndices(Objects.requireNonNull(speciation, "speciation"));
    }

    /**
     * Returns the Langelier index by activities: the saturation index of calcite, {@code lg (a(Ca²⁺) a(CO₃²⁻) / K)}.
     *
     * <p>The same as pH less the pH at which these very activities of Ca²⁺ and HCO₃⁻ would be saturated.
     *
     * @return 0 at saturation, positive where calcite may drop; empty without calcium or carbonate
     */
    public OptionalDouble langelierByActivities() {
        return speciation.saturationIndex(Mineral.CALCITE);
    }

    /**
     * Returns the Langelier index by the pH of saturation: {@code pH − pHs}, where a water of this total calcium and this titration alkalinity
     * is saturated at pHs.
     *
     * @return 0 at saturation; empty where there is no such pH, as in very soft water
     */
    public OptionalDouble langelierBySaturationPH() {
        OptionalDouble saturation = saturationPH();
        return saturation.isPresent()
                ? OptionalDouble.of(speciation.pH() - saturation.getAsDouble())
                : OptionalDouble.empty();
    }

    /**
     * Returns the pH at which a water of this total calcium and this titration alkalinity is saturated with calcite, the lower one if there are
     * two; CO₂ is taken out or added to reach it.
     *
     * @return pHs; no unit; empty where there is none from 3 to 12
     */
    public OptionalDouble saturationPH() {
        if (langelierByActivities().isEmpty()) {
            return OptionalDouble.empty();
        }
        for (double pH = LOWEST_PH; pH < HIGHEST_PH; pH += STEP) {
            double index = indexAt(pH + STEP);
            if (Double.isNaN(index)) { // no such water: hydroxide alone is more than the alkalinity from here on
                return OptionalDouble.empty();
            }
            if (index >= 0) {
                return OptionalDouble.of(MonotoneInverse.of(this::indexAt, pH, pH + STEP, 0));
            }
        }
        return OptionalDouble.empty();
    }

    /** The calcite index at another pH of the same alkalinity, or NaN. */
    private double indexAt(double pH) {
        Water water = speciation.water();
        double alkalinity = water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE) * MOLES_PER_MILLIMOLE;
        try {
            return Speciation.solve(water, ActivityLaw.TRUESDELL_JONES, Given.PH_AND_ALKALINITY, pH, alkalinity)
                    .saturationIndex(Mineral.CALCITE)
                    .orElse(Double.NaN);
        } catch (NoAnswerException noSuchWater) {
            return Double.NaN;
        }
    }

    /**
     * Returns the Ryznar index by activities: {@code 2 pHs − pH = pH − 2 SI}.
     *
     * @return no unit; 6 to 7 near balance, below 6 scale, above 7.5 to 8 corrosion; empty without calcium or carbonate
     * @see "J. W. Ryznar, J. Am. Water Works Assoc. 36 (1944) 472 (from memory)"
     */
    public OptionalDouble ryznar() {
        OptionalDouble index = langelierByActivities();
        return index.isPresent()
                ? OptionalDouble.of(speciation.pH() - 2 * index.getAsDouble())
                : OptionalDouble.empty();
    }

    /**
     * Returns the calcium carbonate precipitation potential: what would drop until equilibrium, closed to the air; calcium, alkalinity and carbon
     * move together.
     *
     * @return CaCO₃ in mg/L; negative where so much would dissolve
     */
    public MassConcentration precipitationPotential() {
        double millimoles = MineralEquilibrium.dissolved(speciation.water(), Mineral.CALCITE)
                .in(MILLIMOLE_PER_LITRE);
        return MassConcentration.of(-millimoles * GRAMS_PER_MOLE, MassConcentration.MILLIGRAM_PER_LITRE);
    }
}
