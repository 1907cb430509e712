package evenwater.chemistry.verdict;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * Who states a figure, when, and whether that was checked.
 *
 * @param text publisher and title; empty for a rule without a source
 * @param year when it was published, 0 if that is not known; guideline figures change, so show it
 * @param backing how far it can be relied on
 */
public record Citation(String text, int year, Backing backing) {

    /** A rule that aquarists share. */
    public static final Citation COMMON_PRACTICE = new Citation("", 0, Backing.COMMON_PRACTICE);

    /** A rule of the caller. */
    public static final Citation OWN_RULE = new Citation("", 0, Backing.OWN_RULE);

    private static final int FIRST_YEAR = 1800;
    private static final int LAST_YEAR = 2200;

    /**
     * Checks the parts.
     *
     * @param text see the record
     * @param year see the record; 0 or from 1800 to 2200
     * @param backing see the record
     */
    public Citation {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(backing, "backing");
        if (year != 0 && (year < FIRST_YEAR || year > LAST_YEAR)) {
            throw new IllegalArgumentException(
                    "year of a citation must be 0 or from " + FIRST_YEAR + " to " + LAST_YEAR + ", but was " + year);
        }
        boolean published = backing == Backing.VERIFIED || backing == Backing.FROM_MEMORY;
        if (published && text.isBlank()) {
            throw new IllegalArgumentException("a published figure must name its source");
        }
    }

    /**
     * Returns when it was published.
     *
     * @return the year; empty if unknown
     */
    public OptionalInt published() {
        return year == 0 ? OptionalInt.empty() : OptionalInt.of(year);
    }

    /**
     * Tells whether somebody looked the figure up.
     *
     * @return false for a figure from memory and for a rule without a source
     */
    public boolean isVerified() {
        return backing == Backing.VERIFIED;
    }

    /** Returns it for people, such as {@code Health Canada (1992); from memory, unverified}. */
    @Override
    public String toString() {
        return text.isEmpty() ? backing.toString() : text + (year == 0 ? "" : " (" + year + ")") + "; " + backing;
    }
}
