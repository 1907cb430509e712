package evenwater.firmware;

import com.github.javaparser.ast.body.VariableDeclarator;

/** Fields of a class that are arrays of a fixed length, as members of a struct. */
final class Structs {

    private Structs() {}

    /** The length of a field, as the constant of C. */
    static String length(Kernel kernel, String owner, VariableDeclarator field) {
        var creation = field.getInitializer()
                .filter(value -> value.isArrayCreationExpr())
                .map(value -> value.asArrayCreationExpr())
                .orElseThrow(() -> new UnsupportedJavaException(owner, field, "a field that is no new array"));
        String name = creation.getLevels()
                .get(0)
                .getDimension()
                .map(Object::toString)
                .orElseThrow(() -> new UnsupportedJavaException(owner, field, "an array without a length"));
        String home = kernel.ownerOfConstant(owner, name);
        if (home == null) {
            throw new UnsupportedJavaException(owner, field, "a length that is no constant");
        }
        return Names.constant(home, name);
    }

    /** The struct of a class. */
    static String definition(Kernel kernel, String owner) {
        StringBuilder text = new StringBuilder("typedef struct {\n");
        if (Names.isArrayStruct(owner)) {
            text.append("    int64_t values[")
                    .append(Names.constant(owner, "LENGTH"))
                    .append("];\n");
        }
        for (VariableDeclarator field : kernel.fields(owner)) {
            String type = field.getType().asString().equals("double[]") ? "double" : "int64_t";
            text.append("    ")
                    .append(type)
                    .append(' ')
                    .append(Names.snake(field.getNameAsString()))
                    .append('[')
                    .append(length(kernel, owner, field))
                    .append("];\n");
        }
        return text.append("} ").append(Names.prefix(owner)).append(";\n").toString();
    }
}
