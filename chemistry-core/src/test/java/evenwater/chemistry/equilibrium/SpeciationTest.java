package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.WaterUnits.ATMOSPHERE;
import static evenwater.chemistry.quantity.WaterUnits.CELSIUS;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrowsExactly;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SpeciationTest {

    /** Water A12 of the reference file of computed waters. */
    private static final Water REMINERALISED = Water.builder()
            .total(Ion.CALCIUM, mmol(1.3263))
            .total(Ion.MAGNESIUM, mmol(0.31474))
            .total(Ion.SODIUM, mmol(0.71789))
            .total(Ion.POTASSIUM, mmol(0.20016))
            .total(Ion.CHLORIDE, mmol(2.4417))
            .total(Ion.SULFATE, mmol(0.17621))
            .measuredPH(7.17)
            .build();

    @Test
    void aMeasuredPHTellsTheCarbon() {
        Speciation found = Speciation.of(REMINERALISED);
        assertEquals(7.17, found.pH(), 1e-12);
        assertEquals(1.596583754, found.carbon().in(MILLIMOLE_PER_LITRE), 2e-6);
        assertEquals(found.carbon(), found.water().carbon().orElseThrow());
        assertEquals(OptionalDouble.empty(), found.water().measuredPH());
        assertEquals(7.17, Speciation.of(found.water()).pH(), 1e-12);
    }

    @Test
    void viewsOfTheSpecies() {
        Speciation found = Speciation.of(REMINERALISED);
        assertEquals(0.1934768534, found.carbonDioxide().in(MILLIMOLE_PER_LITRE), 2e-7);
        assertEquals(0.005690569586, found.partialPressureOfCarbonDioxide().in(ATMOSPHERE), 1e-8);
        assertEquals(5.868312397, found.ionicStrength().in(MILLIMOLE_PER_LITRE), 1e-5);
        assertEquals(1.288141594, found.concentration(Species.CALCIUM).in(MILLIMOLE_PER_LITRE), 2e-6);
        assertEquals(-0.6017617667, found.saturationIndex(Mineral.CALCITE).orElseThrow(), 5e-6);
        assertEquals(-0.7455316141, found.saturationIndex(Mineral.ARAGONITE).orElseThrow(), 5e-6);
        assertEquals(-2.411297937, found.saturationIndex(Mineral.GYPSUM).orElseThrow(), 5e-6);
        assertEquals(
                REMINERALISED.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                found.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                1e-12);
        assertTrue(found.activityCoefficient(Species.CALCIUM) < found.activityCoefficient(Species.SODIUM));
        assertTrue(found.residual() <= 1e-12);
    }

    @Test
    void theLawCanBeChosen() {
        Speciation davies = Speciation.of(REMINERALISED, ActivityLaw.DAVIES);
        assertEquals(-0.6063336995, davies.saturationIndex(Mineral.CALCITE).orElseThrow(), 5e-6);
        assertEquals(0.005678203856, davies.partialPressureOfCarbonDioxide().in(ATMOSPHERE), 1e-8);
    }

    @Test
    void pureWaterIsNeutral() { // half of pKw, 13.9995 by the function of Marshall and Franck
        assertEquals(6.99975, Speciation.of(Water.pure()).pH(), 0.00005);
    }

    @Test
    void softeningMovesThePHByPairsAlone() { // column "softened" of the reference file
        Water known = Speciation.of(REMINERALISED).water();
        Water soft = Water.builder()
                .total(Ion.SODIUM, mmol(0.71789 + 2 * (1.3263 + 0.31474)))
                .total(Ion.POTASSIUM, mmol(0.20016))
                .total(Ion.CHLORIDE, mmol(2.4417))
                .total(Ion.SULFATE, mmol(0.17621))
                .carbon(known.carbon().orElseThrow())
                .build();
        assertEquals(7.184270481, Speciation.of(soft).pH(), 2e-6);
        assertEquals(OptionalDouble.empty(), Speciation.of(soft).saturationIndex(Mineral.CALCITE));
    }

    @Test
    void unionisedAmmoniaAtLowIonicStrength() { // Emerson et al. 1975 with 273.15 K: 5.366 % at pH 8, 25 °C;
        // activities take 0.06 %
        Water water = Water.builder()
                .total(Ion.AMMONIUM, mmol(0.01))
                .total(Ion.SODIUM, mmol(0.1))
                .alkalinity(Alkalinity.of(0.1, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .measuredPH(8)
                .build();
        assertEquals(0.05366, Speciation.of(water).unionisedAmmonia().orElseThrow(), 0.0008);
        assertEquals(OptionalDouble.empty(), Speciation.of(REMINERALISED).unionisedAmmonia());
    }

    @Test
    void waterWithoutPHSaysWhatIsMissing() {
        Water water = Water.builder().total(Ion.SODIUM, mmol(1)).build();
        Refused.withoutAnswer(
                "pH of this water is unknown: it states neither inorganic carbon nor a measured pH (a change or blend drops one)",
                List.of(),
                () -> Speciation.of(water));
    }

    @Test
    void thePHOfMineralAcidTellsNoCarbon() {
        Water acid = Water.builder().total(Ion.CHLORIDE, mmol(1)).measuredPH(3).build();
        Refused.withoutAnswer(
                "pH 3.0 and alkalinity -1 meq/L do not tell the inorganic carbon: H⁺ and OH⁻ outweigh it more than "
                        + "fourfold",
                List.of(acid.alkalinity()),
                () -> Speciation.of(acid));
    }

    @Test
    void aMissingWaterIsNamed() {
        Refused.asNull("water", () -> Speciation.of(null));
        Refused.asNull("water", () -> Speciation.extrapolated(null, ActivityLaw.DAVIES));
        Refused.asNull("water", () -> MineralEquilibrium.saturated(null, Mineral.CALCITE));
    }

    @Test
    void contradictionsAreSaidWithTheirNumbers() {
        Water water = Water.builder()
                .total(Ion.SODIUM, mmol(0.01))
                .alkalinity(Alkalinity.of(0.01, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .measuredPH(10)
                .build();
        Refused.withoutAnswer(
                "no water with these ions at 25 °C can have pH 10.0 and alkalinity 0.01 meq/L: the two contradict each other",
                List.of(),
                () -> Speciation.of(water));
    }

    @Test
    void hotAndSaltyWatersAreRefused() {
        Refused.argument(
                "temperature of a speciation must be from 0 °C to 50 °C, but was 51 °C",
                () -> Speciation.of(Water.pure().with(WaterUnits.temperature(51, CELSIUS))));
        Water brine = Water.builder()
                .total(Ion.SODIUM, mmol(2000))
                .total(Ion.CHLORIDE, mmol(2000))
                .carbon(mmol(0.01))
                .build();
        NoAnswerException refusal = assertThrowsExactly(NoAnswerException.class, () -> Speciation.of(brine));
        assertEquals(
                "ionic strength must be at most 1000 mmol/L for the activity coefficients to mean anything, but is 2,000 mmol/L",
                refusal.getMessage());
        assertEquals(1, refusal.numbers().size());
    }

    @Test
    void nothingOfASpeciesIsNoCoefficient() {
        Refused.withoutAnswer(
                "this water has no NH₃",
                List.of(),
                () -> Speciation.of(REMINERALISED).activityCoefficient(Species.AMMONIA));
    }

    @Test
    void textForLogs() {
        assertEquals(
                "speciation at 25 °C: pH " + Speciation.of(Water.pure()).pH()
                        + ", CO₂ 0 mmol/L, inorganic carbon 0 mmol/L, ionic strength "
                        + Speciation.of(Water.pure()).ionicStrength(),
                Speciation.of(Water.pure()).toString());
    }
}
