package evenwater.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.aquarium.Tank;
import evenwater.chemistry.aquarium.TankCourse;
import evenwater.chemistry.aquarium.TankVolume;
import evenwater.chemistry.exchange.CapacityCurve;
import evenwater.chemistry.exchange.Resin;
import evenwater.chemistry.exchange.ResinBed;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Ledger;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Stage;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.water.Water;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What cannot be drawn is refused in words; what is empty, flat or a single point is drawn all the same. */
class RefusedPicturesTest {

    private static void assertRefused(String message, Executable picture) {
        assertEquals(
                message, assertThrows(IllegalArgumentException.class, picture).getMessage());
    }

    @Test
    void aBypassForAHardnessIsDrawnAlsoWhereTheWaterIsSofterThanThat() {
        Softener bypassed = Softener.withSodium().bypassFor(Hardness.parse("6 °dH"));
        Checks.sound(
                SodiumPicture.of(bypassed, Samples.TAP, Hardness.GERMAN_DEGREE).toSvg());
        assertThrows(NoAnswerException.class, () -> SodiumPicture.of(bypassed, Water.pure(), Hardness.GERMAN_DEGREE));
    }

    @Test
    void aSoftenerWithPotassiumHasNoPictureOfSodium() {
        assertRefused(
                "the picture of sodium needs a softener with sodium, but was one with potassium",
                () -> SodiumPicture.of(Softener.withPotassium(), Samples.TAP, Hardness.GERMAN_DEGREE));
    }

