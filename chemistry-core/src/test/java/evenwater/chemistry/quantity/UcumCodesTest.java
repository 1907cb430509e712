package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Unit;
import org.fhir.ucum.Decimal;
import org.fhir.ucum.UcumEssenceService;
import org.fhir.ucum.UcumException;
import org.fhir.ucum.UcumService;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/** Our UCUM codes as another library reads them. */
class UcumCodesTest {

    /** The library keeps few digits of some constants, so that it tells a wrong unit from a right one and no more. */
    private static final double WEAK = 0.003;

    /** UCUM codes of the coherent units; eq is a mole there. */
    private static final Map<Unit<?>, String> COHERENT = Map.ofEntries(
            Map.entry(Units.MOLE.divide(Units.CUBIC_METRE), "mol/m3"),
            Map.entry(Units.KILOGRAM.divide(Units.MOLE), "kg/mol"),
            Map.entry(Units.KILOGRAM.divide(Units.CUBIC_METRE), "kg/m3"),
            Map.entry(Units.SIEMENS.divide(Units.METRE), "S/m"),
            Map.entry(Units.CUBIC_METRE.divide(Units.SECOND), "m3/s"),
            Map.entry(Units.CUBIC_METRE, "m3"),
            Map.entry(Units.KILOGRAM, "kg"),
            Map.entry(Units.PASCAL, "Pa"),
            Map.entry(Units.SECOND, "s"),
            Map.entry(Units.METRE, "m"),
            Map.entry(AbstractUnit.ONE, "1"));

    private static UcumService ucum;

    @BeforeAll
    static void readDefinitions() throws IOException, UcumException {
        try (InputStream definitions = UcumService.class.getResourceAsStream("/ucum-essence.xml")) {
            ucum = new UcumEssenceService(definitions);
        }
    }

    private static List<Arguments> coded() {
        List<Arguments> coded = new ArrayList<>();
        for (Kind<?> kind : Kind.proportional()) {
            for (Unit<?> unit : kind.units()) {
                WaterUnits.ucumCode(unit).ifPresent(code -> coded.add(Arguments.of(kind, unit, code)));
            }
        }
        return coded;
    }

    @ParameterizedTest(name = "{0} in {1}: {2}")
    @MethodSource("coded")
    void theCodeIsValidAndMeansTheUnit(Kind<?> kind, Unit<?> unit, String code) throws UcumException {
        assertNull(ucum.validate(code));
        Decimal theirs = ucum.convert(new Decimal("1"), code, COHERENT.get(kind.coherentUnit()));
        double ours = PinnedScales.sizes().get(unit).doubleValue();
        assertEquals(ours, Double.parseDouble(theirs.asDecimal()), ours * WEAK);
    }

    @Test
    void temperaturesHaveTheCodesOfTheirScales() {
        assertEquals(Optional.of("K"), WaterUnits.ucumCode(WaterUnits.KELVIN));
        assertEquals(Optional.of("Cel"), WaterUnits.ucumCode(WaterUnits.CELSIUS));
        assertEquals(Optional.of("[degF]"), WaterUnits.ucumCode(WaterUnits.FAHRENHEIT));
        for (Unit<?> unit : Kind.TEMPERATURE.units()) {
            assertNull(ucum.validate(WaterUnits.ucumCode(unit).orElseThrow()));
        }
    }

    @Test
    void scalesThatWeighABasisHaveNoCode() {
        Set<String> withoutCode = Kind.all().stream()
                .flatMap(kind -> kind.units().stream()
                        .filter(unit -> WaterUnits.ucumCode(unit).isEmpty())
                        .map(unit -> kind + " in " + unit))
                .collect(Collectors.toSet());
        assertEquals(
                Set.of(
                        "hardness in meq/L", // to UCUM 1 meq/L is 1 mmol/L
                        "hardness in mg/L CaCO3",
                        "hardness in mg/L CaO",
                        "hardness in °dH",
                        "hardness in °fH",
                        "hardness in °e",
                        "hardness in gpg",
                        "alkalinity in mg/L CaCO3",
                        "alkalinity in mg/L HCO3",
                        "alkalinity in °dKH",
                        "alkalinity in °fH",
                        "alkalinity in °e",
                        "alkalinity in gpg",
                        "compensated hardness in gpg",
                        "compensated hardness in mg/L CaCO3",
                        "compensated hardness in °dH",
                        "exchange capacity in kgr/ft³",
                        "exchange capacity in g/L CaCO3"),
                withoutCode);
    }

    @Test
    void noCodeIsGivenForUnitsThatAreNotOurs() {
        assertEquals(Optional.empty(), WaterUnits.ucumCode(Units.KILOGRAM));
        assertEquals(Optional.empty(), WaterUnits.ucumCode(WaterUnits.GRAM.multiply(2)));
        MolarMass nitrogen = MolarMass.of(14.007, MolarMass.GRAM_PER_MOLE);
        Unit<AmountConcentration> asNitrogen =
                AmountConcentration.ofMass(MassConcentration.MILLIGRAM_PER_LITRE, "N", nitrogen);
        assertEquals(Optional.empty(), WaterUnits.ucumCode(asNitrogen));
        assertTrue(WaterUnits.ucumCode(MassConcentration.MILLIGRAM_PER_LITRE).isPresent());
    }
}
