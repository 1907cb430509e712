package evenwater.firmware;

import com.github.javaparser.ast.body.VariableDeclarator;
import com.github.javaparser.ast.expr.BinaryExpr;
import com.github.javaparser.ast.expr.Expression;
import com.github.javaparser.ast.expr.FieldAccessExpr;
import com.github.javaparser.ast.expr.UnaryExpr;
import java.util.Optional;

/** The values of the kernel's constants, and how C writes a number. */
final class Constants {

    private final Kernel kernel;

    Constants(Kernel kernel) {
        this.kernel = kernel;
    }

    /** The value of a constant whole number; refused if it is none. */
    long whole(String owner, Expression expression) {
        return wholeIfConstant(owner, expression, "")
                .orElseThrow(() -> new UnsupportedJavaException(owner, expression, "as a constant this"));
    }

    /** The value of an expression if it is a constant whole number. */
    Optional<Long> wholeIfConstant(String owner, Expression expression) {
        return wholeIfConstant(owner, expression, "");
    }

    private Optional<Long> wholeIfConstant(String owner, Expression e, String nested) {
        if (e.isEnclosedExpr()) {
            return wholeIfConstant(owner, e.asEnclosedExpr().getInner(), nested);
        }
        if (e.isIntegerLiteralExpr()) {
            return Optional.of(e.asIntegerLiteralExpr().asNumber().longValue());
        }
        if (e.isLongLiteralExpr()) {
            return Optional.of(e.asLongLiteralExpr().asNumber().longValue());
        }
        if (e.isUnaryExpr() && e.asUnaryExpr().getOperator() == UnaryExpr.Operator.MINUS) {
            return wholeIfConstant(owner, e.asUnaryExpr().getExpression(), nested)
                    .map(Math::negateExact);
        }
        if (e.isBinaryExpr()) {
            return binary(owner, e.asBinaryExpr(), nested);
        }
        if (e.isNameExpr()) {
            return named(owner, e.asNameExpr().getNameAsString(), nested);
        }
        return e.isFieldAccessExpr() ? field(owner, e.asFieldAccessExpr()) : Optional.empty();
    }

    private Optional<Long> binary(String owner, BinaryExpr e, String nested) {
        Optional<Long> left = wholeIfConstant(owner, e.getLeft(), nested);
        Optional<Long> right = wholeIfConstant(owner, e.getRight(), nested);
        if (left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        long a = left.get();
        long b = right.get();
        return switch (e.getOperator()) {
            case PLUS -> Optional.of(Math.addExact(a, b));
            case MINUS -> Optional.of(Math.subtractExact(a, b));
            case MULTIPLY -> Optional.of(Math.multiplyExact(a, b));
            case DIVIDE -> Optional.of(a / b);
            case LEFT_SHIFT -> Optional.of(a << b);
            case BINARY_OR -> Optional.of(a | b);
            default -> Optional.empty();
        };
    }

    private Optional<Long> named(String owner, String name, String nested) {
        if (!nested.isEmpty()) {
            VariableDeclarator inner = kernel.nestedConstant(owner, nested, name);
            if (inner != null) {
                return initializer(owner, inner, nested);
            }
        }
        String home = kernel.ownerOfConstant(owner, name);
        return home == null ? Optional.empty() : value(home, name);
    }

    private Optional<Long> field(String owner, FieldAccessExpr e) {
        String scope = e.getScope().toString();
        if (e.toString().equals("Long.SIZE")) {
            return Optional.of((long) Long.SIZE);
        }
        if (kernel.isClass(scope)) {
            return value(scope, e.getNameAsString());
        }
        VariableDeclarator inner = kernel.nestedConstant(owner, scope, e.getNameAsString());
        return inner == null ? Optional.empty() : initializer(owner, inner, scope);
    }

    private Optional<Long> value(String owner, String name) {
        VariableDeclarator constant = kernel.constant(owner, name);
        return constant == null || isDouble(constant) ? Optional.empty() : initializer(owner, constant, "");
    }

    private Optional<Long> initializer(String owner, VariableDeclarator constant, String nested) {
        return constant.getInitializer().flatMap(value -> wholeIfConstant(owner, value, nested));
    }

    private static boolean isDouble(VariableDeclarator constant) {
        return constant.getType().asString().equals("double");
    }

    /** The value of a constant as C writes it. */
    String c(String owner, VariableDeclarator constant) {
        Expression value = constant.getInitializer()
                .orElseThrow(() -> new UnsupportedJavaException(owner, constant, "a constant without a value"));
        return switch (constant.getType().asString()) {
            case "double" -> number(real(owner, value));
            case "long" -> number(whole(owner, value));
            default -> whole(owner, value) < 0 ? "(" + whole(owner, value) + ")" : Long.toString(whole(owner, value));
        };
    }

    private double real(String owner, Expression value) {
        return value.isDoubleLiteralExpr() ? value.asDoubleLiteralExpr().asDouble() : whole(owner, value);
    }

    static String number(long value) {
        return value < 0 ? "(-INT64_C(" + -value + "))" : "INT64_C(" + value + ")";
    }

    /** Exact to the bit, which a decimal literal is only where the compiler rounds well. */
    static String number(double value) {
        return Double.toHexString(value);
    }

    /** A number that people can read, for a comment. */
    static String readable(double value) {
        return Double.toString(value);
    }
}
