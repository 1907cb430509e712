package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.EquivalentMass.GRAM_PER_EQUIVALENT;
import static evenwater.chemistry.quantity.MolarMass.GRAM_PER_MOLE;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.WaterUnits;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CompoundTest {

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/substances.csv", useHeadersInDisplayName = true)
    void rowsAreThoseOfTheReference(
            String name,
            String formula,
            double gramsPerMole,
            Double gramsPerKilogram,
            String basis,
            Double gramsPerTeaspoon,
            String caution) {
        Compound compound = Compound.named(formula);
        assertAll(
                () -> assertEquals(name.replaceFirst(" \\(.*", ""), compound.name()),
                () -> assertEquals(gramsPerMole, compound.molarMass().in(GRAM_PER_MOLE), 6e-4), // rounded there
                () -> assertEquals(
                        gramsPerKilogram,
                        compound.solubility()
                                .map(s -> s.massPerMassOfWater().in(WaterUnits.GRAM_PER_KILOGRAM))
                                .orElse(null)),
                () -> assertEquals(
                        gramsPerTeaspoon,
                        compound.teaspoon()
                                .map(t -> t.mass().in(WaterUnits.GRAM))
                                .orElse(null)),
                () -> assertEquals(caution == null ? "" : caution.replace(';', ','), compound.caution()));
    }

    /** Each constant with what it sets free. */
    private static final String IONS = """
            CALCIUM_CHLORIDE_ANHYDROUS,      CaCl2,         '{Ca²⁺=1, Cl⁻=2}'
            CALCIUM_CHLORIDE_DIHYDRATE,      CaCl2·2H2O,    '{Ca²⁺=1, Cl⁻=2}'
            CALCIUM_SULFATE_DIHYDRATE,       CaSO4·2H2O,    '{Ca²⁺=1, SO₄²⁻=1}'
            CALCIUM_SULFATE_HEMIHYDRATE,     CaSO4·0.5H2O,  '{Ca²⁺=1, SO₄²⁻=1}'
            CALCIUM_CARBONATE,               CaCO3,         '{Ca²⁺=1, CO₃²⁻=1}'
            CALCIUM_HYDROXIDE,               Ca(OH)2,       '{Ca²⁺=1, OH⁻=2}'
            CALCIUM_NITRATE_TETRAHYDRATE,    Ca(NO3)2·4H2O, '{Ca²⁺=1, NO₃⁻=2}'
            MAGNESIUM_CHLORIDE_HEXAHYDRATE,  MgCl2·6H2O,    '{Mg²⁺=1, Cl⁻=2}'
            MAGNESIUM_SULFATE_HEPTAHYDRATE,  MgSO4·7H2O,    '{Mg²⁺=1, SO₄²⁻=1}'
            MAGNESIUM_SULFATE_ANHYDROUS,     MgSO4,         '{Mg²⁺=1, SO₄²⁻=1}'
            MAGNESIUM_CARBONATE,             MgCO3,         '{Mg²⁺=1, CO₃²⁻=1}'
            MAGNESIUM_OXIDE,                 MgO,           '{Mg²⁺=1, OH⁻=2}'
            MAGNESIUM_HYDROXIDE,             Mg(OH)2,       '{Mg²⁺=1, OH⁻=2}'
            DOLOMITE,                        CaMg(CO3)2,    '{Ca²⁺=1, Mg²⁺=1, CO₃²⁻=2}'
            SODIUM_BICARBONATE,              NaHCO3,        '{Na⁺=1, HCO₃⁻=1}'
            SODIUM_CARBONATE_ANHYDROUS,      Na2CO3,        '{Na⁺=2, CO₃²⁻=1}'
            SODIUM_CARBONATE_DECAHYDRATE,    Na2CO3·10H2O,  '{Na⁺=2, CO₃²⁻=1}'
            POTASSIUM_BICARBONATE,           KHCO3,         '{K⁺=1, HCO₃⁻=1}'
            POTASSIUM_CARBONATE,             K2CO3,         '{K⁺=2, CO₃²⁻=1}'
            POTASSIUM_CHLORIDE,              KCl,           '{K⁺=1, Cl⁻=1}'
            SODIUM_CHLORIDE,                 NaCl,          '{Na⁺=1, Cl⁻=1}'
            POTASSIUM_SULFATE,               K2SO4,         '{K⁺=2, SO₄²⁻=1}'
            SODIUM_SULFATE,                  Na2SO4,        '{Na⁺=2, SO₄²⁻=1}'
            POTASSIUM_NITRATE,               KNO3,          '{K⁺=1, NO₃⁻=1}'
            POTASSIUM_DIHYDROGEN_PHOSPHATE,  KH2PO4,        '{K⁺=1, H₂PO₄⁻=1}'
            DIPOTASSIUM_HYDROGEN_PHOSPHATE,  K2HPO4,        '{K⁺=2, HPO₄²⁻=1}'
            SODIUM_HYDROXIDE,                NaOH,          '{Na⁺=1, OH⁻=1}'
            HYDROCHLORIC_ACID,               HCl,           '{H⁺=1, Cl⁻=1}'
            SULFURIC_ACID,                   H2SO4,         '{H⁺=2, SO₄²⁻=1}'
            PHOSPHORIC_ACID,                 H3PO4,         '{H⁺=1, H₂PO₄⁻=1}'
            AMMONIUM_CHLORIDE,               NH4Cl,         '{NH₄⁺=1, Cl⁻=1}'
            SODIUM_THIOSULFATE_PENTAHYDRATE, Na2S2O3·5H2O,  '{Na⁺=2, S₂O₃²⁻=1}'
            BORIC_ACID,                      H3BO3,         '{B(OH)₃=1}'
            STRONTIUM_CHLORIDE_HEXAHYDRATE,  SrCl2·6H2O,    '{Sr²⁺=1, Cl⁻=2}'
            POTASSIUM_BROMIDE,               KBr,           '{K⁺=1, Br⁻=1}'
            SODIUM_FLUORIDE,                 NaF,           '{Na⁺=1, F⁻=1}'
            CITRIC_ACID_ANHYDROUS,           C6H8O7,        '{H⁺=1, C₆H₇O₇⁻=1}'
            OXALIC_ACID_DIHYDRATE,           C2H2O4·2H2O,   '{H⁺=2, C₂O₄²⁻=1}'
            COPPER_SULFATE_PENTAHYDRATE,     CuSO4·5H2O,    '{Cu²⁺=1, SO₄²⁻=1}'
            """;

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = IONS)
    void constantsSetTheirIonsFree(String constant, String formula, String ions) throws ReflectiveOperationException {
        Compound compound = (Compound) Compound.class.getField(constant).get(null);
        assertAll(
                () -> assertEquals(constant.toLowerCase(Locale.ROOT).replace('_', ' '), compound.name()),
                () -> assertEquals(Formula.parse(formula), compound.formula()),
                () -> assertEquals(ions, compound.ions().toString()),
                () -> assertSame(compound, Compound.named(compound.name())),
                () -> assertSame(compound, Compound.named(formula)),
                () -> assertEquals(compound.name() + " " + compound.formula(), compound.toString()));
    }

    @Test
    void allHasTheConstantsInOrder() throws ReflectiveOperationException {
        List<Compound> fields = new ArrayList<>();
        for (String row : IONS.lines().toList()) {
            fields.add((Compound) Compound.class.getField(row.split(",", -1)[0]).get(null));
        }
        assertEquals(fields, Compound.all());
        long constants = Arrays.stream(Compound.class.getFields())
                .filter(f -> Modifier.isStatic(f.getModifiers()) && f.getType() == Compound.class)
                .count();
        assertEquals(constants, Compound.all().size());
        assertThrows(UnsupportedOperationException.class, () -> Compound.all().remove(0));
    }

    static List<Compound> all() {
        return Compound.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void chargesOfTheIonsCancel(Compound compound) {
        assertEquals(
                0,
                compound.ions().entrySet().stream()
                        .mapToInt(e -> e.getKey().chargeNumber() * e.getValue())
                        .sum());
    }

    @ParameterizedTest(name = "{0}: {1} eq/mol")
    @CsvSource({ // an acid takes alkalinity, a base brings it
        "HCl, -1",
        "H2SO4, -2",
        "H3PO4, -1",
        "C6H8O7, -1",
        "C2H2O4·2H2O, -2",
        "NaOH, 1",
        "MgO, 2",
        "Ca(OH)2, 2",
        "NaHCO3, 1",
        "CaCO3, 2",
        "CaMg(CO3)2, 4",
        "NH4Cl, 0",
        "KH2PO4, 0",
        "K2HPO4, 1",
        "H3BO3, 0",
        "CaCl2, 0",
        "Na2S2O3·5H2O, 0"
    })
    void compoundsBringTheAlkalinityOfTheirIons(String formula, int alkalinity) {
        assertEquals(
                alkalinity,
                Compound.named(formula).ions().entrySet().stream()
                        .mapToInt(e -> e.getKey().alkalinityPerMole() * e.getValue())
                        .sum());
    }

    @ParameterizedTest(name = "{0} by {1}: {2} g/eq")
    @CsvSource({ // molar mass over charges, from the abridged weights by hand
        "CaCO3,        Ca²⁺,    50.043",
        "CaCO3,        CO₃²⁻,   50.043",
        "CaCl2,        Ca²⁺,    55.489",
        "CaCl2,        Cl⁻,     55.489",
        "MgSO4·7H2O,   Mg²⁺,    123.233",
        "Na2CO3,       Na⁺,     52.994",
        "Na2CO3,       CO₃²⁻,   52.994",
        "NaHCO3,       HCO₃⁻,   84.006",
        "NaCl,         Na⁺,     58.44",
        "CaMg(CO3)2,   Ca²⁺,    92.1995",
        "CaMg(CO3)2,   CO₃²⁻,   46.09975",
        "MgO,          OH⁻,     20.152",
        "H2SO4,        H⁺,      49.036",
        "H3PO4,        H⁺,      97.994",
        "H3PO4,        H₂PO₄⁻,  97.994",
        "K2HPO4,       HPO₄²⁻,  87.087",
    })
    void equivalentMassIsThatOfTheNamedExchange(String formula, String ion, double gramsPerEquivalent) {
        assertEquals(
                gramsPerEquivalent,
                Compound.named(formula).equivalentMass(Ion.parse(ion)).in(GRAM_PER_EQUIVALENT),
                1e-13); // summed and divided in another order: a few ulp
    }

    @Test
    void equivalentMassNeedsAnIonOfTheCompound() {
        IllegalArgumentException e = assertThrows(
                IllegalArgumentException.class, () -> Compound.CALCIUM_CARBONATE.equivalentMass(Ion.MAGNESIUM));
        assertEquals(
                "calcium carbonate sets free [Ca²⁺, CO₃²⁻], not Mg²⁺, so it has no equivalent mass for it",
                e.getMessage());
    }

    @Test
    void equivalentMassNeedsACharge() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> Compound.BORIC_ACID.equivalentMass(Ion.BORIC_ACID));
        assertEquals("B(OH)₃ has no charge and so no equivalent mass", e.getMessage());
    }

    @Test
    void ionsAreInTheirOrderAndCannotBeChanged() {
        Map<Ion, Integer> ions = Compound.DOLOMITE.ions();
        assertEquals(List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.CARBONATE), List.copyOf(ions.keySet()));
        assertThrows(UnsupportedOperationException.class, () -> ions.put(Ion.SODIUM, 1));
    }

    @Test
    void compoundsOfTheTableDifferFromEachOther() {
        assertEquals(
                Compound.all().size(),
                Compound.all().stream().collect(Collectors.toSet()).size());
        assertNotEquals(Compound.DOLOMITE, null);
        assertNotEquals((Object) Compound.DOLOMITE, "dolomite CaMg(CO₃)₂");
    }
}
