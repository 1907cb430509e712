package evenwater.chemistry.kernel;

/**
 * Working memory of {@link OnsagerFuoss}, so that the kernel allocates nothing.
 *
 * <p>Make one for each thread and use it again. It carries nothing from one call to the next. Not thread-safe.
 */
public final class ConductivityScratch {

    /** Steps of Lanczos at most; ions of natural waters take eight to eleven. */
    static final int STEPS = 24;

    /** Places in the input of the ions that are there. */
    final int[] place;

    final double[] chargeNumber;
    /** Mobility of a particle, λ0 / |z|. */
    final double[] mobility;
    /** {@code √(μ ω)}, with μ the share of the ionic strength. */
    final double[] root;

    final double[] force;
    final double[] field;
    final double[] vector;
    /** Row by row. */
    final double[] matrix;
    /** Vector by vector. */
    final double[] basis;

    final double[] diagonal;
    final double[] beside;
    final double[] inversePivot;
    final double[] shift = new double[RelaxationField.POINTS];
    final double[] value = new double[RelaxationField.POINTS];
    final double[] weight;

    /**
     * Creates working memory.
     *
     * @param ions how many ions a solution may have at most; 0 or more
     */
    public ConductivityScratch(int ions) {
        int steps = Math.min(ions, STEPS);
        place = new int[ions];
        chargeNumber = new double[ions];
        mobility = new double[ions];
        root = new double[ions];
        force = new double[ions];
        field = new double[ions];
        vector = new double[ions];
        matrix = new double[ions * ions];
        basis = new double[ions * steps];
        diagonal = new double[steps];
        beside = new double[steps];
        inversePivot = new double[steps * RelaxationField.POINTS];
        weight = new double[steps];
    }
}
