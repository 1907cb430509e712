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
     * Returns the inorganic carbon of the permeate: dissolved CO₂ passes the membrane freely, HCO₃⁻ and CO₃²⁻ as far as alkalinity does.
     *
     * <p>{@code C_p = D + (C − D) · A_p / A} with D for dissolved CO₂. D is not {@code C − A}: carbonate holds two equivalents for each
     * carbon, and where C and A are equal, near pH 8.3, some 2 mg/L of CO₂ are still there to pass.
     *
     * @param carbon inorganic carbon C of the feed in mmol/L; 0 or more, or NaN for unknown
     * @param carbonDioxide dissolved CO₂ of the feed in mmol/L; 0 to C
     * @param alkalinity alkalinity A of the feed in meq/L
     * @param permeateAlkalinity alkalinity of the permeate A_p in meq/L; 0 to A
     * @return inorganic carbon of the permeate in mmol/L; NaN if the feed's is unknown; all of it where the feed has no alkalinity
     */
    public static double permeateCarbon(
            double carbon, double carbonDioxide, double alkalinity, double permeateAlkalinity) {
        return alkalinity > 0 ? carbonDioxide + (carbon - carbonDioxide) * permeateAlkalinity / alkalinity : carbon;
    }
}
