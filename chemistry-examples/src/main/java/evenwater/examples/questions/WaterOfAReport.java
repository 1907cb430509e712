package evenwater.examples.questions;

import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.ReportOptions;
import evenwater.chemistry.analysis.ReportRow;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import java.util.List;
import java.util.Locale;

/** What does my laboratory report say, and what does it leave open? */
public final class WaterOfAReport {

    private WaterOfAReport() {}

    /**
     * Prints the sodium behind a softener with its range, and what was assumed.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        List<ReportRow> rows = List.of(
                new ReportRow(2, "total hardness", "22", "gr/gal", "CaCO3"),
                new ReportRow(3, "KH", "9.5", "°dH", ""), // the row decides: a degree of alkalinity
                new ReportRow(4, "nitrate", "4.1", "mg/L", "N"), // without "N" it is refused, with both readings
                new ReportRow(5, "sodium", "<2", "mg/L", "")); // anything from 0 to 2, in everything after it

        Interpretation report = LabReport.read(rows, ReportOptions.none()).interpret();

        System.out.println(report.bounds(water ->
                        Softener.withSodium().treat(water).total(Ion.SODIUM).to(Ion.SODIUM.milligramPerLitre()))
                .toText(Locale.ROOT, 4));
        report.assumptions().forEach(System.out::println);
        // end
    }
}
