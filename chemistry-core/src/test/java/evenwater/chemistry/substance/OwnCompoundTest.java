package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.EquivalentMass.GRAM_PER_EQUIVALENT;
import static evenwater.chemistry.quantity.MolarMass.GRAM_PER_MOLE;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.testing.Refused;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Compounds that a user defines, beside those of the table. */
class OwnCompoundTest {

    private static final Ion LEAD = Ion.of("lead", Formula.parse("Pb^2+"));
    private static final Map<Ion, Integer> SALT = Map.of(Ion.SODIUM, 1, Ion.CHLORIDE, 1);
    private static final Compound LEAD_CHLORIDE = own("lead chloride", "PbCl2", Map.of(Ion.CHLORIDE, 2, LEAD, 1));

    private static Compound own(String name, String formula, Map<Ion, Integer> ions) {
        return Compound.of(name, Formula.parse(formula), ions);
    }

    private static String refused(String name, String formula, Map<Ion, Integer> ions) {
        return assertThrows(IllegalArgumentException.class, () -> own(name, formula, ions))
                .getMessage();
    }

    @Test
    void anOwnCompoundAnswersLikeOneOfTheTable() {
        assertAll(
                () -> assertEquals("lead chloride", LEAD_CHLORIDE.name()),
                () -> assertEquals("PbCl₂", LEAD_CHLORIDE.formula().toString()),
                () -> assertEquals("lead chloride PbCl₂", LEAD_CHLORIDE.toString()),
                () -> assertEquals("{Cl⁻=2, Pb²⁺=1}", LEAD_CHLORIDE.ions().toString()),
                () -> assertEquals(278.1, LEAD_CHLORIDE.molarMass().in(GRAM_PER_MOLE)),
                () -> assertEquals(139.05, LEAD_CHLORIDE.equivalentMass(LEAD).in(GRAM_PER_EQUIVALENT)),
                () -> assertEquals(Optional.empty(), LEAD_CHLORIDE.solubility()),
                () -> assertEquals(Optional.empty(), LEAD_CHLORIDE.teaspoon()),
                () -> assertEquals("", LEAD_CHLORIDE.caution()));
    }

    @Test
    void partsCanBeAdded() {
        Solubility solubility = new Solubility(
                WaterUnits.share(9.9, WaterUnits.GRAM_PER_KILOGRAM),
                LEAD_CHLORIDE.formula(),
                WaterUnits.temperature(20, WaterUnits.CELSIUS),
                "an example");
        LevelTeaspoon teaspoon = new LevelTeaspoon(
                WaterUnits.mass(12, WaterUnits.GRAM), WaterUnits.share(20, WaterUnits.PERCENT), "an example");
        Compound complete = LEAD_CHLORIDE.with(solubility).with(teaspoon).withCaution("toxic");
        assertAll(
                () -> assertEquals(Optional.of(solubility), complete.solubility()),
                () -> assertEquals(Optional.of(teaspoon), complete.teaspoon()),
                () -> assertEquals("toxic", complete.caution()),
                () -> assertEquals(LEAD_CHLORIDE.formula(), complete.formula()),
                () -> assertEquals(LEAD_CHLORIDE.ions(), complete.ions()),
                () -> assertEquals(Optional.empty(), LEAD_CHLORIDE.solubility()));
        Compound other = LEAD_CHLORIDE.withCaution("toxic").with(teaspoon).with(solubility);
        assertAll(
                () -> assertEquals(Optional.of(solubility), other.solubility()),
                () -> assertEquals(Optional.of(teaspoon), other.teaspoon()),
                () -> assertEquals("toxic", other.caution()));
    }

    @Test
    void compoundsAreEqualIfNameFormulaAndIonsAre() {
        Compound salt = own("sodium chloride", "NaCl", SALT);
        assertEquals(Compound.SODIUM_CHLORIDE, salt);
        assertEquals(Compound.SODIUM_CHLORIDE.hashCode(), salt.hashCode());
        assertEquals(salt, salt.withCaution("another caution"));
        assertNotEquals(salt, own("halite", "NaCl", SALT));
        assertNotEquals(salt.hashCode(), own("halite", "NaCl", SALT).hashCode());
        assertNotEquals(salt, own("sodium chloride", "ClNa", SALT));
        Ion pair = Ion.of("ion pair", Formula.parse("NaCl"));
        assertNotEquals(salt, own("sodium chloride", "NaCl", Map.of(pair, 1)));
    }

    @Test
    void ionsAreCopied() {
        Map<Ion, Integer> ions = new HashMap<>(SALT);
        Compound salt = own("salt", "NaCl", ions);
        ions.put(Ion.SODIUM, 7);
        assertEquals(SALT, salt.ions());
    }

    @Test
    void waterMayBeTakenUpOrSetFree() {
        Map<Ion, Integer> lime = Map.of(Ion.CALCIUM, 1, Ion.HYDROXIDE, 2);
        assertEquals(lime, own("quicklime", "CaO", lime).ions());
        assertEquals(SALT, own("hydrohalite", "NaCl·2H2O", SALT).ions());
        Map<Ion, Integer> acid = Map.of(Ion.HYDROGEN, 2, Ion.SULFATE, 1);
        assertEquals(acid, own("sulfur trioxide", "SO3", acid).ions());
        Map<Ion, Integer> halves = Map.of(Ion.CALCIUM, 2, Ion.SULFATE, 2);
        assertEquals(halves, own("bassanite", "Ca2(SO4)2·1H2O", halves).ions());
    }

