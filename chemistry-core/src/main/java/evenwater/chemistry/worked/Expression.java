package evenwater.chemistry.worked;

/** Arithmetic that can be shown: a number, a chain of factors, a sum, a power of ten. */
sealed interface Expression permits Term, Chain, Sum, PowerOfTen {

    double value();

    /** The largest number on the way to the value, against which rounding is judged. */
    double size();

    /**
     * Writes it in a line of plain text, numbers that are not exact to so many significant digits.
     *
     * <p>Operators {@code × ÷ + −} stand between spaces, a minus sign of a number is {@code -}, a unit follows its number behind a space.
     */
    String text(int digits);

    /** Writes it in the formula notation of TeX, as Markdown has it between dollar signs. */
    String formula(int digits);

    /** Starts a chain of factors with this. */
    default Chain times(Expression factor) {
        return Chain.of(this).times(factor);
    }

    /** Starts a chain of factors with this. */
    default Chain over(Expression factor) {
        return Chain.of(this).over(factor);
    }

    /** Starts a sum with this. */
    default Sum plus(Expression addend) {
        return Sum.of(this).plus(addend);
    }

    /** Starts a sum with this. */
    default Sum minus(Expression subtrahend) {
        return Sum.of(this).minus(subtrahend);
    }
}
