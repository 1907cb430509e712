package evenwater.chemistry.kernel;

/**
 * Standard atomic weights, abridged values of 2021, as integers of 1e-4 g/mol.
 *
 * <p>The underscore stands where the decimal point of the published value is: {@code 40_0780} is 40.0780 g/mol. Whole numbers make
 * every molar mass and every factor between scales an exact ratio. This is the one place where an atomic weight is written; the
 * uncertainties stand beside the names in {@code substance.Element}.
 *
 * @see "T. Prohaska et al., Standard atomic weights of the elements 2021, Pure Appl. Chem. 94 (2022) 573-600, Table 2 (abridged
 *     values; the values marked in the validation page were compared with independent copies of that table, the rest are from
 *     memory and compared with an independent table of isotopes)"
 */
public final class AtomicWeights {

    /** Hydrogen, H: 1.0080 g/mol, in 1e-4 g/mol. */
    public static final int HYDROGEN = 1_0080;

    /** Helium, He: 4.0026 g/mol, in 1e-4 g/mol. */
    public static final int HELIUM = 4_0026;

    /** Lithium, Li: 6.94 g/mol, in 1e-4 g/mol. */
    public static final int LITHIUM = 6_9400;

    /** Beryllium, Be: 9.0122 g/mol, in 1e-4 g/mol. */
    public static final int BERYLLIUM = 9_0122;

    /** Boron, B: 10.81 g/mol, in 1e-4 g/mol. */
    public static final int BORON = 10_8100;

    /** Carbon, C: 12.011 g/mol, in 1e-4 g/mol. */
    public static final int CARBON = 12_0110;

    /** Nitrogen, N: 14.007 g/mol, in 1e-4 g/mol. */
    public static final int NITROGEN = 14_0070;

    /** Oxygen, O: 15.999 g/mol, in 1e-4 g/mol. */
    public static final int OXYGEN = 15_9990;

    /** Fluorine, F: 18.998 g/mol, in 1e-4 g/mol. */
    public static final int FLUORINE = 18_9980;

    /** Neon, Ne: 20.180 g/mol, in 1e-4 g/mol. */
    public static final int NEON = 20_1800;

    /** Sodium, Na: 22.990 g/mol, in 1e-4 g/mol. */
    public static final int SODIUM = 22_9900;

    /** Magnesium, Mg: 24.305 g/mol, in 1e-4 g/mol. */
    public static final int MAGNESIUM = 24_3050;

    /** Aluminium, Al: 26.982 g/mol, in 1e-4 g/mol. */
    public static final int ALUMINIUM = 26_9820;

    /** Silicon, Si: 28.085 g/mol, in 1e-4 g/mol. */
    public static final int SILICON = 28_0850;

    /** Phosphorus, P: 30.974 g/mol, in 1e-4 g/mol. */
    public static final int PHOSPHORUS = 30_9740;

    /** Sulfur, S: 32.06 g/mol, in 1e-4 g/mol. */
    public static final int SULFUR = 32_0600;

    /** Chlorine, Cl: 35.45 g/mol, in 1e-4 g/mol. */
    public static final int CHLORINE = 35_4500;

    /** Argon, Ar: 39.95 g/mol, in 1e-4 g/mol. */
    public static final int ARGON = 39_9500;

    /** Potassium, K: 39.098 g/mol, in 1e-4 g/mol. */
    public static final int POTASSIUM = 39_0980;

    /** Calcium, Ca: 40.078 g/mol, in 1e-4 g/mol. */
    public static final int CALCIUM = 40_0780;

    /** Scandium, Sc: 44.956 g/mol, in 1e-4 g/mol. */
    public static final int SCANDIUM = 44_9560;

    /** Titanium, Ti: 47.867 g/mol, in 1e-4 g/mol. */
    public static final int TITANIUM = 47_8670;

    /** Vanadium, V: 50.942 g/mol, in 1e-4 g/mol. */
    public static final int VANADIUM = 50_9420;

    /** Chromium, Cr: 51.996 g/mol, in 1e-4 g/mol. */
    public static final int CHROMIUM = 51_9960;

