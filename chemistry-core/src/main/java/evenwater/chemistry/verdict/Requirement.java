package evenwater.chemistry.verdict;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * A range that a parameter shall keep, with who says so.
 *
 * @param <Q> the kind of the parameter
 * @param parameter what it speaks of
 * @param least the least that is allowed; empty if anything less is
 * @param most the most that is allowed; empty if anything more is
 * @param meaning what the figure is, such as "taste threshold"; possibly empty
 * @param weight how it counts in the whole
 * @param citation who states it, when, and whether that was checked
 */
public record Requirement<Q extends WaterQuantity<?>>(
        Parameter<Q> parameter, Optional<Q> least, Optional<Q> most, String meaning, Weight weight, Citation citation) {

    /** Values that differ by less than this share of the limit are on it: a limit may be stated in another unit. */
    private static final double ROUNDING = 1e-9;

    private static final int DIGITS = 4;

    /**
     * Checks the parts.
     *
     * @param parameter see the record
     * @param least see the record
     * @param most see the record; not below {@code least}
     * @param meaning see the record
     * @param weight see the record
     * @param citation see the record
     */
    public Requirement {
        Objects.requireNonNull(parameter, "parameter");
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(most, "most");
        Objects.requireNonNull(meaning, "meaning");
        Objects.requireNonNull(weight, "weight");
        Objects.requireNonNull(citation, "citation");
        if (least.isEmpty() && most.isEmpty()) {
            throw new IllegalArgumentException("a requirement for " + parameter + " must have an end");
        }
        if (least.isPresent() && most.isPresent() && parameter.number(least.get()) > parameter.number(most.get())) {
            throw new IllegalArgumentException("ends of a requirement for " + parameter + " must be in order, but were "
                    + least.get() + " and " + most.get());
        }
    }

    /**
     * Returns a range, as an own rule that counts where the parameter is known.
     *
     * @param <Q> the kind
     * @param parameter what it speaks of
     * @param least the least that is allowed
     * @param most the most that is allowed
     * @return the requirement
     * @throws IllegalArgumentException if the ends are not in order
     */
    public static <Q extends WaterQuantity<?>> Requirement<Q> between(Parameter<Q> parameter, Q least, Q most) {
        return own(parameter, Optional.of(least), Optional.of(most));
    }

    /**
     * Returns an upper limit, as an own rule that counts where the parameter is known.
     *
     * @param <Q> the kind
     * @param parameter what it speaks of
     * @param most the most that is allowed
     * @return the requirement
     */
    public static <Q extends WaterQuantity<?>> Requirement<Q> atMost(Parameter<Q> parameter, Q most) {
        return own(parameter, Optional.empty(), Optional.of(most));
    }

    /**
     * Returns a lower limit, as an own rule that counts where the parameter is known.
     *
     * @param <Q> the kind
     * @param parameter what it speaks of
     * @param least the least that is allowed
     * @return the requirement
     */
    public static <Q extends WaterQuantity<?>> Requirement<Q> atLeast(Parameter<Q> parameter, Q least) {
        return own(parameter, Optional.of(least), Optional.empty());
    }

    private static <Q extends WaterQuantity<?>> Requirement<Q> own(
            Parameter<Q> parameter, Optional<Q> least, Optional<Q> most) {
        return new Requirement<>(parameter, least, most, "", Weight.COUNTS_IF_KNOWN, Citation.OWN_RULE);
    }

    /**
     * Returns the same range with another weight.
     *
     * @param newWeight how it shall count
     * @return the requirement
     */
    public Requirement<Q> with(Weight newWeight) {
        return new Requirement<>(parameter, least, most, meaning, newWeight, citation);
    }

    /**
     * Returns the same range as somebody else states it.
     *
     * @param newCitation who states it
     * @param newMeaning what the figure is, such as "taste threshold"; possibly empty
     * @return the requirement
     */
    public Requirement<Q> with(Citation newCitation, String newMeaning) {
        return new Requirement<>(parameter, least, most, newMeaning, weight, newCitation);
    }

    /** The range drawn in by a share of itself at each end, or of the limit where there is but one. */
    Requirement<Q> guarded(double share) {
        if (share == 0) {
            return this;
        }
        double from = least.map(parameter::number).orElse(0.0);
        double to = most.map(parameter::number).orElse(2 * from);
        double band = share * Math.abs(to - from);
        if (band == 0) {
            return this; // a number to the usual unit and back may lose its last bit
        }
        return new Requirement<>(
                parameter,
                least.map(end -> parameter.of(from + band)),
                most.map(end -> parameter.of(to - band)),
                "guard band within " + allowed(Locale.ROOT) + (meaning.isEmpty() ? "" : ", " + meaning),
                weight,
                Citation.OWN_RULE);
    }

    /** Where something that may lie anywhere in a range stands. */
    Standing standing(Bounds<Q> may) {
        double low = lowest(may);
        double high = highest(may);
        double floor = least.map(parameter::number).orElse(Double.NEGATIVE_INFINITY);
        double ceiling = most.map(parameter::number).orElse(Double.POSITIVE_INFINITY);
        floor -= Math.abs(finite(floor)) * ROUNDING;
        ceiling += Math.abs(finite(ceiling)) * ROUNDING;
        if (high < floor) {
            return Standing.BELOW;
        }
        if (low > ceiling) {
            return Standing.ABOVE;
        }
        return low >= floor && high <= ceiling ? Standing.INSIDE : Standing.UNDECIDED;
    }

    private static double finite(double end) {
        return Double.isInfinite(end) ? 0 : end;
    }

    double lowest(Bounds<Q> may) {
        return may.openBelow() ? Double.NEGATIVE_INFINITY : parameter.number(may.low());
    }

    double highest(Bounds<Q> may) {
        return may.openAbove() ? Double.POSITIVE_INFINITY : parameter.number(may.high());
    }

    /**
     * Returns what is allowed, for people, such as {@code 4 to 12 °dH}, {@code at most 0.02 mg/L} or {@code at least 60 mg/L}.
     *
     * @param locale whose decimal sign to use
     * @return the range in the usual unit of the parameter
     */
    public String allowed(Locale locale) {
        if (least.isPresent() && most.isPresent()) {
            String from = text(least.get(), locale);
            String to = text(most.get(), locale);
            if (from.equals(to)) {
                return to;
            }
            String unit = " " + parameter.unitSymbol();
            return (from.endsWith(unit) ? from.substring(0, from.length() - unit.length()) : from) + " to " + to;
        }
        return most.map(q -> "at most " + text(q, locale))
                .orElseGet(() -> "at least " + text(least.orElseThrow(), locale));
    }

    String least(Locale locale) {
        return least.map(q -> text(q, locale)).orElse("");
    }

    String most(Locale locale) {
        return most.map(q -> text(q, locale)).orElse("");
    }

    /** That it is kept, for people. */
    String kept(Locale locale) {
        if (least.isPresent() && most.isPresent()) {
            return "inside " + allowed(locale);
        }
        return most.isPresent() ? "not above " + most(locale) : "not below " + least(locale);
    }

    private String text(Q quantity, Locale locale) {
        return parameter.of(parameter.number(quantity)).toText(locale, DIGITS);
    }

    /** Returns it with its source, such as {@code GH 4 to 12 °dH: common practice, no source}. */
    @Override
    public String toString() {
        return parameter + " " + allowed(Locale.ROOT) + ": " + (meaning.isEmpty() ? "" : meaning + "; ") + citation;
    }
}
