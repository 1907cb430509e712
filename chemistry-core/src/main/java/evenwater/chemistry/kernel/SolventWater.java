package evenwater.chemistry.kernel;

/**
 * Water as a solvent: density, dielectric constant and the Debye–Hückel slopes that follow from them, at 1 atm.
 *
 * <p>Temperatures in kelvin, 273.15 to 373.15.
 */
public final class SolventWater {

    private static final double ZERO_CELSIUS = 273.15;

    /** CODATA 2018, all exact but the electric constant: e in C, N_A in 1/mol, k in J/K, ε₀ in F/m. */
    static final double E = 1.602176634e-19;

    static final double AVOGADRO = 6.02214076e23;
    static final double BOLTZMANN = 1.380649e-23;
    static final double ELECTRIC_CONSTANT = 8.8541878128e-12;

    private SolventWater() {}

    /**
     * Returns the density of pure water.
     *
     * <p>{@code ρ = 1 − (t − 3.9863)² (t + 288.9414) / (508929.2 (t + 68.12963)) + 0.011445 e^(−374.3/t)}, t in °C. About 3e-5 above
     * handbook tables from 0 to 40 °C, up to 1e-4 at 50 °C; the last term vanishes at 0 °C.
     *
     * @param kelvin temperature in K; 273.15 to 373.15
     * @return density in g/cm³
     * @see "R. A. Gildseth, A. Habenschuss and F. H. Spedding, J. Chem. Eng. Data 17 (1972) 402 (from memory)"
     */
    public static double density(double kelvin) {
        double t = kelvin - ZERO_CELSIUS;
        double rest = t > 0 ? 0.011445 * Math.exp(-374.3 / t) : 0;
        return 1 - (t - 3.9863) * (t - 3.9863) * (t + 288.9414) / (508929.2 * (t + 68.12963)) + rest;
    }

    /**
     * Returns the relative permittivity of pure water.
     *
     * <p>{@code ε = 87.740 − 0.40008 t + 9.398e-4 t² − 1.410e-6 t³}, t in °C; 78.303 at 25 °C. Copies with a plus before the cubic term
     * are misprints.
     *
     * @param kelvin temperature in K; 273.15 to 373.15
     * @return dielectric constant; no unit
     * @see "C. G. Malmberg and A. A. Maryott, J. Res. Natl. Bur. Stand. 56 (1956) 1 (from memory)"
     */
    public static double dielectricConstant(double kelvin) {
        double t = kelvin - ZERO_CELSIUS;
        return 87.740 + t * (-0.40008 + t * (9.398e-4 - t * 1.410e-6));
    }

    /**
     * Returns the Debye–Hückel slope A for natural logarithms.
     *
     * <p>{@code A = e³ (2 N_A ρ)^½ / (8 π (ε₀ ε k T)^(3/2))} with ρ in kg/m³; 1.1762 at 25 °C, which is 0.5108 for decimal logarithms.
     *
     * @param kelvin temperature in K; 273.15 to 373.15
     * @return A in (kg/mol)^½, for ln γ
     * @see "P. Debye and E. Hückel, Phys. Z. 24 (1923) 185"
     */
    public static double debyeHueckelA(double kelvin) {
        double energy = permittivity(kelvin) * BOLTZMANN * kelvin;
        return E
                * E
                * E
                * Math.sqrt(2 * AVOGADRO * 1000 * density(kelvin))
                / (8 * Math.PI * energy * Math.sqrt(energy));
    }

    /**
     * Returns the Debye–Hückel slope B.
     *
     * <p>{@code B = e (2 N_A ρ / (ε₀ ε k T))^½} with ρ in kg/m³, taken per ångström; 0.3287 at 25 °C.
     *
     * @param kelvin temperature in K; 273.15 to 373.15
     * @return B in (kg/mol)^½ per Å
     * @see "P. Debye and E. Hückel, Phys. Z. 24 (1923) 185"
     */
    public static double debyeHueckelB(double kelvin) {
        double energy = permittivity(kelvin) * BOLTZMANN * kelvin;
        return 1e-10 * E * Math.sqrt(2 * AVOGADRO * 1000 * density(kelvin) / energy);
    }

    private static double permittivity(double kelvin) {
        return ELECTRIC_CONSTANT * dielectricConstant(kelvin);
    }
}
