package evenwater.chemistry.recipe;

import evenwater.chemistry.quantity.NoAnswerException;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.PivotSelectionRule;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * Limits from above on sums of variables that are 0 or more, and the least sum that they allow. The one place that knows the solver.
 *
 * <p>Each search starts from a solution that keeps all limits and asks for the way from there, up and down: then doing nothing is a start, and the
 * solver needs none of its first phase, which errs where many limits meet in a corner. Coefficients are expected near 1. Immutable.
 */
final class Simplex {

    /** A change that gains less for each unit, or less in all, is not made. */
    private static final double TOLERANCE = 1e-10;

    private static final int UNITS_IN_THE_LAST_PLACE = 10;

    /** What is rounding in the working and becomes 0, one after the other: where many limits meet nearly, the first may lead beside the answer. */
    private static final double[] CUT_OFFS = {1e-12, 1e-10, 1e-14};

    private static final List<PivotSelectionRule> RULES = List.of(PivotSelectionRule.DANTZIG, PivotSelectionRule.BLAND);

    private static final MaxIter MOST_STEPS = new MaxIter(2_000);

    /** Two find the answer as a rule; where the gains go on for longer, they are rounding. */
    private static final int MOST_SEARCHES = 10;

    /** A limit that is passed by more than this share of its largest term is not kept. */
    private static final double ROUNDING = 1e-11;

    /** The same where no way leads nearer; still a tenth of what a target may be missed by. */
    private static final double ROUGH_ROUNDING = 1e-9;

    private final List<double[]> sums;
    private final List<Double> limits;

    private Simplex(List<double[]> sums, List<Double> limits) {
        this.sums = sums;
        this.limits = limits;
    }

    static Simplex free() {
        return new Simplex(List.of(), List.of());
    }

    Simplex atMost(double[] sum, double limit) {
        List<double[]> moreSums = new ArrayList<>(sums);
        List<Double> moreLimits = new ArrayList<>(limits);
        moreSums.add(sum);
        moreLimits.add(limit);
        return new Simplex(moreSums, moreLimits);
    }

    /**
     * Returns the variables at which a sum is least.
     *
     * @param sum coefficients of the sum, which the limits keep from falling without end
     * @param start variables that keep all limits
     * @return variables that keep all limits
     */
    double[] least(double[] sum, double[] start) {
        double[] best = start;
        for (int search = 0; search < MOST_SEARCHES; search++) {
            double[] found = better(sum, best);
            double before = of(sum, best);
            double gain = before - of(sum, found);
            best = found;
            if (!(gain > TOLERANCE * Math.max(1, Math.abs(before)))) {
                break;
            }
        }
        return best;
    }

    private double[] better(double[] sum, double[] start) {
        try {
            return better(sum, start, ROUNDING);
        } catch (NoAnswerException beside) {
            return better(sum, start, ROUGH_ROUNDING);
        }
    }

    /** The better of two answers that keep all limits, by two ways to them. */
    private double[] better(double[] sum, double[] start, double rounding) {
        double[] best = start;
        int answers = 0;
        String failure = "an answer beside its conditions";
        for (double cutOff : CUT_OFFS) {
            for (PivotSelectionRule rule : RULES) {
                try {
                    double[] found = from(start, way(sum, start, cutOff, rule));
                    if (isAllowed(found, rounding)) {
                        best = of(sum, found) < of(sum, best) ? found : best;
                        answers++;
                    }
                } catch (MathIllegalStateException e) {
                    failure = String.valueOf(e.getMessage());
                }
                if (answers == RULES.size()) {
                    return best;
                }
            }
        }
        if (answers > 0) {
            return best;
        }
        throw new NoAnswerException("no recipe was found: the solver of its linear programme gave '" + failure
                + "'; targets that differ by many powers of ten may be the reason");
    }

    private static double[] from(double[] start, double[] way) {
        double[] end = new double[start.length];
        for (int i = 0; i < end.length; i++) {
            end[i] = Math.max(0, start[i] + way[i] - way[start.length + i]);
        }
        return end;
    }

    private boolean isAllowed(double[] found, double rounding) {
        for (int i = 0; i < sums.size(); i++) {
            double[] sum = sums.get(i);
            double size = Math.max(1, Math.abs(limits.get(i)));
            for (int j = 0; j < found.length; j++) {
                size = Math.max(size, Math.abs(sum[j] * found[j]));
            }
            if (!(of(sum, found) - limits.get(i) <= rounding * size)) {
                return false;
            }
        }
        return true;
    }

    /** How far each variable goes up, then how far each goes down. */
    private double[] way(double[] sum, double[] start, double cutOff, PivotSelectionRule rule) {
        List<LinearConstraint> conditions = new ArrayList<>();
        for (int i = 0; i < sums.size(); i++) {
            double room = limits.get(i) - of(sums.get(i), start);
            conditions.add(new LinearConstraint(upAndDown(sums.get(i), start), Relationship.LEQ, Math.max(0, room)));
        }
        for (int i = 0; i < start.length; i++) {
            if (start[i] > 0) {
                double[] down = new double[2 * start.length];
                down[start.length + i] = 1;
                conditions.add(new LinearConstraint(down, Relationship.LEQ, start[i]));
            }
        }
        return new SimplexSolver(TOLERANCE, UNITS_IN_THE_LAST_PLACE, cutOff)
                .optimize(
                        MOST_STEPS,
                        new LinearObjectiveFunction(upAndDown(sum, start), 0),
                        new LinearConstraintSet(conditions),
                        GoalType.MINIMIZE,
                        new NonNegativeConstraint(true),
                        rule)
                .getPoint();
    }

    /** The coefficients for ways up and down; what is 0 goes nowhere down. */
    private static double[] upAndDown(double[] sum, double[] start) {
        double[] both = new double[2 * sum.length];
        for (int i = 0; i < sum.length; i++) {
            both[i] = sum[i];
            both[sum.length + i] = start[i] > 0 ? -sum[i] : 0;
        }
        return both;
    }

    static double of(double[] sum, double[] variables) {
        double value = 0;
        for (int i = 0; i < sum.length; i++) {
            value += sum[i] * variables[i];
        }
        return value;
    }
}
