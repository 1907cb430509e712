package evenwater.firmware;

import com.github.javaparser.ast.body.VariableDeclarator;
import com.github.javaparser.ast.expr.ArrayAccessExpr;
import com.github.javaparser.ast.expr.AssignExpr;
import com.github.javaparser.ast.expr.CastExpr;
import com.github.javaparser.ast.expr.ConditionalExpr;
import com.github.javaparser.ast.expr.Expression;
import com.github.javaparser.ast.expr.FieldAccessExpr;
import com.github.javaparser.ast.expr.UnaryExpr;
import java.util.Locale;
import java.util.Optional;

/** Expressions of Java as expressions of C whose behaviour is defined wherever Java's is. */
final class Expressions {

    /**
     * An expression of C.
     *
     * @param text of it
     * @param type that Java gives it
     * @param isAtom whether it needs no parentheses inside another
     */
    record C(String text, Type type, boolean isAtom) {
        String inside() {
            return isAtom ? text : "(" + text + ")";
        }
    }

    private final Scope scope;
    private final Constants constants;
    private final Calls calls;

    Expressions(Scope scope, Functions functions) {
        this.scope = scope;
        this.constants = new Constants(scope.kernel);
        this.calls = new Calls(scope, functions, this);
    }

    static C atom(String text, Type type) {
        return new C(text, type, true);
    }

    String text(Expression e) {
        return c(e).text;
    }

    C c(Expression e) {
        if (e.isEnclosedExpr()) {
            return c(e.asEnclosedExpr().getInner());
        }
        if (e.isIntegerLiteralExpr()) {
            return atom(e.asIntegerLiteralExpr().asNumber().toString(), Type.INT);
        }
        if (e.isLongLiteralExpr()) {
            return atom(Constants.number(e.asLongLiteralExpr().asNumber().longValue()), Type.LONG);
        }
        if (e.isDoubleLiteralExpr()) {
            return atom(Constants.number(e.asDoubleLiteralExpr().asDouble()), Type.DOUBLE);
        }
        if (e.isBooleanLiteralExpr()) {
            return atom(e.asBooleanLiteralExpr().getValue() ? "1" : "0", Type.TRUTH);
        }
        if (e.isNameExpr()) {
            return name(e, e.asNameExpr().getNameAsString());
        }
        if (e.isFieldAccessExpr()) {
            return field(e.asFieldAccessExpr());
        }
        if (e.isArrayAccessExpr()) {
            return element(e.asArrayAccessExpr());
        }
        if (e.isMethodCallExpr()) {
            return calls.c(e.asMethodCallExpr());
        }
        if (e.isCastExpr()) {
            return cast(e.asCastExpr());
        }
        if (e.isConditionalExpr()) {
            return conditional(e.asConditionalExpr());
        }
        if (e.isUnaryExpr()) {
            return unary(e.asUnaryExpr());
        }
        if (e.isBinaryExpr()) {
            C left = c(e.asBinaryExpr().getLeft());
            C right = c(e.asBinaryExpr().getRight());
            Optional<Long> constant = constants.wholeIfConstant(scope.owner(), e);
            Optional<Long> divisor =
                    constants.wholeIfConstant(scope.owner(), e.asBinaryExpr().getRight());
            return Operators.c(
                    scope,
                    e,
                    e.asBinaryExpr().getOperator(),
                    left,
                    right,
                    constant.isPresent(),
                    divisor.orElse(0L) > 0);
        }
        throw scope.refuse(e, e.getClass().getSimpleName());
    }

    private C name(Expression e, String name) {
        if (scope.isField(name)) {
            return member(atom(scope.get("this", e).c(), Type.struct(scope.owner())), name, e);
        }
        if (scope.find(name) != null) {
            Scope.Variable variable = scope.get(name, e);
            return atom(variable.c(), variable.type());
        }
        String home = scope.kernel.ownerOfConstant(scope.owner(), name);
        if (home == null) {
            throw scope.refuse(e, "the name " + name);
        }
        return constant(home, name, e);
    }

    private C constant(String home, String name, Expression e) {
        VariableDeclarator constant = scope.kernel.constant(home, name);
        if (constant == null) {
            throw scope.refuse(e, "the constant " + name);
        }
        Type type = switch (constant.getType().asString()) {
            case "double" -> Type.DOUBLE;
            case "long" -> Type.LONG;
            default -> Type.INT;
        };
        return atom(Names.constant(home, name), type);
    }

    private C field(FieldAccessExpr e) {
        String of = e.getScope().toString();
        String name = e.getNameAsString();
        if (e.toString().equals("Long.SIZE")) {
            return atom("64", Type.INT);
        }
        if (name.equals("length")) {
            return atom(length(e.getScope()), Type.INT);
        }
        if (scope.find(of) == null && scope.kernel.isClass(of)) {
            return constant(of, name, e);
        }
        return member(c(e.getScope()), name, e);
    }

    private C member(C struct, String name, Expression e) {
        VariableDeclarator field = scope.kernel.fields(struct.type.owner()).stream()
                .filter(each -> each.getNameAsString().equals(name))
                .findFirst()
                .orElseThrow(() -> scope.refuse(e, "the field " + name));
        Type type = field.getType().asString().equals("double[]") ? Type.DOUBLES : Type.LONGS;
        return atom(struct.text + "->" + Names.snake(name), type);
    }

