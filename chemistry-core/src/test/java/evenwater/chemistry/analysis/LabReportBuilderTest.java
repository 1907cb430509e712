package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.alkalinity;
import static evenwater.chemistry.analysis.Reports.assertIllegal;
import static evenwater.chemistry.analysis.Reports.assertNullRefused;
import static evenwater.chemistry.analysis.Reports.hardness;
import static evenwater.chemistry.analysis.Reports.millimoles;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabReportBuilderTest {

    private static AmountConcentration millimolesPerLitre(double value) {
        return AmountConcentration.of(value, AmountConcentration.MILLIMOLE_PER_LITRE);
    }

    private static Hardness degrees(double value) {
        return Hardness.of(value, Hardness.GERMAN_DEGREE);
    }

    private static LabReportBuilder builder() {
        return LabReport.builder();
    }

    @Test
    void quantitiesMakeTheSameWaterAsRows() {
        LabReport built = builder()
                .hardness(Hardness.of(22, Hardness.GRAIN_PER_US_GALLON))
                .calciumHardness(Hardness.of(15, Hardness.GRAIN_PER_US_GALLON))
                .alkalinity(Alkalinity.of(9.5, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .total(Ion.NITRATE, AmountConcentration.of(4.1, Ion.NITRATE.milligramPerLitreAs(Formula.parse("N"))))
                .totalBelow(Ion.SODIUM, AmountConcentration.of(2, Ion.SODIUM.milligramPerLitre()))
                .pH(7.6)
                .temperature(WaterUnits.temperature(12, WaterUnits.CELSIUS))
                .build();
        LabReport read = Reports.read(
                "hardness | 22 | gpg",
                "calcium hardness | 15 | gpg",
                "alkalinity | 9.5 | °dH",
                "nitrate | 4.1 | mg/L | N",
                "sodium | <2 | mg/L",
                "pH | 7.6",
                "temperature | 12 | °C");
        assertEquals(read.interpret().water(), built.interpret().water());
        assertEquals(read.interpret().corners(), built.interpret().corners());
        assertEquals(
                List.of(
                        "magnesium taken as hardness less calcium",
                        "given as an interval: sodium <2 mg/L Na⁺; its middle as best guess, both its ends in the bounds",
                        "pH 7.6 taken as read at 12 °C; with the alkalinity it means 9.06 mg/L CO₂"),
                built.interpret().assumptions());
    }

    @Test
    void whatIsOnlyComparedIsKeptBesideTheWater() {
        LabReport report = builder()
                .conductivity(Conductivity.of(0.64, Conductivity.MILLISIEMENS_PER_CENTIMETRE))
                .dissolvedSolids(MassConcentration.of(0.4, MassConcentration.GRAM_PER_LITRE))
                .compensatedHardness(CompensatedHardness.of(25, CompensatedHardness.GRAIN_PER_US_GALLON))
                .pH(7)
                .build();
        assertEquals(640, report.conductivity().orElseThrow().getValue(), 1e-12 * 640);
        assertEquals(
                Conductivity.MICROSIEMENS_PER_CENTIMETRE,
                report.conductivity().orElseThrow().getUnit());
        assertEquals(400, report.dissolvedSolids().orElseThrow().getValue(), 1e-12 * 400);
        assertEquals(
                Optional.of(CompensatedHardness.of(25, CompensatedHardness.GRAIN_PER_US_GALLON)),
                report.compensatedHardness());
        assertEquals(OptionalDouble.of(7), report.pH());
        assertEquals(List.of(), report.notes());
        assertEquals(List.of(), report.unusedRows());
        assertEquals(0, hardness(report.interpret().water()), 0);
    }

    @Test
    void magnesiumHardnessIsMagnesium() {
        Water water = builder()
                .magnesiumHardness(Hardness.of(1, Hardness.MILLIMOLE_PER_LITRE))
                .build()
                .interpret()
                .water();
        assertEquals(1, millimoles(Ion.MAGNESIUM, water), 0);
    }

    @Test
    void strictCarbonateHardnessAndAlkalinityAreTwoEntries() {
        Interpretation strict = builder()
                .hardness(degrees(20))
                .strictCarbonateHardness(degrees(10))
                .build()
                .interpret();
        assertEquals(3.56652460, alkalinity(strict.water()), 1e-8);
        assertEquals(
                "alkalinity taken from the carbonate hardness, which is below the hardness",
                strict.assumptions().get(1));
        UnusableReportException e = assertThrows(
                UnusableReportException.class,
                () -> builder()
                        .hardness(degrees(5))
                        .strictCarbonateHardness(degrees(10))
                        .build()
                        .interpret());
        assertEquals(
                "carbonate hardness 10 °dH is more than the hardness 5 °dH: as a part of it it cannot be; "
                        + "if it is the KH of a kit, call it KH",
                e.getMessage());
        assertEquals(0, e.line());
    }

    @Test
    void carbonatesAreAlkalinity() {
        LabReport report = builder()
                .total(Ion.BICARBONATE, millimolesPerLitre(3))
                .total(Ion.CARBONATE, millimolesPerLitre(0.5))
                .totalBelow(Ion.HYDROXIDE, millimolesPerLitre(0.2))
                .build();
        assertEquals(3 + 1 + 0.1, alkalinity(report.interpret().water()), 1e-12);
        assertEquals(2, report.interpret().corners().size());
    }

    @Test
    void anIonOfOnesOwnIsAnIonLikeAnyOther() {
        Ion perchlorate = Ion.of("perchlorate", Formula.parse("ClO4-"));
        Interpretation read =
                builder().total(perchlorate, millimolesPerLitre(1)).build().interpret();
        assertEquals(1, millimoles(perchlorate, read.water()), 0);
    }

    @Test
    void statingSomethingTwiceReplacesIt() {
        Water water = builder()
                .total(Ion.SODIUM, millimolesPerLitre(1))
                .totalBelow(Ion.SODIUM, millimolesPerLitre(9))
                .total(Ion.SODIUM, millimolesPerLitre(2))
                .alkalinity(Alkalinity.of(1, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .alkalinity(Alkalinity.of(-2, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .build()
                .interpret()
                .water();
        assertEquals(2, millimoles(Ion.SODIUM, water), 0);
        assertEquals(-2, alkalinity(water), 0);
    }

    @Test
    void readingsAreToldAsTheyWereStated() {
        LabReport report = builder()
                .hardness(Hardness.of(22, Hardness.GRAIN_PER_US_GALLON))
                .totalBelow(Ion.SODIUM, AmountConcentration.of(2, Ion.SODIUM.milligramPerLitre()))
                .pH(7.6)
                .build();
        assertEquals(List.of("hardness 22 gpg", "sodium <2 mg/L Na⁺", "pH 7.6"), report.readings());
        assertEquals(
                List.of("nitrate 4.1 mg/L as N", "iron(II) <1 mg/L", "calcium hardness 5 gr/gal as CaCO3"),
                Reports.read(
                                "NO3-N | 4.1 | mg/L",
                                "Eisen | <1 | mg/L",
                                "As | 1 | mg/L",
                                "Ca hardness | 5 | gr/gal | CaCO3")
                        .readings());
    }

    @Test
    void aReportIsACopyOfItsBuilder() {
        LabReportBuilder builder = builder().pH(7);
        LabReport report = builder.build();
        builder.pH(8);
        assertEquals(OptionalDouble.of(7), report.pH());
    }

    @Test
    void zeroIsAllowed() {
        Water water = builder()
                .hardness(degrees(0))
                .total(Ion.SODIUM, millimolesPerLitre(0))
                .conductivity(Conductivity.of(0, Conductivity.MICROSIEMENS_PER_CENTIMETRE))
                .build()
                .interpret()
                .water();
        assertEquals(List.of(), water.ions());
    }

    @Test
    void negativeReadingsAreRefusedByName() {
        assertIllegal(
                "hardness must not be negative, but was -1 °dH", () -> builder().hardness(degrees(-1)));
        assertIllegal(
                "calcium hardness must not be negative, but was -1 °dH",
                () -> builder().calciumHardness(degrees(-1)));
        assertIllegal(
                "magnesium hardness must not be negative, but was -1 °dH",
                () -> builder().magnesiumHardness(degrees(-1)));
        assertIllegal(
                "carbonate hardness must not be negative, but was -1 °dH",
                () -> builder().strictCarbonateHardness(degrees(-1)));
        assertIllegal(
                "compensated hardness must not be negative, but was -1 °dH",
                () -> builder().compensatedHardness(CompensatedHardness.of(-1, CompensatedHardness.GERMAN_DEGREE)));
        assertIllegal(
                "sodium must not be negative, but was -1 mmol/L",
                () -> builder().total(Ion.SODIUM, millimolesPerLitre(-1)));
        assertIllegal(
                "bicarbonate must not be negative, but was -1 mmol/L",
                () -> builder().total(Ion.BICARBONATE, millimolesPerLitre(-1)));
        assertIllegal(
                "conductivity must not be negative, but was -1 µS/cm",
                () -> builder().conductivity(Conductivity.of(-1, Conductivity.MICROSIEMENS_PER_CENTIMETRE)));
        assertIllegal(
                "dissolved solids must not be negative, but was -1 mg/L",
                () -> builder().dissolvedSolids(MassConcentration.of(-1, MassConcentration.MILLIGRAM_PER_LITRE)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1})
    void aDetectionLimitIsPositive(double limit) {
        assertIllegal(
                "detection limit of sodium must be positive, but was " + Math.round(limit) + " mmol/L",
                () -> builder().totalBelow(Ion.SODIUM, millimolesPerLitre(limit)));
    }

    @ParameterizedTest
    @CsvSource({
        "NH3, NH₃ is not reported on its own: it is counted in NH₄⁺",
        "PO4^3-, PO₄³⁻ is not reported on its own: it is counted in H₂PO₄⁻",
        "CO2, CO₂ is not reported on its own: a water counts it in its inorganic carbon or alkalinity",
        "H+, H⁺ is not reported on its own: a water counts it in its inorganic carbon or alkalinity",
        "H2O, H₂O is not reported on its own: a water counts it in its inorganic carbon or alkalinity"
    })
    void otherFormsAreRefused(String ion, String message) {
        assertIllegal(message, () -> builder().total(Ion.parse(ion), millimolesPerLitre(1)));
        assertIllegal(message, () -> builder().totalBelow(Ion.parse(ion), millimolesPerLitre(1)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 14.01, Double.NaN, Double.POSITIVE_INFINITY})
    void pHIsFromZeroTo14(double pH) {
        assertIllegal("pH must be from 0 to 14, but was " + pH, () -> builder().pH(pH));
        assertEquals(OptionalDouble.of(0), builder().pH(0).build().pH());
        assertEquals(OptionalDouble.of(14), builder().pH(14).build().pH());
    }

    @ParameterizedTest
    @CsvSource({"-0.01, °C", "100.01, °C", "31, °F", "20, K"})
    void temperatureIsThatOfLiquidWater(double value, String unit) {
        assertIllegal(
                "temperature must be from 0 °C to 100 °C, but was " + WaterUnits.parseTemperature(value + " " + unit),
                () -> builder().temperature(WaterUnits.parseTemperature(value + " " + unit)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 100})
    void frostAndSteamAreTheEnds(double celsius) {
        Water water = builder()
                .temperature(WaterUnits.temperature(celsius, WaterUnits.CELSIUS))
                .build()
                .interpret()
                .water();
        assertEquals(celsius, water.temperature().in(WaterUnits.CELSIUS), 1e-12 * 400);
    }

    @Test
    void anEmptyReportIsRefused() {
        UnusableReportException e =
                assertThrows(UnusableReportException.class, () -> builder().build());
        assertEquals("no reading that can be used, such as hardness, alkalinity, calcium or sodium", e.getMessage());
        assertEquals(0, e.line());
    }

    @Test
    void nullIsRefusedByName() {
        assertNullRefused("quantity", () -> builder().hardness(null));
        assertNullRefused("quantity", () -> builder().compensatedHardness(null));
        assertNullRefused("quantity", () -> builder().alkalinity(null));
        assertNullRefused("ion", () -> builder().total(null, millimolesPerLitre(1)));
        assertNullRefused("ion", () -> builder().totalBelow(null, millimolesPerLitre(1)));
        assertNullRefused("quantity", () -> builder().total(Ion.SODIUM, null));
        assertNullRefused("quantity", () -> builder().temperature(null));
    }

    @Test
    void theLastDropOfAKitLeavesAnInterval() {
        LabReport report = builder()
                .hardnessBetween(degrees(5), degrees(6))
                .alkalinityBetween(
                        Alkalinity.of(1, Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                        Alkalinity.of(1.5, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .totalBetween(Ion.SODIUM, millimolesPerLitre(1), millimolesPerLitre(1))
                .temperature(WaterUnits.temperature(12.5, WaterUnits.CELSIUS))
                .build();
        assertEquals(
                List.of(
                        "hardness 5 °dH to 6 °dH",
                        "alkalinity 1 meq/L to 1.5 meq/L",
                        "sodium 1 mmol/L to 1 mmol/L",
                        "temperature 12.5 °C"),
                report.readings());
        Interpretation read = report.interpret();
        Bounds<Hardness> hardness = read.bounds(water -> water.hardness().to(Hardness.GERMAN_DEGREE));
        assertEquals(5, hardness.low().getValue(), 1e-14);
        assertEquals(5.5, hardness.value().getValue(), 1e-14);
        assertEquals(6, hardness.high().getValue(), 1e-14);
        Bounds<Alkalinity> alkalinity = read.bounds(Water::alkalinity);
        assertEquals(1, alkalinity.low().getValue(), 0);
        assertEquals(1.5, alkalinity.high().getValue(), 0);
        assertTrue(read.isMeasured(Ion.SODIUM));
        assertEquals(5.5, report.hardness().orElseThrow().in(Hardness.GERMAN_DEGREE), 1e-14);
        assertEquals(1.25, report.alkalinity().orElseThrow().getValue(), 0);
        assertEquals("12.5 °C", report.temperature().orElseThrow().toText(Locale.ROOT, 6));
        LabReport bare = builder().pH(7).build();
        assertTrue(bare.hardness().isEmpty()
                && bare.alkalinity().isEmpty()
                && bare.temperature().isEmpty());
    }

    @Test
    void endsAreInOrder() {
        assertIllegal(
                "ends of hardness must be in order, but were 6 °dH and 5 °dH",
                () -> builder().hardnessBetween(degrees(6), degrees(5)));
        assertIllegal(
                "sodium must not be negative, but was -1 mmol/L",
                () -> builder().totalBetween(Ion.SODIUM, millimolesPerLitre(-1), millimolesPerLitre(1)));
    }

    @Test
    void whatNoWaterHoldsIsRefused() {
        assertIllegal(
                "hardness must be at most 10.0 mol/L, but was 60000 °dH",
                () -> builder().hardness(degrees(60000)));
        assertIllegal(
                "sodium must be at most 10.0 mol/L, but was 10001 mmol/L",
                () -> builder().total(Ion.SODIUM, millimolesPerLitre(10001)));
        assertIllegal(
                "sodium must be at most 10.0 mol/L, but was 10001 mmol/L",
                () -> builder().totalBelow(Ion.SODIUM, millimolesPerLitre(10001)));
        assertIllegal(
                "alkalinity must be at most 10.0 mol/L, but was -10001 meq/L",
                () -> builder().alkalinity(Alkalinity.of(-10001, Alkalinity.MILLIEQUIVALENT_PER_LITRE)));
        assertEquals(
                List.of("sodium 10000 mmol/L"),
                builder().total(Ion.SODIUM, millimolesPerLitre(10000)).build().readings());
    }
}
