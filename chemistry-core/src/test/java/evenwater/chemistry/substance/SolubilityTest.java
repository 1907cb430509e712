package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.WaterUnits.CELSIUS;
import static evenwater.chemistry.quantity.WaterUnits.GRAM_PER_KILOGRAM;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SolubilityTest {

    private static Solubility of(double gramsPerKilogram, String basis) {
        return new Solubility(
                WaterUnits.share(gramsPerKilogram, GRAM_PER_KILOGRAM),
                Formula.parse(basis),
                WaterUnits.temperature(20, CELSIUS),
                "");
    }

    private static double gramsPerKilogram(Solubility solubility, String sold) {
        return solubility.of(Formula.parse(sold)).in(GRAM_PER_KILOGRAM);
    }

    /**
     * By hand: 1301.72 g of CaCl₂·2H₂O are 1301.72 · 110.978 / 147.008 = 982.68 g of CaCl₂ and 319.04 g of water, and 982.68 g in
     * 1000 + 319.04 g of water are 745.00 g per kg.
     */
    @Test
    void aHydrateBringsWaterOfItsOwn() {
        Solubility solubility = Compound.CALCIUM_CHLORIDE_DIHYDRATE.solubility().orElseThrow();
        assertEquals("CaCl₂", solubility.basis().toString());
        assertEquals(745, solubility.massPerMassOfWater().in(GRAM_PER_KILOGRAM));
        assertEquals(1301.72, gramsPerKilogram(solubility, "CaCl2·2H2O"), 0.005); // half of the last digit
    }

    /**
     * Saturated solutions at 20 °C of handbooks (CRC, from memory), as mass fraction and density: they lie where the density decides, whatever
     * the data say without it.
     */
    @ParameterizedTest
    @CsvSource({
        "sodium chloride, 0.264, 1.197",
        "calcium chloride anhydrous, 0.427, 1.43",
        "magnesium sulfate anhydrous, 0.25, 1.29"
    })
    void saturatedSolutionsOfHandbooksLieBetweenTheBounds(String name, double massFraction, double kilogramsPerLitre) {
        Compound compound = Compound.named(name);
        Solubility solubility = compound.solubility().orElseThrow();
        double saturated = 1000 * massFraction * kilogramsPerLitre;
        assertEquals(Dissolving.MAY_NOT_DISSOLVE, dissolving(solubility, compound, saturated));
        // up to 0.998 of the mass per mass of solution, and above the mass per mass of water
        double perWater = solubility.massPerMassOfWater().in(GRAM_PER_KILOGRAM);
        double sure = 998 * perWater / (1000 + perWater);
        assertEquals(Dissolving.DISSOLVES, dissolving(solubility, compound, sure * (1 - 1e-12)));
        assertEquals(Dissolving.MAY_NOT_DISSOLVE, dissolving(solubility, compound, sure * (1 + 1e-12)));
        assertEquals(Dissolving.MAY_NOT_DISSOLVE, dissolving(solubility, compound, perWater));
        assertEquals(Dissolving.DOES_NOT_DISSOLVE, dissolving(solubility, compound, perWater * (1 + 1e-12)));
        assertEquals(Dissolving.DISSOLVES, dissolving(solubility, compound, 0));
    }

    private static Dissolving dissolving(Solubility solubility, Compound compound, double gramsPerLitre) {
        return solubility.dissolving(
                compound.formula(), MassConcentration.of(gramsPerLitre, MassConcentration.GRAM_PER_LITRE));
    }

    /** 42.7 % of CaCl₂ at 1.43 kg/L are 610.6 g/L, 808.9 g/L of the dihydrate; 1301.72 g of it dissolve in a kg of added water. */
    @Test
    void aHydrateIsWeighedAsItIsSold() {
        Compound dihydrate = Compound.CALCIUM_CHLORIDE_DIHYDRATE;
        Solubility solubility = dihydrate.solubility().orElseThrow();
        assertEquals(Dissolving.MAY_NOT_DISSOLVE, dissolving(solubility, dihydrate, 808.9));
        assertEquals(
                Dissolving.DISSOLVES, dissolving(solubility, dihydrate, 564.4)); // 998 · 1301.72 / 2301.72 = 564.41
        assertEquals(Dissolving.MAY_NOT_DISSOLVE, dissolving(solubility, dihydrate, 564.5));
        assertEquals(Dissolving.DOES_NOT_DISSOLVE, dissolving(solubility, dihydrate, 1301.8));
        assertEquals("does not dissolve", Dissolving.DOES_NOT_DISSOLVE.toString());
        // in its own water of crystallisation, whatever the amount
        assertEquals(
                Dissolving.DISSOLVES,
                of(1100, "CaCl2")
                        .dissolving(
                                Formula.parse("CaCl2·6H2O"),
                                MassConcentration.of(1500, MassConcentration.GRAM_PER_LITRE)));
        Refused.argument(
                "concentration of CaCl₂·2H₂O must not be negative, but was -1 g/L",
                () -> dissolving(solubility, dihydrate, -1));
    }

    @ParameterizedTest(name = "{0} g/kg of {1} are {3} g/kg of {2}")
    @CsvSource({ // s / (r - s (1 - r)), six digits, worked apart from the library
        "337,  MgSO4,   MgSO4·7H2O,    1066.72",
        "215,  Na2CO3,  Na2CO3·10H2O,  914.712",
        "2.0,  CaSO4,   CaSO4·0.5H2O,  2.13262",
        "95,   C2H2O4,  C2H2O4·2H2O,   138.274",
        "203,  CuSO4,   CuSO4·5H2O,    358.658",
        "701,  Na2S2O3, Na2S2O3·5H2O,  1832.13",
        "47.2, H3BO3,   B(OH)3,        47.2",
    })
    void solubilitiesCanBeStatedForWhatIsSold(double gramsPerKilogram, String basis, String sold, double expected) {
        assertEquals(expected, gramsPerKilogram(of(gramsPerKilogram, basis), sold), 5e-6 * expected);
    }

    /** What dissolves, weighed as the anhydrous salt in all the water there is, is the stated solubility again. */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 1, 100, 745, 2000})
    void theWaterOfAHydrateIsCountedAsWater(double gramsPerKilogram) {
        double x = gramsPerKilogram(of(gramsPerKilogram, "CaCl2"), "CaCl2·2H2O");
        double salt = x * 110.978 / 147.008;
        double water = 1000 + x - salt;
        assertEquals(gramsPerKilogram, salt / water * 1000, 1e-12 * gramsPerKilogram); // rounding grows near the limit
    }

    /** MgCl₂·6H₂O is 46.83 % MgCl₂, 880.8 g per kg of its own water. */
    @Test
    void aHydrateMayDissolveInItsOwnWater() {
        assertTrue(gramsPerKilogram(of(880, "MgCl2"), "MgCl2·6H2O") > 100_000);
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> gramsPerKilogram(of(881, "MgCl2"), "MgCl2·6H2O"));
        assertEquals("MgCl₂·6H₂O dissolves in its own water of crystallisation in any amount", e.getMessage());
    }

    @Test
    void aHydrateThatIsJustTheSaturatedSolutionDissolvesInAnyAmount() {
        // 18.015 g of water in each 36.03 g: half of the mass, so 1 kg per kg of water
        Formula water = Formula.parse("H2O");
        IllegalArgumentException e = assertThrows(
                IllegalArgumentException.class, () -> of(1000, "H2O").of(Formula.parse("H2O·H2O")));
        assertEquals("H₂O·H₂O dissolves in its own water of crystallisation in any amount", e.getMessage());
        assertEquals(1000, of(1000, "H2O").of(water).in(GRAM_PER_KILOGRAM));
    }

    @ParameterizedTest(name = "{1} is no hydrate of {0}")
    @CsvSource({
        "CaCl2,      MgCl2",
        "CaCl2·2H2O, CaCl2",
        "CaCl2,      CaCl2·H2O2",
        "CaCl2,      CaCl2·2H2",
        "CaCl2,      CaCl2·O2",
        "CaCl2,      Ca2Cl4·2H2O",
        "CaSO4,      CaSO3·H2O",
    })
    void onlyHydratesOfTheBasisAreAnswered(String basis, String sold) {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> gramsPerKilogram(of(10, basis), sold));
        assertEquals(Formula.parse(sold) + " is not " + Formula.parse(basis) + " nor a hydrate of it", e.getMessage());
    }

    static List<Compound> dissolving() {
        return Compound.all().stream().filter(c -> c.solubility().isPresent()).toList();
    }

    /** Hydrates whose figure weighs the anhydrous salt, as the notes say. */
    private static final Map<Compound, String> WEIGHED_ANHYDROUS = Map.ofEntries(
            Map.entry(Compound.CALCIUM_CHLORIDE_DIHYDRATE, "CaCl₂"),
            Map.entry(Compound.CALCIUM_SULFATE_HEMIHYDRATE, "CaSO₄"),
            Map.entry(Compound.CALCIUM_NITRATE_TETRAHYDRATE, "Ca(NO₃)₂"),
            Map.entry(Compound.MAGNESIUM_CHLORIDE_HEXAHYDRATE, "MgCl₂"),
            Map.entry(Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE, "MgSO₄"),
            Map.entry(Compound.SODIUM_CARBONATE_DECAHYDRATE, "Na₂CO₃"),
            Map.entry(Compound.STRONTIUM_CHLORIDE_HEXAHYDRATE, "SrCl₂"),
            Map.entry(Compound.SODIUM_THIOSULFATE_PENTAHYDRATE, "Na₂S₂O₃"),
            Map.entry(Compound.COPPER_SULFATE_PENTAHYDRATE, "CuSO₄"),
            Map.entry(Compound.OXALIC_ACID_DIHYDRATE, "C₂H₂O₄"));

    @ParameterizedTest
    @MethodSource("dissolving")
    void everySolubilityNamesWhatItWeighsAndIsKnownForWhatIsSold(Compound compound) {
        Solubility solubility = compound.solubility().orElseThrow();
        assertAll(
                () -> assertEquals(
                        WEIGHED_ANHYDROUS.getOrDefault(
                                compound, compound.formula().toString()),
                        solubility.basis().toString()),
                () -> assertEquals("20 °C", solubility.temperature().toString()),
                () -> assertTrue(solubility.of(compound.formula()).in(GRAM_PER_KILOGRAM)
                        >= solubility.massPerMassOfWater().in(GRAM_PER_KILOGRAM)));
    }

    @Test
    void notesAreThoseOfTheTable() {
        assertEquals(
                "as anhydrous CaCl2",
                Compound.CALCIUM_CHLORIDE_DIHYDRATE.solubility().orElseThrow().note());
        assertEquals("", Compound.SODIUM_CHLORIDE.solubility().orElseThrow().note());
    }

    @Test
    void acidsThatMixInAllProportionsHaveNone() {
        assertEquals(Optional.empty(), Compound.SULFURIC_ACID.solubility());
        assertEquals(Optional.empty(), Compound.PHOSPHORIC_ACID.solubility());
        assertEquals(Compound.all().size() - 2, dissolving().size());
    }

    @ParameterizedTest(name = "{0} g/kg")
    @CsvSource({"0, 0 g/kg", "-1, -1 g/kg"})
    void solubilitiesArePositive(double gramsPerKilogram, String stated) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> of(gramsPerKilogram, "NaCl"));
        assertEquals("solubility must be positive, but was " + stated, e.getMessage());
    }

    @Test
    void partsAreNeeded() {
        var share = WaterUnits.share(1, GRAM_PER_KILOGRAM);
        var formula = Formula.parse("NaCl");
        var temperature = WaterUnits.temperature(20, CELSIUS);
        assertAll(
                () -> assertThrows(NullPointerException.class, () -> new Solubility(null, formula, temperature, "")),
                () -> assertEquals("basis", nullRefused(() -> new Solubility(share, null, temperature, ""))),
                () -> assertEquals("temperature", nullRefused(() -> new Solubility(share, formula, null, ""))),
                () -> assertEquals("note", nullRefused(() -> new Solubility(share, formula, temperature, null))));
    }

    private static String nullRefused(Executable call) {
        return assertThrows(NullPointerException.class, call).getMessage();
    }
}
