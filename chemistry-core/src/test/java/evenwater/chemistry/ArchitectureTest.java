package evenwater.chemistry;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import evenwater.chemistry.quantity.WaterQuantity;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The plan of the house as rules: which room may know which, what callers may see, how long a file may be. */
class ArchitectureTest {

    private static final String ROOT = "evenwater.chemistry";

    /** From the ground up: each room may know those before it. Rooms that are not built yet have their place already. */
    private static final List<String> ROOMS = List.of(
            "kernel quantity uncertainty substance water equilibrium instrument exchange analysis treatment planning control verdict recipe aquarium worked"
                    .split(" "));

    /** Public types that are neither final nor sealed, with the reason. */
    private static final Map<String, String> OPEN_TYPES = Map.of(
            "quantity.WaterQuantity",
                    "what all kinds share; a package-private constructor keeps others from extending it",
            "treatment.Treatment", "a house may have a treatment of its own");

    /** Types with fields that change, builders apart, with the reason. */
    private static final Map<String, String> CHANGING_TYPES = Map.of(
            "analysis.HardnessReader", "the working notes of one reading, never shared",
            "analysis.Interpreter", "the working notes of one interpretation, never shared",
            "kernel.SpeciationState", "the arrays of one thread, written by the solver that allocates nothing",
            "kernel.TemperatureConstants", "a memory of the last temperature, one immutable value",
            "quantity.UnitNames", "filled while the constant of its kind is made, not changed afterwards",
            "substance.FormulaReader", "the cursor of one reading, never shared");

    private static final int LONGEST_FILE = 400;

    /** Source files with more lines than {@link #LONGEST_FILE}, with the reason. */
    private static final Map<String, String> LONG_FILES =
            Map.of("Ion.java", "a table: one constant with its Javadoc for each of some forty ions");

    private static final Path CLASSES = locationOf(WaterQuantity.class);
    private static final Path PROJECT = parentOfModule(CLASSES);
    private static final JavaClasses MAIN = new ClassFileImporter().importPath(CLASSES);
    private static final ModuleDescriptor MODULE =
            ModuleFinder.of(CLASSES).find(ROOT).orElseThrow().descriptor();

