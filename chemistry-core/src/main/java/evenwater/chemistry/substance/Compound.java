package evenwater.chemistry.substance;

import evenwater.chemistry.quantity.EquivalentMass;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Something one can weigh and dissolve: its formula with water of crystallisation, and the ions that one formula unit sets free.
 *
 * <p>The constants come from one data table with sources; {@link #of} makes your own on equal footing. Masses are of the pure
 * compound as its formula says: what is sold may be damp or impure (calcium chloride takes up water in air).
 *
 * <p>Compounds are equal if name, formula and ions are. Immutable and thread-safe.
 */
public final class Compound {

    /** Calcium chloride anhydrous, CaCl₂. */
    public static final Compound CALCIUM_CHLORIDE_ANHYDROUS = CompoundTable.row("calcium chloride anhydrous");

    /** Calcium chloride dihydrate, CaCl₂·2H₂O. */
    public static final Compound CALCIUM_CHLORIDE_DIHYDRATE = CompoundTable.row("calcium chloride dihydrate");

    /** Calcium sulfate dihydrate, CaSO₄·2H₂O. */
    public static final Compound CALCIUM_SULFATE_DIHYDRATE = CompoundTable.row("calcium sulfate dihydrate");

    /** Calcium sulfate hemihydrate, CaSO₄·0.5H₂O. */
    public static final Compound CALCIUM_SULFATE_HEMIHYDRATE = CompoundTable.row("calcium sulfate hemihydrate");

    /** Calcium carbonate, CaCO₃. */
    public static final Compound CALCIUM_CARBONATE = CompoundTable.row("calcium carbonate");

    /** Calcium hydroxide, Ca(OH)₂. */
    public static final Compound CALCIUM_HYDROXIDE = CompoundTable.row("calcium hydroxide");

    /** Calcium nitrate tetrahydrate, Ca(NO₃)₂·4H₂O. */
    public static final Compound CALCIUM_NITRATE_TETRAHYDRATE = CompoundTable.row("calcium nitrate tetrahydrate");

    /** Magnesium chloride hexahydrate, MgCl₂·6H₂O. */
    public static final Compound MAGNESIUM_CHLORIDE_HEXAHYDRATE = CompoundTable.row("magnesium chloride hexahydrate");

    /** Magnesium sulfate heptahydrate, MgSO₄·7H₂O. */
    public static final Compound MAGNESIUM_SULFATE_HEPTAHYDRATE = CompoundTable.row("magnesium sulfate heptahydrate");

    /** Magnesium sulfate anhydrous, MgSO₄. */
    public static final Compound MAGNESIUM_SULFATE_ANHYDROUS = CompoundTable.row("magnesium sulfate anhydrous");

    /** Magnesium carbonate, MgCO₃. */
    public static final Compound MAGNESIUM_CARBONATE = CompoundTable.row("magnesium carbonate");

    /** Magnesium oxide, MgO. */
    public static final Compound MAGNESIUM_OXIDE = CompoundTable.row("magnesium oxide");

    /** Magnesium hydroxide, Mg(OH)₂. */
    public static final Compound MAGNESIUM_HYDROXIDE = CompoundTable.row("magnesium hydroxide");

    /** Dolomite, CaMg(CO₃)₂. */
    public static final Compound DOLOMITE = CompoundTable.row("dolomite");

    /** Sodium bicarbonate, NaHCO₃. */
    public static final Compound SODIUM_BICARBONATE = CompoundTable.row("sodium bicarbonate");

    /** Sodium carbonate anhydrous, Na₂CO₃. */
    public static final Compound SODIUM_CARBONATE_ANHYDROUS = CompoundTable.row("sodium carbonate anhydrous");

    /** Sodium carbonate decahydrate, Na₂CO₃·10H₂O. */
    public static final Compound SODIUM_CARBONATE_DECAHYDRATE = CompoundTable.row("sodium carbonate decahydrate");

    /** Potassium bicarbonate, KHCO₃. */
    public static final Compound POTASSIUM_BICARBONATE = CompoundTable.row("potassium bicarbonate");

    /** Potassium carbonate, K₂CO₃. */
    public static final Compound POTASSIUM_CARBONATE = CompoundTable.row("potassium carbonate");

    /** Potassium chloride, KCl. */
    public static final Compound POTASSIUM_CHLORIDE = CompoundTable.row("potassium chloride");

    /** Sodium chloride, NaCl. */
    public static final Compound SODIUM_CHLORIDE = CompoundTable.row("sodium chloride");

    /** Potassium sulfate, K₂SO₄. */
    public static final Compound POTASSIUM_SULFATE = CompoundTable.row("potassium sulfate");

    /** Sodium sulfate, Na₂SO₄. */
    public static final Compound SODIUM_SULFATE = CompoundTable.row("sodium sulfate");

    /** Potassium nitrate, KNO₃. */
    public static final Compound POTASSIUM_NITRATE = CompoundTable.row("potassium nitrate");

    /** Potassium dihydrogen phosphate, KH₂PO₄. */
    public static final Compound POTASSIUM_DIHYDROGEN_PHOSPHATE = CompoundTable.row("potassium dihydrogen phosphate");

    /** Dipotassium hydrogen phosphate, K₂HPO₄. */
    public static final Compound DIPOTASSIUM_HYDROGEN_PHOSPHATE = CompoundTable.row("dipotassium hydrogen phosphate");

    /** Sodium hydroxide, NaOH. */
    public static final Compound SODIUM_HYDROXIDE = CompoundTable.row("sodium hydroxide");

    /** Hydrochloric acid, HCl. */
    public static final Compound HYDROCHLORIC_ACID = CompoundTable.row("hydrochloric acid");

    /** Sulfuric acid, H₂SO₄. */
    public static final Compound SULFURIC_ACID = CompoundTable.row("sulfuric acid");

    /** Phosphoric acid, H₃PO₄. */
    public static final Compound PHOSPHORIC_ACID = CompoundTable.row("phosphoric acid");

    /** Ammonium chloride, NH₄Cl. */
    public static final Compound AMMONIUM_CHLORIDE = CompoundTable.row("ammonium chloride");

    /** Sodium thiosulfate pentahydrate, Na₂S₂O₃·5H₂O. */
    public static final Compound SODIUM_THIOSULFATE_PENTAHYDRATE = CompoundTable.row("sodium thiosulfate pentahydrate");

    /** Boric acid, H₃BO₃. */
    public static final Compound BORIC_ACID = CompoundTable.row("boric acid");

    /** Strontium chloride hexahydrate, SrCl₂·6H₂O. */
    public static final Compound STRONTIUM_CHLORIDE_HEXAHYDRATE = CompoundTable.row("strontium chloride hexahydrate");

    /** Potassium bromide, KBr. */
    public static final Compound POTASSIUM_BROMIDE = CompoundTable.row("potassium bromide");

    /** Sodium fluoride, NaF. */
    public static final Compound SODIUM_FLUORIDE = CompoundTable.row("sodium fluoride");

    /** Citric acid anhydrous, C₆H₈O₇. */
    public static final Compound CITRIC_ACID_ANHYDROUS = CompoundTable.row("citric acid anhydrous");

    /** Oxalic acid dihydrate, C₂H₂O₄·2H₂O. */
    public static final Compound OXALIC_ACID_DIHYDRATE = CompoundTable.row("oxalic acid dihydrate");

    /** Copper sulfate pentahydrate, CuSO₄·5H₂O. */
    public static final Compound COPPER_SULFATE_PENTAHYDRATE = CompoundTable.row("copper sulfate pentahydrate");

    private final String name;
    private final Formula formula;
    private final Map<Ion, Integer> ions;
    private final @Nullable Solubility solubility;
    private final @Nullable LevelTeaspoon teaspoon;
    private final String caution;
    private final double strength;

    Compound(
            String name,
            Formula formula,
            Map<Ion, Integer> ions,
            @Nullable Solubility solubility,
            @Nullable LevelTeaspoon teaspoon,
            String caution,
            double strength) {
        this.name = Objects.requireNonNull(name, "name");
        this.formula = Objects.requireNonNull(formula, "formula");
        this.ions = Collections.unmodifiableMap(new TreeMap<>(ions));
        this.solubility = solubility;
        this.teaspoon = teaspoon;
        this.caution = Objects.requireNonNull(caution, "caution");
        this.strength = strength;
        Dissolution.check(this.name + " " + this.formula, this.formula, this.ions);
    }

    /**
     * Returns a compound of your own.
     *
     * @param name in words, for messages
     * @param formula with its water of crystallisation; neutral
     * @param ions ions and neutral solutes that one formula unit sets free, each with its number; may take up or set free water
     * @return the compound, without solubility, teaspoon and caution
     * @throws IllegalArgumentException if the charges do not cancel, or atoms other than those of water are lost or made
     */
    public static Compound of(String name, Formula formula, Map<Ion, Integer> ions) {
        Objects.requireNonNull(ions, "ions").forEach((ion, number) -> {
            Objects.requireNonNull(ion, "ion of " + name);
            Objects.requireNonNull(number, "number of " + ion + " in " + name);
        });
        return new Compound(name, formula, ions, null, null, "", 1);
    }

    /**
     * Returns a copy with a solubility.
     *
     * @param newSolubility how much dissolves, with its basis
     * @return the copy
     */
    public Compound with(Solubility newSolubility) {
        return new Compound(name, formula, ions, newSolubility, teaspoon, caution, strength);
    }

    /**
     * Returns a copy with the mass of a level teaspoon.
     *
     * @param newTeaspoon mass and its uncertainty
     * @return the copy
     */
    public Compound with(LevelTeaspoon newTeaspoon) {
        return new Compound(name, formula, ions, solubility, newTeaspoon, caution, strength);
    }

    /**
     * Returns a copy with a handling caution.
     *
     * @param newCaution a few words without a final dot; empty for none
     * @return the copy
     */
    public Compound withCaution(String newCaution) {
        return new Compound(name, formula, ions, solubility, teaspoon, newCaution, strength);
    }

    /**
     * Returns a copy as it is sold: so much of the compound in what is weighed, the rest water or something idle.
     *
     * <p>Acids are sold in solution: hydrochloric acid of 37 % holds 0.37 g of HCl in each gram. A damp or impure salt is the same case.
     *
     * @param massFraction mass of the compound in the mass of what is weighed; no unit, above 0 to 1
     * @return the copy
     * @throws IllegalArgumentException if it is out of range
     */
    public Compound ofStrength(double massFraction) {
        if (!(massFraction > 0 && massFraction <= 1)) {
            throw new IllegalArgumentException(
                    "strength of " + name + " must be above 0 and at most 1, but was " + massFraction);
        }
        return new Compound(name, formula, ions, solubility, teaspoon, caution, massFraction);
    }

    /**
     * Returns the compound of the table with a name, a household name or a formula.
     *
     * @param nameOrFormula such as "gypsum", "calcium chloride dihydrate" or "CaCl2·2H2O"; capitals of names make no difference
     * @return the compound
     * @throws UnreadableTextException if there is none, or if there are several, such as for "calcium chloride"; the message names
     *     them
     */
    public static Compound named(String nameOrFormula) {
        return CompoundTable.find(nameOrFormula);
    }

    /**
     * Returns the compounds of the table.
     *
     * @return the constants of this class, in the order of the table
     */
    public static List<Compound> all() {
        return CompoundTable.all();
    }

    /**
     * Returns the name.
     *
     * @return in words, with the strength if it is not the pure compound, such as {@code hydrochloric acid 37 %}
     */
    public String name() {
        return strength == 1
                ? name
                : name + " "
                        + WaterUnits.share(100 * strength, WaterUnits.PERCENT)
                                .toText(Locale.ROOT, strength < 0.9999 ? 4 : 15);
    }

    /**
     * Returns how much of what is weighed is the compound.
     *
     * @return mass fraction; no unit, above 0 to 1; 1 unless stated
     */
    public double strength() {
        return strength;
    }

    /**
     * Returns the formula.
     *
     * @return with water of crystallisation
     */
    public Formula formula() {
        return formula;
    }

    /**
     * Returns the ions that one formula unit sets free.
     *
     * @return each ion with its number per formula unit, in the order of the ions
     */
    public Map<Ion, Integer> ions() {
        return ions;
    }

    /**
     * Returns the mass of one mole of formula units.
     *
     * @return the molar mass of the pure compound in g/mol
     */
    public MolarMass molarMass() {
        return formula.molarMass();
    }

    /**
     * Returns the mass of the pure compound that exchanges one mole of charge of an ion: {@code M / (n · |z|)}.
     *
     * <p>The exchange must be named, since a compound has several: of MgSO₄·7H₂O 123.233 g bring one equivalent of magnesium.
     *
     * @param exchanged an ion that the compound sets free
     * @return the equivalent mass in g/eq
     * @throws IllegalArgumentException if the compound does not set the ion free, or it has no charge
     */
    public EquivalentMass equivalentMass(Ion exchanged) {
        Integer number = ions.get(exchanged);
        if (number == null) {
            throw new IllegalArgumentException(name + " sets free " + ions.keySet() + ", not " + exchanged
                    + ", so it has no equivalent mass for it");
        }
        double charges = number * (double) exchanged.chargesOrRefuse("an equivalent mass");
        return EquivalentMass.of(formula.molarMassInGramsPerMole() / charges, EquivalentMass.GRAM_PER_EQUIVALENT);
    }

    /**
     * Returns how much dissolves in pure water.
     *
     * @return the solubility with its basis; empty if the table has none or it mixes in all proportions
     */
    public Optional<Solubility> solubility() {
        return Optional.ofNullable(solubility);
    }

    /**
     * Returns the mass of a level US teaspoon.
     *
     * @return mass and its uncertainty; empty if nobody states one
     */
    public Optional<LevelTeaspoon> teaspoon() {
        return Optional.ofNullable(teaspoon);
    }

    /**
     * Returns what to mind when handling it.
     *
     * @return a few words; empty if there is nothing special
     */
    public String caution() {
        return caution;
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return that instanceof Compound c
                && c.name.equals(name)
                && c.formula.equals(formula)
                && c.ions.equals(ions)
                && c.strength == strength;
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, formula, ions, strength);
    }

    /** Returns name and formula. */
    @Override
    public String toString() {
        return name() + " " + formula;
    }
}
