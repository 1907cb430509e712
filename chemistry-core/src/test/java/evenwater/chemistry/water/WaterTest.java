package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.chargeOfTotals;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static evenwater.chemistry.testing.Amounts.unmeasuredOf;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a water holds, and how it is kept in double entry. */
class WaterTest {

    /** Cations 5.25, anions 3.0 meq/L, so that 2.25 meq/L are left for alkalinity. */
    private static WaterBuilder tap() {
        return Water.builder()
                .total(Ion.CALCIUM, mmol(2))
                .total(Ion.MAGNESIUM, mmol(0.5))
                .total(Ion.SODIUM, mmol(0.25))
                .total(Ion.CHLORIDE, mmol(1))
                .total(Ion.SULFATE, mmol(0.75))
                .total(Ion.NITRATE, mmol(0.5));
    }

    @Test
    void withoutAlkalinityTheIonsDecideIt() {
        Water water = tap().build();
        assertEquals(alkalinity(2.25), water.alkalinity());
        assertEquals(charge(0), water.unmeasuredCharge());
        assertEquals(charge(0), water.netCharge());
    }

    @Test
    void withUnmeasuredChargeAlkalinityClosesTheBalance() {
        Water water = tap().unmeasuredCharge(charge(-0.5)).build();
        assertEquals(alkalinity(1.75), water.alkalinity());
        assertEquals(charge(-0.5), water.unmeasuredCharge());
        assertEquals(charge(0), water.netCharge());
    }

    @Test
    void withReportedAlkalinityTheImbalanceStaysVisible() {
        Water water = tap().alkalinity(alkalinity(2.5)).build();
        assertEquals(alkalinity(2.5), water.alkalinity());
        assertEquals(charge(0.25), water.unmeasuredCharge());
        assertEquals(charge(0), water.netCharge());
        assertEquals(mmol(1), water.total(Ion.CHLORIDE)); // not poured into an ion
    }

    @Test
    void aKitOfTwoReadingsLacksTheAnionsThatNobodyMeasured() {
        // GH 3.2 and KH 2.0 meq/L: 1.2 meq/L of anions are missing
        Water water = Water.builder()
                .total(Ion.CALCIUM, mmol(1.6))
                .alkalinity(alkalinity(2))
                .build();
        assertEquals(-1.2, unmeasuredOf(water), 3e-16); // 2 − 3.2 in doubles, an ulp of 3.2
    }

