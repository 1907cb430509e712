package evenwater.chemistry.analysis;

import java.util.Objects;

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
     * Checks the figures.
     *
     * @param criterion see the record
     * @param value see the record; finite
     * @param low see the record
     * @param high see the record; not below {@code low}
     * @param unit see the record
     * @param source see the record
     */
    public Acceptance {
        Objects.requireNonNull(criterion, "criterion");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(source, "source");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(criterion + " must be a finite number, but was " + value);
        }
        if (!(low <= high)) {
            throw new IllegalArgumentException(
                    "limits of " + criterion + " must be in order, but were " + low + " and " + high);
        }
    }

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
