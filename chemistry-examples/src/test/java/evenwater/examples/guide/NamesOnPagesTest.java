package evenwater.examples.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a page sets in code type is a name that a reader will look for: it has to be there. */
class NamesOnPagesTest {

    /** A class, and perhaps a member of it; words in capitals alone are formulas and codes. */
    private static final Pattern NAME =
            Pattern.compile("(?<type>[A-Z]\\w*[a-z]\\w*)(?:\\.(?<member>[A-Za-z]\\w*))?(?:\\(.*\\))?");

    /** Of Java, of Kotlin, and headings of columns in reports. */
    private static final Set<String> OTHERS = Set.of(
            "ArithmeticException",
            "Einheit",
            "IllegalArgumentException",
            "Messunsicherheit",
            "NullPointerException",
            "Optional",
            "Pair");

    private static Optional<String> wrong(String span) {
        Matcher m = NAME.matcher(span);
        if (OTHERS.contains(span) || !m.matches()) {
            return Optional.empty();
        }
        Optional<Class<?>> type = Sources.inLibrary(m.group("type"));
        if (type.isEmpty()) {
            return Sources.has(m.group("type")) ? Optional.empty() : Optional.of(span);
        }
        boolean isThere = Modifier.isPublic(type.get().getModifiers())
                && (m.group("member") == null || members(type.get()).anyMatch(m.group("member")::equals));
        return isThere ? Optional.empty() : Optional.of(span);
    }

    private static Stream<String> members(Class<?> type) {
        return Stream.of(
                        Arrays.stream(type.getMethods()).map(Method::getName),
                        Arrays.stream(type.getFields()).map(Field::getName),
                        Arrays.stream(type.getClasses()).map(Class::getSimpleName))
                .flatMap(names -> names);
    }

    /** Records of decisions and of measurements and the page on Android speak of other libraries and of what is package-private. */
    private static boolean isGuide(String page) {
        return page.equals("README.md")
                || (page.startsWith("docs/")
                        && !page.startsWith("docs/decisions/")
                        && !page.equals("docs/performance.md")
                        && !page.equals("docs/small-machines.md"));
    }

    @Test
    void classesAndTheirMembersExist() {
        List<String> wrong = new ArrayList<>();
        for (Page page : Page.all()) {
            if (isGuide(page.toString())) {
                page.spans().forEach(span -> wrong(span).ifPresent(name -> wrong.add(page + ": " + name)));
            }
        }
        assertEquals(List.of(), wrong);
    }
}
