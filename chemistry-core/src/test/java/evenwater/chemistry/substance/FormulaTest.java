package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.MolarMass.GRAM_PER_MOLE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource({ // counted by hand; elements by atomic number
        "NaCl,                      Na Cl",
        "H2O,                       H2 O",
        "Ca(HCO3)2,                 H2 C2 O6 Ca",
        "CaMg(CO3)2,                C2 O6 Mg Ca",
        "Mg5(CO3)4(OH)2,            H2 C4 O14 Mg5",
        "[Co(NH3)6]Cl3,             H18 N6 Cl3 Co",
        "K4[Fe(CN)6]·3H2O,          H6 C6 N6 O3 K4 Fe",
        "{[(CH3)2N]2C}3,            H36 C15 N6",
        "((H2O)2)3,                 H12 O6",
        "C12H22O11,                 H22 C12 O11",
        "C9999H1000,                H1000 C9999",
        "CH3COOH,                   H4 C2 O2",
        "MgSO4·7H2O,                H14 O11 Mg S",
        "MgSO4*7H2O,                H14 O11 Mg S",
        "MgSO4.7H2O,                H14 O11 Mg S",
        "MgSO4⋅7H2O,                H14 O11 Mg S",
        "MgSO4•7H2O,                H14 O11 Mg S",
        "MgSO₄·7H₂O,                H14 O11 Mg S",
        "MgSO4·H2O,                 H2 O5 Mg S",
        "(NH4)2Fe(SO4)2·6H2O,       H20 N2 O14 S2 Fe",
        "CaSO4·0.5H2O,              H O4.5 S Ca",
        "CaSO4.0.5H2O,              H O4.5 S Ca",
        "Fe(NO3)3·9H2O,             H18 N3 O18 Fe",
        "CaSO4·1.25H2O,             H2.5 O5.25 S Ca",
        "CuSO4·3Cu(OH)2·0.5H2O,     H7 O10.5 S Cu4",
        "Na2CO3·1.5H2O2,            H3 C O6 Na2",
        "KAl(SO4)2·12H2O,           H24 O20 Al S2 K",
    })
    void atomsAreCounted(String text, String expected) {
        assertEquals(expected, composition(Formula.parse(text)));
    }

    private static String composition(Formula formula) {
        return formula.elements().stream()
                .map(e -> e.symbol()
                        + (formula.count(e) == 1
                                ? ""
                                : String.valueOf(formula.count(e)).replaceFirst("\\.0$", "")))
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest(name = "{0} is written {1}")
    @CsvSource({
        "Ca(HCO3)2,        Ca(HCO₃)₂",
        "C12H22O11,        C₁₂H₂₂O₁₁",
        "C60H70N80,        C₆₀H₇₀N₈₀",
        "C₁₂H₂₂O₁₁,        C₁₂H₂₂O₁₁",
        "'  Na2 ',         Na₂",
        "CaSO4*0.5H2O,     CaSO₄·0.5H₂O",
        "MgSO4.7H2O,       MgSO₄·7H₂O",
        "K3[Fe(CN)6],      K₃[Fe(CN)₆]",
        "{[Fe2](CN)3}4,    {[Fe₂](CN)₃}₄",
        "H2PO4-,           H₂PO₄⁻",
        "NH4+,             NH₄⁺",
    })
    void textHasLoweredDigitsAndOneDot(String text, String expected) {
        assertEquals(expected, Formula.parse(text).toString());
    }

    @Test
    void elementsThatDoNotOccurCountZero() {
        assertEquals(0, Formula.parse("NaCl").count(Element.CALCIUM));
    }

    @Test
    void elementsAreSortedByAtomicNumberAndCannotBeChanged() {
        Formula formula = Formula.parse("CaCO3");
        assertEquals(List.of(Element.CARBON, Element.OXYGEN, Element.CALCIUM), List.copyOf(formula.elements()));
        assertThrows(
                UnsupportedOperationException.class, () -> formula.elements().remove(Element.CALCIUM));
    }

    @ParameterizedTest(name = "{0}: {1} g/mol")
    @CsvSource({ // summed by hand from the abridged weights of 2021; sums of four-digit decimals are exact
        "H2O,          18.015",
        "CaCO3,        100.086",
        "CaO,          56.077",
        "HCO3-,        61.016",
        "Na+,          22.99",
        "CaSO4·0.5H2O, 145.1415",
        "MgSO4·7H2O,   246.466",
    })
    void molarMassIsTheSumOfAtomicWeights(String text, double gramsPerMole) {
        assertEquals(gramsPerMole, Formula.parse(text).molarMass().in(GRAM_PER_MOLE));
    }

    @Test
    void molarMassIsStatedInGramPerMole() {
        assertEquals("100.086 g/mol", Formula.parse("CaCO3").molarMass().toString());
    }

    @Test
    void formulasWrittenAlikeAreEqual() {
        Formula formula = Formula.parse("SO₄²⁻");
        for (String alike : List.of("SO4^2-", "SO42-", "SO4-2", " SO₄²⁻ ")) {
            assertEquals(formula, Formula.parse(alike));
            assertEquals(formula.hashCode(), Formula.parse(alike).hashCode());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"SO4", "SO4-", "SO4^2+", "O4S^2-", "[SO4]2-", "SO3^2-"})
    void formulasWrittenDifferentlyAreNotEqual(String other) {
        assertNotEquals(Formula.parse("SO4^2-"), Formula.parse(other));
    }

    @Test
    void formulasEqualFormulasOnly() {
        Formula formula = Formula.parse("NaCl");
        assertNotEquals(formula, null);
        assertNotEquals((Object) formula, "NaCl");
    }

    @Test
    void formulasDifferInHashCode() {
        assertNotEquals(Formula.parse("NaCl").hashCode(), Formula.parse("KCl").hashCode());
    }

    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({
        "H3BO3,         B(OH)3",
        "HO-,           OH-",
        "CaSO4·2H2O,    CaSO4(H2O)2",
        "CaSO4·0.5H2O,  CaSO4·0.50H2O",
        "SO4^2-,        [SO4]2-",
    })
    void sameAtomsMayBeWrittenDifferently(String one, String other) {
        Formula a = Formula.parse(one);
        Formula b = Formula.parse(other);
        assertTrue(a.hasSameAtomsAs(b));
        assertTrue(b.hasSameAtomsAs(a));
        assertNotEquals(a, b);
    }

    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({"Ca, Ca^2+", "NO3-, NO2-", "CaSO4·2H2O, CaSO4", "Na+, K+", "PO4^3-, HPO4^2-", "Cl-, Cl+"})
    void otherAtomsOrAnotherChargeAreNotTheSame(String one, String other) {
        assertFalse(Formula.parse(one).hasSameAtomsAs(Formula.parse(other)));
        assertFalse(Formula.parse(other).hasSameAtomsAs(Formula.parse(one)));
    }

    @Test
    void groupsMayBeNestedTenDeep() {
        assertEquals(1, Formula.parse("(".repeat(10) + "Ca" + ")".repeat(10)).count(Element.CALCIUM));
    }

    @Test
    void groupsBesideEachOtherAreNotNested() {
        assertEquals(12, Formula.parse("(C)".repeat(12)).count(Element.CARBON));
    }

    @Test
    void textsMayHave200Characters() {
        assertEquals(200, Formula.parse("C".repeat(200)).count(Element.CARBON));
        UnreadableTextException e = assertThrows(UnreadableTextException.class, () -> Formula.parse("C".repeat(201)));
        assertEquals(
                "cannot read formula '" + "C".repeat(60) + "…': longer than 200 characters, at index 200",
                e.getMessage());
    }
}
