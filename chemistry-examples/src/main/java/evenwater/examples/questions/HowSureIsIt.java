package evenwater.examples.questions;

import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.ReportOptions;
import evenwater.chemistry.analysis.ReportRow;
import evenwater.chemistry.analysis.UncertainReport;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.uncertainty.Draw;
import evenwater.chemistry.uncertainty.MonteCarlo;
import evenwater.chemistry.uncertainty.UncertainResult;
import evenwater.chemistry.uncertainty.UncertaintyBudget;
import java.util.List;
import java.util.function.Function;

/** How sure is the sodium behind the softener? */
public final class HowSureIsIt {

    private HowSureIsIt() {}

    /**
     * Prints the sodium with its uncertainty.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        UncertainReport report = LabReport.read(
                        List.of(
                                new ReportRow(1, "hardness", "22", "gpg", "CaCO3", "0.5"), // standard uncertainty
                                new ReportRow(2, "KH", "9.5", "°dKH", "", "5 %"),
                                new ReportRow(3, "sodium", "<2", "mg/L", "")), // anything from 0 to 2
                        ReportOptions.none())
                .uncertain();
        Function<Draw, AmountConcentration> sodium = draw -> Softener.withSodium()
                .treat(report.drawn(draw).interpret().water())
                .total(Ion.SODIUM)
                .to(Ion.SODIUM.milligramPerLitre());

        UncertainResult<AmountConcentration> drawn = MonteCarlo.seeded(42).propagate(report.inputs(), sodium);
        System.out.println(drawn); // JCGM 101
        UncertaintyBudget<AmountConcentration> budget = UncertaintyBudget.of(report.inputs(), sodium); // JCGM 100
        System.out.println(budget);
        System.out.println(budget.validatedBy(drawn, 1));
        // end
    }
}
