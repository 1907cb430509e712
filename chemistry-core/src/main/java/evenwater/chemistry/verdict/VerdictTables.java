package evenwater.chemistry.verdict;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The data files of this package. */
final class VerdictTables {

    /** Stands for every kind of tank. */
    private static final String TANK = "tank";

    private static final List<Caution> CAUTIONS = rows("cautions.csv")
            .map(row -> new Caution(topic(row[0]), row[1], citation(row[2], row[3], row[4])))
            .toList();

    private static final Map<Parameter<?>, String[]> REMEDIES =
            rows("remedies.csv").collect(Collectors.toUnmodifiableMap(row -> Parameter.named(row[0]), row -> row));

    private static final Map<String, Parameter<MassConcentration>> OTHER_NAMES = otherNamesOfFile();

    private static final Map<String, Requirements> KINDS = kinds();

    private VerdictTables() {}

    static List<Caution> cautions() {
        return CAUTIONS;
    }

    /** What helps where there is too little or too much; empty text if nobody knows. */
    static String remedy(Parameter<?> parameter, boolean tooLittle) {
        String[] row = REMEDIES.get(parameter);
        return row == null ? "" : row[tooLittle ? 1 : 2];
    }

    /** Kinds of tank by name, in the order of the file. */
    static Map<String, Requirements> tankKinds() {
        return KINDS;
    }

    /** Parameters that are no part of a water, by beginnings of names, or by whole names with an equals sign in front. */
    static Map<String, Parameter<MassConcentration>> otherNames() {
        return OTHER_NAMES;
    }

    private static Map<String, Parameter<MassConcentration>> otherNamesOfFile() {
        List<Parameter<MassConcentration>> others = List.of(
                Parameter.CHLORINE,
                Parameter.LEAD,
                Parameter.CADMIUM,
                Parameter.NICKEL,
                Parameter.CHROMIUM,
                Parameter.SILVER,
                Parameter.MERCURY,
                Parameter.ARSENIC,
                Parameter.SELENIUM,
                Parameter.CYANIDE,
                Parameter.HYDROGEN_SULFIDE);
        Map<String, Parameter<MassConcentration>> names = new LinkedHashMap<>();
        rows("other-names.csv").forEach(row -> {
            Parameter<MassConcentration> parameter = others.stream()
                    .filter(other -> other.name().equals(row[0]))
                    .findFirst()
                    .orElseThrow();
            for (String name : row[1].split(", ", -1)) {
                names.put(name, parameter);
            }
        });
        return names;
    }

    static List<Requirement<?>> drinking() {
        return rows("requirements.csv")
                .filter(row -> row[0].equals("drinking"))
                .<Requirement<?>>map(VerdictTables::requirement)
                .toList();
    }

    private static Map<String, Requirements> kinds() {
        Map<String, Requirements> kinds = new LinkedHashMap<>();
        rows("tank-kinds.csv").forEach(row -> kinds.put(row[0], kind(row)));
        return kinds;
    }

    private static Requirements kind(String[] row) {
        List<Requirement<?>> list = new ArrayList<>();
        if (!row[1].isEmpty()) {
            list.add(range(Parameter.GENERAL_HARDNESS, row[1], row[2], Weight.MUST_BE_KNOWN));
        }
        list.add(range(Parameter.CARBONATE_HARDNESS, row[3], row[4], Weight.MUST_BE_KNOWN));
        list.add(range(Parameter.PH, row[5], row[6], Weight.MUST_BE_KNOWN));
        list.add(range(Parameter.CONDUCTIVITY, row[7], row[8], Weight.COUNTS_IF_KNOWN));
        List<Requirement<?>> own = named(row[0]).toList();
        list.addAll(own);
        rows("requirements.csv")
                .filter(other -> other[0].equals(TANK))
                .<Requirement<?>>map(VerdictTables::requirement)
                .filter(general -> own.stream().noneMatch(special -> replaces(special, general)))
                .forEach(list::add);
        return new Requirements(row[0], false, list, row[9].isEmpty() ? TankAir.OPEN : dosed(row[9], row[10]));
    }

    private static TankAir dosed(String least, String most) {
        return TankAir.dosed(
                Parameter.CARBON_DIOXIDE.of(Double.parseDouble(least)),
                Parameter.CARBON_DIOXIDE.of(Double.parseDouble(most)));
    }

    /** Requirements for a kind by a word in its name. */
    private static Stream<Requirement<?>> named(String kind) {
        return rows("requirements.csv")
                .filter(row ->
                        !row[0].equals(TANK) && kind.toLowerCase(Locale.ROOT).contains(row[0]))
                .map(VerdictTables::requirement);
    }

    private static boolean replaces(Requirement<?> special, Requirement<?> general) {
        return special.parameter() == general.parameter() && general.weight() != Weight.FOR_INFORMATION;
    }

    private static <Q extends WaterQuantity<?>> Requirement<Q> range(
            Parameter<Q> parameter, String least, String most, Weight weight) {
        return new Requirement<>(
                parameter,
                Optional.of(parameter.of(Double.parseDouble(least))),
                Optional.of(parameter.of(Double.parseDouble(most))),
                "",
                weight,
                Citation.COMMON_PRACTICE);
    }

    private static Requirement<?> requirement(String[] row) {
        return requirement(Parameter.named(row[1]), row);
    }

    private static <Q extends WaterQuantity<?>> Requirement<Q> requirement(Parameter<Q> parameter, String[] row) {
        return new Requirement<>(
                parameter,
                row[2].isEmpty() ? Optional.empty() : Optional.of(parameter.parse(row[2])),
                row[3].isEmpty() ? Optional.empty() : Optional.of(parameter.parse(row[3])),
                row[5],
                switch (row[4]) {
                    case "must" -> Weight.MUST_BE_KNOWN;
                    case "counts" -> Weight.COUNTS_IF_KNOWN;
                    case "says" -> Weight.FOR_INFORMATION;
                    default -> throw new IllegalStateException("weight " + row[4]);
                },
                citation(row[6], row[7], row[8]));
    }

    private static Citation citation(String text, String year, String backing) {
        return new Citation(
                text,
                year.isEmpty() ? 0 : Integer.parseInt(year),
                switch (backing) {
                    case "verified" -> Backing.VERIFIED;
                    case "memory" -> Backing.FROM_MEMORY;
                    case "practice" -> Backing.COMMON_PRACTICE;
                    default -> throw new IllegalStateException("backing " + backing);
                });
    }

    private static CautionTopic topic(String word) {
        return Stream.of(CautionTopic.values())
                .filter(topic -> topic.toString().equals(word))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<String[]> rows(String file) {
        try (InputStream in = VerdictTables.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException(file + " is missing beside " + VerdictTables.class.getName());
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines().toList().stream()
                            .filter(line -> !line.startsWith("#"))
                            .map(line -> line.split("; ?", -1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