    /** Manganese, Mn: 54.938 g/mol, in 1e-4 g/mol. */
    public static final int MANGANESE = 54_9380;

    /** Iron, Fe: 55.845 g/mol, in 1e-4 g/mol. */
    public static final int IRON = 55_8450;

    /** Cobalt, Co: 58.933 g/mol, in 1e-4 g/mol. */
    public static final int COBALT = 58_9330;

    /** Nickel, Ni: 58.693 g/mol, in 1e-4 g/mol. */
    public static final int NICKEL = 58_6930;

    /** Copper, Cu: 63.546 g/mol, in 1e-4 g/mol. */
    public static final int COPPER = 63_5460;

    /** Zinc, Zn: 65.38 g/mol, in 1e-4 g/mol. */
    public static final int ZINC = 65_3800;

    /** Gallium, Ga: 69.723 g/mol, in 1e-4 g/mol. */
    public static final int GALLIUM = 69_7230;

    /** Germanium, Ge: 72.630 g/mol, in 1e-4 g/mol. */
    public static final int GERMANIUM = 72_6300;

    /** Arsenic, As: 74.922 g/mol, in 1e-4 g/mol. */
    public static final int ARSENIC = 74_9220;

    /** Selenium, Se: 78.971 g/mol, in 1e-4 g/mol. */
    public static final int SELENIUM = 78_9710;

    /** Bromine, Br: 79.904 g/mol, in 1e-4 g/mol. */
    public static final int BROMINE = 79_9040;

    /** Krypton, Kr: 83.798 g/mol, in 1e-4 g/mol. */
    public static final int KRYPTON = 83_7980;

    /** Rubidium, Rb: 85.468 g/mol, in 1e-4 g/mol. */
    public static final int RUBIDIUM = 85_4680;

    /** Strontium, Sr: 87.62 g/mol, in 1e-4 g/mol. */
    public static final int STRONTIUM = 87_6200;

    /** Yttrium, Y: 88.906 g/mol, in 1e-4 g/mol. */
    public static final int YTTRIUM = 88_9060;

    /** Zirconium, Zr: 91.224 g/mol, in 1e-4 g/mol. */
    public static final int ZIRCONIUM = 91_2240;

    /** Niobium, Nb: 92.906 g/mol, in 1e-4 g/mol. */
    public static final int NIOBIUM = 92_9060;

    /** Molybdenum, Mo: 95.95 g/mol, in 1e-4 g/mol. */
    public static final int MOLYBDENUM = 95_9500;

    /** Ruthenium, Ru: 101.07 g/mol, in 1e-4 g/mol. */
    public static final int RUTHENIUM = 101_0700;

    /** Rhodium, Rh: 102.91 g/mol, in 1e-4 g/mol. */
    public static final int RHODIUM = 102_9100;

    /** Palladium, Pd: 106.42 g/mol, in 1e-4 g/mol. */
    public static final int PALLADIUM = 106_4200;

    /** Silver, Ag: 107.87 g/mol, in 1e-4 g/mol. */
    public static final int SILVER = 107_8700;

    /** Cadmium, Cd: 112.41 g/mol, in 1e-4 g/mol. */
    public static final int CADMIUM = 112_4100;

    /** Indium, In: 114.82 g/mol, in 1e-4 g/mol. */
    public static final int INDIUM = 114_8200;

    /** Tin, Sn: 118.71 g/mol, in 1e-4 g/mol. */
    public static final int TIN = 118_7100;

    /** Antimony, Sb: 121.76 g/mol, in 1e-4 g/mol. */
    public static final int ANTIMONY = 121_7600;

    /** Tellurium, Te: 127.60 g/mol, in 1e-4 g/mol. */
    public static final int TELLURIUM = 127_6000;

    /** Iodine, I: 126.90 g/mol, in 1e-4 g/mol. */
    public static final int IODINE = 126_9000;

    /** Xenon, Xe: 131.29 g/mol, in 1e-4 g/mol. */
    public static final int XENON = 131_2900;

    /** Caesium, Cs: 132.91 g/mol, in 1e-4 g/mol. */
    public static final int CAESIUM = 132_9100;

    /** Barium, Ba: 137.33 g/mol, in 1e-4 g/mol. */
    public static final int BARIUM = 137_3300;

