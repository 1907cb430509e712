package evenwater.chemistry.kernel;

/** Longer runs of a bed: a given volume at a given flow, or service until the effluent reaches an end point. */
public final class BedRun {

    /** The volume has passed, or the effluent has reached the end point. */
    public static final int ENDED = BedKernel.FLOWED;

    /** The effluent was never below the end point: the bed leaks more than that from the start. */
    public static final int LEAKS = 4;

    /** The effluent did not reach the end point within the given number of steps. */
    public static final int NOT_REACHED = 5;

    /** A bed whose effluent is this close to the feed has nothing left to give. */
    private static final double SPENT = 0.999;

    /** So many bed volumes push out what a regeneration may have left between the beads. */
    private static final double RINSED = 5;

    private BedRun() {}

    /**
     * Lets a volume pass in equal steps.
     *
     * @param bed its state; changed
     * @param feed concentration of each ion in eq/L; 0 or more
     * @param upward whether the water enters where service water leaves
     * @param bedVolumes water that passes; 0 or more
     * @param bedVolumesPerHour flow; above 0
     * @param longestStep in bed volumes; above 0
     * @param effluent scratch of the length of {@code feed}
     * @param curve receives what left, after what it already holds
     * @return {@link #ENDED}, {@link BedKernel#NOT_CONVERGED} or {@link BedKernel#BAD_INPUT}
     */
    public static int pass(
            BedState bed,
            double[] feed,
            boolean upward,
            double bedVolumes,
            double bedVolumesPerHour,
            double longestStep,
            double[] effluent,
            EffluentCurve curve) {
        if (!(longestStep > 0 && bedVolumes >= 0 && bedVolumes / longestStep < Integer.MAX_VALUE)) {
            return BedKernel.BAD_INPUT;
        }
        int steps = (int) Math.ceil(bedVolumes / longestStep);
        double step = bedVolumes / steps;
        for (int k = 0; k < steps; k++) {
            int status = BedKernel.flow(bed, feed, upward, step, step / bedVolumesPerHour, effluent);
            if (status != BedKernel.FLOWED) {
                return status;
            }
            curve.add(step, effluent);
        }
        return ENDED;
    }

    /**
     * Lets feed pass downward until some ions of the effluent together reach an end point from below; the last step is cut to end there.
     *
     * @param bed its state; changed
     * @param before scratch of the same ions and cells
     * @param feed concentration of each ion in eq/L; 0 or more
     * @param bedVolumesPerHour flow; above 0
     * @param step in bed volumes; above 0
     * @param mostSteps where to give up
     * @param counted which ions make up the end point
     * @param endPoint their sum in eq/L; above 0
     * @param effluent scratch of the length of {@code feed}
     * @param curve receives what left, after what it already holds
     * @return {@link #ENDED}, {@link #LEAKS}, {@link #NOT_REACHED}, {@link BedKernel#NOT_CONVERGED} or {@link BedKernel#BAD_INPUT}
     */
    public static int serve(
            BedState bed,
            BedState before,
            double[] feed,
            double bedVolumesPerHour,
            double step,
            int mostSteps,
            boolean[] counted,
            double endPoint,
            double[] effluent,
            EffluentCurve curve) {
        double spent = SPENT * sum(feed, counted);
        boolean below = false;
        double last = 0;
        for (int k = 0; k < mostSteps; k++) {
            before.copy(bed);
            int status = BedKernel.flow(bed, feed, false, step, step / bedVolumesPerHour, effluent);
            if (status != BedKernel.FLOWED) {
                return status;
            }
            double now = sum(effluent, counted);
            if (now >= endPoint && below) {
                double part = step * (endPoint - last) / (now - last);
                bed.copy(before);
                if (part > 0) {
                    status = BedKernel.flow(bed, feed, false, part, part / bedVolumesPerHour, effluent);
                    curve.add(part, effluent);
                }
                return status;
            }
            curve.add(step, effluent);
            below |= now < endPoint;
            if (now >= spent && !below && (k + 1) * step > RINSED) {
                return LEAKS;
            }
            last = now;
        }
        return below ? NOT_REACHED : LEAKS;
    }

    private static double sum(double[] concentrations, boolean[] counted) {
        double sum = 0;
        for (int i = 0; i < counted.length; i++) {
            sum += counted[i] ? concentrations[i] : 0;
        }
        return sum;
    }
}
