package evenwater.firmware;

/**
 * The types that the kernel's controllers use, and their C.
 *
 * @param form what it is
 * @param owner simple name of the Java class of a struct or a table, else empty
 */
record Type(Form form, String owner) {

    enum Form {
        NOTHING("void"),
        TRUTH("ew_bool"),
        INT("int32_t"),
        LONG("int64_t"),
        DOUBLE("double"),
        LONGS("int64_t"),
        DOUBLES("double"),
        /** A class with fields of its own. */
        STRUCT(""),
        /** An enum: its values are places in a table. */
        TABLE("int32_t");

        private final String c;

        Form(String c) {
            this.c = c;
        }
    }

    static final Type NOTHING = new Type(Form.NOTHING, "");
    static final Type TRUTH = new Type(Form.TRUTH, "");
    static final Type INT = new Type(Form.INT, "");
    static final Type LONG = new Type(Form.LONG, "");
    static final Type DOUBLE = new Type(Form.DOUBLE, "");
    static final Type LONGS = new Type(Form.LONGS, "");
    static final Type DOUBLES = new Type(Form.DOUBLES, "");

    static Type struct(String owner) {
        return new Type(Form.STRUCT, owner);
    }

    static Type table(String owner) {
        return new Type(Form.TABLE, owner);
    }

    boolean isPointer() {
        return form == Form.LONGS || form == Form.DOUBLES || form == Form.STRUCT;
    }

    boolean isPlainArray() {
        return form == Form.LONGS || form == Form.DOUBLES;
    }

    boolean isWhole() {
        return form == Form.INT || form == Form.LONG;
    }

    /** The C type, without the star of a pointer. */
    String c() {
        return form == Form.STRUCT ? Names.prefix(owner) : form.c;
    }

    /** What an element of an array is. */
    Type element() {
        return form == Form.LONGS ? LONG : DOUBLE;
    }

    /** Java's binary numeric promotion. */
    static Type promoted(Type left, Type right) {
        if (left.form == Form.DOUBLE || right.form == Form.DOUBLE) {
            return DOUBLE;
        }
        return left.form == Form.LONG || right.form == Form.LONG ? LONG : INT;
    }
}
