package evenwater.firmware;

import com.github.javaparser.JavaParser;
import com.github.javaparser.ParseResult;
import com.github.javaparser.ParserConfiguration;
import com.github.javaparser.ast.CompilationUnit;
import com.github.javaparser.ast.ImportDeclaration;
import com.github.javaparser.ast.body.EnumConstantDeclaration;
import com.github.javaparser.ast.body.EnumDeclaration;
import com.github.javaparser.ast.body.FieldDeclaration;
import com.github.javaparser.ast.body.TypeDeclaration;
import com.github.javaparser.ast.body.VariableDeclarator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The parsed classes of the kernel that are translated, and what their names mean. */
final class Kernel {

    private final Map<String, TypeDeclaration<?>> types = new LinkedHashMap<>();
    private final Map<String, Map<String, String>> imports = new LinkedHashMap<>();

    private Kernel() {}

    /** Reads the classes from the directory of their package. */
    static Kernel read(Path directory, List<String> classes) throws IOException {
        JavaParser parser =
                new JavaParser(new ParserConfiguration().setLanguageLevel(ParserConfiguration.LanguageLevel.JAVA_17));
        Kernel kernel = new Kernel();
        for (String name : classes) {
            Path file = directory.resolve(name + ".java");
            ParseResult<CompilationUnit> result = parser.parse(Files.readString(file, StandardCharsets.UTF_8));
            CompilationUnit unit = result.getResult()
                    .filter(ignored -> result.isSuccessful())
                    .orElseThrow(
                            () -> new IllegalArgumentException("cannot read " + file + ": " + result.getProblems()));
            kernel.add(name, unit);
        }
        return kernel;
    }

    private void add(String name, CompilationUnit unit) {
        types.put(name, unit.getType(0));
        Map<String, String> statics = new LinkedHashMap<>();
        for (ImportDeclaration each : unit.getImports()) {
            if (each.isStatic()) {
                String full = each.getNameAsString();
                String owner = full.substring(0, full.lastIndexOf('.'));
                statics.put(each.getName().getIdentifier(), owner.substring(owner.lastIndexOf('.') + 1));
            }
        }
        imports.put(name, statics);
    }

    /** The classes in the order in which they were asked for. */
    List<String> classes() {
        return List.copyOf(types.keySet());
    }

    boolean isClass(String name) {
        return types.containsKey(name);
    }

    TypeDeclaration<?> type(String owner) {
        return Objects.requireNonNull(types.get(owner), owner);
    }

    boolean isTable(String owner) {
        return isClass(owner) && type(owner).isEnumDeclaration();
    }

    List<EnumConstantDeclaration> rows(String owner) {
        return ((EnumDeclaration) type(owner)).getEntries();
    }

    /** Fields that an instance of the class has. */
    List<VariableDeclarator> fields(String owner) {
        return type(owner).getFields().stream()
                .filter(field -> !field.isStatic())
                .flatMap(field -> field.getVariables().stream())
                .toList();
    }

    /** Constants of the class that are numbers. */
    List<VariableDeclarator> constants(String owner) {
        return type(owner).getFields().stream()
                .filter(FieldDeclaration::isStatic)
                .flatMap(field -> field.getVariables().stream())
                .filter(variable -> variable.getType().isPrimitiveType())
                .toList();
    }

    @Nullable
    VariableDeclarator constant(String owner, String name) {
        return constants(owner).stream()
                .filter(variable -> variable.getNameAsString().equals(name))
                .findFirst()
                .orElse(null);
    }

    /** Whose constant a bare name in a class is; null if it is none. */
    @Nullable
    String ownerOfConstant(String from, String name) {
        if (constant(from, name) != null) {
            return from;
        }
        String imported = imports.getOrDefault(from, Map.of()).get(name);
        return imported != null && isClass(imported) && constant(imported, name) != null ? imported : null;
    }

    /** The enum whose values an array of a class holds; null if the name is no such array. */
    @Nullable
    String tableOfArray(String owner, String name) {
        return type(owner).getFields().stream()
                .filter(FieldDeclaration::isStatic)
                .flatMap(field -> field.getVariables().stream())
                .filter(variable -> variable.getNameAsString().equals(name))
                .filter(variable -> variable.getType().isArrayType())
                .map(variable ->
                        variable.getType().asArrayType().getComponentType().asString())
                .filter(this::isTable)
                .findFirst()
                .orElse(null);
    }

    /** A constant of a class inside a class, such as limits of an enum. */
    @Nullable
    VariableDeclarator nestedConstant(String outer, String inner, String name) {
        return type(outer).getMembers().stream()
                .filter(member -> member.isClassOrInterfaceDeclaration())
                .map(member -> member.asClassOrInterfaceDeclaration())
                .filter(nested -> nested.getNameAsString().equals(inner))
                .flatMap(nested -> nested.getFields().stream())
                .flatMap(field -> field.getVariables().stream())
                .filter(variable -> variable.getNameAsString().equals(name))
                .findFirst()
                .orElse(null);
    }
}
