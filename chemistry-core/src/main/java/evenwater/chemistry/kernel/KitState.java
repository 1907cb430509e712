package evenwater.chemistry.kernel;

/**
 * The plain numbers of one kit: ranges of what was read, and working memory of {@link KitKernel}.
 *
 * <p>Make one for each thread and each pH. Not thread-safe.
 */
public final class KitState {

    final CompositionRanges ranges = new CompositionRanges();
    final CompositionRanges held = new CompositionRanges();
    final double[] reading = new double[2];
    final double[] extremes = new double[2];
    final double[] lowest = new double[CompositionRanges.AMOUNTS + 1];
    final double[] highest = new double[CompositionRanges.AMOUNTS + 1];
    final double[] witness = new double[CompositionRanges.AMOUNTS + 1];
    final double[] trial = new double[CompositionRanges.AMOUNTS + 1];
    final double[] gain = new double[CompositionRanges.AMOUNTS];
    private final double leastPH;
    private final CompositionConductivity conductivity;
    private final ConductivityExtreme search;

    /**
     * Creates a state in which every amount may be anything from 0 to the largest that a reading of 0 to 0 µS/cm allows.
     *
     * @param leastPH of the water; 3 to 11
     * @param mostPH of the water; from {@code leastPH} to 11
     * @param kelvin temperature at which the pH was read, in K; 273.15 to 323.15
     */
    public KitState(double leastPH, double mostPH, double kelvin) {
        conductivity = new CompositionConductivity(kelvin);
        this.leastPH = leastPH;
        search = new ConductivityExtreme(conductivity, leastPH, mostPH);
    }

    /** What the lowest pH asks for, in eq/L; may be negative. */
    double leastAlkalinity() {
        return conductivity.leastAlkalinity(leastPH);
    }

    CompositionConductivity conductivity() {
        return conductivity;
    }

    ConductivityExtreme search() {
        return search;
    }

    /**
     * Sets the range of the conductivity, and with it what any ion may reach: call it first.
     *
     * @param least κ at 25 °C in µS/cm; 0 or more
     * @param most κ at 25 °C in µS/cm; not below {@code least}
     * @param largest what any amount or sum may be at most, in eq/L, where nothing else is known
     */
    public void conductivity(double least, double most, double largest) {
        reading[0] = least;
        reading[1] = most;
        for (int i = 0; i < ranges.most.length; i++) {
            ranges.least[i] = 0;
            ranges.most[i] = largest;
        }
    }

    /**
     * Narrows the range of a quantity to what was measured of it.
     *
     * @param quantity what
     * @param least eq/L; 0 or more
     * @param most eq/L; not below {@code least}
     */
    public void measured(KitQuantity quantity, double least, double most) {
        int place = quantity.place();
        ranges.least[place] = Math.max(ranges.least[place], least);
        ranges.most[place] = Math.min(ranges.most[place], most);
    }

    /**
     * Returns the least conductivity that the amounts allow, after {@link KitKernel#prepare}.
     *
     * @return µS/cm
     */
    public double leastConductivity() {
        return extremes[0];
    }

    /**
     * Returns the largest conductivity that the amounts allow, after {@link KitKernel#prepare}.
     *
     * @return µS/cm
     */
    public double mostConductivity() {
        return extremes[1];
    }
}
