package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.grams;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.IonBalance;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Trains, their ledgers and treatments of one's own. */
class TrainTest {

    private static final Water WELL = Water.builder()
            .total(Ion.CALCIUM, mmol(2.5))
            .total(Ion.MAGNESIUM, mmol(1))
            .total(Ion.SODIUM, mmol(0.7))
            .total(Ion.CHLORIDE, mmol(0.9))
            .total(Ion.SULFATE, mmol(0.6))
            .alkalinity(alkalinity(5.3))
            .carbon(mmol(6.1))
            .build();

    /** Takes out CO₂ until as much is left as alkalinity binds: a treatment of a user's own. */
    private record Aeration(double left) implements Treatment {

        @Override
        public Water treat(Water source) {
            double carbon = source.carbon().orElseThrow().getValue();
            return source.plus(Change.of(Map.of(Ion.CARBON_DIOXIDE, mmol(left - carbon))));
        }

        @Override
        public String name() {
            return "aeration";
        }
    }

    private static final Softener SOFTENER = Softener.withSodium().bypassFor(hardness(1));
    private static final ReverseOsmosis MEMBRANE = ReverseOsmosis.rejecting(0.95, 0.98);
    private static final Dosing DOSING = Dosing.of(Compound.CALCIUM_CHLORIDE_DIHYDRATE, grams(1.47008), litres(20));
    private static final Train TRAIN = Train.of(new Aeration(5.5), SOFTENER, MEMBRANE, DOSING);

    @Test
    void aTrainTreatsOneAfterTheOther() {
        Water expected = DOSING.treat(MEMBRANE.treat(SOFTENER.treat(new Aeration(5.5).treat(WELL))));
        assertEquals(expected, TRAIN.treat(WELL));
        assertEquals(expected, TRAIN.run(WELL).result());
    }

    @Test
    void orderMatters() {
        Water blended = Train.of(SOFTENER, DOSING).treat(WELL);
        Water dosedFirst = Train.of(DOSING, SOFTENER).treat(WELL);
        assertEquals(1.5, blended.hardness().getValue(), 1e-15);
        assertEquals(1, dosedFirst.hardness().getValue(), 1e-15);
    }

    @Test
    void everyStageIsInTheLedger() {
        Ledger ledger = TRAIN.run(WELL);
        assertSame(WELL, ledger.source());
        assertEquals(
                List.of(
                        "aeration",
                        "softener with sodium, bypass for 1 mmol/L",
                        "reverse osmosis rejecting 95 % of single-charged and 98 % of multiple-charged ions",
                        "1.47008 g of calcium chloride dihydrate in 20 L"),
                ledger.stages().stream().map(Stage::name).toList());
        Water before = WELL;
        for (Stage stage : ledger.stages()) {
            assertSame(before, stage.before());
            assertEquals(Change.between(stage.before(), stage.after()), stage.change());
            before = stage.after();
        }
        assertSame(before, ledger.result());
    }

    @Test
    void startAndLedgerMakeTheEnd() {
        Ledger ledger = TRAIN.run(WELL);
        Water again = WELL;
        for (Stage stage : ledger.stages()) {
            again = again.plus(stage.change());
        }
        for (Ion ion : WELL.ions()) {
            assertEquals(of(ion, ledger.result()), of(ion, again), 4e-15, ion::symbol); // roundings of up to 8 mmol/L
            assertEquals(of(ion, ledger.result()), of(ion, WELL.plus(ledger.change())), 4e-15, ion::symbol);
        }
    }

