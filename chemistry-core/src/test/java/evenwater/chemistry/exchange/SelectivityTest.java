package evenwater.chemistry.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Dimensionless;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SelectivityTest {

    private static WaterQuantity<Dimensionless> percent(double value) {
        return WaterUnits.share(value, WaterUnits.PERCENT);
    }

    /** Ratios to H⁺ at 8 % on a resin maker's technical sheet, two decimals. */
    @ParameterizedTest
    @CsvSource({"Na+, 1.56", "NH4+, 2.01", "K+, 2.28", "Ca^2+, 4.06"})
    void theScaleAgreesWithATechnicalSheet(String ion, double perHydrogen) {
        Selectivity scale = Selectivity.bonnerAndSmith(percent(8));
        double ratio = scale.constant(Ion.parse(ion)) / scale.constant(Ion.HYDROGEN);
        assertEquals(perHydrogen, ratio, 0.005);
    }

    @Test
    void theTwoConventionsDifferForADoubleChargeOnly() {
        Selectivity plain = Selectivity.bonnerAndSmith(percent(8));
        Selectivity massAction = plain.with(SelectivityConvention.MASS_ACTION);
        assertEquals(5.16 / 1.98, plain.constant(Ion.CALCIUM), 1e-15);
        assertEquals(5.16 / (1.98 * 1.98), massAction.constant(Ion.CALCIUM), 1e-15);
        assertEquals(plain.constant(Ion.POTASSIUM), massAction.constant(Ion.POTASSIUM));
        assertEquals(1, plain.constant(Ion.SODIUM));
        assertEquals(SelectivityConvention.PLAIN_RATIO, plain.convention());
    }

    @Test
    void everyIonOfTheTradeIsThere() {
        List<Ion> needed = List.of(
                Ion.HYDROGEN,
                Ion.LITHIUM,
                Ion.SODIUM,
                Ion.AMMONIUM,
                Ion.POTASSIUM,
                Ion.MAGNESIUM,
                Ion.CALCIUM,
                Ion.STRONTIUM,
                Ion.BARIUM,
                Ion.IRON_II,
                Ion.MANGANESE_II);
        assertTrue(Selectivity.bonnerAndSmith(percent(10)).ions().containsAll(needed));
        assertTrue(Selectivity.handbook(percent(10)).ions().containsAll(needed));
    }

    @Test
    void ironStandsToMagnesiumAsInTheHandbook() {
        Selectivity scale = Selectivity.bonnerAndSmith(percent(8));
        Selectivity handbook = Selectivity.handbook(percent(8));
        assertEquals(
                handbook.constant(Ion.IRON_II) / handbook.constant(Ion.MAGNESIUM),
                scale.constant(Ion.IRON_II) / scale.constant(Ion.MAGNESIUM),
                1e-15);
        assertEquals(3.29 / 1.98 * 2.35 / 2.5, scale.constant(Ion.MANGANESE_II), 1e-14);
    }

    @Test
    void betweenTheColumnsItIsLinear() {
        assertEquals(
                (5.16 + 7.27) / (1.98 + 2.37),
                Selectivity.bonnerAndSmith(percent(12)).constant(Ion.CALCIUM),
                1e-14);
        assertEquals(4.6 / 1.7, Selectivity.handbook(percent(12)).constant(Ion.CALCIUM), 1e-15);
        assertEquals(7.27 / 2.37, Selectivity.bonnerAndSmith(percent(16)).constant(Ion.CALCIUM), 1e-15);
    }

    @Test
    void aTableOfOnesOwnCounts() {
        Selectivity own = Selectivity.of(
                "own trials", Map.of(Ion.SODIUM, 2.0, Ion.CALCIUM, 6.0), SelectivityConvention.MASS_ACTION);
        assertEquals(1.5, own.constant(Ion.CALCIUM));
        assertEquals("own trials", own.source());
        assertEquals("own trials, MASS_ACTION: {Ca²⁺=6.0, Na⁺=2.0}", own.toString());
        assertEquals(own, own.with(SelectivityConvention.PLAIN_RATIO).with(SelectivityConvention.MASS_ACTION));
        assertNotEquals(own, own.with(SelectivityConvention.PLAIN_RATIO));
        Refused.argument(
                "no selectivity of K⁺ is known to own trials, only of [Ca²⁺, Na⁺]", () -> own.constant(Ion.POTASSIUM));
    }

    @Test
    void nonsenseIsRefused() {
        Refused.argument(
                "cross-linking must be from 4 % to 16 % of divinylbenzene, but was 3.9 %",
                () -> Selectivity.bonnerAndSmith(percent(3.9)));
        Refused.argument(
                "cross-linking must be from 4 % to 16 % of divinylbenzene, but was 0.17",
                () -> Selectivity.handbook(WaterUnits.share(0.17, WaterUnits.ONE)));
        Refused.argument(
                "a selectivity belongs to a cation of charge 1 or 2, but was given for Cl⁻",
                () -> Selectivity.of("x", Map.of(Ion.CHLORIDE, 1.0), SelectivityConvention.PLAIN_RATIO));
        Refused.argument(
                "a selectivity belongs to a cation of charge 1 or 2, but was given for Al³⁺",
                () -> Selectivity.of("x", Map.of(Ion.ALUMINIUM, 1.0), SelectivityConvention.PLAIN_RATIO));
        Refused.argument(
                "selectivity of Na⁺ must be positive, but was NaN",
                () -> Selectivity.of("x", Map.of(Ion.SODIUM, Double.NaN), SelectivityConvention.PLAIN_RATIO));
        Refused.argument(
                "selectivities must include Na⁺, against which the others are counted, but were of [Ca²⁺]",
                () -> Selectivity.of("x", Map.of(Ion.CALCIUM, 5.0), SelectivityConvention.PLAIN_RATIO));
    }
}
