package evenwater.chemistry.kernel;

/**
 * What left a bed, step by step: throughput and concentrations at the end of each step, which are those of all water that left during it.
 *
 * <p>Its room is made once and used again; a run that is longer keeps its sums and drops its last rows. Not thread-safe.
 */
public final class EffluentCurve {

    final int ions;
    final double[] rows;
    /** Sum of each ion, then its rounding: equivalents per litre of bed. */
    final double[] sums;

    final double[] values = new double[2];

    /** Places in {@link #values}. */
    static final int COUNT = 0;

    static final int THROUGHPUT = 1;

    /**
     * Creates an empty curve.
     *
     * @param ions how many concentrations stand in a row; 1 or more
     * @param mostRows how many rows have room; 0 or more
     */
    public EffluentCurve(int ions, int mostRows) {
        this.ions = ions;
        rows = new double[mostRows * (ions + 1)];
        sums = new double[2 * ions];
    }

    /** Empties the curve. */
    public void clear() {
        values[COUNT] = 0;
        values[THROUGHPUT] = 0;
        for (int i = 0; i < sums.length; i++) {
            sums[i] = 0;
        }
    }

    void add(double bedVolumes, double[] effluent) {
        values[THROUGHPUT] += bedVolumes;
        for (int i = 0; i < ions; i++) {
            double part = effluent[i] * bedVolumes - sums[ions + i];
            double next = sums[i] + part;
            sums[ions + i] = (next - sums[i]) - part;
            sums[i] = next;
        }
        int at = count() * (ions + 1);
        if (at < rows.length) {
            rows[at] = values[THROUGHPUT];
            System.arraycopy(effluent, 0, rows, at + 1, ions);
            values[COUNT]++;
        }
    }

    /**
     * Returns how many rows there are.
     *
     * @return a count
     */
    public int count() {
        return (int) values[COUNT];
    }

    /**
     * Returns the water that has left.
     *
     * @return bed volumes
     */
    public double throughput() {
        return values[THROUGHPUT];
    }

    /**
     * Returns the throughput at the end of a step.
     *
     * @param row 0 or more, below {@link #count}
     * @return bed volumes
     */
    public double throughput(int row) {
        return rows[row * (ions + 1)];
    }

    /**
     * Returns a concentration of what left during a step.
     *
     * @param row 0 or more, below {@link #count}
     * @param ion place of the ion
     * @return eq/L
     */
    public double concentration(int row, int ion) {
        return rows[row * (ions + 1) + 1 + ion];
    }

    /**
     * Returns how much of an ion has left.
     *
     * @param ion place of the ion
     * @return equivalents per litre of bed
     */
    public double sum(int ion) {
        return sums[ion];
    }
}
