package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.equilibrium.SolverInput.MOLES_PER_MILLIMOLE;
import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.WaterUnits.ATMOSPHERE;

import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.EquilibriumConstant;
import evenwater.chemistry.kernel.Given;
import evenwater.chemistry.kernel.SpeciationKernel;
import evenwater.chemistry.kernel.SpeciationState;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import javax.measure.quantity.Pressure;

/**
 * The species of a water in equilibrium with themselves, and what follows from them: pH, carbon dioxide, saturation.
 *
 * <p>Computed from what a water conserves (totals, alkalinity, inorganic carbon), or from a measured pH where the carbon is unknown. Ion
 * pairs of Ca, Mg, Na and K with carbonate, sulfate and hydroxide and the weak acids ammonium, phosphate, borate, silica, fluoride, sulfide
 * and citrate take part where they are present; all other ions count in the ionic strength alone.
 *
 * <p><b>Accuracy.</b> Between sets of constants in print, pH in contact with air differs by 0.02, the calcite index by 0.03, CO₂ by 2 %. The
 * constants hold from 0 °C to 50 °C; waters to some 5000 µS/cm are well described; in sea water at 25 °C CO₂ comes out 13 % low and the
 * calcite index 0.05 high. Complexes of metals, organic acids and humic matter are left out: brown
 * water has less carbon than its titration says. A litre is taken as a kilogram of water, which shifts indices by less than 0.002 in
 * fresh water.
 *
 * <p>Immutable and thread-safe.
 */
public final class Speciation {

    private static final double LN_10 = Math.log(10);
    private static final Species[] SPECIES = Species.values();

    /** Carbonates over H⁺ and OH⁻: a pH that is read to 0.1 leaves a quarter of these open. */
    private static final double LEAST_TOLD = 0.25;

    /** A gas is taken as ideal, and CO₂ as a trace in the water. */
    private static final double MOST_ATMOSPHERES = 10 * (1 + 1e-9);

    private final Water water;
    private final SpeciationState state;
    private final double waterActivity;

    private Speciation(Water water, SpeciationState state, double waterActivity) {
        this.water = water;
        this.state = state;
        this.waterActivity = waterActivity;
    }

    /**
     * Returns the species of a water, with the activity law of Truesdell and Jones.
     *
     * @param water with its inorganic carbon or a measured pH; 0 to 50 °C
     * @return the speciation
     * @throws NoAnswerException if neither carbon nor pH is known, if they contradict the alkalinity, if the pH is so far off that it tells
     *     nothing of the carbon, or if the ionic strength is above 1 mol/L or the partial pressure of CO₂ above 10 atm
     * @throws IllegalArgumentException if the temperature is out of range
     */
    public static Speciation of(Water water) {
        return of(water, ActivityLaw.TRUESDELL_JONES);
    }

    /**
     * Returns the species of a water by an activity law of your choice.
     *
     * @param water with its inorganic carbon or a measured pH; 0 to 50 °C
     * @param law of the activity coefficients
     * @return the speciation
     * @throws NoAnswerException as {@link #of(Water)}
     * @throws IllegalArgumentException if the temperature is out of range
     */
    public static Speciation of(Water water, ActivityLaw law) {
        double celsius = Objects.requireNonNull(water, "water").temperature().in(WaterUnits.CELSIUS);
        if (!(celsius <= 50 + 1e-9)) {
            throw new IllegalArgumentException(
                    "temperature of a speciation must be from 0 °C to 50 °C, but was " + water.temperature());
        }
        return extrapolated(water, law);
    }

