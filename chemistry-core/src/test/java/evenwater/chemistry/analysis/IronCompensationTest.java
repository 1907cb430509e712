package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.assertIllegal;
import static evenwater.chemistry.analysis.Reports.assertNullRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IronCompensationTest {

    private static final Hardness TWENTY = Hardness.of(20, Hardness.GRAIN_PER_US_GALLON);

    private static AmountConcentration iron(double milligrams) {
        return AmountConcentration.of(milligrams, Ion.IRON_II.milligramPerLitre());
    }

    private static AmountConcentration manganese(double milligrams) {
        return AmountConcentration.of(milligrams, Ion.MANGANESE_II.milligramPerLitre());
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 20", "1, 0, 23", "0, 1, 22", "2, 0.5, 27"})
    void theUsualSurchargeIsThreeForIronAndTwoForManganese(double iron, double manganese, double grains) {
        CompensatedHardness compensated = IronCompensation.USUAL.of(TWENTY, iron(iron), manganese(manganese));
        assertEquals(grains, compensated.getValue(), 1e-12 * grains);
        assertEquals(CompensatedHardness.GRAIN_PER_US_GALLON, compensated.getUnit());
    }

    @Test
    void theSurchargeIsStated() {
        assertEquals(
                20, new IronCompensation(0, 0).of(TWENTY, iron(1), manganese(7)).getValue(), 1e-12 * 20);
        IronCompensation own = new IronCompensation(5, 0);
        assertEquals(25, own.of(TWENTY, iron(1), manganese(7)).getValue(), 1e-12 * 25);
        Hardness german = Hardness.of(1, Hardness.GERMAN_DEGREE); // 17.8479591/17.1180610 gpg by the table of scales
        assertEquals(1.04263906, own.of(german, iron(0), manganese(0)).getValue(), 5e-9);
    }

    @ParameterizedTest
    @CsvSource({"-1, 2", "3, -1", "NaN, 2", "3, NaN", "Infinity, 2", "3, Infinity"})
    void surchargesAreFiniteAndNotNegative(double iron, double manganese) {
        assertIllegal(
                "surcharges must be finite and not negative, but were " + iron + " and " + manganese + " gpg per mg/L",
                () -> new IronCompensation(iron, manganese));
    }

    @Test
    void negativeAmountsAreRefused() {
        assertIllegal(
                "hardness must not be negative, but was -1 °dH",
                () -> IronCompensation.USUAL.of(Hardness.of(-1, Hardness.GERMAN_DEGREE), iron(0), manganese(0)));
        assertIllegal(
                "iron must not be negative, but was -1 mg/L Fe²⁺",
                () -> IronCompensation.USUAL.of(TWENTY, iron(-1), manganese(0)));
        assertIllegal(
                "manganese must not be negative, but was -1 mg/L Mn²⁺",
                () -> IronCompensation.USUAL.of(TWENTY, iron(0), manganese(-1)));
        assertNullRefused("quantity", () -> IronCompensation.USUAL.of(null, iron(0), manganese(0)));
    }
}
