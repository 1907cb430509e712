package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.MolarMass.GRAM_PER_MOLE;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openscience.cdk.interfaces.IIsotope;
import org.openscience.cdk.interfaces.IMolecularFormula;
import org.openscience.cdk.silent.SilentChemObjectBuilder;
import org.openscience.cdk.tools.manipulator.MolecularFormulaManipulator;

/** Compares formulas with an independent library that reads formulas and sums masses of isotopes. */
class FormulaMassTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource({ // ours, then the other library's spelling
        "H2O,                      H2O",
        "NaCl,                     NaCl",
        "KCl,                      KCl",
        "CaCO3,                    CaCO3",
        "CaO,                      CaO",
        "Ca(OH)2,                  Ca(OH)2",
        "Ca(HCO3)2,                Ca(HCO3)2",
        "Mg(HCO3)2,                Mg(HCO3)2",
        "CaMg(CO3)2,               CaMg(CO3)2",
        "Mg5(CO3)4(OH)2·4H2O,      Mg5(CO3)4(OH)2.(H2O)4",
        "CaCl2,                    CaCl2",
        "CaCl2·2H2O,               CaCl2.(H2O)2",
        "CaCl2*6H2O,               CaCl2.(H2O)6",
        "MgCl2·6H2O,               MgCl2.(H2O)6",
        "MgSO4·7H2O,               MgSO4.(H2O)7",
        "CaSO4·2H2O,               CaSO4.(H2O)2",
        "Ca(NO3)2·4H2O,            Ca(NO3)2.(H2O)4",
        "NaHCO3,                   NaHCO3",
        "Na2CO3·10H2O,             Na2CO3.(H2O)10",
        "K2CO3,                    K2CO3",
        "K2HPO4,                   K2HPO4",
        "KH2PO4,                   KH2PO4",
        "H3PO4,                    H3PO4",
        "H2SO4,                    H2SO4",
        "HCl,                      HCl",
        "NaOH,                     NaOH",
        "NH4Cl,                    NH4Cl",
        "(NH4)2SO4,                (NH4)2SO4",
        "(NH4)2Fe(SO4)2·6H2O,      (NH4)2Fe(SO4)2.(H2O)6",
        "KAl(SO4)2·12H2O,          KAl(SO4)2.(H2O)12",
        "Al2(SO4)3·18H2O,          Al2(SO4)3.(H2O)18",
        "FeCl3·6H2O,               FeCl3.(H2O)6",
        "CuSO4·5H2O,               CuSO4.(H2O)5",
        "Na2S2O3·5H2O,             Na2S2O3.(H2O)5",
        "SrCl2·6H2O,               SrCl2.(H2O)6",
        "BaCl2·2H2O,               BaCl2.(H2O)2",
        "H3BO3,                    H3BO3",
        "B(OH)3,                   B(OH)3",
        "NaF,                      NaF",
        "KBr,                      KBr",
        "KI,                       KI",
        "KMnO4,                    KMnO4",
        "ZnSO4·7H2O,               ZnSO4.(H2O)7",
        "LiCl,                     LiCl",
        "Na2SiO3,                  Na2SiO3",
        "C6H8O7,                   C6H8O7",
        "C2H2O4·2H2O,              C2H2O4.(H2O)2",
        "K4[Fe(CN)6]·3H2O,         K4Fe(CN)6.(H2O)3",
        "SO4^2-,                   [SO4]2-",
        "H2PO4-,                   [H2PO4]-",
        "NH4+,                     [NH4]+",
        "[Fe(CN)6]4-,              [Fe(CN)6]4-",
    })
    void compositionAndMassAgreeWithAnotherLibrary(String text, String otherText) {
        Formula formula = Formula.parse(text);
        IMolecularFormula other = other(otherText);
        int otherCharge = other.getCharge() == null ? 0 : other.getCharge();
        assertAll(
                () -> assertEquals(composition(other, 1), composition(formula)),
                () -> assertEquals(otherCharge, formula.chargeNumber()),
                () -> assertEquals(mass(other), formula.molarMass().in(GRAM_PER_MOLE), spread(formula)));
    }

    /** The other library counts whole atoms only, so two formula units are compared. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "CaSO4·0.5H2O,             Ca2S2O8.H2O",
        "CuSO4·3Cu(OH)2·0.5H2O,    Cu2S2O8.(Cu(OH)2)6.H2O",
        "Na2CO3·1.5H2O2,           Na4C2O6.(H2O2)3",
    })
    void halfPartsAgreeWithTwoFormulaUnitsOfAnotherLibrary(String text, String twoUnits) {
        Formula formula = Formula.parse(text);
        IMolecularFormula other = other(twoUnits);
        assertAll(
                () -> assertEquals(composition(other, 2), composition(formula)),
                () -> assertEquals(mass(other) / 2, formula.molarMass().in(GRAM_PER_MOLE), spread(formula)));
    }

    private static IMolecularFormula other(String text) {
        IMolecularFormula formula =
                MolecularFormulaManipulator.getMolecularFormula(text, SilentChemObjectBuilder.getInstance());
        assertNotNull(formula, "the other library cannot read " + text);
        return formula;
    }

    private static Map<String, Double> composition(Formula formula) {
        Map<String, Double> atoms = new TreeMap<>();
        formula.elements().forEach(e -> atoms.put(e.symbol(), formula.count(e)));
        return atoms;
    }

    private static Map<String, Double> composition(IMolecularFormula formula, int units) {
        Map<String, Double> atoms = new TreeMap<>();
        for (IIsotope isotope : formula.isotopes()) {
            atoms.merge(isotope.getSymbol(), (double) formula.getIsotopeCount(isotope) / units, Double::sum);
        }
        return atoms;
    }

    private static double mass(IMolecularFormula formula) {
        return MolecularFormulaManipulator.getMass(formula, MolecularFormulaManipulator.MolWeight);
    }

    /** The uncertainty of each weight, and half of it again for the rounding of its last digit. */
    private static double spread(Formula formula) {
        return formula.elements().stream()
                .mapToDouble(e -> 1.5 * formula.count(e) * e.uncertainty().in(GRAM_PER_MOLE))
                .sum();
    }
}
