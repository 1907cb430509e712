package evenwater.chemistry.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every comparison with a published figure, and the page that shows them. */
class ValidationPageTest {

    /** A few roundings of doubles. */
    private static final BigDecimal ROUNDING_OF_DOUBLES = new BigDecimal("1e-12");

    @TestFactory
    Stream<DynamicTest> everyResultIsAsCloseToThePublishedFigureAsItsSourceAllows() {
        return PublishedChecks.all().stream()
                .map(check ->
                        DynamicTest.dynamicTest(check.id(), () -> assertEquals(Optional.empty(), check.problem())));
    }

    @TestFactory
    Stream<DynamicTest> decimalArithmeticWithoutTheLibraryGivesTheSame() {
        return Recomputations.byId().entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> assertSame(entry)));
    }

    private static void assertSame(Map.Entry<String, BigDecimal> recomputed) {
        BigDecimal expected = recomputed.getValue();
        BigDecimal ours =
                new BigDecimal(PublishedChecks.withId(recomputed.getKey()).ours());
        assertTrue(
                ours.subtract(expected).abs().compareTo(expected.abs().multiply(ROUNDING_OF_DOUBLES)) <= 0,
                () -> "expected " + expected + ", but was " + ours);
    }

    @Test
    void everyCheckHasItsOwnId() {
        Set<String> ids = new HashSet<>();
        PublishedChecks.all().forEach(check -> assertTrue(ids.add(check.id()), () -> "second check " + check.id()));
    }

    @Test
    void onlyAUsageWithoutASourceIsCommonPractice() {
        PublishedChecks.all()
                .forEach(check ->
                        assertEquals(check.source().isUsage(), check.status() == Status.COMMON_PRACTICE, check::id));
    }

    @Test
    void thePageInTheRepositoryIsTheOneOfThisRun() throws IOException {
        String page = render();
        Path file = Path.of(System.getProperty("basedir", ""), "..", "docs", "validation.md")
                .toAbsolutePath()
                .normalize();
        if (Boolean.getBoolean("validation.write")) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, page);
            return;
        }
        if (!Files.exists(file)) {
            fail(file + " is missing; write it with " + ValidationPage.COMMAND);
        }
        assertSameLines(Files.readAllLines(file), page.lines().toList());
    }

    private static void assertSameLines(List<String> committed, List<String> page) {
        String advice = "docs/validation.md differs from this run; if the change is meant, write it with "
                + ValidationPage.COMMAND + "; line ";
        for (int i = 0; i < Math.min(committed.size(), page.size()); i++) {
            assertEquals(committed.get(i), page.get(i), advice + (i + 1));
        }
        assertEquals(committed.size(), page.size(), advice + Math.min(committed.size(), page.size()));
    }

    @Test
    void thePageDoesNotDependOnTheLocale() {
        Locale before = Locale.getDefault();
        String page = render();
        try {
            for (String tag : new String[] {"de-DE", "ar-EG", "tr-TR", "hi-IN-u-nu-deva"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals(page, render(), tag);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    private static String render() {
        return ValidationPage.render(
                PublishedChecks.topics(), Recomputations.byId().size());
    }
}
