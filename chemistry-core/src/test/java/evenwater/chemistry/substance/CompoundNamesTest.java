package evenwater.chemistry.substance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.UnreadableTextException;
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
    @ValueSource(
            strings = {"unobtainium", "", " ", "PbCl2", "Ca", "Ca2+", "HCO3-", "CaCl2·3H2O", "cacl2", "·", "H3BO3-"})
    void unknownCompoundsAreRefusedWithExamples(String name) {
        assertEquals(
                "cannot read compound '" + name
                        + "': unknown, expected a name such as gypsum, Epsom salt or calcium chloride dihydrate, "
                        + "or a formula of the table, at index 0",
                refused(name));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ';',
            value = {
                "Epsom;                     Epsom salt",
                "epsom salts;               Epsom salt",
                "bicarb;                    sodium bicarbonate, potassium bicarbonate",
                "bicarbonate of soda;       baking soda, sodium bicarbonate, potassium bicarbonate, soda ash, washing soda",
                "calcium chlor;             calcium chloride anhydrous, calcium chloride dihydrate",
                "calcium chloride dihydrat; calcium chloride dihydrate",
                "dolomite rock;             dolomite"
            })
    void namesThatShareWordsAreAskedAbout(String name, String meant) {
        String refused = refused(name);
        for (String one : meant.split(", ", -1)) {
            assertTrue(refused.startsWith("cannot read compound '" + name + "': unknown: did you mean "), refused);
            assertTrue(refused.contains(one), refused);
        }
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
