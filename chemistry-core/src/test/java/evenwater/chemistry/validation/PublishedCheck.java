package evenwater.chemistry.validation;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * A result of the library beside the figure that somebody else published for it.
 *
 * <p>The tolerance is that of the figure's own source and is never widened to let a result pass. Where both differ by more, both
 * stand, with a reason that can be proved: {@code byItsConvention} is what the inputs of the source give (older atomic weights,
 * rounded intermediate results), worked out without the library, and it has to give the printed figure.
 *
 * @param id short name, unique on the page
 * @param what is compared, in words
 * @param unit of all figures of this check; empty if they have none
 * @param source who published the figure
 * @param status how sure it is that the source says so
 * @param published the figure as printed, with its tolerance
 * @param ours the result of the library
 * @param remark why the figures differ, or what else to know; possibly empty
 * @param byItsConvention what the source's own inputs give where the figures differ; empty where they agree
 */
record PublishedCheck(
        String id,
        String what,
        String unit,
        Source source,
        Status status,
        Figure published,
        double ours,
        String remark,
        Optional<BigDecimal> byItsConvention) {

    /** Checks that there is something to compare. */
    PublishedCheck {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(status, "status");
        Objects.requireNonNull(published, "published");
        if (id.isBlank() || what.isBlank() || !Double.isFinite(ours)) {
            throw new IllegalArgumentException(
                    "a check needs an id, words and a finite result, but was '" + id + "', '" + what + "', " + ours);
        }
    }

    /** Returns a check that has to agree. */
    static PublishedCheck of(
            String id, String what, String unit, Source source, Status status, Figure published, double ours) {
        return new PublishedCheck(id, what, unit, source, status, published, ours, "", Optional.empty());
    }

    /** Returns this check with a remark. */
    PublishedCheck remarking(String newRemark) {
        return new PublishedCheck(id, what, unit, source, status, published, ours, newRemark, byItsConvention);
    }

    /** Returns this check as one whose figures differ for a reason. */
    PublishedCheck differing(String reason, BigDecimal byTheConventionOfTheSource) {
        return new PublishedCheck(
                id, what, unit, source, status, published, ours, reason, Optional.of(byTheConventionOfTheSource));
    }

    /** Tells whether the result is as close to the figure as its source allows. */
    boolean agrees() {
        return published.accepts(ours);
    }

    /** Returns what is wrong with this check; empty if nothing is. */
    Optional<String> problem() {
        String both = what + ": published " + published + " " + unit + ", ours " + published.rounded(ours);
        if (byItsConvention.isEmpty()) {
            return agrees() ? Optional.empty() : Optional.of(both + ", outside the tolerance of " + source.label());
        }
        if (agrees()) {
            return Optional.of(both + " agree, so there is no difference to explain");
        }
        if (remark.isBlank()) {
            return Optional.of(both + " differ without a reason");
        }
        return published.accepts(byItsConvention.get())
                ? Optional.empty()
                : Optional.of(both + " differ, and the convention of the source gives "
                        + byItsConvention.get().toPlainString() + ", which explains nothing");
    }
}
