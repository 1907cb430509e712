package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Equality, hash and text of waters and changes. */
class WaterEqualityTest {

    private static WaterBuilder salt() {
        return Water.builder().total(Ion.SODIUM, mmol(3)).total(Ion.CHLORIDE, mmol(3));
    }

    private static void assertSame(Object a, Object b) {
        assertEquals(a, b);
        assertEquals(a.hashCode(), b.hashCode());
        assertEquals(a.toString(), b.toString());
    }

    @Test
    void anIonOfAmountZeroIsAnIonThatIsAbsent() {
        assertSame(salt().build(), salt().total(Ion.CALCIUM, mmol(0)).build());
        assertSame(salt().total(Waters.UREA, mmol(0)).build(), salt().build());
        assertSame(
                Change.of(Map.of(Ion.SODIUM, mmol(1), Ion.CHLORIDE, mmol(1), Ion.SILICA, mmol(0))),
                Change.of(Map.of(Ion.SODIUM, mmol(1), Ion.CHLORIDE, mmol(1))));
    }

    @Test
    void equalWatersMayBeStatedInDifferentUnitsAndOrder() {
        Water other = Water.builder()
                .total(Ion.CHLORIDE, AmountConcentration.of(3, AmountConcentration.MOLE_PER_CUBIC_METRE))
                .total(Ion.SODIUM, AmountConcentration.of(0.003, AmountConcentration.MOLE_PER_LITRE))
                .build();
        assertSame(salt().build(), other);
    }

    @Test
    void equalWatersMayBeMadeInDifferentWays() {
        Water softened =
                salt().total(Ion.CALCIUM, mmol(1)).alkalinity(alkalinity(2)).build();
        Water stated = Water.builder()
                .total(Ion.SODIUM, mmol(5))
                .total(Ion.CHLORIDE, mmol(3))
                .alkalinity(alkalinity(2))
                .build();
        assertSame(stated, softened.plus(Change.exchanging(Ion.CALCIUM, Ion.SODIUM, mmol(1))));
    }

    @Test
    void alkalinityZeroHasNoSign() {
        assertSame(
                Water.builder().alkalinity(alkalinity(0)).build(),
                Water.builder().alkalinity(alkalinity(-0.0)).build());
        assertSame(Change.of(Map.of()), Change.of(Map.of()).times(-1));
        assertSame(
                Water.pure(),
                Water.builder().carbon(mmol(1)).build().plus(Change.of(Map.of(Ion.CARBON_DIOXIDE, mmol(-1)))));
    }

    @Test
    void whatAWaterHoldsTellsItFromOthers() {
        List<Water> waters = List.of(
                salt().build(),
                salt().total(Ion.SODIUM, mmol(3.5)).build(),
                salt().total(Ion.POTASSIUM, mmol(1)).total(Ion.NITRATE, mmol(1)).build(),
                Water.builder()
                        .total(Ion.POTASSIUM, mmol(3))
                        .total(Ion.CHLORIDE, mmol(3))
                        .build(),
                salt().alkalinity(alkalinity(1)).build(),
                salt().unmeasuredCharge(charge(-0.5)).build(),
                salt().carbon(mmol(0)).build(),
                salt().carbon(mmol(1)).build(),
                salt().measuredPH(7).build(),
                salt().measuredPH(7.1).build(),
                salt().temperature(celsius(24)).build());
        for (Water a : waters) {
            for (Water b : waters) {
                assertEquals(a == b, a.equals(b), () -> a + " and " + b);
                assertEquals(a == b, a.toString().equals(b.toString()), () -> a + " and " + b);
                assertEquals(
                        a == b, a.hashCode() == b.hashCode(), () -> a + " and " + b); // these eleven do not collide
            }
        }
    }

    @Test
    void unmeasuredChargeAloneTellsWatersApart() {
        // the same totals and alkalinity, apart by one rounding of the entry on the other side
        Water closing = Water.builder()
                .total(Ion.SODIUM, mmol(3))
                .unmeasuredCharge(charge(-0.1))
                .build();
        Water reported = Water.builder()
                .total(Ion.SODIUM, mmol(3))
                .alkalinity(closing.alkalinity())
                .build();
        assertEquals(closing.alkalinity(), reported.alkalinity());
        assertNotEquals(closing.unmeasuredCharge(), reported.unmeasuredCharge());
        assertNotEquals(closing, reported);
    }

    @Test
    void whatAChangeMovesTellsItFromOthers() {
        List<Change> changes = List.of(
                Change.of(Map.of()),
                Change.of(ChangeTest.amounts("Na+ 1, Cl- 1")),
                Change.of(ChangeTest.amounts("Na+ -1, Cl- -1")),
                Change.of(ChangeTest.amounts("Na+ 1, HCO3- 1")),
                Change.of(ChangeTest.amounts("Na+ 1, OH- 1")),
                Change.of(ChangeTest.amounts("CO2 1")));
        for (Change a : changes) {
            for (Change b : changes) {
                assertEquals(a == b, a.equals(b), () -> a + " and " + b);
                assertEquals(a == b, a.toString().equals(b.toString()), () -> a + " and " + b);
            }
        }
        assertTrue(changes.stream().map(Change::hashCode).distinct().count() > 1);
    }

    @Test
    void watersAndChangesAreEqualToNothingElse() {
        assertAll(
                () -> assertNotEquals(null, Water.pure()),
                () -> assertNotEquals((Object) Water.pure(), Change.of(Map.of())),
                () -> assertNotEquals((Object) Change.of(Map.of()), Water.pure()),
                () -> assertNotEquals(null, Change.of(Map.of())));
    }

    @Test
    void textOfAWaterSaysAllItHolds() {
        assertEquals(
                "water at 12.5 °C, Ca²⁺ 1 mmol/L, Cl⁻ 0.5 mmol/L, alkalinity 2 meq/L, unmeasured charge 0.5 meq/L, "
                        + "inorganic carbon 2.25 mmol/L",
                Water.builder()
                        .temperature(celsius(12.5))
                        .total(Ion.CHLORIDE, mmol(0.5))
                        .total(Ion.CALCIUM, mmol(1))
                        .alkalinity(alkalinity(2))
                        .carbon(mmol(2.25))
                        .build()
                        .toString());
        assertEquals(
                "water at 25 °C, alkalinity 0 meq/L, unmeasured charge 0 meq/L, measured pH 7.4",
                Water.builder().measuredPH(7.4).build().toString());
    }

    @Test
    void textOfAChangeSaysAllItMoves() {
        assertEquals(
                "change of Ca²⁺ -1 mmol/L, Na⁺ 2 mmol/L, alkalinity 0 meq/L, inorganic carbon 0 mmol/L",
                Change.exchanging(Ion.CALCIUM, Ion.SODIUM, mmol(1)).toString());
        assertEquals(
                "change of alkalinity 0 meq/L, inorganic carbon 0.5 mmol/L",
                Change.of(Map.of(Ion.CARBON_DIOXIDE, mmol(0.5))).toString());
        assertEquals(
                "change of Na⁺ 1 mmol/L, alkalinity 1.5 meq/L, unmeasured charge 0.5 meq/L, inorganic carbon unknown",
                Change.between(
                                Water.pure(),
                                Water.builder()
                                        .total(Ion.SODIUM, mmol(1))
                                        .unmeasuredCharge(charge(0.5))
                                        .build())
                        .toString());
    }
}