    /**
     * Returns the species of a hot water, beyond the range of some constants.
     *
     * <p>From 50 to 90 °C the constants of carbonate and calcite still hold, the pairs with sulfate and the weak acids are extrapolated by van
     * 't Hoff's law; above 90 °C calcite is extrapolated too. Made for what boiling drops; trust the amounts, not the pH.
     *
     * @param water with its inorganic carbon or a measured pH; 0 to 100 °C
     * @param law of the activity coefficients
     * @return the speciation
     * @throws NoAnswerException as {@link #of(Water)}
     */
    public static Speciation extrapolated(Water water, ActivityLaw law) {
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(law, "law");
        double alkalinity = milliequivalents(water.alkalinity()) * MOLES_PER_MILLIMOLE;
        OptionalDouble pH = water.measuredPH();
        if (water.carbon().isPresent()) {
            double carbon = water.carbon().get().in(MILLIMOLE_PER_LITRE) * MOLES_PER_MILLIMOLE;
            return solve(water, law, Given.ALKALINITY_AND_CARBON, alkalinity, carbon);
        }
        if (pH.isEmpty()) {
            throw new NoAnswerException(
                    "pH of this water is unknown: it states neither inorganic carbon nor a measured pH (a change or blend drops one)");
        }
        Speciation found = solve(water, law, Given.PH_AND_ALKALINITY, pH.getAsDouble(), alkalinity);
        found.refuseIfThePHTellsNoCarbon();
        return found.withItsCarbon();
    }

    /** The two figures in the order of {@code given}, in mol/L or as a pH; the water keeps what it states. */
    static Speciation solve(Water water, ActivityLaw law, Given given, double first, double second) {
        SpeciationState state = SolverInput.of(water);
        int status = SpeciationKernel.solve(state, law, given, first, second);
        if (status != SpeciationKernel.CONVERGED) {
            throw Unsolved.exception(water, status, given, first, second, state);
        }
        if (state.ionicStrength() > 1) {
            AmountConcentration found = SolverInput.concentration(state.ionicStrength());
            throw new NoAnswerException(
                    "ionic strength must be at most 1000 mmol/L for the activity coefficients to mean anything, but is "
                            + found.toText(Locale.ROOT, 6),
                    found);
        }
        Speciation solved = new Speciation(water, state, waterActivity(water, state));
        if (solved.atmospheres() > MOST_ATMOSPHERES) {
            WaterQuantity<Pressure> pressure = solved.partialPressureOfCarbonDioxide();
            throw new NoAnswerException(
                    "partial pressure of CO₂ must be at most 10 atm to be computed, but would be "
                            + pressure.toText(Locale.ROOT, 4),
                    pressure);
        }
        return solved;
    }

    /** In mineral acid or caustic, the last digit of a pH outweighs all carbonate: a carbon computed from it would be noise. */
    private void refuseIfThePHTellsNoCarbon() {
        double carbonates = state.molality(Species.BICARBONATE) + 2 * state.molality(Species.CARBONATE);
        double ofWater = state.molality(Species.HYDROGEN) + state.molality(Species.HYDROXIDE);
        if (carbonates < LEAST_TOLD * ofWater) {
            throw new NoAnswerException(
                    "pH " + water.measuredPH().orElse(pH()) + " and alkalinity "
                            + water.alkalinity().toText(Locale.ROOT, 6)
                            + " do not tell the inorganic carbon: H⁺ and OH⁻ outweigh it more than fourfold",
                    water.alkalinity());
        }
    }

    /** The same species, of a water that knows its carbon. */
    Speciation withItsCarbon() {
        return new Speciation(water.withCarbon(carbon()), state, waterActivity);
    }

    double gammaOf(Species species) {
        return state.gamma(species);
    }

    double alkalinityInMolesPerLitre() {
        return state.alkalinity();
    }

    private static double milliequivalents(Alkalinity alkalinity) {
        return alkalinity.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }

    /**
     * Returns the water, with its inorganic carbon: where a measured pH was stated, what it means for the carbon.
     *
     * @return a water that can be changed and blended without losing its pH
     */
    public Water water() {
        return water;
    }

    /**
     * Returns the pH.
     *
     * @return −lg of the activity of H⁺, molal scale; no unit
     */
    public double pH() {
        return -state.lnAcid() / LN_10;
    }

    /**
     * Returns the total inorganic carbon, pairs included.
     *
     * @return carbon in mmol/L
     */
    public AmountConcentration carbon() {
        return SolverInput.concentration(state.carbon());
    }

