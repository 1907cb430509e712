package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Json;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.testing.Waters;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the plain form of a water looks like, and what is refused when one is read. */
class PlainWaterTest {

    private static final Water TAP = Water.builder()
            .total(Ion.CALCIUM, mmol(1.5))
            .total(Ion.CHLORIDE, mmol(0.25))
            .total(Waters.LEAD, mmol(0.0625))
            .alkalinity(alkalinity(2))
            .measuredPH(7.5)
            .temperature(celsius(12))
            .build();

    /** Counted by hand: 2 · 1.5 − 0.25 + 2 · 0.0625 = 2.875 meq/L of ions. */
    private static final String JSON = "{\"version\":1,\"temperatureInKelvin\":285.15,"
            + "\"millimolesPerLitre\":{\"Ca²⁺\":1.5,\"Cl⁻\":0.25,\"Pb²⁺\":0.0625},\"namesOfOwnIons\":{\"Pb²⁺\":\"lead\"},"
            + "\"alkalinityInMilliequivalentsPerLitre\":2.0,\"unmeasuredChargeInMilliequivalentsPerLitre\":-0.875,"
            + "\"inorganicCarbonInMillimolesPerLitre\":null,\"measuredPH\":7.5}";

    @Test
    void theUnitStandsInEachName() {
        assertEquals(JSON, Json.writtenByJackson(TAP.toPlain()));
        assertEquals(TAP, Water.from(Json.readByJackson(JSON, PlainWater.class)));
        assertEquals(TAP, Water.from(Json.readByGson(JSON, PlainWater.class)));
    }

    @Test
    void whatIsUnknownMayBeNullOrMissing() {
        String json = "{\"version\":1,\"temperatureInKelvin\":298.15,\"millimolesPerLitre\":{},"
                + "\"alkalinityInMilliequivalentsPerLitre\":0,\"unmeasuredChargeInMilliequivalentsPerLitre\":0}";
        Water nothing = Water.builder().build();
        assertEquals(nothing, Water.from(Json.readByJackson(json, PlainWater.class)));
        assertEquals(nothing, Water.from(Json.readByGson(json, PlainWater.class)));
        assertEquals(Water.pure(), Water.from(Water.pure().toPlain())); // here carbon is known to be 0
    }

    @ParameterizedTest
    @CsvSource({"Ca²⁺", "Ca^2+", "calcium", "Ca+2"})
    void aPersonMayWriteAnIonOtherwise(String spelling) {
        String json = JSON.replace("\"Ca²⁺\"", "\"" + spelling + "\"");
        assertEquals(TAP, Water.from(Json.readByJackson(json, PlainWater.class)));
    }

    @Test
    void amountsOfZeroAreLeftOutAndRead() {
        Water salt = Water.builder()
                .total(Ion.SODIUM, mmol(0))
                .total(Ion.SILICA, mmol(0.1))
                .build();
        assertEquals(Map.of("SiO₂", 0.1), salt.toPlain().millimolesPerLitre());
        assertEquals(TAP, Water.from(with("\"Cl⁻\":0.25", "\"Cl⁻\":0.25,\"Na⁺\":0")));
    }

    @Test
    void theOrderIsThatOfTheIons() {
        assertEquals(
                List.of("Ca²⁺", "Cl⁻", "Pb²⁺"),
                List.copyOf(TAP.toPlain().millimolesPerLitre().keySet()));
    }

    @Test
    void mapsAreCopiedAndNotToBeChanged() {
        PlainWater plain = TAP.toPlain();
        Map<String, Double> totals = new LinkedHashMap<>(plain.millimolesPerLitre());
        Map<String, String> names = new HashMap<>(plain.namesOfOwnIons());
        PlainWater copy = new PlainWater(1, 285.15, totals, names, 2.0, -0.875, null, 7.5);
        totals.clear();
        names.clear();
        assertEquals(TAP, Water.from(copy));
        assertThrows(
                UnsupportedOperationException.class,
                () -> copy.millimolesPerLitre().clear());
        assertThrows(
                UnsupportedOperationException.class, () -> copy.namesOfOwnIons().clear());
    }

    /** The line of {@link #JSON} with something else in it. */
    private static PlainWater with(String part, String instead) {
        assertEquals(1, JSON.split(java.util.regex.Pattern.quote(part), -1).length - 1);
        return Json.readByGson(JSON.replace(part, instead), PlainWater.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"version\":1,                                        | version",
                "\"temperatureInKelvin\":285.15,                       | temperatureInKelvin",
                "\"alkalinityInMilliequivalentsPerLitre\":2.0,         | alkalinityInMilliequivalentsPerLitre",
                "\"unmeasuredChargeInMilliequivalentsPerLitre\":-0.875,| unmeasuredChargeInMilliequivalentsPerLitre",
            })
    void aMissingNumberIsNamed(String part, String missing) {
        Refused.argument("plain water lacks " + missing, () -> Water.from(with(part, "")));
    }

