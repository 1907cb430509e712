package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Blending, dilution and concentration: whole waters are scaled. */
class WaterMixingTest {

    private static final Water WELL = Water.builder()
            .total(Ion.CALCIUM, mmol(2))
            .total(Ion.CHLORIDE, mmol(1))
            .alkalinity(alkalinity(2.5))
            .carbon(mmol(3))
            .temperature(celsius(10))
            .build();

    private static final Water RAIN = Water.builder()
            .total(Ion.AMMONIUM, mmol(0.5))
            .total(Ion.SULFATE, mmol(0.5))
            .carbon(mmol(0))
            .temperature(celsius(30))
            .build();

    @Test
    void everyFieldOfABlendLiesAtTheShareBetweenBoth() {
        Water blend = WELL.mixedWith(RAIN, 0.25);
        assertAll(
                () -> assertEquals(mmol(1.5), blend.total(Ion.CALCIUM)),
                () -> assertEquals(mmol(0.125), blend.total(Ion.AMMONIUM)),
                () -> assertEquals(mmol(0.75), blend.total(Ion.CHLORIDE)),
                () -> assertEquals(mmol(0.125), blend.total(Ion.SULFATE)),
                () -> assertEquals(alkalinity(1.75), blend.alkalinity()), // 0.75 · 2.5 − 0.25 · 0.5
                () -> assertEquals(charge(-0.375), blend.unmeasuredCharge()), // 0.75 · (2.5 − 3)
                () -> assertEquals(Optional.of(mmol(2.25)), blend.carbon()),
                () -> assertEquals(
                        15, blend.temperature().in(WaterUnits.CELSIUS), 1e-13), // kelvin has 12 digits behind 15
                () -> assertEquals(List.of(Ion.CALCIUM, Ion.AMMONIUM, Ion.CHLORIDE, Ion.SULFATE), blend.ions()));
    }

    @Test
    void noShareIsTheWaterItselfAndAllOfItTheOther() {
        Water read = Water.builder().measuredPH(7).build();
        assertSame(read, read.mixedWith(RAIN, 0));
        assertSame(read, RAIN.mixedWith(read, 1));
    }

    @Test
    void aBlendHasNoReadingOfPH() {
        Water read = Water.builder().measuredPH(7).build();
        assertEquals(OptionalDouble.empty(), read.mixedWith(read, 0.5).measuredPH());
        assertEquals(OptionalDouble.empty(), read.dilutedBy(2).measuredPH());
        assertEquals(OptionalDouble.empty(), read.concentratedBy(2).measuredPH());
        assertEquals(OptionalDouble.empty(), read.plus(Change.of(Map.of())).measuredPH());
    }

    @Test
    void carbonOfABlendIsUnknownIfThatOfAPartIs() {
        Water unknown = Water.builder().total(Ion.CALCIUM, mmol(1)).build();
        assertEquals(Optional.empty(), WELL.mixedWith(unknown, 0.5).carbon());
        assertEquals(Optional.empty(), unknown.mixedWith(WELL, 0.5).carbon());
        assertEquals(Optional.empty(), unknown.dilutedBy(2).carbon());
        assertEquals(Optional.empty(), unknown.concentratedBy(2).carbon());
        Change carbonDioxide = Change.of(Map.of(Ion.CARBON_DIOXIDE, mmol(-1)));
        assertEquals(Optional.empty(), unknown.plus(carbonDioxide).carbon());
    }

    @Test
    void dilutionDividesAllButTheTemperature() {
        Water diluted = WELL.dilutedBy(4);
        assertEquals(
                Water.builder()
                        .total(Ion.CALCIUM, mmol(0.5))
                        .total(Ion.CHLORIDE, mmol(0.25))
                        .alkalinity(alkalinity(0.625))
                        .carbon(mmol(0.75))
                        .temperature(celsius(10))
                        .build(),
                diluted);
        assertEquals(charge(-0.125), diluted.unmeasuredCharge());
    }

    @Test
    void evaporationMultipliesAllButTheTemperature() {
        Water concentrated = WELL.concentratedBy(4);
        assertEquals(
                Water.builder()
                        .total(Ion.CALCIUM, mmol(8))
                        .total(Ion.CHLORIDE, mmol(4))
                        .alkalinity(alkalinity(10))
                        .carbon(mmol(12))
                        .temperature(celsius(10))
                        .build(),
                concentrated);
        assertEquals(charge(-2), concentrated.unmeasuredCharge());
    }

    @Test
    void factorOneIsTheSameWaterButForTheReading() {
        assertEquals(WELL, WELL.dilutedBy(1));
        assertEquals(WELL, WELL.concentratedBy(1));
    }

    @Test
    void extremeFactorsAreFinite() {
        assertEquals(mmol(2e9), WELL.concentratedBy(1e9).total(Ion.CALCIUM));
        assertEquals(0, alkalinityOf(WELL.dilutedBy(Double.MAX_VALUE)), 1e-300);
    }

    @Test
    void aBlendOfMineralAcidAndAlkalineWaterHasTheDifference() {
        Water acid = Water.builder().total(Ion.SULFATE, mmol(1)).build(); // −2 meq/L
        assertEquals(alkalinity(0.25), WELL.mixedWith(acid, 0.5).alkalinity());
    }
}
