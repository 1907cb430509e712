package evenwater.firmware;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * Writes the C99 of the library: arithmetic of scales, sodium and compensation, and the states of a softener's valve and a dosing pump.
 *
 * <p>The valve and the pump are translated from the source of the core's kernel, so that there is one text of the logic; numbers come from
 * the typed core. The result is part of the repository, in {@code chemistry-firmware/c}.
 */
public final class FirmwareSources {

    private FirmwareSources() {}

    /**
     * Returns the files.
     *
     * @param kernelDirectory directory with the Java sources of {@code evenwater.chemistry.kernel}
     * @return texts by the names of their files, in ASCII
     * @throws IOException if a source cannot be read
     * @throws IllegalArgumentException if a source has something that is not translated; the message names class, line and construct
     */
    public static Map<String, String> of(Path kernelDirectory) throws IOException {
        Objects.requireNonNull(kernelDirectory, "kernelDirectory");
        Map<String, String> files = new LinkedHashMap<>();
        ControlSources control = new ControlSources(Kernel.read(kernelDirectory, Names.control()));
        NumberSources numbers = new NumberSources(Kernel.read(kernelDirectory, Names.numbers()));
        files.put("ew_common.h", Template.read("common.h"));
        files.put("ew_units.h", numbers.unitsHeader());
        files.put("ew_units.c", numbers.unitsSource());
        files.put("ew_double.h", numbers.doubleHeader());
        files.put("ew_double.c", numbers.doubleSource());
        files.put("ew_fixed.h", numbers.fixedHeader());
        files.put("ew_fixed.c", numbers.fixedSource());
        files.put("ew_control.h", control.header());
        files.put("ew_control.c", control.source());
        return files;
    }
}