    @Test
    void missingTotalsAreNamed() {
        Refused.argument(
                "plain water lacks millimolesPerLitre",
                () -> Water.from(new PlainWater(1, 298.15, null, Map.of(), 0.0, 0.0, null, null)));
        Refused.argument(
                "plain water lacks millimolesPerLitre of Cl⁻", () -> Water.from(with("\"Cl⁻\":0.25", "\"Cl⁻\":null")));
        Refused.argument(
                "plain water lacks namesOfOwnIons of Pb²⁺",
                () -> Water.from(with("\"Pb²⁺\":\"lead\"", "\"Pb²⁺\":null")));
        Refused.asNull("plain", () -> Water.from(null));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"version\":1  | \"version\":2  | version must be 1, but was 2, of a newer library",
                "\"version\":1  | \"version\":0  | version must be 1, but was 0",
                "285.15         | 285150         | temperatureInKelvin must be from 273.15 to 373.15 K, but was 285150.0 K",
                "285.15         | 12             | temperatureInKelvin must be from 273.15 to 373.15 K, but was 12.0 K",
                "285.15         | NaN            | temperatureInKelvin must be from 273.15 to 373.15 K, but was NaN K",
                "\"Ca²⁺\":1.5   | \"Ca²⁺\":-1.5  | millimolesPerLitre of Ca²⁺ must be 0 mmol/L or more, but was -1.5 mmol/L",
                "\"Ca²⁺\":1.5   | \"Ca²⁺\":NaN   | millimolesPerLitre of Ca²⁺ must be 0 mmol/L or more, but was NaN mmol/L",
                "\"Ca²⁺\":1.5   | \"Ca²⁺\":1e999 | millimolesPerLitre of Ca²⁺ must be 0 mmol/L or more, but was Infinity mmol/L",
                ":2.0           | :NaN           | alkalinityInMilliequivalentsPerLitre must be a finite number, but was NaN meq/L",
                ":-0.875        | :-1e999        | unmeasuredChargeInMilliequivalentsPerLitre must be a finite number, but was -Infinity meq/L",
                ":null,\"measuredPH\":7.5 | :-1  | inorganicCarbonInMillimolesPerLitre must be 0 mmol/L or more, but was -1.0 mmol/L",
                ":null,\"measuredPH\":7.5 | :NaN | inorganicCarbonInMillimolesPerLitre must be 0 mmol/L or more, but was NaN mmol/L",
                ":7.5           | :15            | measuredPH must be from 0 to 14, but was 15.0",
                ":7.5           | :NaN           | measuredPH must be from 0 to 14, but was NaN",
            })
    void aNumberOutOfRangeIsNamed(String part, String instead, String message) {
        Refused.argument("plain water: " + message, () -> Water.from(with(part, instead)));
    }

    @Test
    void unknownIonsAreNamed() {
        Refused.argument(
                "plain water has an unknown ion 'Ca³⁺' in millimolesPerLitre: an ion of your own must be named in namesOfOwnIons",
                () -> Water.from(with("\"Ca²⁺\"", "\"Ca³⁺\"")));
        Refused.argument(
                "plain water has an unknown ion 'hardness' in millimolesPerLitre: an ion of your own must be named in namesOfOwnIons",
                () -> Water.from(with("\"Ca²⁺\"", "\"hardness\"")));
        Refused.argument(
                "plain water has an unknown ion 'Pb²⁺' in millimolesPerLitre: an ion of your own must be named in namesOfOwnIons",
                () -> Water.from(with("\"Pb²⁺\":\"lead\"", "")));
        Refused.argument(
                "plain water names Pb²⁺ among namesOfOwnIons, but has no millimolesPerLitre of it",
                () -> Water.from(with(",\"Pb²⁺\":0.0625", "")));
        Refused.argument(
                "plain water: Qq+ of namesOfOwnIons: cannot read formula 'Qq+': 'Qq' is no element with a standard atomic weight, at index 0",
                () -> Water.from(
                        new PlainWater(1, 298.15, Map.of("Qq+", 1.0), Map.of("Qq+", "q"), 1.0, 0.0, null, null)));
        Refused.argument(
                "plain water: Pb²⁺ of namesOfOwnIons: name of an ion must not be blank, but was ' '",
                () -> Water.from(with("\"lead\"", "\" \"")));
    }

    @Test
    void anIonWithoutASymbolIsRefused() {
        Map<String, Double> amounts = new HashMap<>();
        amounts.put(null, 1.0);
        Refused.argument(
                "plain water lacks the symbol of an ion in millimolesPerLitre",
                () -> Water.from(new PlainWater(1, 298.15, amounts, null, 1.0, 0.0, null, null)));
        Map<String, String> names = new HashMap<>();
        names.put(null, "lead");
        Refused.argument(
                "plain water lacks the symbol of an ion in namesOfOwnIons",
                () -> Water.from(new PlainWater(1, 298.15, Map.of(), names, 0.0, 0.0, null, null)));
    }

    @Test
    void anIonThatIsCountedElsewhereIsRefused() {
        Refused.argument(
                "HCO₃⁻ has no total of its own: it is counted in inorganic carbon and alkalinity",
                () -> Water.from(with("\"Cl⁻\"", "\"HCO₃⁻\"")));
    }

    @Test
    void anIonInTwoSpellingsIsRefused() {
        Refused.argument(
                "plain water must state Ca²⁺ once, but has it in two spellings",
                () -> Water.from(with("\"Cl⁻\":0.25", "\"calcium\":1.5")));
    }

    @Test
    void whatDoesNotAddUpIsRefused() {
        Refused.argument(
                "plain water must add up: charges of the ions and unmeasuredChargeInMilliequivalentsPerLitre are 2.0 meq/L, but "
                        + "alkalinityInMilliequivalentsPerLitre is 2.1 meq/L",
                () -> Water.from(with(":2.0", ":2.1")));
        Refused.argument(
                "plain water must not state both inorganicCarbonInMillimolesPerLitre and measuredPH: one follows from the other",
                () -> Water.from(with(":null", ":2.5")));
        Refused.argument(
                "alkalinity must be from -1e100 to 1e100 in mmol/L or meq/L, but was 1.0E101 meq/L",
                () -> Water.from(new PlainWater(1, 298.15, Map.of(), Map.of(), 1e101, 1e101, null, null)));
    }
}
