package evenwater.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.WaterQuantity;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.Unit;
import org.codehaus.mojo.animal_sniffer.ClassListBuilder;
import org.codehaus.mojo.animal_sniffer.SignatureChecker;
import org.codehaus.mojo.animal_sniffer.logging.Logger;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.Units;
import tech.uom.lib.common.function.QuantityConverter;

/**
 * The core and what it brings along call nothing that Android 8.0 (API level 26) lacks, once its build tools have added what they add: the library of JDK 11
 * calls ("core library desugaring", version 2), the backports of the compiler, and records.
 */
class AndroidTest {

    /** The build copies it there: Animal Sniffer signatures, "gummy-bears-api-26", classifier "coreLib2". */
    private static final Path SIGNATURE = Path.of("target", "android", "android-26-desugared.signature");

    /** The compiler gives each record a superclass of its own; a signature file knows of methods, not of that. */
    private static final String RECORD = "void Record.<init>()";

    private static final List<File> JARS = List.of(
            whereIs(WaterQuantity.class),
            whereIs(Unit.class),
            whereIs(Units.class),
            whereIs(QuantityConverter.class),
            whereIs(FastMath.class),
            whereIs(SimplexSolver.class));

    @Test
    void theCoreCallsNothingThatAndroid8Lacks() throws IOException {
        assertEquals(
                Set.of(RECORD),
                missing(whereIs(WaterQuantity.class)),
                () -> "Android 8.0 lacks it: use an older call, or raise the level in docs/small-machines.md and here");
    }

    record Expected(Class<?> member, Set<String> missing) {}

    static List<Expected> libraries() {
        return List.of(
                new Expected(Unit.class, Set.of()),
                new Expected(QuantityConverter.class, Set.of()),
                // a service for names of units in other languages, which nothing calls
                new Expected(Units.class, Set.of("void java.util.spi.LocaleServiceProvider.<init>()")),
                // in the shortest text of a double, which no solver calls
                new Expected(FastMath.class, Set.of("int java.math.BigInteger.intValueExact()")),
                new Expected(SimplexSolver.class, Set.of()));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void librariesLackOnlyWhatIsNeverCalled(Expected expected) throws IOException {
        assertEquals(expected.missing, missing(whereIs(expected.member)));
    }

    @Test
    void aCallAboveTheLevelIsSeen() throws IOException {
        File newer = new File(whereIs(AndroidTest.class), "evenwater/chemistry/AndroidTest$Newer.class");
        assertEquals(
                Set.of("ProcessHandle ProcessHandle.current()", "long ProcessHandle.pid()", "ProcessHandle"),
                missing(newer));
    }

    /** What no Android has. */
    static final class Newer {

        private Newer() {}

        static long process() {
            return ProcessHandle.current().pid();
        }
    }

    private static Set<String> missing(File classes) throws IOException {
        assertTrue(Files.exists(SIGNATURE), () -> SIGNATURE + " is missing: mvn process-test-resources puts it there");
        Undefined undefined = new Undefined();
        ClassListBuilder own = new ClassListBuilder(undefined);
        for (File jar : JARS) {
            own.process(jar);
        }
        Set<String> known = new HashSet<>(own.getPackages());
        known.add("org.jspecify.annotations");
        known.add("org.apiguardian.api");
        try (InputStream signature = Files.newInputStream(SIGNATURE)) {
            SignatureChecker checker = new SignatureChecker(signature, known, undefined);
            checker.setSourcePath(List.of());
            checker.process(classes);
        }
        return undefined.calls;
    }

    private static File whereIs(Class<?> member) {
        try {
            return new File(
                    member.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Takes the calls out of the messages. */
    private static final class Undefined implements Logger {

        private static final String MARK = "Undefined reference: ";

        final Set<String> calls = new TreeSet<>();

        @Override
        public void error(String message) {
            calls.add(message.replaceFirst(".*" + MARK, ""));
        }

        @Override
        public void error(String message, Throwable t) {
            throw new IllegalStateException(message, t);
        }

        @Override
        public void warn(String message) {}

        @Override
        public void warn(String message, Throwable t) {}

        @Override
        public void info(String message) {}

        @Override
        public void info(String message, Throwable t) {}

        @Override
        public void debug(String message) {}

        @Override
        public void debug(String message, Throwable t) {}
    }
}
