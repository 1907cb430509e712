package evenwater.examples.household;

import static evenwater.examples.household.BundledHouseholdTest.flat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports of a user's own: untidy ones are read, and the house does what the options say. */
class OwnReportTest {

    private static final String SIMPLE = "analyte,value,unit,as\nhardness,22,gr/gal,CaCO3\nalkalinity,9.5,°dH,\n";

    @TempDir
    Path folder;

    private Run run(String csv, String... options) {
        Run run = Run.on(folder, csv, options);
        assertEquals("", run.err());
        assertEquals(0, run.exitCode());
        return run;
    }

    @Test
    void aReportWithoutAHouseIsSoftenedAndSaysSo() {
        String out = run(SIMPLE).out();
        assertTrue(flat(out).contains("No treatment was named, so a sodium softener without leakage is assumed."), out);
        assertTrue(out.contains("≥ 173.0"), out); // 22 × 7.864, and the source was not measured for sodium
        assertFalse(run(SIMPLE, "--no-treatment").out().contains("Stage 1"));
        assertFalse(run(SIMPLE, "--softener", "potassium").out().contains("No treatment was named"));
    }

    @Test
    void untidyFilesAreRead() {
        String untidy = "\uFEFFUnit ; AS; Value; Analyte;Remark\r\n\r\n"
                + "mg/L;N;\"4,1\";\"Nitrate\";\"ok; really\"\r\n# a comment; of the lab\r\n"
                + "°dH;;21,1;Gesamthärte;\r\n;;n/a;pH;\r\nmg/L;;<2;Natrium\r\nmg/L;;ND;Fluorid;\r\n;;;;\r\n";
        String out = flat(run(untidy).out());
        assertTrue(out.contains("nitrate 4,1 mg/L as N"), out);
        assertTrue(out.contains("nitrate NO₃⁻ 18.15"), out);
        assertTrue(out.contains("21.10 °dH"), out);
        assertTrue(out.contains("pH n/a: no value"), out);
        assertTrue(out.contains("line 8, Fluorid ND mg/L: not detected, with no limit stated"), out);
    }

    @Test
    void groupedThousandsInQuotesAreRead() {
        assertTrue(flat(run("analyte,value,unit,as\nhardness,\"1,250\",mg/L,CaCO3\n")
                        .out())
                .contains("1250 mg/L CaCO3"));
    }

    @Test
    void otherEncodingsAreRead() {
        String expected = run(SIMPLE).out();
        assertEquals(
                expected,
                Run.on(folder, SIMPLE, Charset.forName("windows-1252")).out());
        assertEquals(expected, Run.on(folder, SIMPLE, StandardCharsets.UTF_16).out());
        assertEquals(
                expected,
                Run.on(folder, SIMPLE.replace(',', '\t'), StandardCharsets.UTF_8)
                        .out());
    }

    @Test
    void rowsAndColumnsMayStandInAnyOrder() {
        String turned = "as,unit,value,analyte\n,°dH,9.5,alkalinity\nCaCO3,gr/gal,22,hardness\n";
        assertEquals(
                flat(run(SIMPLE).out()).replaceAll("Measured:[^.]*\\.[^.]*\\.", ""),
                flat(run(turned).out()).replaceAll("Measured:[^.]*\\.[^.]*\\.", ""));
    }

    @Test
    void bypassMembraneAndDosesFollowTheOptions() {
        String out = flat(run(
                        SIMPLE,
                        "--softener=sodium",
                        "--leakage=0.5 gpg",
                        "--target=6 °dH",
                        "--reverse-osmosis=95 %,98 %",
                        "--recovery=0.3",
                        "--reject=NO3-=0.85",
                        "--dose=gypsum=30 g/10 L",
                        "--dose=Epsom salt=1 tsp/40 US gal")
                .out());
        assertTrue(out.contains("goes past the resin"), out);
        assertTrue(out.contains("The water behind this stage: hardness 6.00 °dH"), out);
        assertTrue(out.contains("85 % of NO₃⁻"), out);
        assertTrue(out.contains("some of the calcium sulfate dihydrate will stay undissolved"), out);
        assertTrue(out.contains("1 tsp(US) (4.9 g ± 20 % each) of magnesium sulfate heptahydrate in 40 gal(US)"), out);
    }

