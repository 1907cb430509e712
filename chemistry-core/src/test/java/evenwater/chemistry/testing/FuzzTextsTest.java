package evenwater.chemistry.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FuzzTextsTest {

    private static final List<String> VALID = List.of("22 gpg", "3.4 meq/L");

    private static List<String> texts(long seed) {
        return Stream.generate(new FuzzTexts(seed, VALID)::next).limit(5000).toList();
    }

    @Test
    void theSameSeedGivesTheSameTexts() {
        assertEquals(texts(1), texts(1));
        assertNotEquals(texts(1), texts(2));
    }

    @Test
    void someAreRightMostAreSpoiltFewAreLong() {
        List<String> texts = texts(1);
        long right = texts.stream().filter(VALID::contains).count();
        long longOnes = texts.stream().filter(text -> text.length() > 1000).count();
        // one in ten untouched, some more after a change that changed nothing
        assertTrue(right > 350 && right < 1500, () -> right + " right");
        assertTrue(longOnes > 0 && longOnes < 30, () -> longOnes + " long");
    }
}
