package evenwater.chemistry.kernel;

/**
 * Electrical conductivity of a mixture of ions.
 *
 * <p><b>Theory.</b> At infinite dilution {@code κ = 1000 Σ |z| λ0 c}. The atmosphere of other ions slows each by two effects, which
 * Onsager and Fuoss worked out for mixtures: its drag, {@code e F κ_D |z| / (6 π η)}, and the field of its relaxation, {@code ΔX/X = z e²
 * κ_D R / (12 π ε₀ ε k T)} with R of the class RelaxationField and κ_D the inverse length of Debye. Ions of finite size keep a distance a from each
 * other; as Robinson and Stokes do, {@code λ = (λ0 − drag / (1 + κ_D a)) (1 + ΔX/X / (1 + κ_D a))}. Without a it is the exact limiting
 * law. Neutral pairs carry nothing, so the concentrations have to be those of the free ions and the charged pairs.
 *
 * <p><b>Calibrated.</b> For the distance a alone, see {@link #distanceInAngstrom}. With it, on the species of {@link SpeciationKernel}
 * at 25 °C, 67 measured points of fourteen single salts (chlorides, hydroxides, bicarbonates, a nitrate, a sulfate) to 5000 µS/cm are met
 * within 0.8 % rms and 2.0 % at worst, 59 natural waters within 2.7 % rms with a median of 0.0 % (repeatability and balance of
 * their data: 2.5 %). Standard solutions of KCl to 0.1 mol/kg are met within 0.9 % from 0 to 50 °C, and the temperature factors of ISO
 * 7888 within 2 %. Beyond an ionic strength of 0.2 mol/L the law has no foundation.
 *
 * @see "L. Onsager and R. M. Fuoss, Irreversible processes in electrolytes, J. Phys. Chem. 36 (1932) 2689 (from memory)"
 * @see "R. A. Robinson and R. H. Stokes, Electrolyte Solutions, Butterworths, London 1959, chapter 7 (from memory)"
 */
public final class OnsagerFuoss {

    /** Distance of closest approach of single-charged ions, in Å; chosen from 3.5 to 4.5 by the chlorides of Na, K and H. */
    private static final double SINGLE_CHARGED = 4;

    private static final double ANGSTROM = 1e-10;
    private static final double FARADAY = SolventWater.E * SolventWater.AVOGADRO;
    /** From S m²/mol to S cm²/mol. */
    private static final double SQUARE_CENTIMETRES = 1e4;

    private OnsagerFuoss() {}

    /**
     * Returns the conductivity with the calibrated distance of closest approach.
     *
     * @param n how many ions to read from the arrays
     * @param molesPerLitre concentrations c in mol/L, of free ions and charged pairs; 0 or more
     * @param chargeNumber charge numbers z; no unit, not 0
     * @param limitingConductivity λ0 in S cm²/eq, see {@link LimitingConductivity}; above 0
     * @param kelvin temperature T in K
     * @param dielectricConstant ε of water, see {@link SolventWater}; no unit
     * @param viscosityInPascalSeconds η of water in Pa s, see {@link WaterViscosity}
     * @param scratch working memory for n ions or more
     * @return κ at the temperature, in µS/cm; 0 without ions
     */
    public static double microsiemensPerCentimetre(
            int n,
            double[] molesPerLitre,
            double[] chargeNumber,
            double[] limitingConductivity,
            double kelvin,
            double dielectricConstant,
            double viscosityInPascalSeconds,
            ConductivityScratch scratch) {
        double[] none = scratch.vector; // written after its last use
        return writeConductivities(
                n,
                molesPerLitre,
                chargeNumber,
                limitingConductivity,
                kelvin,
                dielectricConstant,
                viscosityInPascalSeconds,
                distanceInAngstrom(n, molesPerLitre, chargeNumber),
                none,
                scratch);
    }

