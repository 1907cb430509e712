package evenwater.chemistry.kernel;

/**
 * Equilibrium constants as functions of temperature.
 *
 * <p>Each is {@code lg K = A + B T + C/T + D lg T + E/T²}, T in kelvin, activities on the molal scale (mol per kg of water), gas in
 * atm. Where only a value at 25 °C and a heat of reaction are known, van 't Hoff's law gives A and C (heats printed in kcal, of 4.184 kJ); it is good to about ±0.05
 * from 0 to 50 °C. Acids and minerals are dissociation constants, pairs and HSO₄⁻ and HF association constants.
 *
 * <p>A set of constants belongs together: calcite was derived with its calcium pairs, and is 0.01 to 0.1 off without them.
 *
 * @see "D. K. Nordstrom et al., Revised chemical equilibrium data for major water-mineral reactions and their limitations, ACS Symp.
 *     Ser. 416 (1990) 398, cited below as Nordstrom et al. (1990)"
 */
public enum EquilibriumConstant {
    /** Solubility of carbon dioxide, CO₂(g) ⇌ CO₂*, mol/kg per atm; Plummer and Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011; 0 to 250 °C. */
    CARBON_DIOXIDE_GAS(108.3865, 0.01985076, -6919.53, -40.45154, 669365, 0, 250),

    /** First dissociation of carbonic acid, CO₂* ⇌ H⁺ + HCO₃⁻; CO₂* is CO₂(aq) and H₂CO₃ together; Plummer and Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011; 0 to 250 °C. */
    CARBONIC_ACID_1(-356.3094, -0.06091964, 21834.37, 126.8339, -1684915, 0, 250),

    /** Second dissociation of carbonic acid, HCO₃⁻ ⇌ H⁺ + CO₃²⁻; Plummer and Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011; 0 to 218 °C. */
    CARBONIC_ACID_2(-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9, 0, 218),

    /** Calcite, CaCO₃ ⇌ Ca²⁺ + CO₃²⁻; derived with the pairs CaHCO₃⁺ and CaCO₃; Plummer and Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011; 0 to 90 °C. */
    CALCITE(-171.9065, -0.077993, 2839.319, 71.595, 0, 0, 90),

    /** Aragonite, CaCO₃ ⇌ Ca²⁺ + CO₃²⁻; Plummer and Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011 (from memory); 0 to 90 °C. */
    ARAGONITE(-171.9773, -0.077993, 2903.293, 71.595, 0, 0, 90),

    /** Vaterite, CaCO₃ ⇌ Ca²⁺ + CO₃²⁻; Plummer and Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011 (from memory); 0 to 90 °C. */
    VATERITE(-172.1295, -0.077993, 3074.688, 71.595, 0, 0, 90),

    /** Ca²⁺ + HCO₃⁻ ⇌ CaHCO₃⁺; Plummer and Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011 (from memory); 0 to 90 °C. */
    CALCIUM_BICARBONATE_PAIR(1209.12, 0.31294, -34765.05, -478.782, 0, 0, 90),

    /** Ca²⁺ + CO₃²⁻ ⇌ CaCO₃(aq); Plummer and Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011 (from memory); 5 to 80 °C. */
    CALCIUM_CARBONATE_PAIR(-1228.732, -0.299444, 35512.75, 485.818, 0, 5, 80),

    /** H₂O ⇌ H⁺ + OH⁻; Marshall and Franck, J. Phys. Chem. Ref. Data 10 (1981) 295, as fitted in Nordstrom et al. (1990); 0 to 300 °C. */
    WATER(-283.971, -0.05069842, 13323, 102.24447, -1119669, 0, 300),

    /** Gypsum, CaSO₄·2H₂O ⇌ Ca²⁺ + SO₄²⁻ + 2 H₂O; Langmuir and Melchior, Geochim. Cosmochim. Acta 49 (1985) 2423; Nordstrom et al. (1990) (from memory); 0 to 60 °C. */
    GYPSUM(68.2401, 0, -3221.51, -25.0627, 0, 0, 60),

