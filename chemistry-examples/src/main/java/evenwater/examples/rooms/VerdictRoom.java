package evenwater.examples.rooms;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirement;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.verdict.Standing;
import evenwater.chemistry.verdict.Verdict;
import java.util.Locale;

/** The room of verdicts: requirements of your own and how a water stands against them. */
public final class VerdictRoom {

    private VerdictRoom() {}

    /**
     * Prints each finding.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Requirements mine = Requirements.ofTank("general community")
                .with(Requirement.between(
                        Parameter.GENERAL_HARDNESS, Hardness.parse("3 °dH"), Hardness.parse("6 °dH")));
        Evidence tank = Evidence.none()
                .with(Parameter.GENERAL_HARDNESS, Hardness.parse("8 °dH"))
                .with(Parameter.CARBONATE_HARDNESS, Alkalinity.parse("4 °dKH"));

        Verdict verdict = mine.judge(tank);
        System.out.println(verdict.outcome());
        verdict.counting().stream()
                .filter(finding -> finding.standing() != Standing.NOT_MEASURED)
                .forEach(finding -> System.out.println(finding.toText(Locale.ROOT)));
        System.out.println("missing: " + verdict.missing());
        // end
    }
}