    @Test
    void neutralSolutesMayBeSetFree() {
        Map<Ion, Integer> gas = Map.of(Ion.AMMONIA, 1);
        assertEquals(gas, own("ammonia", "NH3", gas).ions());
        assertEquals(
                Map.of(Ion.SILICA, 1),
                own("silica gel", "SiO2·0.5H2O", Map.of(Ion.SILICA, 1)).ions());
    }

    @Test
    void compoundsHaveNoCharge() {
        assertEquals(
                "bicarbonate HCO₃⁻ is no compound: it has a charge of -1",
                refused("bicarbonate", "HCO3-", Map.of(Ion.BICARBONATE, 1)));
    }

    @Test
    void compoundsSetSomethingFree() {
        assertEquals("salt NaCl sets no ions or solutes free", refused("salt", "NaCl", Map.of()));
    }

    @Test
    void numbersOfIonsAreOneOrMore() {
        assertEquals(
                "number of Cl⁻ in salt NaCl must be 1 or more, but was 0",
                refused("salt", "NaCl", Map.of(Ion.SODIUM, 1, Ion.CHLORIDE, 0)));
        assertEquals(
                "number of Na⁺ in salt NaCl must be 1 or more, but was -1",
                refused("salt", "NaCl", Map.of(Ion.SODIUM, -1, Ion.CHLORIDE, 1)));
    }

    @Test
    void chargesOfIonsMustCancel() {
        assertEquals(
                "ions of salt CaCl₂ must cancel in charge, but {Ca²⁺=1, Cl⁻=1} carry 1",
                refused("salt", "CaCl2", Map.of(Ion.CALCIUM, 1, Ion.CHLORIDE, 1)));
        assertEquals(
                "ions of soda NaHCO₃ must cancel in charge, but {Na⁺=1, CO₃²⁻=1} carry -1",
                refused("soda", "NaHCO3", Map.of(Ion.SODIUM, 1, Ion.CARBONATE, 1)));
    }

    @Test
    void atomsMustBeFoundAgain() {
        assertEquals(
                "ions of salt KCl must have its atoms, but Na does not match in {Na⁺=1, Cl⁻=1}",
                refused("salt", "KCl", SALT));
        assertEquals(
                "ions of salt NaCl must have its atoms, but Na does not match in {Na⁺=2, Cl⁻=2}",
                refused("salt", "NaCl", Map.of(Ion.SODIUM, 2, Ion.CHLORIDE, 2)));
        assertEquals(
                "ions of chalk CaCO₃ must have its atoms, but C does not match in {Ca²⁺=1, OH⁻=2}",
                refused("chalk", "CaCO3", Map.of(Ion.CALCIUM, 1, Ion.HYDROXIDE, 2)));
    }

    @Test
    void hydrogenAndOxygenMustDifferByWater() {
        assertEquals(
                "ions of peroxide Na₂O₂ must differ from it by water alone, but hydrogen and oxygen do not match in "
                        + "{Na⁺=2, OH⁻=2}",
                refused("peroxide", "Na2O2", Map.of(Ion.SODIUM, 2, Ion.HYDROXIDE, 2)));
        assertEquals(
                "ions of sulfite Na₂SO₃ must differ from it by water alone, but hydrogen and oxygen do not match in "
                        + "{Na⁺=2, SO₄²⁻=1}",
                refused("sulfite", "Na2SO3", Map.of(Ion.SODIUM, 2, Ion.SULFATE, 1)));
    }

    @Test
    void partsAreNeeded() {
        Formula formula = Formula.parse("NaCl");
        assertAll(
                () -> assertEquals("name", nullRefused(() -> Compound.of(null, formula, SALT))),
                () -> assertEquals("formula", nullRefused(() -> Compound.of("salt", null, SALT))),
                () -> assertEquals("caution", nullRefused(() -> LEAD_CHLORIDE.withCaution(null))),
                () -> assertThrows(NullPointerException.class, () -> Compound.of("salt", formula, null)));
    }

    private static String nullRefused(Executable call) {
        return assertThrows(NullPointerException.class, call).getMessage();
    }

    @Test
    void whatIsSoldMayBeWeaker() {
        Compound acid = Compound.HYDROCHLORIC_ACID.ofStrength(0.31);
        assertEquals(0.31, acid.strength());
        assertEquals(1, Compound.HYDROCHLORIC_ACID.strength());
        assertEquals("hydrochloric acid 31 %", acid.name());
        assertEquals("hydrochloric acid 31 % HCl", acid.toString());
        assertEquals(Compound.HYDROCHLORIC_ACID.molarMass(), acid.molarMass());
        assertEquals(Compound.HYDROCHLORIC_ACID.caution(), acid.caution());
        assertEquals(acid, Compound.HYDROCHLORIC_ACID.ofStrength(0.31));
        assertNotEquals(acid, Compound.HYDROCHLORIC_ACID);
        assertEquals(0.31, acid.withCaution("").strength());
        for (double wrong : new double[] {0, -0.1, 1.01, Double.NaN}) {
            Refused.argument(
                    "strength of hydrochloric acid must be above 0 and at most 1, but was " + wrong,
                    () -> Compound.HYDROCHLORIC_ACID.ofStrength(wrong));
        }
    }
}