    /** Lanthanum, La: 138.91 g/mol, in 1e-4 g/mol. */
    public static final int LANTHANUM = 138_9100;

    /** Cerium, Ce: 140.12 g/mol, in 1e-4 g/mol. */
    public static final int CERIUM = 140_1200;

    /** Praseodymium, Pr: 140.91 g/mol, in 1e-4 g/mol. */
    public static final int PRASEODYMIUM = 140_9100;

    /** Neodymium, Nd: 144.24 g/mol, in 1e-4 g/mol. */
    public static final int NEODYMIUM = 144_2400;

    /** Samarium, Sm: 150.36 g/mol, in 1e-4 g/mol. */
    public static final int SAMARIUM = 150_3600;

    /** Europium, Eu: 151.96 g/mol, in 1e-4 g/mol. */
    public static final int EUROPIUM = 151_9600;

    /** Gadolinium, Gd: 157.25 g/mol, in 1e-4 g/mol. */
    public static final int GADOLINIUM = 157_2500;

    /** Terbium, Tb: 158.93 g/mol, in 1e-4 g/mol. */
    public static final int TERBIUM = 158_9300;

    /** Dysprosium, Dy: 162.50 g/mol, in 1e-4 g/mol. */
    public static final int DYSPROSIUM = 162_5000;

    /** Holmium, Ho: 164.93 g/mol, in 1e-4 g/mol. */
    public static final int HOLMIUM = 164_9300;

    /** Erbium, Er: 167.26 g/mol, in 1e-4 g/mol. */
    public static final int ERBIUM = 167_2600;

    /** Thulium, Tm: 168.93 g/mol, in 1e-4 g/mol. */
    public static final int THULIUM = 168_9300;

    /** Ytterbium, Yb: 173.05 g/mol, in 1e-4 g/mol. */
    public static final int YTTERBIUM = 173_0500;

    /** Lutetium, Lu: 174.97 g/mol, in 1e-4 g/mol. */
    public static final int LUTETIUM = 174_9700;

    /** Hafnium, Hf: 178.49 g/mol, in 1e-4 g/mol. */
    public static final int HAFNIUM = 178_4900;

    /** Tantalum, Ta: 180.95 g/mol, in 1e-4 g/mol. */
    public static final int TANTALUM = 180_9500;

    /** Tungsten, W: 183.84 g/mol, in 1e-4 g/mol. */
    public static final int TUNGSTEN = 183_8400;

    /** Rhenium, Re: 186.21 g/mol, in 1e-4 g/mol. */
    public static final int RHENIUM = 186_2100;

    /** Osmium, Os: 190.23 g/mol, in 1e-4 g/mol. */
    public static final int OSMIUM = 190_2300;

    /** Iridium, Ir: 192.22 g/mol, in 1e-4 g/mol. */
    public static final int IRIDIUM = 192_2200;

    /** Platinum, Pt: 195.08 g/mol, in 1e-4 g/mol. */
    public static final int PLATINUM = 195_0800;

    /** Gold, Au: 196.97 g/mol, in 1e-4 g/mol. */
    public static final int GOLD = 196_9700;

    /** Mercury, Hg: 200.59 g/mol, in 1e-4 g/mol. */
    public static final int MERCURY = 200_5900;

    /** Thallium, Tl: 204.38 g/mol, in 1e-4 g/mol. */
    public static final int THALLIUM = 204_3800;

    /** Lead, Pb: 207.2 g/mol, in 1e-4 g/mol. */
    public static final int LEAD = 207_2000;

    /** Bismuth, Bi: 208.98 g/mol, in 1e-4 g/mol. */
    public static final int BISMUTH = 208_9800;

    /** Thorium, Th: 232.04 g/mol, in 1e-4 g/mol. */
    public static final int THORIUM = 232_0400;

    /** Protactinium, Pa: 231.04 g/mol, in 1e-4 g/mol. */
    public static final int PROTACTINIUM = 231_0400;

    /** Uranium, U: 238.03 g/mol, in 1e-4 g/mol. */
    public static final int URANIUM = 238_0300;

    private AtomicWeights() {}
}