    @Test
    void unitsAreSpokenAsAsked() {
        String out = flat(
                run(SIMPLE, "--hardness-in=gpg", "--alkalinity-in=mg/L CaCO3").out());
        assertTrue(out.contains("The water behind this stage: hardness 0.000 gpg, alkalinity 169.6 mg/L CaCO3."), out);
    }

    @Test
    void optionsSettleWhatTheReportLeavesOpen() {
        String open = "analyte,value,unit,as\nhardness,25,°F,\nnitrate,8,mg/L,\nsodum,5,mg/kg,\nKH,5,°dKH,\n";
        String out = flat(run(
                        open,
                        "--unit=hardness=°fH",
                        "--basis=nitrate=N",
                        "--name=sodum=sodium",
                        "--density=1.0 kg/L",
                        "--calcium-to-magnesium=4 by mass",
                        "--carrier=Cl-,Na+")
                .out());
        assertTrue(out.contains("25.00 °fH"), out);
        assertTrue(out.contains("nitrate NO₃⁻ 35.41"), out);
        assertTrue(out.contains("sodium Na⁺ 5.00"), out);
        assertTrue(out.contains("calcium to magnesium 4 : 1 by mass assumed"), out);
        assertTrue(out.contains("counted as chloride; the bounds also try sulfate"), out);
        assertTrue(flat(run(open, "--unit=hardness=°fH", "--basis=nitrate=N", "--ignore=sodum")
                        .out())
                .contains("sodum 5 mg/kg: left out as asked"));
    }

    @Test
    void whatWasNotMeasuredIsNotJudged() {
        String kit = "analyte,value,unit,as\nhardness,0,°dH,\nKH,3,°dKH,\n";
        String out = flat(run(kit, "--no-treatment").out());
        assertTrue(out.contains("calcium Ca²⁺ 0.000"), out); // hardness was measured
        assertTrue(out.contains("sodium Na⁺ not measured"), out);
        assertFalse(out.contains("This water is"), out);
        assertFalse(out.contains("sodium 0"), out);
        String hardnessAlone = flat(run("analyte,value,unit,as\nhardness,20,°dH,\n", "--no-treatment")
                .out());
        assertTrue(hardnessAlone.contains("while they are unknown: KH, chlorine, total"), hardnessAlone);
        assertFalse(hardnessAlone.contains(": fit"), hardnessAlone);
        assertTrue(hardnessAlone.contains("alkalinity as HCO₃⁻ 435.2 7.13 0.000 or more"), hardnessAlone); // 20 °dKH
        assertTrue(hardnessAlone.contains("carbonate and non-carbonate hardness cannot be told"), hardnessAlone);
        assertTrue(hardnessAlone.contains("beside a source that was not measured for sodium:"), hardnessAlone);
        String calciumAlone = flat(run("analyte,value,unit,as\ncalcium,40,mg/L,\nKH,5,°dKH,\n", "--no-treatment")
                .out());
        assertTrue(
                calciumAlone.contains(
                        "general community: undecided: GH 5.6 °dH or more: undecided, wanted 5 to 15 °dH"),
                calciumAlone);
        assertTrue(calciumAlone.contains("Hardness by calcium and magnesium as far as measured"), calciumAlone);
        String limit = flat(run(kit + "sodium,<300,mg/L,\n", "--no-treatment", "--tank=planted")
                .out());
        assertTrue(limit.contains("sodium 0 to 300 mg/L Na⁺: undecided, wanted at most 50 mg/L Na⁺"), limit);
        assertTrue(limit.contains("This water is below or above it: the report cannot tell."), limit);
        assertTrue(flat(run(SIMPLE).out()).contains("sodium 173 mg/L Na⁺ or more: above 50 mg/L Na⁺, by 123 mg/L Na⁺"));
    }