    @ParameterizedTest
    @FieldSource("ROOMS")
    void aRoomKnowsOnlyTheRoomsBeforeIt(String room) {
        List<String> later = ROOMS.subList(ROOMS.indexOf(room) + 1, ROOMS.size());
        noClasses()
                .that()
                .resideInAPackage(in(room))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages(later))
                .because("each room knows only those before it in " + ROOMS
                        + ": move the class up into the later room, or the type that it needs down into an earlier one")
                .allowEmptyShould(true)
                .check(MAIN);
    }

    @Test
    void everyClassLivesInARoom() {
        classes()
                .should()
                .resideInAnyPackage(packages(ROOMS))
                .because(
                        "packages are the rooms of the plan: move the class into one, or give the new room its place in "
                                + "ROOMS of this test")
                .check(MAIN);
    }

    @Test
    void packagesFormNoCircle() {
        slices().matching(ROOT + ".(**)")
                .should()
                .beFreeOfCycles()
                .because("packages that need each other are one package: move the type that closes the circle")
                .check(MAIN);
    }

    @Test
    void theKernelUsesNothingButTheLanguage() {
        classes()
                .that()
                .resideInAPackage(in("kernel"))
                .and()
                .doNotHaveSimpleName("package-info") // its @NullMarked is for the compiler only
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("java.lang..", "java.util..", in("kernel"))
                .because(
                        "firmware and browsers carry the kernel alone: take and return plain doubles with the unit in the "
                                + "name, and convert in the room that calls")
                .check(MAIN);
    }

    @Test
    void onlyQuantityUsesIndriya() {
        noClasses()
                .that()
                .resideOutsideOfPackage(in("quantity"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("tech.units..")
                .because(
                        "indriya is how units are made: use a kind or a unit of the package quantity, or add one there")
                .check(MAIN);
    }

    @Test
    void onlyRecipeUsesHipparchus() {
        noClasses()
                .that()
                .resideOutsideOfPackage(in("recipe"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.hipparchus..")
                .because("the solver of linear programmes is how recipes are found: ask the package recipe")
                .check(MAIN);
    }

    @Test
    void callersSeeNoTypeOfIndriyaNorHipparchus() {
        List<String> seen = MAIN.stream()
                .filter(ArchitectureTest::isVisible)
                .flatMap(type -> Stream.concat(
                        supertypes(type)
                                .filter(ArchitectureTest::isHidden)
                                .map(t -> type.getName() + " is a " + t.getName()),
                        type.getAllMembers().stream()
                                .filter(member -> isVisible(member.getModifiers()))
                                .filter(member -> types(member).anyMatch(ArchitectureTest::isHidden))
                                .map(JavaMember::getFullName)))
                .sorted()
                .toList();
        assertEquals(
                List.of(),
                seen,
                "say javax.measure.Unit, Quantity or a type of ours instead, or make it package-private:");
    }

    @Test
    void everyPackageIsExported() {
        Set<String> exported =
                MODULE.exports().stream().map(ModuleDescriptor.Exports::source).collect(Collectors.toSet());
        assertSame(MODULE.packages(), exported, "add 'exports <package>;' to module-info.java");
    }

    @Test
    void everyPackageIsNullMarked() {
        Set<String> marked = MAIN.stream()
                .filter(type -> type.getSimpleName().equals("package-info"))
                .filter(type -> type.isAnnotatedWith(NullMarked.class))
                .map(JavaClass::getPackageName)
                .collect(Collectors.toSet());
        assertSame(
                MODULE.packages(), marked, "add a package-info.java with @NullMarked, its purpose and where to start");
    }

    @Test
    void publicTypesAreFinalOrSealed() {
        Set<String> open = namesOf(type -> isVisible(type)
                && !type.getModifiers().contains(JavaModifier.FINAL)
                && !type.isEnum()
                && !type.reflect().isSealed());
        assertSame(OPEN_TYPES.keySet(), open, "make it a record, an enum, final or sealed; or list it in OPEN_TYPES");
    }

    @Test
    void onlyBuildersChange() {
        Set<String> changing = namesOf(type -> !type.getSimpleName().endsWith("Builder")
                && type.getFields().stream()
                        .anyMatch(field -> !field.getModifiers().contains(JavaModifier.FINAL)));
        assertSame(CHANGING_TYPES.keySet(), changing, "make its fields final; or list it in CHANGING_TYPES");
    }

    @Test
    void noFileIsLongWithoutAReason() {
        Set<String> tooLong = modules()
                .flatMap(module -> files(module.resolve("src")))
                .filter(file -> file.toString().endsWith(".java"))
                .filter(file -> text(file).lines().count() > LONGEST_FILE)
                .map(file -> file.getFileName().toString())
                .collect(Collectors.toSet());
        assertSame(LONG_FILES.keySet(), tooLong, "split it along what it does; or list it in LONG_FILES");
    }

    @Test
    void theExamplesUseWhatEveryCallerCanUse() {
        Path examples = PROJECT.resolve("chemistry-examples");
        Set<String> opening = Stream.concat(Stream.of(examples.resolve("pom.xml")), files(examples.resolve("src/main")))
                .filter(file -> text(file).contains("--add-exports"))
                .map(file -> PROJECT.relativize(file).toString())
                .collect(Collectors.toSet());
        assertSame(Set.of(), opening, "remove --add-exports; make public in chemistry-core what callers need");
    }

    /** Compares in both directions, so that an exception which is no longer needed is taken off its list. */
    private static void assertSame(Set<String> allowed, Set<String> found, String whatToDo) {
        assertEquals(new TreeSet<>(allowed), new TreeSet<>(found), whatToDo + " (or take off what is no longer true):");
    }

    private static String in(String room) {
        return ROOT + "." + room + "..";
    }

    private static String[] packages(List<String> rooms) {
        return rooms.stream().map(ArchitectureTest::in).toArray(String[]::new);
    }

    /** Names below the root package, such as {@code water.Water}. */
    private static Set<String> namesOf(Predicate<JavaClass> chosen) {
        return MAIN.stream()
                .filter(type -> !type.getSimpleName().equals("package-info"))
                .filter(chosen)
                .map(type -> type.getName().substring(ROOT.length() + 1))
                .collect(Collectors.toSet());
    }

    private static boolean isVisible(JavaClass type) {
        return isVisible(type.getModifiers())
                && type.getEnclosingClass().map(ArchitectureTest::isVisible).orElse(true);
    }

    private static boolean isVisible(Set<JavaModifier> modifiers) {
        return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
    }

    private static boolean isHidden(JavaClass type) {
        return type.getPackageName().startsWith("tech.units")
                || type.getPackageName().startsWith("org.hipparchus");
    }

    /** Everything that a type is, also between angle brackets. */
    private static Stream<JavaClass> supertypes(JavaClass type) {
        return involved(Stream.of(
                type.getSuperclass().stream().toList(),
                type.getInterfaces(),
                type.getTypeParameters(),
                type.getAllRawSuperclasses(),
                type.getAllRawInterfaces()));
    }

    /** Every type in the signature of a field, method or constructor, also between angle brackets. */
    private static Stream<JavaClass> types(JavaMember member) {
        return member instanceof JavaCodeUnit code
                ? involved(Stream.of(
                        List.of(code.getReturnType()),
                        code.getParameterTypes(),
                        code.getExceptionTypes(),
                        code.getTypeParameters()))
                : involved(Stream.of(List.of(((JavaField) member).getType())));
    }

    private static Stream<JavaClass> involved(Stream<Collection<? extends JavaType>> parts) {
        return parts.flatMap(Collection::stream).flatMap(part -> part.getAllInvolvedRawTypes().stream());
    }

    private static Path locationOf(Class<?> type) {
        return Path.of(URI.create(
                type.getProtectionDomain().getCodeSource().getLocation().toString()));
    }

    private static Path parentOfModule(Path classes) {
        Path directory = classes;
        while (!Files.exists(directory.resolve("pom.xml"))) {
            directory = directory.getParent();
        }
        return directory.getParent();
    }

    private static Stream<Path> modules() {
        try (Stream<Path> found = Files.list(PROJECT)) {
            return found.filter(directory -> Files.exists(directory.resolve("src"))).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Path> files(Path directory) {
        try (Stream<Path> found = Files.walk(directory)) {
            return found.filter(Files::isRegularFile).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1); // any byte is a character; lines stay lines
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
