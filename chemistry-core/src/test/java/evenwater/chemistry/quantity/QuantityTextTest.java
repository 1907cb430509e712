package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people write, and what it means. */
class QuantityTextTest {

    private static List<Kind<?>> all() {
        return Kind.all();
    }

    @ParameterizedTest
    @CsvSource({
        "22 gpg, 22 gpg",
        "22 gr/gal, 22 gpg",
        "22 gr / gal, 22 gpg",
        "22 grains per gallon, 22 gpg",
        "22 grains per US gallon, 22 gpg",
        "22 gr/gal(US), 22 gpg",
        "22 [gr]/[gal_us], 22 gpg",
        "22 grains per gallon as CaCO3, 22 gpg",
        "22GPG, 22 gpg",
        "180 ppm CaCO3, 180 mg/L CaCO3",
        "180 ppm as CaCO₃, 180 mg/L CaCO3",
        "180 mg/L as CaCO3, 180 mg/L CaCO3",
        "180 mg/l CaCO3, 180 mg/L CaCO3",
        "180 mg CaCO3/L, 180 mg/L CaCO3",
        "100 mg/L CaO, 100 mg/L CaO",
        "100 mg CaO per L, 100 mg/L CaO",
        "12 °dH, 12 °dH",
        "12 dH, 12 °dH",
        "12°dH, 12 °dH",
        "12 ° dH, 12 °dH",
        "12 ºdH, 12 °dH", // ordinal sign for the degree sign
        "12 ˚dH, 12 °dH", // ring above for the degree sign
        "12 dGH, 12 °dH",
        "12 German degrees, 12 °dH",
        "21.4 °fH, 21.4 °fH",
        "21.4 °f, 21.4 °fH", // the capital °F may be Fahrenheit and is refused
        "21.4 °TH, 21.4 °fH",
        "15 °e, 15 °e",
        "15 Clark degrees, 15 °e",
        "15 gr/imp gal, 15 °e",
        "2.1 mmol/L, 2.1 mmol/L",
        "2.1 mmol per l, 2.1 mmol/L",
        "2.1 mol/m3, 2.1 mol/m³",
        "2.1 mol/m^3, 2.1 mol/m³",
        "4.2 mEq/L, 4.2 meq/L",
        "4.2 mval/l, 4.2 meq/L",
        "-3 °dH, -3 °dH",
        "+3 °dH, 3 °dH",
        ".5 °dH, 0.5 °dH",
        "5. °dH, 5 °dH",
        "1e2 °dH, 100 °dH",
        "1e+2 °dH, 100 °dH",
        "1E-3 mmol/L, 0.001 mmol/L"
    })
    void hardness(String text, String statement) {
        assertEquals(statement, Hardness.parse(text).toString());
    }

    @ParameterizedTest
    @CsvSource({
        "12 °dKH, 12 °dKH",
        "12 dKH, 12 °dKH",
        "12 KH, 12 °dKH",
        "12 °dH, 12 °dKH",
        "3.4 meq/L, 3.4 meq/L",
        "3.4 mmol/L, 3.4 mmol/L",
        "3.4 mmol H+/L, 3.4 mmol/L",
        "200 mg/L HCO3-, 200 mg/L HCO3",
        "200 mg/L HCO₃⁻, 200 mg/L HCO3",
        "200 mg/L as HCO3−, 200 mg/L HCO3", // a minus sign
        "200 ppm as HCO3, 200 mg/L HCO3",
        "120 ppm CaCO3, 120 mg/L CaCO3",
        "20 °TAC, 20 °fH"
    })
    void alkalinity(String text, String statement) {
        assertEquals(statement, Alkalinity.parse(text).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"640 µS/cm", "640 μS/cm", "640 uS/cm", "640 µs/cm", "640 µmho/cm", " 640\u00a0µS / cm "})
    void conductivityInEveryMicroSign(String text) {
        assertEquals(Conductivity.of(640, Conductivity.MICROSIEMENS_PER_CENTIMETRE), Conductivity.parse(text));
    }

    @ParameterizedTest
    @CsvSource({
        "5 US gal, 5 gal(US)",
        "5 gal (US), 5 gal(US)",
        "5 US gallons, 5 gal(US)",
        "5 imperial gallons, 5 gal(imp)",
        "5 UK gal, 5 gal(imp)",
        "150 l, 150 L",
        "150 liters, 150 L",
        "10 ml, 10 mL",
        "10 cc, 10 mL",
        "2 m3, 2 m³",
        "2 cubic feet, 2 ft³",
        "1.5 US tsp, 1.5 tsp(US)",
        "2 US cups, 2 cup(US)"
    })
    void volume(String text, String statement) {
        assertEquals(statement, WaterUnits.parseVolume(text).toString());
    }

    @ParameterizedTest
    @CsvSource({
        "25 °C, 25 °C",
        "25 ℃, 25 °C",
        "25 C, 25 °C",
        "25 degrees Celsius, 25 °C",
        "25 °F, 25 °F",
        "77 F, 77 °F",
        "77 ℉, 77 °F",
        "298.15 K, 298.15 K",
        "-40 °F, -40 °F"
    })
    void temperature(String text, String statement) {
        assertEquals(statement, WaterUnits.parseTemperature(text).toString());
    }

    @ParameterizedTest
    @CsvSource({"3 g, 3 g", "3 grams, 3 g", "3 grains, 3 grain", "3 lbs, 3 lb", "3 oz, 3 oz", "3 kg, 3 kg"})
    void mass(String text, String statement) {
        assertEquals(statement, WaterUnits.parseMass(text).toString());
    }

