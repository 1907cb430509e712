package evenwater.chemistry.control;

import static evenwater.chemistry.control.Bench.ml;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Json;
import evenwater.chemistry.testing.Refused;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the plain form of a pump's settings looks like, and what is refused when one is read. */
class PlainDosingPumpTest {

    private static final DosingPump PUMP = Bench.builder().build();
    private static final PlainDosingPump PLAIN = PUMP.toPlain();
    private static final String WHAT = "plain settings of a dosing pump";

    @Test
    void theUnitStandsInEachName() { // 1 µL is 1e6 pL, 8:00 is 28800 s
        assertEquals(
                "{\"version\":1,\"compound\":\"calcium chloride dihydrate\",\"strength\":1.0,\"concentration\":\"100 g/L\",\"timed\":false,"
                        + "\"numbers\":{\"picolitresPerStep\":1000000,\"dailyCapInPicolitres\":10000000000,"
                        + "\"dailyDoseInPicolitres\":6000000000,\"picolitresPerLitreOfAddedWater\":0,\"portionsToMakeUp\":0,"
                        + "\"graceInSeconds\":3600,\"reservoirInPicolitres\":500000000000,\"unusableInPicolitres\":0,"
                        + "\"tubeInPicolitres\":5000000000,\"warnBelowDays\":7,\"driftInThousandths\":100,\"confirmWithinInSeconds\":900},"
                        + "\"portionsInSecondsAfterMidnight\":[28800,72000]}",
                Json.writtenByJackson(PLAIN));
    }

    static List<DosingPump> pumps() {
        PumpCalibration timed = PumpCalibration.ofTime(Duration.ofSeconds(77), ml(23.4));
        return List.of(
                PUMP,
                DosingPump.builder(Bench.STOCK, timed, ml(0.001), ml(0.5)).build(),
                DosingPump.builder(
                                StockSolution.of(
                                        Compound.SODIUM_CARBONATE_ANHYDROUS.ofStrength(0.985),
                                        MassConcentration.parse("1.5 gpg")),
                                timed,
                                WaterUnits.volume(100, WaterUnits.LITRE),
                                WaterUnits.volume(1000, WaterUnits.LITRE))
                        .dailyDose(WaterUnits.volume(99.999_999, WaterUnits.LITRE), LocalTime.MIDNIGHT, LocalTime.MAX)
                        .dosePerLitreOfAddedWater(ml(100))
                        .missedDoses(MissedDoses.CATCH_UP)
                        .catchUpAtMost(24)
                        .grace(Duration.ofDays(1))
                        .unusable(WaterUnits.volume(999.999_999, WaterUnits.LITRE))
                        .tube(WaterUnits.volume(100, WaterUnits.LITRE))
                        .warnBelowDays(0)
                        .noteCalibrationDrift(0.001)
                        .confirmWithin(Duration.ofSeconds(1))
                        .build());
    }

    @ParameterizedTest
    @MethodSource("pumps")
    void aStateIsTakenUpUnderSettingsThatWereWrittenAndRead(DosingPump pump) {
        PlainDosingPump plain = pump.toPlain();
        DosingPumpState state = pump.startAfterLoss(Bench.MIDNIGHT, Duration.ZERO, ml(0.25));
        PlainSave save = PlainSave.of(state.save());
        for (PlainDosingPump read : List.of(
                plain,
                Json.throughJackson(plain, PlainDosingPump.class),
                Json.throughGson(plain, PlainDosingPump.class),
                Json.throughDoubles(plain, PlainDosingPump.class))) {
            DosingPump back = DosingPump.from(read);
            assertEquals(pump.toString(), back.toString());
            assertEquals(plain, back.toPlain());
            assertEquals(
                    state,
                    back.restore(Json.throughDoubles(save, PlainSave.class)
                            .toSave())); // compares the fingerprints of the settings
        }
    }

    @ParameterizedTest
    @MethodSource("compounds")
    void everyCompoundOfTheTableIsFoundByItsName(Compound compound) {
        DosingPump pump = DosingPump.builder(
                        StockSolution.of(compound, MassConcentration.parse("1 µg/L")), Bench.MICROLITRE, ml(1), ml(1))
                .build();
        assertEquals(compound, DosingPump.from(pump.toPlain()).stock().compound());
    }

    static List<Compound> compounds() {
        return Compound.all();
    }

    @Test
    void aStockThatTheTableDoesNotKnowHasNoPlainForm() {
        Compound own = Compound.of("own salt", Formula.parse("NaCl"), Map.of(Ion.SODIUM, 1, Ion.CHLORIDE, 1));
        Refused.argument(
                "stock must be of a compound of the table to have a plain form, but was of own salt",
                () -> pump(StockSolution.of(own, MassConcentration.parse("1 g/L")))
                        .toPlain());
    }

