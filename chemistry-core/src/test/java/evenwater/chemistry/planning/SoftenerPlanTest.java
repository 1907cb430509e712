package evenwater.chemistry.planning;

import static evenwater.chemistry.quantity.WaterUnits.CUBIC_FOOT;
import static evenwater.chemistry.quantity.WaterUnits.CUBIC_METRE;
import static evenwater.chemistry.quantity.WaterUnits.KILOGRAM;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.quantity.WaterUnits.POUND;
import static evenwater.chemistry.quantity.WaterUnits.US_GALLON;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.exchange.CapacityCurve;
import evenwater.chemistry.exchange.Regeneration;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoftenerPlanTest {

    private static final WaterQuantity<Volume> ONE_CUBIC_FOOT = WaterUnits.volume(1, CUBIC_FOOT);

    private static SaltDose pounds(double value) {
        return SaltDose.of(value, SaltDose.POUND_PER_CUBIC_FOOT);
    }

    private static Water hard(Hardness hardness) {
        return Water.builder()
                .total(Ion.CALCIUM, mmol(hardness.in(Hardness.MILLIMOLE_PER_LITRE)))
                .build();
    }

    private static Water gpg(double grains) {
        return hard(Hardness.of(grains, Hardness.GRAIN_PER_US_GALLON));
    }

    private static SoftenerPlan fiveAtEighty(double grains) {
        HouseholdUse use = HouseholdUse.ofPeople(5, WaterUnits.volume(80, US_GALLON));
        return SoftenerPlan.of(gpg(grains), use, ONE_CUBIC_FOOT);
    }

    /** A page of the trade: 5 people at 80 gal, 15 gpg, 6000 grains a day; 20000 grains last 3.3 days, 30000 grains 5. */
    @ParameterizedTest(name = "{0} lb last {1} days")
    @CsvSource({"6, 3.33", "15, 5"})
    void theExampleOfTheTradeComesOut(double pounds, double days) {
        SoftenerSchedule schedule = fiveAtEighty(15).withReserve(0).at(pounds(pounds));
        assertEquals(days, schedule.days(), 0.005);
        assertEquals(days, schedule.daysWithoutReserve(), 0.005);
        assertEquals(400 * days, schedule.softenedPerRegeneration().in(US_GALLON), 1.5);
        assertEquals(pounds, schedule.saltPerRegeneration().in(POUND), 1e-9);
        assertEquals(117.96, schedule.plan().softened().total(Ion.SODIUM).in(Ion.SODIUM.milligramPerLitre()), 0.005);
    }

    /**
     * Davis and Cornwell, Introduction to Environmental Engineering, softening example (from memory): 0.1 m³ of resin of 57 kg/m³, 2000 L a day, 280 mg/L of
     * which 85 remain: bypass 0.30, 14.5 days.
     */
    @Test
    void theBypassOfATextbookComesOut() {
        CapacityCurve constant = CapacityCurve.of(
                Map.of(
                        SaltDose.of(100, SaltDose.GRAM_PER_LITRE),
                        ExchangeCapacity.of(57, ExchangeCapacity.GRAM_PER_LITRE_CALCIUM_CARBONATE),
                        SaltDose.of(200, SaltDose.GRAM_PER_LITRE),
                        ExchangeCapacity.of(57, ExchangeCapacity.GRAM_PER_LITRE_CALCIUM_CARBONATE)),
                "the textbook");
        SoftenerPlan plan = SoftenerPlan.of(
                        hard(Hardness.of(280, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)),
                        HouseholdUse.ofDaily(litres(2000)),
                        WaterUnits.volume(0.1, CUBIC_METRE))
                .with(constant)
                .withReserve(0)
                .leaving(Hardness.of(85, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
        assertEquals(0.30357, plan.bypassShare(), 5e-6);
        assertEquals(14.62, plan.at(SaltDose.of(100, SaltDose.GRAM_PER_LITRE)).days(), 0.005);
        assertEquals(85, plan.softened().hardness().in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE), 1e-9);
        assertEquals(
                SaltDose.of(100, SaltDose.GRAM_PER_LITRE),
                plan.leastSaltFor(14).regeneration().dose());
    }

    @Test
    void theReserveIsTakenOffTheDays() {
        SoftenerSchedule schedule = fiveAtEighty(15).at(pounds(6));
        assertEquals(20_000.0 / 6000 - 1, schedule.days(), 1e-3);
        assertEquals(400, schedule.reserve().in(US_GALLON), 1e-9);
        HouseholdUse uneven = HouseholdUse.ofDays(List.of(litres(500), litres(1500)));
        SoftenerSchedule busy = SoftenerPlan.of(gpg(10), uneven, litres(40)).at(pounds(8));
        assertEquals(1500, busy.reserve().in(LITRE), 1e-9);
        assertEquals(busy.daysWithoutReserve() - 1.5, busy.days(), 1e-12);
    }

    @Test
    void saltWaterAndChlorideAddUpOverTheYear() {
        SoftenerSchedule schedule = fiveAtEighty(15).withReserve(0).at(pounds(6));
        double regenerations = 365.25 / schedule.days();
        assertEquals(6 * regenerations, schedule.saltPerYear().in(POUND), 1e-9);
        assertEquals(6 * 7 / schedule.days(), schedule.saltPerWeek().in(POUND), 1e-12);
        assertEquals(
                schedule.saltPerYear().in(KILOGRAM) * 35.45 / 58.44,
                schedule.chloridePerYear().in(KILOGRAM),
                0.01);
        double drain = schedule.regeneration().bedVolumes() * 28.316846592;
        assertEquals(drain, schedule.drainPerRegeneration().in(LITRE), 1e-9);
        assertEquals(drain * regenerations, schedule.drainPerYear().in(LITRE), 1e-6);
    }

    @Test
    void potassiumChlorideWeighsMoreAndGivesPotassium() {
        SoftenerSchedule sodium = fiveAtEighty(15).at(pounds(6));
        SoftenerSchedule potassium = fiveAtEighty(15)
                .with(Regeneration.coFlow(pounds(1)).withPotassiumChloride())
                .at(pounds(6));
        assertEquals(1.27563313, potassium.saltPerYear().ratioTo(sodium.saltPerYear()), 5e-9);
        assertEquals(1, potassium.chloridePerYear().ratioTo(sodium.chloridePerYear()), 1e-12);
        assertEquals(sodium.efficiency(), potassium.efficiency());
        assertEquals(0, potassium.plan().softened().total(Ion.SODIUM).getValue());
        assertTrue(potassium.plan().softened().total(Ion.POTASSIUM).getValue() > 5);
    }

    /** 3 gpg for each mg/L of iron, 2 for manganese (common practice), in a type that only sizing takes. */
    @Test
    void ironCountsForTheSizeAndNotForTheSodium() {
        Water iron = Water.builder()
                .total(Ion.CALCIUM, mmol(2))
                .total(Ion.IRON_II, AmountConcentration.of(2, Ion.IRON_II.milligramPerLitre()))
                .total(Ion.MANGANESE_II, AmountConcentration.of(0.5, Ion.MANGANESE_II.milligramPerLitre()))
                .build();
        HouseholdUse use = HouseholdUse.ofPeople(4);
        SoftenerPlan plan = SoftenerPlan.of(iron, use, ONE_CUBIC_FOOT);
        double clear = iron.hardness().in(Hardness.GRAIN_PER_US_GALLON);
        assertEquals(clear + 7, plan.sizedFor().in(CompensatedHardness.GRAIN_PER_US_GALLON), 1e-12);
        SoftenerPlan stated = plan.sizedFor(CompensatedHardness.of(clear, CompensatedHardness.GRAIN_PER_US_GALLON));
        assertTrue(stated.at(pounds(8)).days() > plan.at(pounds(8)).days());
        double sodium = plan.softened().total(Ion.SODIUM).getValue();
        assertEquals(2 * 2 + 2 * (2 / 55.845 + 0.5 / 54.938), sodium, 1e-4);
    }

    @Test
    void theDoseThatWastesLeastIsTheLeastThatLasts() {
        SoftenerPlan plan = SoftenerPlan.of(gpg(15), HouseholdUse.ofDaily(litres(600)), litres(30));
        SoftenerSchedule chosen = plan.leastSaltFor(9);
        assertEquals(9, chosen.days(), 1e-9);
        SoftenerSchedule less = plan.at(chosen.regeneration().dose().multiply(0.99));
        assertTrue(less.days() < 9);
        SoftenerSchedule more = plan.at(chosen.regeneration().dose().multiply(1.05));
        assertTrue(more.efficiency().shareOfTheory() < chosen.efficiency().shareOfTheory());
        assertEquals(plan.curve().least(), plan.leastSaltFor(1).regeneration().dose());
    }

    /** Six days of 150 US gal and one of 1100: a reserve for the busiest day makes small doses costly. */
    @Test
    void aLargeReserveAsksForMoreSaltATime() {
        List<WaterQuantity<Volume>> days = new ArrayList<>(Collections.nCopies(6, WaterUnits.volume(150, US_GALLON)));
        days.add(WaterUnits.volume(1100, US_GALLON));
        SoftenerPlan plan = SoftenerPlan.of(gpg(10), HouseholdUse.ofDays(days), ONE_CUBIC_FOOT);
        SoftenerSchedule chosen = plan.leastSaltFor(3);
        assertEquals(8, chosen.regeneration().dose().in(SaltDose.POUND_PER_CUBIC_FOOT), 1e-9);
        assertEquals(291.3, chosen.saltPerYear().in(KILOGRAM), 0.1); // by hand
    }

    @Test
    void efficiencyIsLessWhereAReserveIsThrownAway() {
        SoftenerSchedule schedule = fiveAtEighty(15).at(pounds(8));
        double share = schedule.days() / schedule.daysWithoutReserve();
        assertEquals(
                share,
                schedule.efficiencyWithReserve().shareOfTheory()
                        / schedule.efficiency().shareOfTheory(),
                1e-12);
        double hardness = 365.25 * 6 * 64.79891 / 1000; // kg of CaCO3 in a year: 6000 grains a day
        assertEquals(
                hardness / schedule.saltPerYear().in(KILOGRAM),
                schedule.efficiencyWithReserve().perSalt().in(WaterUnits.ONE),
                1e-4);
    }

    @Test
    void muchRinsingIsWarnedOf() {
        SoftenerSchedule wasteful = fiveAtEighty(15)
                .with(Regeneration.coFlow(pounds(1)).withWater(4, 3, 10))
                .at(pounds(8));
        double gallons = wasteful.drainPerRegeneration().in(US_GALLON) / 24; // for 24000 grains
        assertEquals(
                gallons * 3.785411784 / 0.06479891,
                wasteful.drainPerKilogramOfHardness().in(LITRE),
                1e-6);
        assertTrue(
                wasteful.warnings()
                        .contains(
                                "regeneration takes 5.67 US gallons for 1000 grains of hardness, above the 5 that NSF/ANSI 44 (number from memory) allows efficient softeners"),
                wasteful.warnings().toString());
    }

    @Test
    void whatCannotLastIsRefusedWithWhatCan() {
        SoftenerPlan plan = fiveAtEighty(15);
        Refused.withoutAnswer(
                "1 ft³ of resin cannot last 6.0 days with this water and use: with the most salt of the table of the trade (common practice) it lasts 4.50 days; 36 L of resin would last so long",
                List.of(),
                () -> plan.leastSaltFor(6));
        SoftenerPlan tiny = SoftenerPlan.of(gpg(40), HouseholdUse.ofPeople(6), litres(10));
        Refused.withoutAnswer(
                "a reserve of 1.0 days takes more than the 668.4 L that 10 L of resin soften with 6 lb/ft³",
                List.of(WaterUnits.volume(
                        tiny.withReserve(0)
                                .at(pounds(6))
                                .softenedPerRegeneration()
                                .in(LITRE),
                        LITRE)),
                () -> tiny.at(pounds(6)));
    }

    @Test
    void plansAndSchedulesPrint() {
        SoftenerPlan plan = fiveAtEighty(15);
        assertEquals(
                "softener of 1 ft³ of resin for 5 people at 80 gal(US) a day, planned for 15 gpg by the table of the trade (common practice)",
                plan.toString());
        assertEquals(
                "8 lb/ft³ of sodium chloride, co-flow, brine of 10 %, every 3.00 days, 442 kg of salt a year",
                plan.at(pounds(8)).toString());
    }

    @Test
    void nonsenseIsRefused() {
        HouseholdUse use = HouseholdUse.ofPeople(4);
        Refused.argument(
                "volume of the resin must be from 1 mL to 1000 m³, but was 0 L",
                () -> SoftenerPlan.of(gpg(10), use, litres(0)));
        Refused.withoutAnswer(
                "a water without hardness needs no softener: hardness was 0 gpg",
                List.of(CompensatedHardness.of(0, CompensatedHardness.GRAIN_PER_US_GALLON)),
                () -> SoftenerPlan.of(Water.pure(), use, ONE_CUBIC_FOOT));
        SoftenerPlan plan = SoftenerPlan.of(gpg(10), use, ONE_CUBIC_FOOT);
        Refused.argument("reserve must be from 0 to 7 days of use, but was NaN", () -> plan.withReserve(Double.NaN));
        Refused.argument(
                "days between regenerations must be above 0 and at most 365, but were 0.0", () -> plan.leastSaltFor(0));
        Hardness eleven = Hardness.of(11, Hardness.GRAIN_PER_US_GALLON);
        Refused.withoutAnswer(
                "hardness that remains must be above 0 and below the 10 gpg of the raw water, but was 11 gpg",
                List.of(plan.source().hardness().to(Hardness.GRAIN_PER_US_GALLON), eleven),
                () -> plan.leaving(eleven));
    }

    @Test
    void warningsTellWhatIsOutsideOfPractice() {
        assertEquals(
                List.of(
                        "regeneration after 2.33 days is more often than the usual 3 to 14: more resin would save water",
                        "salt efficiency of 3,333 grain/lb, 55.6 % of theory is below the 3,350 grain/lb that NSF/ANSI 44 (number from memory) asks of efficient softeners"),
                fiveAtEighty(15).at(pounds(6)).warnings());
        SoftenerSchedule rare = SoftenerPlan.of(gpg(10), HouseholdUse.ofPeople(1), WaterUnits.volume(2, CUBIC_FOOT))
                .at(pounds(4));
        assertEquals(
                List.of(
                        "regeneration after 43.0 days is rarer than the usual 3 to 14: standing resin compacts, fouls and grows germs, so set the calendar to 14 days, or to fewer where the local code asks for it"),
                rare.warnings());
        Water iron = Water.builder()
                .total(Ion.CALCIUM, mmol(1))
                .total(Ion.IRON_II, AmountConcentration.of(4, Ion.IRON_II.milligramPerLitre()))
                .build();
        assertEquals(
                List.of(
                        "iron of 4.00 mg/L fouls a softener sooner or later: it belongs to an iron filter in front; iron that has met air is no task for resin at all"),
                SoftenerPlan.of(iron, HouseholdUse.ofPeople(2), WaterUnits.volume(2, CUBIC_FOOT))
                        .at(pounds(4))
                        .warnings());
        assertEquals(0, hardnessOf(fiveAtEighty(15).softened()));
    }
}
