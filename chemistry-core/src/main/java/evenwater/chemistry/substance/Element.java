package evenwater.chemistry.substance;

import evenwater.chemistry.kernel.AtomicWeights;
import evenwater.chemistry.quantity.MolarMass;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A chemical element with its standard atomic weight: the abridged value of 2021 and its uncertainty.
 *
 * <p>Only elements that have a standard atomic weight are here. The weights are those of {@link AtomicWeights}; the uncertainties
 * are from the same table and partly from memory.
 *
 * <p>Immutable and thread-safe.
 *
 * @see "T. Prohaska et al., Standard atomic weights of the elements 2021, Pure Appl. Chem. 94 (2022) 573-600, Table 2"
 */
public enum Element {
    /** Hydrogen. */
    HYDROGEN("H", 1, AtomicWeights.HYDROGEN, 0.0002),

    /** Helium. */
    HELIUM("He", 2, AtomicWeights.HELIUM, 0.0001),

    /** Lithium. */
    LITHIUM("Li", 3, AtomicWeights.LITHIUM, 0.06),

    /** Beryllium. */
    BERYLLIUM("Be", 4, AtomicWeights.BERYLLIUM, 0.0001),

    /** Boron. */
    BORON("B", 5, AtomicWeights.BORON, 0.02),

    /** Carbon. */
    CARBON("C", 6, AtomicWeights.CARBON, 0.002),

    /** Nitrogen. */
    NITROGEN("N", 7, AtomicWeights.NITROGEN, 0.001),

    /** Oxygen. */
    OXYGEN("O", 8, AtomicWeights.OXYGEN, 0.001),

    /** Fluorine. */
    FLUORINE("F", 9, AtomicWeights.FLUORINE, 0.001),

    /** Neon. */
    NEON("Ne", 10, AtomicWeights.NEON, 0.001),

    /** Sodium. */
    SODIUM("Na", 11, AtomicWeights.SODIUM, 0.001),

    /** Magnesium. */
    MAGNESIUM("Mg", 12, AtomicWeights.MAGNESIUM, 0.002),

    /** Aluminium. */
    ALUMINIUM("Al", 13, AtomicWeights.ALUMINIUM, 0.001),

    /** Silicon. */
    SILICON("Si", 14, AtomicWeights.SILICON, 0.001),

    /** Phosphorus. */
    PHOSPHORUS("P", 15, AtomicWeights.PHOSPHORUS, 0.001),

    /** Sulfur. */
    SULFUR("S", 16, AtomicWeights.SULFUR, 0.02),

    /** Chlorine. */
    CHLORINE("Cl", 17, AtomicWeights.CHLORINE, 0.01),

    /** Argon. */
    ARGON("Ar", 18, AtomicWeights.ARGON, 0.16),

    /** Potassium. */
    POTASSIUM("K", 19, AtomicWeights.POTASSIUM, 0.001),

    /** Calcium. */
    CALCIUM("Ca", 20, AtomicWeights.CALCIUM, 0.004),

    /** Scandium. */
    SCANDIUM("Sc", 21, AtomicWeights.SCANDIUM, 0.001),

    /** Titanium. */
    TITANIUM("Ti", 22, AtomicWeights.TITANIUM, 0.001),

    /** Vanadium. */
    VANADIUM("V", 23, AtomicWeights.VANADIUM, 0.001),

    /** Chromium. */
    CHROMIUM("Cr", 24, AtomicWeights.CHROMIUM, 0.001),

    /** Manganese. */
    MANGANESE("Mn", 25, AtomicWeights.MANGANESE, 0.001),

    /** Iron. */
    IRON("Fe", 26, AtomicWeights.IRON, 0.002),

    /** Cobalt. */
    COBALT("Co", 27, AtomicWeights.COBALT, 0.001),

    /** Nickel. */
    NICKEL("Ni", 28, AtomicWeights.NICKEL, 0.001),

    /** Copper. */
    COPPER("Cu", 29, AtomicWeights.COPPER, 0.003),

    /** Zinc. */
    ZINC("Zn", 30, AtomicWeights.ZINC, 0.02),

    /** Gallium. */
    GALLIUM("Ga", 31, AtomicWeights.GALLIUM, 0.001),