    @Test
    void aConcentrationThatCannotBeReadBackHasNoPlainForm() {
        MassConcentration odd = MassConcentration.of(2, MetricPrefix.CENTI(MassConcentration.GRAM_PER_LITRE));
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class,
                () -> pump(StockSolution.of(Compound.SODIUM_CHLORIDE, odd)).toPlain());
        assertTrue(
                refusal.getMessage().startsWith("concentration of the stock must be in one of the units [g/L, mg/L,"));
    }

    private static DosingPump pump(StockSolution stock) {
        return DosingPump.builder(stock, Bench.MICROLITRE, ml(1), ml(1)).build();
    }

    private static DosingPump with(String name, Number number) {
        Map<String, Number> numbers = new LinkedHashMap<>(PLAIN.numbers());
        numbers.put(name, number);
        return DosingPump.from(new PlainDosingPump(
                1, PLAIN.compound(), 1.0, "100 g/L", false, numbers, PLAIN.portionsInSecondsAfterMidnight()));
    }

    private static DosingPump with(List<Number> portions) {
        return DosingPump.from(
                new PlainDosingPump(1, PLAIN.compound(), 1.0, "100 g/L", false, PLAIN.numbers(), portions));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "picolitresPerStep     | 0    | picolitresPerStep must be a whole number from 1 to 10000000000, but was 0.0",
                "graceInSeconds        | 90.5 | graceInSeconds must be a whole number from 60 to 86400, but was 90.5",
                "warnBelowDays         | NaN  | warnBelowDays must be a whole number from 0 to 366, but was NaN",
                "dailyDoseInPicolitres | 2e10 | dailyDoseInPicolitres must be at most dailyCapInPicolitres 10000000000, but was 20000000000",
                "dailyDoseInPicolitres | 0    | a daily dose needs portions and portions need one, but dailyDoseInPicolitres was 0 and "
                        + "portions were 2",
                "unusableInPicolitres  | 5e11 | unusableInPicolitres must be below reservoirInPicolitres 500000000000, but was 500000000000",
            })
    void aNumberThatDoesNotFitIsNamed(String name, double number, String message) {
        Refused.argument(WHAT + ": " + message, () -> with(name, number));
    }

    @Test
    void portionsThatDoNotFitAreNamed() {
        Refused.argument(
                WHAT + ": time of portion 2 must be a whole number from 28801 to 86399, but was 28800",
                () -> with(List.of(28_800, 28_800)));
        Refused.argument(
                WHAT + ": time of portion 1 must be a whole number from 0 to 86399, but was 86400",
                () -> with(List.of(86_400)));
        Refused.argument(
                WHAT + " lack time of portion 1", () -> with(new ArrayList<>(Collections.singletonList(null))));
        Refused.argument(
                WHAT + " must have at most 24 portions a day, but have 25", () -> with(Collections.nCopies(25, 1)));
        Refused.argument(
                WHAT
                        + ": a daily dose needs portions and portions need one, but dailyDoseInPicolitres was 6000000000 and portions were 0",
                () -> with(List.of()));
    }

    @Test
    void whatIsMissingUnknownOrNewerIsRefused() {
        Refused.asNull("plain", () -> DosingPump.from(null));
        lacks("version", new PlainDosingPump(null, null, null, null, null, null, null));
        lacks("compound", new PlainDosingPump(1, null, null, null, null, null, null));
        lacks("strength", new PlainDosingPump(1, "gypsum", null, null, null, null, null));
        lacks("concentration", new PlainDosingPump(1, "gypsum", 1.0, null, null, null, null));
        lacks("timed", new PlainDosingPump(1, "gypsum", 1.0, "1 g/L", null, null, null));
        lacks("numbers", new PlainDosingPump(1, "gypsum", 1.0, "1 g/L", false, null, null));
        lacks("dailyCapInPicolitres", new PlainDosingPump(1, "gypsum", 1.0, "1 g/L", false, Map.of(), null));
        lacks(
                "portionsInSecondsAfterMidnight",
                new PlainDosingPump(1, "gypsum", 1.0, "1 g/L", false, PLAIN.numbers(), null));
        Refused.argument(
                WHAT + ": version must be 1, but was 7, of a newer library",
                () -> DosingPump.from(new PlainDosingPump(7, null, null, null, null, null, null)));
        Refused.argument(
                "strength of calcium sulfate dihydrate must be above 0 and at most 1, but was 1.5",
                () -> DosingPump.from(
                        new PlainDosingPump(1, "gypsum", 1.5, "1 g/L", false, PLAIN.numbers(), List.of())));
        assertThrows(
                UnreadableTextException.class,
                () -> DosingPump.from(new PlainDosingPump(1, "stardust", 1.0, "1 g/L", false, Map.of(), List.of())));
        assertThrows(
                UnreadableTextException.class,
                () -> DosingPump.from(new PlainDosingPump(1, "gypsum", 1.0, "1 gram", false, Map.of(), List.of())));
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> with("capInLitres", 1));
        assertTrue(refusal.getMessage()
                .startsWith(WHAT + " have an unknown number capInLitres, but can have [picolitresPerStep, dailyCap"));
    }

    private static void lacks(String name, PlainDosingPump plain) {
        Refused.argument(WHAT + " lack " + name, () -> DosingPump.from(plain));
    }
}
