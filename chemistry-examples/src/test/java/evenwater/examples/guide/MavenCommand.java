package evenwater.examples.guide;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A command line that a page prints, with what in it does not exist. */
final class MavenCommand {

    /** What pages may ask for; whoever prints another one adds it here. */
    private static final Set<String> GOALS = Set.of(
            "compile",
            "exec:java",
            "install",
            "integration-test",
            "org.pitest:pitest-maven:mutationCoverage",
            "package",
            "process-test-classes",
            "spotless:apply",
            "test",
            "test-compile",
            "verify");

    private static final Set<String> SWITCHES = Set.of("-q", "-B", "-ntp", "-o", "-am", "-DskipTests");

    private static final Set<String> PROPERTIES = Set.of(
            "-Dexec.args",
            "-Dexec.classpathScope",
            "-Dexec.mainClass",
            "-Dfirmware.exhaustive",
            "-Dfirmware.write",
            "-Dfuzz.texts",
            "-Djmh.args",
            "-Dkit.searches",
            "-Dkit.waters",
            "-Dpage.questions",
            "-Dpictures.write",
            "-Dsheets.write",
            "-Dsurefire.failIfNoSpecifiedTests",
            "-Dtest",
            "-Dvalidation.write");

    private static final Pattern WORD = Pattern.compile("(?:[^\\s\"']|\"[^\"]*\"|'[^']*')+");

    private MavenCommand() {}

    /** Words of a command that no build of this repository knows. */
    static List<String> unknown(String command) {
        List<String> words = WORD.matcher(command).results().map(m -> m.group()).collect(Collectors.toList());
        List<String> unknown = new ArrayList<>();
        for (int i = 1; i < words.size(); i++) {
            String word = words.get(i);
            if (word.equals("-pl")) {
                i++;
                checkModules(words.get(i), unknown);
            } else if (!(GOALS.contains(word) || SWITCHES.contains(word) || isProfile(word) || isProperty(word))) {
                unknown.add(word);
            }
        }
        return unknown;
    }

    private static void checkModules(String list, List<String> unknown) {
        for (String module : list.split(",", -1)) {
            if (!Files.exists(Page.ROOT.resolve(module).resolve("pom.xml"))) {
                unknown.add(module);
            }
        }
    }

    private static boolean isProfile(String word) {
        return Set.of("-Pbenchmark", "-Pimage", "-Plive-page", "-Pmutation", "-Ptravel")
                .contains(word);
    }

    private static boolean isProperty(String word) {
        Matcher m =
                Pattern.compile("(?<name>-D[\\w.]+)=[\"']?(?<value>.*?)[\"']?").matcher(word);
        if (!m.matches() || !PROPERTIES.contains(m.group("name"))) {
            return false;
        }
        boolean namesClass = m.group("name").equals("-Dtest") || m.group("name").equals("-Dexec.mainClass");
        return !namesClass || m.group("value").contains("*") || Sources.has(simpleName(m.group("value")));
    }

    private static String simpleName(String name) {
        return name.substring(name.lastIndexOf('.') + 1);
    }
}
