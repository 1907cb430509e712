package evenwater.examples.household;

import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.quantity.Hardness;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that say what a house does to its water. */
final class TreatmentOptions {

    @Option(
            names = "--neutralizer",
            paramLabel = "calcite",
            description = "Acid neutralizer in front of everything, by its filling; needs the pH at the tap.")
    private @Nullable String neutralizer;

    @Option(
            names = "--magnesia",
            paramLabel = "share",
            description = "Magnesia in what the neutralizer dissolves, by moles, such as 0.1.")
    private @Nullable String magnesia;

    @Option(
            names = "--reaching",
            paramLabel = "share",
            description =
                    "How much of what saturation would dissolve the neutralizer gets to, such as 0.8; all if not stated.")
    private @Nullable String reaching;

    @Option(names = "--outlet-ph", paramLabel = "pH", description = "pH measured behind the neutralizer, such as 7.4.")
    private @Nullable String outletPH;

    @Option(names = "--softener", paramLabel = "sodium|potassium", description = "Softener, by its salt.")
    private @Nullable String softener;

    @Option(names = "--leakage", paramLabel = "hardness", description = "Hardness behind the resin, such as '0.5 gpg'.")
    private @Nullable String leakage;

    @Option(
            names = "--target",
            paramLabel = "hardness",
            description = "Hardness to blend to past the softener, such as '6 °dH'.")
    private @Nullable String target;

    @Option(
            names = "--reverse-osmosis",
            paramLabel = "rejections",
            description = "Rejection of single- and of multiple-charged ions, such as 0.95,0.98.")
    private @Nullable String membrane;

    @Option(
            names = "--recovery",
            paramLabel = "share",
            description = "Permeate over feed of the membrane, such as 0.3; 0.25 if not stated.")
    private @Nullable String recovery;

    @Option(
            names = "--reject",
            paramLabel = "ion=share",
            description = "Rejection of one ion, such as NO3-=0.85. Repeatable.")
    private List<String> rejections = List.of();

    @Option(
            names = "--dose",
            paramLabel = "compound=amount/volume",
            description = "Salt dissolved, such as 'gypsum=1 g/10 L' or 'Epsom salt=1 tsp/40 US gal'. Repeatable.")
    private List<String> doses = List.of();

    @Option(
            names = "--blend",
            paramLabel = "hardness",
            description = "Hardness to blend to past the membrane, such as '6 °dH'.")
    private @Nullable String blend;

    @Option(names = "--no-treatment", description = "Show the source water alone.")
    private boolean noTreatment;

    /** Whether nobody said what the house does, nor that it does nothing. */
    boolean isNothingSaid() {
        return !isSomethingSaid() && !noTreatment;
    }

    private boolean isSomethingSaid() {
        return neutralizer != null || softener != null || membrane != null || !doses.isEmpty();
    }

    boolean hasSoftener() {
        return softener != null;
    }

    boolean isRecoveryAssumed() {
        return membrane != null && recovery == null;
    }

    /** Refuses options that say more of something that is not there. */
    void refuseOrphans() {
        if (neutralizer == null && (magnesia != null || reaching != null || outletPH != null)) {
            throw new UsageException("--magnesia, --reaching and --outlet-ph need --neutralizer");
        }
        if (softener == null && (leakage != null || target != null)) {
            throw new UsageException("--leakage and --target need --softener; past a membrane say --blend");
        }
        if (membrane == null && (recovery != null || blend != null || !rejections.isEmpty())) {
            throw new UsageException("--recovery, --blend and --reject need --reverse-osmosis");
        }
    }

    /** A neutralizer dissolves as much as the CO₂ takes, and the pH tells the CO₂: says why it does not. */
    void refuseWithoutCarbon(Interpretation source) {
        if (neutralizer != null && source.water().carbon().isEmpty()) {
            throw new UsageException(
                    "--neutralizer: "
                            + Stream.concat(source.findings().stream(), source.assumptions().stream())
                                    .filter(sentence -> sentence.startsWith("pH ") && sentence.contains(" not used: "))
                                    .findFirst()
                                    .orElse(
                                            "the report must state pH and alkalinity: the CO₂ that dissolves calcite follows from them"));
        }
    }

    /** The house; a report without one is softened, which the output says. */
    House house() {
        if (noTreatment) {
            if (isSomethingSaid()) {
                throw new UsageException(
                        "--no-treatment leaves no room for --neutralizer, --softener, --reverse-osmosis or --dose");
            }
            return House.NOTHING;
        }
        boolean softened = softener != null || !isSomethingSaid();
        return new House(
                Optional.ofNullable(neutralizer)
                        .map(filling -> House.neutralizer(
                                filling,
                                Optional.ofNullable(magnesia),
                                Optional.ofNullable(reaching),
                                Optional.ofNullable(outletPH))),
                softened
                        ? Optional.of(House.softener(
                                softener == null ? "sodium" : softener,
                                Optional.ofNullable(leakage),
                                Optional.ofNullable(target)))
                        : Optional.empty(),
                Optional.ofNullable(membrane).map(m -> House.membrane(m, Optional.ofNullable(recovery), rejections)),
                Optional.ofNullable(blend).map(b -> House.option("--blend", () -> Hardness.parse(b))),
                doses.stream().map(House::dose).toList());
    }

    /** Which option an impossible wish came with. */
    String whose(String message) {
        if (neutralizer != null && message.matches(".*(pH|inorganic carbon|neutralizer|filter|calcite).*")) {
            return "--neutralizer: ";
        }
        return target != null ? "--target: " : blend != null ? "--blend: " : "";
    }
}
