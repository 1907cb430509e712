package evenwater.examples.household;

import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirements;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options about the tank. */
final class TankOptions {

    private static final double MOST_UNCERTAINTY = 0.5;
    private static final double LEAST_LITRES = 0.001;
    private static final double MOST_LITRES = 1e6;

    /** In the usual unit of any parameter; more is a slip. */
    private static final double MOST_READING = 1e6;

    /** What many keepers of soft water have at hand (common practice, no source). */
    private static final List<Compound> USUAL_SHELF = List.of(
            Compound.CALCIUM_CHLORIDE_DIHYDRATE,
            Compound.CALCIUM_SULFATE_DIHYDRATE,
            Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE,
            Compound.POTASSIUM_BICARBONATE);

    @Option(
            names = "--tank",
            paramLabel = "kind",
            description =
                    "Kind of tank to judge for, such as 'general community', or a part of its name; without it, all are shown.")
    private @Nullable String kind;

    @Option(
            names = "--reading",
            paramLabel = "name=value",
            description =
                    "What a kit showed in the last water, such as 'chlorine=0 mg/L' or 'nitrite=0.05 mg/L NO2'. Repeatable.")
    private List<String> readings = List.of();

    @Option(
            names = "--volume",
            paramLabel = "volume",
            description =
                    "Net water of the tank or the bucket that the recipe is for, such as '50 L'; if not stated, 50 L.")
    private @Nullable String volume;

    @Option(
            names = "--shelf",
            paramLabel = "compounds",
            description = "What the recipe may use, between commas, such as 'calcium chloride dihydrate, Epsom salt'.")
    private @Nullable String shelf;

    @Option(
            names = "--uncertainty",
            paramLabel = "share",
            description =
                    "Relative standard uncertainty of all concentrations that state none in the report, such as '5 %%'; if not stated, 5 %%.")
    private @Nullable String uncertainty;

    TankWish wish(Optional<String> usualKind) {
        return new TankWish(
                Optional.ofNullable(kind).or(() -> usualKind).map(TankOptions::requirements),
                reading(),
                volume(volume == null ? "50 L" : volume),
                shelf == null ? USUAL_SHELF : compounds(shelf),
                uncertainty == null ? OptionalDouble.empty() : OptionalDouble.of(share(uncertainty)));
    }

    private static WaterQuantity<Volume> volume(String text) {
        WaterQuantity<Volume> volume = House.option("--volume", () -> WaterUnits.parseVolume(text));
        double litres = volume.in(WaterUnits.LITRE);
        if (!(litres >= LEAST_LITRES && litres <= MOST_LITRES)) {
            throw new UsageException(
                    "--volume: volume of the water must be from 0.001 L to 1000000 L, but was " + volume);
        }
        return volume;
    }

    private static List<Compound> compounds(String names) {
        return Stream.of(names.split(",", -1))
                .map(name -> House.option("--shelf", () -> Compound.named(name.strip())))
                .distinct()
                .toList();
    }

    private static double share(String text) {
        double share =
                House.option("--uncertainty", () -> WaterUnits.parseShare(text)).in(WaterUnits.ONE);
        if (!(share >= 0 && share <= MOST_UNCERTAINTY)) {
            throw new UsageException("--uncertainty: share must be from 0 % to 50 %, but was " + text.strip());
        }
        return share;
    }

    private static Requirements requirements(String kind) {
        return House.option("--tank", () -> Requirements.ofTank(kind));
    }

    private UnaryOperator<Evidence> reading() {
        List<UnaryOperator<Evidence>> all =
                readings.stream().map(TankOptions::reading).toList();
        return evidence -> {
            Evidence more = evidence;
            for (UnaryOperator<Evidence> one : all) {
                more = one.apply(more);
            }
            return more;
        };
    }

    private static UnaryOperator<Evidence> reading(String text) {
        String[] parts = text.split("=", 2);
        if (parts.length < 2 || parts[0].isBlank() || parts[1].isBlank()) {
            throw new UsageException("--reading: '" + text + "' must be a name and a value with = between them");
        }
        Parameter<?> parameter = House.option("--reading", () -> Parameter.named(parts[0]));
        return House.option("--reading", () -> reading(parameter, parts[1].strip()));
    }

    private static <Q extends WaterQuantity<?>> UnaryOperator<Evidence> reading(Parameter<Q> parameter, String text) {
        Q value;
        try {
            value = parameter.parse(text);
        } catch (UnreadableTextException e) {
            throw new UsageException("--reading: " + parameter + " '" + text + "': " + e.problem());
        }
        if (!(Math.abs(parameter.number(value)) <= MOST_READING)) {
            throw new IllegalArgumentException(
                    parameter + " must be at most " + parameter.of(MOST_READING) + ", but was " + text);
        }
        Evidence.none().with(parameter, value); // what cannot be evidence is refused with its option
        return evidence -> evidence.with(parameter, value);
    }
}
