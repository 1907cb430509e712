package evenwater.chemistry.recipe;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Linear programmes in order of rank: each finds the least of its sum, and those after it may not make that worse.
 *
 * <p>Variables are the shares of the waters and the doses, then what each row is over and under. All rows are relative to their scale and
 * all doses to what moves the row that feels them most, so that nothing depends on units.
 */
final class RankedProgramme {

    /** What is missed by less in every row is rounding: the rows are then held as they are. */
    private static final double ROUNDING = 1e-12;

    /** What a later rank may take from an earlier one, relative, since a sum that is held to its last digit cannot be met again. */
    private static final double SLACK = 1e-12;

    /** Doses and shares below this, in their units here, are what the slack lets through. */
    private static final double NOTHING = 1e-9;

    private final int waters;
    private final int columns;
    private final List<Row> rows;
    /** Mass that a unit of each variable brings, g/L; 0 for waters. */
    private final double[] grams;
    /** What a variable of the programme is multiplied by. */
    private final double[] unit;

    private final int variables;

    RankedProgramme(int waters, int compounds, List<Row> rows) {
        this.waters = waters;
        this.columns = waters + compounds;
        this.rows = rows;
        this.variables = columns + 2 * rows.size() + 2 * waters;
        this.unit = new double[columns];
        this.grams = new double[columns];
        for (int i = 0; i < columns; i++) {
            unit[i] = i < waters ? 1 : unit(i);
            grams[i] = i < waters ? 0 : unit[i];
        }
    }

    private double unit(int column) {
        double most = rows.stream()
                .mapToDouble(row -> Math.abs(row.relative(column)))
                .max()
                .orElse(0);
        return most > 0 ? 1 / most : 0; // what moves no row is not dosed
    }

    /** The least sum of what the rows are missed by; the measure by which targets fight. */
    double leastViolation() {
        Simplex elastic = elastic(sharesMakeOne(), true);
        return sum(elastic.least(misses(true)), misses(true));
    }

    /** Shares and doses in g/L. */
    double[] solve(Optional<double[]> presentShares) {
        Simplex conditions = met(sharesMakeOne(), true);
        if (rows.stream().anyMatch(row -> !row.goal().mustBeMet())) {
            conditions = met(conditions, false);
        }
        if (presentShares.isPresent()) {
            conditions = nearPresent(conditions, presentShares.get());
        }
        double[] wanted = mass();
        double[] solution = conditions.least(wanted);
        for (int water = 0;
                water < waters - 1;
                water++) { // of equal recipes the one with more of the water named first
            conditions = conditions.atMost(wanted, withSlack(sum(solution, wanted)));
            wanted = minus(water);
            solution = conditions.least(wanted);
        }
        double[] answer = new double[columns];
        for (int i = 0; i < columns; i++) {
            answer[i] = solution[i] > NOTHING ? solution[i] * unit[i] : 0;
        }
        return answer;
    }

    private Simplex sharesMakeOne() {
        double[] ones = new double[variables];
        Arrays.fill(ones, 0, waters, 1);
        return Simplex.free().exactly(ones, 1);
    }

    /** The conditions and the rows of a rank, held as they are where they can be met, else with their least sum of misses. */
    private Simplex met(Simplex before, boolean mustBeMet) {
        Simplex elastic = elastic(before, mustBeMet);
        double[] misses = misses(mustBeMet);
        double[] solution = elastic.least(misses);
        if (isWithout(solution, columns, columns + 2 * rows.size(), misses)) {
            return rigid(before, mustBeMet);
        }
        return elastic.atMost(misses, withSlack(sum(solution, misses)));
    }

    private Simplex nearPresent(Simplex before, double[] present) {
        Simplex elastic = before;
        double[] changes = new double[variables];
        for (int i = 0; i < waters; i++) {
            double[] share = new double[variables];
            share[i] = 1;
            share[changes(i)] = -1;
            share[changes(i) + 1] = 1;
            elastic = elastic.exactly(share, present[i]);
            changes[changes(i)] = 1;
            changes[changes(i) + 1] = 1;
        }
        return elastic.atMost(changes, withSlack(sum(elastic.least(changes), changes)));
    }

    private Simplex elastic(Simplex before, boolean mustBeMet) {
        Simplex conditions = before;
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (row.goal().mustBeMet() == mustBeMet) {
                double[] coefficients = coefficients(row);
                Aim aim = row.goal().target().aim();
                coefficients[over(i)] = aim.limitsAbove() ? -1 : 0;
                coefficients[over(i) + 1] = aim.limitsBelow() ? 1 : 0;
                conditions = with(conditions, row, coefficients);
            }
        }
        return conditions;
    }

    private Simplex rigid(Simplex before, boolean mustBeMet) {
        Simplex conditions = before;
        for (Row row : rows) {
            if (row.goal().mustBeMet() == mustBeMet) {
                conditions = with(conditions, row, coefficients(row));
            }
        }
        return conditions;
    }

    private static Simplex with(Simplex conditions, Row row, double[] coefficients) {
        return switch (row.goal().target().aim()) {
            case EXACTLY, NEAR -> conditions.exactly(coefficients, row.relativeWanted());
            case AT_MOST -> conditions.atMost(coefficients, row.relativeWanted());
            case AT_LEAST -> conditions.atLeast(coefficients, row.relativeWanted());
        };
    }

    private double[] coefficients(Row row) {
        double[] coefficients = new double[variables];
        for (int i = 0; i < columns; i++) {
            coefficients[i] = row.relative(i) * unit[i];
        }
        return coefficients;
    }

    /** The sum of the misses of a rank, weighted where they may be missed. */
    private double[] misses(boolean mustBeMet) {
        double heaviest = rows.stream()
                .filter(row -> row.goal().mustBeMet() == mustBeMet)
                .mapToDouble(row -> row.goal().target().weight())
                .max()
                .orElse(1);
        double[] misses = new double[variables];
        for (int i = 0; i < rows.size(); i++) {
            Goal<?> goal = rows.get(i).goal();
            if (goal.mustBeMet() == mustBeMet) {
                misses[over(i)] = goal.target().weight() / heaviest;
                misses[over(i) + 1] = goal.target().weight() / heaviest;
            }
        }
        return misses;
    }

    private double[] mass() {
        double heaviest = Arrays.stream(grams).max().orElse(0);
        double[] mass = new double[variables];
        for (int i = 0; i < columns; i++) {
            mass[i] = heaviest > 0 ? grams[i] / heaviest : 0;
        }
        return mass;
    }

    private double[] minus(int water) {
        double[] sum = new double[variables];
        sum[water] = -1;
        return sum;
    }

    private int over(int row) {
        return columns + 2 * row;
    }

    private int changes(int water) {
        return columns + 2 * rows.size() + 2 * water;
    }

    private static boolean isWithout(double[] solution, int from, int to, double[] counted) {
        for (int i = from; i < to; i++) {
            if (counted[i] != 0 && solution[i] > ROUNDING) {
                return false;
            }
        }
        return true;
    }

    private static double withSlack(double sum) {
        return sum + SLACK * (1 + Math.abs(sum));
    }

    private static double sum(double[] solution, double[] weights) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * solution[i];
        }
        return sum;
    }
}
