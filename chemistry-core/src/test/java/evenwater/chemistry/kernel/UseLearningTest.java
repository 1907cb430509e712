package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.ValveKernel.DAY_LEARNED;
import static evenwater.chemistry.kernel.ValveKernel.LOW_DAY;
import static evenwater.chemistry.kernel.ValveKernel.OUTLIER_DAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule does not know units: days of 100 stand for anything. */
class UseLearningTest {

    /** Without a first reserve, so that only what is learned counts. */
    private final MeteredSoftener softener = new MeteredSoftener().with(ValveSetting.FIRST_RESERVE_NANOLITRES, 0);

    private final ValveState state = softener.begun(0).state;

    private int learn(double use) {
        return UseLearning.learn(softener.settings, state, use);
    }

    private void learn(double use, int days) {
        for (int i = 0; i < days; i++) {
            learn(use);
        }
    }

    private void assertLearned(double mean, double deviation) {
        assertEquals(mean, state.meanNanolitresPerDay());
        assertEquals(deviation, state.deviationNanolitresPerDay());
    }

    @Test
    void theFirstDaysAreWorkedByHand() {
        assertEquals(DAY_LEARNED, learn(100));
        assertLearned(100, 25);
        assertEquals(150, softener.reserve()); // m + 2 d

        assertEquals(DAY_LEARNED, learn(140)); // a = 1/2: m = 100 + 20, d = 25 + (40 - 25) / 2
        assertLearned(120, 32.5);
        assertEquals(185, softener.reserve());

        learn(120); // a = 1/3: d = 32.5 - 32.5 / 3
        assertEquals(120, state.meanNanolitresPerDay());
        assertEquals(21.666666666666668, state.deviationNanolitresPerDay(), 1e-14);
        assertEquals(164, softener.reserve()); // 163.33, rounded up
    }

    @ParameterizedTest(name = "first day {0}: mean {1} after a week")
    @CsvSource({ // (first + 6 · 300) / 7
        "   6, 258",
        "3000, 685.7142857142857",
        " 300, 300"
    })
    void theFirstWeekIsAPlainMeanWhateverItsFirstDayWasLike(double first, double mean) {
        learn(first);
        for (int day = 2; day <= 7; day++) {
            assertEquals(DAY_LEARNED, learn(300));
        }
        assertEquals(mean, state.meanNanolitresPerDay(), 1e-12 * mean); // six roundings of 1e-16
        assertEquals(DAY_LEARNED | OUTLIER_DAY, learn(1e6));
    }

    @Test
    void fromTheEighthDayOnTheNewestWeighsAnEighth() {
        learn(100, 8);
        double d = state.deviationNanolitresPerDay();
        assertEquals(100, state.meanNanolitresPerDay());
        assertEquals(DAY_LEARNED, learn(108));
        assertLearned(101, d + (8 - d) / 8);
    }

    /** Mean 100, deviation 8, many days. */
    private void learnedLongAgo() {
        state.learned[ValveState.MEAN] = 100;
        state.learned[ValveState.DEVIATION] = 8;
        state.counts[ValveState.DAYS] = 300;
    }

    @ParameterizedTest(name = "use {0}: mean {1}, deviation {2}")
    @CsvSource({ // limit 100 + 3 max(8, 10) = 130; low below 20
        "  0, 100,     8,     1024",
        " 19, 100,     8,     1024",
        " 20,  90,    17,      512",
        " 92,  99,     8,      512",
        "130, 103.75, 10.75,   512",
        "132, 103.75, 10.75,  2560",
        "1e9, 103.75, 10.75,  2560"
    })
    void oneDayAfterManyOfAHundred(double use, double mean, double deviation, int notices) {
        learnedLongAgo();
        assertEquals(notices, learn(use));
        assertLearned(mean, deviation);
    }

    @Test
    void theNamesOfTheNoticesInTheTable() {
        assertEquals(512, DAY_LEARNED);
        assertEquals(1024, LOW_DAY);
        assertEquals(2560, DAY_LEARNED | OUTLIER_DAY);
    }

    @Test
    void aHolidayOfAnyLengthLeavesTheReserve() {
        learnedLongAgo();
        learn(0, 400);
        assertLearned(100, 8);
        assertEquals(0, state.count(ValveCount.LOW_DAYS));
    }

    @Test
    void fourteenLowDaysTeachNothingAndTheFifteenthDoes() {
        learnedLongAgo();
        for (int day = 1; day <= 14; day++) {
            assertEquals(LOW_DAY, learn(12));
            assertEquals(LOW_DAY, learn(0)); // without any use: not in the row, nor does it end it
        }
        assertLearned(100, 8);
        assertEquals(DAY_LEARNED | LOW_DAY, learn(12));
        assertLearned(97.25, 8 + (88 - 8) / 32.0); // 100 - 88 / 32
    }

    @Test
    void oneUsualDayEndsTheRowOfLowDays() {
        learnedLongAgo();
        learn(12, 14);
        learn(100);
        assertEquals(LOW_DAY, learn(12));
        assertEquals(1, state.count(ValveCount.LOW_DAYS));
    }

    @Test
    void aHouseholdThatShrinksForGoodIsLearned() {
        learnedLongAgo();
        learn(12, 14 + 12);
        assertTrue(
                state.meanNanolitresPerDay() > 70,
                () -> "mean " + state.meanNanolitresPerDay()); // 12 + 88 (31/32)^12 = 72
        learn(12, 8);
        assertTrue(state.meanNanolitresPerDay() < 60); // 12 + 88 (31/32)^20 = 58.6: from now on 12 is no low day
        learn(12, 40);
        assertEquals(12, state.meanNanolitresPerDay(), 0.6); // 48 (7/8)^40 = 0.23 above
        assertEquals(12, softener.reserve(), 12);
    }

