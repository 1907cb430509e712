package evenwater.examples.household;

import evenwater.chemistry.analysis.Assumptions;
import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.analysis.CalciumToMagnesium;
import evenwater.chemistry.analysis.DecimalSign;
import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.ReportOptions;
import evenwater.chemistry.analysis.UnusableReportException;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The options of the main job; answers 0 with a report, or 2 with one line of error and nothing else printed. */
@Command(
        name = "household",
        description = "From a water report in anyone's units to the sodium in the tank.",
        sortOptions = false,
        usageHelpAutoWidth = true)
final class HouseholdCommand implements Callable<String> {

    private static final int UNUSABLE = 2;
    private static final int LONGEST_ERROR = 500;

    @Parameters(
            arity = "0..1",
            paramLabel = "report.csv",
            description =
                    "Laboratory report with the columns analyte,value,unit,as. Without one, a bundled household is shown.")
    private @Nullable String file;

    @Option(
            names = "--bundled",
            paramLabel = "larch-lane|fern-hollow",
            description =
                    "Which bundled household to show: a hard well with softener and membrane, or a soft acid well "
                            + "with neutralizer and softener.")
    private @Nullable String bundled;

    @Mixin
    private final TreatmentOptions treatments = new TreatmentOptions();

    @Mixin
    private final PlanOptions plan = new PlanOptions();

    @Mixin
    private final TankOptions tank = new TankOptions();

    @Option(
            names = "--hardness-in",
            paramLabel = "unit",
            description = "Unit to speak of hardness, such as gpg or °dH.")
    private @Nullable String hardnessIn;

    @Option(names = "--alkalinity-in", paramLabel = "unit", description = "Unit to speak of alkalinity, such as °dKH.")
    private @Nullable String alkalinityIn;

    @Option(
            names = "--basis",
            paramLabel = "analyte=basis",
            description = "Basis of a mass that states none, such as nitrate=N.")
    private List<String> bases = List.of();

    @Option(
            names = "--unit",
            paramLabel = "analyte=unit",
            description = "Unit that is missing or may be two, such as hardness=°fH.")
    private List<String> units = List.of();

    @Option(names = "--name", paramLabel = "name=analyte", description = "What a name of the report means.")
    private List<String> names = List.of();

    @Option(names = "--ignore", paramLabel = "name", description = "Leave out a row of the report. Repeatable.")
    private List<String> ignored = List.of();

    @Option(
            names = "--decimal",
            paramLabel = "comma|point",
            description = "What marks decimals in the numbers of the report.")
    private @Nullable String decimal;

    @Option(names = "--density", paramLabel = "density", description = "Density of the water, for readings in mg/kg.")
    private @Nullable String density;

    @Option(
            names = "--calcium-to-magnesium",
            paramLabel = "ratio",
            description = "Ratio to assume, such as '3 by amount' or '4 by mass', where only hardness is known.")
    private @Nullable String ratio;

    @Option(
            names = "--carrier",
            paramLabel = "anion,cation",
            description = "Ions that carry the charge nobody measured, such as Cl-,Na+.")
    private @Nullable String carrier;

    @Option(
            names = "--report",
            paramLabel = "file.html",
            description =
                    "Write the report with pictures to this file as well, as one page of HTML that needs nothing else. "
                            + "The file must be new, or one that this option wrote before, which is then replaced.")
    private @Nullable String reportTo;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this text.")
    private boolean help;

    /** Runs the command; prints either all of the report or one line of error. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        HouseholdCommand command = new HouseholdCommand();
        CommandLine parser = new CommandLine(command).setExpandAtFiles(false);
        try {
            parser.parseArgs(args);
            if (command.help) {
                parser.usage(out);
                return 0;
            }
            out.print(command.call());
            out.flush();
            return 0;
        } catch (CommandLine.UnmatchedArgumentException e) {
            return refuse(
                    err,
                    e.getMessage()
                            + e.getSuggestions().stream()
                                    .findFirst()
                                    .map(s -> ": did you mean " + s + "?")
                                    .orElse(""));
        } catch (CommandLine.PicocliException
                | UsageException
                | NoAnswerException
                | IllegalArgumentException
                | ArithmeticException e) {
            return refuse(err, String.valueOf(e.getMessage()));
        }
    }

    private static int refuse(PrintWriter err, String message) {
        String line = message.replaceAll("\\s*\\R\\s*", " ");
        err.println(line.length() > LONGEST_ERROR ? line.substring(0, LONGEST_ERROR) + "…" : line);
        return UNUSABLE;
    }

    @Override
    public String call() {
        boolean own = file == null;
        if (bundled != null && !own) {
            throw new UsageException("--bundled shows a household without a file: leave one of the two out");
        }
        treatments.refuseOrphans();
        Optional<ReportPath> path = Optional.ofNullable(reportTo).map(ReportPath::of);
        String name = file == null ? household().file() : file;
        ReportFile report = ReportFile.of(name, bytes());
        try {
            Interpretation source =
                    LabReport.read(report.rows(), reading(report)).interpret(assuming());
            boolean nothingSaid = treatments.isNothingSaid();
            boolean hardnessKnown = isHardnessKnown(source);
            if (treatments.hasSoftener() && !hardnessKnown) {
                throw new UsageException(
                        name + ": --softener needs hardness, or calcium and magnesium, and the report has none");
            }
            House house = own && nothingSaid
                    ? household().house()
                    : nothingSaid && !hardnessKnown ? House.NOTHING : treatments.house();
            treatments.refuseWithoutCarbon(source);
            plan.refuseWithoutSoftener(house);
            PlanWish wish = plan.wish(own && nothingSaid ? household().plan() : PlanWish.NOTHING);
            Page page = new HouseholdReport(
                            name,
                            report,
                            source,
                            assuming(),
                            house,
                            wish,
                            tank.wish(own ? Optional.of(household().tank()) : Optional.empty()),
                            speech(),
                            !own && nothingSaid,
                            own && !nothingSaid,
                            treatments.isRecoveryAssumed())
                    .page();
            path.ifPresent(to -> to.write(HtmlText.of(page.blocks())));
            return page.toString();
        } catch (UnusableReportException e) {
            throw new UsageException(
                    name + (e.line() > 0 ? ":" + e.line() : "") + ": " + e.getMessage() + hint(e.getMessage() + ""));
        } catch (NoAnswerException e) {
            throw new UsageException(treatments.whose(e.getMessage() + "") + e.getMessage());
        }
    }

    /** Which option settles what the report leaves open; the library knows nothing of options. */
    private static String hint(String message) {
        if (message.endsWith("state the basis")) {
            return ", or say --basis, such as --basis nitrate=N";
        }
        if (message.endsWith("add one") || message.contains("unit is missing")) {
            return ", or say --unit, such as --unit 'hardness=mg/L CaCO3'";
        }
        if (message.endsWith("or leave the row out")) {
            return message.contains("ay what it means") ? ": --name or --ignore" : ": --ignore";
        }
        if (message.contains("needs the density")) {
            return ": --density '0.998 kg/L'";
        }
        return message.contains("what a comma means") || message.endsWith("use a point or say so") ? ": --decimal" : "";
    }

