package evenwater.chemistry.kernel;

/** What a water conserves and the solver distributes over species, beside alkalinity and inorganic carbon. */
public enum Component {
    /** Calcium. */
    CALCIUM,
    /** Magnesium. */
    MAGNESIUM,
    /** Sodium. */
    SODIUM,
    /** Potassium. */
    POTASSIUM,
    /** Sulfate. */
    SULFATE,
    /** Ammonium and ammonia, counted as NH₄⁺. */
    AMMONIA,
    /** Phosphates, counted as H₂PO₄⁻. */
    PHOSPHATE,
    /** Boric acid and borate, counted as B(OH)₃. */
    BORATE,
    /** Silica, counted as H₄SiO₄. */
    SILICA,
    /** Fluoride, counted as F⁻. */
    FLUORIDE,
    /** Sulfide, counted as H₂S. */
    SULFIDE,
    /** Citrates, counted as H₂Cit⁻. */
    CITRATE;

    /**
     * Returns the place of this component in arrays.
     *
     * @return an index from 0, without gaps
     */
    @SuppressWarnings("EnumOrdinal") // arrays are what the kernel is made of; this is the one place that says so
    public int place() {
        return ordinal();
    }
}