    @Test
    void aWaterWithoutPHOrCarbonHasNoPictureOfSpecies() {
        Water unknown = Water.builder()
                .total(Ion.CALCIUM, Samples.milligrams(Ion.CALCIUM, 50))
                .build();
        assertThrows(NoAnswerException.class, () -> CarbonatePicture.of(unknown));
        Water acid = Water.builder()
                .alkalinity(Alkalinity.of(-1, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .carbon(Samples.milligrams(Ion.SODIUM, 0))
                .build();
        assertRefused(
                "the picture of the carbonate species needs a water with inorganic carbon, but this one has 0 mmol/L",
                () -> CarbonatePicture.of(acid));
    }

    @Test
    void saturationNeedsCalciumAndARangeThatTheModelHoldsFor() {
        Water soft = Water.builder()
                .alkalinity(Alkalinity.of(1, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .total(Ion.SODIUM, Samples.milligrams(Ion.SODIUM, 23))
                .measuredPH(7)
                .build();
        var cold = WaterUnits.temperature(5, WaterUnits.CELSIUS);
        var warm = WaterUnits.temperature(40, WaterUnits.CELSIUS);
        assertRefused(
                "soft: a saturation index of calcite needs calcium and carbon, and this water lacks one",
                () -> SaturationPicture.of("soft", soft, cold, warm, WaterUnits.CELSIUS));
        assertRefused(
                "the greatest temperature must be above the least, but they were 5 °C and 40 °C",
                () -> SaturationPicture.of("any", Samples.TAP, warm, cold, WaterUnits.CELSIUS));
        assertRefused(
                "temperature of a speciation must be from 0 °C to 50 °C, but was 60 °C",
                () -> SaturationPicture.of(
                        "any", Samples.TAP, cold, WaterUnits.temperature(60, WaterUnits.CELSIUS), WaterUnits.CELSIUS));
    }

    @Test
    void moreLinesThanCanBeToldApartAreRefused() {
        SaturationPicture six = Samples.saturation();
        for (int i = 0; i < 4; i++) {
            six = six.with("more", Samples.TAP);
        }
        SaturationPicture full = six;
        Checks.sound(full.toSvg());
        assertRefused(
                "waters of one picture must be at most 6, so that they can be told apart, but this is one more",
                () -> full.with("too many", Samples.TAP));
    }

    @Test
    void drawsMustBeOfTheSameTankAndManyEnough() {
        TankCourse course = Samples.course(1.5, Water.pure());
        TankPicture<?> picture = Samples.tank();
        TankCourse shorter = Tank.builder(TankVolume.estimatedFrom(WaterUnits.parseVolume("240 L")), Samples.TAP)
                .build()
                .course(WaterUnits.time(3, WaterUnits.DAY));
        assertRefused(
                "draws of topped off with pure water must have the moments of its course: the same period and the same days of change",
                () -> picture.withDraws(List.of(course, shorter), 0.5));
        assertRefused("outcomes must be 2 or more, but were 1", () -> picture.withDraws(List.of(course), 0.5));
    }

    @Test
    void aDoseOfNothingCannotBeMarked() {
        assertRefused(
                "salt dose must be positive, but was 0 g/L",
                () -> Samples.capacity()
                        .marking(
                                "none",
                                SaltDose.of(0, SaltDose.GRAM_PER_LITRE),
                                ExchangeCapacity.of(1, ExchangeCapacity.EQUIVALENT_PER_LITRE)));
    }

    @Test
    void aLedgerWithMoreStagesThanAPageHoldsIsRefused() {
        Stage stage = Stage.between("none", Samples.TAP, Samples.TAP);
        Checks.sound(BalancePicture.of(new Ledger(Samples.TAP, Collections.nCopies(20, stage)))
                .toSvg());
        assertRefused(
                "stages of one picture must be at most 20, but were 21",
                () -> BalancePicture.of(new Ledger(Samples.TAP, Collections.nCopies(21, stage))));
    }

    @Test
    void figuresThatNoWaterHasAreRefusedWithTheirAxis() {
        for (double figure : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 1.1e9, -1e300}) {
            Chart chart = new Chart("days", "any, mg/L").line("line", 0, List.of(new Point(0, figure)));
            assertRefused(
                    "any, mg/L: a figure must be from -1e9 to 1e9 to be drawn, but was " + figure,
                    () -> chart.draw(new Sheet("any")));
        }
        assertRefused("any: there is no figure to draw", () -> new Chart("x", "y").line("any", 0, List.of()));
    }

    @Test
    void nullsAreNamed() {
        assertEquals(
                "softener",
                assertThrows(
                                NullPointerException.class,
                                () -> SodiumPicture.of(null, Samples.TAP, Hardness.GERMAN_DEGREE))
                        .getMessage());
        assertEquals(
                "ledger",
                assertThrows(NullPointerException.class, () -> BalancePicture.of(null))
                        .getMessage());
        assertEquals(
                "run",
                assertThrows(NullPointerException.class, () -> BreakthroughPicture.of(null, WaterUnits.LITRE))
                        .getMessage());
    }

    @Test
    void pureWaterHasABalanceWithoutBars() {
        BalancePicture picture = BalancePicture.of("pure <water> & \"nothing\"", Water.pure());
        Checks.sound(picture.toSvg());
        assertTrue(
                picture.description().contains("0 meq/L on each side, of which nothing; nothing"),
                picture.description());
        Checks.sound(SodiumPicture.of(Softener.withSodium(), Water.pure(), Hardness.GERMAN_DEGREE)
                .toSvg());
    }

    @Test
    void aCourseOfOneMomentIsADot() {
        TankCourse start = Tank.builder(TankVolume.estimatedFrom(WaterUnits.parseVolume("240 L")), Samples.TAP)
                .build()
                .course(WaterUnits.time(0, WaterUnits.DAY));
        String svg = TankPicture.of("hardness", Hardness.GERMAN_DEGREE, Water::hardness, "just set up", start)
                .toSvg();
        Checks.sound(svg);
        assertEquals(1, Drawn.of(svg).all("circle").size());
    }

    @Test
    void aRunThatStaysSoftHasNoEndPoint() {
        ResinBed bed = ResinBed.of(Resin.gel(), WaterUnits.parseVolume("25 L"));
        BreakthroughPicture picture = BreakthroughPicture.of(
                        bed.serviceFor(Samples.TAP, bed.flow(16), WaterUnits.parseVolume("300 L")),
                        WaterUnits.US_GALLON)
                .endingAt(Hardness.parse("1 gpg"));
        Checks.sound(picture.toSvg());
        assertTrue(
                picture.description().endsWith("The water at the end is not harder than 1 gpg."), picture.toString());
        assertFalse(picture.toSvg().contains("1 gpg at"));
    }

    @Test
    void limitsOfATankCanStandInThePlaceOfThoseForDrinking() {
        SodiumPicture picture = SodiumPicture.of(Softener.withSodium(), Samples.TAP, Hardness.FRENCH_DEGREE)
                .with(Requirements.ofTank("planted tank with CO₂"));
        Checks.sound(picture.toSvg());
        assertTrue(
                picture.description()
                        .contains("Published: 50 mg/L: what keepers of plants accept (common practice, no source)"),
                picture.description());
    }

    @Test
    void metricUnitsWorkAsWell() {
        Checks.sound(CapacityPicture.of(
                        CapacityCurve.ofTheTrade(), SaltDose.GRAM_PER_LITRE, ExchangeCapacity.EQUIVALENT_PER_LITRE)
                .toSvg());
    }
}