    @Test
    void chargesOfEveryLineCancel() {
        for (Stage stage : TRAIN.run(WELL).stages()) {
            assertEquals(
                    0,
                    stage.change().netCharge().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE),
                    1e-12,
                    stage::name);
        }
    }

    @Test
    void onlyTheMembraneMovesUnmeasuredCharge() {
        List<Stage> stages = TRAIN.run(WELL).stages();
        EquivalentConcentration none = charge(0);
        assertAll(
                () -> assertEquals(none, stages.get(0).change().unmeasuredCharge()),
                () -> assertEquals(none, stages.get(1).change().unmeasuredCharge()),
                // of the −0.3 meq/L, 5.3 − (7 + 0.7 − 0.9 − 1.2), all but 5 %, held back with the anions: cations pass
                // 0.05 · 5.7 of sodium and 0.02 · 2 of hardness, anions 0.05 · (0.9 + 5.3 + 0.3) and 0.02 · 1.2
                () -> assertEquals(
                        0.3 - 0.05 * 0.3 * 0.325 / 0.349,
                        stages.get(2).change().unmeasuredCharge().getValue(),
                        1e-15),
                () -> assertEquals(none, stages.get(3).change().unmeasuredCharge()));
    }

    @Test
    void theLedgerSumsUp() {
        Ledger ledger = Train.of(SOFTENER, DOSING).run(WELL);
        // 2.5 mmol/L of hardness against 5 of sodium, then 0.5 mmol/L of CaCl₂
        assertEquals(5, of(Ion.SODIUM, ledger.change()), 1e-14);
        assertEquals(1, of(Ion.CHLORIDE, ledger.change()), 1e-14);
        assertEquals(alkalinity(0), ledger.change().alkalinity());
    }

    @Test
    void aTrainWithoutTreatmentsIsAPipe() {
        Train pipe = Train.of();
        assertAll(
                () -> assertSame(WELL, pipe.treat(WELL)),
                () -> assertSame(WELL, pipe.run(WELL).result()),
                () -> assertEquals(Change.of(Map.of()), pipe.run(WELL).change()),
                () -> assertEquals(List.of(), pipe.run(WELL).stages()),
                () -> assertEquals("", pipe.name()));
    }

    @Test
    void aTrainIsATreatmentOfATrain() {
        Train outer = Train.of(Train.of(SOFTENER, DOSING), Blending.withPureWater(0.5));
        assertEquals(Train.of(SOFTENER, DOSING).treat(WELL).dilutedBy(2), outer.treat(WELL));
        assertEquals(2, outer.run(WELL).stages().size());
        assertEquals(
                "softener with sodium, bypass for 1 mmol/L, then 1.47008 g of calcium chloride dihydrate in 20 L",
                outer.run(WELL).stages().get(0).name());
        assertEquals(
                "aeration, then aeration",
                Train.of(new Aeration(6), new Aeration(5)).name());
    }

    @Test
    void theListIsCopiedAndFixed() {
        List<Treatment> treatments = new ArrayList<>(List.of(SOFTENER));
        Train train = Train.of(treatments);
        treatments.add(DOSING);
        assertEquals(List.of(SOFTENER), train.treatments());
        assertThrows(
                UnsupportedOperationException.class, () -> train.treatments().add(DOSING));
        List<Stage> stages = new ArrayList<>();
        Ledger ledger = new Ledger(WELL, stages);
        stages.add(Stage.between("x", WELL, Water.pure()));
        assertEquals(WELL, ledger.result());
        assertThrows(UnsupportedOperationException.class, () -> ledger.stages().clear());
    }

    @Test
    void aTreatmentThatCannotDoItsWorkStopsTheTrain() {
        Train train = Train.of(Softener.withSodium(), SOFTENER);
        String message =
                "wanted hardness 1 mmol/L is above the 0 mmol/L of the raw water: a softener cannot add hardness";
        Refused.withoutAnswer(message, List.of(hardness(1), hardness(0)), () -> train.run(WELL));
        Refused.withoutAnswer(message, List.of(hardness(1), hardness(0)), () -> train.treat(WELL));
    }

    @Test
    void aTreatmentThatHeatsLeavesTheBooksAlone() {
        Treatment heater = new Treatment() {
            @Override
            public Water treat(Water source) {
                return source.with(celsius(60));
            }

            @Override
            public String name() {
                return "heater";
            }
        };
        Ledger ledger = Train.of(heater).run(WELL);
        assertEquals(celsius(60), ledger.result().temperature());
        assertEquals(Change.of(Map.of()), ledger.change());
    }

    @Test
    void theFirstTreatmentsAreATrain() {
        assertEquals(TRAIN.run(WELL).stages().get(1).after(), TRAIN.first(2).treat(WELL));
        assertEquals(WELL, TRAIN.first(0).treat(WELL));
        Refused.argument("stages must be from 0 to 4, but were 5", () -> TRAIN.first(5));
        Refused.argument("stages must be from 0 to 4, but were -1", () -> TRAIN.first(-1));
    }

    @Test
    void aTreatmentMayBeAFunction() {
        Treatment heating = Treatment.of("heating to 25 °C", water -> water.with(celsius(25)));
        assertEquals(celsius(25), heating.treat(WELL.with(celsius(10))).temperature());
        assertEquals("heating to 25 °C", heating.toString());
        Treatment broken = Treatment.of("broken", water -> null);
        Refused.asNull("water behind broken", () -> Train.of(broken).run(WELL));
        Refused.asNull("water behind broken", () -> Train.of(broken).treat(WELL));
        Refused.asNull("source", () -> heating.treat(null));
        Refused.asNull("name", () -> Treatment.of(null, water -> water));
        Refused.asNull("treat", () -> Treatment.of("nothing", null));
        Refused.asNull("source", () -> TRAIN.treat(null));
        Refused.asNull("source", () -> TRAIN.run(null));
    }

    @Test
    void everyTreatmentShowsItsName() {
        for (Treatment treatment : TRAIN.treatments().subList(1, 4)) {
            assertEquals(treatment.name(), treatment.toString());
        }
        assertEquals(TRAIN.name(), TRAIN.toString());
        assertEquals(
                "dilution with 50 % of pure water", Blending.withPureWater(0.5).toString());
    }

    @Test
    void theBooksOfALedgerFitTogether() {
        Refused.argument(
                "change of stage 'x' must lead from before to after",
                () -> new Stage("x", WELL, Change.of(Map.of()), Water.pure()));
        Refused.argument(
                "stage 'x' must start with the water behind the one before it",
                () -> new Ledger(Water.pure(), List.of(Stage.between("x", WELL, WELL))));
        Refused.asNull("source", () -> new Ledger(null, List.of()));
        Refused.asNull("name", () -> Stage.between(null, WELL, WELL));
    }

    @Test
    void aLedgerIsReadByPeople() {
        Water source = Water.builder()
                .total(Ion.CALCIUM, mmol(1))
                .alkalinity(alkalinity(1.5))
                .build();
        assertEquals(
                """
                source: Ca²⁺ 40.078, alkalinity as HCO₃⁻ 91.524 mg/L, unmeasured charge -0.5 meq/L
                  which has: pH unknown, 171 µS/cm at 25 °C (86 ppm on a meter of factor 0.5)
                softener with sodium
                  in:  Na⁺ 45.98 mg/L
                  out: Ca²⁺ 40.078 mg/L
                  behind it: Na⁺ 45.98, alkalinity as HCO₃⁻ 91.524 mg/L, unmeasured charge -0.5 meq/L
                  which has: pH unknown, 162 µS/cm at 25 °C (81 ppm on a meter of factor 0.5)
                8.401 g of sodium bicarbonate in 100 L
                  in:  Na⁺ 22.99, alkalinity as HCO₃⁻ 61.016 mg/L
                  out: nothing
                  behind it: Na⁺ 68.97, alkalinity as HCO₃⁻ 152.54 mg/L, unmeasured charge -0.5 meq/L
                  which has: pH unknown, 251 µS/cm at 25 °C (126 ppm on a meter of factor 0.5)""",
                Train.of(
                                Softener.withSodium(),
                                Dosing.raisingAlkalinity(Compound.SODIUM_BICARBONATE, alkalinity(1), litres(100)))
                        .run(source)
                        .toString());
    }

    @Test
    void nullIsNamedBySiblingsToo() {
        Refused.asNull("source", () -> Blending.withPureWater(0.5).treat(null));
        Refused.asNull("compound", () -> Dosing.teaspoons(null, 1, litres(1)));
        Refused.asNull("ion", () -> MEMBRANE.rejecting(null, 0.5));
        Refused.asNull("ion", () -> MEMBRANE.adjusting(null));
        Refused.asNull("ion", () -> WELL.total(null));
        Refused.asNull("text", () -> Ion.parse(null));
        Refused.asNull("text", () -> Ion.NITRATE.parseConcentration(null));
    }

    @Test
    void nullInAListIsNamed() {
        Refused.asNull("treatment", () -> Train.of(MEMBRANE, null));
        Refused.asNull("treatments", () -> Train.of((Treatment[]) null));
        Refused.asNull("text", () -> Formula.parse(null));
        Refused.asNull("ions", () -> Compound.of("own", Formula.parse("NaCl"), null));
        Refused.asNull("counted", () -> WELL.hardnessForms(null));
        Refused.asNull("cations", () -> new IonBalance(null, null));
        Refused.argument(
                "sum of anions must not be negative, but was -1 meq/L", () -> new IonBalance(charge(1), charge(-1)));
    }
}
