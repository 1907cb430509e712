package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Questions that look well formed and have no answer, or none that the constants can give. */
class UnansweredTest {

    private static final Water SALT = Water.builder()
            .total(Ion.SODIUM, mmol(1))
            .total(Ion.CHLORIDE, mmol(1))
            .build();

    @Test
    void carbonThatIsCarbonDioxideAloneTellsNoPH() {
        CarbonateSystem none = CarbonateSystem.of(SALT).withCarbon(mmol(0)).withCarbonDioxide(mmol(0));
        Refused.withoutAnswer(
                "inorganic carbon and CO₂ tell no pH where they are the same within 0.1 %, or no carbon at all",
                List.of(), none::solve);
        CarbonateSystem same = CarbonateSystem.of(SALT).withCarbon(mmol(1)).withCarbonDioxide(mmol(0.9995));
        assertThrows(NoAnswerException.class, same::solve);
        CarbonateSystem told = CarbonateSystem.of(SALT).withCarbon(mmol(1)).withCarbonDioxide(mmol(0.99));
        // 0.01 mmol/L of HCO₃⁻ beside 0.99 of CO₂: 6.352 − 2 and the activity of HCO₃⁻
        assertEquals(6.352 - Math.log10(99) - 0.016, told.solve().pH(), 0.01);
    }

    @Test
    void moreThanTenAtmospheresAreRefused() {
        CarbonateSystem system = CarbonateSystem.of(SALT).withPH(3.5).withAlkalinity(alkalinity(1));
        NoAnswerException refused = assertThrows(NoAnswerException.class, system::solve);
        assertTrue(
                refused.getMessage()
                        .startsWith("partial pressure of CO₂ must be at most 10 atm to be computed, but would be "),
                refused::getMessage);
    }

    @Test
    void impossiblyStrongWatersAreRefusedInWords() {
        CarbonateSystem system =
                CarbonateSystem.of(SALT).withPH(14).withPartialPressure(WaterUnits.pressure(10, WaterUnits.ATMOSPHERE));
        NoAnswerException refused = assertThrows(NoAnswerException.class, system::solve);
        assertTrue(!refused.getMessage().contains("Infinity"), refused::getMessage);
    }

    /** At pH 3.25 so much alkalinity would take more CO₂ than can be computed; the saturation lies far above. */
    @Test
    void aSaturationPHIsFoundAboveWhatCannotBeComputed() {
        Water strong = Water.builder()
                .total(Ion.CALCIUM, mmol(1))
                .total(Ion.SODIUM, mmol(78))
                .alkalinity(alkalinity(80))
                .measuredPH(7.5)
                .build();
        double saturation =
                CalciumCarbonateIndices.of(Speciation.of(strong)).saturationPH().orElseThrow();
        assertEquals(6.6, saturation, 0.1);
    }
}
