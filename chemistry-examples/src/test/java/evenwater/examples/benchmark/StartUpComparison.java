package evenwater.examples.benchmark;

import evenwater.chemistry.quantity.Hardness;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Unit;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;
import tech.uom.lib.common.function.SymbolSupplier;

/**
 * How much longer a program takes from start to end, and how many classes more it loads, for its first conversion.
 *
 * <p>Small programs run in Java machines of their own, in turns, so that a busy computer disturbs all alike; medians are compared.
 * Each runs in two ways: it prints its number and nothing else, or a sentence joined with {@code +}, as most programs do: for that
 * alone Java loads some of the classes that the first conversion needs too.
 */
public final class StartUpComparison {

    private static final int ROUNDS = 15;
    private static final List<Class<?>> PROGRAMS =
            List.of(Bare.class, UnitClass.class, Typed.class, Parsed.class, Indriya.class);

    /** This class, Evenwater, and the jars it comes with. */
    private static final String CLASS_PATH = Stream.of(
                    StartUpComparison.class, Hardness.class, Unit.class, Units.class, SymbolSupplier.class)
            .map(type -> URI.create(
                    type.getProtectionDomain().getCodeSource().getLocation().toString()))
            .map(location -> Path.of(location).toString())
            .collect(Collectors.joining(File.pathSeparator));

    private StartUpComparison() {}

    /** Doubles alone: what the others are compared with. */
    static final class Bare {
        public static void main(String[] args) {
            Output.print(args, Double.parseDouble(args[0]) * 0.959104679);
        }
    }

    /** Doubles alone, and the class that every unit of indriya and so of ours extends. */
    static final class UnitClass {
        public static void main(String[] args) throws ClassNotFoundException {
            Class.forName("tech.units.indriya.AbstractUnit");
            Output.print(args, Double.parseDouble(args[0]) * 0.959104679);
        }
    }

    /** A first typed conversion. */
    static final class Typed {
        public static void main(String[] args) {
            Hardness tap = Hardness.of(Double.parseDouble(args[0]), Hardness.GRAIN_PER_US_GALLON);
            Output.print(args, tap.in(Hardness.GERMAN_DEGREE));
        }
    }

    /** A first typed conversion of a text. */
    static final class Parsed {
        public static void main(String[] args) {
            Output.print(args, Hardness.parse(args[0].concat(" gpg")).in(Hardness.GERMAN_DEGREE));
        }
    }

    /** A first conversion by indriya alone. */
    static final class Indriya {
        public static void main(String[] args) {
            Output.print(
                    args,
                    Quantities.getQuantity(Double.parseDouble(args[0]), Units.METRE.multiply(0.959104679))
                            .to(Units.METRE)
                            .getValue()
                            .doubleValue());
        }
    }

    /** A class of its own, so that the programs do not load the comparison. */
    static final class Output {
        static void print(String[] args, double result) {
            if (args.length == 1) {
                System.out.println(result);
            } else {
                System.out.println(args[0] + " gpg is " + result + " °dH");
            }
        }
    }

    /** Prints the comparison. */
    public static void main(String[] args) throws IOException, InterruptedException {
        compare("printing a number", "22");
        compare("printing a sentence", "22", "sentence");
    }

    private static void compare(String title, String... arguments) throws IOException, InterruptedException {
        double[][] milliseconds = new double[PROGRAMS.size()][ROUNDS];
        for (int round = -1; round < ROUNDS; round++) { // the first warms the caches of the file system
            for (int i = 0; i < PROGRAMS.size(); i++) {
                long start = System.nanoTime();
                run(List.of(), PROGRAMS.get(i), arguments);
                milliseconds[i][Math.max(round, 0)] = (System.nanoTime() - start) / 1e6;
            }
        }
        System.out.println("\n" + title + ", start to end, " + ROUNDS + " rounds");
        System.out.println("program   median ms    quartiles  to bare  classes  of indriya");
        double bare = quantile(milliseconds[0], 0.5);
        for (int i = 0; i < PROGRAMS.size(); i++) {
            List<String> loaded = run(List.of("-Xlog:class+load"), PROGRAMS.get(i), arguments).stream()
                    .filter(line -> line.contains(" source: "))
                    .toList();
            System.out.printf(
                    Locale.ROOT,
                    "%-9s %9.1f  %5.1f-%5.1f  %7.2f  %7d  %10d%n",
                    PROGRAMS.get(i).getSimpleName(),
                    quantile(milliseconds[i], 0.5),
                    quantile(milliseconds[i], 0.25),
                    quantile(milliseconds[i], 0.75),
                    quantile(milliseconds[i], 0.5) / bare,
                    loaded.size(),
                    loaded.stream()
                            .filter(line -> line.contains(" tech.units.indriya."))
                            .count());
        }
    }

    private static double quantile(double[] values, double share) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }

    /** Runs a program in a Java machine of its own and returns what it printed. */
    private static List<String> run(List<String> options, Class<?> program, String... arguments)
            throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command = Stream.of(
                        Stream.of(java),
                        options.stream(),
                        Stream.of("-cp", CLASS_PATH, program.getName()),
                        Stream.of(arguments))
                .flatMap(part -> part)
                .toList();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        List<String> printed;
        try (BufferedReader reader = process.inputReader(StandardCharsets.UTF_8)) {
            printed = reader.lines().toList();
        }
        if (process.waitFor() != 0) {
            throw new IllegalStateException(String.join("\n", printed));
        }
        return printed;
    }
}
