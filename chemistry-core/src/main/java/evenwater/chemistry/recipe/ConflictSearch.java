package evenwater.chemistry.recipe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Which targets fight, by a deletion filter, and why in words.
 *
 * <p>The filter takes one target after the other out of a set that cannot be met, and leaves it out if the rest still cannot.
 *
 * @see "J. W. Chinneck and E. W. Dravnieks, Locating minimal infeasible constraint sets in linear programs, ORSA J. Comput. 3 (1991) 157 (from
 *     memory)"
 */
final class ConflictSearch {

    private final Setting setting;

    ConflictSearch(Setting setting) {
        this.setting = setting;
    }

    /** Conflicts that share no target; those that do come to light when one is resolved. */
    List<Conflict> among(List<Row> rows) {
        List<Row> left = new ArrayList<>(
                rows.stream().filter(row -> row.goal().mustBeMet()).toList());
        List<Conflict> found = new ArrayList<>();
        while (fight(left)) {
            List<Row> conflict = irreducible(left);
            found.add(new Conflict(
                    conflict.stream().map(row -> row.goal().toString()).toList(), words(conflict)));
            left.removeAll(conflict);
        }
        return found.stream().sorted(Comparator.comparing(Conflict::words)).toList();
    }

    private List<Row> irreducible(List<Row> fighting) {
        List<Row> kept = new ArrayList<>(fighting);
        for (Row row : fighting) {
            List<Row> fewer = new ArrayList<>(kept);
            fewer.remove(row);
            if (fight(fewer)) {
                kept = fewer;
            }
        }
        return kept;
    }

    private boolean fight(List<Row> rows) {
        return !rows.isEmpty()
                && new RankedProgramme(setting.waters().size(), setting.shelf().size(), rows).leastViolation()
                        > Residual.TOLERANCE;
    }

    private String words(List<Row> conflict) {
        String targets =
                listed(conflict.stream().map(row -> row.goal().toString()).toList());
        Set<String> reasons = new LinkedHashSet<>();
        Set<Integer> movers = new LinkedHashSet<>();
        List<Row> bystanders = new ArrayList<>();
        for (Row row : conflict) {
            Aim aim = row.goal().target().aim();
            if (aim.limitsBelow() && row.relativeWanted() > mostOfWaters(row)) {
                reasons.add(movers(row, true, movers));
            } else if (aim.limitsAbove() && row.relativeWanted() < leastOfWaters(row)) {
                reasons.add(movers(row, false, movers));
            } else {
                bystanders.add(row);
            }
        }
        for (Row row : bystanders) {
            reasons.addAll(sideEffects(row, movers));
        }
        return targets + " cannot be met" + (conflict.size() > 1 ? " together" : "")
                + (reasons.isEmpty() ? "" : ": " + String.join("; ", reasons));
    }

    private String movers(Row row, boolean upwards, Set<Integer> movers) {
        List<Integer> able = compounds(column -> upwards ? row.relative(column) > 0 : row.relative(column) < 0);
        movers.addAll(able);
        String quantity = row.goal().quantity();
        if (able.isEmpty()) {
            return "nothing on the shelf " + (upwards ? "raises " : "lowers ") + quantity;
        }
        if (able.size() == 1) {
            return name(able.get(0)) + " is the only thing on the shelf that " + (upwards ? "raises " : "lowers ")
                    + quantity;
        }
        return names(able) + (upwards ? " raise " : " lower ") + quantity;
    }

    /** What the compounds that are needed do to a target that the waters alone would meet. */
    private List<String> sideEffects(Row row, Set<Integer> movers) {
        Aim aim = row.goal().target().aim();
        List<String> effects = new ArrayList<>();
        List<Integer> raising = movers.stream().filter(c -> row.relative(c) > 0).toList();
        List<Integer> lowering =
                movers.stream().filter(c -> row.relative(c) < 0).toList();
        if (aim.limitsAbove() && !raising.isEmpty()) {
            effects.add(names(raising)
                    + (raising.size() == 1 ? " raises " : " raise ")
                    + row.goal().quantity());
        }
        if (aim.limitsBelow() && !lowering.isEmpty()) {
            effects.add(names(lowering)
                    + (lowering.size() == 1 ? " lowers " : " lower ")
                    + row.goal().quantity());
        }
        return effects;
    }

    private double mostOfWaters(Row row) {
        return ofWaters(row).max().orElseThrow();
    }

    private double leastOfWaters(Row row) {
        return ofWaters(row).min().orElseThrow();
    }

    private DoubleStream ofWaters(Row row) {
        return IntStream.range(0, setting.waters().size()).mapToDouble(row::relative);
    }

    private List<Integer> compounds(IntPredicate chosen) {
        return IntStream.range(setting.waters().size(), setting.columns())
                .filter(chosen)
                .boxed()
                .toList();
    }

    private String name(int column) {
        return setting.shelf().get(column - setting.waters().size()).compound().name();
    }

    private String names(List<Integer> columns) {
        return listed(columns.stream().map(this::name).toList());
    }

    /** Such as "a, b and c". */
    private static String listed(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
