package evenwater.chemistry.recipe;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;

/**
 * What a recipe can be made of: the waters and the shelf, and how large the concentrations are that it is about.
 *
 * @param waters each with its carbon where a measured pH tells it
 * @param shelf what can be dosed
 * @param reference in meq/L: the largest target; without one the charges of the saltiest water; without any 1
 */
record Setting(List<Water> waters, List<ShelfItem> shelf, double reference) {

    /** Of the reference concentration: small against the bend of the conductivity, large against its rounding. */
    private static final double STEP = 1e-3;

    static Setting of(List<Water> waters, List<ShelfItem> shelf, List<Goal<?>> goals) {
        double ofGoals = goals.stream().mapToDouble(Goal::size).max().orElse(0);
        double ofWaters = waters.stream()
                .mapToDouble(water -> charges(Change.between(Water.pure(), water)))
                .max()
                .orElse(0);
        return new Setting(waters, shelf, ofGoals > 0 ? ofGoals : ofWaters > 0 ? ofWaters : 1);
    }

    /** Charges that a change brings on both sides in meq/L; a neutral solute counts as one. */
    static double charges(Change change) {
        return Math.abs(change.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                + change.ions().stream()
                        .mapToDouble(ion -> Math.max(1, Math.abs(ion.chargeNumber()))
                                * Math.abs(change.total(ion).in(MILLIMOLE_PER_LITRE)))
                        .sum();
    }

    /** The same waters and reference with another shelf, so that what is found there compares. */
    Setting withShelf(List<ShelfItem> other) {
        return new Setting(waters, other, reference);
    }

    int columns() {
        return waters.size() + shelf.size();
    }

    /** What a unit of a variable brings. */
    Change change(int column) {
        return column < waters.size()
                ? Change.between(Water.pure(), waters.get(column))
                : shelf.get(column - waters.size()).ofOneGramPerLitre();
    }

    /** The blend of the waters by their shares. */
    Water blend(double[] solution) {
        Water blend = waters.get(0);
        double sum = solution[0];
        for (int i = 1; i < waters.size(); i++) {
            sum += solution[i];
            if (solution[i] > 0) {
                blend = blend.mixedWith(waters.get(i), solution[i] / sum);
            }
        }
        return blend;
    }

    /** The blend with its doses in g/L. */
    Water water(double[] solution) {
        Water water = blend(solution);
        for (int i = 0; i < shelf.size(); i++) {
            double grams = solution[waters.size() + i];
            if (grams > 0) {
                water = water.plus(shelf.get(i).ofOneGramPerLitre().times(grams));
            }
        }
        return water;
    }

    /** A goal as a row around a solution, at which one that is not linear has the value and the slopes of the water there. */
    Row row(Goal<?> goal, double[] around) {
        if (goal.ofChange().isPresent()) {
            double[] coefficients = new double[columns()];
            for (int i = 0; i < coefficients.length; i++) {
                coefficients[i] = i < waters.size()
                        ? goal.ofWater().applyAsDouble(waters.get(i))
                        : goal.ofChange().get().applyAsDouble(change(i));
            }
            return new Row(goal, coefficients, goal.wanted(), goal.scale(reference));
        }
        Water here = water(around);
        double[] slopes = new double[columns()];
        double value = goal.ofWater().applyAsDouble(here);
        double offset = value;
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = slope(goal, here, value, change(i));
            offset -= slopes[i] * around[i];
        }
        return new Row(goal, slopes, goal.wanted() - offset, goal.scale(reference));
    }

    /** Forward difference of second order, since less than nothing cannot be added to pure water. */
    private double slope(Goal<?> goal, Water here, double value, Change change) {
        double charges = charges(change);
        if (charges == 0) {
            return 0;
        }
        double step = STEP * reference / charges;
        double one = goal.ofWater().applyAsDouble(here.plus(change.times(step)));
        double two = goal.ofWater().applyAsDouble(here.plus(change.times(2 * step)));
        return (4 * one - two - 3 * value) / (2 * step);
    }
}
