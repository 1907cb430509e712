package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.mmol;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.testing.Waters;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be stated of a water, in full words. */
class WaterErrorsTest {

    @Test
    void alkalinityAndUnmeasuredChargeAreNotStatedTogether() {
        WaterBuilder builder = Water.builder().alkalinity(alkalinity(2)).unmeasuredCharge(charge(0));
        Refused.argument(
                "alkalinity and unmeasured charge must not both be stated: one follows from the other and the ions",
                builder::build);
    }

    @Test
    void carbonAndPHAreNotStatedTogether() {
        WaterBuilder builder = Water.builder().carbon(mmol(2)).measuredPH(7);
        Refused.argument(
                "inorganic carbon and a measured pH must not both be stated: one follows from the other",
                builder::build);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "CO2     | CO₂ has no total of its own: it is counted in inorganic carbon and alkalinity",
                "HCO3-   | HCO₃⁻ has no total of its own: it is counted in inorganic carbon and alkalinity",
                "CO3^2-  | CO₃²⁻ has no total of its own: it is counted in inorganic carbon and alkalinity",
                "H2O     | H₂O has no total of its own: it is counted in alkalinity",
                "H+      | H⁺ has no total of its own: it is counted in alkalinity",
                "OH-     | OH⁻ has no total of its own: it is counted in alkalinity",
                "NH3     | NH₃ has no total of its own: it is counted in NH₄⁺ and alkalinity",
                "HPO4^2- | HPO₄²⁻ has no total of its own: it is counted in H₂PO₄⁻ and alkalinity",
                "PO4^3-  | PO₄³⁻ has no total of its own: it is counted in H₂PO₄⁻ and alkalinity",
                "B(OH)4- | B(OH)₄⁻ has no total of its own: it is counted in B(OH)₃ and alkalinity",
                "H3SiO4- | H₃SiO₄⁻ has no total of its own: it is counted in SiO₂ and alkalinity",
                "HS-     | HS⁻ has no total of its own: it is counted in H₂S and alkalinity"
            })
    void ionsThatAreCountedElsewhereHaveNoTotal(String symbol, String message) {
        Ion ion = Ion.parse(symbol);
        Refused.argument(message, () -> Water.builder().total(ion, mmol(1)));
        Refused.argument(message, () -> Water.pure().total(ion));
        Refused.argument(message, () -> Change.of(Map.of()).total(ion));
    }

    @Test
    void ownIonsThatAreCountedElsewhereHaveNoTotal() {
        Refused.argument(
                "AsO₄³⁻ has no total of its own: it is counted in H₂AsO₄⁻ and alkalinity",
                () -> Water.builder().total(Waters.ARSENATE, mmol(1)));
    }

    @Test
    void amountsAreNotNegative() {
        Refused.argument(
                "concentration of Ca²⁺ must not be negative, but was -1.5 mmol/L",
                () -> Water.builder().total(Ion.CALCIUM, mmol(-1.5)));
        Refused.argument(
                "concentration of Na⁺ must not be negative, but was -3 mg/L Na⁺",
                () -> Water.builder().total(Ion.SODIUM, AmountConcentration.of(-3, Ion.SODIUM.milligramPerLitre())));
        Refused.argument(
                "concentration of inorganic carbon must not be negative, but was -0.1 mmol/L",
                () -> Water.builder().carbon(mmol(-0.1)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 14.01, Double.NaN, Double.POSITIVE_INFINITY})
    void pHIsWithinTheScaleOfAMeter(double pH) {
        Refused.argument(
                "pH must be from 0 to 14, but was " + pH, () -> Water.builder().measuredPH(pH));
    }

    @Test
    void waterIsLiquid() {
        Refused.argument(
                "temperature must be from 0 °C to 100 °C, but was 120 °C",
                () -> Water.builder().temperature(celsius(120)));
        Refused.argument(
                "temperature must be from 0 °C to 100 °C, but was -0.001 °C",
                () -> Water.pure().with(celsius(-0.001)));
        Refused.argument(
                "temperature must be from 0 °C to 100 °C, but was 31 °F",
                () -> Water.pure().with(WaterUnits.temperature(31, WaterUnits.FAHRENHEIT)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 1.001, Double.NaN})
    void aShareIsAPartOfTheWhole(double share) {
        Refused.argument(
                "share of the other water must be from 0 to 1, but was " + share,
                () -> Water.pure().mixedWith(Water.pure(), share));
    }

    @Test
    void aBlendNeedsTheOtherWater() {
        Refused.asNull("other", () -> Water.pure().mixedWith(null, 0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.999, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void dilutionMakesMoreOfTheWater(double factor) {
        Refused.argument(
                "dilution factor must be 1 or more, but was " + factor,
                () -> Water.pure().dilutedBy(factor));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.999, -1, 1.1e9, Double.NaN})
    void concentrationMakesLessOfTheWater(double factor) {
        Refused.argument(
                "concentration factor must be from 1 to 1e9, but was " + factor,
                () -> Water.pure().concentratedBy(factor));
    }

    @Test
    void amountsBeyondAllWatersAreRefusedBeforeTheyOverflow() {
        Refused.argument(
                "Ca²⁺ must be from -1e100 to 1e100 in mmol/L or meq/L, but was 1.0E308 mmol/L",
                () -> Water.builder().total(Ion.CALCIUM, mmol(1e308)).build());
        Refused.argument(
                "charges of a change must cancel, but {Ca²⁺=1.0E308 mmol/L, Cl⁻=1 mmol/L} leave Infinity meq/L",
                () -> Change.of(Map.of(Ion.CALCIUM, mmol(1e308), Ion.CHLORIDE, mmol(1))));
        Change salt = Change.of(Map.of(Ion.SODIUM, mmol(1), Ion.CHLORIDE, mmol(1)));
        Refused.argument(
                "Na⁺ must be from -1e100 to 1e100 in mmol/L or meq/L, but was 1.0E308 mmol/L", () -> salt.times(1e308));
    }
}
