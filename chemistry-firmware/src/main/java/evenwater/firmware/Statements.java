package evenwater.firmware;

import com.github.javaparser.ast.body.VariableDeclarator;
import com.github.javaparser.ast.comments.Comment;
import com.github.javaparser.ast.expr.AssignExpr;
import com.github.javaparser.ast.expr.BinaryExpr;
import com.github.javaparser.ast.expr.Expression;
import com.github.javaparser.ast.expr.MethodCallExpr;
import com.github.javaparser.ast.expr.UnaryExpr;
import com.github.javaparser.ast.expr.VariableDeclarationExpr;
import com.github.javaparser.ast.stmt.BlockStmt;
import com.github.javaparser.ast.stmt.ForEachStmt;
import com.github.javaparser.ast.stmt.ForStmt;
import com.github.javaparser.ast.stmt.IfStmt;
import com.github.javaparser.ast.stmt.ReturnStmt;
import com.github.javaparser.ast.stmt.Statement;
import com.github.javaparser.ast.stmt.WhileStmt;

/** The body of a method, statement by statement. */
final class Statements {

    private final Scope scope;
    private final Functions functions;
    private final Expressions expressions;
    private final StringBuilder out = new StringBuilder();
    private int depth = 1;

    private Statements(Scope scope, Functions functions) {
        this.scope = scope;
        this.functions = functions;
        this.expressions = new Expressions(scope, functions);
    }

    /** The lines between the braces. */
    static String of(Kernel kernel, Functions functions, Function function) {
        Statements statements = new Statements(new Scope(kernel, function), functions);
        statements.block(function.body);
        return statements.out.toString();
    }

    private void line(String text) {
        out.append("    ".repeat(depth)).append(text).append('\n');
    }

    private void block(BlockStmt block) {
        block.getStatements().forEach(this::statement);
    }

    private void statement(Statement s) {
        s.getComment().map(Comment::getContent).ifPresent(text -> line("/* " + Comments.ascii(text.strip()) + " */"));
        if (s.isExpressionStmt()) {
            expression(s.asExpressionStmt().getExpression());
        } else if (s.isReturnStmt()) {
            giveBack(s.asReturnStmt());
        } else if (s.isIfStmt()) {
            choose(s.asIfStmt(), "if");
        } else if (s.isWhileStmt()) {
            WhileStmt loop = s.asWhileStmt();
            nested("while (" + expressions.text(loop.getCondition()) + ") {", loop.getBody());
            line("}");
        } else if (s.isForStmt()) {
            count(s.asForStmt());
        } else if (s.isForEachStmt()) {
            countRows(s.asForEachStmt());
        } else {
            throw scope.refuse(s, s.getClass().getSimpleName());
        }
    }

    private void nested(String head, Statement body) {
        line(head);
        depth++;
        if (body.isBlockStmt()) {
            block(body.asBlockStmt());
        } else {
            statement(body);
        }
        depth--;
    }

    private void expression(Expression e) {
        if (e.isVariableDeclarationExpr()) {
            e.asVariableDeclarationExpr().getVariables().forEach(this::declare);
        } else if (e.isAssignExpr()) {
            line(expressions.assignment(e.asAssignExpr()) + ";");
        } else if (e.isUnaryExpr()) {
            line(expressions.step(e.asUnaryExpr()) + ";");
        } else if (e.isMethodCallExpr()) {
            call(e.asMethodCallExpr());
        } else {
            throw scope.refuse(e, "a statement of this kind");
        }
    }

    private void call(MethodCallExpr e) {
        Expressions.C call = expressions.c(e);
        line((call.type().form() == Type.Form.NOTHING ? "" : "(void) ") + call.text() + ";");
    }

