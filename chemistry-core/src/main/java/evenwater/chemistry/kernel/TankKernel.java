package evenwater.chemistry.kernel;

/**
 * Repeated partial water changes on plain doubles: one step {@code C' = (1 − q) C + b}, and any number of them in closed form.
 *
 * <p>q is the share of what is there that one change takes away, b what comes in between two changes and with the new water. Each ion of a tank,
 * its alkalinity and its unmeasured charge follow the same recurrence with the same q. With a fraction f of fresh water {@code Cw}, and a rate g
 * per day for d days before it, {@code q = f} and {@code b = (1 − f) d g + f Cw}; where the level falls, see {@link TankRhythm}.
 */
public final class TankKernel {

    private TankKernel() {}

    /**
     * Returns what is left of the first content after some changes: {@code (1 − q)ⁿ}, without the rounding of a loop.
     *
     * @param takenAway q; no unit, 0 to 1
     * @param changes n; 0 or more, infinity for the end if q is above 0
     * @return share that is left; no unit, 0 to 1
     */
    public static double left(double takenAway, double changes) {
        return changes == 0 ? 1 : Math.exp(changes * Math.log1p(-takenAway));
    }

    /**
     * Returns how many inflows of one interval are still there after some changes: {@code Σ (1 − q)ⁱ, i = 0 … n − 1}.
     *
     * <p>{@code (1 − (1 − q)ⁿ) / q}, in a form that does not cancel for small q; n where q is 0.
     *
     * @param takenAway q; no unit, 0 to 1
     * @param changes n; 0 or more, infinity for the end if q is above 0
     * @return number of inflows; no unit, 0 to n
     */
    public static double kept(double takenAway, double changes) {
        if (takenAway == 0 || changes == 0) {
            return changes;
        }
        return -Math.expm1(changes * Math.log1p(-takenAway)) / takenAway;
    }

    /**
     * Returns the concentration just after a number of changes: {@code C* + (1 − q)ⁿ (C₀ − C*)}, which for q = 0 is {@code C₀ + n b}.
     *
     * @param start C₀, any unit
     * @param takenAway q; no unit, 0 to 1
     * @param inflow b of one interval, same unit
     * @param changes n; 0 or more
     * @return concentration just after the last change, same unit
     */
    public static double afterChanges(double start, double takenAway, double inflow, double changes) {
        return left(takenAway, changes) * start + kept(takenAway, changes) * inflow;
    }

    /**
     * Returns the concentration just after a change when it does not move any more: {@code C* = b / q}.
     *
     * @param takenAway q; no unit, above 0 to 1
     * @param inflow b of one interval, any unit
     * @return concentration just after each change, same unit
     */
    public static double steadyState(double takenAway, double inflow) {
        return inflow / takenAway;
    }

    /**
     * Returns how many changes it takes until a share of the way to the steady state is behind: {@code n = ⌈ln(1 − x) / ln(1 − q)⌉}.
     *
     * @param takenAway q; no unit, above 0 to 1
     * @param share x of the way; no unit, 0 or more and below 1
     * @return whole number of changes
     */
    public static double changesUntil(double takenAway, double share) {
        if (share == 0) {
            return 0;
        }
        double exact = Math.log1p(-share) / Math.log1p(-takenAway);
        return Math.max(
                1, Math.ceil(exact * (1 - 1e-12))); // 75 % by two changes of 50 % are two, not three by rounding
    }
}
