package evenwater.firmware;

import java.nio.file.Path;

/** Where the tests find things. */
final class Places {

    static final Path MODULE =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().normalize();

    /** The sources of the kernel, of which the C is made. */
    static final Path KERNEL = MODULE.resolve("../chemistry-core/src/main/java/evenwater/chemistry/kernel")
            .normalize();

    /** The generated C. */
    static final Path C = MODULE.resolve("c");

    private Places() {}
}
