package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BoilingAndDealkalizerTest {

    private static final Water HARD = Water.builder()
            .total(Ion.CALCIUM, mmol(2.5))
            .total(Ion.MAGNESIUM, mmol(0.8))
            .total(Ion.SODIUM, mmol(0.7))
            .total(Ion.CHLORIDE, mmol(0.8))
            .total(Ion.SULFATE, mmol(0.5))
            .temperature(WaterUnits.temperature(12, WaterUnits.CELSIUS))
            .measuredPH(7.3)
            .build();

    /** Water works reckon with 30 to 40 mg/L as CaCO₃, some 2 °dKH, that boiling leaves (common practice, no source). */
    @Test
    void boilingLeavesSomeTwoDegrees() {
        Water boiled = Boiling.inOpenPot().treat(HARD);
        double left = boiled.alkalinity().in(Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
        assertTrue(left > 30 && left < 40, left + " mg/L as CaCO₃");
        assertEquals(HARD.temperature(), boiled.temperature());
    }

    @Test
    void calciumAndAlkalinityFallTogetherAndTheRestStays() {
        Water boiled = Boiling.inOpenPot().treat(HARD);
        double dropped = Boiling.inOpenPot().dropped(HARD).in(MILLIMOLE_PER_LITRE);
        assertEquals(2.5 - dropped, boiled.total(Ion.CALCIUM).in(MILLIMOLE_PER_LITRE), 1e-12);
        assertEquals(5.5 - 2 * dropped, boiled.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), 1e-12);
        assertEquals(HARD.total(Ion.MAGNESIUM), boiled.total(Ion.MAGNESIUM));
        Water hot = boiled.with(WaterUnits.temperature(100, WaterUnits.CELSIUS));
        double index = Speciation.extrapolated(hot, ActivityLaw.TRUESDELL_JONES)
                .saturationIndex(Mineral.CALCITE)
                .orElseThrow();
        assertEquals(0, index, 1e-9);
    }

    @Test
    void aSoftWaterDropsNothing() {
        Water soft = Water.builder()
                .total(Ion.CALCIUM, mmol(0.1))
                .total(Ion.CHLORIDE, mmol(0.1))
                .carbon(mmol(0.15))
                .build();
        assertEquals(0, Boiling.inOpenPot().dropped(soft).in(MILLIMOLE_PER_LITRE));
        assertEquals(soft.alkalinity(), Boiling.inOpenPot().treat(soft).alkalinity());
    }

    @Test
    void boilingDownConcentratesWhatStays() {
        Water half = Boiling.inOpenPot().concentratingBy(2).treat(HARD);
        assertEquals(1.6, half.total(Ion.MAGNESIUM).in(MILLIMOLE_PER_LITRE), 1e-12);
        assertEquals(
                "boiling down by a factor of 2.0",
                Boiling.inOpenPot().concentratingBy(2).name());
        assertEquals("boiling", Boiling.inOpenPot().toString());
        Refused.argument(
                "concentration factor of boiling must be from 1 to 100, but was 0.5",
                () -> Boiling.inOpenPot().concentratingBy(0.5));
    }

    @Test
    void moreCarbonDioxideKeepsMoreCalciteDissolved() {
        double open = Boiling.inOpenPot().dropped(HARD).in(MILLIMOLE_PER_LITRE);
        double rich = Boiling.under(WaterUnits.pressure(0.01, WaterUnits.ATMOSPHERE))
                .dropped(HARD)
                .in(MILLIMOLE_PER_LITRE);
        assertTrue(rich < open);
    }

    /** Calcite drops while CO₂ leaves; when the last of the carbon has gone as well, what lies in the pot stays there. */
    @Test
    void steamThatCarriesOffMoreCarbonDioxideNeverDropsLess() {
        double before = 0;
        for (double pressure : new double[] {420e-6, 1e-4, 1e-5, 1e-7, 1e-9}) {
            double dropped = Boiling.under(WaterUnits.pressure(pressure, WaterUnits.ATMOSPHERE))
                    .dropped(HARD)
                    .in(MILLIMOLE_PER_LITRE);
            assertTrue(dropped >= before * (1 - 1e-9), pressure + " atm: " + dropped + " after " + before);
            before = dropped;
        }
        assertTrue(before <= 2.5);
    }

    /** Recomputed apart from this library: 15 °dH of calcium and 12 °dKH at 100 °C; mmol/L that drop at the most. */
    @Test
    void calciteDropsWithTheCarbonThatAThinGasBrings() {
        Water water = Water.builder()
                .total(Ion.CALCIUM, mmol(15 / 5.608))
                .alkalinity(alkalinity(12 / 2.804))
                .carbon(mmol(4.6))
                .build();
        for (double[] row : new double[][] {{420, 2.0190}, {200, 2.0319}, {100, 2.0325}}) {
            double dropped = Boiling.under(WaterUnits.pressure(row[0], WaterUnits.MICROATMOSPHERE))
                    .dropped(water)
                    .in(MILLIMOLE_PER_LITRE);
            assertEquals(row[1], dropped, row[1] * 1e-3);
        }
    }

    @Test
    void pressuresAreCheckedWhenATreatmentIsMade() {
        var none = WaterUnits.pressure(0, WaterUnits.ATMOSPHERE);
        String message = "partial pressure of CO₂ must be above 0 atm, to 10 atm, but was 0 atm";
        Refused.argument(message, () -> Boiling.under(none));
        Refused.argument(message, () -> Aeration.with(none));
        Refused.argument(
                "partial pressure of CO₂ must be above 0 atm, to 10 atm, but was 11 atm",
                () -> Aeration.with(WaterUnits.pressure(11, WaterUnits.ATMOSPHERE)));
    }

    @Test
    void aWeakAcidResinTakesTheTemporaryHardness() {
        Water soft = Water.builder()
                .total(Ion.CALCIUM, mmol(1.5))
                .total(Ion.SODIUM, mmol(1))
                .total(Ion.CHLORIDE, mmol(3.0))
                .measuredPH(7.5)
                .build();
        Water treated = Dealkalizer.withWeakAcidResin().treat(soft); // 3 meq/L of hardness, 1 of alkalinity
        assertEquals(1.0, treated.total(Ion.CALCIUM).in(MILLIMOLE_PER_LITRE), 1e-12);
        assertEquals(0, treated.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), 1e-12);
        assertEquals(Speciation.of(soft).water().carbon(), treated.carbon());
        assertTrue(Speciation.of(treated).pH() < 5);
    }

    @Test
    void moreAlkalinityThanHardnessStays() {
        Water alkaline = Water.builder()
                .total(Ion.CALCIUM, mmol(0.5))
                .total(Ion.SODIUM, mmol(3))
                .carbon(mmol(4.2))
                .build();
        Water treated = Dealkalizer.withWeakAcidResin().treat(alkaline);
        assertEquals(0, treated.hardness().in(Hardness.MILLIMOLE_PER_LITRE), 1e-15);
        assertEquals(3, treated.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), 1e-12);
    }

    @Test
    void aStrongAcidResinMakesMineralAcid() { // Cl⁻ 0.8 and SO₄²⁻ 0.5 mmol/L become 1.8 meq/L of acid
        Water acid = Dealkalizer.withStrongAcidResin().treat(HARD);
        assertEquals(-1.8, acid.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), 1e-12);
        assertEquals(-Math.log10(1.8e-3), Speciation.of(acid).pH(), 0.05); // activity and HSO₄⁻ take 0.03
        assertEquals(
                "strong-acid resin in hydrogen form",
                Dealkalizer.withStrongAcidResin().name());
        assertEquals(
                "weak-acid resin in hydrogen form",
                Dealkalizer.withWeakAcidResin().toString());
    }

    @Test
    void nothingToExchangeChangesNothing() {
        Water acid = Water.builder().total(Ion.CHLORIDE, mmol(0.1)).build();
        assertEquals(acid, Dealkalizer.withWeakAcidResin().treat(acid));
        assertEquals(acid, Dealkalizer.withStrongAcidResin().treat(acid));
        assertEquals(alkalinity(-0.1), acid.alkalinity());
    }

    /** Taking 5 °dKH out of a tank at once sets free some 80 mg/L of CO₂ and leads to a pH near 6. */
    @Test
    void acidAtOnceFillsATankWithCarbonDioxide() {
        Water tank = GasExchange.equilibrated(
                Water.builder()
                        .total(Ion.CALCIUM, mmol(1.6))
                        .alkalinity(Alkalinity.of(8, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                        .build(),
                WaterUnits.pressure(800, WaterUnits.MICROATMOSPHERE));
        double equivalents =
                Alkalinity.of(5, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS).in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        Speciation after = Speciation.of(
                tank.plus(Change.of(Map.of(Ion.HYDROGEN, mmol(equivalents), Ion.CHLORIDE, mmol(equivalents)))));
        assertEquals(80, after.carbonDioxide().in(Ion.CARBON_DIOXIDE.milligramPerLitre()), 5);
        assertEquals(6, after.pH(), 0.15);
    }
}
