package evenwater.chemistry.verdict;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * How likely a water keeps its requirements, from the verdicts of many draws: the share of draws that do, which JCGM 106 calls the conformance
 * probability.
 *
 * <p>Each draw is a possible truth, so what is undecided in it is so for want of knowledge that no draw can give. A probability has a
 * standard error of {@code √(p (1 − p) / n)}; nothing in n draws means below some 3/n. Immutable and thread-safe.
 *
 * @see "JCGM 106:2012, The role of measurement uncertainty in conformity assessment, 7.1 (from memory)"
 */
public final class Conformance {

    private final int draws;
    private final Map<Requirement<?>, Map<Standing, Integer>> standings;
    private final Map<Outcome, Integer> outcomes;

    private Conformance(
            int draws, Map<Requirement<?>, Map<Standing, Integer>> standings, Map<Outcome, Integer> outcomes) {
        this.draws = draws;
        this.standings = standings;
        this.outcomes = outcomes;
    }

    /**
     * Counts the verdicts of draws.
     *
     * @param verdicts one for each draw, all against the same requirements
     * @return the shares
     * @throws IllegalArgumentException if there is none, or they judge against different requirements
     */
    public static Conformance of(List<Verdict> verdicts) {
        Objects.requireNonNull(verdicts, "verdicts");
        if (verdicts.isEmpty()) {
            throw new IllegalArgumentException("a conformance probability needs the verdict of at least one draw");
        }
        List<Requirement<?>> common = verdicts.get(0).requirements().list();
        Map<Requirement<?>, Map<Standing, Integer>> standings = new HashMap<>();
        Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
        for (Verdict verdict : verdicts) {
            if (!verdict.requirements().list().equals(common)) {
                throw new IllegalArgumentException(
                        "verdicts of draws must be against the same requirements, but were for "
                                + verdicts.get(0).requirements().name() + " and "
                                + verdict.requirements().name());
            }
            outcomes.merge(verdict.outcome(), 1, Integer::sum);
            for (Finding<?> finding : verdict.findings()) {
                standings
                        .computeIfAbsent(finding.requirement(), any -> new EnumMap<>(Standing.class))
                        .merge(finding.standing(), 1, Integer::sum);
            }
        }
        return new Conformance(verdicts.size(), standings, outcomes);
    }

    /**
     * Returns how many verdicts were counted.
     *
     * @return 1 or more
     */
    public int draws() {
        return draws;
    }

    /**
     * Returns how likely a requirement is kept.
     *
     * @param requirement one of those that were judged
     * @return share of the draws that are inside; no unit, 0 to 1
     * @throws IllegalArgumentException if it was not judged
     */
    public double probability(Requirement<?> requirement) {
        return probability(requirement, Standing.INSIDE);
    }

    /**
     * Returns how likely a parameter stands somewhere.
     *
     * @param requirement one of those that were judged
     * @param standing such as below
     * @return share of the draws; no unit, 0 to 1
     * @throws IllegalArgumentException if it was not judged
     */
    public double probability(Requirement<?> requirement, Standing standing) {
        Objects.requireNonNull(standing, "standing");
        Map<Standing, Integer> counts = standings.get(Objects.requireNonNull(requirement, "requirement"));
        if (counts == null) {
            throw new IllegalArgumentException("no draw was judged against " + requirement);
        }
        return counts.getOrDefault(standing, 0) / (double) draws;
    }

    /**
     * Returns how likely the whole comes out so.
     *
     * @param outcome such as fit
     * @return share of the draws; no unit, 0 to 1
     */
    public double probability(Outcome outcome) {
        return outcomes.getOrDefault(Objects.requireNonNull(outcome, "outcome"), 0) / (double) draws;
    }

    /**
     * Returns the standard error that a probability has by the number of draws: {@code √(p (1 − p) / n)}.
     *
     * @param probability no unit; 0 to 1
     * @return no unit; 0 where all draws or none agree, which says no more than that the rest is below some 3/n
     * @throws IllegalArgumentException if it is no probability
     */
    public double standardErrorOf(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("a probability must be from 0 to 1, but was " + probability);
        }
        return Math.sqrt(probability * (1 - probability) / draws);
    }

    /** Returns the outcomes, such as {@code of 10000 draws 97.2 % undecided, 2.8 % not fit}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("of ").append(draws).append(draws == 1 ? " draw" : " draws");
        String separator = " ";
        for (Outcome outcome : Outcome.values()) {
            if (probability(outcome) > 0) {
                text.append(separator)
                        .append(String.format(Locale.ROOT, "%.1f %% %s", 100 * probability(outcome), outcome));
                separator = ", ";
            }
        }
        return text.toString();
    }
}
