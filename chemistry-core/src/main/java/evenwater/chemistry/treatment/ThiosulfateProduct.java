package evenwater.chemistry.treatment;

/** What becomes of thiosulfate when it takes chlorine away; which of the two, pH and excess decide, and both go on side by side. */
public enum ThiosulfateProduct {

    /** Sulfate: {@code S₂O₃²⁻ + 4 HOCl + H₂O → 2 SO₄²⁻ + 4 Cl⁻ + 6 H⁺}; the least thiosulfate, and acid. */
    SULFATE(0.25),

    /** Tetrathionate: {@code 2 S₂O₃²⁻ + HOCl + H⁺ → S₄O₆²⁻ + Cl⁻ + H₂O}; eight times as much thiosulfate, and a little alkali. */
    TETRATHIONATE(2);

    private final double thiosulfatePerChlorine;

    ThiosulfateProduct(double thiosulfatePerChlorine) {
        this.thiosulfatePerChlorine = thiosulfatePerChlorine;
    }

    /**
     * Returns how much thiosulfate one mole of chlorine takes.
     *
     * @return moles of S₂O₃²⁻ per mole of Cl₂; no unit
     */
    public double thiosulfatePerChlorine() {
        return thiosulfatePerChlorine;
    }
}
