package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Waters.ARSENATE;
import static evenwater.chemistry.testing.Waters.DIHYDROGEN_ARSENATE;
import static evenwater.chemistry.testing.Waters.HYDROGEN_ARSENATE;
import static evenwater.chemistry.testing.Waters.LEAD;
import static evenwater.chemistry.testing.Waters.PERCHLORATE;
import static evenwater.chemistry.testing.Waters.UREA;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Ions of the user's own stand beside the constants in every computation. */
class OwnIonsInWaterTest {

    private static Water water() {
        return Water.builder()
                .total(UREA, mmol(2))
                .total(PERCHLORATE, mmol(0.5))
                .total(LEAD, mmol(0.25))
                .total(Ion.SODIUM, mmol(1))
                .total(DIHYDROGEN_ARSENATE, mmol(0.25))
                .carbon(mmol(1))
                .build();
    }

    @Test
    void theyCountInTheDoubleEntry() {
        // 2 · 0.25 + 1 − 0.5 − 0.25
        assertEquals(alkalinity(0.75), water().alkalinity());
        assertEquals(charge(0), water().netCharge());
    }

    @Test
    void theyFollowTheConstantsBySymbol() {
        assertEquals(List.of(Ion.SODIUM, UREA, PERCHLORATE, DIHYDROGEN_ARSENATE, LEAD), water().ions());
    }

    @Test
    void theyCountInTheViews() {
        assertAll(
                () -> assertEquals(charge(1.5), water().ionBalance().cations()),
                () -> assertEquals(charge(1.5), water().ionBalance().anions()),
                // ½ (4 · 0.25 + 1 + 0.5 + 0.25 + 0.75 alkalinity)
                () -> assertEquals(mmol(1.75), water().ionicStrength()),
                // 2 · 60.056 + 0.5 · 99.446 + 0.25 · 207.2 + 22.99 + 0.25 · 140.934 + 0.75 · 61.016
                () -> assertEquals(
                        325.6205,
                        water().dissolvedSolids().in(MassConcentration.MILLIGRAM_PER_LITRE),
                        0.02)); // weights rounded to the third decimal here
    }

    @Test
    void theirAcidsAreCountedInTheReferenceForm() {
        Change arsenate = Change.of(Map.of(Ion.SODIUM, mmol(3), ARSENATE, mmol(1)));
        assertEquals(List.of(Ion.SODIUM, DIHYDROGEN_ARSENATE), arsenate.ions());
        assertEquals(alkalinity(2), arsenate.alkalinity());
        Change stepwise = Change.of(Map.of(Ion.SODIUM, mmol(2), HYDROGEN_ARSENATE, mmol(1)))
                .plus(Change.of(Map.of(Ion.SODIUM, mmol(1), Ion.HYDROXIDE, mmol(1))));
        assertEquals(arsenate, stepwise);
    }

    @Test
    void theyAreBlendedWithWatersThatLackThem() {
        Water hard = Water.builder()
                .total(Ion.CALCIUM, mmol(1))
                .total(PERCHLORATE, mmol(2))
                .carbon(mmol(1))
                .build();
        Water blend = water().mixedWith(hard, 0.5);
        assertEquals(
                Water.builder()
                        .total(Ion.CALCIUM, mmol(0.5))
                        .total(Ion.SODIUM, mmol(0.5))
                        .total(UREA, mmol(1))
                        .total(PERCHLORATE, mmol(1.25))
                        .total(LEAD, mmol(0.125))
                        .total(DIHYDROGEN_ARSENATE, mmol(0.125))
                        .carbon(mmol(1))
                        .build(),
                blend);
        assertEquals(blend, hard.mixedWith(water(), 0.5));
    }

    @Test
    void theyAreExchangedLikeAnyCation() {
        Water without = water().plus(Change.exchanging(water(), List.of(LEAD), Ion.SODIUM, 1));
        assertEquals(mmol(0), without.total(LEAD));
        assertEquals(mmol(1.5), without.total(Ion.SODIUM));
        assertEquals(water().alkalinity(), without.alkalinity());
        Water withLead = Water.builder().total(Ion.CALCIUM, mmol(1)).build();
        Change back = Change.exchanging(withLead, List.of(Ion.CALCIUM), LEAD, 1);
        assertEquals(mmol(1), withLead.plus(back).total(LEAD));
    }

    @Test
    void theyComeWithOwnCompounds() {
        Compound nitrate = Compound.of("lead nitrate", Formula.parse("Pb(NO3)2"), Map.of(LEAD, 1, Ion.NITRATE, 2));
        Change change =
                Change.dissolving(nitrate, MassConcentration.of(331.208, MassConcentration.MILLIGRAM_PER_LITRE));
        assertEquals(List.of(Ion.NITRATE, LEAD), change.ions());
        assertEquals(mmol(1), change.total(LEAD));
    }

    @Test
    void anIonMadeAnewIsTheSameIon() {
        Ion again = Ion.of("another name", Formula.parse("Pb2+"));
        assertEquals(mmol(0.25), water().total(again));
        assertEquals(
                water(),
                Water.builder()
                        .total(again, mmol(0.25))
                        .total(UREA, mmol(2))
                        .total(PERCHLORATE, mmol(0.5))
                        .total(Ion.SODIUM, mmol(1))
                        .total(DIHYDROGEN_ARSENATE, mmol(0.25))
                        .carbon(mmol(1))
                        .build());
    }
}
