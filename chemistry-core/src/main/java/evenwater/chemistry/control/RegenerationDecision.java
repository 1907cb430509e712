package evenwater.chemistry.control;

import java.util.Objects;

/**
 * Whether, when and why a softener is to regenerate, and what holds it back.
 *
 * <p>A wish, no safety device: the valve, the overflow of the brine tank and the appliance's own protection stand by themselves.
 *
 * @param due when
 * @param reason why; {@code NONE} if it is not due
 * @param hold what holds back one that is due
 * @param words the same for people, with the numbers
 */
public record RegenerationDecision(Due due, Reason reason, Hold hold, String words) {

    /** When a regeneration is due. */
    public enum Due {
        /** It is not. */
        NOT,
        /** In the night's window. */
        AT_NIGHT,
        /** At any time of day. */
        AT_ONCE
    }

    /** Why a regeneration is due. */
    public enum Reason {
        /** It is not. */
        NONE,
        /** Nothing is left. */
        EXHAUSTED,
        /** No more is left than the settings want for a regeneration at once. */
        NEARLY_EXHAUSTED,
        /** What is left does not cover the reserve. */
        RESERVE,
        /** The last regeneration would pass its longest age. */
        CALENDAR
    }

    /** What holds a regeneration back. */
    public enum Hold {
        /** Nothing does. */
        NONE,
        /** The salt is missing. */
        NO_SALT,
        /** Too many regenerations in a row failed: a person is to acknowledge it, or to start one by hand. */
        FAILURES,
        /** The last regeneration, good or failed, ended too short a time ago. */
        SHORTEST_INTERVAL,
        /** The night's window is not open. */
        NIGHT
    }

    /**
     * Checks that nothing is missing.
     *
     * @param due see the record
     * @param reason see the record
     * @param hold see the record
     * @param words see the record
     */
    public RegenerationDecision {
        Objects.requireNonNull(due, "due");
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(hold, "hold");
        Objects.requireNonNull(words, "words");
    }

    /**
     * Tells whether the valve is to start now.
     *
     * @return whether one is due and nothing holds it back
     */
    public boolean isToStart() {
        return due != Due.NOT && hold == Hold.NONE;
    }

    /** Returns the words. */
    @Override
    public String toString() {
        return words;
    }
}