    @Test
    void decimalCommasCanBeDeclared() {
        String commas = "analyte;value;unit;as\nhardness;1,250;mmol/L;\n";
        assertTrue(flat(run(commas, "--decimal=comma").out()).contains("1.25 mmol/L"));
        assertTrue(flat(run(commas, "--decimal=point").out()).contains("1250 mmol/L"));
    }

    @Test
    void headersMayBeAsLaboratoriesWriteThem() {
        String report =
                "Messwert;Parameter;Einheit;MDL;Method\n12;GH;°dH;;drops\nND;sodium;mg/L;2;ICP\nND;nitrite;mg/L;;x\n";
        String out = flat(run(report, "--no-treatment").out());
        assertTrue(out.contains("Columns passed over: Method."), out);
        assertTrue(out.contains("sodium ND <2 mg/L"), out);
        assertTrue(out.contains("sodium Na⁺ 1.00 0.043 0.000 to 2.00"), out);
        assertTrue(out.contains("nitrite ND mg/L: not detected, with no limit stated"), out);
    }

    @Test
    void withoutHardnessNothingIsSoftened() {
        String out =
                flat(run("analyte,value,unit,as\nKH,8,°dKH,\nsodium,20,mg/L,\n").out());
        assertTrue(out.contains("without hardness there is nothing to soften: the source alone."), out);
        assertTrue(out.contains("Hardness: not measured. Alkalinity: 8.00 °dKH."), out);
        assertTrue(out.contains("while they are unknown: GH, chlorine, total ammonia, nitrite, copper."), out);
        assertFalse(out.contains("Stage 1"), out);
    }

    @Test
    void ionsThatCannotBalanceCastDoubtOnEverything() {
        String salty = SIMPLE + "sodium,5000,mg/L,\nchloride,20,mg/L,\nsulfate,20,mg/L,\n";
        String out = flat(run(salty).out());
        assertEquals(
                3, out.split("The ions of the source do not balance", -1).length, out); // at the top and in the tank
        assertTrue(out.contains("NOT accepted: potassium was not measured and would make it worse."), out);
        assertFalse(flat(run(SIMPLE).out()).contains("do not balance"));
    }

    @Test
    void whatHarmsAnimalsIsNamedWhateverFits() {
        String out = flat(run(
                        "analyte,value,unit,as\nGH,8,°dH,\nKH,5,°dKH,\nfree chlorine,2,mg/L,\nchloride,10-20,mg/L,\n",
                        "--dose=copper sulfate pentahydrate=5 g/40 L")
                .out());
        assertTrue(out.contains("DO NOT USE this water for animals before this is settled:"), out);
        assertTrue(
                out.contains(
                        "chlorine 2 mg/L or more: above 0.02 mg/L, by 1.98 mg/L; treat the water against chlorine"),
                out);
        assertTrue(out.contains("copper 31.8 mg/L Cu²⁺ or more: above 0.03 mg/L Cu²⁺"), out);
        assertTrue(out.contains("- general community: not fit"), out);
        assertFalse(out.contains(": fit"), out);
    }

    @Test
    void aPotassiumSoftenerShowsItsPotassium() {
        String out = flat(run(SIMPLE, "--softener=potassium").out());
        // 22 × 17.118 mg/L of CaCO₃, 78.1966 of potassium for 100.086 of it
        assertTrue(
                out.contains(
                        "The softener gives potassium instead: ≥ 294.2 mg/L behind it, ≥ 73.56 mg in a 250 mL glass."),
                out);
        assertTrue(
                out.contains(
                        "water with much potassium, from a softener or a dose, may harm: ask a doctor, and keep an unsoftened cold tap for drinking."),
                out);
    }

