package evenwater.chemistry.substance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompoundNamesTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "gypsum,                    calcium sulfate dihydrate",
        "plaster of Paris,          calcium sulfate hemihydrate",
        "calcite,                   calcium carbonate",
        "aragonite,                 calcium carbonate",
        "limestone,                 calcium carbonate",
        "slaked lime,               calcium hydroxide",
        "Epsom salt,                magnesium sulfate heptahydrate",
        "magnesia,                  magnesium oxide",
        "baking soda,               sodium bicarbonate",
        "sodium hydrogencarbonate,  sodium bicarbonate",
        "soda ash,                  sodium carbonate anhydrous",
        "washing soda,              sodium carbonate decahydrate",
        "potassium hydrogencarbonate, potassium bicarbonate",
        "table salt,                sodium chloride",
        "salt,                      sodium chloride",
        "monopotassium phosphate,   potassium dihydrogen phosphate",
        "dipotassium phosphate,     dipotassium hydrogen phosphate",
        "citric acid,               citric acid anhydrous",
    })
    void householdNamesAreKnown(String householdName, String name) {
        assertEquals(name, Compound.named(householdName).name());
    }

    @ParameterizedTest
    @ValueSource(strings = {"GYPSUM", "Gypsum", " gypsum ", "Calcium Sulfate Dihydrate", "CALCIUM SULFATE DIHYDRATE\n"})
    void capitalsAndSpaceAroundANameMakeNoDifference(String name) {
        assertEquals(Compound.CALCIUM_SULFATE_DIHYDRATE, Compound.named(name));
    }

    /** In Turkish the small letter of I has no dot. */
    @Test
    void capitalsMakeNoDifferenceInAnyLanguage() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertEquals(Compound.CITRIC_ACID_ANHYDROUS, Compound.named("CITRIC ACID"));
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "CaCl2·2H2O",
                "CaCl2*2H2O",
                "CaCl2.2H2O",
                "CaCl₂·2H₂O",
                " CaCl2·2H2O ",
                "Ca(H2O)2Cl2",
                "Cl2Ca·2H2O"
            })
    void formulasWithTheSameAtomsMeanTheCompound(String formula) {
        assertEquals(Compound.CALCIUM_CHLORIDE_DIHYDRATE, Compound.named(formula));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "copper sulfate,       copper sulfate pentahydrate",
        "calcium nitrate,      calcium nitrate tetrahydrate",
        "oxalic acid,          oxalic acid dihydrate",
        "strontium,            strontium chloride hexahydrate",
        "Sodium Thiosulfate,   sodium thiosulfate pentahydrate",
        "magnesium chloride,   magnesium chloride hexahydrate",
        "calcium carbonate,    calcium carbonate",
    })
    void firstWordsOfANameAreEnoughIfOneCompoundHasThem(String words, String name) {
        assertEquals(name, Compound.named(words).name());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ';',
            value = {
                "calcium chloride;   calcium chloride anhydrous, calcium chloride dihydrate",
                "Calcium Sulfate;    calcium sulfate dihydrate, calcium sulfate hemihydrate",
                "magnesium sulfate;  magnesium sulfate heptahydrate, magnesium sulfate anhydrous",
                "sodium carbonate;   sodium carbonate anhydrous, sodium carbonate decahydrate",
                "calcium;            calcium chloride anhydrous, calcium chloride dihydrate, calcium sulfate dihydrate, "
                        + "calcium sulfate hemihydrate, calcium carbonate, calcium hydroxide, calcium nitrate tetrahydrate",
            })
    void namesOfSeveralCompoundsAreRefusedWithThese(String name, String compounds) {
        assertEquals("cannot read compound '" + name + "': may be " + compounds + ", at index 0", refused(name));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "unobtainium",
                "",
                " ",
                "calc",
                "calcium chlor",
                "calcium chloride dihydrat",
                "PbCl2",
                "Ca",
                "Ca2+",
                "HCO3-",
                "CaCl2·3H2O",
                "cacl2",
                "chloride",
                "dolomite rock",
                "·",
                "H3BO3-"
            })
    void unknownCompoundsAreRefusedWithAllNames(String name) {
        String all = Compound.all().stream().map(Compound::name).collect(Collectors.joining(", "));
        assertEquals(
                "cannot read compound '" + name + "': unknown, expected one of " + all
                        + ", or a formula of these, at index 0",
                refused(name));
    }

    private static String refused(String name) {
        return assertThrows(UnreadableTextException.class, () -> Compound.named(name))
                .getMessage();
    }

    @Test
    void aRowThatIsMissingIsABug() {
        assertEquals(39, Compound.all().size());
        IllegalStateException e = assertThrows(IllegalStateException.class, () -> CompoundTable.row("unobtainium"));
        assertEquals("compounds.csv has no row for unobtainium", e.getMessage());
    }
}
