package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentMass.GRAM_PER_EQUIVALENT;
import static evenwater.chemistry.quantity.MolarMass.GRAM_PER_MOLE;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.UnreadableTextException;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class IonTest {

    /** Every constant in its order: symbol, charge, reference form, alkalinity in equivalents per mole. */
    private static final String CONSTANTS = """
            WATER,                H₂O,      0, H₂O,       0
            CARBON_DIOXIDE,       CO₂,      0, CO₂,       0
            CALCIUM,              Ca²⁺,     2, Ca²⁺,      0
            MAGNESIUM,            Mg²⁺,     2, Mg²⁺,      0
            SODIUM,               Na⁺,      1, Na⁺,       0
            POTASSIUM,            K⁺,       1, K⁺,        0
            AMMONIUM,             NH₄⁺,     1, NH₄⁺,      0
            LITHIUM,              Li⁺,      1, Li⁺,       0
            STRONTIUM,            Sr²⁺,     2, Sr²⁺,      0
            BARIUM,               Ba²⁺,     2, Ba²⁺,      0
            IRON_II,              Fe²⁺,     2, Fe²⁺,      0
            MANGANESE_II,         Mn²⁺,     2, Mn²⁺,      0
            ZINC,                 Zn²⁺,     2, Zn²⁺,      0
            COPPER_II,            Cu²⁺,     2, Cu²⁺,      0
            ALUMINIUM,            Al³⁺,     3, Al³⁺,      0
            HYDROGEN,             H⁺,       1, H₂O,      -1
            BICARBONATE,          HCO₃⁻,   -1, CO₂,       1
            CARBONATE,            CO₃²⁻,   -2, CO₂,       2
            HYDROXIDE,            OH⁻,     -1, H₂O,       1
            CHLORIDE,             Cl⁻,     -1, Cl⁻,       0
            SULFATE,              SO₄²⁻,   -2, SO₄²⁻,     0
            NITRATE,              NO₃⁻,    -1, NO₃⁻,      0
            NITRITE,              NO₂⁻,    -1, NO₂⁻,      0
            FLUORIDE,             F⁻,      -1, F⁻,        0
            BROMIDE,              Br⁻,     -1, Br⁻,       0
            IODIDE,               I⁻,      -1, I⁻,        0
            DIHYDROGEN_PHOSPHATE, H₂PO₄⁻,  -1, H₂PO₄⁻,    0
            HYDROGEN_PHOSPHATE,   HPO₄²⁻,  -2, H₂PO₄⁻,    1
            PHOSPHATE,            PO₄³⁻,   -3, H₂PO₄⁻,    2
            BORIC_ACID,           B(OH)₃,   0, B(OH)₃,    0
            BORATE,               B(OH)₄⁻, -1, B(OH)₃,    1
            SILICA,               SiO₂,     0, SiO₂,      0
            SILICATE,             H₃SiO₄⁻, -1, SiO₂,      1
            HYDROGEN_SULFIDE,     H₂S,      0, H₂S,       0
            BISULFIDE,            HS⁻,     -1, H₂S,       1
            AMMONIA,              NH₃,      0, NH₄⁺,      1
            THIOSULFATE,          S₂O₃²⁻,  -2, S₂O₃²⁻,    0
            OXALATE,              C₂O₄²⁻,  -2, C₂O₄²⁻,    0
            DIHYDROGEN_CITRATE,   C₆H₇O₇⁻, -1, C₆H₇O₇⁻,   0
            CITRATE,              C₆H₅O₇³⁻,-3, C₆H₇O₇⁻,   2
            """;

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = CONSTANTS)
    void constantsHaveTheirChargeAndReferenceForm(
            String constant, String symbol, int charge, String reference, int alkalinity)
            throws ReflectiveOperationException {
        Ion ion = (Ion) Ion.class.getField(constant).get(null);
        assertAll(
                () -> assertEquals(symbol, ion.symbol()),
                () -> assertEquals(charge, ion.chargeNumber()),
                () -> assertEquals(reference, ion.referenceForm().symbol()),
                () -> assertEquals(reference.equals(symbol), ion.isReferenceForm()),
                () -> assertEquals(alkalinity, ion.alkalinityPerMole()),
                () -> assertSame(ion, Ion.parse(symbol)));
    }

    @Test
    void allHasTheConstantsInTheirOrder() throws ReflectiveOperationException {
        List<String> symbols =
                CONSTANTS.lines().map(row -> row.split(", *", -1)[1]).toList();
        assertEquals(symbols, Ion.all().stream().map(Ion::symbol).toList());
        List<Ion> fields = new ArrayList<>();
        for (var field : Ion.class.getFields()) {
            if (Modifier.isStatic(field.getModifiers()) && field.getType() == Ion.class) {
                fields.add((Ion) field.get(null));
            }
        }
        assertEquals(Set.copyOf(fields), Set.copyOf(Ion.all()));
        assertEquals(fields.size(), Ion.all().size());
    }

    @Test
    void allCannotBeChanged() {
        assertThrows(UnsupportedOperationException.class, () -> Ion.all().remove(0));
    }

    static List<Ion> all() {
        return Ion.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void referenceFormsHaveTheSameAtomsButForHydrogenAndOxygen(Ion ion) {
        Ion reference = ion.referenceForm();
        for (Element element : EnumSet.complementOf(EnumSet.of(Element.HYDROGEN, Element.OXYGEN))) {
            assertEquals(reference.formula().count(element), ion.formula().count(element), element.symbol());
        }
        assertSame(reference, reference.referenceForm());
    }

    /** An ion becomes its reference form by protons and water, so its alkalinity is the number of protons that it takes up. */
    @ParameterizedTest
    @MethodSource("all")
    void alkalinityIsTheProtonsThatTheReferenceFormHasMore(Ion ion) {
        boolean counted = !ion.referenceForm().equals(Ion.WATER); // H⁺ and OH⁻ vanish in water, whatever its amount
        double waters = counted ? excess(ion, Element.OXYGEN) : ion.formula().count(Element.OXYGEN);
        double hydrogens =
                counted ? excess(ion, Element.HYDROGEN) : ion.formula().count(Element.HYDROGEN);
        assertEquals(2 * waters - hydrogens, ion.alkalinityPerMole());
    }

    private static double excess(Ion ion, Element element) {
        return ion.formula().count(element) - ion.referenceForm().formula().count(element);
    }

    @ParameterizedTest
    @MethodSource("all")
    void constantsCarryAName(Ion ion) throws ReflectiveOperationException {
        String constant = ion.name().toUpperCase(Locale.ROOT).replace(' ', '_').replace("(II)", "_II");
        assertSame(ion, Ion.class.getField(constant.replace("_ION", "")).get(null));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({ // from the abridged weights of 2021, by hand
        "Ca²⁺,    40.078,  20.039",
        "Mg²⁺,    24.305,  12.1525",
        "Na⁺,     22.99,   22.99",
        "Al³⁺,    26.982,  8.994",
        "HCO₃⁻,   61.016,  61.016",
        "CO₃²⁻,   60.008,  30.004",
        "SO₄²⁻,   96.056,  48.028",
        "NO₃⁻,    62.004,  62.004",
        "HPO₄²⁻,  95.978,  47.989",
        "H⁺,      1.008,   1.008",
    })
    void massesPerMoleAndPerEquivalent(String symbol, double gramsPerMole, double gramsPerEquivalent) {
        Ion ion = Ion.parse(symbol);
        assertAll(
                () -> assertEquals(gramsPerMole, ion.molarMass().in(GRAM_PER_MOLE)),
                () -> assertEquals(gramsPerEquivalent, ion.equivalentMass().in(GRAM_PER_EQUIVALENT)));
    }

    @Test
    void equivalentsAreAmountTimesChargeWithoutItsSign() {
        assertEquals(
                EquivalentConcentration.of(3, MILLIEQUIVALENT_PER_LITRE),
                Ion.SULFATE.equivalents(AmountConcentration.of(1.5, MILLIMOLE_PER_LITRE)));
        assertEquals(
                EquivalentConcentration.of(3000, MILLIEQUIVALENT_PER_LITRE),
                Ion.ALUMINIUM.equivalents(AmountConcentration.parse("1 mol/L")));
    }

    @Test
    void amountIsEquivalentsDividedByCharge() {
        assertEquals(
                AmountConcentration.of(1.5, MILLIMOLE_PER_LITRE),
                Ion.CALCIUM.amount(EquivalentConcentration.of(3, MILLIEQUIVALENT_PER_LITRE)));
        assertEquals(
                AmountConcentration.of(1000, MILLIMOLE_PER_LITRE),
                Ion.PHOSPHATE.amount(EquivalentConcentration.parse("3 eq/L")));
    }

    @Test
    void neutralSolutesHaveNoEquivalents() {
        AmountConcentration amount = AmountConcentration.of(1, MILLIMOLE_PER_LITRE);
        EquivalentConcentration equivalents = EquivalentConcentration.of(1, MILLIEQUIVALENT_PER_LITRE);
        assertAll(
                () -> assertEquals(
                        "CO₂ has no charge and so no equivalents",
                        refused(() -> Ion.CARBON_DIOXIDE.equivalents(amount))),
                () -> assertEquals(
                        "B(OH)₃ has no charge and so no equivalents",
                        refused(() -> Ion.BORIC_ACID.amount(equivalents))),
                () -> assertEquals(
                        "SiO₂ has no charge and so no equivalent mass", refused(Ion.SILICA::equivalentMass)));
    }

    private static String refused(Executable call) {
        return assertThrows(IllegalArgumentException.class, call).getMessage();
    }

    @Test
    void symbolIsTheTextAndTheFormula() {
        assertEquals("SO₄²⁻", Ion.SULFATE.toString());
        assertEquals(Formula.parse("SO4^2-"), Ion.SULFATE.formula());
    }

    @ParameterizedTest
    @ValueSource(strings = {"SO4^2-", "SO₄²⁻", "SO42-", "SO4-2", "SO₄2-", " SO4-- "})
    void symbolsAreReadInAllSpellings(String text) {
        assertSame(Ion.SULFATE, Ion.parse(text));
    }

    @ParameterizedTest
    @CsvSource({
        "Ca, ': did you mean Ca²⁺?'",
        "Ca+, ': did you mean Ca²⁺?'",
        "SO4^3-, ': did you mean SO₄²⁻?'",
        "NO3, ': did you mean NO₃⁻?'",
        "Pb^2+, ''"
    })
    void formulasOfNoConstantAreRefused(String text, String hint) {
        UnreadableTextException e = assertThrows(UnreadableTextException.class, () -> Ion.parse(text));
        assertEquals(
                "cannot read ion '" + text + "': not one of the known ions" + hint + ", at index 0", e.getMessage());
    }

    @Test
    void atomsInAnyOrderAndNamesAreRead() {
        assertSame(Ion.BORIC_ACID, Ion.parse("H3BO3"));
        assertSame(Ion.HYDROXIDE, Ion.parse("HO-"));
        assertSame(Ion.SULFATE, Ion.parse("[SO4]2-"));
        for (Ion ion : Ion.all()) {
            assertSame(ion, Ion.parse(ion.name()));
            assertSame(ion, Ion.parse(" " + ion.name().toUpperCase(Locale.ROOT)));
        }
    }

    @Test
    void textsThatAreNoFormulaAreRefusedAsFormulas() {
        UnreadableTextException e = assertThrows(UnreadableTextException.class, () -> Ion.parse("kalzium"));
        assertEquals("cannot read formula 'kalzium': expected an element such as Ca, at index 0", e.getMessage());
    }

    @Test
    void constantsDifferFromEachOther() {
        assertEquals(Ion.all().size(), Set.copyOf(Ion.all()).size());
        assertNotEquals(Ion.CALCIUM, null);
        assertNotEquals((Object) Ion.CALCIUM, "Ca²⁺");
        assertEquals(
                Ion.all().size(),
                Arrays.stream(Ion.all().toArray())
                        .map(Object::hashCode)
                        .distinct()
                        .count());
    }
}
