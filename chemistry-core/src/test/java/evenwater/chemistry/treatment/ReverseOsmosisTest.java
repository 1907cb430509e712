package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.carbonOf;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static evenwater.chemistry.testing.Amounts.unmeasuredOf;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReverseOsmosisTest {

    /** Calcium carries most charge: 4 of 8.5 meq/L of cations. */
    private static final Water FEED = Water.builder()
            .total(Ion.CALCIUM, mmol(2))
            .total(Ion.SODIUM, mmol(3))
            .total(Ion.POTASSIUM, mmol(1.5))
            .total(Ion.CHLORIDE, mmol(2.5))
            .total(Ion.SULFATE, mmol(1))
            .total(Ion.SILICA, mmol(0.5))
            .total(Ion.BORIC_ACID, mmol(0.25))
            .alkalinity(alkalinity(3.5))
            .carbon(mmol(4.5))
            .temperature(celsius(15))
            .build();

    /** Dissolved CO₂ of the feed in mmol/L. */
    private static final double FREE = Speciation.of(FEED).carbonDioxide().getValue();

    private static final double ROUNDING = 1e-15; // sums of a few meq/L that pass

    @Test
    void unadjustedIonsPassByTheirRejection() {
        Water permeate = ReverseOsmosis.rejecting(0.9, 0.98)
                .rejecting(Ion.BORIC_ACID, 0.4)
                .adjusting(Ion.SODIUM)
                .treat(FEED);
        assertAll(
                () -> assertEquals(0.02 * 2, of(Ion.CALCIUM, permeate), ROUNDING),
                () -> assertEquals(0.1 * 1.5, of(Ion.POTASSIUM, permeate), ROUNDING),
                () -> assertEquals(0.1 * 2.5, of(Ion.CHLORIDE, permeate), ROUNDING),
                () -> assertEquals(0.02 * 1, of(Ion.SULFATE, permeate), ROUNDING),
                () -> assertEquals(0.1 * 0.5, of(Ion.SILICA, permeate), ROUNDING),
                () -> assertEquals(0.6 * 0.25, of(Ion.BORIC_ACID, permeate), ROUNDING),
                () -> assertEquals(0.1 * 3.5, alkalinityOf(permeate), ROUNDING),
                () -> assertEquals(-0.1 * 0.5, unmeasuredOf(permeate), ROUNDING), // 3.5 − (4 + 4.5 − 2.5 − 2)
                // 0.25 + 0.04 + 0.35 − 0.08 − 0.15 + 0.05 meq/L are left for sodium
                () -> assertEquals(0.46, of(Ion.SODIUM, permeate), ROUNDING));
    }

    @Test
    void permeateIsNeutral() {
        Water permeate = ReverseOsmosis.rejecting(0.93, 0.99).treat(FEED);
        assertEquals(charge(0), permeate.netCharge());
        assertEquals(OptionalDouble.empty(), permeate.measuredPH());
        assertEquals(celsius(15), permeate.temperature());
    }

    @Test
    void theSideThatPassesTooMuchIsHeldBackAndNamed() {
        // by rejection cations pass 0.08 + 0.3 + 0.15 = 0.53 meq/L, anions 0.25 + 0.04 + 0.35 + 0.05 = 0.69
        MembraneStreams streams = ReverseOsmosis.rejecting(0.9, 0.98).streams(FEED);
        Water permeate = streams.permeate();
        double factor = 0.53 / 0.69;
        assertAll(
                () -> assertEquals(Set.of(Ion.CHLORIDE, Ion.SULFATE, Ion.BICARBONATE), Set.copyOf(streams.adjusted())),
                () -> assertEquals(factor * 0.25, of(Ion.CHLORIDE, permeate), ROUNDING),
                () -> assertEquals(factor * 0.02, of(Ion.SULFATE, permeate), ROUNDING),
                () -> assertEquals(factor * 0.35, alkalinityOf(permeate), ROUNDING),
                () -> assertEquals(factor * -0.05, unmeasuredOf(permeate), ROUNDING),
                () -> assertEquals(0.04, of(Ion.CALCIUM, permeate), ROUNDING),
                () -> assertEquals(0.3, of(Ion.SODIUM, permeate), ROUNDING),
                () -> assertEquals(0.15, of(Ion.POTASSIUM, permeate), ROUNDING),
                () -> assertEquals(0.05, of(Ion.SILICA, permeate), ROUNDING));
    }

    @Test
    void cationsAreHeldBackWhereTheyWouldPassTooMuch() {
        Water glauber = Water.builder()
                .total(Ion.SODIUM, mmol(4))
                .total(Ion.SULFATE, mmol(2))
                .total(Ion.SILICA, mmol(50))
                .build();
        // 0.4 meq/L of sodium against 0.08 of sulfate
        MembraneStreams streams = ReverseOsmosis.rejecting(0.9, 0.98).streams(glauber);
        assertEquals(List.of(Ion.SODIUM), streams.adjusted());
        assertEquals(0.08, of(Ion.SODIUM, streams.permeate()), ROUNDING);
        assertEquals(0.04, of(Ion.SULFATE, streams.permeate()), ROUNDING);
        assertEquals(5, of(Ion.SILICA, streams.permeate()), 1e-14);
    }

    @Test
    void nothingPassesWhereTheOtherSideIsHeldBackWhole() {
        Water feed = Water.builder()
                .total(Ion.MAGNESIUM, mmol(5))
                .total(Ion.CHLORIDE, mmol(10))
                .carbon(mmol(0))
                .build();
        MembraneStreams streams = ReverseOsmosis.rejecting(0.9, 1).streams(feed);
        assertEquals(List.of(Ion.CHLORIDE), streams.adjusted());
        assertEquals(Water.pure().with(feed.temperature()), streams.permeate());
        assertEquals(10 / 0.75, of(Ion.CHLORIDE, streams.concentrate())); // all of it in three quarters of the volume
    }

    @Test
    void equalRejectionsNeedNoAdjustment() {
        MembraneStreams streams = ReverseOsmosis.rejecting(0.9, 0.9).streams(FEED);
        assertEquals(List.of(), streams.adjusted());
        assertEquals(0.35, alkalinityOf(streams.permeate()), ROUNDING);
    }

    @Test
    void aNamedIonTakesTheDifferenceAlone() {
        // by rejection 0.53 − 0.69 = −0.16 meq/L, so bicarbonate passes 0.19 and not 0.35
        MembraneStreams streams =
                ReverseOsmosis.rejecting(0.9, 0.98).adjusting(Ion.BICARBONATE).streams(FEED);
        assertEquals(List.of(Ion.BICARBONATE), streams.adjusted());
        assertEquals(0.19, alkalinityOf(streams.permeate()), ROUNDING);
        assertEquals(0.25, of(Ion.CHLORIDE, streams.permeate()), ROUNDING);
        assertEquals(-0.05, unmeasuredOf(streams.permeate()), ROUNDING);
    }

    @Test
    void hydrogenSulfidePassesLikeCarbonDioxideUnlessSaidOtherwise() {
        Water feed = Water.builder().total(Ion.HYDROGEN_SULFIDE, mmol(0.25)).build();
        ReverseOsmosis membrane = ReverseOsmosis.rejecting(0.9, 0.98);
        assertEquals(0.25, of(Ion.HYDROGEN_SULFIDE, membrane.treat(feed)));
        assertEquals(
                0.125,
                of(
                        Ion.HYDROGEN_SULFIDE,
                        membrane.rejecting(Ion.HYDROGEN_SULFIDE, 0.5).treat(feed)));
    }

    @Test
    void concentrateHoldsWhatThePermeateDoesNot() {
        MembraneStreams streams = ReverseOsmosis.rejecting(0.9, 0.98)
                .adjusting(Ion.BICARBONATE)
                .recovering(0.75)
                .streams(FEED);
        Water concentrate = streams.concentrate();
        assertAll(
                () -> assertEquals(celsius(15), concentrate.temperature()),
                () -> assertEquals((3 - 0.75 * 0.3) / 0.25, of(Ion.SODIUM, concentrate), 1e-14),
                () -> assertEquals((2 - 0.75 * 0.04) / 0.25, of(Ion.CALCIUM, concentrate), 1e-14),
                () -> assertEquals((3.5 - 0.75 * 0.19) / 0.25, alkalinityOf(concentrate), 1e-14),
                () -> assertEquals((-0.5 + 0.75 * 0.05) / 0.25, unmeasuredOf(concentrate), 1e-14),
                // the free CO₂ passes, and of what is bound 0.19 of 3.5
                () -> assertEquals(
                        (4.5 - 0.75 * (FREE + (4.5 - FREE) * 0.19 / 3.5)) / 0.25, carbonOf(concentrate), 1e-13));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.25, 0.5, 0.9})
    void permeateAndConcentrateMakeTheFeedAgain(double recovery) {
        MembraneStreams streams =
                ReverseOsmosis.rejecting(0.9, 0.98).recovering(recovery).streams(FEED);
        Water again = streams.concentrate().mixedWith(streams.permeate(), recovery);
        for (Ion ion : FEED.ions()) {
            assertEquals(of(ion, FEED), of(ion, again), 1e-14);
        }
        assertEquals(3.5, alkalinityOf(again), 1e-14);
        assertEquals(-0.5, unmeasuredOf(again), 1e-14);
        assertEquals(4.5, carbonOf(again), 1e-14);
    }

    @Test
    void aQuarterOfTheFeedIsRecoveredUnlessSaidOtherwise() {
        ReverseOsmosis membrane = ReverseOsmosis.rejecting(0.9, 0.98);
        assertEquals(membrane.recovering(0.25).streams(FEED), membrane.streams(FEED));
    }

    @Test
    void dissolvedCarbonDioxidePassesFreely() {
        // nothing else passes: 4.5 − 3.5 mmol/L and what pairs and carbonate leave free, without alkalinity, make an
        // acid permeate
        Water permeate = ReverseOsmosis.rejecting(1, 1).treat(FEED);
        assertEquals(FREE, carbonOf(permeate), ROUNDING);
        assertEquals(1, FREE, 0.03);
        assertEquals(0, alkalinityOf(permeate));
    }

    /** Recomputed apart from this library, for a hard tap at 12 °C: feed pH 8.2 and 3.91 mg/L of CO₂ make a permeate of pH 6.7, no alkaline one. */
    @Test
    void theCarbonDioxideOfAnAlkalineFeedPassesAsWell() {
        Water feed = Speciation.of(Water.builder()
                        .total(Ion.CALCIUM, mmol(3))
                        .total(Ion.MAGNESIUM, mmol(1))
                        .total(Ion.SODIUM, mmol(1))
                        .total(Ion.CHLORIDE, mmol(2))
                        .total(Ion.SULFATE, mmol(0.5))
                        .alkalinity(alkalinity(6))
                        .temperature(celsius(12))
                        .measuredPH(8.2)
                        .build())
                .water();
        Speciation permeate = Speciation.of(ReverseOsmosis.rejecting(0.95, 0.98).treat(feed));
        assertEquals(6.7, permeate.pH(), 0.1);
        double before = Speciation.of(feed).carbonDioxide().getValue();
        assertEquals(before, permeate.carbonDioxide().getValue(), before * 0.06); // some becomes HCO₃⁻ of the permeate
    }

    @Test
    void unknownCarbonStaysUnknown() {
        Water feed = Water.builder()
                .total(Ion.SODIUM, mmol(1))
                .total(Ion.CHLORIDE, mmol(1))
                .measuredPH(7)
                .build();
        MembraneStreams streams = ReverseOsmosis.rejecting(0.9, 0.98).streams(feed);
        assertEquals(Double.NaN, carbonOf(streams.permeate()));
        assertEquals(Double.NaN, carbonOf(streams.concentrate()));
        assertEquals(OptionalDouble.empty(), streams.permeate().measuredPH());
    }

    @Test
    void anOpenMembraneLetsAllPass() {
        MembraneStreams streams = ReverseOsmosis.rejecting(0, 0).streams(FEED);
        assertEquals(FEED, streams.permeate());
        assertEquals(FEED, streams.concentrate());
    }

    @Test
    void pureWaterStaysPure() {
        MembraneStreams streams = ReverseOsmosis.rejecting(0.9, 0.98).streams(Water.pure());
        assertEquals(Water.pure(), streams.permeate());
        assertEquals(Water.pure(), streams.concentrate());
        assertEquals(List.of(), streams.adjusted());
    }

    @Test
    void mineralAcidPassesAsNegativeAlkalinity() {
        Water acid =
                Water.builder().total(Ion.SULFATE, mmol(1)).carbon(mmol(0.5)).build();
        // 0.2 meq/L of acid by rejection against 0.04 of sulfate: the acid is held back
        MembraneStreams streams = ReverseOsmosis.rejecting(0.9, 0.98).streams(acid);
        assertEquals(List.of(Ion.BICARBONATE), streams.adjusted());
        assertEquals(0.02, of(Ion.SULFATE, streams.permeate()), ROUNDING);
        assertEquals(-0.04, alkalinityOf(streams.permeate()), ROUNDING);
        assertEquals(0.5, carbonOf(streams.permeate())); // all of it free
    }

    @Test
    void ownIonsPassByTheirCharge() {
        Water feed = Water.builder()
                .total(Waters.LEAD, mmol(1))
                .total(Waters.PERCHLORATE, mmol(1))
                .total(Waters.UREA, mmol(1))
                .total(Ion.CHLORIDE, mmol(1))
                .build();
        Water permeate = ReverseOsmosis.rejecting(0.9, 0.98)
                .rejecting(Waters.UREA, 0.25)
                .adjusting(Waters.LEAD)
                .treat(feed);
        assertAll(
                // 0.02 by rejection, and 0.08 more against 0.1 of each anion
                () -> assertEquals(0.1, of(Waters.LEAD, permeate), ROUNDING),
                () -> assertEquals(0.1, of(Waters.PERCHLORATE, permeate), ROUNDING),
                () -> assertEquals(0.75, of(Waters.UREA, permeate), ROUNDING));
    }

    @Test
    void itsNameSaysWhatItRejects() {
        ReverseOsmosis membrane = ReverseOsmosis.rejecting(0.96, 0.985)
                .rejecting(Ion.BORIC_ACID, 0.4)
                .rejecting(Ion.BICARBONATE, 0.9)
                .rejecting(Ion.BICARBONATE, 0.88)
                .recovering(0.3);
        assertEquals(
                "reverse osmosis rejecting 96 % of single-charged and 98.5 % of multiple-charged ions, "
                        + "40 % of B(OH)₃, 88 % of HCO₃⁻",
                membrane.name());
        assertEquals(
                "reverse osmosis rejecting 96 % of single-charged and 98.5 % of multiple-charged ions, "
                        + "40 % of B(OH)₃, 88 % of HCO₃⁻, adjusting Na⁺",
                membrane.adjusting(Ion.SODIUM).name());
    }
}
