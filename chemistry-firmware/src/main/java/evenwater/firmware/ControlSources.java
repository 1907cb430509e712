package evenwater.firmware;

import com.github.javaparser.ast.body.EnumConstantDeclaration;
import com.github.javaparser.ast.body.FieldDeclaration;
import com.github.javaparser.ast.body.VariableDeclarator;
import com.github.javaparser.ast.expr.Expression;
import com.github.javaparser.ast.nodeTypes.NodeWithJavadoc;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The valve's and the pump's logic as a header and a source of C, translated from the kernel. */
final class ControlSources {

    /** Classes whose own description says nothing to a reader of C beyond that of their functions. */
    private static final Set<String> SILENT = Set.of("ValveEvents", "PumpServiceKernel");

    private final Kernel kernel;
    private final Functions functions;
    private final Constants constants;
    private final Comments comments;

    ControlSources(Kernel kernel) {
        this.kernel = kernel;
        this.functions = new Functions(kernel);
        this.constants = new Constants(kernel);
        this.comments = new Comments(kernel, functions);
    }

    String header() {
        StringBuilder out = new StringBuilder(Template.read("control-head.h"));
        for (String owner : kernel.classes()) {
            StringBuilder section = new StringBuilder();
            publicConstants(owner, section);
            if (kernel.isTable(owner)) {
                rows(owner, section);
            }
            if (isStruct(owner)) {
                section.append(Structs.definition(kernel, owner)).append('\n');
            }
            functions.all().stream()
                    .filter(each -> each.owner.equals(owner) && each.role != Function.Role.INNER)
                    .forEach(each -> section.append(comments.of(each))
                            .append(each.outerSignature())
                            .append(";\n\n"));
            if (!section.isEmpty()) {
                out.append(title(owner)).append(section);
            }
        }
        return Wrap.code(out.append(Template.read("control-foot.h")).toString());
    }

    private boolean isStruct(String owner) {
        return Names.isArrayStruct(owner) || (!kernel.fields(owner).isEmpty() && !kernel.isTable(owner));
    }

    private String title(String owner) {
        String text = SILENT.contains(owner) ? "" : comments.of(owner, (NodeWithJavadoc<?>) kernel.type(owner), "");
        return text.isEmpty() ? "" : text + "\n";
    }

    private void publicConstants(String owner, StringBuilder out) {
        Set<String> lengths = kernel.isTable(owner)
                ? Set.of()
                : kernel.fields(owner).stream()
                        .map(field -> Structs.length(kernel, owner, field))
                        .collect(Collectors.toSet());
        boolean any = false;
        for (VariableDeclarator constant : kernel.constants(owner)) {
            String name = Names.constant(owner, constant.getNameAsString());
            if (field(constant).isPublic() || lengths.contains(name)) {
                any = true;
                out.append(define(owner, constant, name, true));
            }
        }
        out.append(any ? "\n" : "");
    }

    private static FieldDeclaration field(VariableDeclarator constant) {
        return (FieldDeclaration) constant.getParentNode().orElseThrow();
    }

    private String define(String owner, VariableDeclarator constant, String name, boolean commented) {
        String comment = commented ? comments.of(owner, field(constant), "") : "";
        String value = constants.c(owner, constant);
        String readable = value.contains("0x") ? " /* " + Constants.readable(Double.parseDouble(value)) + " */" : "";
        return comment + "#define " + name + " " + value + readable + "\n";
    }

    private void rows(String owner, StringBuilder out) {
        int place = 0;
        for (EnumConstantDeclaration row : kernel.rows(owner)) {
            out.append(comments.of(owner, row, ""))
                    .append("#define ")
                    .append(Names.constant(owner, row.getNameAsString()))
                    .append(' ')
                    .append(place)
                    .append('\n');
            place++;
        }
        out.append("/* How many there are. */\n#define ")
                .append(Names.constant(owner, "VALUES"))
                .append(' ')
                .append(place)
                .append("\n\n");
    }

    String source() {
        StringBuilder bodies = new StringBuilder();
        functions.all().forEach(each -> body(each, bodies));
        StringBuilder out = new StringBuilder(Template.read("control-head.c"));
        for (String owner : kernel.classes()) {
            innerConstants(owner, out);
        }
        out.append('\n').append(Template.used("wrapping.c", bodies.toString()));
        kernel.classes().stream().filter(kernel::isTable).forEach(owner -> table(owner, out));
        for (Function each : functions.all()) {
            if (each.role != Function.Role.EVENT) {
                out.append(each.innerSignature()).append(";\n");
            }
        }
        return Wrap.code(out.append('\n')
                .append(bodies)
                .append(Template.read("control-foot.c"))
                .toString());
    }

    private void innerConstants(String owner, StringBuilder out) {
        Set<String> lengths = kernel.isTable(owner)
                ? Set.of()
                : kernel.fields(owner).stream()
                        .map(field -> Structs.length(kernel, owner, field))
                        .collect(Collectors.toSet());
        for (VariableDeclarator constant : kernel.constants(owner)) {
            String name = Names.constant(owner, constant.getNameAsString());
            if (!field(constant).isPublic() && !lengths.contains(name)) {
                out.append(define(owner, constant, name, true));
            }
        }
    }

    private void table(String owner, StringBuilder out) {
        List<String> columns = kernel.fields(owner).stream()
                .map(VariableDeclarator::getNameAsString)
                .toList();
        String prefix = Names.prefix(owner);
        out.append("static const struct {\n");
        for (VariableDeclarator column : kernel.fields(owner)) {
            out.append("    ")
                    .append(functions
                            .type(owner, column.getType().asString(), column)
                            .c())
                    .append(' ')
                    .append(column.getNameAsString())
                    .append(";\n");
        }
        out.append("} ")
                .append(prefix)
                .append("_table[")
                .append(Names.constant(owner, "VALUES"))
                .append("] = {\n");
        for (EnumConstantDeclaration row : kernel.rows(owner)) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < columns.size(); i++) {
                Expression cell = row.getArgument(i);
                cells.add(i == 0 ? placeName(cell) : Constants.number(constants.whole(owner, cell)));
            }
            out.append("    {")
                    .append(String.join(", ", cells))
                    .append("}, /* ")
                    .append(row.getNameAsString().toLowerCase(Locale.ROOT).replace('_', ' '))
                    .append(" */\n");
        }
        out.append("};\n\n");
    }

    private static String placeName(Expression cell) {
        var access = cell.asFieldAccessExpr();
        return Names.constant(access.getScope().toString(), access.getNameAsString());
    }

    private void body(Function f, StringBuilder out) {
        if (f.role == Function.Role.INNER) {
            out.append(comments.of(f.owner, (NodeWithJavadoc<?>) f.java, ""));
        }
        out.append(f.innerSignature()).append(" {\n").append(f.role == Function.Role.EVENT ? Guards.of(f) : "");
        if (f.java.isConstructorDeclaration()) {
            kernel.fields(f.owner).forEach(field -> out.append(clear(f, field)));
        }
        out.append(Statements.of(kernel, functions, f)).append("}\n\n");
        if (f.role == Function.Role.QUERY) {
            out.append(Guards.wrapper(f));
        }
    }

    /** A new object of Java begins with zeros. */
    private String clear(Function f, VariableDeclarator field) {
        String member = f.parameters.get(0).c + "->" + Names.snake(field.getNameAsString());
        String length = Structs.length(kernel, f.owner, field);
        return "    for (int32_t i = 0; i < " + length + "; i++) {\n        " + member + "[i] = 0;\n    }\n";
    }
}
