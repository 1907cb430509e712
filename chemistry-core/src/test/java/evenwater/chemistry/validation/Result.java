package evenwater.chemistry.validation;

/**
 * A result of the library that may be compared with several published figures.
 *
 * @param id short name; each check adds its published figure
 * @param what is compared, in words
 * @param unit of the result; empty if it has none
 * @param ours the result
 */
record Result(String id, String what, String unit, double ours) {

    /** Compares with a rounded figure. */
    PublishedCheck printed(String digits, Source source, Status status) {
        return against(Figure.printed(digits), source, status);
    }

    /** Compares with a figure of the trade. */
    PublishedCheck trade(String digits) {
        return printed(digits, Source.SOFTENING_TRADE, Status.COMMON_PRACTICE);
    }

    /** Compares with arithmetic that was done without the library. */
    PublishedCheck computed(String digits) {
        return printed(digits, Source.ARITHMETIC, Status.COMPUTED);
    }

    /** Compares with any figure. */
    PublishedCheck against(Figure published, Source source, Status status) {
        return PublishedCheck.of(id + "-" + published.text(), what, unit, source, status, published, ours);
    }
}
