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
    HYDROGEN(1, 9.0, 0),
    /** Hydroxide, OH⁻. */
    HYDROXIDE(-1, 3.5, 0),
    /** Dissolved carbon dioxide and carbonic acid together, CO₂*. */
    CARBON_DIOXIDE(0, 0, 0),
    /** Bicarbonate, HCO₃⁻. */
    BICARBONATE(-1, 5.4, 0),
    /** Carbonate, CO₃²⁻. */
    CARBONATE(-2, 5.4, 0),
    /** Free calcium, Ca²⁺. */
    CALCIUM(2, 5.0, 0.165),
    /** Free magnesium, Mg²⁺. */
    MAGNESIUM(2, 5.5, 0.20),
    /** Free sodium, Na⁺. */
    SODIUM(1, 4.0, 0.075),
    /** Free potassium, K⁺. */
    POTASSIUM(1, 3.5, 0.015),
    /** Free sulfate, SO₄²⁻. */
    SULFATE(-2, 5.0, -0.04),
    /** Bisulfate, HSO₄⁻. */
    BISULFATE(-1, 4.5, 0),
    /** CaHCO₃⁺. */
    CALCIUM_BICARBONATE(1, 6.0, 0),
    /** CaCO₃ as a dissolved pair. */
    CALCIUM_CARBONATE(0, 0, 0),
    /** CaSO₄ as a dissolved pair. */
    CALCIUM_SULFATE(0, 0, 0),
    /** CaOH⁺. */
    CALCIUM_HYDROXIDE(1, 6.0, 0),
    /** MgHCO₃⁺. */
    MAGNESIUM_BICARBONATE(1, 4.0, 0),
    /** MgCO₃ as a dissolved pair. */
    MAGNESIUM_CARBONATE(0, 0, 0),
    /** MgSO₄ as a dissolved pair. */
    MAGNESIUM_SULFATE(0, 0, 0),
    /** MgOH⁺. */
    MAGNESIUM_HYDROXIDE(1, 6.5, 0),
    /** NaHCO₃ as a dissolved pair. */
    SODIUM_BICARBONATE(0, 0, 0),
    /** NaCO₃⁻. */
    SODIUM_CARBONATE(-1, 5.4, 0),
    /** NaSO₄⁻. */
    SODIUM_SULFATE(-1, 5.4, 0),
    /** KSO₄⁻. */
    POTASSIUM_SULFATE(-1, 5.4, 0),
    /** Ammonium, NH₄⁺. */
    AMMONIUM(1, 2.5, 0),
    /** Un-ionised ammonia, NH₃. */
    AMMONIA(0, 0, 0),
    /** Phosphoric acid, H₃PO₄. */
    PHOSPHORIC_ACID(0, 0, 0),
    /** Dihydrogen phosphate, H₂PO₄⁻. */
    DIHYDROGEN_PHOSPHATE(-1, 5.4, 0),
    /** Hydrogen phosphate, HPO₄²⁻. */
    HYDROGEN_PHOSPHATE(-2, 5.0, 0),
    /** Phosphate, PO₄³⁻. */
    PHOSPHATE(-3, 5.0, 0),
    /** Boric acid, B(OH)₃. */
    BORIC_ACID(0, 0, 0),
    /** Borate, B(OH)₄⁻. */
    BORATE(-1, 2.5, 0),
    /** Dissolved silica, H₄SiO₄. */
    SILICIC_ACID(0, 0, 0),
    /** Silicate, H₃SiO₄⁻. */
    SILICATE(-1, 4.0, 0),
    /** Hydrogen fluoride, HF. */
    HYDROGEN_FLUORIDE(0, 0, 0),
    /** Fluoride, F⁻. */
    FLUORIDE(-1, 3.5, 0),
    /** Hydrogen sulfide, H₂S. */
    HYDROGEN_SULFIDE(0, 0, 0),
    /** Bisulfide, HS⁻. */
    BISULFIDE(-1, 3.5, 0),
    /** Citric acid, H₃Cit. */
    CITRIC_ACID(0, 0, 0),
    /** Dihydrogen citrate, H₂Cit⁻. */
    DIHYDROGEN_CITRATE(-1, 3.5, 0),
    /** Hydrogen citrate, HCit²⁻. */
    HYDROGEN_CITRATE(-2, 4.5, 0),
    /** Citrate, Cit³⁻. */
    CITRATE(-3, 5.0, 0);

    private final int chargeNumber;
    private final double sizeInAngstrom;
    private final double slope;

    Species(int chargeNumber, double sizeInAngstrom, double slope) {
        this.chargeNumber = chargeNumber;
        this.sizeInAngstrom = sizeInAngstrom;
        this.slope = slope;
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
