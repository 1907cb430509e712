package evenwater.examples.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be used is one line that names file, line, what was read and what is allowed; exit code 2, nothing half-printed. */
class UnusableInputTest {

    @TempDir
    Path folder;

    private static void assertRefused(String message, Run run) {
        assertEquals(message + System.lineSeparator(), run.err());
        assertEquals("", run.out());
        assertEquals(2, run.exitCode());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "sodum,8,mg/L, | unknown analyte 'sodum': did you mean sodium? Correct it, say what it means, or leave the row out: --name or --ignore",
                "nitrate,8,mg/L, | nitrate '8 mg/L': it may be as N (0.571 mmol/L) or as NO₃⁻ (0.129 mmol/L): state the basis, or say --basis, such as --basis nitrate=N",
                "silica,10,mg/L, | silica '10 mg/L': it may be as SiO₂ (0.166 mmol/L) or as Si (0.356 mmol/L): state the basis, or say --basis, such as --basis nitrate=N",
                "hardness,25,°F, | hardness '25 °F': '°F' may be French degrees (write °fH) or degrees Fahrenheit",
                "hardness,22,gr, | hardness '22 gr': 'gr' may be grains per US gallon (write gpg) or grams",
                "hardness,180,mg/L, | hardness '180 mg/L': 'mg/L' may be mg/L as CaCO3 (100.086 mg/mmol) or as CaO (56.077 mg/mmol): add one, or say --unit, such as --unit 'hardness=mg/L CaCO3'",
                "sodium,5,mg/kg, | sodium '5 mg/kg': a reading by mass needs the density of the water: state it as an option: --density '0.998 kg/L'",
                "sodium,5,, | sodium '5': the unit is missing, such as mg/L or mmol/L, or say --unit, such as --unit 'hardness=mg/L CaCO3'",
                "sodium,-5,mg/L, | sodium must not be negative, but was -5 mg/L",
                "sodium,NaN,mg/L, | sodium 'NaN mg/L': expected a number such as 4.1, <2, 3-5 or ND",
                "sodium,>500,mg/L, | sodium '>500 mg/L': a reading above the range of the test has no upper end: dilute and repeat, or leave the row out: --ignore",
                "sodium,1e300,mg/L, | sodium must be at most 10.0 mol/L, but was 1e300 mg/L",
                "pH,15,, | pH must be from 0 to 14, but was 15",
                "conductivity,640,mS, | conductivity '640 mS': 'mS' may be mS/cm or mS/m: add the length",
            })
    void rowsAreRefusedWithTheirLine(String row, String problem) {
        Run run = Run.on(folder, "analyte,value,unit,as\nKH,5,°dKH,\n" + row + "\n");
        assertRefused("report.csv:3: " + problem, run);
    }

    @Test
    void aDecimalCommaIsNeverAColumnBreak() {
        assertRefused(
                "report.csv:2: 5 fields where the header has 4; a number with a decimal comma or grouped thousands must be quoted: "
                        + "nitrate|3|2|mg/L|N",
                Run.on(folder, "analyte,value,unit,as\nnitrate,3,2,mg/L,N\n"));
    }

    @Test
    void aDecimalCommaIsNeverAThousand() {
        assertRefused(
                "report.csv:2: nitrate '3,2 mg/L as N': the comma groups no thousands; if it marks decimals, use a point or say so: --decimal",
                Run.on(folder, "analyte,value,unit,as\nnitrate,\"3,2\",mg/L,N\n"));
        assertRefused(
                "report.csv:2: hardness '1,250 mg/L as CaCO3': it may be 1250 or 1.250: say what a comma means: --decimal",
                Run.on(folder, "analyte;value;unit;as\nhardness;1,250;mg/L;CaCO3\n"));
    }

    @Test
    void filesThatAreNoReportAreRefused() {
        assertRefused(
                "report.csv: the file is empty; expected a header line analyte,value,unit,as", Run.on(folder, ""));
        assertRefused(
                "report.csv:1: the header has no column 'unit' but analyte, value; expected analyte,value,unit,as",
                Run.on(folder, "analyte,value\nsodium,3\n"));
        assertRefused(
                "report.csv:1: the header has the column value twice", Run.on(folder, "analyte,value,unit,value\n"));
        assertRefused(
                "report.csv: no row with a reading that can be used, such as hardness, alkalinity, calcium or sodium",
                Run.on(folder, "analyte,value,unit,as\narsenic,1,µg/L,\n"));
        assertRefused(
                "report.csv: a quoted field is not closed or is followed by text",
                Run.on(folder, "analyte,value,unit,as\n\"sodium,3,mg/L,\n"));
        Run missing = Run.of(folder.resolve("none.csv").toString());
        assertEquals(2, missing.exitCode());
        assertTrue(missing.err()
                .endsWith("none.csv: cannot be read: no such file, or not allowed" + System.lineSeparator()));
        assertEquals(2, Run.of(folder.toString()).exitCode());
    }

    @Test
    void binaryAndHugeFilesAreRefused() {
        byte[] noise = new byte[4096];
        new java.util.Random(7).nextBytes(noise);
        assertEquals(2, Run.on(folder, noise).exitCode());
        assertRefused(
                "report.csv: larger than 10000000 bytes, which is no laboratory report",
                Run.on(folder, new byte[10_000_001]));
        assertRefused(
                "report.csv:10002: more than 10000 rows",
                Run.on(folder, "analyte,value,unit,as\n" + "arsenic,1,µg/L,\n".repeat(10_001)));
    }

    @Test
    void contradictionsAreRefused() {
        assertRefused(
                "report.csv:4: sodium is 9 mg/L here and 5 mg/L in line 2: leave one out",
                Run.on(folder, "analyte,value,unit,as\nsodium,5,mg/L,\nKH,5,°dKH,\nNa,9,mg/L,\n"));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "--softener=salt",
                "--target=6 dH",
                "--leakage=1 gpg",
                "--softener=sodium --target=60_°dH",
                "--softener=sodium --target=3,2_°dH",
                "--softener=sodium --leakage=-1_gpg",
                "--reverse-osmosis=0.95",
                "--reverse-osmosis=1.5,0.9",
                "--recovery=0.3",
                "--reverse-osmosis=0.95,0.98 --recovery=2",
                "--reverse-osmosis=0.95,0.98 --reject=XY=0.5",
                "--dose=gypsum",
                "--dose=gypsum=1_g/10_gal",
                "--dose=gypsum=3_gr/10_L",
                "--dose=unobtainium=1_g/10_L",
                "--dose=calcium_chloride=1_g/10_L",
                "--dose=gypsum=1_g/0_L",
                "--dose=hydrochloric_acid=1_tsp/10_L",
                "--hardness-in=furlong",
                "--basis=sodum=Na",
                "--basis=nitrate",
                "--decimal=dot",
                "--density=-1_kg/L",
                "--calcium-to-magnesium=3",
                "--calcium-to-magnesium=x_by_mass",
                "--calcium-to-magnesium=3d_by_mass",
                "--calcium-to-magnesium=-3_by_mass",
                "--calcium-to-magnesium=0_by_mass",
                "--unit=hardness=bananas",
                "--unit=hardness=",
                "--basis=nitrate=N --basis=nitrate=NO3",
                "--name=x=calcium --name=x=sodium",
                "--density=998_kg/L",
                "--softener=sodium --leakage=",
                "--blend=6_°dH",
                "--reverse-osmosis=0.95,0.98 --reject=Na+=0.5 --reject=sodium=0.9",
                "--dose=gypsum=1000000000_tsp/1_L",
                "--name=x=calcium --ignore=x",
                "--basis=nitrate=N --basis=NO3=NO3",
                "@/",
                "--softener=",
                "--dose=",
                "--carrier=",
                "--reverse-osmosis=",
                "--softener=sodium --softener=potassium",
                "--carrier=Cl-",
                "--carrier=Na+,Cl-",
                "--no-treatment --softener=sodium",
                "--frobnicate",
                "one.csv two.csv",
            })
    void optionsAreRefusedInOneLine(String options) {
        String[] args = java.util.Arrays.stream(options.split(" "))
                .map(option -> option.replace('_', ' '))
                .toArray(String[]::new);
        Run run = Run.of(args);
        assertEquals(2, run.exitCode(), run.out());
        assertEquals("", run.out());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(
                run.err().startsWith("--")
                        || run.err().contains(": ")
                        || run.err().contains("option"),
                run.err());
        assertTrue(run.err().length() > 20 && !run.err().contains("Exception"), run.err());
    }

    @Test
    void aSoftenerNeedsAHardness() {
        assertRefused(
                "report.csv: --softener needs hardness, or calcium and magnesium, and the report has none",
                Run.on(folder, "analyte,value,unit,as\nKH,5,°dKH,\nhardness,ND,°dH,\n", "--softener=sodium"));
    }

    @Test
    void aBasisIsAFormula() {
        Run run = Run.on(folder, "analyte,value,unit,as\nnitrate,5,mg/L,\n", "--basis=nitrate=Q");
        assertRefused("report.csv: unknown basis 'Q' in an option: expected a formula such as N or NO3", run);
    }

    @Test
    void orphanedOptionsAreRefusedWhateverTheReportHas() {
        String noHardness = "analyte,value,unit,as\nKH,5,°dKH,\n";
        assertRefused(
                "--leakage and --target need --softener; past a membrane say --blend",
                Run.on(folder, noHardness, "--leakage=garbage"));
        assertRefused(
                "--recovery, --blend and --reject need --reverse-osmosis",
                Run.on(folder, noHardness, "--recovery=garbage"));
    }

    @Test
    void aSlipOfAnOptionIsAskedAbout() {
        Run run = Run.of("--softner=sodium");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("did you mean --softener?"), run.err());
    }

    @Test
    void aFileMayBeginWithAnAt() {
        assertRefused("@r.csv: cannot be read: no such file, or not allowed", Run.of("@r.csv"));
    }

    @Test
    void whatHasNoAnswerNamesItsOption() {
        String report = "analyte,value,unit,as\nhardness,6,°dH,\n";
        assertRefused(
                "--target: wanted hardness 7 °dH is above the 6 °dH of the raw water: a softener cannot add hardness",
                Run.on(folder, report, "--softener=sodium", "--target=7 °dH"));
        Run blend = Run.on(folder, report, "--reverse-osmosis=0.9,0.9", "--blend=7 °dH");
        assertTrue(blend.err().startsWith("--blend: wanted hardness 7 °dH is not between the"), blend.err());
    }

    @Test
    void anErrorIsNoLongerThanItMayBe() {
        Run run = Run.of("--frobnicate" + "x".repeat(5000));
        assertEquals(2, run.exitCode());
        assertTrue(run.err().length() <= 503, run.err());
    }

    @Test
    void whatIsSaidTwiceMustBeSaidAlike() {
        String report = "analyte,value,unit,as\nnitrate,5,mg/L,\n";
        assertRefused(
                "report.csv: options contradict each other: nitrate cannot be both 'N' and 'NO3'",
                Run.on(folder, report, "--basis=nitrate=N", "--basis=nitrate=NO3"));
        assertEquals(
                0,
                Run.on(folder, report, "--basis=nitrate=N", "--basis=nitrate=N").exitCode());
    }

    @Test
    void aDoseIsLessThanTheWater() {
        String report = "analyte,value,unit,as\nhardness,22,gpg,\n";
        assertRefused(
                "--dose: 'gypsum=9e6 g/1 L' is more than a kilogram for each litre",
                Run.on(folder, report, "--dose=gypsum=9e6 g/1 L"));
    }

    @Test
    void wishesForTheTankAreChecked() {
        String csv = "analyte,value,unit,as\nGH,8,°dH,\nKH,5,°dKH,\n";
        Run whale = Run.on(folder, csv, "--tank=whale");
        assertEquals(2, whale.exitCode());
        assertEquals("", whale.out());
        assertTrue(whale.err().startsWith("--tank: kind of tank 'whale' names none of these: soft-water breeding"));
        assertRefused(
                "--reading: 'chlorine' must be a name and a value with = between them",
                Run.on(folder, csv, "--reading=chlorine"));
        assertTrue(Run.on(folder, csv, "--reading=chlorin=0 mg/L")
                .err()
                .startsWith("--reading: no parameter is named 'chlorin'"));
        assertRefused(
                "--reading: nitrite must not be negative, but was -1 mg/L NO₂",
                Run.on(folder, csv, "--reading=nitrite=-1 mg/L NO2"));
        assertEquals(2, Run.on(folder, csv, "--reading=nitrite=0.1 mg/L").exitCode(), "of what is not said");
        assertEquals(2, Run.on(folder, csv, "--reading=pH=NaN").exitCode());
        assertRefused(
                "--volume: volume of the water must be from 0.001 L to 1000000 L, but was 0 L",
                Run.on(folder, csv, "--volume=0 L"));
        assertRefused(
                "--uncertainty: share must be from 0 % to 50 %, but was 80 %",
                Run.on(folder, csv, "--uncertainty=80 %"));
        assertEquals(2, Run.on(folder, csv, "--shelf=moon dust").exitCode());
    }
}