    /** Anhydrite, CaSO₄ ⇌ Ca²⁺ + SO₄²⁻; Nordstrom et al. (1990) (from memory); 0 to 100 °C. */
    ANHYDRITE(197.52, 0, -8669.8, -69.835, 0, 0, 100),

    /** Ordered dolomite, CaMg(CO₃)₂ ⇌ Ca²⁺ + Mg²⁺ + 2 CO₃²⁻; Nordstrom et al. (1990) (from memory); 0 to 50 °C. */
    DOLOMITE(-17.09, -39.480224, 0, 50),

    /** Fluorite, CaF₂ ⇌ Ca²⁺ + 2 F⁻; Nordstrom et al. (1990) (from memory); 0 to 50 °C. */
    FLUORITE(-10.6, 19.62296, 0, 50),

    /** Brucite, Mg(OH)₂ ⇌ Mg²⁺ + 2 OH⁻; from log K 16.84 of Mg(OH)₂ + 2 H⁺ in Nordstrom et al. (1990) (from memory); 0 to 50 °C. */
    BRUCITE(-11.16, 3.556, 0, 50),

    /** Mg²⁺ + HCO₃⁻ ⇌ MgHCO₃⁺; Siebert and Hostetler, Am. J. Sci. 277 (1977) 697 and 716 (from memory); 10 to 90 °C. */
    MAGNESIUM_BICARBONATE_PAIR(-59.215, 0, 2537.455, 20.92298, 0, 10, 90),

    /** Mg²⁺ + CO₃²⁻ ⇌ MgCO₃(aq); Siebert and Hostetler, Am. J. Sci. 277 (1977) 697 and 716 (from memory); 10 to 90 °C. */
    MAGNESIUM_CARBONATE_PAIR(0.991, 0.00667, 0, 0, 0, 10, 90),

    /** Na⁺ + HCO₃⁻ ⇌ NaHCO₃(aq); Nordstrom et al. (1990) (from memory); 25 °C only, taken as the same elsewhere. */
    SODIUM_BICARBONATE_PAIR(-0.25, 0, 0, 50),

    /** Na⁺ + CO₃²⁻ ⇌ NaCO₃⁻; Nordstrom et al. (1990) (from memory); 0 to 50 °C. */
    SODIUM_CARBONATE_PAIR(1.27, 37.27944, 0, 50),

    /** Ca²⁺ + SO₄²⁻ ⇌ CaSO₄(aq); Nordstrom et al. (1990) (from memory); 0 to 50 °C. */
    CALCIUM_SULFATE_PAIR(2.3, 6.9036, 0, 50),

    /** Mg²⁺ + SO₄²⁻ ⇌ MgSO₄(aq); Nordstrom et al. (1990) (from memory); 0 to 50 °C. */
    MAGNESIUM_SULFATE_PAIR(2.37, 19.0372, 0, 50),

    /** Na⁺ + SO₄²⁻ ⇌ NaSO₄⁻; Nordstrom et al. (1990) (from memory); 0 to 50 °C. */
    SODIUM_SULFATE_PAIR(0.7, 4.68608, 0, 50),

    /** K⁺ + SO₄²⁻ ⇌ KSO₄⁻; Nordstrom et al. (1990) (from memory); 0 to 50 °C. */
    POTASSIUM_SULFATE_PAIR(0.85, 9.414, 0, 50),

    /** Ca²⁺ + H₂O ⇌ CaOH⁺ + H⁺; Nordstrom et al. (1990) (from memory), −12.78 at 25 °C; elsewhere that with OH⁻, 1.22, is taken as the same. */
    CALCIUM_HYDROXIDE_PAIR(-282.751, -0.05069842, 13323, 102.24447, -1119669, 0, 50),