    private static boolean isHardnessKnown(Interpretation source) {
        Bounds<Hardness> hardness = source.bounds(Water::hardness);
        return !hardness.openAbove() || hardness.high().getValue() > 0;
    }

    private byte[] bytes() {
        try {
            if (file == null) {
                return Resource.bytes(household().file());
            }
            try (InputStream in = Files.newInputStream(Path.of(file))) {
                return in.readNBytes(ReportFile.LARGEST_BYTES + 1);
            }
        } catch (IOException | InvalidPathException e) {
            throw new UsageException(file + ": cannot be read: no such file, or not allowed");
        }
    }

    private ReportOptions reading(ReportFile report) {
        ReportOptions options = ReportOptions.none().with(decimalSign(report));
        for (String[] pair : pairs("--basis", bases)) {
            options = options.basis(pair[0].strip(), pair[1].strip());
        }
        for (String[] pair : pairs("--unit", units)) {
            options = options.unit(pair[0].strip(), pair[1].strip());
        }
        for (String[] pair : pairs("--name", names)) {
            options = options.naming(pair[0].strip(), pair[1].strip());
        }
        for (String one : ignored) {
            options = options.ignoring(one);
        }
        if (density != null) {
            String text = density;
            ReportOptions before = options;
            options = House.option("--density", () -> before.density(MassConcentration.parse(text)));
        }
        return options;
    }

    /** Splits {@code nitrate=N}. */
    private static List<String[]> pairs(String option, List<String> texts) {
        List<String[]> pairs = new ArrayList<>();
        for (String text : texts) {
            String[] parts = text.split("=", 2);
            if (parts.length < 2 || parts[0].isBlank() || parts[1].isBlank()) {
                throw new UsageException(option + ": '" + text + "' must be two words with = between them");
            }
            pairs.add(parts);
        }
        return pairs;
    }

    private DecimalSign decimalSign(ReportFile report) {
        if (decimal == null) {
            return report.decimalSign();
        }
        return switch (decimal.toLowerCase(Locale.ROOT)) {
            case "comma" -> DecimalSign.COMMA;
            case "point" -> DecimalSign.POINT;
            default -> throw new UsageException("--decimal: '" + decimal + "' must be comma or point");
        };
    }

    private Assumptions assuming() {
        Assumptions assumptions = Assumptions.usual();
        if (ratio != null) {
            String[] words = ratio.strip().split("\\s+", 2);
            boolean byMass = words.length == 2 && words[1].equals("by mass");
            if (!byMass && !(words.length == 2 && words[1].equals("by amount"))) {
                throw new UsageException("--calcium-to-magnesium: '" + ratio
                        + "' must say 'by amount' or 'by mass', such as '3 by amount'");
            }
            if (!words[0].matches("[0-9]{1,9}(\\.[0-9]{1,9})?")) {
                throw new UsageException("--calcium-to-magnesium: '" + words[0] + "' is no number such as 3 or 4.5");
            }
            double number = Double.parseDouble(words[0]);
            assumptions = assumptions.with(
                    House.option("--calcium-to-magnesium", () -> new CalciumToMagnesium(number, byMass)));
        }
        if (carrier != null) {
            String[] ions = carrier.split(",", -1);
            if (ions.length != 2) {
                throw new UsageException("--carrier: '" + carrier + "' must be an anion and a cation, such as Cl-,Na+");
            }
            Assumptions before = assumptions;
            assumptions = House.option("--carrier", () -> before.carrying(Ion.parse(ions[0]), Ion.parse(ions[1])));
        }
        return assumptions;
    }

    private BundledHousehold household() {
        return BundledHousehold.named(bundled == null ? "larch-lane" : bundled);
    }

    private Speech speech() {
        String hardness = hardnessIn;
        String alkalinity = alkalinityIn;
        return new Speech(
                hardness == null
                        ? Hardness.GERMAN_DEGREE
                        : House.option("--hardness-in", () -> Hardness.parseUnit(hardness)),
                alkalinity == null
                        ? Alkalinity.DEGREE_OF_CARBONATE_HARDNESS
                        : House.option("--alkalinity-in", () -> Alkalinity.parseUnit(alkalinity)));
    }
}
