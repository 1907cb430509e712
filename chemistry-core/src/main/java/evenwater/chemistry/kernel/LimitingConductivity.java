package evenwater.chemistry.kernel;

/**
 * Equivalent conductivities of ions at infinite dilution, {@code λ0}, and how they change with temperature.
 *
 * <p><b>At 25 °C</b> the values are those of the CRC Handbook, per equivalent (1/|z| mol), in S cm²/eq. Marcus (1997) has the same within
 * 1 %, but for H₂PO₄⁻ (33), HPO₄²⁻ (33), PO₄³⁻ (69) and HSO₄⁻ (50). What is from memory or estimated says so.
 *
 * <p><b>Pairs</b> have no measured value. Here a pair drags as a sphere of the volume of its two ions together: with the mobility of a
 * particle, {@code ω = λ0 / |z|}, being inverse to a radius, {@code ω⁻³ = ω₊⁻³ + ω₋⁻³}. Where OH⁻ takes the place of a water
 * molecule of a metal ion, the pair moves as the ion does. This is an estimate, perhaps good to 20 %; pairs carry a few percent of the
 * current at most.
 *
 * <p><b>Temperature.</b> {@code λ0(t) = λ0(25 °C) f(t) / f(25 °C)} with the quadratics f of McCleskey et al. (2012), 0 to 95 °C. Ions
 * without one follow the fluidity of water, {@code η(25 °C) / η(t)}; so do CO₃²⁻, Mn²⁺ and Zn²⁺, whose quadratics are 12 to 14 % below the
 * table of Lange's Handbook at 0 °C. H⁺ and OH⁻, whose quadratics are 4 % below and 16 % above that table, have quadratics through 0, 25
 * and 50 °C of Robinson and Stokes (1959, from memory). The table has 0, 18 and 25 °C: the main ions of natural waters meet it
 * within 2 %, others within 6.5 %.
 *
 * @see "P. Vanýsek, Ionic Conductivity and Diffusion at Infinite Dilution, CRC Handbook of Chemistry and Physics"
 * @see "R. B. McCleskey, D. K. Nordstrom, J. N. Ryan and J. W. Ball, Geochim. Cosmochim. Acta 77 (2012) 369, Table 1 (read in a
 *     source that cites it)"
 * @see "R. A. Robinson and R. H. Stokes, Electrolyte Solutions, Butterworths, London 1959 (from memory)"
 * @see "Y. Marcus, Ion Properties, Dekker, New York 1997"
 */