    /**
     * Writes the equivalent conductivity of each ion in the mixture.
     *
     * @param n how many ions to read from the arrays
     * @param molesPerLitre concentrations c in mol/L, of free ions and charged pairs; 0 or more
     * @param chargeNumber charge numbers z; no unit, not 0
     * @param limitingConductivity λ0 in S cm²/eq, see {@link LimitingConductivity}; above 0
     * @param kelvin temperature T in K
     * @param dielectricConstant ε of water, see {@link SolventWater}; no unit
     * @param viscosityInPascalSeconds η of water in Pa s, see {@link WaterViscosity}
     * @param distanceInAngstrom distance of closest approach a in Å, see {@link #distanceInAngstrom}; 0 for the limiting law
     * @param equivalentConductivity receives λ in S cm²/eq, 0 for an ion that is not there; those of mere traces are less exact than κ
     * @param scratch working memory for n ions or more
     * @return κ at the temperature, in µS/cm; 0 without ions
     */
    public static double writeConductivities(
            int n,
            double[] molesPerLitre,
            double[] chargeNumber,
            double[] limitingConductivity,
            double kelvin,
            double dielectricConstant,
            double viscosityInPascalSeconds,
            double distanceInAngstrom,
            double[] equivalentConductivity,
            ConductivityScratch scratch) {
        int[] place = scratch.place;
        double strength = 0;
        int m = 0;
        for (int i = 0; i < n; i++) {
            if (molesPerLitre[i] != 0) { // so that NaN shows
                strength += molesPerLitre[i] * chargeNumber[i] * chargeNumber[i];
                place[m++] = i;
            }
        }
        for (int k = 0; k < m; k++) {
            int i = place[k];
            double z = chargeNumber[i];
            scratch.chargeNumber[k] = z;
            scratch.mobility[k] = limitingConductivity[i] / Math.abs(z);
            scratch.root[k] = Math.sqrt(molesPerLitre[i] * z * z / strength * scratch.mobility[k]);
        }
        RelaxationField.write(m, scratch);

        double energy = SolventWater.ELECTRIC_CONSTANT * dielectricConstant * SolventWater.BOLTZMANN * kelvin;
        double inverseLength = SolventWater.E * Math.sqrt(1000 * SolventWater.AVOGADRO * strength / energy);
        double ofSize = inverseLength / (1 + inverseLength * distanceInAngstrom * ANGSTROM);
        double relaxation = SolventWater.E * SolventWater.E * ofSize / (12 * Math.PI * energy);
        double drag = SQUARE_CENTIMETRES * SolventWater.E * FARADAY * ofSize / (6 * Math.PI * viscosityInPascalSeconds);
        for (int i = 0; i < n; i++) {
            equivalentConductivity[i] = 0;
        }
        double sum = 0;
        for (int k = 0; k < m; k++) {
            int i = place[k];
            double z = chargeNumber[i];
            double slowed = limitingConductivity[i] - drag * Math.abs(z);
            double conductivity = slowed * (1 + relaxation * z * scratch.field[k]);
            equivalentConductivity[i] = conductivity;
            sum += Math.abs(z) * molesPerLitre[i] * conductivity;
        }
        return 1000 * sum;
    }

    /**
     * Returns the distance of closest approach, which grows with the charges of the ions.
     *
     * <p>{@code a = 4 Å · (w₊ w₋)^½ · w₋^¼}, where {@code w = Σ z² c / Σ |z| c} of the cations or of the anions is their mean charge: 4 Å for
     * NaCl, 5.7 Å for CaCl₂, 6.7 Å for Na₂SO₄, 9.5 Å for MgSO₄.
     *
     * <p>That a grows is physics: where pairs are counted as species of their own, free ions of opposite charge are those that are
     * not within the distance of Bjerrum, which is proportional to {@code |z₊ z₋|}. The numbers are a calibration. A fixed 4 Å fits single
     * salts but leaves waters rich in sulfate 5 to 8 % low; growth with w₊ w₋ alone, enough for sulfates, makes chlorides of calcium
     * and barium 4 to 5 % high at 0.1 eq/L.
     *
     * @param n how many ions to read from the arrays
     * @param molesPerLitre concentrations c in mol/L; 0 or more
     * @param chargeNumber charge numbers z; no unit
     * @return a in Å; 4 or more
     */
    public static double distanceInAngstrom(int n, double[] molesPerLitre, double[] chargeNumber) {
        double positive = 0;
        double negative = 0;
        double squaredPositive = 0;
        double squaredNegative = 0;
        for (int i = 0; i < n; i++) {
            double charge = molesPerLitre[i] * chargeNumber[i];
            if (charge > 0) {
                positive += charge;
                squaredPositive += charge * chargeNumber[i];
            } else {
                negative -= charge;
                squaredNegative += charge * chargeNumber[i];
            }
        }
        double ofCations = positive > 0 ? squaredPositive / positive : 1;
        double ofAnions = negative > 0 ? squaredNegative / negative : 1;
        return SINGLE_CHARGED * Math.sqrt(ofCations * ofAnions * Math.sqrt(ofAnions));
    }
}
