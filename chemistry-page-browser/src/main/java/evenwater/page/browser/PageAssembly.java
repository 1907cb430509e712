package evenwater.page.browser;

import evenwater.page.PageHtml;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPOutputStream;

/** Puts the page into one file and says how large it is. */
public final class PageAssembly {

    private PageAssembly() {}

    /**
     * Writes the page.
     *
     * @param args the compiled program, the file to write
     * @throws IOException if one of the files cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        if (args.length != 2) {
            throw new IllegalArgumentException(
                    "two files are expected, the program and the page, but there were " + args.length);
        }
        byte[] page = PageHtml.with(Files.readString(Path.of(args[0]))).getBytes(StandardCharsets.UTF_8);
        Path file = Path.of(args[1]);
        Files.write(file, page);
        System.out.println(file.getFileName() + ": " + page.length + " bytes, " + gzipped(page) + " bytes with gzip");
    }

    /**
     * Returns how large a file is on its way through a server that compresses.
     *
     * @param bytes the file
     * @return bytes after gzip
     * @throws IOException never
     */
    static int gzipped(byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(bytes);
        }
        return out.size();
    }
}
