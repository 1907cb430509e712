package evenwater.chemistry.kernel;

/**
 * The bookkeeping of a softener on plain doubles: what passes, what is exchanged, how much to blend past it.
 *
 * <p>All concentrations of one call share one unit; equivalents count charge, so one calcium is two.
 */
public final class SofteningKernel {

    private SofteningKernel() {}

    /**
     * Returns the fraction of every hardness ion that leaks through a softener.
     *
     * <p>{@code f = min(1, leakage / hardness)}: each exchangeable ion keeps the same share of what entered, so the leakage has the
     * composition of the feed. A water without hardness leaks nothing that could be counted; the fraction is then 1 if leakage is
     * allowed at all and 0 if not.
     *
     * @param hardness hardness of the feed, any unit of hardness; 0 or more
     * @param leakage hardness that the resin lets through, same unit; 0 or more
     * @return the fraction; no unit, 0 to 1
     */
    public static double leakageFraction(double hardness, double leakage) {
        if (leakage <= 0) {
            return 0;
        }
        return leakage >= hardness ? 1 : leakage / hardness;
    }

    /**
     * Returns the share of raw water that must pass by the softener to reach a hardness.
     *
     * <p>{@code s = (target − soft) / (raw − soft)}, from {@code s·raw + (1 − s)·soft = target}.
     *
     * @param raw hardness of the raw water, any unit of hardness; above {@code soft}
     * @param soft hardness behind the softener, same unit; 0 or more
     * @param target wanted hardness, same unit; from {@code soft} to {@code raw}
     * @return the share of raw water; no unit, 0 to 1; without meaning where {@code raw} is {@code soft}
     */
    public static double bypassShare(double raw, double soft, double target) {
        return (target - soft) / (raw - soft);
    }

    /**
     * Returns the concentration of the regenerant's ion that an exchange adds: charge for charge.
     *
     * <p>{@code added = Σ |z| · removed / |z of the regenerant|} for a single-charged regenerant ion. One millimole of calcium takes
     * two of sodium: the folk rule of one for one, or ppm for ppm, is wrong by the charge.
     *
     * @param chargeNumber charge numbers of the ions that leave; no unit, 1 or more
     * @param removed amounts that leave, in mmol/L; same length
     * @return amount of a single-charged ion that enters, in mmol/L
     */
    public static double singleChargedIonAdded(double[] chargeNumber, double[] removed) {
        return CompensatedSum.ofProducts(chargeNumber, removed);
    }
}