    private void declare(VariableDeclarator variable) {
        String name = variable.getNameAsString();
        Type type = functions.type(scope.owner(), variable.getType().asString(), variable);
        Expression value =
                variable.getInitializer().orElseThrow(() -> scope.refuse(variable, "a variable without a value"));
        if (value.isArrayCreationExpr()) {
            String length = expressions.text(value.asArrayCreationExpr()
                    .getLevels()
                    .get(0)
                    .getDimension()
                    .orElseThrow(() -> scope.refuse(variable, "an array without a length")));
            scope.put(name, type, length);
            line(type.c() + " " + Names.snake(name) + "[" + length + "] = {0};");
            return;
        }
        String text = expressions.text(value);
        String length = type.isPlainArray() && value.isFieldAccessExpr() ? expressions.length(value) : "";
        boolean isConst = type.isPointer() && !isChanged(value);
        scope.put(name, type, length);
        line((isConst ? "const " : "") + type.c() + (type.isPointer() ? " *" : " ") + Names.snake(name) + " = " + text
                + ";");
    }

    /** Whether the parameter that an array comes from is changed. */
    private boolean isChanged(Expression array) {
        String root =
                array.isFieldAccessExpr() ? array.asFieldAccessExpr().getScope().toString() : array.toString();
        return scope.function.parameters.stream().anyMatch(each -> each.java.equals(root) && each.changed);
    }

    private void giveBack(ReturnStmt s) {
        line(s.getExpression()
                .map(value -> "return " + expressions.text(value) + ";")
                .orElse("return;"));
    }

    private void choose(IfStmt s, String word) {
        nested(word + " (" + expressions.text(s.getCondition()) + ") {", s.getThenStmt());
        Statement other = s.getElseStmt().orElse(null);
        if (other == null) {
            line("}");
        } else if (other.isIfStmt()) {
            choose(other.asIfStmt(), "} else if");
        } else {
            nested("} else {", other);
            line("}");
        }
    }

    /** {@code for (int i = 0; i < n; i++)} alone, whose counter cannot overflow as long as the body leaves it alone. */
    private void count(ForStmt s) {
        Expression condition = s.getCompare().orElseThrow(() -> scope.refuse(s, "a loop without an end"));
        VariableDeclarator counter = s.getInitialization().stream()
                .filter(Expression::isVariableDeclarationExpr)
                .map(Expression::asVariableDeclarationExpr)
                .map(VariableDeclarationExpr::getVariables)
                .filter(variables ->
                        variables.size() == 1 && s.getInitialization().size() == 1)
                .map(variables -> variables.get(0))
                .findFirst()
                .orElseThrow(() -> scope.refuse(s, "a loop of this kind"));
        String i = counter.getNameAsString();
        boolean isPlain = condition.isBinaryExpr()
                && condition.asBinaryExpr().getOperator() == BinaryExpr.Operator.LESS
                && condition.asBinaryExpr().getLeft().toString().equals(i)
                && s.getUpdate().size() == 1
                && s.getUpdate().get(0).toString().equals(i + "++")
                && !isAssigned(s.getBody(), i);
        if (!isPlain) {
            throw scope.refuse(s, "a loop of this kind");
        }
        String start = expressions.text(counter.getInitializer().orElseThrow(() -> scope.refuse(s, "this counter")));
        scope.put(i, Type.INT, "");
        String name = Names.snake(i);
        nested(
                "for (int32_t " + name + " = " + start + "; " + expressions.text(condition) + "; " + name + "++) {",
                s.getBody());
        line("}");
    }

    private static boolean isAssigned(Statement body, String name) {
        return body.findAll(AssignExpr.class).stream()
                        .anyMatch(each -> each.getTarget().toString().equals(name))
                || body.findAll(UnaryExpr.class).stream()
                        .anyMatch(each -> Flow.isStep(each)
                                && each.getExpression().toString().equals(name));
    }

    private void countRows(ForEachStmt s) {
        String table = s.getIterable().isMethodCallExpr()
                        && s.getIterable().asMethodCallExpr().getNameAsString().equals("values")
                ? s.getIterable()
                        .asMethodCallExpr()
                        .getScope()
                        .map(Object::toString)
                        .orElse("")
                : scope.kernel.tableOfArray(scope.owner(), s.getIterable().toString());
        if (table == null || !scope.kernel.isTable(table)) {
            throw scope.refuse(s, "a loop over this");
        }
        String name = s.getVariable().getVariable(0).getNameAsString();
        scope.put(name, Type.table(table), "");
        String c = Names.snake(name);
        nested(
                "for (int32_t " + c + " = 0; " + c + " < " + Names.constant(table, "VALUES") + "; " + c + "++) {",
                s.getBody());
        line("}");
    }
}