    /** Mg²⁺ + H₂O ⇌ MgOH⁺ + H⁺; Nordstrom et al. (1990) (from memory); 0 to 50 °C. */
    MAGNESIUM_HYDROXIDE_PAIR(-11.44, 66.743168, 0, 50),

    /** H⁺ + SO₄²⁻ ⇌ HSO₄⁻; Nordstrom et al. (1990) (from memory); 0 to 50 °C. */
    BISULFATE(-56.889, 0.006473, 2307.9, 19.8858, 0, 0, 50),

    /** H⁺ + F⁻ ⇌ HF(aq); Nordstrom et al. (1990) (from memory); 0 to 50 °C. */
    HYDROGEN_FLUORIDE(-2.033, 0.012645, 429.01, 0, 0, 0, 50),

    /** B(OH)₃ + H₂O ⇌ B(OH)₄⁻ + H⁺; Nordstrom et al. (1990); 0 to 50 °C. */
    BORIC_ACID(-9.24, 13.489216, 0, 50),

    /** NH₄⁺ ⇌ NH₃(aq) + H⁺; Emerson et al., J. Fish. Res. Board Can. 32 (1975) 2379; 0 to 50 °C. */
    AMMONIUM(-0.09018, 0, -2729.92, 0, 0, 0, 50),

    /** NH₄⁺ ⇌ NH₃(aq) + H⁺, another fit, for comparison; the solver uses {@link #AMMONIUM}; Bates and Pinching, J. Res. Natl. Bur. Stand. 42 (1949) 419; 0 to 50 °C. */
    AMMONIUM_BATES_PINCHING(0.6322, -0.001225, -2835.76, 0, 0, 0, 50),

    /** H₃PO₄ ⇌ H⁺ + H₂PO₄⁻; Bates, J. Res. Natl. Bur. Stand. 47 (1951) 127 (from memory); 0 to 50 °C. */
    PHOSPHORIC_ACID_1(4.5535, -0.013486, -799.31, 0, 0, 0, 50),

    /** H₂PO₄⁻ ⇌ H⁺ + HPO₄²⁻; Bates and Acree, J. Res. Natl. Bur. Stand. 30 (1943) 129 (from memory); 0 to 50 °C. */
    PHOSPHORIC_ACID_2(5.3541, -0.01984, -1979.5, 0, 0, 0, 50),

    /** HPO₄²⁻ ⇌ H⁺ + PO₄³⁻; Goldberg et al., J. Phys. Chem. Ref. Data 31 (2002) 231; 0 to 50 °C. */
    PHOSPHORIC_ACID_3(-12.35, 16, 0, 50),

    /** H₄SiO₄ ⇌ H₃SiO₄⁻ + H⁺; Busey and Mesmer, Inorg. Chem. 16 (1977) 2444, as fitted in Nordstrom et al. (1990); 0 to 300 °C. */
    SILICIC_ACID(-302.3724, -0.05069842, 15669.69, 108.18466, -1119669, 0, 300),

    /** Amorphous silica, SiO₂ + 2 H₂O ⇌ H₄SiO₄; Rimstidt and Barnes, Geochim. Cosmochim. Acta 44 (1980) 1683 (from memory); 0 to 300 °C. */
    AMORPHOUS_SILICA(0.338, -0.00078896, -840.08, 0, 0, 0, 300),

    /** Quartz, SiO₂ + 2 H₂O ⇌ H₄SiO₄; Rimstidt (1997) measured a solubility 1.8 times as high; Rimstidt and Barnes, Geochim. Cosmochim. Acta 44 (1980) 1683 (from memory); 0 to 300 °C. */
    QUARTZ(1.8814, -0.002028, -1560.46, 0, 0, 0, 300),

    /** Chalcedony, SiO₂ + 2 H₂O ⇌ H₄SiO₄; Fournier (1981); Nordstrom et al. (1990) (from memory); 0 to 250 °C. */
    CHALCEDONY(-0.09, 0, -1032, 0, 0, 0, 250),

