package evenwater.chemistry.kernel;

/**
 * The plain numbers of a bed of resin: what each of its cells holds in the resin and in the water between the beads.
 *
 * <p>Make one for each thread and use it again: {@link BedKernel} allocates nothing. What has no meaning is not refused here but answered by
 * {@link BedKernel#BAD_INPUT}. Cell 0 is where service water enters. Concentrations are in
 * equivalents per litre of water, loadings in equivalents per litre of settled bed. Not thread-safe.
 */
public final class BedState {

    final int ions;
    final int cells;
    final double[] constant;
    final int[] charge;
    /** Of ion i in cell j at {@code j * ions + i}. */
    final double[] water;

    final double[] resin;
    /** Ratio s of the last step in each cell: where the next search begins. */
    final double[] ratio;

    final double[] mixed;
    final double[] offered;
    final double[] values = new double[COUNT];

    /** Places in {@link #values}. */
    static final int VOID = 0;

    static final int FILM = 1;
    static final int SOLID = 2;
    /** 1 as long as everything that was set has a meaning. */
    static final int USABLE = 3;

    private static final int COUNT = 4;

    /**
     * Creates a bed without anything in it; set the rates, then the loading and the water of every cell.
     *
     * @param constant K of each ion against sodium, see {@link ExchangeEquilibrium}; above 0
     * @param charge charge number of each; 1 or 2; same length
     * @param cells slices of equal volume; 1 or more
     * @param voidFraction water between the beads per volume of bed; no unit, above 0 and below 1
     */
    public BedState(double[] constant, int[] charge, int cells, double voidFraction) {
        this.ions = constant.length;
        this.cells = Math.max(0, cells);
        this.constant = constant.clone();
        this.charge = charge.clone();
        water = new double[ions * this.cells];
        resin = new double[ions * this.cells];
        ratio = new double[this.cells];
        mixed = new double[ions];
        offered = new double[ions];
        values[VOID] = voidFraction;
        boolean usable = cells >= 1 && ions >= 1 && charge.length == ions && voidFraction > 0 && voidFraction < 1;
        for (int i = 0; usable && i < ions; i++) {
            usable = constant[i] > 0 && constant[i] < Double.POSITIVE_INFINITY && (charge[i] == 1 || charge[i] == 2);
        }
        values[USABLE] = usable ? 1 : 0;
        rates(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /**
     * Sets how fast ions move between water and resin.
     *
     * @param filmPerHour rate through the film around a bead for each eq/L that the water is away from the bead's surface, in 1/h; 0 or more, infinite for local equilibrium
     * @param solidPerHour rate inside the bead for each eq/L that it is away from its surface, in 1/h; likewise
     */
    public void rates(double filmPerHour, double solidPerHour) {
        values[FILM] = filmPerHour;
        values[SOLID] = solidPerHour;
    }

    /**
     * Sets the loading of a cell.
     *
     * @param cell 0 at the inlet of service
     * @param ion place of the ion
     * @param equivalentsPerLitre in eq per litre of bed; 0 or more
     */
    public void resin(int cell, int ion, double equivalentsPerLitre) {
        resin[cell * ions + ion] = checked(equivalentsPerLitre);
    }

    /**
     * Sets the water of a cell.
     *
     * @param cell 0 at the inlet of service
     * @param ion place of the ion
     * @param equivalentsPerLitre in eq per litre of water; 0 or more
     */
    public void water(int cell, int ion, double equivalentsPerLitre) {
        water[cell * ions + ion] = checked(equivalentsPerLitre);
    }

    /** A negative or missing number spoils the bed for good, and {@link BedKernel} says so. */
    private double checked(double equivalentsPerLitre) {
        if (!(equivalentsPerLitre >= 0 && equivalentsPerLitre < Double.POSITIVE_INFINITY)) {
            values[USABLE] = 0;
        }
        return equivalentsPerLitre;
    }

    /**
     * Returns the loading of a cell.
     *
     * @param cell 0 at the inlet of service
     * @param ion place of the ion
     * @return eq per litre of bed
     */
    public double resin(int cell, int ion) {
        return resin[cell * ions + ion];
    }

    /**
     * Returns the water of a cell.
     *
     * @param cell 0 at the inlet of service
     * @param ion place of the ion
     * @return eq per litre of water
     */
    public double water(int cell, int ion) {
        return water[cell * ions + ion];
    }

    /**
     * Returns how much of an ion the whole bed holds, in the resin and between the beads.
     *
     * @param ion place of the ion
     * @return eq per litre of bed
     */
    public double content(int ion) {
        double sum = 0;
        double rest = 0; // what rounding leaves, as in CompensatedSum
        for (int j = 0; j < cells; j++) {
            double part = resin[j * ions + ion] + values[VOID] * water[j * ions + ion] - rest;
            double next = sum + part;
            rest = (next - sum) - part;
            sum = next;
        }
        return sum / cells;
    }

    /**
     * Takes over what another bed of the same ions and cells holds.
     *
     * @param that the other bed
     */
    public void copy(BedState that) {
        System.arraycopy(that.water, 0, water, 0, water.length);
        System.arraycopy(that.resin, 0, resin, 0, resin.length);
        System.arraycopy(that.ratio, 0, ratio, 0, cells);
    }

    /**
     * Returns how many slices there are.
     *
     * @return a count
     */
    public int cells() {
        return cells;
    }

    /**
     * Returns how many ions there are.
     *
     * @return a count
     */
    public int ions() {
        return ions;
    }
}
