package evenwater.chemistry.recipe;

import evenwater.chemistry.quantity.NoAnswerException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Finds shares and doses; where a goal is not linear, by linear programmes around each other until they settle. */
final class RecipeSolver {

    /** A step that changes no variable by more than this share of itself, or of what it could be, ends the search. */
    private static final double SETTLED = 1e-10;

    private static final int MOST_STEPS = 60;

    /** From here on only half of each step is taken, in case two solutions call each other. */
    private static final int HALVED_FROM = 15;

    private final Setting setting;
    private final List<Goal<?>> goals;
    private final Optional<double[]> presentShares;

    RecipeSolver(Setting setting, List<Goal<?>> goals, Optional<double[]> presentShares) {
        this.setting = setting;
        this.goals = goals;
        this.presentShares = presentShares;
    }

    /** Shares, then doses in g/L. */
    double[] solve() {
        double[] here = start();
        if (goals.stream().allMatch(Goal::isLinear)) {
            return programme(here).solve(presentShares);
        }
        double moved = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] next = programme(here).solve(presentShares);
            moved = distance(here, next);
            if (moved <= SETTLED) {
                return next;
            }
            here = step < HALVED_FROM ? next : middle(here, next);
        }
        throw new NoAnswerException("the recipe for " + goals + " did not settle after " + MOST_STEPS
                + " linear programmes: the last one still moved by " + moved + " of the reference concentration");
    }

    List<Row> rows(double[] around) {
        return goals.stream().<Row>map(goal -> setting.row(goal, around)).toList();
    }

    private RankedProgramme programme(double[] around) {
        return new RankedProgramme(setting.waters().size(), setting.shelf().size(), rows(around));
    }

    private double[] start() {
        double[] start = new double[setting.columns()];
        int waters = setting.waters().size();
        Arrays.fill(start, 0, waters, 1.0 / waters);
        presentShares.ifPresent(shares -> System.arraycopy(shares, 0, start, 0, waters));
        return start;
    }

    /** The largest change of a share, or of what a dose brings in reference concentrations. */
    private double distance(double[] one, double[] other) {
        double largest = 0;
        for (int i = 0; i < one.length; i++) {
            double unit = i < setting.waters().size() ? 1 : Setting.charges(setting.change(i)) / setting.reference();
            largest = Math.max(largest, Math.abs(one[i] - other[i]) * unit);
        }
        return largest;
    }

    private static double[] middle(double[] one, double[] other) {
        double[] middle = new double[one.length];
        for (int i = 0; i < one.length; i++) {
            middle[i] = (one[i] + other[i]) / 2;
        }
        return middle;
    }
}
