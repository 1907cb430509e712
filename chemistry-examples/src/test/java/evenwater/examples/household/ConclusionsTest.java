package evenwater.examples.household;

import static evenwater.examples.household.BundledHouseholdTest.flat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the main job concludes: ranges, verdicts and what speaks against them, cautions. */
class ConclusionsTest {

    private static final String SIMPLE = "analyte,value,unit,as\nhardness,22,gr/gal,CaCO3\nalkalinity,9.5,°dH,\n";
    private static final String MEMBRANE = "--reverse-osmosis=0.95,0.98";

    @TempDir
    Path folder;

    private Run run(String csv, String... options) {
        Run run = Run.on(folder, csv, options);
        assertEquals("", run.err());
        assertEquals(0, run.exitCode());
        return run;
    }

    @Test
    void strongBasesAndAcidsLeaveNoVerdict() {
        // 2.4 meq/L of OH⁻ in a water with next to no carbonate: pH above 11
        String lime =
                flat(run(SIMPLE, MEMBRANE, "--dose=calcium hydroxide=9 g/100 L").out());
        assertTrue(lime.contains("Until air has brought CO₂ the pH can pass 10, which kills"), lime);
        assertTrue(lime.contains("Handling calcium hydroxide: caustic, pH 12.4, eye damage."), lime);
        assertFalse(lime.contains(": fit"), lime);
        String acid = flat(run(SIMPLE, "--no-treatment").out());
        assertFalse(acid.contains("DO NOT USE"), acid);
        String dosed =
                flat(run(SIMPLE, "--dose=hydrochloric acid 31 %=5 g/100 L").out());
        assertTrue(dosed.contains("measure the pH before any animal meets the water: below 5 kills."), dosed);
    }

    @Test
    void waterThatIsSoftByExchangeIsNoSoftWater() {
        String soft = flat(run("analyte,value,unit,as\nGH,10,°dH,\nKH,2,°dKH,\nsodium,8,mg/L,\n")
                .out());
        assertTrue(
                soft.contains("soft-water breeding (discus, cardinal): not fit:")
                        && soft.contains("sodium 90 mg/L Na⁺: above 50 mg/L Na⁺, by 40 mg/L Na⁺"),
                soft);
        String bare = flat(run("analyte,value,unit,as\nGH,0.5,°dH,\nKH,0,°dKH,\nsodium,1,mg/L,\n", "--no-treatment")
                .out());
        assertTrue(bare.contains("general community: not fit: GH 0.5 °dH: below 5 °dH, by 4.5 °dH"), bare);
    }

    @Test
    void poisonsOfTheReportAreNamed() {
        String out = flat(run(
                        SIMPLE + "H2S,2,mg/L,\ncyanide,0.1,mg/L,\nBlei,0.2,mg/L,\nnickel,<0.5,mg/L,\nCd,0.02,mg/L,\n"
                                + "trihalomethanes,0,µg/L,\nturbidity,3,NTU,\nfluoride,5,mg/L,\niron,6,mg/L,\n",
                        "--no-treatment")
                .out());
        assertTrue(out.contains("- lead 0.2 mg/L: above 0.0025 mg/L, by 0.198 mg/L"), out);
        assertTrue(out.contains("- hydrogen sulfide 2 mg/L: above 0.002 mg/L, by 2 mg/L; aerate the water."), out);
        assertTrue(out.contains("- cyanide 0.1 mg/L: above"), out);
        assertTrue(out.contains("- cadmium 0.02 mg/L: above"), out);
        assertTrue(out.contains("- iron 6 mg/L Fe²⁺: above 1 mg/L Fe²⁺"), out);
        assertTrue(flat(run(SIMPLE + "nickel,<0.5,mg/L,\n", "--no-treatment", "--tank=general")
                        .out())
                .contains("nickel 0 to 0.5 mg/L: undecided"));
        assertTrue(
                out.contains("other poisons that the report names are not judged here beyond the values shown"), out);
        assertTrue(out.contains("Fluoride above 1.5 mg/L"), out);
        assertFalse(flat(run(SIMPLE, "--no-treatment").out()).contains("poisons"));
    }