    private C element(ArrayAccessExpr e) {
        C array = c(e.getName());
        C index = c(e.getIndex());
        if (array.type.form() == Type.Form.STRUCT) {
            String place = isSafe(e.getIndex()) ? index.text : "ew_at(" + index.text + ", " + length(e.getName()) + ")";
            return atom(array.text + "->values[" + place + "]", Type.LONG);
        }
        String known = e.getName().isNameExpr() || e.getName().isFieldAccessExpr() ? knownLength(e.getName()) : "";
        boolean isSafe = isSafe(e.getIndex()) || known.isEmpty();
        String place = isSafe ? index.text : "ew_at(" + index.text + ", " + known + ")";
        return atom(array.text + "[" + place + "]", array.type.element());
    }

    /** A constant place was checked by Java's compiler and tests; any other is kept inside the array where its length is known. */
    private boolean isSafe(Expression index) {
        return constants.wholeIfConstant(scope.owner(), index).isPresent();
    }

    /** The length of an array as C writes it. */
    String length(Expression array) {
        String known = knownLength(array);
        if (known.isEmpty()) {
            throw scope.refuse(array, "the length of this array");
        }
        return known;
    }

    private String knownLength(Expression array) {
        if (array.isNameExpr() && !scope.isField(array.toString())) {
            Scope.Variable variable = scope.get(array.toString(), array);
            return variable.type().form() == Type.Form.STRUCT
                    ? Names.constant(variable.type().owner(), "LENGTH")
                    : variable.length();
        }
        String owner = array.isFieldAccessExpr()
                ? c(array.asFieldAccessExpr().getScope()).type.owner()
                : scope.owner();
        String field = array.isFieldAccessExpr() ? array.asFieldAccessExpr().getNameAsString() : array.toString();
        return lengthOfField(owner, field, array);
    }

    private String lengthOfField(String owner, String field, Expression where) {
        return scope.kernel.fields(owner).stream()
                .filter(each -> each.getNameAsString().equals(field))
                .map(each -> Structs.length(scope.kernel, owner, each))
                .findFirst()
                .orElseThrow(() -> scope.refuse(where, "the field " + field));
    }

    private C cast(CastExpr e) {
        C inner = c(e.getExpression());
        String to = e.getType().asString();
        if (to.equals("int") && inner.type.form() == Type.Form.LONG) {
            return atom("ew_to_int(" + inner.text + ")", Type.INT);
        }
        if (to.equals("long") && inner.type.form() == Type.Form.DOUBLE) {
            return atom("ew_to_long(" + inner.text + ")", Type.LONG);
        }
        if (to.equals("double") && inner.type.isWhole()) {
            return atom("(double) " + inner.inside(), Type.DOUBLE);
        }
        throw scope.refuse(e, "a cast to " + to);
    }

    private C conditional(ConditionalExpr e) {
        C yes = c(e.getThenExpr());
        C no = c(e.getElseExpr());
        Type type = yes.type.equals(no.type) ? yes.type : Type.promoted(yes.type, no.type);
        return new C(c(e.getCondition()).inside() + " ? " + yes.inside() + " : " + no.inside(), type, false);
    }

    private C unary(UnaryExpr e) {
        C inner = c(e.getExpression());
        return switch (e.getOperator()) {
            case LOGICAL_COMPLEMENT -> atom("!" + inner.inside(), Type.TRUTH);
            case BITWISE_COMPLEMENT -> atom("~" + inner.inside(), inner.type);
            case MINUS -> negated(e, inner);
            default -> throw scope.refuse(e, "the operator " + e.getOperator());
        };
    }

    private C negated(UnaryExpr e, C inner) {
        if (constants.wholeIfConstant(scope.owner(), e).isPresent() || inner.type.form() == Type.Form.DOUBLE) {
            return new C("-" + inner.inside(), inner.type, false);
        }
        return atom("ew_sub(0, " + inner.text + ")", inner.type);
    }

    /** An assignment as a statement, without its semicolon. */
    String assignment(AssignExpr e) {
        C target = c(e.getTarget());
        C value = c(e.getValue());
        if (e.getOperator() == AssignExpr.Operator.ASSIGN) {
            return target.text + " = " + value.text;
        }
        C result = Operators.c(
                scope,
                e,
                e.getOperator().toBinaryOperator().orElseThrow(() -> scope.refuse(e, "this assignment")),
                target,
                value,
                false,
                false);
        if (target.type.form() != result.type.form()) {
            throw scope.refuse(
                    e,
                    "an assignment that narrows to " + target.type.form().name().toLowerCase(Locale.ROOT));
        }
        return target.text + " = " + result.text;
    }

    /** A step by one as a statement, without its semicolon. */
    String step(UnaryExpr e) {
        C target = c(e.getExpression());
        boolean up = e.getOperator() == UnaryExpr.Operator.POSTFIX_INCREMENT;
        if (!up && e.getOperator() != UnaryExpr.Operator.POSTFIX_DECREMENT) {
            throw scope.refuse(e, "the operator " + e.getOperator());
        }
        return target.text + " = " + Operators.helper(up ? "add" : "sub", target.type) + "(" + target.text + ", 1)";
    }
}