    /** Germanium. */
    GERMANIUM("Ge", 32, AtomicWeights.GERMANIUM, 0.008),

    /** Arsenic. */
    ARSENIC("As", 33, AtomicWeights.ARSENIC, 0.001),

    /** Selenium. */
    SELENIUM("Se", 34, AtomicWeights.SELENIUM, 0.008),

    /** Bromine. */
    BROMINE("Br", 35, AtomicWeights.BROMINE, 0.003),

    /** Krypton. */
    KRYPTON("Kr", 36, AtomicWeights.KRYPTON, 0.002),

    /** Rubidium. */
    RUBIDIUM("Rb", 37, AtomicWeights.RUBIDIUM, 0.001),

    /** Strontium. */
    STRONTIUM("Sr", 38, AtomicWeights.STRONTIUM, 0.01),

    /** Yttrium. */
    YTTRIUM("Y", 39, AtomicWeights.YTTRIUM, 0.001),

    /** Zirconium. */
    ZIRCONIUM("Zr", 40, AtomicWeights.ZIRCONIUM, 0.002),

    /** Niobium. */
    NIOBIUM("Nb", 41, AtomicWeights.NIOBIUM, 0.001),

    /** Molybdenum. */
    MOLYBDENUM("Mo", 42, AtomicWeights.MOLYBDENUM, 0.01),

    /** Ruthenium. */
    RUTHENIUM("Ru", 44, AtomicWeights.RUTHENIUM, 0.02),

    /** Rhodium. */
    RHODIUM("Rh", 45, AtomicWeights.RHODIUM, 0.01),

    /** Palladium. */
    PALLADIUM("Pd", 46, AtomicWeights.PALLADIUM, 0.01),

    /** Silver. */
    SILVER("Ag", 47, AtomicWeights.SILVER, 0.01),

    /** Cadmium. */
    CADMIUM("Cd", 48, AtomicWeights.CADMIUM, 0.01),

    /** Indium. */
    INDIUM("In", 49, AtomicWeights.INDIUM, 0.01),

    /** Tin. */
    TIN("Sn", 50, AtomicWeights.TIN, 0.01),

    /** Antimony. */
    ANTIMONY("Sb", 51, AtomicWeights.ANTIMONY, 0.01),

    /** Tellurium. */
    TELLURIUM("Te", 52, AtomicWeights.TELLURIUM, 0.03),

    /** Iodine. */
    IODINE("I", 53, AtomicWeights.IODINE, 0.01),

    /** Xenon. */
    XENON("Xe", 54, AtomicWeights.XENON, 0.01),

    /** Caesium. */
    CAESIUM("Cs", 55, AtomicWeights.CAESIUM, 0.01),

    /** Barium. */
    BARIUM("Ba", 56, AtomicWeights.BARIUM, 0.01),

    /** Lanthanum. */
    LANTHANUM("La", 57, AtomicWeights.LANTHANUM, 0.01),

    /** Cerium. */
    CERIUM("Ce", 58, AtomicWeights.CERIUM, 0.01),

    /** Praseodymium. */
    PRASEODYMIUM("Pr", 59, AtomicWeights.PRASEODYMIUM, 0.01),

    /** Neodymium. */
    NEODYMIUM("Nd", 60, AtomicWeights.NEODYMIUM, 0.01),

    /** Samarium. */
    SAMARIUM("Sm", 62, AtomicWeights.SAMARIUM, 0.02),

    /** Europium. */
    EUROPIUM("Eu", 63, AtomicWeights.EUROPIUM, 0.01),

    /** Gadolinium. */
    GADOLINIUM("Gd", 64, AtomicWeights.GADOLINIUM, 0.03),

    /** Terbium. */
    TERBIUM("Tb", 65, AtomicWeights.TERBIUM, 0.01),

    /** Dysprosium. */
    DYSPROSIUM("Dy", 66, AtomicWeights.DYSPROSIUM, 0.01),

    /** Holmium. */
    HOLMIUM("Ho", 67, AtomicWeights.HOLMIUM, 0.01),

    /** Erbium. */
    ERBIUM("Er", 68, AtomicWeights.ERBIUM, 0.01),

