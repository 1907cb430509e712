package evenwater.chemistry.recipe;

/** A goal as one row of a linear programme: {@code Σ coefficient × variable} in its number shall be what is wanted. */
final class Row {

    private final Goal<?> goal;
    private final double[] coefficients;
    private final double wanted;
    private final double scale;

    /**
     * @param goal the goal
     * @param coefficients for each water per share, then for each compound per g/L
     * @param wanted the right-hand side
     * @param scale what a deviation is relative to
     */
    Row(Goal<?> goal, double[] coefficients, double wanted, double scale) {
        this.goal = goal;
        this.coefficients = coefficients;
        this.wanted = wanted;
        this.scale = scale;
    }

    Goal<?> goal() {
        return goal;
    }

    double relative(int column) {
        return coefficients[column] / scale;
    }

    double relativeWanted() {
        return wanted / scale;
    }
}
