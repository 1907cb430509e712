package evenwater.chemistry.equilibrium;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * Published limits of un-ionised ammonia, NH₃, for fish in fresh water.
 *
 * <p>Guideline figures change: show the year with the figure. All of them are from memory.
 */
public enum UnionisedAmmoniaLimit {
    /** 0.025 mg/L NH₃ for the long stay of fish: European Inland Fisheries Advisory Commission, Technical Paper 11, 1970. */
    EIFAC_1970(0.025, 1970, "advice", "EIFAC Technical Paper 11, 1970 (from memory)"),

    /** 0.025 mg/L NH₃, the mandatory value of the Freshwater Fish Directive for salmonid and cyprinid waters; repealed in 2013. */
    EU_1978_MANDATORY(
            0.025,
            1978,
            "mandatory, repealed in 2013",
            "Directive 78/659/EEC, codified as 2006/44/EC, Annex I (from memory)"),

    /** 0.005 mg/L NH₃, the guide value of the Freshwater Fish Directive; repealed in 2013. */
    EU_1978_GUIDE(
            0.005,
            1978,
            "guide value, repealed in 2013",
            "Directive 78/659/EEC, codified as 2006/44/EC, Annex I (from memory)"),

    /** 0.019 mg/L NH₃ for the protection of aquatic life: Canadian Council of Ministers of the Environment, 2010. */
    CCME_2010(
            0.019,
            2010,
            "guideline",
            "CCME, Canadian Water Quality Guidelines for the Protection of Aquatic Life: Ammonia, 2010 (from memory)");

    private final double milligramsPerLitre;
    private final int year;
    private final String status;
    private final String source;

    UnionisedAmmoniaLimit(double milligramsPerLitre, int year, String status, String source) {
        this.milligramsPerLitre = milligramsPerLitre;
        this.year = year;
        this.status = status;
        this.source = source;
    }

    /**
     * Returns the most un-ionised ammonia that there should be.
     *
     * @return NH₃ in mg/L NH₃
     */
    public AmountConcentration concentration() {
        return AmountConcentration.of(milligramsPerLitre, Ion.AMMONIA.milligramPerLitre());
    }

    /**
     * Returns what the limit means for the total ammonia that a test finds.
     *
     * @param pH no unit; 0 to 14
     * @param temperature from 0 to 50 °C
     * @return NH₃ and NH₄⁺ together, in mg/L NH₃; the higher the pH or the temperature, the less
     * @throws IllegalArgumentException if pH or temperature are out of range
     * @see UnionisedAmmonia#totalAmmonia
     */
    public AmountConcentration totalAmmonia(double pH, Quantity<Temperature> temperature) {
        return UnionisedAmmonia.totalAmmonia(concentration(), pH, temperature);
    }

    /**
     * Returns when it was published.
     *
     * @return the year
     */
    public int year() {
        return year;
    }

    /**
     * Returns how binding it is or was.
     *
     * @return such as "guide value, repealed in 2013"
     */
    public String status() {
        return status;
    }

    /**
     * Returns who says so.
     *
     * @return publisher, title and year, and how it was consulted
     */
    public String source() {
        return source;
    }
}
