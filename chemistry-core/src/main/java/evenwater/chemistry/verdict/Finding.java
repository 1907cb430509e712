package evenwater.chemistry.verdict;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * How one parameter stands against one requirement.
 *
 * @param <Q> the kind of the parameter
 * @param requirement what is asked for
 * @param may where the parameter lies; empty if nobody measured it
 * @param standing how it stands
 */
public record Finding<Q extends WaterQuantity<?>>(
        Requirement<Q> requirement, Optional<Bounds<Q>> may, Standing standing) {

    /**
     * Checks that the standing is what requirement and range say.
     *
     * @param requirement see the record
     * @param may see the record
     * @param standing see the record
     */
    public Finding {
        Objects.requireNonNull(requirement, "requirement");
        Objects.requireNonNull(may, "may");
        Objects.requireNonNull(standing, "standing");
        if (standing != standingOf(requirement, may)) {
            throw new IllegalArgumentException(requirement.parameter() + " stands " + standingOf(requirement, may)
                    + ", but was said to be " + standing);
        }
    }

    static <Q extends WaterQuantity<?>> Finding<Q> of(Requirement<Q> requirement, Optional<Bounds<Q>> may) {
        return new Finding<>(requirement, may, standingOf(requirement, may));
    }

    private static <Q extends WaterQuantity<?>> Standing standingOf(
            Requirement<Q> requirement, Optional<Bounds<Q>> may) {
        return may.map(requirement::standing).orElse(Standing.NOT_MEASURED);
    }

    /**
     * Returns by how much the best guess is outside.
     *
     * @return what is missing to the least, or what is more than the most; empty if the best guess is inside or there is none
     */
    public Optional<Q> outsideBy() {
        return may.flatMap(range -> distance(number(range.value()), number(range.value())));
    }

    /**
     * Returns by how much it is outside in any case, whatever the measurement leaves open.
     *
     * @return the distance of the nearer end of its range; empty unless {@link #standing} is outside
     */
    public Optional<Q> surelyOutsideBy() {
        return standing.isOutside()
                ? may.flatMap(range -> distance(requirement.lowest(range), requirement.highest(range)))
                : Optional.empty();
    }

    private Optional<Q> distance(double low, double high) {
        Parameter<Q> parameter = requirement.parameter();
        double below = requirement.least().map(least -> number(least) - high).orElse(0.0);
        double above = requirement.most().map(most -> low - number(most)).orElse(0.0);
        double distance = Math.max(below, above);
        return distance > 0 ? Optional.of(parameter.of(distance)) : Optional.empty();
    }

    private double number(Q quantity) {
        return requirement.parameter().number(quantity);
    }

    /** How far outside in any case, as a share of the limit that it passes, or of the most where the limit is 0. */
    double severity() {
        double distance = surelyOutsideBy().map(this::number).orElse(0.0);
        double limit = standing == Standing.BELOW
                ? requirement.most().or(requirement::least).map(this::number).orElse(0.0)
                : requirement.most().map(this::number).orElse(0.0);
        return distance == 0 ? 0 : limit > 0 ? distance / limit : Double.POSITIVE_INFINITY;
    }

    /**
     * Returns what helps, in general.
     *
     * @return what to do where it is outside, such as "aerate the water"; empty text if it is not, or nobody knows
     */
    public String remedy() {
        return standing.isOutside() ? VerdictTables.remedy(requirement.parameter(), standing == Standing.BELOW) : "";
    }

    /**
     * Returns the finding for people, such as {@code GH 18 °dH: above 12 °dH, by 6 °dH}.
     *
     * @param locale whose decimal sign to use
     * @return one phrase
     */
    public String toText(Locale locale) {
        Parameter<Q> parameter = requirement.parameter();
        if (may.isEmpty()) {
            return parameter + ": not measured, wanted " + requirement.allowed(locale);
        }
        String range = parameter + " " + Ranges.text(parameter, may.get(), locale) + ": ";
        return switch (standing) {
            case INSIDE -> range + requirement.kept(locale);
            case BELOW -> range + "below " + requirement.least(locale) + by(locale);
            case ABOVE -> range + "above " + requirement.most(locale) + by(locale);
            case UNDECIDED ->
                range + "undecided, wanted " + requirement.allowed(locale) + ", and what is known cannot tell";
            case NOT_MEASURED -> throw new IllegalStateException(parameter + " has a range");
        };
    }

    private String by(Locale locale) {
        Optional<Q> surely = surelyOutsideBy();
        String least = surely.map(q -> q.toText(locale, Ranges.DIGITS)).orElse("");
        String best = outsideBy().map(q -> q.toText(locale, Ranges.DIGITS)).orElse(least);
        return best.equals(least) ? ", by " + least : ", by " + best + " (at least " + least + ")";
    }

    /** Returns it with a decimal point. */
    @Override
    public String toString() {
        return toText(Locale.ROOT);
    }
}
