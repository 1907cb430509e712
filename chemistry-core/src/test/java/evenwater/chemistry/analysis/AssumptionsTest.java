package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.alkalinity;
import static evenwater.chemistry.analysis.Reports.assertIllegal;
import static evenwater.chemistry.analysis.Reports.assertNullRefused;
import static evenwater.chemistry.analysis.Reports.millimoles;
import static evenwater.chemistry.analysis.Reports.read;
import static evenwater.chemistry.analysis.Reports.unmeasured;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What nobody measured, and who carries its charge. */
class AssumptionsTest {

    private static final Assumptions CARRIED = Assumptions.usual().carrying(Ion.CHLORIDE, Ion.SODIUM);

    /** GH 8.97232 °dH is 3.2 meq/L, KH 5.6077 °dH is 2.0 meq/L. */
    private static LabReport kit() {
        return read("GH | 8.97232 | °dH", "KH | 5.6077 | °dH");
    }

    @Test
    void theChargeThatAKitDoesNotMeasureStaysVisible() {
        Interpretation read = kit().interpret();
        assertEquals(-1.2, unmeasured(read.water()), 1e-12);
        assertEquals(List.of("calcium", "magnesium", "sodium", "potassium", "chloride", "sulfate"), read.notMeasured());
        assertEquals(
                List.of(
                        "calcium to magnesium 3 : 1 by amount assumed; the bounds try all calcium and all magnesium",
                        "temperature not stated: 25 °C"),
                read.assumptions());
    }

    @Test
    void aStatedCarrierTakesAllOfIt() {
        Interpretation read = kit().interpret(CARRIED);
        assertEquals(0, unmeasured(read.water()), 0);
        assertEquals(1.2, millimoles(Ion.CHLORIDE, read.water()), 1e-12);
        assertEquals(0, millimoles(Ion.SULFATE, read.water()), 0);
        assertEquals(0, millimoles(Ion.SODIUM, read.water()), 0);
        assertEquals(2, alkalinity(read.water()), 1e-12);
        assertTrue(read.assumptions()
                .contains("1.200 meq/L that nobody measured counted as chloride; the bounds also try sulfate"));
        assertFalse(read.isMeasured(Ion.CHLORIDE));
        assertTrue(read.notMeasured().contains("chloride"));
    }

    @Test
    void theChoiceOfTheCarrierOpensARange() {
        Interpretation read = kit().interpret(CARRIED);
        Bounds<AmountConcentration> chloride = read.bounds(water -> water.total(Ion.CHLORIDE));
        assertEquals(0, chloride.low().getValue(), 1e-15);
        assertEquals(1.2, chloride.high().getValue(), 1e-12);
        Bounds<AmountConcentration> sulfate = read.bounds(water -> water.total(Ion.SULFATE));
        assertEquals(0, sulfate.value().getValue(), 0);
        assertEquals(0.6, sulfate.high().getValue(), 1e-12);
        assertEquals(4, read.corners().size());
        read.corners().forEach(corner -> assertEquals(0, unmeasured(corner), 0));
    }

    @ParameterizedTest
    @CsvSource({
        "Cl-, Na+, chloride, sulfate",
        "SO4^2-, Na+, sulfate, chloride",
        "NO3-, Na+, nitrate, sulfate",
        "Br-, K+, bromide, sulfate"
    })
    void missingAnionsHaveAnAlternative(String anion, String cation, String carrier, String alternative) {
        Ion ion = Ion.parse(anion);
        Interpretation read = kit().interpret(Assumptions.usual().carrying(ion, Ion.parse(cation)));
        assertEquals(1.2 / -ion.chargeNumber(), millimoles(ion, read.water()), 1e-12);
        assertTrue(read.assumptions()
                .contains("1.200 meq/L that nobody measured counted as " + carrier + "; the bounds also try "
                        + alternative));
    }

    @ParameterizedTest
    @CsvSource({
        "Na+, sodium, potassium",
        "K+, potassium, sodium",
        "Mg2+, magnesium, potassium",
        "NH4+, ammonium, potassium"
    })
    void missingCationsHaveAnAlternative(String cation, String carrier, String alternative) {
        Ion ion = Ion.parse(cation);
        Interpretation read = read("alkalinity | 3 | meq/L", "calcium | 1 | mmol/L")
                .interpret(Assumptions.usual().carrying(Ion.CHLORIDE, ion));
        assertEquals(0, unmeasured(read.water()), 0);
        assertEquals(1.0 / ion.chargeNumber(), millimoles(ion, read.water()), 1e-12);
        assertTrue(read.assumptions()
                .contains("1.000 meq/L that nobody measured counted as " + carrier + "; the bounds also try "
                        + alternative));
    }

