package evenwater.chemistry.verdict;

import static evenwater.chemistry.verdict.VerdictTest.GENERAL;
import static evenwater.chemistry.verdict.VerdictTest.finding;
import static evenwater.chemistry.verdict.VerdictTest.kit;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a verdict makes of poisons, and the cautions about them. */
class PoisonVerdictTest {

    /** Of 0.5 mg/L NH₄⁺ at pH 8.5 and 25 °C: 0.5 · 17.031/18.039 · 0.15206 = 0.0718 mg/L NH₃ by the fraction of Emerson. */
    @Test
    void ammoniaIsJudgedByItsUnionisedPart() {
        Requirements anyPH = GENERAL.without(Parameter.PH);
        Verdict alkaline = anyPH.judge(kit(8, 5, 8.5).with(Parameter.TOTAL_AMMONIA, Parameter.TOTAL_AMMONIA.of(0.5)));
        Finding<?> ammonia = finding(alkaline, Parameter.UNIONISED_AMMONIA);
        assertEquals(Standing.ABOVE, ammonia.standing());
        assertEquals("un-ionised ammonia 0.0718 mg/L NH₃: above 0.02 mg/L NH₃, by 0.0518 mg/L NH₃", ammonia.toString());
        Verdict acid = anyPH.judge(kit(8, 5, 6.5).with(Parameter.TOTAL_AMMONIA, Parameter.TOTAL_AMMONIA.of(0.5)));
        assertEquals(Standing.INSIDE, finding(acid, Parameter.UNIONISED_AMMONIA).standing());
        Verdict warm = anyPH.judge(kit(8, 5, 7.5)
                .with(Parameter.TEMPERATURE, Parameter.TEMPERATURE.of(30))
                .with(Parameter.TOTAL_AMMONIA, Parameter.TOTAL_AMMONIA.of(1)));
        Verdict cold = anyPH.judge(kit(8, 5, 7.5)
                .with(Parameter.TEMPERATURE, Parameter.TEMPERATURE.of(10))
                .with(Parameter.TOTAL_AMMONIA, Parameter.TOTAL_AMMONIA.of(1)));
        assertEquals(Standing.ABOVE, finding(warm, Parameter.UNIONISED_AMMONIA).standing());
        assertEquals(Standing.INSIDE, finding(cold, Parameter.UNIONISED_AMMONIA).standing());
    }

    @Test
    void ammoniaWithoutPHIsDecidedOnlyWhereThereIsNone() {
        Evidence none = Evidence.none().with(Parameter.TOTAL_AMMONIA, Parameter.TOTAL_AMMONIA.of(0));
        Evidence some = Evidence.none().with(Parameter.TOTAL_AMMONIA, Parameter.TOTAL_AMMONIA.of(0.5));
        assertEquals(
                Standing.INSIDE,
                finding(GENERAL.judge(none), Parameter.UNIONISED_AMMONIA).standing());
        assertEquals(
                Standing.UNDECIDED,
                finding(GENERAL.judge(some), Parameter.UNIONISED_AMMONIA).standing());
    }

    @Test
    void nitrateAndNitriteTogetherBringTheirCaution() {
        Water water = Water.pure();
        Evidence evidence = Evidence.of(water)
                .with(Parameter.NITRATE, Parameter.NITRATE.of(30))
                .with(Parameter.NITRITE, Parameter.NITRITE.of(1.3));
        assertTrue(GENERAL.judge(evidence).cautions().stream().anyMatch(c -> c.topic() == CautionTopic.NITRITE));
        assertFalse(GENERAL.judge(evidence.with(Parameter.NITRITE, Parameter.NITRITE.of(1.1))).cautions().stream()
                .anyMatch(c -> c.topic() == CautionTopic.NITRITE));
    }

    @Test
    void anOwnLimitForAPoisonStillAsksForIt() {
        Requirements lax = GENERAL.with(Requirement.atMost(Parameter.CHLORINE, Parameter.CHLORINE.of(0.05)));
        Evidence allButChlorine = kit(8, 5, 7.2)
                .with(Parameter.TOTAL_AMMONIA, Parameter.TOTAL_AMMONIA.of(0))
                .with(Parameter.NITRITE, Parameter.NITRITE.of(0))
                .with(Parameter.COPPER, Parameter.COPPER.of(0));
        assertEquals(Outcome.UNDECIDED, lax.judge(allButChlorine).outcome());
        assertEquals(List.of(Parameter.CHLORINE), lax.judge(allButChlorine).missing());
    }

    @Test
    void cautionsSpeakOfAllThatIsKnown() {
        Evidence salty = kit(8, 5, 7.2).with(Parameter.SODIUM, Parameter.SODIUM.of(500));
        assertTrue(GENERAL.judge(salty).cautions().stream().anyMatch(c -> c.topic() == CautionTopic.SODIUM));
        Evidence copper = Evidence.none().with(Parameter.COPPER, Parameter.COPPER.of(50));
        assertTrue(Requirements.ofDrinkingWater().judge(copper).cautions().stream()
                .anyMatch(c -> c.topic() == CautionTopic.COPPER));
    }

    @Test
    void poisonsAreChangedFirstThenWhatIsFarthestOutside() {
        Verdict verdict = GENERAL.judge(kit(40, 11, 7.2).with(Parameter.CHLORINE, Parameter.CHLORINE.of(0.025)));
        assertEquals(
                List.of(Parameter.CHLORINE, Parameter.GENERAL_HARDNESS, Parameter.CARBONATE_HARDNESS),
                verdict.toChange().stream()
                        .map(finding -> finding.requirement().parameter())
                        .toList());
    }
}