    @Test
    void tracesOfAnOrdinaryTapAreNoAlarm() {
        String out = flat(run(
                        SIMPLE + "copper,<0.05,mg/L,\nzinc,0.01,mg/L,\naluminium,20,µg/L,\nnitrite,<0.1,mg/L,NO2\n"
                                + "lead,0.5,µg/L,\narsenic,2,ppb,\nchloroform,20,µg/L,\n",
                        "--no-treatment")
                .out());
        assertFalse(out.contains("DO NOT USE"), out);
        String much = flat(run(SIMPLE + "copper,0.05,mg/L,\nchlorine,0.5,mg/L,\nlead,3,drops,\n", "--no-treatment")
                .out());
        assertTrue(much.contains("- copper 0.05 mg/L Cu²⁺: above 0.03 mg/L Cu²⁺"), much);
        assertTrue(much.contains("- chlorine 0.5 mg/L: above 0.02 mg/L"), much);
        assertTrue(flat(run(SIMPLE + "lead,3,drops,\n", "--no-treatment", "--tank=general")
                        .out())
                .contains("lead 0 mg/L or more: undecided"));
    }

    @Test
    void nitriteAndNitrateTogetherAreCautionedAgainst() {
        String nitrogen = SIMPLE + "nitrite,%s,mg/L,N\nnitrate,8,mg/L,N\n";
        assertTrue(run(nitrogen.formatted("2"), "--no-treatment").out().contains("- Nitrite above 3 mg/L"));
        // 8 mg/L of N are 35.41 of NO₃⁻; 0.2 are 0.657 of NO₂⁻: 0.71 + 0.22 = 0.93
        assertFalse(run(nitrogen.formatted("0.2"), "--no-treatment").out().contains("- Nitrite above 3 mg/L"));
        // 0.3 are 0.985: 0.71 + 0.33 = 1.04
        assertTrue(run(nitrogen.formatted("0.3"), "--no-treatment").out().contains("- Nitrite above 3 mg/L"));
    }

    @Test
    void aMembraneMayBeBlendedForAHardness() {
        String out =
                flat(run(SIMPLE, MEMBRANE, "--blend=6 °dH", "--hardness-in=°dH").out());
        assertTrue(out.contains("of the water goes past the membrane"), out);
        assertTrue(out.contains("The water behind this stage: hardness 6.00 °dH"), out);
    }

    @Test
    void theBypassHasARange() {
        String kit = "analyte,value,unit,as\nhardness,8-9,°dH,\nKH,5,°dKH,\n";
        String out = flat(run(kit, "--softener=sodium", "--target=3 °dH").out());
        // 3/9 to 3/8
        assertTrue(out.contains("Bypass: 35.29 % (33.33 to 37.50 %) of the water goes past the resin."), out);
    }

    @Test
    void manySpoonsAreEachTakenAtTheirEnd() {
        String kit = "analyte,value,unit,as\nhardness,10,°dH,\nKH,5,°dH,\nsodium,10,mg/L,\n";
        String base = "--dose=baking soda=%s tsp/60 L";
        String acid = "--dose=citric acid=1 tsp/40 L";
        String many = run(
                        kit,
                        base.formatted("0.5"),
                        base.formatted("0.5"),
                        base.formatted("1"),
                        base.formatted("1"),
                        acid,
                        acid)
                .out();
        String two =
                run(kit, base.formatted("3"), "--dose=citric acid=2 tsp/40 L").out();
        String range = "KH 8.06 to 10.9 °dKH: ";
        assertTrue(flat(many).contains(range), many);
        assertTrue(flat(two).contains(range), two);
    }

    @Test
    void nineIntervalsAreJudgedLikeEight() {
        String nine = "analyte,value,unit,as\ncalcium,38.876-41.280,mg/L,\nmagnesium,14.146-15.020,mg/L,\n"
                + "sodium,26.760-28.415,mg/L,\npotassium,26.548-28.190,mg/L,\nchloride,44.771-47.541,mg/L,\n"
                + "sulfate,60.659-64.411,mg/L,\nbicarbonate,77.061-81.827,mg/L,\nfluoride,%s,mg/L,\n"
                + "nitrate,44.747-47.515,mg/L,NO3\n";
        for (String fluoride : new String[] {"1.714-1.820", "1.767"}) {
            String out = flat(run(nine.formatted(fluoride), "--no-treatment").out());
            assertTrue(out.contains("within the intervals of the report it may be accepted or not"), out);
            assertFalse(out.contains("Doubt every figure"), out);
        }
    }

