package evenwater.chemistry.verdict;

import evenwater.chemistry.quantity.WaterQuantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How a water stands against requirements: each finding, the whole, what nobody measured, what to change first, and the cautions.
 *
 * <p>A tank is never {@link Outcome#FIT} while something that must be known is unknown; every kind of tank of {@link Requirements#ofTank} asks
 * for chlorine, copper, ammonia and nitrite, requirements of one's own only for what they name.
 * Immutable and thread-safe.
 */
public final class Verdict {

    /** From here on the caution about sodium is said: the advisory for diets of 500 mg a day, US EPA 2003, in mg/L. */
    private static final double MUCH_SODIUM = 20;

    /** 50 mg/L NO₃ and 3 mg/L NO₂, WHO, of which the sum of shares shall not pass 1; 1.5 mg/L F (from memory). */
    private static final double MUCH_NITRATE = 50;

    /** US EPA, 40 CFR 141. */
    private static final double MUCH_NITRATE_US = Parameter.NITRATE.number(Parameter.NITRATE.parse("10 mg/L N"));

    private static final double MUCH_NITRITE = 3;
    private static final double MUCH_FLUORIDE = 1.5;

    /** 1.3 mg/L, the action level of 40 CFR 141.80 (from memory). */
    private static final double MUCH_COPPER = 1.3;

    private final Requirements requirements;
    private final List<Finding<?>> findings;
    private final Derived known;
    private final Set<CautionTopic> topics;
    private final List<Caution> handling;

    Verdict(
            Requirements requirements,
            List<Finding<?>> findings,
            Derived known,
            Set<CautionTopic> topics,
            List<Caution> handling) {
        this.requirements = requirements;
        this.findings = findings;
        this.known = known;
        this.topics = topics;
        this.handling = handling;
    }

    /**
     * Returns what the water was held against.
     *
     * @return the requirements
     */
    public Requirements requirements() {
        return requirements;
    }

    /**
     * Returns the verdict for each requirement.
     *
     * @return one finding for each, in their order
     */
    public List<Finding<?>> findings() {
        return findings;
    }

    /**
     * Returns the findings that count, without those for information.
     *
     * @return findings in the order of the requirements
     */
    public List<Finding<?>> counting() {
        return findings.stream()
                .filter(finding -> finding.requirement().weight() != Weight.FOR_INFORMATION)
                .toList();
    }

    /**
     * Returns the verdict as a whole.
     *
     * @return not fit if something that counts is outside in any case; fit if all that must be known is known and all that counts is inside
     */
    public Outcome outcome() {
        if (counting().stream().anyMatch(finding -> finding.standing().isOutside())) {
            return Outcome.UNFIT;
        }
        boolean certain =
                !counting().isEmpty() && missing().isEmpty() && undecided().isEmpty();
        return certain ? Outcome.FIT : Outcome.UNDECIDED;
    }

    /**
     * Returns what must be known and is not.
     *
     * @return parameters to measure, in the order of the requirements
     */
    public List<Parameter<?>> missing() {
        return counting().stream()
                .filter(finding -> finding.standing() == Standing.NOT_MEASURED
                        && finding.requirement().weight() == Weight.MUST_BE_KNOWN)
                .<Parameter<?>>map(finding -> measurable(finding.requirement().parameter()))
                .distinct()
                .toList();
    }

    /** What a test shows: ammonia and ammonium together. */
    private static Parameter<?> measurable(Parameter<?> parameter) {
        return parameter == Parameter.UNIONISED_AMMONIA ? Parameter.TOTAL_AMMONIA : parameter;
    }

    /**
     * Returns what to change, the most urgent first: poisons, then what is farthest outside as a share of its limit.
     *
     * @return findings that count and are outside in any case
     */
    public List<Finding<?>> toChange() {
        return counting().stream()
                .filter(finding -> finding.standing().isOutside())
                .sorted(Comparator.<Finding<?>, Boolean>comparing(finding -> !isPoison(finding))
                        .thenComparing(Comparator.<Finding<?>>comparingDouble(Finding::severity)
                                .reversed()))
                .toList();
    }

    /**
     * Returns what may be inside or outside, for all that is known.
     *
     * @return findings that count and are undecided, in the order of the requirements
     */
    public List<Finding<?>> undecided() {
        return counting().stream()
                .filter(finding -> finding.standing() == Standing.UNDECIDED)
                .toList();
    }

    /** Only an upper limit, and unlike sodium or nitrate a matter of days. */
    private static boolean isPoison(Finding<?> finding) {
        return finding.requirement().least().isEmpty()
                && finding.requirement().parameter() != Parameter.SODIUM
                && finding.requirement().parameter() != Parameter.NITRATE;
    }

    /**
     * Returns what people must know about this water, what was done to it and what is unknown of it.
     *
     * @return cautions, those of the treatment first
     */
    public List<Caution> cautions() {
        Set<CautionTopic> apply = EnumSet.of(CautionTopic.ALWAYS);
        apply.addAll(topics);
        most(Parameter.SODIUM).filter(sodium -> sodium > MUCH_SODIUM).ifPresent(any -> apply.add(CautionTopic.SODIUM));
        double nitrate = most(Parameter.NITRATE).orElse(0.0);
        double nitrite = most(Parameter.NITRITE).orElse(0.0);
        if (nitrate > MUCH_NITRATE_US) {
            apply.add(CautionTopic.NITRATE);
        }
        if (nitrite > 0 && nitrate / MUCH_NITRATE + nitrite / MUCH_NITRITE > 1) {
            apply.add(CautionTopic.NITRITE);
        }
        most(Parameter.FLUORIDE)
                .filter(fluoride -> fluoride > MUCH_FLUORIDE)
                .ifPresent(any -> apply.add(CautionTopic.FLUORIDE));
        doubtful(Parameter.CHLORINE, CautionTopic.CHLORINE, apply);
        doubtful(Parameter.COPPER, CautionTopic.COPPER, apply);
        most(Parameter.COPPER).filter(copper -> copper > MUCH_COPPER).ifPresent(any -> apply.add(CautionTopic.COPPER));
        doubtful(Parameter.CARBON_DIOXIDE, CautionTopic.CARBON_DIOXIDE, apply);
        if (findings.stream().anyMatch(Verdict::isOtherPoison)) {
            apply.add(CautionTopic.POISON);
        }
        return Stream.concat(handling.stream(), Caution.about(apply).stream()).toList();
    }

    /** A metal or other poison that is no part of a water, and may be there. */
    private static boolean isOtherPoison(Finding<?> finding) {
        return VerdictTables.otherNames().containsValue(finding.requirement().parameter())
                && (finding.standing() == Standing.ABOVE || finding.standing() == Standing.UNDECIDED);
    }

    /** Adds a caution where a parameter that counts is not surely inside. */
    private void doubtful(Parameter<?> parameter, CautionTopic topic, Set<CautionTopic> apply) {
        counting().stream()
                .filter(finding -> finding.requirement().parameter() == parameter)
                .filter(finding -> finding.standing() != Standing.INSIDE)
                .filter(finding -> finding.standing() != Standing.NOT_MEASURED
                        || finding.requirement().weight() == Weight.MUST_BE_KNOWN)
                .findFirst()
                .ifPresent(any -> apply.add(topic));
    }

    /** The most that a parameter may be, whether it was asked for or not. */
    private <Q extends WaterQuantity<?>> Optional<Double> most(Parameter<Q> parameter) {
        return known.known(parameter)
                .map(may -> may.openAbove() ? Double.POSITIVE_INFINITY : parameter.number(may.high()));
    }

    /**
     * Returns the whole in one or two sentences.
     *
     * @param locale whose decimal sign to use
     * @return outcome, reasons, what is not measured, what to change first
     */
    public String statement(Locale locale) {
        Objects.requireNonNull(locale, "locale");
        if (requirements.isForDrinking()) {
            return "Published values for drinking water are shown beside the water. Whether it is safe to drink is for the health "
                    + "authority to say, with its bacteria and metals.";
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(capital(outcome() + " for " + requirements.name()) + reasons(locale));
        if (!missing().isEmpty()) {
            sentences.add("Not measured, and no water is fit while they are unknown: " + names(missing()));
        }
        toChange().stream()
                .findFirst()
                .filter(first -> !first.remedy().isEmpty())
                .ifPresent(first ->
                        sentences.add("Change first: " + first.requirement().parameter() + ": " + first.remedy()));
        return String.join(". ", sentences) + ".";
    }

    private String reasons(Locale locale) {
        List<Finding<?>> reasons = outcome() == Outcome.UNFIT
                ? toChange()
                : counting().stream()
                        .filter(finding -> finding.standing() == Standing.UNDECIDED)
                        .toList();
        return reasons.isEmpty()
                ? ""
                : reasons.stream().map(finding -> finding.toText(locale)).collect(Collectors.joining("; ", ": ", ""));
    }

    private static String names(List<Parameter<?>> parameters) {
        return parameters.stream().map(Parameter::name).collect(Collectors.joining(", "));
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** Returns the statement with a decimal point. */
    @Override
    public String toString() {
        return statement(Locale.ROOT);
    }
}
