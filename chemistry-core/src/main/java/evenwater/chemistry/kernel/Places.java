package evenwater.chemistry.kernel;

/** Places of the species in arrays, by their symbols: the formulas of the solver read better with them. */
final class Places {

    static final int H = Species.HYDROGEN.place();
    static final int OH = Species.HYDROXIDE.place();
    static final int CO2 = Species.CARBON_DIOXIDE.place();
    static final int HCO3 = Species.BICARBONATE.place();
    static final int CO3 = Species.CARBONATE.place();
    static final int CA = Species.CALCIUM.place();
    static final int MG = Species.MAGNESIUM.place();
    static final int NA = Species.SODIUM.place();
    static final int K = Species.POTASSIUM.place();
    static final int SO4 = Species.SULFATE.place();
    static final int HSO4 = Species.BISULFATE.place();
    static final int CA_HCO3 = Species.CALCIUM_BICARBONATE.place();
    static final int CA_CO3 = Species.CALCIUM_CARBONATE.place();
    static final int CA_SO4 = Species.CALCIUM_SULFATE.place();
    static final int CA_OH = Species.CALCIUM_HYDROXIDE.place();
    static final int MG_HCO3 = Species.MAGNESIUM_BICARBONATE.place();
    static final int MG_CO3 = Species.MAGNESIUM_CARBONATE.place();
    static final int MG_SO4 = Species.MAGNESIUM_SULFATE.place();
    static final int MG_OH = Species.MAGNESIUM_HYDROXIDE.place();
    static final int NA_HCO3 = Species.SODIUM_BICARBONATE.place();
    static final int NA_CO3 = Species.SODIUM_CARBONATE.place();
    static final int NA_SO4 = Species.SODIUM_SULFATE.place();
    static final int K_SO4 = Species.POTASSIUM_SULFATE.place();

    private Places() {}
}