    @Test
    void aCarrierIsAddedToWhatWasMeasured() {
        Interpretation read = read("alkalinity | 1 | meq/L", "calcium | 2 | mmol/L", "chloride | 0.5 | mmol/L")
                .interpret(CARRIED);
        assertEquals(0.5 + 2.5, millimoles(Ion.CHLORIDE, read.water()), 1e-12);
        assertEquals(0.5, read.bounds(water -> water.total(Ion.CHLORIDE)).low().getValue(), 1e-12);
        assertTrue(read.isMeasured(Ion.CHLORIDE));
    }

    @Test
    void aCarrierIsNotNeededWhereNothingIsMissing() {
        Interpretation read =
                read("sodium | 2 | mmol/L", "chloride | 1 | mmol/L").interpret(CARRIED);
        assertEquals(2, read.corners().size()); // with alkalinity, which nobody measured, and without
        assertTrue(read.assumptions().stream().noneMatch(a -> a.contains("counted as chloride")));
        assertEquals(
                read("sodium | 2 | mmol/L", "chloride | 1 | mmol/L").interpret().water(), read.water());
    }

    @Test
    void atEachCornerWhoeverIsMissingIsCarried() {
        Interpretation read = read("alkalinity | 1 | meq/L", "calcium | 0.2 | mmol/L", "sodium | <2 | mmol/L")
                .interpret(CARRIED);
        // by best guess 0.4 meq/L of anions are missing; without sodium 0.6 meq/L of cations are, with all of it 1.4 of
        // anions
        assertEquals(0.4, millimoles(Ion.CHLORIDE, read.water()), 1e-12);
        Bounds<AmountConcentration> sodium = read.bounds(water -> water.total(Ion.SODIUM));
        assertEquals(0, sodium.low().getValue(), 1e-12);
        assertEquals(2, sodium.high().getValue(), 1e-12);
        assertEquals(
                0.6, read.bounds(water -> water.total(Ion.POTASSIUM)).high().getValue(), 1e-12);
        assertEquals(1.4, read.bounds(water -> water.total(Ion.CHLORIDE)).high().getValue(), 1e-12);
        assertEquals(0.7, read.bounds(water -> water.total(Ion.SULFATE)).high().getValue(), 1e-12);
        for (Water corner : read.corners()) {
            assertEquals(0, unmeasured(corner), 0);
            assertEquals(1, alkalinity(corner), 1e-15 * 4);
        }
    }

    @Test
    void carriersAreIonsWithTheRightCharge() {
        assertIllegal(
                "carrier of missing anions must be an anion such as Cl⁻, but was Na⁺",
                () -> Assumptions.usual().carrying(Ion.SODIUM, Ion.SODIUM));
        assertIllegal(
                "carrier of missing anions must be an anion such as Cl⁻, but was SiO₂",
                () -> Assumptions.usual().carrying(Ion.SILICA, Ion.SODIUM));
        assertIllegal(
                "carrier of missing anions must be an anion such as Cl⁻, but was HCO₃⁻",
                () -> Assumptions.usual().carrying(Ion.BICARBONATE, Ion.SODIUM));
        assertIllegal(
                "carrier of missing cations must be a cation such as Na⁺, but was Cl⁻",
                () -> Assumptions.usual().carrying(Ion.CHLORIDE, Ion.CHLORIDE));
        assertIllegal(
                "carrier of missing cations must be a cation such as Na⁺, but was SiO₂",
                () -> Assumptions.usual().carrying(Ion.CHLORIDE, Ion.SILICA));
        assertIllegal(
                "carrier of missing cations must be a cation such as Na⁺, but was H⁺",
                () -> Assumptions.usual().carrying(Ion.CHLORIDE, Ion.HYDROGEN));
    }

    @Test
    void carriersAndRatioAreStatedInAnyOrder() {
        CalciumToMagnesium even = CalciumToMagnesium.byAmount(1);
        Water one = kit().interpret(Assumptions.usual().with(even).carrying(Ion.CHLORIDE, Ion.SODIUM))
                .water();
        Water other = kit().interpret(CARRIED.with(even)).water();
        assertEquals(one, other);
        assertEquals(millimoles(Ion.CALCIUM, one), millimoles(Ion.MAGNESIUM, one), 0);
        assertEquals(1.2, millimoles(Ion.CHLORIDE, other), 1e-12);
    }

    @Test
    void nullIsRefusedByName() {
        assertNullRefused("ratio", () -> Assumptions.usual().with(null));
        assertNullRefused("missingAnion", () -> Assumptions.usual().carrying(null, Ion.SODIUM));
        assertNullRefused("missingCation", () -> Assumptions.usual().carrying(Ion.CHLORIDE, null));
    }
}