    @Test
    void aHouseholdThatTreblesIsCoveredByTheReserveAfterNineDays() {
        learnedLongAgo();
        softener.with(ValveSetting.LEAST_RESERVE_NANOLITRES, 0);
        int days = 0;
        while (softener.reserve() < 300) {
            learn(300);
            days++;
        }
        assertEquals(9, days);
        learn(300, 40);
        assertEquals(300, state.meanNanolitresPerDay(), 3);
    }

    @Test
    void aHouseholdThatGrowsTenfoldIsCoveredByTheReserveAfterSixteenDays() {
        learnedLongAgo();
        int days = 0;
        while (softener.reserve() < 1000) {
            learn(1000);
            days++;
        }
        assertEquals(16, days);
    }

    @Test
    void aWeekOfABurstPipeIsForgottenAgain() {
        learnedLongAgo();
        learn(20_000, 7);
        assertTrue(state.meanNanolitresPerDay() < 150, () -> "mean " + state.meanNanolitresPerDay());
        learn(100, 30);
        assertEquals(100, state.meanNanolitresPerDay(), 1);
    }

    /** The usual first reserve of 400 L, and days in litres. */
    private MeteredSoftener usual() {
        MeteredSoftener usual = new MeteredSoftener();
        usual.begun(0);
        return usual;
    }

    private static void learnLitres(MeteredSoftener usual, double litres, int days) {
        for (int i = 0; i < days; i++) {
            UseLearning.learn(usual.settings, usual.state, litres * MeteredSoftener.LITRE);
        }
    }

    @Test
    void inTheFirstWeekTheReserveIsAtLeastTheFirst() {
        MeteredSoftener usual = usual();
        learnLitres(usual, 1, 1);
        assertEquals(400 * MeteredSoftener.LITRE, usual.reserve()); // learned: 1.5 L
        learnLitres(usual, 700, 1); // m = 350.5, d = 0.25 + (699 - 0.25) / 2 = 349.625
        assertEquals(1000 * MeteredSoftener.LITRE, usual.reserve()); // 1049.75, but no more than the capacity
        MeteredSoftener modest = usual();
        learnLitres(modest, 200, 6);
        assertEquals(400 * MeteredSoftener.LITRE, modest.reserve());
        learnLitres(modest, 200, 1); // d = 50 · 1/2 · 2/3 · … · 6/7 = 50 / 7
        assertEquals(200 + 100 / 7.0, modest.reserve() / 1e9, 1e-6);
    }

    @Test
    void aWeekOfADripAtTheStartLeavesAQuarterOfTheFirstReserveUnlessALeastOneIsStated() {
        MeteredSoftener usual = usual();
        learnLitres(usual, 1, 7);
        assertEquals(100 * MeteredSoftener.LITRE, usual.reserve());
        usual.with(ValveSetting.LEAST_RESERVE_NANOLITRES, 30 * MeteredSoftener.LITRE);
        assertEquals(30 * MeteredSoftener.LITRE, usual.reserve());
        usual.with(ValveSetting.LEAST_RESERVE_NANOLITRES, 0);
        assertEquals(1 + 2 * 0.25 / 7, usual.reserve() / 1e9, 1e-6);
    }

    private static int daysUntilCovered(MeteredSoftener usual, double litres) {
        int days = 0;
        while (usual.reserve() < litres * MeteredSoftener.LITRE) {
            learnLitres(usual, litres, 1);
            days++;
        }
        return days;
    }

    @ParameterizedTest(
            name = "{0} days of 1 L between days of 250 L: mean {1} L, then 400 L are covered after {2} days")
    @CsvSource({ // mean 1 + 249 (31/32)^(days - 14)
        " 14, 250,     4",
        " 60,  58.80,  2",
        "200,   1.00,  4"
    })
    void anAbsenceWithADripLeavesAReserveThatSoonCoversTheHouseholdAgain(int days, double mean, int until) {
        MeteredSoftener usual = usual();
        learnLitres(usual, 250, 30);
        for (int day = 0; day < days; day++) {
            learnLitres(usual, 1, 1);
            assertTrue(usual.reserve() >= 100 * MeteredSoftener.LITRE);
        }
        assertEquals(mean, usual.state.meanNanolitresPerDay() / 1e9, 0.01);
        assertEquals(until, daysUntilCovered(usual, 400));
    }

    @Test
    void afterAWeekOfADripAHouseholdIsCoveredOnTheFourthDay() {
        MeteredSoftener usual = usual();
        learnLitres(usual, 1, 30);
        // up to the first reserve nothing is cut: m = 1 + 399 (1 - (7/8)^4) = 166, d some 117
        assertEquals(4, daysUntilCovered(usual, 400));
    }

    @Test
    void theReserveKeepsBetweenItsFloorAndTheCapacity() {
        softener.with(ValveSetting.FIRST_RESERVE_NANOLITRES, 70).with(ValveSetting.LEAST_RESERVE_NANOLITRES, 50);
        assertEquals(70, softener.reserve());
        softener.with(ValveSetting.LEAST_RESERVE_NANOLITRES, 80);
        assertEquals(80, softener.reserve());
        learn(10, 7);
        assertEquals(80, softener.reserve()); // learned: 10.7
        state.learned[ValveState.MEAN] = 1e18;
        assertEquals(1000 * MeteredSoftener.LITRE, softener.reserve());
        state.learned[ValveState.DEVIATION] = UseLearning.MOST_NANOLITRES;
        assertEquals(1000 * MeteredSoftener.LITRE, softener.reserve()); // beyond a long, still the capacity
    }
}