    @Test
    void alkalinityIsTheChargeOfTheTotalsAndOfTheUnmeasured() {
        Water water = tap().total(Ion.POTASSIUM, mmol(0.1))
                .total(Ion.AMMONIUM, mmol(0.03))
                .total(Ion.DIHYDROGEN_PHOSPHATE, mmol(0.01))
                .total(Ion.SILICA, mmol(0.3))
                .alkalinity(Alkalinity.of(7, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .build();
        assertEquals(alkalinityOf(water), chargeOfTotals(water) + unmeasuredOf(water), 1e-15); // sums of ten meq/L
        assertEquals(7 * 0.35665246, alkalinityOf(water), 1e-7); // digits of the factor
    }

    @Test
    void alkalinityIsNegativeWhereThereIsMineralAcid() {
        Water mine = Water.builder()
                .total(Ion.SULFATE, mmol(1))
                .total(Ion.IRON_II, mmol(0.25))
                .build();
        assertEquals(alkalinity(-1.5), mine.alkalinity());
        Water stated = Water.builder().alkalinity(alkalinity(-1.5)).build();
        assertEquals(alkalinity(-1.5), stated.alkalinity());
        assertEquals(charge(-1.5), stated.unmeasuredCharge());
    }

    @Test
    void statedAmountsComeBackInCanonicalUnits() {
        Water water = Water.builder()
                .total(Ion.NITRATE, AmountConcentration.of(14.007, Ion.NITRATE.milligramPerLitreAs(Element.NITROGEN)))
                .unmeasuredCharge(EquivalentConcentration.of(0.002, EquivalentConcentration.EQUIVALENT_PER_LITRE))
                .carbon(AmountConcentration.of(0.003, AmountConcentration.MOLE_PER_LITRE))
                .temperature(WaterUnits.temperature(68, WaterUnits.FAHRENHEIT))
                .build();
        assertEquals(1, of(Ion.NITRATE, water), 2e-16); // a quotient of 14.007 by itself
        assertEquals(charge(2), water.unmeasuredCharge());
        assertEquals(Optional.of(mmol(3)), water.carbon());
        assertEquals(20, water.temperature().in(WaterUnits.CELSIUS), 1e-13); // kelvin has 12 digits behind 20
    }

    @Test
    void anIonThatIsNotThereHasAmountZero() {
        assertEquals(mmol(0), tap().build().total(Ion.POTASSIUM));
    }

    @Test
    void ionsAreThoseWithAnAmountInTheirOrder() {
        Water water = tap().total(Ion.BORIC_ACID, mmol(0)).build();
        assertEquals(
                List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.CHLORIDE, Ion.SULFATE, Ion.NITRATE), water.ions());
        assertThrows(UnsupportedOperationException.class, () -> water.ions().clear());
    }

    @Test
    void theLastStatementOfAPartHolds() {
        Water water = tap().total(Ion.CALCIUM, mmol(9))
                .total(Ion.CALCIUM, mmol(2))
                .alkalinity(alkalinity(9))
                .alkalinity(alkalinity(2.5))
                .build();
        assertEquals(tap().alkalinity(alkalinity(2.5)).build(), water);
    }

    @Test
    void aBuilderMayBuildMoreThanOneWater() {
        WaterBuilder builder = tap();
        Water before = builder.build();
        Water after = builder.total(Ion.POTASSIUM, mmol(1)).build();
        assertEquals(mmol(0), before.total(Ion.POTASSIUM));
        assertEquals(mmol(1), after.total(Ion.POTASSIUM));
    }

    @Test
    void whatIsNotStatedIsNotKnown() {
        Water water = tap().build();
        assertAll(
                () -> assertEquals(Optional.empty(), water.carbon()),
                () -> assertEquals(OptionalDouble.empty(), water.measuredPH()),
                () -> assertEquals(celsius(25), water.temperature()));
    }

    @Test
    void pureWaterHoldsNothing() {
        Water pure = Water.pure();
        assertAll(
                () -> assertEquals(List.of(), pure.ions()),
                () -> assertEquals(alkalinity(0), pure.alkalinity()),
                () -> assertEquals(charge(0), pure.unmeasuredCharge()),
                () -> assertEquals(Optional.of(mmol(0)), pure.carbon()),
                () -> assertEquals(OptionalDouble.empty(), pure.measuredPH()),
                () -> assertEquals(celsius(25), pure.temperature()));
    }

    @Test
    void carbonOrAMeasuredPHIsKept() {
        assertEquals(Optional.of(mmol(2.5)), tap().carbon(mmol(2.5)).build().carbon());
        assertEquals(OptionalDouble.of(7.4), tap().measuredPH(7.4).build().measuredPH());
    }

    @Test
    void anotherTemperatureChangesNothingElseButDropsThePH() {
        Water water = tap().alkalinity(alkalinity(2.5)).measuredPH(7.4).build();
        Water cold = water.with(celsius(10));
        assertEquals(tap().alkalinity(alkalinity(2.5)).temperature(celsius(10)).build(), cold);
        assertEquals(OptionalDouble.empty(), cold.measuredPH());
        assertEquals(water, water.with(celsius(25)));
        assertEquals(OptionalDouble.of(7.4), water.with(celsius(25)).measuredPH());
    }

    @Test
    void theEndsOfTheRangesAreWaters() {
        assertAll(
                () -> assertEquals(
                        celsius(0), tap().temperature(celsius(0)).build().temperature()),
                () -> assertEquals(
                        celsius(100), tap().temperature(celsius(100)).build().temperature()),
                () -> assertEquals(
                        100,
                        tap().temperature(WaterUnits.temperature(212, WaterUnits.FAHRENHEIT))
                                .build()
                                .temperature()
                                .in(WaterUnits.CELSIUS),
                        1e-9), // the tolerance of the range, which °F needs
                () -> assertEquals(
                        OptionalDouble.of(0), tap().measuredPH(0).build().measuredPH()),
                () -> assertEquals(
                        OptionalDouble.of(14), tap().measuredPH(14).build().measuredPH()),
                () -> assertEquals(
                        Optional.of(mmol(0)), tap().carbon(mmol(0)).build().carbon()));
    }
}
