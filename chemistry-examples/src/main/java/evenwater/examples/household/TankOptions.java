package evenwater.examples.household;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirements;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options about the tank. */
final class TankOptions {

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

    TankWish wish(Optional<String> usualKind) {
        return new TankWish(Optional.ofNullable(kind).or(() -> usualKind).map(TankOptions::requirements), reading());
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
        return House.option("--reading", () -> reading(Parameter.named(parts[0]), parts[1].strip()));
    }

    private static <Q extends WaterQuantity<?>> UnaryOperator<Evidence> reading(Parameter<Q> parameter, String text) {
        Q value = parameter.parse(text);
        if (parameter != Parameter.CARBONATE_HARDNESS && parameter.number(value) < 0) {
            throw new IllegalArgumentException(parameter + " must not be negative, but was " + text);
        }
        return evidence -> evidence.with(parameter, value);
    }
}