    @Test
    void carbonateIsNamedWhereItIsLikelyMissing() {
        String high = "analyte,value,unit,as\ncalcium,40,mg/L,\nbicarbonate,61,mg/L,\npH,9.4,,\n";
        String out = flat(run(high, "--no-treatment").out());
        assertTrue(out.contains("Carbonate that nobody stated is likely part of it, and raises the alkalinity."), out);
    }

    @Test
    void aResinTakesUpMoreThanIsCounted() {
        String out = flat(run(SIMPLE + "aluminium,1,mg/L,\nzinc,1,mg/L,\n").out());
        assertTrue(out.contains("A resin takes up aluminium, zinc as well, which is not counted here"), out);
    }

    @Test
    void boricAcidPassesAMembraneMoreEasily() {
        assertTrue(
                flat(run(SIMPLE + "boron,1,mg/L,\n", MEMBRANE).out()).contains("Boric acid is taken to be held back"));
        assertFalse(flat(run(SIMPLE, MEMBRANE).out()).contains("Boric acid"));
    }

    @Test
    void readingsOfAKitSettleWhatIsUnknown() {
        String csv =
                "analyte,value,unit,as\nGH,8,°dH,\nKH,4,°dKH,\nsodium,20,mg/L,\npotassium,2,mg/L,\nchloride,40,mg/L,\n"
                        + "sulfate,60,mg/L,\n";
        String out = flat(run(
                        csv,
                        "--no-treatment",
                        "--tank=General Community",
                        "--reading=pH=7.4",
                        "--reading=chlorine=0 mg/L",
                        "--reading=total ammonia=0 mg/L NH4",
                        "--reading=nitrite=0 mg/L NO2",
                        "--reading=copper=0 mg/L Cu")
                .out());
        assertTrue(out.contains("Fit for general community. - GH 8 °dH: inside 5 to 15 °dH"), out);
    }

    private static final String RAIN =
            "analyte,value,unit,as,uncertainty\nGH,1,°dH,,0.25\nKH,1,°dKH,,10 %\nsodium,2,mg/L,,\n"
                    + "potassium,1,mg/L,,\nchloride,3,mg/L,,\nsulfate,4,mg/L,,\n";

    @Test
    void theRecipeBringsAWaterIntoTheRangesOfATank() {
        String out = flat(
                run(RAIN, "--no-treatment", "--tank=general", "--volume=100 L").out());
        assertTrue(out.contains("For 100 L of water"), out);
        assertTrue(out.contains("Then: Undecided for general community"), out);
        assertTrue(out.contains("GH 1.00 ± 0.5 °dH") || out.contains("GH 1.0 ± 0.5 °dH 0 %"), out);
        assertFalse(out.contains("cannot all be met"), out);
    }

    /** Nothing on the shelf raises alkalinity. */
    @Test
    void whatTheShelfCannotDoIsSaid() {
        String out = flat(run(RAIN, "--no-treatment", "--tank=general", "--shelf=Epsom salt")
                .out());
        assertTrue(out.contains("cannot all be met:"), out);
        assertTrue(out.contains("Then: Not fit for general community"), out);
    }

    @Test
    void withoutUncertaintyNothingIsDrawnApart() {
        String csv =
                "analyte,value,unit,as\nGH,8,°dH,\nKH,5,°dKH,\nsodium,20,mg/L,\npotassium,2,mg/L,\nchloride,40,mg/L,\n"
                        + "sulfate,60,mg/L,\n";
        String out = flat(run(csv, "--no-treatment", "--tank=general", "--uncertainty=0 %")
                .out());
        assertTrue(out.contains("GH 8 °dH 100 %"), out);
        String wide = flat(run(csv, "--no-treatment", "--tank=general", "--uncertainty=20 %")
                .out());
        assertTrue(wide.contains("GH 8.0 ± 3.2 °dH") || wide.contains("GH 8 ± 3 °dH"), wide);
    }
}
