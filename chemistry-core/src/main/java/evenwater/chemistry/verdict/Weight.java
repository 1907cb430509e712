package evenwater.chemistry.verdict;

/** How a requirement counts in the whole. */
public enum Weight {
    /** Nothing is fit while this is unknown, or outside. */
    MUST_BE_KNOWN,

    /** Counts where it is known; unknown, it leaves the verdict alone. */
    COUNTS_IF_KNOWN,

    /** Said beside the water, and leaves the verdict alone: a guideline for another use, or one for waters in nature. */
    FOR_INFORMATION
}
