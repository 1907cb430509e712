package evenwater.chemistry.recipe;

import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Which of two solutions is the better recipe, rank by rank, as {@link Recipe} says. */
final class RecipeOrder {

    /** A smaller difference does not count, and the next rank decides. */
    private static final double ROUNDING = Residual.TOLERANCE_OF_CURVES;

    private final Setting setting;
    private final List<Goal<?>> goals;
    private final Optional<double[]> presentShares;

    RecipeOrder(Setting setting, List<Goal<?>> goals, Optional<double[]> presentShares) {
        this.setting = setting;
        this.goals = goals;
        this.presentShares = presentShares;
    }

    /** Whether one comes before another; among equals none does. */
    boolean isBetter(double[] one, double[] other) {
        double[] ofOne = ranks(one);
        double[] ofOther = ranks(other);
        for (int i = 0; i < ofOne.length; i++) {
            if (Math.abs(ofOne[i] - ofOther[i]) > ROUNDING * Math.max(1, ofOther[i])) {
                return ofOne[i] < ofOther[i];
            }
        }
        return false;
    }

    /** Whether one misses less than another, be it by rounding; where they miss alike, the next rank decides. */
    boolean isNearer(double[] one, double[] other) {
        double[] ofOne = ranks(one);
        double[] ofOther = ranks(other);
        for (int i = 0; i < ofOne.length; i++) {
            if (ofOne[i] != ofOther[i]) {
                return ofOne[i] < ofOther[i];
            }
        }
        return false;
    }

    private double[] ranks(double[] solution) {
        Water water = setting.water(solution);
        return new double[] {
            misses(water, Goal::mustBeMet), misses(water, goal -> !goal.mustBeMet()), changes(solution), mass(solution)
        };
    }

    private double misses(Water water, Predicate<Goal<?>> chosen) {
        return goals.stream()
                .filter(chosen)
                .mapToDouble(goal -> goal.target().weight()
                        * Residual.of(goal, setting, water).relativeMiss())
                .sum();
    }

    private double changes(double[] solution) {
        double sum = 0;
        if (presentShares.isPresent()) {
            double[] present = presentShares.get();
            for (int i = 0; i < present.length; i++) {
                sum += Math.abs(solution[i] - present[i]);
            }
        }
        return sum;
    }

    /** Of all doses, against that of the lightest compound that brings the reference concentration, so that it hangs on no unit. */
    private double mass(double[] solution) {
        double grams = 0;
        double mostCharges = 0;
        for (int i = setting.waters().size(); i < solution.length; i++) {
            grams += solution[i];
            mostCharges = Math.max(mostCharges, Setting.charges(setting.change(i)));
        }
        return grams * mostCharges / setting.reference();
    }
}
