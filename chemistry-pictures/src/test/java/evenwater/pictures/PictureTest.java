package evenwater.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Element;

/** What every picture promises; the structure is read back with the XML parser of the JDK. */
class PictureTest {

    private static final Map<String, Picture> PICTURES = Samples.all();

    @TestFactory
    Stream<DynamicTest> everyPictureIsSound() {
        return PICTURES.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(
                        entry.getKey(), () -> Checks.sound(entry.getValue().toSvg())));
    }

    @TestFactory
    Stream<DynamicTest> whoHearsItGetsTheTitleAndTheDescription() {
        return PICTURES.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
                    Picture picture = entry.getValue();
                    Drawn drawn = Drawn.of(picture.toSvg());
                    assertEquals(picture.title(), drawn.content("title"));
                    assertEquals(picture.description(), drawn.content("desc"));
                    assertTrue(picture.description().matches("(?s).*[0-9].*"), "the description has numbers");
                    assertEquals(picture.title() + ": " + picture.description(), picture.toString());
                }));
    }

    @TestFactory
    Stream<DynamicTest> axesNameTheirQuantityAndUnit() {
        Map<String, List<String>> labels = Map.of(
                "sodium", List.of("hardness in front of the softener, gpg", "sodium behind the softener, mg/L"),
                "breakthrough", List.of("water through the bed, L", "in the water that leaves, meq/L"),
                "capacity",
                        List.of(
                                "salt as sodium chloride for the volume of resin, lb/ft³",
                                "hardness taken up before the next regeneration, kgr/ft³"),
                "carbonate", List.of("pH", "share of the carbon, %"),
                "saturation", List.of("temperature, °C", "saturation index of calcite"),
                "tank", List.of("weeks", "sodium, mg/L Na⁺"),
                "balance", List.of("meq/L"));
        assertEquals(PICTURES.keySet(), labels.keySet());
        return labels.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
                    List<String> words = Drawn.of(PICTURES.get(entry.getKey()).toSvg()).texts().stream()
                            .map(Drawn.Text::words)
                            .toList();
                    assertTrue(words.containsAll(entry.getValue()), words.toString());
                }));
    }

    @TestFactory
    Stream<DynamicTest> noPictureIsTooBigForAPage() {
        return PICTURES.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(
                        entry.getKey(),
                        () -> assertTrue(entry.getValue().toSvg().length() < 20_000, "over 20 kB"))); // own rule
    }

    @Test
    void theDescriptionOfTheSpeciesNamesWhereTheyCross() {
        String words = PICTURES.get("carbonate").description();
        // at 12 °C pK1 is 6.4 and pK2 10.4 (Plummer and Busenberg 1982, from memory), both less some 0.1 to 0.2 by
        // activities
        assertTrue(words.contains("as much at pH 6.4, of bicarbonate and carbonate at pH 10.3"), words);
    }

    @TestFactory
    Stream<DynamicTest> aPageTellsPicturesApartByTheirIds() {
        return PICTURES.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
                    String one = entry.getValue().toSvg("first-1");
                    assertEquals(entry.getValue().toSvg(), one.replace("first-1", "picture"));
                    for (Element element : Drawn.of(one).all("*")) {
                        assertTrue(
                                !element.hasAttribute("id")
                                        || element.getAttribute("id").startsWith("first-1-"),
                                element.getAttribute("id"));
                    }
                }));
    }

    @Test
    void anIdThatWouldBreakThePageIsRefused() {
        Picture picture = PICTURES.get("balance");
        for (String id : new String[] {"", "1", "a b", "a\"", "a_b", "é", "a".repeat(101)}) {
            assertEquals(
                    "id of a picture must be a letter and then up to 99 letters, digits and hyphens, but was '" + id
                            + "'",
                    assertThrows(IllegalArgumentException.class, () -> picture.toSvg(id))
                            .getMessage());
        }
        assertEquals(
                "id",
                assertThrows(NullPointerException.class, () -> picture.toSvg(null))
                        .getMessage());
    }

    @Test
    void theLocaleDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"de-DE", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                Samples.all().forEach((name, picture) -> {
                    assertEquals(PICTURES.get(name).toSvg(), picture.toSvg(), name + " in " + tag);
                    assertEquals(PICTURES.get(name).toString(), picture.toString(), name + " in " + tag);
                });
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
