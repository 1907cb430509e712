package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Kinds that share a dimension are different types: the compiler refuses to mix them and names both. */
class WrongMixesDoNotCompileTest {

    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();

    private static final String SOURCE = """
            import evenwater.chemistry.quantity.*;
            import javax.measure.*;

            class Mix {
                Hardness hardness = Hardness.of(22, Hardness.GRAIN_PER_US_GALLON);
                Alkalinity alkalinity = Alkalinity.of(9, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS);
                CompensatedHardness compensated = CompensatedHardness.of(25, CompensatedHardness.GRAIN_PER_US_GALLON);
                AmountConcentration amount = AmountConcentration.of(1, AmountConcentration.MILLIMOLE_PER_LITRE);
                EquivalentConcentration charge =
                        EquivalentConcentration.of(2, EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE);
                MassConcentration mass = MassConcentration.of(3, MassConcentration.MILLIGRAM_PER_LITRE);

                static void soften(Quantity<Hardness> hardness) {}

                void mix() {
                    %s;
                }
            }
            """;

    private static StandardJavaFileManager files;

    @BeforeAll
    static void openFiles() {
        files = COMPILER.getStandardFileManager(null, Locale.ROOT, null);
    }

    @AfterAll
    static void closeFiles() throws IOException {
        files.close();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Hardness sum = hardness.add(hardness.to(Hardness.GERMAN_DEGREE))",
                "double degrees = alkalinity.in(Alkalinity.FRENCH_DEGREE)",
                "Quantity<Hardness> anyones = hardness.multiply(2)",
                "soften(hardness)",
                "int order = charge.compareTo(charge)"
            })
    void rightUseCompiles(String statement) {
        assertEquals(List.of(), errors(statement));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "hardness.add(alkalinity)                                                | Alkalinity        | Hardness",
                "hardness.subtract(alkalinity)                                           | Alkalinity        | Hardness",
                "hardness.to(Alkalinity.FRENCH_DEGREE)                                   | Alkalinity        | Hardness",
                "hardness.in(Alkalinity.FRENCH_DEGREE)                                   | Alkalinity        | Hardness",
                "Hardness.of(1, Alkalinity.FRENCH_DEGREE)                                | Alkalinity        | Hardness",
                "Hardness.from(alkalinity)                                               | Alkalinity        | Hardness",
                "hardness.compareTo(alkalinity)                                          | Alkalinity        | Hardness",
                "hardness.isEquivalentTo(alkalinity)                                     | Alkalinity        | Hardness",
                "hardness.ratioTo(alkalinity)                                            | Alkalinity        | Hardness",
                "Hardness wrong = alkalinity                                             | Alkalinity        | Hardness",
                "Quantity<Hardness> wrong = alkalinity                                   | Alkalinity        | Hardness",
                "Unit<Hardness> wrong = Alkalinity.FRENCH_DEGREE                         | Alkalinity        | Hardness",
                "Hardness wrong = Hardness.parse(\"1 gpg\").to(Alkalinity.parseUnit(\"KH\"))  | Alkalinity        | Hardness",
                "amount.add(charge)                           | EquivalentConcentration | AmountConcentration",
                "charge.in(AmountConcentration.MILLIMOLE_PER_LITRE) | AmountConcentration | EquivalentConcentration",
                "mass.add(amount)                             | AmountConcentration     | MassConcentration",
                "amount.to(MassConcentration.MILLIGRAM_PER_LITRE) | MassConcentration   | AmountConcentration",
                "amount.add(hardness)                         | Hardness                | AmountConcentration",
                "charge.add(alkalinity)                       | Alkalinity              | EquivalentConcentration",
                "soften(compensated)                          | CompensatedHardness     | Hardness",
                "hardness.add(compensated)                    | CompensatedHardness     | Hardness",
                "hardness.in(CompensatedHardness.GERMAN_DEGREE) | CompensatedHardness   | Hardness"
            })
    void aWrongMixNamesBothTypes(String statement, String found, String wanted) {
        List<Diagnostic<? extends JavaFileObject>> errors = errors(statement);
        assertEquals(1, errors.size(), errors::toString);
        String message = errors.get(0).getMessage(Locale.ENGLISH);
        assertTrue(message.contains("incompatible types"), message);
        assertTrue(message.matches("(?s).*\\b" + found + "\\b.*"), message);
        assertTrue(message.matches("(?s).*\\b" + wanted + "\\b.*"), message);
    }

    @Test
    void nobodyElseAddsAKind() {
        List<Diagnostic<? extends JavaFileObject>> errors = errors("class Softness extends WaterQuantity<Hardness> {"
                + " Softness() { super(1, Hardness.GERMAN_DEGREE, Hardness.class, null); } }");
        assertTrue(
                errors.stream()
                        .anyMatch(
                                error -> error.getMessage(Locale.ENGLISH)
                                        .contains(
                                                "is not public in evenwater.chemistry.quantity.WaterQuantity; cannot be accessed")),
                errors::toString);
    }

    private static List<Diagnostic<? extends JavaFileObject>> errors(String statement) {
        DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
        List<String> options =
                List.of("-proc:none", "-Xlint:none", "-classpath", System.getProperty("java.class.path"));
        JavaFileObject source = new SimpleJavaFileObject(URI.create("string:///Mix.java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return String.format(SOURCE, statement);
            }
        };
        COMPILER.getTask(Writer.nullWriter(), new NoOutput(files), found, options, null, List.of(source))
                .call();
        return found.getDiagnostics().stream()
                .filter(diagnostic -> diagnostic.getKind() == Diagnostic.Kind.ERROR)
                .toList();
    }

    /** Throws the class files away. */
    private static final class NoOutput extends ForwardingJavaFileManager<JavaFileManager> {

        NoOutput(JavaFileManager files) {
            super(files);
        }

        @Override
        public JavaFileObject getJavaFileForOutput(
                Location location, String className, JavaFileObject.Kind kind, FileObject sibling) {
            return new SimpleJavaFileObject(URI.create("mem:///" + className), kind) {
                @Override
                public OutputStream openOutputStream() {
                    return OutputStream.nullOutputStream();
                }
            };
        }
    }
}
