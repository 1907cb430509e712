package evenwater.chemistry.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A sum of one or more parts, each added or taken off. */
record Sum(List<Part> parts) implements Expression {

    /** One part of the sum. */
    record Part(Expression part, boolean negative) {}

    Sum {
        parts = List.copyOf(parts);
    }

    static Sum of(Expression first) {
        return first instanceof Sum sum ? sum : new Sum(List.of(new Part(first, false)));
    }

    static Sum of(List<? extends Expression> parts) {
        return new Sum(parts.stream().map(part -> new Part(part, false)).toList());
    }

    @Override
    public Sum plus(Expression addend) {
        return with(new Part(addend, false));
    }

    @Override
    public Sum minus(Expression subtrahend) {
        return with(new Part(subtrahend, true));
    }

    /** Whether it needs no brackets. */
    boolean isOneTerm() {
        return parts.size() == 1
                && parts.get(0).part() instanceof Term
                && !parts.get(0).negative();
    }

    private Sum with(Part part) {
        List<Part> longer = new ArrayList<>(parts);
        longer.add(part);
        return new Sum(longer);
    }

    @Override
    public double value() {
        double sum = 0;
        for (Part part : parts) {
            sum += part.negative() ? -part.part().value() : part.part().value();
        }
        return sum;
    }

    @Override
    public double size() {
        double size = 0;
        for (Part part : parts) {
            size += part.part().size();
        }
        return size;
    }

    @Override
    public String text(int digits) {
        return joined(" − ", part -> part.text(digits), "(", ")");
    }

    @Override
    public String formula(int digits) {
        return joined(" - ", part -> part.formula(digits), "\\left(", "\\right)");
    }

    private String joined(String minus, Function<Expression, String> shown, String open, String close) {
        StringBuilder text = new StringBuilder();
        for (Part part : parts) {
            if (text.length() > 0) {
                text.append(part.negative() ? minus : " + ");
            } else if (part.negative()) {
                text.append("0").append(minus);
            }
            text.append(
                    part.part() instanceof Sum ? open + shown.apply(part.part()) + close : shown.apply(part.part()));
        }
        return text.toString();
    }
}
