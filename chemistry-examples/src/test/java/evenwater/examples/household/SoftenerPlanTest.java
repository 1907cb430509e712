package evenwater.examples.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan of the softener in the main job. */
class SoftenerPlanTest {

    private static final String FIFTEEN_GRAINS = """
            analyte,value,unit,as
            total hardness,15,gr/gal,CaCO3
            alkalinity,200,mg/L,CaCO3
            sodium,10,mg/L,
            """;

    @TempDir
    private Path folder;

    private String plan(String... options) {
        Run run = Run.on(folder, FIFTEEN_GRAINS, options);
        assertEquals("", run.err());
        assertEquals(0, run.exitCode());
        String out = run.out();
        return out.substring(out.indexOf("Plan of the softener"), out.indexOf("Is it right for the tank?"));
    }

    private static double figure(String plan, String row) {
        var line = Pattern.compile(Pattern.quote(row) + " +([0-9.]+)").matcher(plan);
        assertTrue(line.find(), plan);
        return Double.parseDouble(line.group(1));
    }

    /** A page of the trade: 5 people at 80 gal and 15 gpg; 20000 grains last 3.3 days, of which one is kept. */
    @Test
    void theExampleOfTheTradeComesOut() {
        String plan = plan(
                "--softener",
                "sodium",
                "--people",
                "5",
                "--daily-use",
                "80 US gal",
                "--resin",
                "1 ft3",
                "--salt-dose",
                "6 lb/ft3");
        assertEquals(20, figure(plan, "capacity, kgr/ft³"), 0.005);
        assertEquals(2.33, figure(plan, "days between regenerations, the reserve kept"), 0.005);
        assertEquals(1514, figure(plan, "reserve, litres"), 0.5);
        assertEquals(2.72, figure(plan, "salt a time, kg"), 0.005);
        assertTrue(
                plan.contains("For 5 people at 80 gal(US) a day, 1 ft³ of resin, hardness in front of it 15 gpg, with"),
                plan);
        assertFalse(plan.contains("assumed"), plan);
    }

    @Test
    void whatNobodyStatedIsAssumedAndSaidToBe() {
        String plan = BundledHouseholdTest.flat(plan("--softener", "sodium"));
        assertTrue(plan.contains("For 4 people at 75 gal(US) a day (assumed: say --people or --daily-use)"), plan);
        assertTrue(plan.contains("of resin (as much as lasts 7 days at 8 lb/ft³: say --resin)"), plan);
        assertTrue(
                plan.contains(
                        "Dose: 8 lb/ft³ (128 g/L) of sodium chloride, which by the table takes least salt of those that last 7 days, co-flow."),
                plan);
    }

    @Test
    void potassiumAndCounterFlowShow() {
        String plan = BundledHouseholdTest.flat(
                plan("--softener", "potassium", "--counter-flow", "--resin", "1.5 ft3", "--people", "2"));
        assertTrue(plan.contains("of sodium chloride, as potassium chloride 81.7 g/L"), plan);
        assertTrue(plan.contains("counter-flow."), plan);
        assertEquals(401.2 / 2, figure(plan, "potassium behind the softener, mg/L"), 0.1); // 15 gpg times 13.374 mg/L
        assertTrue(plan.contains("of potassium, "), plan);
        assertTrue(plan.contains("plan by the table. Potassium chloride dissolves less in the cold"), plan);
    }

    @Test
    void measuredDaysCountWithTheBusiestAsReserve() {
        String plan = plan("--softener", "sodium", "--resin", "1.5 ft3", "--daily-use", "400 L,900 L,200 L");
        assertTrue(plan.contains("For 3 measured days, 1.5 ft³ of resin"), plan);
        assertEquals(900, figure(plan, "reserve, litres"), 0.05);
    }

    @Test
    void resinIsSizedForTheDaysThatWereAskedFor() {
        String plan = plan("--softener", "sodium", "--days", "10");
        assertTrue(
                BundledHouseholdTest.flat(plan).contains("(as much as lasts 10 days at 8 lb/ft³: say --resin)"), plan);
        assertEquals(10, figure(plan, "days between regenerations, the reserve kept"), 0.005);
    }