public enum LimitingConductivity {
    /** Hydrogen ion, H⁺. */
    HYDROGEN("H⁺", 1, 349.65, -2.784e-5, 0.014968, 0.6432),
    /** Lithium, Li⁺. */
    LITHIUM("Li⁺", 1, 38.66, 0.002628, 0.7079, 19.2),
    /** Sodium, Na⁺. */
    SODIUM("Na⁺", 1, 50.08, 0.003763, 0.877, 26.23),
    /** Potassium, K⁺. */
    POTASSIUM("K⁺", 1, 73.48, 0.003046, 1.261, 40.7),
    /** Ammonium, NH₄⁺. */
    AMMONIUM("NH₄⁺", 1, 73.5, 0.003341, 1.285, 39.04),
    /** Magnesium, Mg²⁺. */
    MAGNESIUM("Mg²⁺", 2, 53.0, 0.01068, 1.695, 57.16),
    /** Calcium, Ca²⁺. */
    CALCIUM("Ca²⁺", 2, 59.47, 0.009645, 1.984, 62.28),
    /** Strontium, Sr²⁺. */
    STRONTIUM("Sr²⁺", 2, 59.4, 0.006649, 2.069, 61.63),
    /** Barium, Ba²⁺. */
    BARIUM("Ba²⁺", 2, 63.6, 0.01059, 2.09, 68.1),
    /** Manganese(II), Mn²⁺. */
    MANGANESE_II("Mn²⁺", 2, 53.5),
    /** Iron(II), Fe²⁺. */
    IRON_II("Fe²⁺", 2, 54, 0.009939, 1.878, 54.8),
    /** Copper(II), Cu²⁺. */
    COPPER_II("Cu²⁺", 2, 53.6, 0.00818, 1.939, 53.26),
    /** Zinc, Zn²⁺. */
    ZINC("Zn²⁺", 2, 52.8),
    /** Aluminium, Al³⁺. */
    ALUMINIUM("Al³⁺", 3, 61, 0.02376, 3.227, 90.24),
    /** Hydroxide, OH⁻. */
    HYDROXIDE("OH⁻", -1, 198, -3.42e-5, 0.019654, 0.530025),
    /** Fluoride, F⁻. */
    FLUORIDE("F⁻", -1, 55.4, 0.002764, 1.087, 26.66),
    /** Chloride, Cl⁻. */
    CHLORIDE("Cl⁻", -1, 76.31, 0.003817, 1.337, 40.99),
    /** Bromide, Br⁻. */
    BROMIDE("Br⁻", -1, 78.1, 0.000709, 1.477, 40.91),
    /** Iodide, I⁻. */
    IODIDE("I⁻", -1, 76.8),
    /** Nitrate, NO₃⁻. */
    NITRATE("NO₃⁻", -1, 71.42, 0.001925, 1.214, 39.9),
    /** Nitrite, NO₂⁻. */
    NITRITE("NO₂⁻", -1, 71.8),
    /** Bicarbonate, HCO₃⁻. */
    BICARBONATE("HCO₃⁻", -1, 44.5, 0.000614, 0.9048, 21.14),
    /** Carbonate, CO₃²⁻. */
    CARBONATE("CO₃²⁻", -2, 69.3),
    /** Bisulfate, HSO₄⁻. */
    BISULFATE("HSO₄⁻", -1, 52, 0.000927, 0.8337, 29.56),
    /** Sulfate, SO₄²⁻. */
    SULFATE("SO₄²⁻", -2, 80.0, 0.01037, 2.838, 82.37),
    /** Dihydrogen phosphate, H₂PO₄⁻. */
    DIHYDROGEN_PHOSPHATE("H₂PO₄⁻", -1, 36),
    /** Hydrogen phosphate, HPO₄²⁻; sources differ, see above. */
    HYDROGEN_PHOSPHATE("HPO₄²⁻", -2, 57),
    /** Phosphate, PO₄³⁻; sources differ, see above. */
    PHOSPHATE("PO₄³⁻", -3, 92.8),
    /** Borate, B(OH)₄⁻; H. Corti, R. Crovetto and R. Fernández-Prini, J. Solution Chem. 9 (1980) 617 (from memory). */
    BORATE("B(OH)₄⁻", -1, 35.3),
    /** Silicate, H₃SiO₄⁻; estimated: as H₂PO₄⁻, which has the same shape and size. */
    SILICATE("H₃SiO₄⁻", -1, 36),
    /** Bisulfide, HS⁻; CRC Handbook from memory. */
    BISULFIDE("HS⁻", -1, 65),
    /** Thiosulfate, S₂O₃²⁻. */
    THIOSULFATE("S₂O₃²⁻", -2, 85),
    /** Oxalate, C₂O₄²⁻; CRC Handbook from memory. */
    OXALATE("C₂O₄²⁻", -2, 74.11),
    /** Dihydrogen citrate, C₆H₇O₇⁻; CRC Handbook from memory. */
    DIHYDROGEN_CITRATE("C₆H₇O₇⁻", -1, 30),
    /** Hydrogen citrate, C₆H₆O₇²⁻; estimated: a mobility half-way between its neighbours. */
    HYDROGEN_CITRATE("C₆H₆O₇²⁻", -2, 53.4),
    /** Citrate, C₆H₅O₇³⁻; CRC Handbook from memory. */
    CITRATE("C₆H₅O₇³⁻", -3, 70.2),
    /** CaHCO₃⁺; estimated by volume. */
    CALCIUM_BICARBONATE("CaHCO₃⁺", 1, 27.26),
    /** MgHCO₃⁺; estimated by volume. */
    MAGNESIUM_BICARBONATE("MgHCO₃⁺", 1, 24.86),
    /** CaOH⁺; estimated: as Ca²⁺. */
    CALCIUM_HYDROXIDE("CaOH⁺", 1, 29.74),
    /** MgOH⁺; estimated: as Mg²⁺. */
    MAGNESIUM_HYDROXIDE("MgOH⁺", 1, 26.5),
    /** NaCO₃⁻; estimated by volume. */
    SODIUM_CARBONATE("NaCO₃⁻", -1, 31.5),
    /** NaSO₄⁻; estimated by volume. */
    SODIUM_SULFATE("NaSO₄⁻", -1, 34.87),
    /** KSO₄⁻; estimated by volume. */
    POTASSIUM_SULFATE("KSO₄⁻", -1, 38.05);

