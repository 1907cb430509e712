package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.equilibrium.SolverInput.MOLES_PER_MILLIMOLE;
import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.Given;
import evenwater.chemistry.kernel.MonotoneInverse;
import evenwater.chemistry.kernel.SaturationFormsKernel;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.water.HardnessCount;
import evenwater.chemistry.water.Water;
import java.util.Objects;
import java.util.OptionalDouble;
import javax.measure.quantity.Temperature;

/**
 * Whether a water drops or dissolves calcium carbonate, by the indices of the water trade.
 *
 * <p>The name of Langelier stands for several numbers, and each has its own method here. All speak of calcite alone: lead, copper and softened
 * water need other measures, and a pipe plan more than an index.
 *
 * <ul>
 *   <li>{@link #langelierByActivities}: lg of the ion activity product over the solubility product, of free Ca²⁺ and CO₃²⁻. It asks
 *       what calcite does in this water now.
 *   <li>{@link #langelierBySaturationPH}: by the same constants, how far the pH is from that at which the same total calcium and
 *       titration alkalinity are saturated. Alkalinity is not all HCO₃⁻, and its form shifts on the way: in natural waters from pH 6.3 to 8.9
 *       it lies 0.21 below to 0.22 above the index by activities, least near saturation, most in very soft or alkaline water.
 *   <li>{@link #langelierByShortForm}: pH − pHs by the textbook, with logarithms of hardness, alkalinity, dissolved solids and temperature.
 *       Its numbers stand for pK₂ − pKs of calcite of 2.00 at 25 °C, where newer constants have 1.85, and fall more steeply with temperature:
 *       in the same natural waters it lies 0.24 below to 0.22 above the index by activities, in cold water to 0.33 below.
 *   <li>{@link #factorTableIndex}: the table of pool operators, in a fixed saltiness: 0.29 to 0.04 below, in cold soft water
 *       0.46 below.
 * </ul>
 *
 * <p>Above pH 9 they part: CO₃²⁻ and OH⁻ take much of the alkalinity, which the last two count as HCO₃⁻ (0.85 and more too high in a soda
 * lake of pH 9.6). One water, of 240 mg/L calcium hardness and 196 mg/L alkalinity as CaCO₃ with 400 mg/L of solids, pH 7.5, 25 °C, has
 * +0.38, +0.38, +0.23 and +0.29. So an index means little without the name of its form. The figures are computed by the tests from 59
 * natural and 11 made-up waters.
 *
 * <p>Immutable and thread-safe.
 *
 * @see "W. F. Langelier, J. Am. Water Works Assoc. 28 (1936) 1500 (from memory)"
 */
public final class CalciumCarbonateIndices {

    private static final double LOWEST_PH = 3;
    private static final double HIGHEST_PH = 12;
    private static final double STEP = 0.25;

    /** In °C. */
    private static final double HOTTEST_OF_SHORT_FORM = 90;

    /** 128 °F in °C. */
    private static final double HOTTEST_OF_FACTOR_TABLE = (128 - 32) / 1.8;

    /** In mg/L, as all solids here. */
    private static final double LEAST_SOLIDS = 10;