    @ParameterizedTest
    @CsvSource({"96 %, 96 %", "96%, 96 %", "96 percent, 96 %", "0.96, 0.96", "35 mg/kg, 35 mg/kg", "35 g/kg, 35 g/kg"})
    void share(String text, String statement) {
        assertEquals(statement, WaterUnits.parseShare(text).toString());
    }

    @ParameterizedTest
    @CsvSource({
        "6 lb/cu ft, 6 lb/ft³",
        "6 lbs/ft^3, 6 lb/ft³",
        "6 pounds per cubic foot, 6 lb/ft³",
        "100 g/L, 100 g/L",
        "100 kg/m3, 100 g/L"
    })
    void saltDose(String text, String statement) {
        assertEquals(statement, SaltDose.parse(text).toString());
    }

    @Test
    void unitsAloneAreReadLikeUnitsOfAQuantity() {
        assertSame(Hardness.GRAIN_PER_US_GALLON, Hardness.parseUnit(" grains per gallon "));
        assertSame(Hardness.GERMAN_DEGREE, Hardness.parseUnit("DGH"));
        assertSame(AmountConcentration.MOLE_PER_LITRE, AmountConcentration.parseUnit("MOL/L"));
        assertSame(FlowRate.US_GALLON_PER_MINUTE, FlowRate.parseUnit("US gpm"));
        assertSame(ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT, ExchangeCapacity.parseUnit("kilograins per cubic foot"));
    }

    @ParameterizedTest
    @ValueSource(strings = {" ", "\t", "\u00a0", "\u2007", "\u202f", "\u2003", "\u3000", "", "  \n "})
    void anySpaceMayStandAnywhereButInTheNumber(String space) {
        String text = space + "180" + space + "mg/L" + space + "CaCO3" + space;
        assertEquals(Hardness.of(180, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE), Hardness.parse(text));
    }

    @ParameterizedTest
    @MethodSource("all")
    void everySymbolIsASpellingOfItsUnit(Kind<?> kind) {
        assertSymbolsRead(kind);
    }

    private static <Q extends Quantity<Q>> void assertSymbolsRead(Kind<Q> kind) {
        for (Unit<Q> unit : kind.units()) {
            if (kind.parse().isPresent()) {
                Function<String, WaterQuantity<Q>> parse = kind.parse().get();
                assertEquals(kind.of(3, unit), parse.apply("3 " + unit));
                assertEquals(kind.of(3, unit), parse.apply("3" + unit));
            }
            kind.unit().ifPresent(reader -> assertSame(unit, reader.apply(unit.getSymbol())));
        }
    }

    @Test
    void textShowsAllDigitsThatCount() {
        assertEquals("0.1 °dH", Hardness.of(0.1, Hardness.GERMAN_DEGREE).toString());
        assertEquals("22 °dH", Hardness.of(22, Hardness.GERMAN_DEGREE).toString());
        assertEquals(
                "0.30000000000000004 °dH",
                Hardness.of(0.1 + 0.2, Hardness.GERMAN_DEGREE).toString());
        assertEquals("1.0E10 °dH", Hardness.of(1e10, Hardness.GERMAN_DEGREE).toString());
        assertEquals("0.96", WaterUnits.share(0.96, WaterUnits.ONE).toString());
    }

    @Test
    void numbersTooSmallForADoubleAreZero() {
        assertEquals("0 gpg", Hardness.parse("1e-400 gpg").toString());
        assertEquals("0 gpg", Hardness.parse("-1e-99999999999 gpg").toString());
    }

    @Test
    void aSpellingOfTwoUnitsIsAnErrorOfTheTable() {
        UnitNames<Hardness> names = new UnitNames<Hardness>("hardness").unit(Hardness.GERMAN_DEGREE, "degree");
        Refusals.assertRefused(
                IllegalStateException.class,
                "Degree is entered for °dH and for °fH",
                () -> names.unit(Hardness.FRENCH_DEGREE, "Degree"));
        assertSame(
                Hardness.GERMAN_DEGREE,
                names.unit(Hardness.GERMAN_DEGREE, "DEGREE").find("degree", 0));
    }

    @Test
    void capitalsOfAnAmbiguousSpellingCountWhereOthersMakeAUnit() {
        UnitNames<Hardness> names = new UnitNames<Hardness>("hardness")
                .unit(Hardness.FRENCH_DEGREE, "°f")
                .ambiguous("this or that", "°F", "Deg");
        assertSame(Hardness.FRENCH_DEGREE, names.find("°f", 0));
        for (String spelling : List.of("°F", "Deg", "deg", "DEG")) {
            Refusals.assertRefused(
                    UnreadableTextException.class,
                    "cannot read hardness '" + spelling + "': '" + spelling + "' may be this or that, at index 0",
                    () -> names.find(spelling, 0));
        }
    }

    @Test
    void aUnitIsEnteredUnderItsSymbol() {
        UnitNames<Hardness> names = new UnitNames<Hardness>("hardness").unit(Hardness.GERMAN_DEGREE);
        assertSame(Hardness.GERMAN_DEGREE, names.find("°dH", 0));
        assertEquals(List.of(Hardness.GERMAN_DEGREE), names.units());
    }

    @Test
    void raisedAndLoweredDigitsAreDigits() {
        assertEquals("0123456789", UnitNames.normal("₀₁₂₃₄₅₆₇₈₉"));
        assertEquals("m2m3", UnitNames.normal("m²m³"));
        assertEquals("\u207f\u208a", UnitNames.normal("\u207f\u208a")); // raised n and lowered plus stay
    }
}
