package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.GRAIN_PER_US_GALLON;
import static evenwater.chemistry.quantity.MassConcentration.GRAM_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MICROGRAM_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class BasisTest {

    private static final Formula CALCIUM_CARBONATE = Formula.parse("CaCO3");

    /** For 100 mg/L as CaCO₃ of each ion with a charge: 100 / 50.043 meq/L times M / |z|, five digits behind the point. */
    private static final String AS_CALCIUM_CARBONATE = """
            Ca²⁺,     40.04356
            Mg²⁺,     24.28412
            Na⁺,      45.94049
            K⁺,       78.12881
            NH₄⁺,     36.04700
            Li⁺,      13.86807
            Sr²⁺,     87.54471
            Ba²⁺,    137.21200
            Fe²⁺,     55.79701
            Mn²⁺,     54.89079
            Zn²⁺,     65.32382
            Cu²⁺,     63.49140
            Al³⁺,     17.97254
            H⁺,        2.01427
            HCO₃⁻,   121.92714
            CO₃²⁻,    59.95644
            OH⁻,      33.98477
            Cl⁻,      70.83908
            SO₄²⁻,    95.97346
            NO₃⁻,    123.90144
            NO₂⁻,     91.93094
            F⁻,       37.96335
            Br⁻,     159.67068
            I⁻,      253.58192
            H₂PO₄⁻,  193.80533
            HPO₄²⁻,   95.89553
            PO₄³⁻,    63.25893
            B(OH)₄⁻, 157.54052
            H₃SiO₄⁻, 190.04656
            HS⁻,      66.07917
            S₂O₃²⁻,  112.02066
            C₂O₄²⁻,   87.94237
            C₆H₇O₇⁻, 381.90156
            C₆H₅O₇³⁻,125.95768
            """;

    @ParameterizedTest(name = "1 mg/L of {0} as {1} is {2} mg/L of {0}")
    @CsvSource({ // M of the ion over M of the basis for one mole of it; from the abridged weights, six digits
        "NO₃⁻,     N,        4.42664",
        "NO₂⁻,     N,        3.28443",
        "NH₄⁺,     N,        1.28786",
        "NH₄⁺,     NH3,      1.05919",
        "PO₄³⁻,    P,        3.06612",
        "PO₄³⁻,    P2O5,     1.33814",
        "SO₄²⁻,    S,        2.99613",
        "SO₄²⁻,    SO3,      1.19985",
        "SiO₂,     Si,       2.13933",
        "Ca²⁺,     CaO,      0.714696",
        "Ca²⁺,     Ca,       1",
        "Mg²⁺,     MgO,      0.603042",
        "K⁺,       K2O,      0.830150",
        "Fe²⁺,     Fe2O3,    0.699431",
        "B(OH)₃,   B,        5.71980",
        "HCO₃⁻,    C,        5.08001",
        "HCO₃⁻,    CO2,      1.38644",
        "C₆H₅O₇³⁻, C,        2.62397",
        "S₂O₃²⁻,   S,        1.74855",
        "NO₃⁻,     NO₃⁻,     1",
        "B(OH)₃,   H3BO3,    1",
    })
    void atomsOfTheBasisStandForIons(String symbol, String basis, double milligramsPerLitre) {
        Ion ion = Ion.parse(symbol);
        AmountConcentration one = AmountConcentration.of(1, ion.milligramPerLitreAs(Formula.parse(basis)));
        assertEquals(milligramsPerLitre, one.in(ion.milligramPerLitre()), 5e-6 * milligramsPerLitre);
    }

    @Test
    void oneMoleOfDiphosphorusPentoxideIsTwoMolesOfPhosphate() {
        double gramsPerMole = 141.943; // 2 · 30.974 + 5 · 15.999
        AmountConcentration c =
                AmountConcentration.of(gramsPerMole, Ion.PHOSPHATE.milligramPerLitreAs(Formula.parse("P2O5")));
        assertEquals(2, c.in(MILLIMOLE_PER_LITRE), 1e-15);
    }

    @ParameterizedTest(name = "100 mg/L as CaCO₃ is {1} mg/L of {0}")
    @CsvSource(textBlock = AS_CALCIUM_CARBONATE)
    void asCalciumCarbonateIsByEquivalents(String symbol, double milligramsPerLitre) {
        Ion ion = Ion.parse(symbol);
        AmountConcentration c = AmountConcentration.of(100, ion.milligramPerLitreAs(CALCIUM_CARBONATE));
        assertEquals(milligramsPerLitre, c.in(ion.milligramPerLitre()), 5e-6); // half of the last digit
    }

    @Test
    void everyIonWithAChargeIsInTheTable() {
        List<String> symbols =
                AS_CALCIUM_CARBONATE.lines().map(row -> row.split(",", -1)[0]).toList();
        assertEquals(
                Ion.all().stream()
                        .filter(ion -> ion.chargeNumber() != 0)
                        .map(Ion::symbol)
                        .toList(),
                symbols);
    }

    @Test
    void sodiumAsCalciumCarbonateIsNotMoleForMole() {
        AmountConcentration c = AmountConcentration.of(100, Ion.SODIUM.milligramPerLitreAs(CALCIUM_CARBONATE));
        assertEquals(45.94, c.in(Ion.SODIUM.milligramPerLitre()), 0.005); // half of the last digit
        double moleForMole = 100 / 100.086 * 22.990;
        assertEquals(22.97, moleForMole, 0.005);
        assertEquals(2 * moleForMole, c.in(Ion.SODIUM.milligramPerLitre()), 1e-13); // a few ulp
    }

    static List<Ion> neutral() {
        return Ion.all().stream().filter(ion -> ion.chargeNumber() == 0).toList();
    }

    @ParameterizedTest
    @MethodSource("neutral")
    void solutesWithoutAChargeAreNotExpressedAsCalciumCarbonate(Ion solute) {
        assertEquals(
                solute + " has no charge and so no amount as CaCO₃",
                refused(() -> solute.milligramPerLitreAs(CALCIUM_CARBONATE)));
    }

    @Test
    void aSoluteThatIsCalciumCarbonateIsItself() {
        Ion pair = Ion.of("calcium carbonate pair", Formula.parse("CaCO3"));
        AmountConcentration c = AmountConcentration.of(100.086, pair.milligramPerLitreAs(CALCIUM_CARBONATE));
        assertEquals(1, c.in(MILLIMOLE_PER_LITRE));
    }

    @ParameterizedTest(name = "{0} as {1}")
    @CsvSource({
        "NO₃⁻, P",
        "Na⁺, K",
        "Ca²⁺, MgO",
        "SO₄²⁻, O",
        "NH₄⁺, H",
        "OH⁻, H2O",
        "OH⁻, Ca(OH)2",
        "H⁺, H",
        "H₂O, H2",
    })
    void ionsThatShareNoElementWithTheBasisAreRefused(String symbol, String basis) {
        Ion ion = Ion.parse(symbol);
        Formula formula = Formula.parse(basis);
        assertEquals(
                ion + " cannot be expressed as " + formula + ": they share no element other than hydrogen and oxygen",
                refused(() -> ion.milligramPerLitreAs(formula)));
    }

    @ParameterizedTest(name = "{0} as {1}")
    @CsvSource({"SCN⁻, CS2", "SCN⁻, C2N", "MgCO₃, CaMg(CO3)2"})
    void ionsThatShareElementsInOtherRatiosAreRefused(String symbol, String basis) {
        Ion ion = Ion.of("own ion", Formula.parse(symbol));
        Formula formula = Formula.parse(basis);
        assertEquals(
                ion + " cannot be expressed as " + formula + ": their elements are in other ratios",
                refused(() -> ion.milligramPerLitreAs(formula)));
    }

    @Test
    void ionsMayShareSeveralElementsInOneRatio() {
        Ion thiocyanate = Ion.of("thiocyanate", Formula.parse("SCN-"));
        AmountConcentration c = AmountConcentration.of(
                116.16,
                thiocyanate.milligramPerLitreAs(Formula.parse("(SCN)2"))); // 2 · (32.06 + 12.011 + 14.007) = 116.156
        assertEquals(2, c.in(MILLIMOLE_PER_LITRE), 1e-4); // 116.16 is rounded
    }

    @Test
    void anElementIsABasisLikeItsFormula() {
        assertEquals(
                Ion.NITRATE.milligramPerLitreAs(Formula.parse("N")), Ion.NITRATE.milligramPerLitreAs(Element.NITROGEN));
    }

    @Test
    void unitsCarryTheBasisInTheirSymbol() {
        assertEquals("mg/L NO₃⁻", Ion.NITRATE.milligramPerLitre().toString());
        assertEquals("mg/L N", Ion.NITRATE.milligramPerLitreAs(Element.NITROGEN).toString());
        assertEquals(
                "mg/L CaCO₃", Ion.CALCIUM.milligramPerLitreAs(CALCIUM_CARBONATE).toString());
        assertEquals(
                "µg/L Fe²⁺",
                Ion.IRON_II.unit(MICROGRAM_PER_LITRE, Ion.IRON_II.formula()).toString());
    }

    @Test
    void massesPerVolumeOfAnyUnitMayBeTheBasis() {
        AmountConcentration grams =
                AmountConcentration.of(0.040078, Ion.CALCIUM.unit(GRAM_PER_LITRE, Formula.parse("Ca")));
        assertEquals(1, grams.in(MILLIMOLE_PER_LITRE), 2e-16); // two roundings
        AmountConcentration grains =
                AmountConcentration.of(10, Ion.CALCIUM.unit(GRAIN_PER_US_GALLON, CALCIUM_CARBONATE));
        assertEquals(1.710335, grains.in(MILLIMOLE_PER_LITRE), 5e-7); // 10 · 17.118061 / 100.086, seven digits
    }

    @Test
    void ofItselfIsTheSameUnitAsItsOwnFormula() {
        for (Ion ion : Ion.all()) {
            assertEquals(ion.milligramPerLitre(), ion.unit(MILLIGRAM_PER_LITRE, ion.formula()));
        }
    }

    @Test
    void everyIonButThoseOfWaterCanBeExpressedAsEachOfItsElements() {
        int combinations = 0;
        for (Ion ion : Ion.all()) {
            for (Element element : ion.formula().elements()) {
                if (element != Element.HYDROGEN && element != Element.OXYGEN) {
                    AmountConcentration c = AmountConcentration.of(1, ion.milligramPerLitreAs(element));
                    assertTrue(c.in(ion.milligramPerLitre()) >= 1, () -> ion + " as " + element);
                    combinations++;
                }
            }
        }
        assertEquals(Ion.all().size() - 3, combinations); // each has one such element, water, H⁺ and OH⁻ have none
    }

    private static String refused(Executable call) {
        return assertThrows(IllegalArgumentException.class, call).getMessage();
    }

    @Test
    void aBasisWithNitrogenOfTwoKindsIsRefused() {
        for (Ion ion : new Ion[] {Ion.NITRATE, Ion.AMMONIUM}) {
            assertEquals(
                    ion + " cannot be expressed as NH₄NO₃: its nitrogen is of two kinds, as N or as itself it can",
                    refused(() -> ion.milligramPerLitreAs(Formula.parse("NH4NO3"))));
        }
        assertEquals(
                2 * 62.004 / 108.009,
                Ion.NITRATE
                        .milligramPerLitreAs(Formula.parse("N2O5"))
                        .getConverterTo(Ion.NITRATE.milligramPerLitre())
                        .convert(1.0),
                1e-12); // N₂O₅ is 108.009 g/mol
    }

    @Test
    void aMassOfAnotherSubstanceIsNoConcentrationOfAnIon() {
        AmountConcentration sodium = AmountConcentration.of(100, Ion.SODIUM.milligramPerLitre());
        assertEquals(
                "100 mg/L Na⁺ is no concentration of calcium: Ca²⁺ cannot be expressed as Na⁺: they share no element other "
                        + "than hydrogen and oxygen",
                refused(() -> Ion.CALCIUM.concentration(sodium)));
        AmountConcentration asCalciumCarbonate =
                AmountConcentration.of(100, Ion.SODIUM.milligramPerLitreAs(Formula.parse("CaCO3")));
        assertTrue(refused(() -> Ion.CALCIUM.concentration(asCalciumCarbonate))
                .startsWith("100 mg/L CaCO₃ is no concentration of calcium: its unit takes 50.043"));
        assertSame(sodium, Ion.SODIUM.concentration(sodium));
        AmountConcentration nitrogen = AmountConcentration.of(1, Ion.NITRATE.milligramPerLitreAs(Element.NITROGEN));
        assertSame(nitrogen, Ion.AMMONIUM.concentration(nitrogen)); // a gram of N is a gram of N
        AmountConcentration moles = AmountConcentration.of(1, AmountConcentration.MILLIMOLE_PER_LITRE);
        assertSame(moles, Ion.CALCIUM.concentration(moles));
        AmountConcentration words = AmountConcentration.of(
                1, AmountConcentration.ofMass(MILLIGRAM_PER_LITRE, "of the lab", Ion.CALCIUM.molarMass()));
        assertSame(words, Ion.CALCIUM.concentration(words));
        assertEquals(Optional.of("Na⁺"), sodium.basis());
        assertEquals(22.990, sodium.basisPerMole().orElseThrow().in(MolarMass.GRAM_PER_MOLE), 0.0005);
        assertTrue(moles.basis().isEmpty() && moles.basisPerMole().isEmpty());
    }

    @Test
    void watersAndChangesRefuseIt() {
        AmountConcentration sodium = AmountConcentration.of(100, Ion.SODIUM.milligramPerLitre());
        for (Executable call : List.<Executable>of(
                () -> Water.builder().total(Ion.CALCIUM, sodium),
                () -> LabReport.builder().total(Ion.CALCIUM, sodium),
                () -> LabReport.builder().totalBelow(Ion.CALCIUM, sodium),
                () -> LabReport.builder().totalBetween(Ion.CALCIUM, sodium, sodium),
                () -> Change.of(Map.of(Ion.CALCIUM, sodium)),
                () -> Change.exchanging(Ion.CALCIUM, Ion.SODIUM, sodium),
                () -> Ion.CALCIUM.equivalents(sodium))) {
            assertTrue(refused(call).startsWith("100 mg/L Na⁺ is no concentration of calcium"));
        }
    }
}
