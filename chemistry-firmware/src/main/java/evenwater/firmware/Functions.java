package evenwater.firmware;

import com.github.javaparser.ast.body.CallableDeclaration;
import com.github.javaparser.ast.body.ConstructorDeclaration;
import com.github.javaparser.ast.body.MethodDeclaration;
import com.github.javaparser.ast.body.Parameter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** All methods that are translated. */
final class Functions {

    /** What C has no need of, or has by itself. */
    private static final Set<String> LEFT_OUT = Set.of(
            "ValveState.copyFrom", // an assignment of structs
            "ValveSetting.place",
            "ValveCount.place",
            "ValveCount.most",
            "ValveSetting.least",
            "ValveSetting.most",
            "ValveSetting.usual"); // columns of tables

    /** Classes whose whole numbers are answers and no status. */
    private static final Set<String> ANSWERING = Set.of("ValveRule");

    private final Kernel kernel;
    private final List<Function> all = new ArrayList<>();

    /** All methods of the classes. */
    Functions(Kernel kernel) {
        this(kernel, method -> !LEFT_OUT.contains(method));
    }

    /** Those methods whose names, such as {@code ValveKernel.step}, are wanted. */
    Functions(Kernel kernel, Predicate<String> wanted) {
        this.kernel = kernel;
        for (String owner : kernel.classes()) {
            for (ConstructorDeclaration each : kernel.type(owner).getConstructors()) {
                if (each.isPublic() && !Names.isArrayStruct(owner)) {
                    add(owner, each, "init", Type.NOTHING);
                }
            }
            for (MethodDeclaration each : kernel.type(owner).getMethods()) {
                if (wanted.test(owner + "." + each.getNameAsString())) {
                    add(
                            owner,
                            each,
                            each.getNameAsString(),
                            type(owner, each.getType().asString(), each));
                }
            }
        }
        refuseSameNames();
        new Flow(kernel, this).follow();
    }

    List<Function> all() {
        return all;
    }

    private void add(String owner, CallableDeclaration<?> java, String javaName, Type type) {
        var body = java instanceof MethodDeclaration method
                ? method.getBody()
                        .orElseThrow(() -> new UnsupportedJavaException(owner, java, "a method without a body"))
                : ((ConstructorDeclaration) java).getBody();
        Function function = new Function(owner, java, body, type, role(owner, java, type), name(owner, java, javaName));
        if (!java.isStatic()) {
            String self = owner.endsWith("Settings") ? "settings" : "state";
            function.parameters.add(new Function.Parameter("this", self, Type.struct(owner)));
        }
        for (Parameter each : java.getParameters()) {
            String name = each.getNameAsString();
            String struct = Names.structOfArray(owner, name);
            Type parameter = struct.isEmpty() ? type(owner, each.getType().asString(), each) : Type.struct(struct);
            function.parameters.add(new Function.Parameter(name, Names.variable(owner, name), parameter));
        }
        all.add(function);
    }

    private static Function.Role role(String owner, CallableDeclaration<?> java, Type type) {
        if (!java.isPublic()) {
            return Function.Role.INNER;
        }
        boolean isStatus = type.form() == Type.Form.INT && !ANSWERING.contains(owner);
        return isStatus ? Function.Role.EVENT : Function.Role.QUERY;
    }

    /** Of methods that share a name, those with more parameters are told apart by the last. */
    private String name(String owner, CallableDeclaration<?> java, String javaName) {
        boolean isLonger = kernel.type(owner).getMethodsByName(javaName).stream()
                .anyMatch(other ->
                        other.getParameters().size() < java.getParameters().size());
        String suffix = isLonger
                ? "_with_"
                        + Names.snake(java.getParameters()
                                .get(java.getParameters().size() - 1)
                                .getNameAsString())
                : "";
        return Names.function(owner, javaName) + suffix;
    }

    private void refuseSameNames() {
        Set<String> names = new HashSet<>();
        for (Function each : all) {
            if (!names.add(each.name)) {
                throw new UnsupportedJavaException(each.owner, each.java, "a second function " + each.name);
            }
        }
    }

    Type type(String owner, String java, com.github.javaparser.ast.Node where) {
        return switch (java) {
            case "void" -> Type.NOTHING;
            case "boolean" -> Type.TRUTH;
            case "int" -> Type.INT;
            case "long" -> Type.LONG;
            case "double" -> Type.DOUBLE;
            case "long[]" -> Type.LONGS;
            case "double[]" -> Type.DOUBLES;
            default -> {
                if (!kernel.isClass(java)) {
                    throw new UnsupportedJavaException(owner, where, "type " + java);
                }
                yield kernel.isTable(java) ? Type.table(java) : Type.struct(java);
            }
        };
    }

    @Nullable
    Function find(String owner, String javaName, int arguments) {
        return all.stream()
                .filter(each -> each.owner.equals(owner)
                        && each.java.getNameAsString().equals(javaName)
                        && each.java.getParameters().size() == arguments)
                .findFirst()
                .orElse(null);
    }
}
