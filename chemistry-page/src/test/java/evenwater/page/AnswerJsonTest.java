package evenwater.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.worked.Mistake;
import evenwater.chemistry.worked.Worked;
import evenwater.chemistry.worked.WorkedSolutions;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AnswerJsonTest {

    @Test
    void anAnswerIsWrittenWithAllItsParts() {
        Worked<?> worked = WorkedSolutions.conversion(
                Alkalinity.of(2, Alkalinity.MILLIEQUIVALENT_PER_LITRE), Alkalinity.MILLIMOLE_PER_LITRE);
        Answer answer = Answer.of(
                "done",
                List.of(new FigureTable("T", List.of(new Figure("n", "Name", 0.1, "0.1", "°dH")))),
                List.of(worked),
                List.of("a note"));
        String step = worked.steps().get(0).calculation(6);
        assertEquals(
                "{\"summary\":\"done\","
                        + "\"tables\":[{\"title\":\"T\",\"figures\":[{\"name\":\"n\",\"label\":\"Name\",\"value\":0.1,\"text\":\"0.1\",\"unit\":\"°dH\"}]}],"
                        + "\"solutions\":[{\"question\":\"2 meq/L in mmol/L\","
                        + "\"steps\":[{\"title\":\"Chain of factors\",\"calculation\":\"" + step
                        + "\",\"note\":\"both units have the same size\"}],"
                        + "\"mistakes\":[]}],"
                        + "\"notes\":[\"a note\"],\"problems\":[]}",
                answer.toJson());
    }

    @Test
    void aUsualWrongAnswerIsWrittenWithItsReason() {
        String json = LivePage.answer("softening", Map.of()).toJson();
        Mistake mistake = LivePage.answer("softening", Map.of())
                .solutions()
                .get(0)
                .mistakes()
                .get(0);
        assertTrue(
                json.contains("{\"name\":\"" + mistake.name() + "\",\"calculation\":\""
                        + mistake.step().calculation(6) + "\",\"reason\":\"" + mistake.reason() + "\"}"),
                json);
    }

    @Test
    void whatJsonReservesIsEscaped() {
        Answer answer = Answer.refusing(List.of(new Problem("raw", "'\"\\\n\u0001é' is no number")));
        assertEquals(
                "{\"summary\":\"No answer yet: one entry needs a change.\",\"tables\":[],\"solutions\":[],\"notes\":[],"
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
