package evenwater.firmware;

import com.github.javaparser.ast.Node;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The names that a body may use. */
final class Scope {

    /**
     * A variable.
     *
     * @param c its name in C
     * @param type of it
     * @param length of an array, as C writes it; empty where none is known
     */
    record Variable(String c, Type type, String length) {}

    final Function function;
    final Kernel kernel;
    private final Map<String, Variable> variables = new HashMap<>();

    Scope(Kernel kernel, Function function) {
        this.kernel = kernel;
        this.function = function;
        for (Function.Parameter each : function.parameters) {
            variables.put(each.java, new Variable(each.c, each.type, each.measured ? each.length() : ""));
        }
    }

    String owner() {
        return function.owner;
    }

    void put(String java, Type type, String length) {
        variables.put(java, new Variable(Names.variable("", java), type, length));
    }

    @Nullable
    Variable find(String java) {
        return variables.get(java);
    }

    Variable get(String java, Node where) {
        Variable variable = variables.get(java);
        if (variable == null) {
            throw new UnsupportedJavaException(owner(), where, "the name " + java);
        }
        return variable;
    }

    /** The field of the object that a method belongs to, where a bare name means one. */
    boolean isField(String name) {
        return function.hasThis()
                && kernel.fields(owner()).stream()
                        .anyMatch(field -> field.getNameAsString().equals(name));
    }

    UnsupportedJavaException refuse(Node where, String what) {
        return new UnsupportedJavaException(owner(), where, what);
    }
}