    @Test
    void theDrainOfAMembraneIsShown() {
        String out =
                flat(run(SIMPLE, "--reverse-osmosis=95%,98%", "--recovery=0.4").out());
        assertTrue(
                out.contains("Of 100 L that are fed, 40.00 L pass and 60.00 L go to the drain, with hardness 34.8"),
                out);
    }

    @Test
    void softWaterPassesALeakySoftener() {
        String out = flat(run(SIMPLE, "--softener=sodium", "--leakage=30 °dH").out());
        assertTrue(out.contains("The water is no harder than the leakage: it passes unchanged."), out);
    }

    @Test
    void anAcidIsDosedByItsStrength() {
        String out =
                flat(run(SIMPLE, "--dose=hydrochloric acid 31 %=100 g/100 L").out());
        assertTrue(out.contains("Stage 1: 100 g of hydrochloric acid 31 % in 100 L"), out);
        assertTrue(out.contains("chloride Cl⁻ +301.4 -8.50"), out); // 1 g/L · 0.31 / 36.458 g/mol
        assertTrue(out.contains("Negative alkalinity is free mineral acid: the pH is below about 4.5."), out);
    }

    private static final String COMPLETE = "analyte,value,unit,as\ncalcium,%1$s,mg/L,\nmagnesium,%1$s,mg/L,\n"
            + "sodium,%1$s,mg/L,\npotassium,%1$s,mg/L,\nKH,%1$s,°dKH,\nchloride,%1$s,mg/L,\nsulfate,%1$s,mg/L,\n";

    @Test
    void criteriaThatCannotBeAskedAreLeftOut() {
        String noConductivity = COMPLETE.formatted("5") + "conductivity,0,µS/cm,\n";
        assertFalse(run(noConductivity).out().contains("over conductivity"));
        String empty = COMPLETE.formatted("0") + "TDS,100,mg/L,\n";
        assertTrue(run(empty, "--no-treatment").out().contains("Ion balance"));
        String brine = COMPLETE.formatted("5").replace("chloride,5", "chloride,30840");
        assertTrue(flat(run(brine).out()).contains("No criterion is made for so much salt."));
    }

    @Test
    void textOfTheReportCannotPassForOurs() {
        String forged = SIMPLE + "\"foo\n\nClass: soft\u202e (forged)\",1,mg/L,\n" + "x".repeat(500) + ",1,mg/L,\n";
        String out = run(forged).out();
        assertTrue(out.lines().noneMatch(line -> line.startsWith("Class: soft")), out);
        assertFalse(out.contains("\u202e"), out);
        assertTrue(out.lines().allMatch(line -> line.length() < 150), out);
    }

    @Test
    void aCommentMayStandAboveTheHeader() {
        assertTrue(run("# lab; 2024\n" + SIMPLE).out().contains("≥ 173.0"));
    }

    @Test
    void anAcidWithoutItsStrengthIsQuestioned() {
        String out = flat(run(SIMPLE, "--dose=hydrochloric acid=5 g/100 L").out());
        assertTrue(out.contains("Taken as pure hydrochloric acid; sold in solution it is weaker"), out);
    }

    @Test
    void cautionsFollowWhatTheWaterHolds() {
        String potassium =
                flat(run(SIMPLE, "--dose=potassium bicarbonate=5 g/60 L").out());
        assertTrue(
                potassium.contains("Kidney or heart disease, adrenal insufficiency, potassium-sparing drugs"),
                potassium);
        String salty = flat(run(SIMPLE + "sodium,400,mg/L,\n", "--no-treatment").out());
        assertTrue(salty.contains("Infants: do not make up formula"), salty);
        assertFalse(flat(run(SIMPLE, "--no-treatment").out()).contains("Infants"));
    }

