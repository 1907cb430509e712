package evenwater.chemistry.substance;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.testing.Refused;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Ions that a user defines, beside the constants. */
class OwnIonTest {

    private static final Ion LEAD = own("lead", "Pb^2+");
    private static final Ion ARSENATE_REFERENCE = own("dihydrogen arsenate", "H2AsO4-");

    private static Ion own(String name, String formula) {
        return Ion.of(name, Formula.parse(formula));
    }

    @Test
    void anOwnIonIsCountedAsItself() {
        assertAll(
                () -> assertEquals("lead", LEAD.name()),
                () -> assertEquals("Pb²⁺", LEAD.symbol()),
                () -> assertEquals(2, LEAD.chargeNumber()),
                () -> assertTrue(LEAD.isReferenceForm()),
                () -> assertSame(LEAD, LEAD.referenceForm()),
                () -> assertEquals(0, LEAD.alkalinityPerMole()));
    }

    @Test
    void anOwnAcidIsCountedInItsReferenceForm() {
        Ion arsenate = own("arsenate", "AsO4^3-").countedAs(ARSENATE_REFERENCE);
        assertAll(
                () -> assertEquals("arsenate", arsenate.name()),
                () -> assertEquals("AsO₄³⁻", arsenate.symbol()),
                () -> assertFalse(arsenate.isReferenceForm()),
                () -> assertEquals(ARSENATE_REFERENCE, arsenate.referenceForm()),
                () -> assertEquals(2, arsenate.alkalinityPerMole()));
    }

    static List<Ion> conservative() {
        return Ion.all().stream().filter(Ion::isReferenceForm).toList();
    }

    @ParameterizedTest
    @MethodSource("conservative")
    void anIonWrittenLikeAConstantIsThatConstant(Ion constant) {
        assertSame(constant, own("another name", constant.symbol()));
    }