    private static final double ZERO_CELSIUS = 273.15;
    private static final double VISCOSITY_AT_25 = WaterViscosity.pascalSeconds(ZERO_CELSIUS + 25);
    private static final LimitingConductivity[] ALL = values();

    private final String symbol;
    private final int chargeNumber;
    private final double at25;
    private final boolean fluid;
    /** The quadratic in t, already divided by its value at 25 °C and multiplied by that of the table; unused where fluid. */
    private final double square;

    private final double linear;
    private final double constant;

    LimitingConductivity(String symbol, int chargeNumber, double at25) {
        this.symbol = symbol;
        this.chargeNumber = chargeNumber;
        this.at25 = at25;
        this.fluid = true;
        this.square = 0;
        this.linear = 0;
        this.constant = 0;
    }

    LimitingConductivity(String symbol, int chargeNumber, double at25, double square, double linear, double constant) {
        double scale = at25 / (constant + 25 * (linear + 25 * square));
        this.symbol = symbol;
        this.chargeNumber = chargeNumber;
        this.at25 = at25;
        this.fluid = false;
        this.square = scale * square;
        this.linear = scale * linear;
        this.constant = scale * constant;
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
     * @return elementary charges; no unit, not 0
     */
    public int chargeNumber() {
        return chargeNumber;
    }

    /**
     * Returns λ0 at a temperature.
     *
     * @param kelvin temperature in K; 273.15 to 323.15, with growing doubt to 373.15
     * @return λ0 in S cm²/eq
     */
    public double squareCentimetreSiemensPerEquivalent(double kelvin) {
        return fluid ? at25 * fluidity(kelvin) : quadratic(kelvin - ZERO_CELSIUS);
    }

    /**
     * Writes λ0 of all ions at a temperature, which costs one exponential.
     *
     * @param kelvin temperature in K; 273.15 to 323.15, with growing doubt to 373.15
     * @param squareCentimetreSiemensPerEquivalent receives λ0 in S cm²/eq by {@link #place()}; as long as there are ions or longer
     */
    public static void write(double kelvin, double[] squareCentimetreSiemensPerEquivalent) {
        double fluidity = fluidity(kelvin);
        for (LimitingConductivity ion : ALL) {
            squareCentimetreSiemensPerEquivalent[ion.place()] =
                    ion.fluid ? ion.at25 * fluidity : ion.quadratic(kelvin - ZERO_CELSIUS);
        }
    }

    /**
     * Returns the place of this ion in arrays.
     *
     * @return an index from 0, without gaps
     */
    @SuppressWarnings("EnumOrdinal") // arrays are what the kernel is made of; this is the one place that says so
    public int place() {
        return ordinal();
    }

    private double quadratic(double celsius) {
        return constant + celsius * (linear + celsius * square);
    }

    private static double fluidity(double kelvin) {
        return VISCOSITY_AT_25 / WaterViscosity.pascalSeconds(kelvin);
    }
}