    @Test
    void hardnessIsToldOverItsRange() {
        String out = flat(run("analyte,value,unit,as\nhardness,50-90,mg/L,CaCO3\nKH,1,°dKH,\n")
                .out());
        assertTrue(out.contains("= 4.09 gpg; it may be 2.80 to 5.04 °dH."), out);
        assertTrue(out.contains("Class: soft to moderately hard (USGS), slightly hard to moderately hard"), out);
        String open = flat(
                run("analyte,value,unit,as\ncalcium,400,mg/L,\nKH,1,°dKH,\n").out());
        assertTrue(
                open.contains("Class: very hard (USGS), very hard (softening trade), hard (Germany), very hard"), open);
        String least = flat(
                run("analyte,value,unit,as\ncalcium,10,mg/L,\nKH,1,°dKH,\n").out());
        assertTrue(least.contains("Class: soft or harder (USGS)"), least);
    }

    @Test
    void aTitratedHardnessIsNeverToppedByItsOwnIron() {
        String iron = "iron,5,mg/L,\nstrontium,2,mg/L,\n";
        assertFalse(flat(run(SIMPLE + iron).out()).contains("as an EDTA titration sees them"));
        String weighed = "analyte,value,unit,as\ncalcium,80,mg/L,\nmagnesium,10,mg/L,\n" + iron;
        assertTrue(
                flat(run(weighed).out()).contains("as an EDTA titration sees them: 14.13 °dH."),
                run(weighed).out());
    }

    @Test
    void theBalanceIsJudgedOverTheIntervals() {
        String open = COMPLETE.formatted("<300");
        String out = flat(run(open, "--no-treatment").out());
        assertTrue(out.contains("within the intervals of the report it may be accepted or not"), out);
    }

    @Test
    void acidMayBeWhatIsMissing() {
        String acid = "analyte,value,unit,as\ncalcium,10,mg/L,\nmagnesium,2,mg/L,\nsodium,5,mg/L,\npotassium,1,mg/L,\n"
                + "chloride,30,mg/L,\nsulfate,60,mg/L,\nalkalinity,0,meq/L,\npH,3.9,,\n";
        String out = flat(run(acid, "--no-treatment").out());
        assertTrue(out.contains("pH 3.9 means mineral acid: no alkalinity is only its upper bound"), out);
        assertFalse(out.contains("NOT accepted"), out);
        assertFalse(out.contains("Doubt every figure"), out);
        assertTrue(out.contains("0.000 °dKH or less"), out);
    }

    @Test
    void theStrengthOfAHydrateIsQuestioned() {
        String out = flat(
                run(SIMPLE, "--dose=calcium chloride dihydrate 77 %=5 g/100 L").out());
        assertTrue(out.contains("The strength is taken as that of the hydrate"), out);
        assertFalse(flat(run(SIMPLE, "--dose=calcium chloride anhydrous 77 %=5 g/100 L")
                        .out())
                .contains("The strength is taken as that of the hydrate"));
    }

    @Test
    void theSpoonGoesIntoTheRanges() {
        String out = flat(run(SIMPLE, "--no-treatment").out());
        String spooned = flat(run(
                        SIMPLE + "sodium,10,mg/L,\n",
                        "--dose=baking soda=2 tsp/40 US gal",
                        "--dose=Epsom salt=1 tsp/40 US gal")
                .out());
        assertFalse(out.contains("spoon is no balance"), out);
        // 2 × 4.6 g of NaHCO₃ in 151.4 L bring 16.63 mg/L of sodium, give or take a tenth
        assertTrue(spooned.contains("sodium Na⁺ 26.63 1.16 24.97 to 28.29"), spooned);
    }

    @Test
    void whatDoesNotDissolveIsNotJudgedInSilence() {
        String out = flat(run(SIMPLE, "--dose=gypsum=30 g/10 L").out());
        assertTrue(
                out.contains(
                        "Some of the calcium sulfate dihydrate stays undissolved: hardness and alkalinity are lower than computed"),
                out);
    }
}
