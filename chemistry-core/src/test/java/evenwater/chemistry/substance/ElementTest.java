package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.MolarMass.GRAM_PER_MOLE;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.junit.jupiter.params.provider.ValueSource;
import org.openscience.cdk.config.Elements;
import org.openscience.cdk.config.Isotopes;

class ElementTest {

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/prohaska-2022.csv", useHeadersInDisplayName = true)
    void weightsAndUncertaintiesAreThePublishedOnes(
            String symbol, String name, int atomicNumber, double weight, double uncertainty) {
        Element element = Element.withSymbol(symbol).orElseThrow();
        assertAll(
                () -> assertEquals(name.toUpperCase(Locale.ROOT), element.name()),
                () -> assertEquals(symbol, element.symbol()),
                () -> assertEquals(atomicNumber, element.atomicNumber()),
                () -> assertEquals(weight, element.atomicWeight().in(GRAM_PER_MOLE)),
                () -> assertEquals(uncertainty, element.uncertainty().in(GRAM_PER_MOLE)));
    }

    @Test
    void elementsAreThoseWithAStandardAtomicWeightInOrder() {
        List<Integer> without =
                List.of(43, 61, 84, 85, 86, 87, 88, 89); // Tc, Pm and Po to Ac have no long-lived isotope
        List<Integer> expected = IntStream.rangeClosed(1, 92)
                .boxed()
                .filter(z -> !without.contains(z))
                .toList();
        assertEquals(
                expected,
                Arrays.stream(Element.values()).map(Element::atomicNumber).toList());
    }

    @ParameterizedTest
    @EnumSource(Element.class)
    void symbolsAndNamesAreThoseOfAnotherLibrary(Element element) {
        Elements other = Elements.ofNumber(element.atomicNumber());
        assertAll(
                () -> assertEquals(other.symbol(), element.symbol()),
                () -> assertEquals(other.name().toUpperCase(Locale.ROOT), element.name()),
                () -> assertEquals(Optional.of(element), Element.withSymbol(element.symbol())));
    }

    /** The other library sums isotope masses and abundances, so its masses are not the standard weights but lie near them. */
    @ParameterizedTest
    @EnumSource(
            value = Element.class,
            mode = Mode.EXCLUDE,
            names = {"GERMANIUM", "SELENIUM", "MOLYBDENUM"})
    void weightsAgreeWithMassesOfIsotopes(Element element) throws IOException {
        double uncertainty = element.uncertainty().in(GRAM_PER_MOLE);
        // Rounding adds half of the last digit, which is at most half of the uncertainty.
        assertEquals(isotopeMass(element), element.atomicWeight().in(GRAM_PER_MOLE), 1.5 * uncertainty);
    }

    /** The abundances of the other library are older: its masses are the standard weights before the revisions named here. */
    @ParameterizedTest(name = "{0} before {3}")
    @CsvSource({ // former standard weights and years of their revisions, from memory
        "GERMANIUM,  72.61, 0.02, 1999",
        "SELENIUM,   78.96, 0.03, 2013",
        "MOLYBDENUM, 95.94, 0.01, 2007"
    })
    void threeWeightsWereRevisedSinceTheIsotopesWereMeasured(
            Element element, double formerWeight, double formerUncertainty, int year) throws IOException {
        double weight = element.atomicWeight().in(GRAM_PER_MOLE);
        assertAll(
                () -> assertEquals(formerWeight, isotopeMass(element), formerUncertainty),
                () -> assertEquals(formerWeight, weight, 1.5 * formerUncertainty));
    }

    /** With a single isotope there are no abundances to disagree about: every published digit must be that of its mass. */
    @ParameterizedTest
    @EnumSource(
            value = Element.class,
            names = {
                "BERYLLIUM", "FLUORINE", "SODIUM", "ALUMINIUM", "PHOSPHORUS", "SCANDIUM", "MANGANESE", "COBALT",
                        "ARSENIC", "YTTRIUM",
                "NIOBIUM", "RHODIUM", "IODINE", "CAESIUM", "PRASEODYMIUM", "TERBIUM", "HOLMIUM", "THULIUM", "GOLD",
                        "BISMUTH",
                "THORIUM", "PROTACTINIUM"
            })
    void weightsOfElementsWithOneIsotopeAreItsRoundedMass(Element element) throws IOException {
        // One unit of the last digit is the least uncertainty that is stated, so it tells where the last digit stands.
        int decimals = BigDecimal.valueOf(element.uncertainty().in(GRAM_PER_MOLE))
                .stripTrailingZeros()
                .scale();
        double rounded = BigDecimal.valueOf(isotopeMass(element))
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .doubleValue();
        assertEquals(rounded, element.atomicWeight().in(GRAM_PER_MOLE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Tc", "na", "NA", "D", "", " Na"})
    void otherSymbolsAreNoElements(String symbol) {
        assertEquals(Optional.empty(), Element.withSymbol(symbol));
    }

    @ParameterizedTest
    @EnumSource(Element.class)
    void formulaOfAnElementIsOneAtomOfIt(Element element) {
        Formula formula = element.formula();
        assertAll(
                () -> assertEquals(element.symbol(), formula.toString()),
                () -> assertEquals(1, formula.count(element)),
                () -> assertEquals(1, formula.elements().size()),
                () -> assertEquals(0, formula.chargeNumber()),
                () -> assertEquals(element.atomicWeight(), formula.molarMass()));
    }

    private static double isotopeMass(Element element) throws IOException {
        return Isotopes.getInstance().getNaturalMass(element.atomicNumber());
    }
}
