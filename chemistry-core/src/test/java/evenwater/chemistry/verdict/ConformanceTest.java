package evenwater.chemistry.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ConformanceTest {

    private static final Requirement<Hardness> RANGE = Requirement.between(
            Parameter.GENERAL_HARDNESS,
            Hardness.of(5, Hardness.GERMAN_DEGREE),
            Hardness.of(15, Hardness.GERMAN_DEGREE));
    private static final Requirements TANK = Requirements.named("test tank").with(RANGE);

    private static Verdict at(double degrees) {
        return TANK.judge(Evidence.none().with(Parameter.GENERAL_HARDNESS, Parameter.GENERAL_HARDNESS.of(degrees)));
    }

    /** Of 1, 2 … 20 °dH four are below 5, eleven inside and five above 15. */
    @Test
    void sharesOfTheDrawsAreCounted() {
        Conformance conformance = Conformance.of(
                IntStream.rangeClosed(1, 20).mapToObj(ConformanceTest::at).toList());
        assertEquals(20, conformance.draws());
        assertEquals(0.55, conformance.probability(RANGE));
        assertEquals(0.2, conformance.probability(RANGE, Standing.BELOW));
        assertEquals(0.25, conformance.probability(RANGE, Standing.ABOVE));
        assertEquals(0.55, conformance.probability(Outcome.FIT));
        assertEquals(0.45, conformance.probability(Outcome.UNFIT));
        assertEquals(Math.sqrt(0.55 * 0.45 / 20), conformance.standardErrorOf(0.55), 1e-15);
        assertEquals("of 20 draws 55.0 % fit, 45.0 % not fit", conformance.toString());
    }

    @Test
    void whatIsNotThereIsRefused() {
        Conformance conformance = Conformance.of(List.of(at(7)));
        assertEquals("of 1 draw 100.0 % fit", conformance.toString());
        Requirement<Hardness> other = Requirement.atMost(Parameter.GENERAL_HARDNESS, Parameter.GENERAL_HARDNESS.of(9));
        Refused.argument("no draw was judged against GH at most 9 °dH: own rule", () -> conformance.probability(other));
        Refused.argument(
                "a probability must be from 0 to 1, but was NaN", () -> conformance.standardErrorOf(Double.NaN));
        Refused.argument(
                "a conformance probability needs the verdict of at least one draw", () -> Conformance.of(List.of()));
        Verdict elsewhere = Requirements.named("else").with(other).judge(Evidence.none());
        Refused.argument(
                "verdicts of draws must be against the same requirements, but were for test tank and else",
                () -> Conformance.of(List.of(at(7), elsewhere)));
    }
}
