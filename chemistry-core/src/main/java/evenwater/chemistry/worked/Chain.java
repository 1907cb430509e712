package evenwater.chemistry.worked;

import java.util.ArrayList;
import java.util.List;

/** A chain of factors: what it starts with, then multiplied and divided from left to right. */
record Chain(Expression first, List<Link> links) implements Expression {

    /** One factor of the chain. */
    record Link(Expression factor, boolean divides) {}

    Chain {
        links = List.copyOf(links);
    }

    static Chain of(Expression first) {
        return first instanceof Chain chain ? chain : new Chain(first, List.of());
    }

    @Override
    public Chain times(Expression factor) {
        return with(new Link(factor, false));
    }

    @Override
    public Chain over(Expression factor) {
        return with(new Link(factor, true));
    }

    Chain with(Link link) {
        List<Link> longer = new ArrayList<>(links);
        longer.add(link);
        return new Chain(first, longer);
    }

    @Override
    public double value() {
        double value = first.value();
        for (Link link : links) {
            value = link.divides()
                    ? value / link.factor().value()
                    : value * link.factor().value();
        }
        return value;
    }

    @Override
    public double size() {
        double size = first.size();
        for (Link link : links) {
            size = link.divides()
                    ? size / Math.abs(link.factor().value())
                    : size * link.factor().size();
        }
        return size;
    }

    @Override
    public String text(int digits) {
        StringBuilder text = new StringBuilder(grouped(first, digits));
        for (Link link : links) {
            text.append(link.divides() ? " ÷ " : " × ").append(grouped(link.factor(), digits));
        }
        return text.toString();
    }

    private static String grouped(Expression part, int digits) {
        return isGrouped(part) ? "(" + part.text(digits) + ")" : part.text(digits);
    }

    @Override
    public String formula(int digits) {
        StringBuilder text = new StringBuilder(groupedFormula(first, digits));
        for (Link link : links) {
            Expression factor = link.factor();
            if (factor instanceof Term term && !term.perUnit().isEmpty()) {
                String over = Notation.quantity(term.number(digits), term.unit());
                String under = Notation.quantity("1", term.perUnit());
                text.append(" \\times ")
                        .append(link.divides() ? Notation.fraction(under, over) : Notation.fraction(over, under));
            } else {
                text.append(link.divides() ? " \\div " : " \\times ").append(groupedFormula(factor, digits));
            }
        }
        return text.toString();
    }

    private static String groupedFormula(Expression part, int digits) {
        return isGrouped(part) ? "\\left(" + part.formula(digits) + "\\right)" : part.formula(digits);
    }

    private static boolean isGrouped(Expression part) {
        return part instanceof Chain || (part instanceof Sum sum && !sum.isOneTerm());
    }
}
