package evenwater.examples.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The report of the bundled household has every part that a reader was promised. */
class BundledHouseholdTest {

    static final Run RUN = Run.of();

    @Test
    void itRunsWithoutAWordOfError() {
        assertEquals(0, RUN.exitCode());
        assertEquals("", RUN.err());
    }

    @TestFactory
    Stream<DynamicTest> itSays() {
        return Stream.of(
                        "in short hardness, °dH alkalinity, °dKH sodium, mg/L pH µS/cm at 25 °C",
                        "behind reverse osmosis 0.009 0.725 7.88 to 7.98",
                        "Measured: hardness 22 gr/gal as CaCO3; calcium 104 mg/L as Ca; alkalinity 14.5 °dH; pH 7.6;",
                        "hardness in gr/gal read as grain per US gallon, as the softening trade does",
                        "magnesium taken as hardness less calcium",
                        "line 15, fluoride ND mg/L: not detected, with no limit stated: not counted as zero",
                        "line 17, arsenic <1 µg/L: known, goes into no water",
                        "sodium Na⁺             1.00     0.043   0.000 to 2.00",
                        "21.10 °dH",
                        "22.00 gpg",
                        "Class: very hard (USGS)",
                        "1.58 %, wanted -2 to 2: accepted",
                        "Stage 1: softener with sodium, leaking 0.5 gpg",
                        "sodium Na⁺            +169.1           +7.36",
                        "sodium Na⁺           170.1      7.40   169.1 to 171.1",
                        "\"One for one, ppm for ppm\" would be wrong by the charge",
                        "Stage 2: reverse osmosis rejecting 95 % of single-charged and 98 % of multiple-charged ions",
                        "Dissolved CO₂ passes, which makes the permeate of most waters acid",
                        "mg in a 250 mL glass",
                        "level tsp per US gallon",
                        "WHO Guidelines for drinking-water quality, 4th edition (2022)",
                        "US EPA 822-R-03-006 (2003)",
                        "common practice",
                        "Not fit for planted tank with CO₂: GH 0.00894 to 0.00895 °dH: below 4 °dH",
                        "Change first: GH: put calcium and magnesium back",
                        "of potassium bicarbonate (1.74 level teaspoons ± 20 %)",
                        "7.12 closed to the air and to 8.43 at rest with it, at the 25 °C of the tank",
                        "index +0.49 in equilibrium with outdoor air",
                        "what a treatment takes out counts as exact",
                        "Then: Undecided for planted tank with CO₂. Not measured, and no water is fit while they are unknown: chlorine,",
                        "KH 0.73 ± 0.07 °dKH 0 % 5.50 ± 0.28 °dKH 100 % 3 to 8 °dKH",
                        "Handling potassium bicarbonate",
                        "Much CO₂ suffocates fish",
                        "Low-sodium diet",
                        "Infants:",
                        "copper and lead",
                        "Brine from regeneration",
                        "Local codes")
                .map(phrase -> DynamicTest.dynamicTest(
                        phrase, () -> assertTrue(flat(RUN.out()).contains(flat(phrase)), phrase)));
    }

    /** Line breaks fall where the words do not fit; they are no part of what is said. */
    static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void chargesOfEveryLedgerAddUpToZero() {
        List<String> sums = RUN.out()
                .lines()
                .filter(line -> line.contains("sum of charges"))
                .toList();
        assertEquals(2, sums.size());
        sums.forEach(line -> assertTrue(line.endsWith(" 0.000"), line));
    }

    @Test
    void itIsTheSameInAnotherLocaleAndTimeZone() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            assertEquals(RUN, Run.of());
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertEquals(RUN, Run.of());
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void noLineIsTooLongToRead() {
        RUN.out().lines().forEach(line -> assertTrue(line.length() <= 115, line));
    }

    @Test
    void helpNamesEveryOption() {
        Run help = Run.of("--help");
        assertEquals(0, help.exitCode());
        for (String option : List.of(
                "--tank",
                "--reading",
                "--shelf",
                "--volume",
                "--uncertainty",
                "--softener",
                "--target",
                "--reverse-osmosis",
                "--dose",
                "--hardness-in",
                "--basis",
                "--carrier")) {
            assertTrue(help.out().contains(option), option);
        }
        assertFalse(help.out().contains("null"), help.out());
        assertTrue(flat(help.out()).contains("such as '5 %'; if not stated, 5 %."), help.out());
    }
}
