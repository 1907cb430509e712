package evenwater.chemistry.kernel;

/**
 * The species that the solver tells apart: free ions, neutral solutes and ion pairs.
 *
 * <p>Each has its charge and the parameters of its activity coefficient, {@code a} in Å and {@code b} in kg/mol. Ions with a {@code b}
 * follow Truesdell and Jones (1974, from memory), the others the extended Debye–Hückel law with sizes of USGS compilations after Kielland
 * (1937, from memory; those of the complexes are doubtful). Ions that react with nothing here (Cl⁻, NO₃⁻ and whatever a caller adds)
 * are no species: they count by their share of the ionic strength.
 *
 * @see "A. H. Truesdell and B. F. Jones, J. Res. U.S. Geol. Survey 2 (1974) 233"
 * @see "J. Kielland, J. Am. Chem. Soc. 59 (1937) 1675"
 */
public enum Species {
    /** Hydrogen ion, H⁺. */
    HYDROGEN("H⁺", 1, 9.0, 0),
    /** Hydroxide, OH⁻. */
    HYDROXIDE("OH⁻", -1, 3.5, 0),
    /** Dissolved carbon dioxide and carbonic acid together, CO₂*. */
    CARBON_DIOXIDE("CO₂", 0, 0, 0),
    /** Bicarbonate, HCO₃⁻. */
    BICARBONATE("HCO₃⁻", -1, 5.4, 0),
    /** Carbonate, CO₃²⁻. */
    CARBONATE("CO₃²⁻", -2, 5.4, 0),
    /** Free calcium, Ca²⁺. */
    CALCIUM("Ca²⁺", 2, 5.0, 0.165),
    /** Free magnesium, Mg²⁺. */
    MAGNESIUM("Mg²⁺", 2, 5.5, 0.20),
    /** Free sodium, Na⁺. */
    SODIUM("Na⁺", 1, 4.0, 0.075),
    /** Free potassium, K⁺. */
    POTASSIUM("K⁺", 1, 3.5, 0.015),
    /** Free sulfate, SO₄²⁻. */
    SULFATE("SO₄²⁻", -2, 5.0, -0.04),
    /** Bisulfate, HSO₄⁻. */
    BISULFATE("HSO₄⁻", -1, 4.5, 0),
    /** CaHCO₃⁺. */
    CALCIUM_BICARBONATE("CaHCO₃⁺", 1, 6.0, 0),
    /** CaCO₃ as a dissolved pair. */
    CALCIUM_CARBONATE("CaCO₃", 0, 0, 0),
    /** CaSO₄ as a dissolved pair. */
    CALCIUM_SULFATE("CaSO₄", 0, 0, 0),
    /** CaOH⁺. */
    CALCIUM_HYDROXIDE("CaOH⁺", 1, 6.0, 0),
    /** MgHCO₃⁺. */
    MAGNESIUM_BICARBONATE("MgHCO₃⁺", 1, 4.0, 0),
    /** MgCO₃ as a dissolved pair. */
    MAGNESIUM_CARBONATE("MgCO₃", 0, 0, 0),
    /** MgSO₄ as a dissolved pair. */
    MAGNESIUM_SULFATE("MgSO₄", 0, 0, 0),
    /** MgOH⁺. */
    MAGNESIUM_HYDROXIDE("MgOH⁺", 1, 6.5, 0),
    /** NaHCO₃ as a dissolved pair. */
    SODIUM_BICARBONATE("NaHCO₃", 0, 0, 0),
    /** NaCO₃⁻. */
    SODIUM_CARBONATE("NaCO₃⁻", -1, 5.4, 0),
    /** NaSO₄⁻. */
    SODIUM_SULFATE("NaSO₄⁻", -1, 5.4, 0),
    /** KSO₄⁻. */
    POTASSIUM_SULFATE("KSO₄⁻", -1, 5.4, 0),
    /** Ammonium, NH₄⁺. */
    AMMONIUM("NH₄⁺", 1, 2.5, 0),
    /** Un-ionised ammonia, NH₃. */
    AMMONIA("NH₃", 0, 0, 0),
    /** Phosphoric acid, H₃PO₄. */
    PHOSPHORIC_ACID("H₃PO₄", 0, 0, 0),
    /** Dihydrogen phosphate, H₂PO₄⁻. */
    DIHYDROGEN_PHOSPHATE("H₂PO₄⁻", -1, 5.4, 0),
    /** Hydrogen phosphate, HPO₄²⁻. */
    HYDROGEN_PHOSPHATE("HPO₄²⁻", -2, 5.0, 0),
    /** Phosphate, PO₄³⁻. */
    PHOSPHATE("PO₄³⁻", -3, 5.0, 0),
    /** Boric acid, B(OH)₃. */
    BORIC_ACID("B(OH)₃", 0, 0, 0),
    /** Borate, B(OH)₄⁻. */
    BORATE("B(OH)₄⁻", -1, 2.5, 0),
    /** Dissolved silica, H₄SiO₄. */
    SILICIC_ACID("H₄SiO₄", 0, 0, 0),
    /** Silicate, H₃SiO₄⁻. */
    SILICATE("H₃SiO₄⁻", -1, 4.0, 0),
    /** Hydrogen fluoride, HF. */
    HYDROGEN_FLUORIDE("HF", 0, 0, 0),
    /** Fluoride, F⁻. */
    FLUORIDE("F⁻", -1, 3.5, 0),
    /** Hydrogen sulfide, H₂S. */
    HYDROGEN_SULFIDE("H₂S", 0, 0, 0),
    /** Bisulfide, HS⁻. */
    BISULFIDE("HS⁻", -1, 3.5, 0),
    /** Citric acid, H₃Cit. */
    CITRIC_ACID("C₆H₈O₇", 0, 0, 0),
    /** Dihydrogen citrate, H₂Cit⁻. */
    DIHYDROGEN_CITRATE("C₆H₇O₇⁻", -1, 3.5, 0),
    /** Hydrogen citrate, HCit²⁻. */
    HYDROGEN_CITRATE("C₆H₆O₇²⁻", -2, 4.5, 0),
    /** Citrate, Cit³⁻. */
    CITRATE("C₆H₅O₇³⁻", -3, 5.0, 0);

    private final String symbol;
    private final int chargeNumber;
    private final double sizeInAngstrom;
    private final double slope;

    Species(String symbol, int chargeNumber, double sizeInAngstrom, double slope) {
        this.symbol = symbol;
        this.chargeNumber = chargeNumber;
        this.sizeInAngstrom = sizeInAngstrom;
        this.slope = slope;
    }

    /**
     * Returns the formula with lowered and raised digits.
     *
     * @return such as {@code CaHCO₃⁺}
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Returns the charge.
     *
     * @return elementary charges; no unit
     */
    public int chargeNumber() {
        return chargeNumber;
    }

    /**
     * Returns the size parameter of the activity coefficient.
     *
     * @return a in Å; 0 for neutral species
     */
    public double sizeInAngstrom() {
        return sizeInAngstrom;
    }

    /**
     * Returns the linear term of the activity coefficient.
     *
     * @return b in kg/mol; 0 where none is known
     */
    public double slopeInKilogramPerMole() {
        return slope;
    }

    /**
     * Returns the place of this species in arrays.
     *
     * @return an index from 0, without gaps
     */
    @SuppressWarnings("EnumOrdinal") // arrays are what the kernel is made of; this is the one place that says so
    public int place() {
        return ordinal();
    }
}
