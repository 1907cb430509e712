package evenwater.examples.household;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

/** The file that {@code --report} names: new, or one that this program wrote before; written as a whole or not at all. */
final class ReportPath {

    private static final String OPTION = "--report: ";

    /** Of a file system, 255, less what is put behind the name while the file is written. */
    private static final int LONGEST_NAME_IN_BYTES = 250;

    private final String name;
    private final Path file;

    private ReportPath(String name, Path file) {
        this.name = name;
        this.file = file;
    }

    /** Refuses early what could not be written in the end. */
    static ReportPath of(String name) {
        if (name.isBlank()) {
            throw new UsageException(OPTION + "a name is missing; name a file such as report.html");
        }
        Path file;
        try {
            file = Path.of(name).toAbsolutePath();
            if (file.getFileName() != null
                    && file.getFileName().toString().getBytes(StandardCharsets.UTF_8).length > LONGEST_NAME_IN_BYTES) {
                throw refused(name, "is too long a name; name a file such as report.html");
            }
            if (Files.isSymbolicLink(file)) {
                file = file.toRealPath(); // what a link leads to is written, and the link stays
            }
        } catch (InvalidPathException e) {
            throw refused(name, "is no name of a file; name one such as report.html");
        } catch (IOException e) {
            throw refused(name, "is a link that leads nowhere; name a file such as report.html");
        }
        ReportPath path = new ReportPath(name, file);
        path.requireWritable();
        return path;
    }

    private void requireWritable() {
        Path folder = file.getParent();
        if (file.getFileName() == null || Files.isDirectory(file)) {
            throw refused(name, "is a folder; name a file in it, such as report.html");
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw refused(name, "its folder does not exist; make it first, or name a file in another one");
        }
        if (Files.exists(file) && !isOurs()) {
            throw refused(
                    name,
                    "exists, and this program did not write it; name a new file, or one that holds such a report");
        }
        if (Files.exists(file) && !Files.isWritable(file)) {
            throw refused(name, "must not be written to; name another file");
        }
        if (!Files.isWritable(folder)) {
            throw refused(name, "its folder must not be written to; name a file in another one");
        }
    }

    private boolean isOurs() {
        byte[] beginning = HtmlText.BEGINNING.getBytes(StandardCharsets.UTF_8);
        if (!Files.isRegularFile(file)) {
            return false; // reading a pipe or a device might never end
        }
        try (InputStream in = Files.newInputStream(file)) {
            return Arrays.equals(beginning, in.readNBytes(beginning.length));
        } catch (IOException e) {
            return false;
        }
    }

    /** Writes beside the file first, then moves it there. */
    void write(String html) {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        boolean begun = false;
        try {
            try (var out = Files.newBufferedWriter(part, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW)) {
                begun = true;
                out.write(html);
            }
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (FileAlreadyExistsException e) {
            throw refused(name, part.getFileName() + " stands in the way beside it; remove it first");
        } catch (IOException e) {
            if (begun) {
                remove(part);
            }
            throw refused(name, "cannot be written: no room, or not allowed; nothing was left there");
        }
    }

    private static void remove(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // nothing more can be done; the message that follows names the file
        }
    }

    private static UsageException refused(String name, String why) {
        return new UsageException(OPTION + Page.foreign(name) + ": " + why);
    }
}
