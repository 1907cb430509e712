package evenwater.examples.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.pictures.Picture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The pictures in the repository, and the page that shows them, are those of this run. */
class PicturesPageTest {

    private static final String COMMAND =
            "mvn -pl chemistry-core,chemistry-pictures,chemistry-lessons,chemistry-examples test -Dtest=PicturesPageTest "
                    + "-Dsurefire.failIfNoSpecifiedTests=false -Dpictures.write=true";

    private static final Path DOCS = Path.of(System.getProperty("basedir", ""), "..", "docs")
            .toAbsolutePath()
            .normalize();

    private static final String SOURCES = "chemistry-examples/src/main/java/evenwater/examples/pictures/";

    private static final Map<String, Supplier<Picture>> CLASSES = classes();

    private static final Map<String, Picture> PICTURES = CLASSES.entrySet().stream()
            .collect(Collectors.toMap(
                    Map.Entry::getKey, entry -> entry.getValue().get(), (a, b) -> a, LinkedHashMap::new));

    private static Map<String, Supplier<Picture>> classes() {
        Map<String, Supplier<Picture>> classes = new LinkedHashMap<>();
        classes.put("IonsOfEachStage", IonsOfEachStage::picture);
        classes.put("SodiumAgainstHardness", SodiumAgainstHardness::picture);
        classes.put("BreakthroughOfABed", BreakthroughOfABed::picture);
        classes.put("CapacityAgainstSalt", CapacityAgainstSalt::picture);
        classes.put("CarbonAgainstPH", CarbonAgainstPH::picture);
        classes.put("SaturationOverTemperature", SaturationOverTemperature::picture);
        classes.put("TankOverWeeks", TankOverWeeks::picture);
        return classes;
    }

    @TestFactory
    Stream<DynamicTest> eachPictureIsTheOneOfThisRun() {
        return PICTURES.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(
                        entry.getKey(),
                        () -> compare(
                                DOCS.resolve("pictures").resolve(file(entry.getKey())),
                                entry.getValue().toSvg())));
    }

    @Test
    void thePageIsTheOneOfThisRun() throws IOException {
        compare(DOCS.resolve("pictures.md"), page());
    }

    @Test
    void noOtherPictureLiesAround() throws IOException {
        try (Stream<Path> files = Files.list(DOCS.resolve("pictures"))) {
            assertEquals(
                    PICTURES.keySet().stream()
                            .map(PicturesPageTest::file)
                            .sorted()
                            .toList(),
                    files.map(path -> path.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void aClassPrintsItsPicture() {
        PrintStream before = System.out;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
        try {
            IonsOfEachStage.main(new String[0]);
        } finally {
            System.setOut(before);
        }
        assertEquals(
                PICTURES.get("IonsOfEachStage").toSvg().strip(),
                bytes.toString(StandardCharsets.UTF_8).strip());
    }

    private static void compare(Path file, String text) throws IOException {
        if (Boolean.getBoolean("pictures.write")) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
            return;
        }
        String advice = file + " differs from this run; if the change is meant, write it with " + COMMAND;
        assertTrue(Files.exists(file), advice);
        assertEquals(Files.readString(file), text, advice);
    }

    /** {@code IonsOfEachStage} is {@code ions-of-each-stage.svg}. */
    private static String file(String name) {
        return name.replace("PH", "Ph")
                        .replaceAll("(?<=[a-z])(?=[A-Z])|(?<=A)(?=B)", "-")
                        .toLowerCase(Locale.ROOT)
                + ".svg";
    }

    private static String page() throws IOException {
        StringBuilder page = new StringBuilder("""
                # Pictures

                The module `chemistry-pictures` (`evenwater.pictures`) draws what the library computes, as SVG: light or dark as the reader's device
                asks, with axes that name quantity and unit, with lines that differ in colour and in dashes and carry their names, and with a title and
                a description for those who hear a picture. `picture.toSvg()` is a file of its own, `picture.toSvg("id")` goes into a page. The waters are
                of our own invention. What a picture shows are the numbers of the objects it was made of; it computes none.

                The main job puts those that fit a household into a page of its own: `-Dexec.args="--report report.html"`.

                """);
        for (Map.Entry<String, Picture> entry : PICTURES.entrySet()) {
            String name = entry.getKey();
            page.append("## ")
                    .append(entry.getValue().title())
                    .append("\n\n![")
                    .append(entry.getValue().title())
                    .append("](pictures/")
                    .append(file(name))
                    .append(")\n\n([all of it](../")
                    .append(SOURCES)
                    .append(name)
                    .append(".java))\n\n```java\n")
                    .append(snippet(name))
                    .append("\n```\n\n")
                    .append(entry.getValue().description())
                    .append("\n\n");
        }
        return page.append("This page and its pictures are written by `")
                .append(COMMAND)
                .append("`.\n")
                .toString();
    }

    private static String snippet(String name) throws IOException {
        String text = Files.readString(DOCS.resolve("..").resolve(SOURCES + name + ".java"));
        int start = text.indexOf("// snippet\n") + "// snippet\n".length();
        return text.substring(start, text.indexOf("// end", start))
                .stripIndent()
                .strip();
    }
}
