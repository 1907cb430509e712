package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.RegenerationKernel.DAY_LEARNED;
import static evenwater.chemistry.kernel.RegenerationKernel.LOW_DAY;
import static evenwater.chemistry.kernel.RegenerationKernel.OUTLIER_DAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule does not know units: days of 100 stand for anything. */
class UseLearningTest {

    private final MeteredSoftener softener = new MeteredSoftener();
    private final RegenerationState state = softener.begun(0).state;

    private int learn(double use) {
        return UseLearning.learn(state, use);
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
        state.learned[RegenerationState.MEAN] = 100;
        state.learned[RegenerationState.DEVIATION] = 8;
        state.counts[RegenerationState.DAYS] = 300;
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
        assertEquals(0, state.count(RegenerationCount.LOW_DAYS));
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
        assertLearned(89, 8 + (88 - 8) / 8.0);
    }

    @Test
    void oneUsualDayEndsTheRowOfLowDays() {
        learnedLongAgo();
        learn(12, 14);
        learn(100);
        assertEquals(LOW_DAY, learn(12));
        assertEquals(1, state.count(RegenerationCount.LOW_DAYS));
    }

    @Test
    void aHouseholdThatShrinksForGoodIsLearned() {
        learnedLongAgo();
        learn(12, 14 + 40);
        assertEquals(12, state.meanNanolitresPerDay(), 0.6); // 88 (7/8)^40 = 0.42 above
    }

    @Test
    void aHouseholdThatTreblesIsCoveredByTheReserveAfterNineDays() {
        learnedLongAgo();
        softener.with(RegenerationSetting.LEAST_RESERVE_NANOLITRES, 0);
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

    @Test
    void theReserveKeepsBetweenItsFloorAndTheCapacity() {
        softener.with(RegenerationSetting.FIRST_RESERVE_NANOLITRES, 70)
                .with(RegenerationSetting.LEAST_RESERVE_NANOLITRES, 50);
        assertEquals(70, softener.reserve());
        softener.with(RegenerationSetting.LEAST_RESERVE_NANOLITRES, 80);
        assertEquals(80, softener.reserve());
        learn(10);
        assertEquals(80, softener.reserve()); // learned: 15
        state.learned[RegenerationState.MEAN] = 1e18;
        assertEquals(1000 * MeteredSoftener.LITRE, softener.reserve());
        state.learned[RegenerationState.DEVIATION] = UseLearning.MOST_NANOLITRES;
        assertEquals(1000 * MeteredSoftener.LITRE, softener.reserve()); // beyond a long, still the capacity
    }
}
