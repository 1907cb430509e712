package evenwater.firmware;

import java.util.List;

/** What C must look at before the kernel's logic begins, since its callers can pass what Java's cannot. */
final class Guards {

    private Guards() {}

    /** Checks of pointers and of places in tables. */
    static String of(Function f) {
        StringBuilder text = new StringBuilder();
        List<String> pointers = f.parameters.stream()
                .filter(each -> each.type.isPointer())
                .map(each -> each.c + " == 0")
                .toList();
        if (!pointers.isEmpty()) {
            text.append("    if (")
                    .append(String.join(" || ", pointers))
                    .append(") {\n        return EW_NULL_POINTER;\n    }\n");
        }
        for (Function.Parameter each : f.parameters) {
            if (each.measured) { // Java's lengths are never negative
                text.append("    if (")
                        .append(each.length())
                        .append(" < 0) {\n        return EW_OUT_OF_RANGE;\n    }\n");
            }
        }
        for (Function.Parameter each : f.parameters) {
            if (each.type.form() == Type.Form.TABLE) {
                String rows = Names.constant(each.type.owner(), "VALUES");
                text.append("    if (")
                        .append(each.c)
                        .append(" < 0 || ")
                        .append(each.c)
                        .append(" >= ")
                        .append(rows)
                        .append(") {\n        return EW_OUT_OF_RANGE;\n    }\n");
            }
        }
        return text.toString();
    }

    /** The function that callers see of one whose answer is no status. */
    static String wrapper(Function f) {
        boolean answers = f.type.form() != Type.Form.NOTHING;
        StringBuilder text =
                new StringBuilder(f.outerSignature()).append(" {\n").append(of(f));
        if (answers) {
            text.append("    if (result == 0) {\n        return EW_NULL_POINTER;\n    }\n");
        }
        String arguments = String.join(
                ", ",
                f.parameters.stream()
                        .map(each -> each.measured ? each.c + ", " + each.length() : each.c)
                        .toList());
        return text.append("    ")
                .append(answers ? "*result = " : "")
                .append(f.innerName())
                .append('(')
                .append(arguments)
                .append(");\n    return EW_OK;\n}\n\n")
                .toString();
    }
}