    static List<Ion> acidsAndBases() {
        return Ion.all().stream()
                .filter(ion -> !ion.isReferenceForm() && !ion.referenceForm().equals(Ion.WATER))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("acidsAndBases")
    void anIonCountedLikeAConstantIsThatConstant(Ion constant) {
        Ion own = own("another name", constant.symbol());
        assertSame(constant, own);
        assertSame(constant, own.countedAs(constant.referenceForm()));
    }

    @Test
    void atomsAndChargeMakeAConstantNotNamesAndSpellings() {
        assertSame(Ion.BICARBONATE, own("bicarb", "HCO3-"));
        assertSame(Ion.BORIC_ACID, own("boric acid", "H3BO3"));
        assertSame(Ion.BARIUM, own("calcium", "Ba^2+"));
    }

    @Test
    void whatTakesElectronsIsNoAcidOrBase() {
        Ion dithionate = own("dithionate", "S2O6^2-");
        Ion disulfate = own("disulfate", "S2O7^2-");
        Refused.argument(
                "reference form of S₂O₆²⁻ must be reached by taking up or giving off H⁺ and H₂O alone, but was S₂O₇²⁻",
                () -> dithionate.countedAs(disulfate));
        Refused.argument(
                "reference form of NO₂⁻ must be reached by taking up or giving off H⁺ and H₂O alone, but was NO₃⁻",
                () -> Ion.NITRITE.countedAs(Ion.NITRATE));
    }

    @Test
    void ownIonsAreEqualIfSymbolAndReferenceFormAre() {
        Ion same = own("Blei", "Pb2+");
        assertEquals(LEAD, same);
        assertEquals(LEAD.hashCode(), same.hashCode());
        assertNotEquals(LEAD, own("lead", "Pb^4+"));
        Ion hydrogenArsenate = own("hydrogen arsenate", "HAsO4^2-");
        Ion counted = hydrogenArsenate.countedAs(ARSENATE_REFERENCE);
        assertNotEquals(hydrogenArsenate, counted);
        assertEquals(counted, own("x", "HAsO4-2").countedAs(ARSENATE_REFERENCE));
        assertEquals(
                counted.hashCode(),
                own("x", "HAsO4-2").countedAs(ARSENATE_REFERENCE).hashCode());
        assertNotEquals(hydrogenArsenate.hashCode(), counted.hashCode());
    }

    @Test
    void anIonCountedAsItselfIsItsReferenceForm() {
        Ion counted = own("lead", "Pb^2+").countedAs(LEAD);
        assertEquals(LEAD, counted);
        assertTrue(counted.isReferenceForm());
        assertSame(Ion.CALCIUM, Ion.CALCIUM.countedAs(Ion.CALCIUM));
    }

    @Test
    void anIonCannotBeCountedAsOneThatIsCountedAsAnother() {
        assertEquals(
                "reference form of PO₄³⁻ must be its own reference form and not water, but was HPO₄²⁻",
                refused(() -> Ion.PHOSPHATE.countedAs(Ion.HYDROGEN_PHOSPHATE)));
    }

    @Test
    void anIonCannotBeCountedAsWater() {
        assertEquals(
                "reference form of H⁺ must be its own reference form and not water, but was H₂O",
                refused(() -> own("proton", "H+").countedAs(Ion.WATER)));
    }

    @Test
    void anIonCannotBeCountedAsOneWithOtherAtoms() {
        assertAll(
                () -> assertEquals(
                        "reference form of AsO₄³⁻ must have the same atoms but for H and O, but was H₂PO₄⁻",
                        refused(() -> own("arsenate", "AsO4^3-").countedAs(Ion.DIHYDROGEN_PHOSPHATE))),
                () -> assertEquals(
                        "reference form of P₂O₇⁴⁻ must have the same atoms but for H and O, but was H₂PO₄⁻",
                        refused(() -> own("diphosphate", "P2O7^4-").countedAs(Ion.DIHYDROGEN_PHOSPHATE))),
                () -> assertEquals(
                        "reference form of NaCO₃⁻ must have the same atoms but for H and O, but was CO₂",
                        refused(() -> own("sodium carbonate", "NaCO3-").countedAs(Ion.CARBON_DIOXIDE))));
    }

    private static String refused(Executable call) {
        return assertThrows(IllegalArgumentException.class, call).getMessage();
    }

    @Test
    void orderIsThatOfTheConstantsThenOwnIonsBySymbolAndReferenceForm() {
        Ion hydrogenArsenate = own("hydrogen arsenate", "HAsO4^2-");
        Ion counted = hydrogenArsenate.countedAs(ARSENATE_REFERENCE);
        List<Ion> expected = new ArrayList<>(Ion.all());
        expected.addAll(List.of(own("silver", "Ag+"), hydrogenArsenate, counted, ARSENATE_REFERENCE, LEAD));
        List<Ion> shuffled = new ArrayList<>(expected);
        Collections.shuffle(shuffled, new Random(7));
        Collections.sort(shuffled);
        assertEquals(expected, shuffled);
    }

    @Test
    void orderIsConsistentWithEquals() {
        List<Ion> ions = new ArrayList<>(Ion.all());
        ions.addAll(List.of(LEAD, own("Blei", "Pb2+"), ARSENATE_REFERENCE, own("x", "HCO3-"), own("y", "OH-")));
        for (Ion a : ions) {
            for (Ion b : ions) {
                assertEquals(a.equals(b), a.compareTo(b) == 0, () -> a + " and " + b);
                assertEquals(Integer.signum(a.compareTo(b)), -Integer.signum(b.compareTo(a)), () -> a + " and " + b);
            }
        }
    }

    @Test
    void nameAndFormulaAreNeeded() {
        Formula formula = Formula.parse("Pb^2+");
        assertAll(
                () -> assertEquals(
                        "name",
                        assertThrows(NullPointerException.class, () -> Ion.of(null, formula))
                                .getMessage()),
                () -> assertEquals(
                        "formula",
                        assertThrows(NullPointerException.class, () -> Ion.of("lead", null))
                                .getMessage()),
                () -> assertEquals(
                        "name of an ion must not be blank, but was ' '",
                        assertThrows(IllegalArgumentException.class, () -> Ion.of(" ", formula))
                                .getMessage()));
    }

    @Test
    void anIonTooHeavyForAUnitOfMassIsRefused() {
        assertEquals(
                "mass of U₉₉₉₉⁺ must be from 0.001 to 100000 g/mol, but was 2380061.97 g/mol",
                refused(() -> own("too heavy", "U9999^+")));
    }

    @ParameterizedTest
    @CsvSource({
        "hydrogen sulfate, HSO4-, SO₄²⁻, -1",
        "hydronium, H3O+, H₂O, -1",
        "carbonic acid, H2CO3, CO₂, 0",
        "phosphoric acid, H3PO4, H₂PO₄⁻, -1",
        "nitric acid, HNO3, NO₃⁻, -1"
    })
    void whatDiffersFromAConstantByProtonsIsCountedInItsForm(
            String name, String formula, String reference, int alkalinity) {
        Ion ion = own(name, formula);
        assertEquals(reference, ion.referenceForm().symbol());
        assertEquals(alkalinity, ion.alkalinityPerMole());
    }

    @Test
    void electronsAndWaterMakeAnotherIon() {
        for (String formula : List.of("SO3^2-", "PO3-", "BO2-", "S2O3^2-", "Pb^2+", "Cu+", "O2")) {
            Ion ion = own("own", formula);
            assertSame(ion.referenceForm(), ion, formula);
        }
    }
}
