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
 * Linear conditions on variables that are 0 or more, and the least sum that they allow. The one place that knows the solver.
 *
 * <p>Coefficients are expected near 1. Immutable.
 */
final class Simplex {

    /** Sums that miss by less are met; far above what rounding leaves and far below what anybody weighs. */
    private static final double TOLERANCE = 1e-10;

    private static final int UNITS_IN_THE_LAST_PLACE = 10;

    /** Smaller numbers in the working are rounding and become 0. */
    private static final double CUT_OFF = 1e-13;

    private static final MaxIter MOST_STEPS = new MaxIter(20_000);

    private final List<LinearConstraint> conditions;

    private Simplex(List<LinearConstraint> conditions) {
        this.conditions = conditions;
    }

    static Simplex free() {
        return new Simplex(List.of());
    }

    Simplex atMost(double[] coefficients, double most) {
        return with(coefficients, Relationship.LEQ, most);
    }

    Simplex atLeast(double[] coefficients, double least) {
        return with(coefficients, Relationship.GEQ, least);
    }

    Simplex exactly(double[] coefficients, double value) {
        return with(coefficients, Relationship.EQ, value);
    }

    private Simplex with(double[] coefficients, Relationship relationship, double value) {
        List<LinearConstraint> more = new ArrayList<>(conditions);
        more.add(new LinearConstraint(coefficients, relationship, value));
        return new Simplex(more);
    }

    /** The variables at which a sum is least. */
    double[] least(double[] sum) {
        try {
            return new SimplexSolver(TOLERANCE, UNITS_IN_THE_LAST_PLACE, CUT_OFF)
                    .optimize(
                            MOST_STEPS,
                            new LinearObjectiveFunction(sum, 0),
                            new LinearConstraintSet(conditions),
                            GoalType.MINIMIZE,
                            new NonNegativeConstraint(true),
                            PivotSelectionRule.BLAND)
                    .getPoint();
        } catch (MathIllegalStateException e) {
            throw new NoAnswerException("no recipe was found: the solver of its linear programme said '"
                    + e.getMessage() + "'; targets that differ by many powers of ten may be the reason");
        }
    }
}
