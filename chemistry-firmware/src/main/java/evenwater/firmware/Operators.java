package evenwater.firmware;

import com.github.javaparser.ast.expr.BinaryExpr;
import com.github.javaparser.ast.expr.Expression;
import evenwater.firmware.Expressions.C;

/**
 * Operators between two values. Sums, differences, products and shifts of whole numbers go through functions that wrap around as Java does;
 * constants, whose value is known to fit, and divisors known to be positive do not need them.
 */
final class Operators {

    private Operators() {}

    static C c(
            Scope scope,
            Expression e,
            BinaryExpr.Operator operator,
            C left,
            C right,
            boolean isConstant,
            boolean hasPositiveDivisor) {
        Type type = Type.promoted(left.type(), right.type());
        return switch (operator) {
            case AND, OR ->
                new C(
                        side(left, operator) + " " + operator.asString() + " " + side(right, operator),
                        Type.TRUTH,
                        false);
            case EQUALS, NOT_EQUALS, LESS, LESS_EQUALS, GREATER, GREATER_EQUALS ->
                infix(left, operator.asString(), right, Type.TRUTH);
            case BINARY_AND, BINARY_OR, XOR ->
                infix(left, operator.asString(), right, left.type().form() == Type.Form.TRUTH ? Type.TRUTH : type);
            case PLUS -> arithmetic("add", "+", left, right, type, isConstant);
            case MINUS -> arithmetic("sub", "-", left, right, type, isConstant);
            case MULTIPLY -> arithmetic("mul", "*", left, right, type, isConstant);
            case DIVIDE -> arithmetic("div", "/", left, right, type, isConstant || hasPositiveDivisor);
            case REMAINDER -> arithmetic("rem", "%", left, right, type, isConstant || hasPositiveDivisor);
            case LEFT_SHIFT -> shift("shl", scope, e, left, right);
            case SIGNED_RIGHT_SHIFT -> shift("sar", scope, e, left, right);
            default -> throw scope.refuse(e, "the operator " + operator.asString());
        };
    }

    private static String side(C side, BinaryExpr.Operator operator) {
        boolean isChain = side.text().contains(" " + operator.asString() + " ") && !side.isAtom();
        boolean isMixed = side.text().contains(operator == BinaryExpr.Operator.AND ? " || " : " && ")
                || side.text().contains(" ? ");
        boolean isComparison = !side.text().contains(" & ") && !side.text().contains(" | ");
        return !isMixed && (isChain || isComparison) ? side.text() : side.inside();
    }

    private static C infix(C left, String operator, C right, Type type) {
        return new C(left.inside() + " " + operator + " " + right.inside(), type, false);
    }

    private static C arithmetic(String helper, String operator, C left, C right, Type type, boolean isPlain) {
        if (isPlain || type.form() == Type.Form.DOUBLE) {
            return infix(in(type, left), operator, in(type, right), type);
        }
        return Expressions.atom(helper(helper, type) + "(" + left.text() + ", " + right.text() + ")", type);
    }

    /** A whole number beside a double, as Java promotes it; said aloud, since compilers can warn of it. */
    private static C in(Type type, C side) {
        boolean isPromoted = type.form() == Type.Form.DOUBLE && side.type().isWhole();
        if (!isPromoted) {
            return side;
        }
        boolean isLiteral = side.text().chars().allMatch(Character::isDigit);
        return Expressions.atom(isLiteral ? side.text() + ".0" : "(double) " + side.inside(), type);
    }

    static String helper(String name, Type type) {
        return "ew_" + name + (type.form() == Type.Form.INT ? "_int" : "");
    }

    private static C shift(String helper, Scope scope, Expression e, C left, C right) {
        if (left.type().form() != Type.Form.LONG) {
            throw scope.refuse(e, "a shift of " + left.type().c());
        }
        return Expressions.atom("ew_" + helper + "(" + left.text() + ", " + right.text() + ")", Type.LONG);
    }
}
