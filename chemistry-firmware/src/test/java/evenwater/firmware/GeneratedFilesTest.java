package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The C in the repository is what the generator writes now. */
class GeneratedFilesTest {

    static final String COMMAND = "mvn -pl chemistry-firmware test -Dtest=GeneratedFilesTest -Dfirmware.write=true";

    @Test
    void theFilesInTheRepositoryAreThoseOfThisRun() throws IOException {
        for (Map.Entry<String, String> file : FirmwareSources.of(Places.KERNEL).entrySet()) {
            Path path = Places.C.resolve(file.getKey());
            if (Boolean.getBoolean("firmware.write")) {
                Files.createDirectories(Places.C);
                Files.writeString(path, file.getValue(), StandardCharsets.UTF_8);
            }
            String committed = Files.exists(path) ? Files.readString(path, StandardCharsets.UTF_8) : "";
            assertEquals(file.getValue(), committed, path + " differs; if that is meant, write it with " + COMMAND);
        }
    }

    @Test
    void theFilesDoNotDependOnTheLocale() throws IOException {
        Map<String, String> files = FirmwareSources.of(Places.KERNEL);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-arab")); // an i without a dot, digits of another shape
            assertEquals(files, FirmwareSources.of(Places.KERNEL));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void theFilesAreAsciiSinceOldCompilersReadNothingElse() throws IOException {
        FirmwareSources.of(Places.KERNEL)
                .forEach((name, text) -> assertTrue(text.chars().allMatch(c -> c < 128), name));
    }
}
