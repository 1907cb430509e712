package evenwater.chemistry.kernel;

/**
 * The plain numbers of one speciation: what goes into {@link SpeciationKernel} and what comes out.
 *
 * <p>Make one for each thread and use it again: the solver allocates nothing. Set the temperature first, then the totals, then solve.
 * All amounts are in mol per kg of water. Not thread-safe.
 */
public final class SpeciationState {

    static final int SPECIES = Species.values().length;

    private TemperatureConstants constants = TemperatureConstants.AT_25_CELSIUS;
    final double[] totals = new double[Component.values().length];
    final double[] gamma = new double[SPECIES];
    /** Molality over the product of activities that make the species, see {@link ConditionalConstants}. */
    final double[] conditional = new double[SPECIES];

    final double[] molality = new double[SPECIES];
    final double[] sums = new double[MassBalances.COUNT];
    final double[] values = new double[COUNT];

    /** Places in {@link #values}. */
    static final int INERT = 0;

    static final int LN_ACID = 1;
    static final int LN_CARBON_DIOXIDE = 2;
    static final int LN_SULFATE = 3;
    static final int IONIC_STRENGTH = 4;
    static final int ITERATIONS = 5;
    static final int RESIDUAL = 6;
    static final int SPECIES_COUNT = 7;
    /** Activities, the same as the logarithms say, so that nobody takes their exponentials twice. */
    static final int ACID = 8;

    static final int CARBON_DIOXIDE = 9;
    static final int SULFATE = 10;
    private static final int COUNT = 11;

    /** Creates a state at 25 °C without anything dissolved. */
    public SpeciationState() {}

    /**
     * Sets the temperature; cheap if it is the one before.
     *
     * @param kelvin temperature in K; 273.15 to 373.15
     */
    public void temperature(double kelvin) {
        if (kelvin != constants.kelvin) {
            constants = TemperatureConstants.at(kelvin);
        }
    }

    TemperatureConstants constants() {
        return constants;
    }

    /** Finds out how many species there are to look at: the weak acids stand last and are mostly absent. */
    void prepare() {
        boolean weak = false;
        for (int i = Component.AMMONIA.place(); i < totals.length; i++) {
            weak |= totals[i] > 0;
        }
        values[SPECIES_COUNT] = weak ? SPECIES : Species.AMMONIUM.place();
        for (int i = Species.AMMONIUM.place(); i < SPECIES; i++) {
            molality[i] = 0; // of an acid that was there in the water before
        }
    }

    int speciesCount() {
        return (int) values[SPECIES_COUNT];
    }

    boolean hasWeakAcids() {
        return values[SPECIES_COUNT] == SPECIES;
    }

    /**
     * Sets a total.
     *
     * @param component what is counted
     * @param molesPerKilogram its total in mol/kg; 0 or more
     */
    public void total(Component component, double molesPerKilogram) {
        totals[component.place()] = molesPerKilogram;
    }

    /**
     * Sets what the ions that react with nothing bring to the ionic strength.
     *
     * @param sum Σ z² m over those ions, in mol/kg; 0 or more
     */
    public void inert(double sum) {
        values[INERT] = sum;
    }

    /**
     * Returns the molality of a species after a solution.
     *
     * @param species which
     * @return m in mol/kg
     */
    public double molality(Species species) {
        return molality[species.place()];
    }

    /**
     * Returns the activity coefficient of a species after a solution.
     *
     * @param species which
     * @return γ; no unit
     */
    public double gamma(Species species) {
        return gamma[species.place()];
    }

    /**
     * Returns a constant at the temperature.
     *
     * @param which constant
     * @return ln K
     */
    public double lnConstant(EquilibriumConstant which) {
        return constants.ln[which.place()];
    }

    /**
     * Returns the logarithm of the activity of H⁺ after a solution.
     *
     * @return ln a; pH is this over −ln 10
     */
    public double lnAcid() {
        return values[LN_ACID];
    }

    /**
     * Returns the activity of dissolved carbon dioxide after a solution.
     *
     * @return a in mol/kg
     */
    public double carbonDioxideActivity() {
        return values[CARBON_DIOXIDE];
    }

    /**
     * Returns the alkalinity of all species after a solution.
     *
     * @return alkalinity in mol/kg
     */
    public double alkalinity() {
        return sums[MassBalances.ALKALINITY];
    }

    /**
     * Returns the inorganic carbon of all species after a solution.
     *
     * @return carbon in mol/kg
     */
    public double carbon() {
        return sums[MassBalances.CARBON];
    }

    /**
     * Returns the ionic strength after a solution: ½ Σ z² m over free ions and pairs.
     *
     * @return I in mol/kg
     */
    public double ionicStrength() {
        return values[IONIC_STRENGTH];
    }

    /**
     * Returns the slopes of the Debye–Hückel law at the temperature.
     *
     * @return A for ln γ in (kg/mol)^½
     */
    public double debyeHueckelA() {
        return constants.debyeHueckelA;
    }

    /**
     * Returns the other slope of the Debye–Hückel law at the temperature.
     *
     * @return B in (kg/mol)^½ per Å
     */
    public double debyeHueckelB() {
        return constants.debyeHueckelB;
    }

    /**
     * Returns how many times the mass balances were evaluated.
     *
     * @return a count
     */
    public int iterations() {
        return (int) values[ITERATIONS];
    }

    /**
     * Returns the largest relative residual of the balances that were asked for: alkalinity, carbon, sulfate, ionic strength.
     *
     * @return no unit; below 1e-12 where the solver converged
     */
    public double residual() {
        return values[RESIDUAL];
    }
}
