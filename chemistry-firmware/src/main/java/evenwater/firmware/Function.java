package evenwater.firmware;

import com.github.javaparser.ast.body.CallableDeclaration;
import com.github.javaparser.ast.stmt.BlockStmt;
import java.util.ArrayList;
import java.util.List;

/** A method of the kernel as a function of C. */
final class Function {

    /** A parameter; what {@link Flow} finds out about it is added later. */
    static final class Parameter {
        final String java;
        final String c;
        final Type type;
        /** Whether what it points to is changed. */
        boolean changed;
        /** Whether its length must come with it. */
        boolean measured;

        Parameter(String java, String c, Type type) {
            this.java = java;
            this.c = c;
            this.type = type;
        }

        String declaration() {
            if (!type.isPointer()) {
                return type.c() + " " + c;
            }
            String pointer = (changed ? "" : "const ") + type.c() + " *" + c;
            return measured ? pointer + ", int32_t " + length() : pointer;
        }

        String length() {
            return c + "_length";
        }
    }

    /** What it answers, and hence how C's callers see it. */
    enum Role {
        /** Seen by this file alone. */
        INNER,
        /** Its whole number is a status. */
        EVENT,
        /** Its answer goes through a pointer, so that the status can tell of a missing pointer. */
        QUERY
    }

    final String owner;
    final CallableDeclaration<?> java;
    final BlockStmt body;
    final Type type;
    final Role role;
    final String name;
    final List<Parameter> parameters = new ArrayList<>();

    Function(String owner, CallableDeclaration<?> java, BlockStmt body, Type type, Role role, String name) {
        this.owner = owner;
        this.java = java;
        this.body = body;
        this.type = type;
        this.role = role;
        this.name = name;
    }

    boolean hasThis() {
        return !java.isStatic();
    }

    /** The name by which other functions of the file call it: that of the logic alone. */
    String innerName() {
        return role == Role.QUERY ? name.replaceFirst("^ew_", "ew_in_") : name;
    }

    private String list() {
        return String.join(", ", parameters.stream().map(Parameter::declaration).toList());
    }

    /** What the body belongs to. */
    String innerSignature() {
        String head = role == Role.EVENT ? "" : "static ";
        return head + type.c() + " " + innerName() + "(" + (parameters.isEmpty() ? "void" : list()) + ")";
    }

    /** What callers from outside see. */
    String outerSignature() {
        if (role == Role.EVENT) {
            return innerSignature();
        }
        String result =
                type.form() == Type.Form.NOTHING ? "" : (parameters.isEmpty() ? "" : ", ") + type.c() + " *result";
        return "int32_t " + name + "(" + list() + result + ")";
    }
}
