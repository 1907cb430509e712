package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.EquivalentMass;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * An ion or a neutral solute of water.
 *
 * <p><b>Reference form.</b> Acids and bases exchange protons, so a water counts them by one form each, the one that dominates at the
 * end point of an alkalinity titration (near pH 4.5): all ammonia as NH₄⁺, all phosphate as H₂PO₄⁻, all carbonate as CO₂. A mole
 * of any other form brings {@code charge of the reference form − own charge} equivalents of alkalinity: HCO₃⁻ 1, CO₃²⁻ 2, NH₃ 1,
 * HPO₄²⁻ 1, OH⁻ 1, H⁺ −1. Ions that exchange no protons there (Ca²⁺, Cl⁻, SO₄²⁻ …) are their own reference form.
 *
 * <p>Ions of your own, made by {@link #of}, are on equal footing. Ions are equal if symbol and reference form are; their order is
 * that of the constants, then your own by symbol. Immutable and thread-safe.
 */
public final class Ion implements Comparable<Ion> {

    private static final List<Ion> BUILT_IN = new ArrayList<>();

    /** Water itself; the reference form of H⁺ and OH⁻, never counted. */
    public static final Ion WATER = builtIn("water", "H2O", null);

    /** Carbon dioxide; the reference form of the carbonates, counted as inorganic carbon. */
    public static final Ion CARBON_DIOXIDE = builtIn("carbon dioxide", "CO2", null);

    /** Calcium, Ca²⁺. */
    public static final Ion CALCIUM = builtIn("calcium", "Ca^2+", null);

    /** Magnesium, Mg²⁺. */
    public static final Ion MAGNESIUM = builtIn("magnesium", "Mg^2+", null);

    /** Sodium, Na⁺. */
    public static final Ion SODIUM = builtIn("sodium", "Na+", null);

    /** Potassium, K⁺. */
    public static final Ion POTASSIUM = builtIn("potassium", "K+", null);

    /** Ammonium, NH₄⁺. */
    public static final Ion AMMONIUM = builtIn("ammonium", "NH4+", null);

    /** Lithium, Li⁺. */
    public static final Ion LITHIUM = builtIn("lithium", "Li+", null);

    /** Strontium, Sr²⁺. */
    public static final Ion STRONTIUM = builtIn("strontium", "Sr^2+", null);

    /** Barium, Ba²⁺. */
    public static final Ion BARIUM = builtIn("barium", "Ba^2+", null);

    /** Iron(II), Fe²⁺, the dissolved form of iron. */
    public static final Ion IRON_II = builtIn("iron(II)", "Fe^2+", null);

    /** Manganese(II), Mn²⁺. */
    public static final Ion MANGANESE_II = builtIn("manganese(II)", "Mn^2+", null);

    /** Zinc, Zn²⁺. */
    public static final Ion ZINC = builtIn("zinc", "Zn^2+", null);

    /** Copper(II), Cu²⁺. */
    public static final Ion COPPER_II = builtIn("copper(II)", "Cu^2+", null);

    /** Aluminium, Al³⁺. */
    public static final Ion ALUMINIUM = builtIn("aluminium", "Al^3+", null);

    /** Hydrogen ion, H⁺; counted as alkalinity taken away. */
    public static final Ion HYDROGEN = builtIn("hydrogen ion", "H+", WATER);

    /** Bicarbonate (hydrogencarbonate), HCO₃⁻. */
    public static final Ion BICARBONATE = builtIn("bicarbonate", "HCO3-", CARBON_DIOXIDE);

    /** Carbonate, CO₃²⁻. */
    public static final Ion CARBONATE = builtIn("carbonate", "CO3^2-", CARBON_DIOXIDE);

    /** Hydroxide, OH⁻; counted as alkalinity. */
    public static final Ion HYDROXIDE = builtIn("hydroxide", "OH-", WATER);

    /** Chloride, Cl⁻. */
    public static final Ion CHLORIDE = builtIn("chloride", "Cl-", null);

    /** Sulfate, SO₄²⁻. */
    public static final Ion SULFATE = builtIn("sulfate", "SO4^2-", null);

    /** Nitrate, NO₃⁻. */
    public static final Ion NITRATE = builtIn("nitrate", "NO3-", null);

    /** Nitrite, NO₂⁻. */
    public static final Ion NITRITE = builtIn("nitrite", "NO2-", null);

    /** Fluoride, F⁻. */
    public static final Ion FLUORIDE = builtIn("fluoride", "F-", null);

    /** Bromide, Br⁻. */
    public static final Ion BROMIDE = builtIn("bromide", "Br-", null);

    /** Iodide, I⁻. */
    public static final Ion IODIDE = builtIn("iodide", "I-", null);

    /** Dihydrogen phosphate, H₂PO₄⁻; the reference form of the phosphates. */
    public static final Ion DIHYDROGEN_PHOSPHATE = builtIn("dihydrogen phosphate", "H2PO4-", null);

    /** Hydrogen phosphate, HPO₄²⁻. */
    public static final Ion HYDROGEN_PHOSPHATE = builtIn("hydrogen phosphate", "HPO4^2-", DIHYDROGEN_PHOSPHATE);

    /** Phosphate, PO₄³⁻. */
    public static final Ion PHOSPHATE = builtIn("phosphate", "PO4^3-", DIHYDROGEN_PHOSPHATE);

    /** Boric acid, B(OH)₃; the reference form of borate. */
    public static final Ion BORIC_ACID = builtIn("boric acid", "B(OH)3", null);

    /** Borate, B(OH)₄⁻. */
    public static final Ion BORATE = builtIn("borate", "B(OH)4-", BORIC_ACID);

    /** Dissolved silica, counted as SiO₂. */
    public static final Ion SILICA = builtIn("silica", "SiO2", null);

    /** Silicate, H₃SiO₄⁻. */
    public static final Ion SILICATE = builtIn("silicate", "H3SiO4-", SILICA);

    /** Hydrogen sulfide, H₂S. */
    public static final Ion HYDROGEN_SULFIDE = builtIn("hydrogen sulfide", "H2S", null);

    /** Bisulfide, HS⁻. */
    public static final Ion BISULFIDE = builtIn("bisulfide", "HS-", HYDROGEN_SULFIDE);

    /** Ammonia, NH₃. */
    public static final Ion AMMONIA = builtIn("ammonia", "NH3", AMMONIUM);

    /** Thiosulfate, S₂O₃²⁻, of dechlorinators. */
    public static final Ion THIOSULFATE = builtIn("thiosulfate", "S2O3^2-", null);

    /** Oxalate, C₂O₄²⁻; with pKa 1.25 and 4.27 its own reference form. */
    public static final Ion OXALATE = builtIn("oxalate", "C2O4^2-", null);

    /** Dihydrogen citrate, C₆H₇O₇⁻; with pKa 3.13, 4.76 and 6.40 the reference form of citrate. */
    public static final Ion DIHYDROGEN_CITRATE = builtIn("dihydrogen citrate", "C6H7O7-", null);

    /** Citrate, C₆H₅O₇³⁻. */
    public static final Ion CITRATE = builtIn("citrate", "C6H5O7^3-", DIHYDROGEN_CITRATE);

    private final String name;
    private final Formula formula;
    private final Ion referenceForm;
    private final int order;
    private final double molarMassInGramsPerMole;
    private final Unit<AmountConcentration> milligramPerLitre;

    private Ion(String name, Formula formula, @Nullable Ion referenceForm, int order) {
        this.name = Objects.requireNonNull(name, "name");
        this.formula = Objects.requireNonNull(formula, "formula");
        this.referenceForm = referenceForm == null ? this : referenceForm;
        this.order = order;
        this.molarMassInGramsPerMole = formula.molarMassInGramsPerMole();
        this.milligramPerLitre = Basis.unit(this, MassConcentration.MILLIGRAM_PER_LITRE, formula);
    }

    private static Ion builtIn(String name, String formula, @Nullable Ion referenceForm) {
        Ion ion = new Ion(name, Formula.parse(formula), referenceForm, BUILT_IN.size());
        BUILT_IN.add(ion);
        return ion;
    }

    /**
     * Returns an ion of your own.
     *
     * <p>One that differs from a constant by protons alone, such as HSO₄⁻ from SO₄²⁻, is counted in the reference form of that constant.
     * Any other is taken to exchange no protons between the pH of the water and the end point of an alkalinity titration, unless
     * {@link #countedAs} says otherwise.
     *
     * @param name in words, for messages
     * @param formula with its charge
     * @return the ion; the constant of this class if there is one with the same atoms and charge, whatever the name
     * @throws IllegalArgumentException if the name is blank
     */
    public static Ion of(String name, Formula formula) {
        Objects.requireNonNull(name, "name");
        if (name.isBlank()) {
            throw new IllegalArgumentException("name of an ion must not be blank, but was '" + name + "'");
        }
        Objects.requireNonNull(formula, "formula");
        Ion constant = byAtoms(formula);
        return constant != null ? constant : new Ion(name, formula, countedByProtons(formula), Integer.MAX_VALUE);
    }

    /**
     * Returns a copy that is counted in another form, as acids and bases are.
     *
     * @param reference the form that dominates at the end point of an alkalinity titration; its own reference form, with the same
     *     atoms but for H and O
     * @return the ion with its new reference form
     * @throws IllegalArgumentException if the reference form is itself counted as another, has other atoms, or is reached not by
     *     protons and water alone but by electrons too, as nitrate from nitrite
     */
    public Ion countedAs(Ion reference) {
        if (!reference.isReferenceForm() || reference.equals(WATER)) {
            throw new IllegalArgumentException("reference form of " + this
                    + " must be its own reference form and not water, but was " + reference);
        }
        if (!Basis.sameAtomsButHydrogenAndOxygen(formula, reference.formula)) {
            throw new IllegalArgumentException(
                    "reference form of " + this + " must have the same atoms but for H and O, but was " + reference);
        }
        double hydrogen = reference.formula.count(Element.HYDROGEN) - formula.count(Element.HYDROGEN);
        double oxygen = reference.formula.count(Element.OXYGEN) - formula.count(Element.OXYGEN);
        if (reference.chargeNumber() - chargeNumber() != hydrogen - 2 * oxygen) {
            throw new IllegalArgumentException("reference form of " + this
                    + " must be reached by taking up or giving off H⁺ and H₂O alone, but was " + reference);
        }
        return known(new Ion(name, formula, reference, Integer.MAX_VALUE));
    }

    private static Ion known(Ion ion) {
        int i = BUILT_IN.indexOf(ion);
        return i < 0 ? ion : BUILT_IN.get(i);
    }

    /** The reference form of a constant that has more or fewer protons and is the same for the rest. */
    private static @Nullable Ion countedByProtons(Formula formula) {
        for (Ion ion : BUILT_IN) {
            double protons = formula.count(Element.HYDROGEN) - ion.formula.count(Element.HYDROGEN);
            if (formula.chargeNumber() - ion.chargeNumber() == protons
                    && formula.count(Element.OXYGEN) == ion.formula.count(Element.OXYGEN)
                    && Basis.sameAtomsButHydrogenAndOxygen(formula, ion.formula)) {
                return ion.referenceForm;
            }
        }
        return null;
    }

    private static @Nullable Ion byAtoms(Formula formula) {
        for (Ion ion : BUILT_IN) {
            if (ion.formula.hasSameAtomsAs(formula)) {
                return ion;
            }
        }
        return null;
    }

    /**
     * Reads a constant of this class by its symbol, such as {@code Ca²⁺}, {@code SO4^2-} or {@code H3BO3}, or by its name.
     *
     * @param text a formula with its charge, in any order of the atoms, or a {@linkplain #name() name} such as "nitrate"
     * @return the ion
     * @throws UnreadableTextException if it is no formula or none of the constants; the message names one with another charge
     */
    public static Ion parse(String text) {
        Objects.requireNonNull(text, "text");
        for (Ion ion : BUILT_IN) {
            if (ion.name.equalsIgnoreCase(text.strip())) {
                return ion;
            }
        }
        Formula formula = Formula.parse(text);
        Ion ion = byAtoms(formula);
        if (ion == null) {
            String meant = BUILT_IN.stream()
                    .filter(other -> other.formula.elements().equals(formula.elements())
                            && formula.elements().stream().allMatch(e -> other.formula.count(e) == formula.count(e)))
                    .map(Ion::symbol)
                    .findFirst()
                    .map(symbol -> ": did you mean " + symbol + "?")
                    .orElse("");
            throw new UnreadableTextException("ion", text, "not one of the known ions" + meant, 0);
        }
        return ion;
    }

    /**
     * Returns the ions and neutral solutes that this class knows.
     *
     * @return the constants in their order
     */
    public static List<Ion> all() {
        return Collections.unmodifiableList(BUILT_IN);
    }

    /**
     * Returns the name in words.
     *
     * @return such as "calcium"
     */
    public String name() {
        return name;
    }

    /**
     * Returns the formula with lowered and raised digits.
     *
     * @return such as {@code SO₄²⁻}
     */
    public String symbol() {
        return formula.toString();
    }

    /**
     * Returns the formula.
     *
     * @return atoms and charge
     */
    public Formula formula() {
        return formula;
    }

    /**
     * Returns the charge.
     *
     * @return elementary charges; no unit; 0 for a neutral solute
     */
    public int chargeNumber() {
        return formula.chargeNumber();
    }

    /**
     * Returns the mass of one mole.
     *
     * @return the molar mass in g/mol
     */
    public MolarMass molarMass() {
        return formula.molarMass();
    }

    /**
     * Returns the mass of one mole of charge: {@code M / |z|}.
     *
     * @return the equivalent mass in g/eq
     * @throws IllegalArgumentException if the solute is neutral
     */
    public EquivalentMass equivalentMass() {
        return EquivalentMass.of(
                molarMassInGramsPerMole / chargesOrRefuse("an equivalent mass"), EquivalentMass.GRAM_PER_EQUIVALENT);
    }

    /**
     * Returns the form in which a water counts this one.
     *
     * @return the reference form; this ion itself if it exchanges no protons
     */
    public Ion referenceForm() {
        return referenceForm;
    }

    /**
     * Tells whether a water counts this ion as itself.
     *
     * @return true if it is its own reference form
     */
    public boolean isReferenceForm() {
        return referenceForm.formula.equals(formula);
    }

    /**
     * Returns the alkalinity that one mole brings: charge of the reference form minus own charge.
     *
     * @return equivalents per mole; no unit; −1 for H⁺, 0 for ions that exchange no protons, 1 for HCO₃⁻, 2 for CO₃²⁻
     */
    public int alkalinityPerMole() {
        return referenceForm.chargeNumber() - chargeNumber();
    }

    /**
     * Returns milligram per litre of this ion as itself, a unit of its amount.
     *
     * @return the unit, printed as {@code mg/L NO₃⁻}
     */
    public Unit<AmountConcentration> milligramPerLitre() {
        return milligramPerLitre;
    }

    /**
     * Returns milligram per litre of this ion expressed as something else; see {@link #unit}.
     *
     * @param basis what is weighed, such as N, P₂O₅ or CaCO₃
     * @return the unit, printed as {@code mg/L N}
     * @throws IllegalArgumentException if this ion cannot be expressed so
     */
    public Unit<AmountConcentration> milligramPerLitreAs(Formula basis) {
        return unit(MassConcentration.MILLIGRAM_PER_LITRE, basis);
    }

    /**
     * Returns milligram per litre of this ion expressed as an element; see {@link #unit}.
     *
     * @param basis such as nitrogen for "nitrate as N"
     * @return the unit, printed as {@code mg/L N}
     * @throws IllegalArgumentException if the ion does not contain the element
     */
    public Unit<AmountConcentration> milligramPerLitreAs(Element basis) {
        return milligramPerLitreAs(basis.formula());
    }

    /**
     * Returns a mass of a basis per volume as a unit of this ion's amount.
     *
     * <p>By atoms: the basis stands for as many ions as its atoms can make, 2 mol of phosphate for 1 mol of P₂O₅. <b>As CaCO₃
     * always by equivalents</b>, for every ion, as the softening trade writes all of them: 100 mg/L of sodium as CaCO₃ is
     * 45.94 mg/L of Na⁺. Going mole for mole would say 22.97 and still agree for calcium.
     *
     * @param massUnit mass per volume
     * @param basis what is weighed
     * @return the unit, printed as {@code mg/L N}
     * @throws IllegalArgumentException if basis and ion share no element but H and O, or share several in other ratios, or the
     *     basis is CaCO₃ and the solute has no charge
     */
    public Unit<AmountConcentration> unit(Unit<MassConcentration> massUnit, Formula basis) {
        return Basis.unit(this, massUnit, basis);
    }

    /**
     * Returns any library's concentration of this ion as ours; one that is stated in the mass of another substance is refused.
     *
     * @param concentration in moles, or in a {@linkplain #unit unit} of this ion
     * @return the same statement
     * @throws IllegalArgumentException if its unit weighs something else, as {@code mg/L Na⁺} does for calcium
     */
    public AmountConcentration concentration(Quantity<AmountConcentration> concentration) {
        AmountConcentration stated = AmountConcentration.from(concentration);
        Basis.refuseOther(this, stated);
        return stated;
    }

    /**
     * Reads a concentration of this ion, such as {@code 4.1 mg/L N}, {@code 4.1 mg/L as N}, {@code 0.3 mmol/L} or {@code 2 meq/L}.
     *
     * @param text a number with a decimal point, a unit and, for a mass, the basis
     * @return the concentration as stated; equivalents become an amount
     * @throws UnreadableTextException if it cannot be read; a mass without a basis is refused
     */
    public AmountConcentration parseConcentration(String text) {
        Objects.requireNonNull(text, "text");
        return BasisReader.read(this, text);
    }

    /**
     * Returns the charge that an amount of this ion carries, without its sign: {@code |z| · c}.
     *
     * @param amount amount concentration
     * @return equivalents in meq/L
     * @throws IllegalArgumentException if the solute is neutral
     */
    public EquivalentConcentration equivalents(Quantity<AmountConcentration> amount) {
        double millimolesPerLitre = concentration(amount).in(MILLIMOLE_PER_LITRE);
        return EquivalentConcentration.of(
                millimolesPerLitre * chargesOrRefuse("equivalents"), MILLIEQUIVALENT_PER_LITRE);
    }

    /**
     * Returns the amount of this ion that carries a charge: {@code c / |z|}.
     *
     * @param equivalents charge without its sign
     * @return amount concentration in mmol/L
     * @throws IllegalArgumentException if the solute is neutral
     */
    public AmountConcentration amount(Quantity<EquivalentConcentration> equivalents) {
        double milliequivalentsPerLitre =
                EquivalentConcentration.from(equivalents).in(MILLIEQUIVALENT_PER_LITRE);
        return AmountConcentration.of(milliequivalentsPerLitre / chargesOrRefuse("equivalents"), MILLIMOLE_PER_LITRE);
    }

    int chargesOrRefuse(String what) {
        if (chargeNumber() == 0) {
            throw new IllegalArgumentException(symbol() + " has no charge and so no " + what.replaceFirst("^an? ", ""));
        }
        return Math.abs(chargeNumber());
    }

    @Override
    public int compareTo(Ion that) {
        int byOrder = Integer.compare(order, that.order);
        if (byOrder != 0) {
            return byOrder;
        }
        int bySymbol = symbol().compareTo(that.symbol());
        return bySymbol != 0 ? bySymbol : referenceForm.symbol().compareTo(that.referenceForm.symbol());
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return this == that
                || (that instanceof Ion ion
                        && ion.formula.equals(formula)
                        && ion.referenceForm.formula.equals(referenceForm.formula));
    }

    @Override
    public int hashCode() {
        return Objects.hash(formula, referenceForm.formula);
    }

    /** Returns the symbol. */
    @Override
    public String toString() {
        return symbol();
    }
}
