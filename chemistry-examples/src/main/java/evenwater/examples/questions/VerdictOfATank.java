package evenwater.examples.questions;

import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.ReportOptions;
import evenwater.chemistry.analysis.ReportRow;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.verdict.Verdict;
import java.util.List;
import java.util.Locale;

/** Is this water right for the tank? */
public final class VerdictOfATank {

    private VerdictOfATank() {}

    /**
     * Prints the verdict for a softened water.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Interpretation report = LabReport.read(
                        List.of(
                                new ReportRow(1, "GH", "18", "°dH", ""),
                                new ReportRow(2, "KH", "6", "°dKH", ""),
                                new ReportRow(3, "sodium", "12", "mg/L", ""),
                                new ReportRow(4, "nitrite", "<0.02", "mg/L", "NO2")),
                        ReportOptions.none())
                .interpret();
        // snippet
        Evidence behindSoftener = Evidence.from(report, Softener.withSodium())
                .with(Parameter.CHLORINE, Parameter.CHLORINE.parse("0 mg/L")); // what a strip showed
        Verdict verdict = Requirements.ofTank("general community").judge(behindSoftener);

        System.out.println(verdict.outcome() + ", not measured: " + verdict.missing());
        verdict.toChange()
                .forEach(finding -> System.out.println(finding.toText(Locale.ROOT) + "; " + finding.remedy()));
        verdict.undecided().forEach(finding -> System.out.println(finding.toText(Locale.ROOT)));
        System.out.println(verdict.cautions().get(0));
        // end
    }
}
