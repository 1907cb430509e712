package evenwater.chemistry.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.instrument.DropTest;
import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.water.Water;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What a drop test shows goes into a report as the range that it is. */
class KitReadingsTest {

    private static Interpretation interpret(ReadingInterval<Hardness> gh, ReadingInterval<Alkalinity> kh) {
        return LabReport.builder()
                .hardnessBetween(gh.least(), gh.most())
                .alkalinityBetween(kh.least(), kh.most())
                .build()
                .interpret();
    }

    @Test
    void theRangeOfACountIsTheRangeOfTheWater() {
        Interpretation water =
                interpret(DropTest.GENERAL_HARDNESS.turningAt(12), DropTest.CARBONATE_HARDNESS.turningAt(5));
        assertEquals(
                "11.5 °dH (11 to 12 °dH)",
                water.bounds(w -> w.hardness().to(Hardness.GERMAN_DEGREE)).toText(Locale.ROOT, 3));
        assertEquals(
                "4.5 °dKH (4 to 5 °dKH)",
                water.bounds(w -> w.alkalinity().to(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                        .toText(Locale.ROOT, 3));
    }

    @Test
    void aLargerSampleNarrowsTheWater() {
        Interpretation water = interpret(
                DropTest.GENERAL_HARDNESS.withSampleTimes(2).turningAt(23),
                DropTest.CARBONATE_HARDNESS.withSampleTimes(4).roundedTo(18));
        assertEquals(
                "11.25 °dH (11 to 11.5 °dH)",
                water.bounds(w -> w.hardness().to(Hardness.GERMAN_DEGREE)).toText(Locale.ROOT, 4));
        assertEquals(
                "4.5 °dKH (4.375 to 4.625 °dKH)",
                water.bounds(w -> w.alkalinity().to(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                        .toText(Locale.ROOT, 4));
    }

    @Test
    void aWaterIsFoundAgainInWhatAKitShowsOfIt() {
        Water truth = interpret(DropTest.GENERAL_HARDNESS.roundedTo(17), DropTest.CARBONATE_HARDNESS.roundedTo(8))
                .water();
        ReadingInterval<Hardness> gh =
                DropTest.GENERAL_HARDNESS.turningAt(DropTest.GENERAL_HARDNESS.readingFor(truth.hardness()));
        ReadingInterval<Alkalinity> kh =
                DropTest.CARBONATE_HARDNESS.turningAt(DropTest.CARBONATE_HARDNESS.readingFor(truth.alkalinity()));
        assertTrue(gh.contains(truth.hardness()));
        assertTrue(kh.contains(truth.alkalinity()));
        Bounds<Hardness> again = interpret(gh, kh).bounds(Water::hardness);
        assertTrue(again.low().compareTo(truth.hardness()) <= 0);
        assertTrue(again.high().compareTo(truth.hardness()) >= 0);
    }

    /** The KH kit titrates alkalinity: it may show more than the GH kit, as in water softened with sodium. */
    @Test
    void theKhKitReadsAlkalinityWhateverTheHardness() {
        Water softened = interpret(DropTest.GENERAL_HARDNESS.turningAt(1), DropTest.CARBONATE_HARDNESS.turningAt(9))
                .water();
        assertEquals(1, DropTest.GENERAL_HARDNESS.readingFor(softened.hardness()));
        assertEquals(9, DropTest.CARBONATE_HARDNESS.readingFor(softened.alkalinity()));
    }
}
