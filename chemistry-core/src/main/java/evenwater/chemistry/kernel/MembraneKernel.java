package evenwater.chemistry.kernel;

/** The bookkeeping of a reverse-osmosis membrane on plain doubles. */
public final class MembraneKernel {

    private MembraneKernel() {}

    /**
     * Returns the concentration on the reject side from a mass balance: {@code (feed − recovery · permeate) / (1 − recovery)}.
     *
     * @param feed concentration of the feed, any unit
     * @param permeate concentration of the permeate, same unit
     * @param recovery permeate volume over feed volume; no unit, 0 or more and below 1
     * @return concentration of the concentrate, same unit
     */
    public static double concentrate(double feed, double permeate, double recovery) {
        return (feed - recovery * permeate) / (1 - recovery);
    }

    /**
     * Returns the inorganic carbon of the permeate: dissolved CO₂ passes the membrane freely, bicarbonate as far as alkalinity does.
     *
     * <p>{@code C_p = (C − B) + B · A_p / A} with {@code B = min(C, A)}, the carbon that is bound as bicarbonate; above pH 8.3, where
     * carbonate binds two equivalents per carbon, no free CO₂ is left and the formula still holds its balance.
     *
     * @param carbon inorganic carbon of the feed in mmol/L; 0 or more, or NaN for unknown
     * @param alkalinity alkalinity of the feed in meq/L
     * @param permeateAlkalinity alkalinity of the permeate in meq/L
     * @return inorganic carbon of the permeate in mmol/L; NaN if the feed's is unknown
     */
    public static double permeateCarbon(double carbon, double alkalinity, double permeateAlkalinity) {
        double bound = Math.min(carbon, Math.max(0, alkalinity));
        return bound == 0 ? carbon : carbon - bound + bound * permeateAlkalinity / alkalinity;
    }
}
