package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.instrument.FactorMeter;
import evenwater.chemistry.instrument.ReferenceSolution;
import evenwater.chemistry.instrument.SolutionScaleMeter;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WaterConditionTest {

    private static final Water HARD = Water.builder()
            .total(Ion.CALCIUM, mmol(2))
            .total(Ion.SODIUM, mmol(1))
            .total(Ion.CHLORIDE, mmol(1))
            .alkalinity(alkalinity(4))
            .temperature(celsius(12))
            .carbon(mmol(4.4))
            .build();

    @Test
    void itIsThatOfTheSpecies() {
        WaterCondition condition = WaterCondition.of(HARD);
        Speciation species = Speciation.of(HARD);
        assertEquals(species.pH(), condition.pH().orElseThrow());
        assertEquals(species.pH(), condition.speciation().orElseThrow().pH());
        assertEquals(
                species.carbonDioxide().to(Ion.CARBON_DIOXIDE.milligramPerLitre()),
                condition.carbonDioxide().orElseThrow());
        assertEquals(species.saturationIndex(Mineral.CALCITE), condition.calciteIndex());
        assertEquals("", condition.whyUnknown());
        double conductivity = condition.conductivity().orElseThrow().in(MICROSIEMENS_PER_CENTIMETRE);
        assertEquals(
                0.7 * conductivity,
                condition.reading(FactorMeter.SCALE_700).orElseThrow().in(MILLIGRAM_PER_LITRE),
                1e-9);
    }

    @Test
    void itIsReadByPeople() {
        assertEquals(
                "pH 7.39, 18.1 mg/L CO₂, calcite index +0.04, 487 µS/cm at 25 °C (243 ppm on a meter of factor 0.5)",
                WaterCondition.of(HARD).toString());
    }

    @Test
    void withoutCarbonTheConductivityIsStillKnown() {
        Water unknown = Water.builder()
                .total(Ion.CALCIUM, mmol(2))
                .alkalinity(alkalinity(4))
                .build();
        WaterCondition condition = WaterCondition.of(unknown);
        assertEquals(OptionalDouble.empty(), condition.pH());
        assertEquals(Optional.empty(), condition.carbonDioxide());
        assertEquals(OptionalDouble.empty(), condition.calciteIndex());
        assertTrue(condition.conductivity().isPresent());
        assertEquals(
                "pH of this water is unknown: it states neither inorganic carbon nor a measured pH (a change or blend drops one)",
                condition.whyUnknown());
    }

    @Test
    void brineHasNone() {
        Water brine = Water.builder()
                .total(Ion.SODIUM, mmol(2000))
                .total(Ion.CHLORIDE, mmol(2000))
                .carbon(mmol(0))
                .build();
        WaterCondition condition = WaterCondition.of(brine);
        assertEquals(Optional.empty(), condition.conductivity());
        assertEquals(Optional.empty(), condition.reading(FactorMeter.SCALE_500));
        assertEquals("pH unknown", condition.toString());
        assertTrue(condition.whyUnknown().startsWith("ionic strength must be at most 1000 mmol/L"));
    }

    /** 20 g/L is beyond the 10 g/L of such scales. */
    @Test
    void offTheScaleThereIsNoReading() {
        Water salty = Water.builder()
                .total(Ion.SODIUM, mmol(350))
                .total(Ion.CHLORIDE, mmol(350))
                .carbon(mmol(0))
                .build();
        assertEquals(
                Optional.empty(),
                WaterCondition.of(salty).reading(SolutionScaleMeter.of(ReferenceSolution.SODIUM_CHLORIDE)));
    }

    @Test
    void aStageShowsTheConditionBehindIt() {
        Stage stage = Train.of(Softener.withSodium()).run(HARD).stages().get(0);
        assertEquals(WaterCondition.of(stage.after()).pH(), stage.condition().pH());
        assertTrue(stage.toString().contains("\n  which has: pH 7."), stage::toString);
    }

    @Test
    void nullIsNamed() {
        Refused.asNull("water", () -> WaterCondition.of(null));
        Refused.asNull("meter", () -> WaterCondition.of(HARD).reading(null));
    }
}
