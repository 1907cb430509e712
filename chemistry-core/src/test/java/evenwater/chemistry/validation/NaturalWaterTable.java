package evenwater.chemistry.validation;

import evenwater.chemistry.testing.Deviations;
import evenwater.chemistry.testing.NaturalWater;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Predicate;

/** The part of the page on measured natural waters: how far their calculated conductivity is off, by class. */
final class NaturalWaterTable {

    private static final double PAGE_DIGIT = 1000;

    private final List<NaturalWater> waters = NaturalWater.all();
    private final StringBuilder page = new StringBuilder();

    /** Returns the part as Markdown. */
    static String render() {
        return new NaturalWaterTable().write();
    }

    private String write() {
        page.append("## Conductivity of natural waters\n\n")
                .append("Calculated over measured conductivity at 25 °C less 1, in percent, of ")
                .append(waters.size())
                .append(
                        " rivers, lakes and wells. Data of the US EPA, the US Geological Survey and the Wisconsin DNR, read in public")
                .append(
                        " data files; the test data name them row by row. Two readings of one water scatter by 1.1 to 1.6 %, and the")
                .append(
                        " ions of a full analysis by 2 %: 2.5 to 3 % rms is what a perfect law would show. The law was calibrated with salts")
                .append(" and these waters together, in the distance of closest approach alone.\n\n")
                .append(
                        "| Waters | Number | Median | rms | 95 of 100 within | Worst |\n|---|---:|---:|---:|---:|---:|\n");
        row("all", water -> true, NaturalWater::deviation);
        row("below 100 µS/cm", water -> water.measuredMicrosiemens() < 100, NaturalWater::deviation);
        row(
                "100 to 5000 µS/cm",
                water -> water.measuredMicrosiemens() >= 100 && water.measuredMicrosiemens() <= 5000,
                NaturalWater::deviation);
        row("above 5000 µS/cm", water -> water.measuredMicrosiemens() > 5000, NaturalWater::deviation);
        row("sulfate below a quarter of the anions", water -> water.sulfateShare() < 0.25, NaturalWater::deviation);
        row("sulfate a quarter to three quarters", NaturalWaterTable::isBetween, NaturalWater::deviation);
        row("sulfate above three quarters", water -> water.sulfateShare() > 0.75, NaturalWater::deviation);
        row("all, by the estimate of Standard Methods 2510", water -> true, NaturalWater::deviationOfStandardMethods);
        return page.append('\n').toString();
    }

    private static boolean isBetween(NaturalWater water) {
        return water.sulfateShare() >= 0.25 && water.sulfateShare() <= 0.75;
    }

    private void row(String name, Predicate<NaturalWater> which, Function<NaturalWater, Double> deviation) {
        Deviations found =
                Deviations.of(waters.stream().filter(which).map(deviation).toList());
        page.append(String.format(
                Locale.ROOT,
                "| %s | %d | %s | %s | %s | %s |\n",
                name,
                found.count(),
                percent(found.median()),
                percent(found.rms()),
                percent(found.percentile95()),
                percent(found.worst())));
    }

    private static String percent(double share) {
        double rounded = Math.rint(share * PAGE_DIGIT) / (PAGE_DIGIT / 100);
        return String.format(Locale.ROOT, "%.1f", rounded == 0 ? 0.0 : rounded);
    }
}
