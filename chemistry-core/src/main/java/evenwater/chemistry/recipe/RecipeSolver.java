package evenwater.chemistry.recipe;

import evenwater.chemistry.quantity.NoAnswerException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Finds shares and doses; where a goal is not linear, by linear programmes around each other until they settle.
 *
 * <p>Where they settle hangs on where they start: the more ions there are, the less each conducts, so a water in between may conduct more than both
 * its neighbours. So they start from several places, the best recipe of each compound alone among them. Where a base meets an acid or carbonate, a
 * water in between may also conduct less: if the best water on all ways is one that was only passed, the last piece is gone in steps that make it
 * better.
 */
final class RecipeSolver {

    /** A step that changes no variable by more than this share of itself, or of what it could be, ends the search. */
    private static final double SETTLED = 1e-10;

    /** Whoever comes as near as this to where another way has settled would settle there too. */
    private static final double SETTLES_ALIKE = 1e-6;

    private static final int MOST_STEPS = 60;

    /** From here on only half of each step is taken, in case two solutions call each other. */
    private static final int HALVED_FROM = 15;

    /** The smallest part of a step is 2 to the power of minus this. */
    private static final int MOST_HALVINGS = 20;

    private final Setting setting;
    private final List<Goal<?>> goals;
    private final Optional<double[]> presentShares;
    private final RecipeOrder order;

    RecipeSolver(Setting setting, List<Goal<?>> goals, Optional<double[]> presentShares) {
        this.setting = setting;
        this.goals = goals;
        this.presentShares = presentShares;
        this.order = new RecipeOrder(setting, goals, presentShares);
    }

    /** Shares, then doses in g/L. */
    double[] solve() {
        if (goals.stream().allMatch(Goal::isLinear)) {
            return programme(start()).solve(presentShares);
        }
        List<double[]> settled = new ArrayList<>();
        List<double[]> passed = new ArrayList<>();
        List<NoAnswerException> failures = new ArrayList<>();
        List<double[]> starts = starts();
        for (double[] alone : ofOneCompound()) {
            starts.add(alone);
            passed.add(alone);
        }
        for (double[] start : starts) {
            try {
                walk(start, settled, passed);
            } catch (NoAnswerException elsewhere) {
                failures.add(elsewhere);
            }
        }
        int ends = settled.size();
        settled.addAll(passed);
        if (settled.isEmpty()) {
            throw failures.get(0);
        }
        int best = 0;
        for (int i = 1; i < settled.size(); i++) {
            best = order.isBetter(settled.get(i), settled.get(best)) ? i : best;
        }
        return best < ends ? settled.get(best) : improved(settled.get(best));
    }

    private void walk(double[] start, List<double[]> settled, List<double[]> passed) {
        double[] here = start;
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] next = programme(here).solve(presentShares);
            if (distance(here, next) <= SETTLED) {
                settled.add(next);
                return;
            }
            here = step < HALVED_FROM ? next : between(here, next, 0.5);
            passed.add(here);
            for (double[] end : settled) {
                if (distance(here, end) <= SETTLES_ALIKE) {
                    return;
                }
            }
        }
    }

    /** What is nearer by less than rounding may still weigh less, and the other way round: so no step may lose against the nearest of all steps. */
    private double[] improved(double[] passed) {
        double[] here = passed;
        double[] nearest = passed;
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] best = here;
            double[] next = programme(here).solve(presentShares);
            double part = 1;
            for (int halvings = 0; halvings <= MOST_HALVINGS; halvings++) {
                double[] tried = between(here, next, part);
                best = order.isBetter(tried, best) && !order.isBetter(nearest, tried) ? tried : best;
                part /= 2;
            }
            if (best == here) {
                return here;
            }
            here = best;
            nearest = order.isNearer(here, nearest) ? here : nearest;
        }
        throw new NoAnswerException(
                "the recipe for " + goals + " did not settle after " + MOST_STEPS + " linear programmes");
    }

    List<Row> rows(double[] around) {
        return goals.stream().<Row>map(goal -> setting.row(goal, around)).toList();
    }

    private RankedProgramme programme(double[] around) {
        return new RankedProgramme(setting.waters().size(), setting.shelf().size(), rows(around));
    }

    /** The waters as they are blended now or in equal shares, each water alone, and the blend with the reference of each compound alone. */
    private List<double[]> starts() {
        List<double[]> starts = new ArrayList<>(List.of(start()));
        int waters = setting.waters().size();
        for (int i = 0; i < setting.columns(); i++) {
            double[] start = start();
            double charges = Setting.charges(setting.change(i));
            if (i >= waters && charges > 0) {
                start[i] = setting.reference() / charges;
                starts.add(start);
            } else if (i < waters && waters > 1) {
                Arrays.fill(start, 0, waters, 0);
                start[i] = 1;
                starts.add(start);
            }
        }
        return starts;
    }

    /** The best recipe of each compound when it stands on the shelf alone, where there is one. */
    private List<double[]> ofOneCompound() {
        List<double[]> recipes = new ArrayList<>();
        int compounds = setting.shelf().size();
        for (int i = 0; compounds > 1 && i < compounds; i++) {
            Setting alone = setting.withShelf(List.of(setting.shelf().get(i)));
            try {
                double[] best = new RecipeSolver(alone, goals, presentShares).solve();
                double[] recipe = Arrays.copyOf(best, setting.columns());
                int waters = setting.waters().size();
                recipe[waters] = 0;
                recipe[waters + i] = best[waters];
                recipes.add(recipe);
            } catch (NoAnswerException without) {
                // the search has its other starts
            }
        }
        return recipes;
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

    private static double[] between(double[] one, double[] other, double part) {
        double[] between = new double[one.length];
        for (int i = 0; i < one.length; i++) {
            between[i] = one[i] + part * (other[i] - one[i]);
        }
        return between;
    }
}
