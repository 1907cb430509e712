package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The un-ionised part of ammonia in all the ways that ammonia is stated, and the limits for it. */
class UnionisedAmmoniaTest {

    private static final Unit<AmountConcentration> AS_N = Ion.AMMONIA.milligramPerLitreAs(Element.NITROGEN);

    @Test
    void oneMilligramOfAmmoniaNitrogenAtPH8() {
        AmountConcentration total = AmountConcentration.of(1, Ion.AMMONIUM.milligramPerLitreAs(Element.NITROGEN));
        AmountConcentration unionised = UnionisedAmmonia.concentration(total, 8, celsius(25));
        // 1/(1 + 10^1.246377) of 1 mg/L N, and as NH₃ 17.031/14.007 times as much
        assertEquals(Ion.AMMONIA.milligramPerLitre(), unionised.getUnit());
        assertEquals(0.053662, unionised.in(AS_N), 5e-7);
        assertEquals(0.0652476, unionised.in(Ion.AMMONIA.milligramPerLitre()), 5e-7);
        assertEquals(
                total.in(AS_N),
                UnionisedAmmonia.totalAmmonia(unionised, 8, celsius(25)).in(AS_N),
                1e-14);
    }

    @Test
    void ammoniaMayBeStatedAsAnyOfItsForms() {
        AmountConcentration asNitrogen = AmountConcentration.of(1, Ion.AMMONIUM.milligramPerLitreAs(Element.NITROGEN));
        double expected =
                UnionisedAmmonia.concentration(asNitrogen, 7.5, celsius(20)).getValue();
        for (Unit<AmountConcentration> unit : List.of(
                Ion.AMMONIUM.milligramPerLitre(),
                Ion.AMMONIA.milligramPerLitre(),
                AmountConcentration.MICROMOLE_PER_LITRE)) {
            AmountConcentration restated = asNitrogen.to(unit);
            assertEquals(
                    expected,
                    UnionisedAmmonia.concentration(restated, 7.5, celsius(20)).getValue(),
                    1e-15,
                    unit::toString);
        }
    }

    @Test
    void temperatureMayBeStatedInAnyUnit() {
        assertEquals(
                UnionisedAmmonia.fraction(8, celsius(25)),
                UnionisedAmmonia.fraction(8, WaterUnits.temperature(77, WaterUnits.FAHRENHEIT)),
                1e-15);
        // the ends of the range, whatever conversion leaves of them
        assertEquals(
                UnionisedAmmonia.fraction(8, celsius(50)),
                UnionisedAmmonia.fraction(8, WaterUnits.temperature(122, WaterUnits.FAHRENHEIT)),
                1e-15);
        assertEquals(
                UnionisedAmmonia.fraction(8, celsius(0)),
                UnionisedAmmonia.fraction(8, WaterUnits.temperature(32, WaterUnits.FAHRENHEIT)),
                1e-15);
    }

    /** The promise of the Javadoc: salts lower the share by 5 to 11 % of itself. */
    @ParameterizedTest(name = "alkalinity {0} meq/L")
    @ValueSource(doubles = {2, 4, 8})
    void theSaltsOfATapWaterLowerTheShare(double milliequivalents) {
        Water tap = Water.builder()
                .total(Ion.CALCIUM, mmol(milliequivalents / 2))
                .total(Ion.AMMONIUM, mmol(0.05))
                .total(Ion.CHLORIDE, mmol(0.05))
                .alkalinity(alkalinity(milliequivalents))
                .measuredPH(7.6)
                .build();
        double share = Speciation.of(tap).unionisedAmmonia().orElseThrow();
        double loss = 1 - share / UnionisedAmmonia.fraction(7.6, tap.temperature());
        assertTrue(loss > 0.05 && loss < 0.11, () -> "loss " + loss);
    }

    @Test
    void outOfRangeIsRefused() {
        AmountConcentration total = AmountConcentration.of(1, AS_N);
        Refused.argument("pH must be from 0 to 14, but was 14.1", () -> UnionisedAmmonia.fraction(14.1, celsius(25)));
        Refused.argument("pH must be from 0 to 14, but was -0.1", () -> UnionisedAmmonia.fraction(-0.1, celsius(25)));
        Refused.argument(
                "pH must be from 0 to 14, but was NaN", () -> UnionisedAmmonia.fraction(Double.NaN, celsius(25)));
        Refused.argument(
                "temperature must be from 0 °C to 50 °C, but was 50.1 °C",
                () -> UnionisedAmmonia.concentration(total, 7, celsius(50.1)));
        Refused.argument(
                "temperature must be from 0 °C to 50 °C, but was 31 °F",
                () -> UnionisedAmmonia.totalAmmonia(total, 7, WaterUnits.temperature(31, WaterUnits.FAHRENHEIT)));
        Refused.argument(
                "total ammonia must not be negative, but was -1 mg/L N",
                () -> UnionisedAmmonia.concentration(total.negate(), 7, celsius(25)));
        Refused.argument(
                "un-ionised ammonia must not be negative, but was -1 mg/L N",
                () -> UnionisedAmmonia.totalAmmonia(total.negate(), 7, celsius(25)));
        Refused.argument(
                "1 mg/L Cl⁻ is no concentration of ammonium: NH₄⁺ cannot be expressed as Cl⁻: they share no element other than hydrogen and oxygen",
                () -> UnionisedAmmonia.concentration(
                        AmountConcentration.of(1, Ion.CHLORIDE.milligramPerLitre()), 7, celsius(25)));
    }

    @Test
    void nullIsRefusedByName() {
        AmountConcentration total = AmountConcentration.of(1, AS_N);
        Refused.asNull("temperature", () -> UnionisedAmmonia.fraction(7, null));
        Refused.asNull("totalAmmonia", () -> UnionisedAmmonia.concentration(null, 7, celsius(25)));
        Refused.asNull("temperature", () -> UnionisedAmmonia.concentration(total, 7, null));
        Refused.asNull("unionisedAmmonia", () -> UnionisedAmmonia.totalAmmonia(null, 7, celsius(25)));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            EIFAC_1970        | 0.025 | 1970 | advice
            EU_1978_MANDATORY | 0.025 | 1978 | mandatory, repealed in 2013
            EU_1978_GUIDE     | 0.005 | 1978 | guide value, repealed in 2013
            CCME_2010         | 0.019 | 2010 | guideline
            """)
    void limitsForFish(UnionisedAmmoniaLimit limit, double milligrams, int year, String status) {
        assertEquals(AmountConcentration.of(milligrams, Ion.AMMONIA.milligramPerLitre()), limit.concentration());
        assertEquals(year, limit.year());
        assertEquals(status, limit.status());
        assertTrue(limit.source().endsWith(" (from memory)"), limit::source);
    }

    @Test
    void aLimitIsAskedOfATestForAllAmmonia() {
        // 0.025 mg/L NH₃ / 0.053662 at pH 8 and 25 °C
        AmountConcentration total = UnionisedAmmoniaLimit.EIFAC_1970.totalAmmonia(8, celsius(25));
        assertEquals(0.46588, total.in(Ion.AMMONIA.milligramPerLitre()), 5e-6);
        assertEquals(0.38316, total.in(AS_N), 5e-6);
        Refused.argument(
                "pH must be from 0 to 14, but was 15.0",
                () -> UnionisedAmmoniaLimit.EIFAC_1970.totalAmmonia(15, celsius(25)));
    }
}