    private static final double MOST_SOLIDS = 10_000;
    private static final double MOST_SOLIDS_OF_FACTOR_TABLE = 1000;

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
        boolean begun = false;
        for (double pH = LOWEST_PH; pH < HIGHEST_PH; pH += STEP) {
            double index = indexAt(pH + STEP);
            if (Double.isNaN(index)
                    && begun) { // no such water: hydroxide alone is more than the alkalinity from here on
                return OptionalDouble.empty();
            }
            begun |= !Double.isNaN(index); // in much alkalinity the lowest pH takes more CO₂ than can be computed
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
     * Returns the Langelier index by the textbook short form: {@code pH − pHs} with {@link #saturationPHByShortForm}.
     *
     * @return 0 at saturation; empty without calcium or where alkalinity is not above 0
     * @throws NoAnswerException as {@link #saturationPHByShortForm}
     */
    public OptionalDouble langelierByShortForm() {
        OptionalDouble saturation = saturationPHByShortForm();
        return saturation.isPresent()
                ? OptionalDouble.of(speciation.pH() - saturation.getAsDouble())
                : OptionalDouble.empty();
    }

    /**
     * Returns the pH of saturation by the textbook short form: {@code pHs = (9.3 + A + B) − (C + D)}.
     *
     * <p>{@code A = (lg S − 1) / 10} of dissolved solids S in mg/L, {@code B = 34.55 − 13.12 lg T} of temperature T in K, {@code C = lg Ca − 0.4}
     * of calcium hardness and {@code D = lg M} of titration alkalinity in mg/L as CaCO₃. The solids of the textbook are weighed after drying, so
     * S is {@link Water#residueAt180Celsius}; with the sum of all ions instead, pHs would be up to 0.024 higher.
     *
     * <p>Meant for 0 to 90 °C and 10 to 10 000 mg/L of solids: below, A would be negative. The tables in print end at 1000 mg/L of solids and
     * go from 10 to 1000 mg/L of calcium hardness and alkalinity (from memory).
     *
     * @return pHs; no unit; empty without calcium or where alkalinity is not above 0
     * @throws NoAnswerException if temperature or dissolved solids are out of these ranges
     * @see "Carrier Air Conditioning Company, Handbook of Air Conditioning System Design, McGraw-Hill, 1965 (from memory)"
     * @see "ASTM D3739, Langelier saturation index for reverse osmosis: 10 to 10 000 mg/L of dissolved solids (from memory)"
     */
    public OptionalDouble saturationPHByShortForm() {
        if (lacksHardnessOrAlkalinity()) {
            return OptionalDouble.empty();
        }
        double celsius = celsiusTo(HOTTEST_OF_SHORT_FORM, "90 °C", "the short form");
        double solids = solidsFromTo(LEAST_SOLIDS, MOST_SOLIDS, "the short form is meant for 10 to 10000 mg/L");
        return OptionalDouble.of(SaturationFormsKernel.shortFormSaturationPH(
                solids, celsius + 273.15, calciumHardness(), alkalinityAsCalciumCarbonate()));
    }

    /**
     * Returns the Ryznar index by the textbook short form: {@code 2 pHs − pH} with {@link #saturationPHByShortForm}.
     *
     * @return no unit; read as {@link #ryznar}; empty without calcium or where alkalinity is not above 0
     * @throws NoAnswerException as {@link #saturationPHByShortForm}
     */
    public OptionalDouble ryznarByShortForm() {
        OptionalDouble saturation = saturationPHByShortForm();
        return saturation.isPresent()
                ? OptionalDouble.of(2 * saturation.getAsDouble() - speciation.pH())
                : OptionalDouble.empty();
    }

    /**
     * Returns the saturation index by the factor table of pool operators: {@code pH + TF + CF + AF − 12.1}.
     *
     * <p>TF is looked up by temperature, {@code CF = lg Ca − 0.4} and {@code AF = lg M} as in the short form; 12.1 stands for the saltiness of an
     * ordinary pool. Pool operators round each factor to one decimal, and first take off the alkalinity that cyanuric acid brings: so should you.
     *
     * @return 0 at saturation; empty without calcium or where alkalinity is not above 0
     * @throws NoAnswerException if the temperature is above 53.3 °C (128 °F), where the table ends, or there are more than 1000 mg/L of
     *     dissolved solids ({@link Water#residueAt180Celsius}), where 12.1 does not hold
     * @see "Training of pool operators (common practice; the temperatures are from memory)"
     */
    public OptionalDouble factorTableIndex() {
        if (lacksHardnessOrAlkalinity()) {
            return OptionalDouble.empty();
        }
        double celsius = celsiusTo(HOTTEST_OF_FACTOR_TABLE, "53.3 °C", "the factor table");
        solidsFromTo(0, MOST_SOLIDS_OF_FACTOR_TABLE, "the factor table is meant for at most 1000 mg/L");
        return OptionalDouble.of(SaturationFormsKernel.factorTableIndex(
                speciation.pH(), celsius * 1.8 + 32, calciumHardness(), alkalinityAsCalciumCarbonate()));
    }

    private boolean lacksHardnessOrAlkalinity() {
        return !(calciumHardness() > 0 && alkalinityAsCalciumCarbonate() > 0);
    }

    private double calciumHardness() {
        return speciation
                .water()
                .hardnessForms(HardnessCount.CALCIUM_AND_MAGNESIUM)
                .calcium()
                .in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
    }

    private double alkalinityAsCalciumCarbonate() {
        return speciation.water().alkalinity().in(Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
    }

    private double celsiusTo(double hottest, String inWords, String form) {
        WaterQuantity<Temperature> temperature = speciation.water().temperature();
        double celsius = temperature.in(WaterUnits.CELSIUS);
        if (!(celsius <= hottest + Checked.ROUNDING)) {
            throw new NoAnswerException(
                    form + " is stated for 0 °C to " + inWords + ", but temperature was " + temperature, temperature);
        }
        return celsius;
    }

    private double solidsFromTo(double least, double most, String range) {
        MassConcentration solids = speciation.water().residueAt180Celsius();
        double milligrams = solids.in(MassConcentration.MILLIGRAM_PER_LITRE);
        if (!(milligrams >= least * (1 - Checked.ROUNDING) && milligrams <= most * (1 + Checked.ROUNDING))) {
            throw new NoAnswerException(range + " of dissolved solids, but they were " + solids, solids);
        }
        return milligrams;
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
