package evenwater.examples.rooms;

import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import java.util.Locale;

/** The room of analysis: from what people hold to a water, with what was assumed. */
public final class AnalysisRoom {

    private AnalysisRoom() {}

    /**
     * Prints a range, the assumptions and what contradicts.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Interpretation report = LabReport.builder()
                .hardnessBetween(Hardness.parse("8 °dH"), Hardness.parse("9 °dH")) // between two drops
                .alkalinity(Alkalinity.parse("5 °dKH"))
                .pH(7.4)
                .build()
                .interpret();

        System.out.println(report.bounds(water -> water.hardness().to(Hardness.GERMAN_DEGREE))
                .toText(Locale.ROOT, 2));
        System.out.println(report.bounds(water -> water.total(Ion.CALCIUM).to(Ion.CALCIUM.milligramPerLitre()))
                .toText(Locale.ROOT, 2));
        System.out.println(report.assumptions());
        System.out.println(report.notMeasured());
        // end
    }
}
