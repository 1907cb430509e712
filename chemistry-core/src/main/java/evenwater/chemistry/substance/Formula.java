package evenwater.chemistry.substance;

import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A chemical formula: how many atoms of each element, and the charge.
 *
 * <p>Read with nested groups ({@code Ca(HCO3)2}), water of crystallisation after {@code ·}, {@code *} or {@code .}
 * ({@code CaSO4·0.5H2O}) and a charge in the usual spellings: {@code Ca²⁺}, {@code Ca2+}, {@code Ca+2}, {@code Ca++},
 * {@code SO4^2-}, {@code SO₄²⁻}, {@code SO42-}. In the last spelling the digit before the sign is taken as the charge if the formula
 * would otherwise be unusual ({@code NO3-} is nitrate, {@code SO42-} is sulfate); write {@code ^} to be sure.
 *
 * <p>Two formulas are equal if they are written alike, apart from the spelling of digits, charge and the dot. Immutable and
 * thread-safe.
 */
public final class Formula {

    private final String text;
    private final Map<Element, Double> atoms;
    private final int chargeNumber;

    Formula(String text, Map<Element, Double> atoms, int chargeNumber) {
        this.text = text;
        this.atoms = Collections.unmodifiableMap(new EnumMap<>(atoms));
        this.chargeNumber = chargeNumber;
    }

    /**
     * Reads a formula.
     *
     * @param text such as {@code MgSO4·7H2O} or {@code NH₄⁺}; at most 200 characters
     * @return the formula
     * @throws UnreadableTextException if it cannot be read; names the position
     */
    public static Formula parse(String text) {
        return new FormulaReader(Objects.requireNonNull(text, "text")).read();
    }

    /**
     * Returns how often an element occurs.
     *
     * @param element any element
     * @return atoms in the formula; 0 if it does not occur; a multiple of a half for a hemihydrate
     */
    public double count(Element element) {
        return atoms.getOrDefault(element, 0.0);
    }

    /**
     * Returns the elements that occur.
     *
     * @return the elements by atomic number; not empty
     */
    public Set<Element> elements() {
        return atoms.keySet();
    }

    /**
     * Returns the charge.
     *
     * @return elementary charges; no unit; 0 for a neutral formula
     */
    public int chargeNumber() {
        return chargeNumber;
    }

    /**
     * Returns the mass of one mole: the sum of the standard atomic weights.
     *
     * <p>The mass of the electrons that an ion lacks or has too many (0.00055 g/mol each) is neglected, as is usual.
     *
     * @return the molar mass in g/mol
     */
    public MolarMass molarMass() {
        return MolarMass.of(molarMassInGramsPerMole(), MolarMass.GRAM_PER_MOLE);
    }

    double molarMassInGramsPerMole() {
        double sum = 0; // whole numbers of 1e-4 g/mol, so the sum is exact
        for (Map.Entry<Element, Double> e : atoms.entrySet()) {
            sum += e.getValue() * e.getKey().weightIn1e4GramsPerMole();
        }
        return sum / 1e4;
    }

    /**
     * Tells whether both formulas have the same atoms and charge, however they are written.
     *
     * @param that another formula
     * @return true if they differ in spelling alone
     */
    public boolean hasSameAtomsAs(Formula that) {
        return atoms.equals(that.atoms) && chargeNumber == that.chargeNumber;
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return that instanceof Formula f && f.text.equals(text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    /**
     * Returns the formula with lowered and raised digits, such as {@code SO₄²⁻} or {@code CaSO₄·0.5H₂O}.
     *
     * @return text that {@link #parse} reads back to an equal formula
     */
    @Override
    public String toString() {
        return text;
    }
}
