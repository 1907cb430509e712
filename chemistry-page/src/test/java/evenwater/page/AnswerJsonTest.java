package evenwater.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class AnswerJsonTest {

    @Test
    void anAnswerIsWrittenWithAllItsParts() {
        Answer answer = Answer.of(
                "done",
                List.of(new FigureTable("T", List.of(new Figure("n", "Name", 0.1, "0.1", "°dH")))),
                List.of(new Step("first", "1 + 1 = 2", "", "3: counted twice")),
                List.of("a note"));
        assertEquals(
                "{\"summary\":\"done\","
                        + "\"tables\":[{\"title\":\"T\",\"figures\":[{\"name\":\"n\",\"label\":\"Name\",\"value\":0.1,\"text\":\"0.1\",\"unit\":\"°dH\"}]}],"
                        + "\"steps\":[{\"title\":\"first\",\"expression\":\"1 + 1 = 2\",\"note\":\"\",\"mistake\":\"3: counted twice\"}],"
                        + "\"notes\":[\"a note\"],\"problems\":[]}",
                answer.toJson());
    }

    @Test
    void whatJsonReservesIsEscaped() {
        Answer answer = Answer.refusing(List.of(new Problem("raw", "'\"\\\n\u0001é' is no number")));
        assertEquals(
                "{\"summary\":\"No answer yet: one entry needs a change.\",\"tables\":[],\"steps\":[],\"notes\":[],"
                        + "\"problems\":[{\"control\":\"raw\",\"message\":\"'\\\"\\\\\\u000a\\u0001é' is no number\"}]}",
                answer.toJson());
    }

    @Test
    void aFigureIsAFiniteNumber() {
        ArithmeticException e =
                assertThrows(ArithmeticException.class, () -> new Figure("n", "Hardness", Double.NaN, "", "gpg"));
        assertEquals("Hardness must be a finite number, but was NaN gpg", e.getMessage());
    }
}
