package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What of Java is translated, and that all else is refused by name. */
class TranslationTest {

    @TempDir
    Path kernel;

    /** Enough of the kernel for a method of the pump's window. */
    private static final List<String> CLASSES = List.of("PumpSettings", "PumpMemory", "PumpWindow");

    /** The C of one small method whose body is replaced. */
    private String bodyOf(String javaBody) throws IOException {
        for (String name : CLASSES) {
            Files.copy(Places.KERNEL.resolve(name + ".java"), kernel.resolve(name + ".java"));
        }
        Path file = kernel.resolve("PumpWindow.java");
        String source = Files.readString(file, StandardCharsets.UTF_8);
        String changed = source.replaceAll(
                "(?s)(private static int place\\(long\\[] m, int index\\) \\{).*?\n    }", "$1 " + javaBody + " }");
        assertNotEquals(source, changed);
        Files.writeString(file, changed, StandardCharsets.UTF_8);
        Kernel read = Kernel.read(kernel, CLASSES);
        Functions functions = new Functions(read, "PumpWindow.place"::equals);
        return Statements.of(read, functions, functions.all().get(0)).strip().replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            return index + 1;                         | return ew_add_int(index, 1);
            return (int) (m[WINDOW_SUM] * 3);         | return ew_to_int(ew_mul(memory->values[EW_PUMP_MEMORY_WINDOW_SUM], 3));
            return (int) (m[ACCRUED] >> index);       | return ew_to_int(ew_sar(memory->values[EW_PUMP_MEMORY_ACCRUED], index));
            return (int) m[index];                    | return ew_to_int(memory->values[ew_at(index, EW_PUMP_MEMORY_LENGTH)]);
            return index > 0 && index < 3 ? 1 : -1;   | return (index > 0 && index < 3) ? 1 : (-1);
            return (int) (m[ACCRUED] / CELL);         | return ew_to_int(memory->values[EW_PUMP_MEMORY_ACCRUED] / EW_PUMP_WINDOW_CELL);
            return (int) (m[ACCRUED] / m[WINDOW_SUM]);| return ew_to_int(ew_div(memory->values[EW_PUMP_MEMORY_ACCRUED], memory->values[EW_PUMP_MEMORY_WINDOW_SUM]));
            """)
    void javasOperatorsBecomeDefinedOnesOfC(String java, String c) throws IOException {
        assertEquals(c, bodyOf(java));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            switch (index) { default: return 0; }               | SwitchStmt
            throw new IllegalStateException();                  | ThrowStmt
            return index >>> 1;                                 | the operator >>>
            return (short) index;                               | a cast to short
            return Integer.bitCount(index);                     | a call of Integer.bitCount
            for (int i = index; i > 0; i--) { } return 0;       | a loop of this kind
            do { } while (index > 0); return 0;                 | DoStmt
            String text = null; return 0;                       | type String
            int i = ++index; return i;                          | the operator PREFIX_INCREMENT
            return unknown;                                     | the name unknown
            Runnable r = () -> { }; return 0;                   | type Runnable
            int i; return 0;                                    | a variable without a value
            """)
    void whatIsNotKnownIsRefusedWithItsClassAndLine(String java, String what) {
        UnsupportedJavaException refusal = assertThrows(UnsupportedJavaException.class, () -> bodyOf(java));
        assertTrue(
                refusal.getMessage()
                        .matches("(?s)PumpWindow, line \\d+: " + Pattern.quote(what) + " cannot be translated: .*"),
                refusal.getMessage());
    }

    @Test
    void aSourceThatCannotBeReadIsRefused() {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> bodyOf("return index +;"));
        assertTrue(refusal.getMessage().contains("PumpWindow.java"), refusal.getMessage());
    }

    @Test
    void aPointerIsConstUnlessSomethingIsWrittenThroughIt() throws IOException {
        String header = new ControlSources(Kernel.read(Places.KERNEL, Names.control())).header();
        assertTrue(header.contains(
                "int32_t ew_pump_allowed(const ew_pump_settings *settings, const ew_pump_memory *memory,"));
        assertTrue(header.contains("int32_t ew_pump_tick(const ew_pump_settings *settings, ew_pump_memory *memory,"));
        assertTrue(header.contains("int32_t ew_valve_failed(ew_valve_state *state, ew_bool brine_drawn);"));
    }
}
