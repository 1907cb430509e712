package evenwater.page;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.equilibrium.CarbonateSystem;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.DoubleSummaryStatistics;
import org.junit.jupiter.api.Test;

/** The figures that the notes of the page state in words. */
class CarbonDioxideNotesTest {

    /** Three waters of every day: moderately hard, hard with sulfate, hard with 10 mmol/L of salt. */
    private static final double[][] IONS_IN_MILLIMOLES = {{1.5, 0.5, 0}, {3.5, 1.5, 0}, {2, 1, 10}};

    @Test
    void otherIonsLowerTheCarbonDioxideByTwoToTwelvePercent() {
        DoubleSummaryStatistics lowered = new DoubleSummaryStatistics();
        DoubleSummaryStatistics atHighPH = new DoubleSummaryStatistics();
        for (double celsius : new double[] {5, 25}) {
            for (double degrees : new double[] {1, 4, 14}) {
                for (double[] ions : IONS_IN_MILLIMOLES) {
                    lowered.accept(lowering(celsius, degrees, 6.5, ions));
                    lowered.accept(lowering(celsius, degrees, 7.5, ions));
                    atHighPH.accept(lowering(celsius, degrees, 8.5, ions));
                }
            }
        }
        assertEquals(0.02, lowered.getMin(), 0.005); // half of the last digit that the note gives
        assertEquals(0.12, lowered.getMax(), 0.005);
        assertEquals(0.18, atHighPH.getMax(), 0.005);
    }

    private static double lowering(double celsius, double degrees, double pH, double[] ions) {
        return 1 - carbonDioxide(celsius, degrees, pH, ions) / carbonDioxide(celsius, degrees, pH, new double[3]);
    }

    private static double carbonDioxide(double celsius, double degrees, double pH, double[] ions) {
        WaterBuilder builder = Water.builder()
                .temperature(WaterUnits.temperature(celsius, WaterUnits.CELSIUS))
                .alkalinity(Alkalinity.of(degrees, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .total(Ion.CALCIUM, AmountConcentration.of(0.75 * ions[0], MILLIMOLE_PER_LITRE))
                .total(Ion.MAGNESIUM, AmountConcentration.of(0.25 * ions[0], MILLIMOLE_PER_LITRE))
                .total(Ion.SULFATE, AmountConcentration.of(ions[1], MILLIMOLE_PER_LITRE))
                .total(Ion.SODIUM, AmountConcentration.of(ions[2], MILLIMOLE_PER_LITRE))
                .total(Ion.CHLORIDE, AmountConcentration.of(ions[2], MILLIMOLE_PER_LITRE));
        return CarbonateSystem.of(builder.build())
                .withItsAlkalinity()
                .withPH(pH)
                .solve()
                .carbonDioxide()
                .in(MILLIMOLE_PER_LITRE);
    }
}
