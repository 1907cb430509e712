package evenwater.chemistry.recipe;

import evenwater.chemistry.quantity.NoAnswerException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Linear programmes in order of rank: each finds the least of its price, and those after it may not make that worse.
 *
 * <p>Variables are the shares of all waters but the first, which takes the rest, the doses, and what each row is over. All rows are relative to
 * their scale and all doses to what moves the row that feels them most, so that nothing depends on units.
 */
final class RankedProgramme {

    /** Doses and shares that move every row by less than this of its scale are rounding. */
    private static final double NOTHING = 1e-9;

    /** What a rank may lose to the next ones when they are given room; a hundredth of what a target may be missed by. */
    private static final double ROOM = 1e-10;

    /** A gain that is larger than this share of the price, or than this, is not owed to the room. */
    private static final double FAR = 1e-7;

    private final int waters;
    private final int columns;
    private final int variables;
    private final List<Row> rows;
    /** What a share or dose is of its variable; 0 for what moves no row and is not dosed. */
    private final double[] unit;

    private final List<ElasticRow> fixed = new ArrayList<>();
    private final List<ElasticRow> wished = new ArrayList<>();

    RankedProgramme(int waters, int compounds, List<Row> rows) {
        this.waters = waters;
        this.columns = waters + compounds;
        this.rows = rows;
        this.variables = columns + rows.size() + waters;
        this.unit = new double[columns];
        for (int i = 0; i < columns; i++) {
            double most = most(i);
            unit[i] = i < waters ? 1 : most > 0 ? 1 / most : 0;
        }
        double heaviest = rows.stream()
                .mapToDouble(row -> row.goal().target().weight())
                .max()
                .orElse(1);
        for (int i = 0; i < rows.size(); i++) {
            Goal<?> goal = rows.get(i).goal();
            (goal.mustBeMet() ? fixed : wished).add(elastic(rows.get(i), goal.mustBeMet() ? 1 : heaviest, columns + i));
        }
    }

    private double most(int column) {
        return rows.stream()
                .mapToDouble(row -> Math.abs(row.relative(column)))
                .max()
                .orElse(0);
    }

    private ElasticRow elastic(Row row, double heaviest, int over) {
        double[] sum = new double[variables];
        for (int i = 1; i < columns; i++) {
            sum[i] = i < waters ? row.relative(i) - row.relative(0) : row.relative(i) * unit[i];
        }
        Aim aim = row.goal().target().aim();
        double price = row.goal().target().weight() / heaviest;
        return ElasticRow.of(
                sum,
                row.relativeWanted() - row.relative(0),
                aim.limitsAbove() ? price : 0,
                aim.limitsBelow() ? price : 0,
                over);
    }

    /** The least sum of what the fixed rows are missed by; the measure by which targets fight. */
    double leastViolation() {
        double[] solution = limits(fixed).least(price(fixed), new double[variables]);
        return fixed.stream().mapToDouble(row -> row.price(solution)).sum();
    }

    /**
     * Shares that make 1, then doses in g/L.
     *
     * <p>A limit that leaves no room at all can hide the way to a better answer from the solver. So all is solved once more with a little room; where that
     * answer is better by far more than the room explains, all is solved from there again, without room.
     */
    double[] solve(Optional<double[]> presentShares) {
        List<double[]> prices = new ArrayList<>(List.of(price(fixed), price(wished)));
        List<ElasticRow> all = new ArrayList<>(fixed);
        all.addAll(wished);
        if (presentShares.isPresent()) {
            List<ElasticRow> routine = routine(presentShares.get());
            all.addAll(routine);
            prices.add(price(routine));
        }
        prices.add(mass());
        for (int water = 0; water < waters - 1; water++) {
            prices.add(lackOf(water));
        }
        Simplex limits = limits(all);
        return answer(better(limits, prices));
    }

    private double[] better(Simplex limits, List<double[]> prices) {
        double[] exact;
        try {
            exact = solution(limits, prices, 0, new double[variables]);
        } catch (NoAnswerException withoutRoom) {
            return solution(limits, prices, ROOM, new double[variables]);
        }
        try {
            double[] withRoom = solution(limits, prices, ROOM, new double[variables]);
            if (!isFarBetter(withRoom, exact, prices)) {
                return exact;
            }
            double[] again = solution(limits, prices, 0, withRoom);
            return isFarBetter(again, exact, prices) ? again : exact;
        } catch (NoAnswerException withRoom) {
            return exact;
        }
    }

    private double[] solution(Simplex free, List<double[]> prices, double room, double[] start) {
        Simplex limits = free;
        double[] solution = start;
        for (double[] price : prices) {
            solution = limits.least(price, solution);
            limits = limits.atMost(price, Simplex.of(price, solution) + room);
        }
        return solution;
    }

    private static boolean isFarBetter(double[] one, double[] other, List<double[]> prices) {
        for (double[] price : prices) {
            double gain = Simplex.of(price, other) - Simplex.of(price, one);
            if (Math.abs(gain) > FAR * Math.max(1, Math.abs(Simplex.of(price, other)))) {
                return gain > 0;
            }
        }
        return false;
    }

    /** Variable 0 is not used: the first water takes what the other shares leave. */
    private Simplex limits(List<ElasticRow> elastic) {
        double[] others = new double[variables];
        Arrays.fill(others, 1, Math.max(1, waters), 1);
        Simplex limits = Simplex.free().atMost(others, 1);
        for (ElasticRow row : elastic) {
            limits = row.addTo(limits);
        }
        return limits;
    }

    private double[] price(List<ElasticRow> elastic) {
        double[] price = new double[variables];
        elastic.forEach(row -> row.addPriceTo(price));
        return price;
    }

    /** One row for each share: that of the first water is 1 less the others. */
    private List<ElasticRow> routine(double[] present) {
        List<ElasticRow> routine = new ArrayList<>();
        for (int water = 0; water < waters; water++) {
            double[] sum = new double[variables];
            if (water == 0) {
                Arrays.fill(sum, 1, waters, 1);
            } else {
                sum[water] = 1;
            }
            routine.add(ElasticRow.of(
                    sum, water == 0 ? 1 - present[0] : present[water], 1, 1, columns + rows.size() + water));
        }
        return routine;
    }

    private double[] mass() {
        double heaviest = Arrays.stream(unit, waters, columns).max().orElse(0);
        double[] mass = new double[variables];
        for (int i = waters; i < columns; i++) {
            mass[i] = heaviest > 0 ? unit[i] / heaviest : 0;
        }
        return mass;
    }

    /** Least where there is most of a water. */
    private double[] lackOf(int water) {
        double[] lack = new double[variables];
        if (water == 0) {
            Arrays.fill(lack, 1, waters, 1);
        } else {
            lack[water] = -1;
        }
        return lack;
    }

    private double[] answer(double[] solution) {
        double strongest = 1;
        for (int i = 0; i < waters; i++) {
            strongest = Math.max(strongest, most(i));
        }
        double[] answer = new double[columns];
        answer[0] = 1;
        for (int i = 1; i < columns; i++) {
            // a share that is left out goes to the first water
            double nothing = i < waters ? NOTHING / strongest : NOTHING;
            answer[i] = solution[i] > nothing ? solution[i] * unit[i] : 0;
            answer[0] -= i < waters ? answer[i] : 0;
        }
        answer[0] = answer[0] > NOTHING / strongest ? answer[0] : 0;
        return answer;
    }
}
