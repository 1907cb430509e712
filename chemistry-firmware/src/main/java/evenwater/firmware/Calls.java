package evenwater.firmware;

import com.github.javaparser.ast.expr.Expression;
import com.github.javaparser.ast.expr.MethodCallExpr;
import evenwater.firmware.Expressions.C;
import java.util.ArrayList;
import java.util.List;

/** Calls of the kernel's own methods, and of the few of Java's library that it uses. */
final class Calls {

    private final Scope scope;
    private final Functions functions;
    private final Expressions expressions;

    Calls(Scope scope, Functions functions, Expressions expressions) {
        this.scope = scope;
        this.functions = functions;
        this.expressions = expressions;
    }

    C c(MethodCallExpr e) {
        String of = e.getScope().map(Expression::toString).orElse(scope.owner());
        Scope.Variable variable = scope.find(of);
        if (variable != null && variable.type().form() == Type.Form.TABLE) {
            return column(e, variable);
        }
        String owner = variable == null ? of : variable.type().owner();
        Function called =
                functions.find(owner, e.getNameAsString(), e.getArguments().size());
        return called == null ? library(e, of + "." + e.getNameAsString()) : own(e, called);
    }

    /** A column of a table, at the row that an enum's value is. */
    private C column(MethodCallExpr e, Scope.Variable row) {
        String table = Names.prefix(row.type().owner());
        Type type = e.getNameAsString().equals("place") ? Type.INT : Type.LONG;
        return Expressions.atom(
                table + "_table[ew_at(" + row.c() + ", "
                        + Names.constant(row.type().owner(), "VALUES") + ")]." + e.getNameAsString(),
                type);
    }

    private C own(MethodCallExpr e, Function called) {
        List<Expression> given = new ArrayList<>(e.getArguments());
        if (called.hasThis()) {
            given.add(0, e.getScope().orElseThrow(() -> scope.refuse(e, "a call without an object")));
        }
        List<String> arguments = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            arguments.add(expressions.text(given.get(i)));
            if (called.parameters.get(i).measured) {
                arguments.add(expressions.length(given.get(i)));
            }
        }
        return Expressions.atom(called.innerName() + "(" + String.join(", ", arguments) + ")", called.type);
    }

    private C library(MethodCallExpr e, String name) {
        List<C> arguments = e.getArguments().stream().map(expressions::c).toList();
        String list = String.join(", ", arguments.stream().map(C::text).toList());
        return switch (name) {
            case "Math.min", "Math.max", "Math.abs", "Math.ceil" -> math(e, arguments, list);
            case "Double.doubleToRawLongBits" -> Expressions.atom("ew_bits(" + list + ")", Type.LONG);
            case "Double.longBitsToDouble" -> Expressions.atom("ew_double(" + list + ")", Type.DOUBLE);
            case "System.arraycopy" ->
                Expressions.atom(
                        "ew_copy(" + arguments.get(0).text() + " + "
                                + arguments.get(1).text() + ", "
                                + arguments.get(2).text() + " + "
                                + arguments.get(3).text() + ", "
                                + arguments.get(4).text() + ")",
                        Type.NOTHING);
            case "Arrays.fill" ->
                Expressions.atom(
                        "ew_fill(" + arguments.get(0).text() + "->values, " + expressions.length(e.getArgument(0))
                                + ", " + arguments.get(1).text() + ")",
                        Type.NOTHING);
            default -> throw scope.refuse(e, "a call of " + name);
        };
    }

    private C math(MethodCallExpr e, List<C> arguments, String list) {
        Type type = arguments.get(0).type();
        for (C each : arguments) {
            type = Type.promoted(type, each.type());
        }
        String name = "ew_" + e.getNameAsString();
        if (type.form() == Type.Form.DOUBLE) {
            return Expressions.atom(name + "_double(" + list + ")", Type.DOUBLE);
        }
        if (e.getNameAsString().equals("ceil")) {
            throw scope.refuse(e, "a ceiling of whole numbers");
        }
        // a smaller or larger int stays one
        String call = name + "(" + list + ")";
        return Expressions.atom(type.form() == Type.Form.INT ? "ew_to_int(" + call + ")" : call, type);
    }
}
