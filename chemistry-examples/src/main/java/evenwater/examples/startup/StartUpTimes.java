package evenwater.examples.startup;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Starts {@link FirstAnswer} again and again, each time in a Java machine of its own, and prints medians.
 *
 * <p>The ways to start take turns, so that a busy computer disturbs all alike. Time on the clock is what a person waits; time of the processor, told
 * where there is a Linux {@code /proc}, hardly depends on what else runs.
 */
public final class StartUpTimes {

    /** The unit of times in {@code /proc}: 1/100 s on every usual Linux. */
    private static final double MILLISECONDS_PER_TICK = 10;

    private StartUpTimes() {}

    /**
     * Prints the medians.
     *
     * @param args number of rounds; the answers of {@link FirstAnswer}, separated by commas; then one or more ways to start: a java with its options, each
     *     in one argument, separated by blanks
     * @throws IOException if a Java machine cannot be started
     * @throws InterruptedException if the wait for one is interrupted
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        int rounds = Integer.parseInt(args[0]);
        List<String> ways = Arrays.asList(args).subList(2, args.length);
        System.out.println(
                rounds + " rounds in turns, median, start to end: ms on the clock (quartiles), ms of the processor");
        for (String answer : args[1].split(",", -1)) {
            double[][] clock = new double[ways.size()][rounds];
            double[][] processor = new double[ways.size()][rounds];
            for (int round = -1; round < rounds; round++) { // the first warms the caches of the file system
                for (int way = 0; way < ways.size(); way++) {
                    double used = processorMilliseconds();
                    long start = System.nanoTime();
                    run(ways.get(way), answer);
                    clock[way][Math.max(round, 0)] = (System.nanoTime() - start) / 1e6;
                    processor[way][Math.max(round, 0)] = processorMilliseconds() - used;
                }
            }
            for (int way = 0; way < ways.size(); way++) {
                System.out.printf(
                        Locale.ROOT,
                        "%-10s  %6.0f (%.0f-%.0f)  %6.0f  %s%n",
                        answer,
                        quantile(clock[way], 0.5),
                        quantile(clock[way], 0.25),
                        quantile(clock[way], 0.75),
                        quantile(processor[way], 0.5),
                        ways.get(way));
            }
        }
    }

    private static void run(String way, String answer) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(way.split(" ", -1)));
        command.addAll(List.of(
                "-cp", System.getProperty("java.class.path"), "evenwater.examples.startup.FirstAnswer", answer));
        int exit = new ProcessBuilder(command)
                .redirectOutput(Redirect.DISCARD)
                .redirectError(Redirect.INHERIT)
                .start()
                .waitFor();
        if (exit != 0) {
            throw new IllegalStateException("exit code " + exit + " of " + command);
        }
    }

    /** What all children that have ended used: the fields cutime and cstime, the 16th and 17th, of proc(5). */
    private static double processorMilliseconds() throws IOException {
        Path stat = Path.of("/proc/self/stat");
        if (!Files.exists(stat)) {
            return Double.NaN;
        }
        String text = Files.readString(stat);
        String[] behindTheName = text.substring(text.lastIndexOf(')') + 2).split(" ", -1);
        return (Long.parseLong(behindTheName[13]) + Long.parseLong(behindTheName[14])) * MILLISECONDS_PER_TICK;
    }

    private static double quantile(double[] values, double share) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }
}