    @Test
    void tooLittleResinTakesTheMostOfTheTable() {
        String plan = BundledHouseholdTest.flat(plan("--softener", "sodium", "--resin", "1 ft3", "--people", "8"));
        assertTrue(
                plan.contains(
                        "Dose: 20 lb/ft³ (320 g/L) of sodium chloride, the most of the table, since by it no dose would last 3 days, co-flow."),
                plan);
    }

    @Test
    void aBypassMakesTheRunLonger() {
        double whole = figure(
                plan("--softener", "sodium", "--resin", "1 ft3", "--people", "3"),
                "days between regenerations, the reserve kept");
        double past = figure(
                plan("--softener", "sodium", "--target", "6 °dH", "--resin", "1 ft3", "--people", "3"),
                "days between regenerations, the reserve kept");
        assertTrue(past > 1.3 * whole, whole + " and " + past);
        String bypassed = plan("--softener", "sodium", "--target", "6 °dH", "--resin", "1 ft3", "--people", "3");
        double share = 6 / (15 * 0.95922); // gpg in degrees
        assertEquals(
                1 - share,
                figure(bypassed, "litres through the resin, the reserve included")
                        / figure(bypassed, "the same on a meter in front of the bypass"),
                1e-3);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "--people|0|--people: people of a household must be from 1 to 10000, but were 0",
                "--people|two|--people: 'two' is no number of people such as 4",
                "--daily-use|150 gal|--daily-use: 150 gal: 'gal' may be US gallons of 3.785411784 L (write US gal) or imperial gallons of 4.54609 L (write imp gal)",
                "--resin|0 L|--resin: volume of the resin must be positive, but was 0 L",
                "--salt-dose|3 lb/ft3|--salt-dose: the table of the trade (common practice) knows doses from 4 lb/ft³ to 20 lb/ft³, not 3 lb/ft³",
                "--days|0|--days: '0' is no number of days from 1 to 365, such as 7",
                "--days|999|--days: '999' is no number of days from 1 to 365, such as 7",
                "--days|soon|--days: 'soon' is no number of days from 1 to 365, such as 7"
            })
    void nonsenseIsRefusedInOneLine(String option, String value, String message) {
        Run run = Run.on(folder, FIFTEEN_GRAINS, "--softener", "sodium", option, value);
        assertEquals(message, run.err().strip());
        assertEquals("", run.out());
        assertEquals(2, run.exitCode());
    }

    @Test
    void contradictionsAndOrphansAreRefused() {
        assertEquals(
                "--salt-dose and --days contradict each other: leave one out",
                Run.on(folder, FIFTEEN_GRAINS, "--softener", "sodium", "--salt-dose", "8 lb/ft3", "--days", "4")
                        .err()
                        .strip());
        assertEquals(
                "--people, --daily-use, --resin, --salt-dose, --days and --counter-flow need a softener",
                Run.on(folder, FIFTEEN_GRAINS, "--no-treatment", "--people", "4")
                        .err()
                        .strip());
        assertEquals(
                "--days: 1 ft³ of resin cannot last 9.0 days with this water and use: with the most salt of the table of the trade (common practice) it lasts 6.33 days; 38.6 L of resin would last so long",
                Run.on(
                                folder,
                                FIFTEEN_GRAINS,
                                "--softener",
                                "sodium",
                                "--resin",
                                "1 ft3",
                                "--people",
                                "4",
                                "--days",
                                "9")
                        .err()
                        .strip());
    }

    @Test
    void aWaterThatIsSoftAlreadyHasNoModel() {
        Run run = Run.on(
                folder,
                FIFTEEN_GRAINS.replace("hardness,15", "hardness,0.8"),
                "--softener",
                "sodium",
                "--people",
                "2",
                "--resin",
                "12 L");
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(
                BundledHouseholdTest.flat(run.out())
                        .contains(
                                "The model of the bed has no answer: the end point of 1 gpg is not below the hardness of the feed, 0.8 gpg: the bed would never be spent."),
                run.out());
    }
}
