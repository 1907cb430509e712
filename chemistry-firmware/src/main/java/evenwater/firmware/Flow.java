package evenwater.firmware;

import com.github.javaparser.ast.body.VariableDeclarator;
import com.github.javaparser.ast.expr.AssignExpr;
import com.github.javaparser.ast.expr.Expression;
import com.github.javaparser.ast.expr.FieldAccessExpr;
import com.github.javaparser.ast.expr.MethodCallExpr;
import com.github.javaparser.ast.expr.UnaryExpr;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Finds out which parameters a function changes what they point to, itself or by what it calls, and which arrays must bring their length
 * along: C asks for {@code const} and for a length where Java asks for neither.
 */
final class Flow {

    private final Kernel kernel;
    private final Functions functions;
    private boolean news;

    Flow(Kernel kernel, Functions functions) {
        this.kernel = kernel;
        this.functions = functions;
    }

    void follow() {
        do {
            news = false;
            functions.all().forEach(this::look);
        } while (news);
    }

    private void look(Function f) {
        Map<String, Function.Parameter> roots = roots(f);
        for (AssignExpr each : f.body.findAll(AssignExpr.class)) {
            markChanged(f, roots, each.getTarget());
        }
        for (UnaryExpr each : f.body.findAll(UnaryExpr.class)) {
            if (isStep(each)) {
                markChanged(f, roots, each.getExpression());
            }
        }
        for (FieldAccessExpr each : f.body.findAll(FieldAccessExpr.class)) {
            Function.Parameter root = root(f, roots, each.getScope());
            if (each.getNameAsString().equals("length") && root != null && root.type.isPlainArray()) {
                news |= !root.measured;
                root.measured = true;
            }
        }
        for (MethodCallExpr each : f.body.findAll(MethodCallExpr.class)) {
            call(f, roots, each);
        }
    }

    /** Whether an expression changes its variable by one. */
    static boolean isStep(UnaryExpr e) {
        return switch (e.getOperator()) {
            case PREFIX_INCREMENT, PREFIX_DECREMENT, POSTFIX_INCREMENT, POSTFIX_DECREMENT -> true;
            default -> false;
        };
    }

    /** Parameters by name, and local names of arrays that belong to them. */
    private Map<String, Function.Parameter> roots(Function f) {
        Map<String, Function.Parameter> roots = new HashMap<>();
        f.parameters.forEach(parameter -> roots.put(parameter.java, parameter));
        for (VariableDeclarator each : f.body.findAll(VariableDeclarator.class)) {
            if (each.getType().isArrayType() && each.getInitializer().isPresent()) {
                Function.Parameter root = root(f, roots, each.getInitializer().get());
                if (root != null) {
                    roots.put(each.getNameAsString(), root);
                }
            }
        }
        return roots;
    }

    private Function.@Nullable Parameter root(Function f, Map<String, Function.Parameter> roots, Expression e) {
        if (e.isEnclosedExpr()) {
            return root(f, roots, e.asEnclosedExpr().getInner());
        }
        if (e.isArrayAccessExpr()) {
            return root(f, roots, e.asArrayAccessExpr().getName());
        }
        if (e.isFieldAccessExpr()) {
            return root(f, roots, e.asFieldAccessExpr().getScope());
        }
        if (!e.isNameExpr()) {
            return null;
        }
        String name = e.asNameExpr().getNameAsString();
        boolean isField = f.hasThis()
                && kernel.fields(f.owner).stream()
                        .anyMatch(field -> field.getNameAsString().equals(name));
        return roots.get(isField ? "this" : name);
    }

    private void markChanged(Function f, Map<String, Function.Parameter> roots, Expression target) {
        if (target.isArrayAccessExpr()) {
            change(root(f, roots, target));
        }
    }

    private void change(Function.@Nullable Parameter root) {
        if (root != null) {
            news |= !root.changed;
            root.changed = true;
        }
    }

    private void call(Function f, Map<String, Function.Parameter> roots, MethodCallExpr e) {
        String text = e.getScope().map(Expression::toString).orElse(f.owner);
        if (e.getNameAsString().equals("arraycopy")) {
            change(root(f, roots, e.getArgument(2)));
            return;
        }
        if (e.getNameAsString().equals("fill")) {
            change(root(f, roots, e.getArgument(0)));
            return;
        }
        List<Expression> arguments = new ArrayList<>(e.getArguments());
        Function.Parameter self = roots.get(text);
        String owner = self == null ? text : self.type.owner();
        Function called = functions.find(owner, e.getNameAsString(), arguments.size());
        if (called == null) {
            return;
        }
        if (called.hasThis()) {
            e.getScope().ifPresent(scope -> arguments.add(0, scope));
        }
        for (int i = 0; i < arguments.size(); i++) {
            Function.Parameter root = root(f, roots, arguments.get(i));
            Function.Parameter parameter = called.parameters.get(i);
            if (root != null && parameter.type.isPointer() && parameter.changed) {
                change(root);
            }
            if (root != null && parameter.measured) {
                news |= !root.measured;
                root.measured = true;
            }
        }
    }
}