    /**
     * Returns the titration alkalinity of the species.
     *
     * @return alkalinity in meq/L
     */
    public Alkalinity alkalinity() {
        return Alkalinity.of(state.alkalinity() / MOLES_PER_MILLIMOLE, Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }

    /**
     * Returns the dissolved carbon dioxide, carbonic acid included.
     *
     * @return CO₂ in mmol/L
     */
    public AmountConcentration carbonDioxide() {
        return concentration(Species.CARBON_DIOXIDE);
    }

    /**
     * Returns the partial pressure of carbon dioxide of an air with which the water would exchange nothing.
     *
     * @return pressure in atm; that of the open air is some 420e-6 atm
     */
    public WaterQuantity<Pressure> partialPressureOfCarbonDioxide() {
        return WaterUnits.pressure(atmospheres(), ATMOSPHERE);
    }

    private double atmospheres() {
        double henry = Math.exp(state.lnConstant(EquilibriumConstant.CARBON_DIOXIDE_GAS));
        return state.carbonDioxideActivity() / henry;
    }

    /**
     * Returns the ionic strength of the species, pairs counted with their own charge.
     *
     * @return ½ Σ z² c in mmol/L
     */
    public AmountConcentration ionicStrength() {
        return SolverInput.concentration(state.ionicStrength());
    }

    /**
     * Returns the concentration of a species.
     *
     * @param species a free ion, neutral solute or pair
     * @return concentration in mmol/L; 0 if it is not there
     */
    public AmountConcentration concentration(Species species) {
        return SolverInput.concentration(state.molality(species));
    }

    /**
     * Returns the spectator ions: those that form no pair and take up no acid here, so that their totals are their concentrations.
     *
     * @return such as Cl⁻ and NO₃⁻, in the order of the ions; may hold neutral solutes
     */
    public List<Ion> spectatorIons() {
        List<Ion> spectators = new ArrayList<>();
        for (Ion ion : water.ions()) {
            if (SolverInput.isSpectator(ion)) {
                spectators.add(ion);
            }
        }
        return Collections.unmodifiableList(spectators);
    }

    /**
     * Returns the activity coefficient of a species that is present.
     *
     * @param species a free ion, neutral solute or pair
     * @return γ on the molal scale; no unit
     * @throws NoAnswerException if there is nothing of it
     */
    public double activityCoefficient(Species species) {
        if (!(state.molality(species) > 0)) {
            throw new NoAnswerException("this water has no " + species.symbol());
        }
        return state.gamma(species);
    }

    /**
     * Returns the saturation index of a mineral: {@code lg (ion activity product / solubility product)}.
     *
     * @param mineral which
     * @return 0 at saturation, negative where it would dissolve, positive where it may precipitate; empty if the water has nothing of one
     *     of its ions
     */
    public OptionalDouble saturationIndex(Mineral mineral) {
        double ln = mineral.lnActivityProduct(state, waterActivity) - state.lnConstant(mineral.constant());
        return Double.isInfinite(ln) ? OptionalDouble.empty() : OptionalDouble.of(ln / LN_10);
    }

    /**
     * Returns the activity of the water itself: {@code 1 − 0.017 Σ m} over all that is dissolved.
     *
     * @return no unit; 0.98 in sea water
     * @see "R. M. Garrels and C. L. Christ, Solutions, Minerals, and Equilibria, Harper and Row, New York 1965 (from memory)"
     */
    public double waterActivity() {
        return waterActivity;
    }

    private static double waterActivity(Water water, SpeciationState state) {
        double sum = SolverInput.inertAmount(water);
        for (Species species : SPECIES) {
            sum += state.molality(species);
        }
        return 1 - 0.017 * sum;
    }

    /**
     * Returns the un-ionised share of the ammonia, at the ionic strength of this water.
     *
     * @return NH₃ over NH₃ and NH₄⁺; no unit, 0 to 1; empty if there is no ammonia
     */
    public OptionalDouble unionisedAmmonia() {
        double un = state.molality(Species.AMMONIA);
        double both = un + state.molality(Species.AMMONIUM);
        return both > 0 ? OptionalDouble.of(un / both) : OptionalDouble.empty();
    }

    /**
     * Returns how well the balances of alkalinity, carbon and sulfate are met.
     *
     * @return largest residual relative to what is balanced; no unit, at most 1e-12
     */
    public double residual() {
        return state.residual();
    }

    /** Returns pH, carbon and ionic strength, for logs; all digits. */
    @Override
    public String toString() {
        return "speciation at " + water.temperature() + ": pH " + pH() + ", CO₂ " + carbonDioxide()
                + ", inorganic carbon " + carbon() + ", ionic strength " + ionicStrength();
    }
}