    /** Hydrogen sulfide, H₂S ⇌ HS⁻ + H⁺; Hershey, Plese and Millero, Geochim. Cosmochim. Acta 52 (1988) 2047 (from memory); 5 to 60 °C. */
    HYDROGEN_SULFIDE(98.080, 0, -5765.4, -34.64354, 0, 5, 60),

    /** Citric acid, H₃Cit ⇌ H₂Cit⁻ + H⁺; Bates and Pinching, J. Am. Chem. Soc. 71 (1949) 1274; heat by Goldberg et al. (2002) (from memory); 0 to 50 °C. */
    CITRIC_ACID_1(-3.128, 4.07, 0, 50),

    /** Citric acid, H₂Cit⁻ ⇌ HCit²⁻ + H⁺; sources as before (from memory); 0 to 50 °C. */
    CITRIC_ACID_2(-4.761, 2.23, 0, 50),

    /** Citric acid, HCit²⁻ ⇌ Cit³⁻ + H⁺; sources as before (from memory); 0 to 50 °C. */
    CITRIC_ACID_3(-6.396, -3.38, 0, 50);

    private static final double LN_10 = Math.log(10);

    private static final EquilibriumConstant[] ALL = values();

    private final double a;
    private final double b;
    private final double c;
    private final double d;
    private final double e;
    private final double leastCelsius;
    private final double mostCelsius;

    EquilibriumConstant(double a, double b, double c, double d, double e, double leastCelsius, double mostCelsius) {
        this.a = a;
        this.b = b;
        this.c = c;
        this.d = d;
        this.e = e;
        this.leastCelsius = leastCelsius;
        this.mostCelsius = mostCelsius;
    }

    /** By van 't Hoff: the value at 25 °C and the heat of reaction in kJ/mol. */
    EquilibriumConstant(double at25, double heat, double leastCelsius, double mostCelsius) {
        this(at25 + heat / (VanTHoff.R_LN_10 * 298.15), 0, -heat / VanTHoff.R_LN_10, 0, 0, leastCelsius, mostCelsius);
    }

    /**
     * Returns the natural logarithm of the constant.
     *
     * @param kelvin temperature in K; the range of the source is {@link #leastCelsius} to {@link #mostCelsius}
     * @return ln K; K in powers of mol/kg, and of atm for a gas
     */
    public double ln(double kelvin) {
        return ln(kelvin, Math.log(kelvin));
    }

    private double ln(double kelvin, double lnKelvin) {
        double inverse = 1 / kelvin;
        return LN_10 * (a + b * kelvin + inverse * (c + inverse * e)) + d * lnKelvin;
    }

    /**
     * Writes all constants at a temperature.
     *
     * @param kelvin temperature in K; 273.15 to 373.15
     * @param ln receives ln K by {@link #place()}; as long as there are constants
     */
    public static void fill(double kelvin, double[] ln) {
        double lnKelvin = Math.log(kelvin);
        for (int i = 0; i < ALL.length; i++) {
            ln[i] = ALL[i].ln(kelvin, lnKelvin);
        }
    }

    /**
     * Returns the lower end of the range in which the source gives the constant.
     *
     * @return temperature in °C
     */
    public double leastCelsius() {
        return leastCelsius;
    }

    /**
     * Returns the upper end of the range in which the source gives the constant.
     *
     * @return temperature in °C
     */
    public double mostCelsius() {
        return mostCelsius;
    }

    /**
     * Returns the place of this constant in arrays.
     *
     * @return an index from 0, without gaps
     */
    @SuppressWarnings("EnumOrdinal") // arrays are what the kernel is made of; this is the one place that says so
    public int place() {
        return ordinal();
    }

    /** A holder, since constants of an enum are made before its static fields. */
    private static final class VanTHoff {
        /** Gas constant of CODATA 2018 times ln 10, in kJ/(mol K). */
        static final double R_LN_10 = 8.314462618e-3 * Math.log(10);
    }
}
