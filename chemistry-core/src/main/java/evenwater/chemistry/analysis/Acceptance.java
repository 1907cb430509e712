package evenwater.chemistry.analysis;

/**
 * Whether a figure of an analysis lies where a published criterion wants it.
 *
 * @param criterion what is compared, in words
 * @param value the figure
 * @param low the least that is accepted
 * @param high the most that is accepted
 * @param unit unit of the three figures; empty if they have none
 * @param source who says so
 */
public record Acceptance(String criterion, double value, double low, double high, String unit, String source) {

    /**
     * Tells whether the figure is accepted.
     *
     * @return true if it is within the limits, ends included, give or take 1e-9 of them for the rounding of doubles
     */
    public boolean accepted() {
        double rounding = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
        return value >= low - rounding && value <= high + rounding;
    }
}