    /** Thulium. */
    THULIUM("Tm", 69, AtomicWeights.THULIUM, 0.01),

    /** Ytterbium. */
    YTTERBIUM("Yb", 70, AtomicWeights.YTTERBIUM, 0.02),

    /** Lutetium. */
    LUTETIUM("Lu", 71, AtomicWeights.LUTETIUM, 0.01),

    /** Hafnium. */
    HAFNIUM("Hf", 72, AtomicWeights.HAFNIUM, 0.01),

    /** Tantalum. */
    TANTALUM("Ta", 73, AtomicWeights.TANTALUM, 0.01),

    /** Tungsten. */
    TUNGSTEN("W", 74, AtomicWeights.TUNGSTEN, 0.01),

    /** Rhenium. */
    RHENIUM("Re", 75, AtomicWeights.RHENIUM, 0.01),

    /** Osmium. */
    OSMIUM("Os", 76, AtomicWeights.OSMIUM, 0.03),

    /** Iridium. */
    IRIDIUM("Ir", 77, AtomicWeights.IRIDIUM, 0.01),

    /** Platinum. */
    PLATINUM("Pt", 78, AtomicWeights.PLATINUM, 0.02),

    /** Gold. */
    GOLD("Au", 79, AtomicWeights.GOLD, 0.01),

    /** Mercury. */
    MERCURY("Hg", 80, AtomicWeights.MERCURY, 0.01),

    /** Thallium. */
    THALLIUM("Tl", 81, AtomicWeights.THALLIUM, 0.01),

    /** Lead. */
    LEAD("Pb", 82, AtomicWeights.LEAD, 1.1),

    /** Bismuth. */
    BISMUTH("Bi", 83, AtomicWeights.BISMUTH, 0.01),

    /** Thorium. */
    THORIUM("Th", 90, AtomicWeights.THORIUM, 0.01),

    /** Protactinium. */
    PROTACTINIUM("Pa", 91, AtomicWeights.PROTACTINIUM, 0.01),

    /** Uranium. */
    URANIUM("U", 92, AtomicWeights.URANIUM, 0.01);

    private static final Map<String, Element> BY_SYMBOL = new HashMap<>();

    static {
        for (Element element : values()) {
            BY_SYMBOL.put(element.symbol, element);
        }
    }

    private final String symbol;
    private final int atomicNumber;
    private final int weightIn1e4GramsPerMole;
    private final double uncertainty;

    Element(String symbol, int atomicNumber, int weightIn1e4GramsPerMole, double uncertainty) {
        this.symbol = symbol;
        this.atomicNumber = atomicNumber;
        this.weightIn1e4GramsPerMole = weightIn1e4GramsPerMole;
        this.uncertainty = uncertainty;
    }

    /**
     * Returns the element with a symbol.
     *
     * @param symbol such as "Na"; capitals count
     * @return the element; empty if there is none or it has no standard atomic weight
     */
    public static Optional<Element> withSymbol(String symbol) {
        return Optional.ofNullable(BY_SYMBOL.get(symbol));
    }

    /**
     * Returns the symbol.
     *
     * @return such as "Na"
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Returns the atomic number.
     *
     * @return protons in the nucleus; no unit, 1 to 92
     */
    public int atomicNumber() {
        return atomicNumber;
    }

    /**
     * Returns the standard atomic weight.
     *
     * @return the abridged value of 2021 in g/mol
     */
    public MolarMass atomicWeight() {
        return MolarMass.of(weightIn1e4GramsPerMole / 1e4, MolarMass.GRAM_PER_MOLE);
    }

    /**
     * Returns how far normal materials may differ from the standard atomic weight.
     *
     * @return half the width of the interval, in g/mol
     */
    public MolarMass uncertainty() {
        return MolarMass.of(uncertainty, MolarMass.GRAM_PER_MOLE);
    }

    /**
     * Returns the element as a formula of one atom, for use as a basis ("as N").
     *
     * @return the formula
     */
    public Formula formula() {
        return Formula.parse(symbol);
    }

    /** The weight as a whole number, so that sums over a formula are exact. */
    int weightIn1e4GramsPerMole() {
        return weightIn1e4GramsPerMole;
    }
}
