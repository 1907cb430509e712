package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE;
import static evenwater.chemistry.testing.Amounts.celsius;

import evenwater.chemistry.equilibrium.AmmoniaCriterion;
import evenwater.chemistry.equilibrium.CopperCriterion;
import evenwater.chemistry.equilibrium.UnionisedAmmonia;
import evenwater.chemistry.quantity.Hardness;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The share of un-ionised ammonia, and criteria for ammonia and copper. */
final class AmmoniaChecks {

    private AmmoniaChecks() {}

    static Topic fraction() {
        return new Topic(
                "Un-ionised ammonia",
                "NH₃ in percent of all ammonia in fresh water, without activities.",
                List.of(
                        percent("7.0", "10", "0.186"),
                        percent("7.0", "20", "0.396"),
                        percent("7.0", "25", "0.566"),
                        percent("8.0", "10", "1.83"),
                        percent("8.0", "20", "3.82"),
                        percent("8.0", "25", "5.38"),
                        percent("9.0", "25", "36.3")));
    }

    private static PublishedCheck percent(String pH, String celsius, String published) {
        double reading = Double.parseDouble(pH);
        double degrees = Double.parseDouble(celsius);
        double pKOfTheTable = 0.09018 + 2729.92 / (degrees + 273.2);
        return new Result(
                        "un-ionised-" + pH + "-" + celsius,
                        "pH " + pH + ", " + celsius + " °C",
                        "%",
                        100 * UnionisedAmmonia.fraction(reading, celsius(degrees)))
                .printed(published, Source.EMERSON_1975, Status.FROM_MEMORY)
                .differing(
                        "the table takes 0 °C for 273.2 K, ours for 273.15 K",
                        new BigDecimal(100 / (1 + Math.pow(10, pKOfTheTable - reading))));
    }

    static Topic criteria() {
        List<PublishedCheck> checks = new ArrayList<>();
        ammonia(checks, AmmoniaCriterion.ACUTE_1999_SALMONIDS_PRESENT, Source.EPA_1999, """
                6.5 25 32.6
                7.0 25 24.1
                8.0 25 5.62
                9.0 25 0.885
                """);
        ammonia(checks, AmmoniaCriterion.ACUTE_1999_SALMONIDS_ABSENT, Source.EPA_1999, """
                6.5 25 48.8
                7.0 25 36.1
                8.0 25 8.40
                9.0 25 1.32
                """);
        ammonia(checks, AmmoniaCriterion.CHRONIC_1999_EARLY_STAGES_PRESENT, Source.EPA_1999, """
                7.0 0 5.91
                7.0 14 5.91
                7.0 20 4.15
                7.0 25 3.01
                7.0 30 2.18
                8.0 25 1.24
                9.0 30 0.179
                """);
        ammonia(checks, AmmoniaCriterion.CHRONIC_1999_EARLY_STAGES_ABSENT, Source.EPA_1999, """
                7.0 7 9.60
                7.0 20 4.15
                """);
        ammonia(checks, AmmoniaCriterion.ACUTE_2013_SALMONIDS_PRESENT, Source.EPA_2013, """
                7.0 10 24
                7.0 20 17
                8.0 10 5.6
                """);
        ammonia(checks, AmmoniaCriterion.ACUTE_2013_SALMONIDS_ABSENT, Source.EPA_2013, """
                6.5 10 51
                6.5 30 9.9
                7.0 10 38
                8.0 20 3.9
                9.0 10 1.4
                """);
        ammonia(checks, AmmoniaCriterion.CHRONIC_2013, Source.EPA_2013, """
                7.0 7 4.4
                7.0 20 1.9
                7.0 30 0.99
                8.0 20 0.78
                8.0 25 0.56
                """);
        checks.add(copper(CopperCriterion.ACUTE_1995, "13"));
        checks.add(copper(CopperCriterion.CHRONIC_1995, "9.0"));
        return new Topic(
                "Criteria for aquatic life",
                "Total ammonia in mg/L as N against pH and temperature, dissolved copper in µg/L against hardness.",
                checks);
    }

    /** Reads lines of pH, temperature in °C and the printed figure. */
    private static void ammonia(
            List<PublishedCheck> checks, AmmoniaCriterion criterion, Source source, String figures) {
        figures.lines().forEach(line -> {
            String[] words = line.split(" ", -1);
            double limit = criterion
                    .limit(Double.parseDouble(words[0]), celsius(Double.parseDouble(words[1])))
                    .getValue();
            PublishedCheck check = new Result(
                            criterion.name() + "-" + words[0] + "-" + words[1],
                            criterion + ", pH " + words[0] + ", " + words[1] + " °C",
                            "mg/L N",
                            limit)
                    .printed(words[2], source, Status.FROM_MEMORY);
            checks.add(words[2].equals("8.40") ? byUnroundedEquation(check) : check);
        });
    }

    private static PublishedCheck byUnroundedEquation(PublishedCheck check) {
        double x = Math.pow(10, 7.204 - 8);
        return check.differing(
                "the table follows 8.40 × (0.0489/(1 + 10^(7.204−pH)) + 6.95/(1 + 10^(pH−7.204))), whose coefficients "
                        + "the equation in print rounds (from memory)",
                new BigDecimal(8.40 * (0.0489 + 6.95 * x) / (1 + x)));
    }

    private static PublishedCheck copper(CopperCriterion criterion, String published) {
        Hardness hardness = Hardness.of(100, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
        return new Result(
                        criterion.name(),
                        criterion + ", hardness " + hardness,
                        "µg/L",
                        criterion.limit(hardness).getValue())
                .printed(published, Source.EPA_1995, Status.FROM_MEMORY);
    }
}
