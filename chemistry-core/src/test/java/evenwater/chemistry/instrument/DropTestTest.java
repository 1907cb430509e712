package evenwater.chemistry.instrument;

import static evenwater.chemistry.instrument.DropTest.CARBONATE_HARDNESS;
import static evenwater.chemistry.instrument.DropTest.GENERAL_HARDNESS;
import static evenwater.chemistry.quantity.Alkalinity.DEGREE_OF_CARBONATE_HARDNESS;
import static evenwater.chemistry.quantity.Hardness.GERMAN_DEGREE;
import static evenwater.chemistry.quantity.Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DropTestTest {

    private static Hardness degrees(double value) {
        return Hardness.of(value, GERMAN_DEGREE);
    }

    private static Alkalinity carbonateDegrees(double value) {
        return Alkalinity.of(value, DEGREE_OF_CARBONATE_HARDNESS);
    }

    @Test
    void theDropThatTurnsTheColourIsTheUpperEnd() {
        assertEquals(new ReadingInterval<>(degrees(4), degrees(5), true), GENERAL_HARDNESS.turningAt(5));
        assertEquals(
                "more than 4 and at most 5 °dH", GENERAL_HARDNESS.turningAt(5).toString());
        assertEquals(
                "more than 8 and at most 9 °dKH",
                CARBONATE_HARDNESS.turningAt(9).toString());
    }

    @Test
    void theFirstDropTurnsAWaterWithNothingInIt() {
        assertEquals("from 0 to 1 °dH", GENERAL_HARDNESS.turningAt(1).toString());
        assertEquals(1, GENERAL_HARDNESS.readingFor(degrees(0)));
        assertEquals(1, CARBONATE_HARDNESS.readingFor(carbonateDegrees(0)));
    }

    @Test
    void aRoundedCountIsHalfADropToEitherSide() {
        assertEquals("from 4.5 to 5.5 °dH", GENERAL_HARDNESS.roundedTo(5).toString());
        assertEquals("from 0.5 to 1.5 °dKH", CARBONATE_HARDNESS.roundedTo(1).toString());
        assertEquals("from 0 to 0.5 °dKH", CARBONATE_HARDNESS.roundedTo(0).toString());
    }

    @Test
    void aLargerSampleDividesTheStep() {
        assertEquals(degrees(0.5), GENERAL_HARDNESS.withSampleTimes(2).step());
        assertEquals(
                "more than 4.5 and at most 5 °dH",
                GENERAL_HARDNESS.withSampleTimes(2).turningAt(10).toString());
        assertEquals(
                "from 2.375 to 2.625 °dH",
                GENERAL_HARDNESS.withSampleTimes(4).roundedTo(10).toString());
        assertEquals(
                "more than 8 and at most 10 °dKH",
                CARBONATE_HARDNESS.withSampleTimes(0.5).turningAt(5).toString());
        assertEquals(
                degrees(1),
                GENERAL_HARDNESS.withSampleTimes(2).withSampleTimes(1).step());
    }

    @Test
    void stepsMayBeStatedInAnyScale() {
        DropTest<Hardness> kit = DropTest.hardness(Hardness.of(17.8, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
        assertEquals(
                "more than 71.2 and at most 89 mg/L CaCO3", kit.turningAt(5).toString());
        DropTest<Hardness> grains = DropTest.hardness(Hardness.of(1, Hardness.GRAIN_PER_US_GALLON));
        assertEquals("more than 14 and at most 15 gpg", grains.turningAt(15).toString());
        DropTest<Alkalinity> equivalents =
                DropTest.alkalinity(Alkalinity.of(0.1, Alkalinity.MILLIEQUIVALENT_PER_LITRE));
        assertEquals(
                Alkalinity.of(2.9, Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                equivalents.turningAt(29).most());
    }

    @ParameterizedTest(name = "{0} °dKH shows {1}")
    @CsvSource({"0, 1", "0.01, 1", "1, 1", "1.001, 2", "8.4, 9", "9, 9", "1000, 1000"})
    void aWaterShowsTheNextWholeDrop(double degrees, int drops) {
        assertEquals(drops, CARBONATE_HARDNESS.readingFor(carbonateDegrees(degrees)));
    }

    @Test
    void aLargerSampleShowsMoreDrops() {
        assertEquals(17, CARBONATE_HARDNESS.withSampleTimes(2).readingFor(carbonateDegrees(8.4)));
        assertEquals(5, CARBONATE_HARDNESS.withSampleTimes(0.5).readingFor(carbonateDegrees(8.4)));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 7, 13, 29, 1000})
    void aWholeNumberOfStepsShowsItselfInEveryUnit(int drops) {
        for (var unit : Hardness.units()) {
            assertEquals(drops, GENERAL_HARDNESS.readingFor(degrees(drops).to(unit)), unit::toString);
        }
        for (var unit : Alkalinity.units()) {
            assertEquals(
                    drops, CARBONATE_HARDNESS.readingFor(carbonateDegrees(drops).to(unit)), unit::toString);
        }
    }

    @Test
    void aCountIsPositiveAndCanBeCounted() {
        Refused.argument(
                "drops of the hardness test must be from 1 to 1000, but were 0: "
                        + "the drop that turns the colour counts, and the first may do so",
                () -> GENERAL_HARDNESS.turningAt(0));
        Refused.argument(
                "drops of the alkalinity test must be from 1 to 1000, but were -3",
                () -> CARBONATE_HARDNESS.turningAt(-3));
        Refused.argument(
                "drops of the hardness test must be from 1 to 1000, but were 1001",
                () -> GENERAL_HARDNESS.turningAt(1001));
        Refused.argument(
                "rounded drops of the hardness test must be from 0 to 1000, but were -1",
                () -> GENERAL_HARDNESS.roundedTo(-1));
        Refused.argument(
                "rounded drops of the alkalinity test must be from 0 to 1000, but were 2147483647",
                () -> CARBONATE_HARDNESS.roundedTo(Integer.MAX_VALUE));
    }

    @Test
    void aWaterThatTakesTooManyDropsHasNoReading() {
        Refused.withoutAnswer(
                "hardness 1000.5 °dH takes more than 1000 drops of 1 °dH",
                List.of(degrees(1000.5), degrees(1)),
                () -> GENERAL_HARDNESS.readingFor(degrees(1000.5)));
        Refused.withoutAnswer(
                "alkalinity 1.0E300 °dKH takes more than 1000 drops of 0.5 °dKH",
                List.of(carbonateDegrees(1e300), carbonateDegrees(0.5)),
                () -> CARBONATE_HARDNESS.withSampleTimes(2).readingFor(carbonateDegrees(1e300)));
    }

    @Test
    void whatADropTestCannotShowIsRefused() {
        Refused.argument(
                "alkalinity must not be negative for a drop test, but was -0.5 °dKH",
                () -> CARBONATE_HARDNESS.readingFor(carbonateDegrees(-0.5)));
        Refused.argument(
                "hardness must not be negative for a drop test, but was -0.5 °dH",
                () -> GENERAL_HARDNESS.readingFor(degrees(-0.5)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1})
    void aStepIsPositive(double step) {
        Refused.argument(
                "step of the drop test must be positive, but was " + degrees(step),
                () -> DropTest.hardness(degrees(step)));
        Refused.argument(
                "step of the drop test must be positive, but was " + carbonateDegrees(step),
                () -> DropTest.alkalinity(carbonateDegrees(step)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 0.09, 10.1, Double.NaN, Double.POSITIVE_INFINITY})
    void aSampleIsSomeTimesTheUsual(double times) {
        Refused.argument(
                "sample must be from 0.1 to 10 times the usual one, but was " + times,
                () -> GENERAL_HARDNESS.withSampleTimes(times));
    }

    @Test
    void kitsSayWhatTheyAre() {
        assertEquals("hardness test, 1 °dH a drop", GENERAL_HARDNESS.toString());
        assertEquals(
                "alkalinity test, 0.5 °dKH a drop",
                CARBONATE_HARDNESS.withSampleTimes(2).toString());
    }

    @Test
    void nullIsNamed() {
        Refused.asNull("step", () -> DropTest.hardness(null));
        Refused.asNull("step", () -> DropTest.alkalinity(null));
        Refused.asNull("truth", () -> GENERAL_HARDNESS.readingFor(null));
    }
}
