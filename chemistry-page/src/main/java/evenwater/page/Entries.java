package evenwater.page;

import evenwater.chemistry.quantity.NoAnswerException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** What somebody entered in a part, and what is wrong with it. */
final class Entries {

    private static final int LONGEST_SHOWN = 30;
    private static final double LEAST = 1e-9;
    private static final double MOST = 1e9;

    private final Map<String, String> texts = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private Entries() {}

    /** Takes the initial value of each control that is not among the texts. */
    static Entries of(Part part, Map<String, String> entered) {
        Entries entries = new Entries();
        for (Control control : part.controls()) {
            if (control instanceof Control.NumberField field) {
                entries.put(field.id(), entered.getOrDefault(field.id(), field.initial()));
                entries.choose(
                        field.unitId(), field.units(), entered.getOrDefault(field.unitId(), field.initialUnit()));
            } else if (control instanceof Control.Choice choice) {
                String first = choice.options().get(0).value();
                entries.choose(choice.id(), choice.options(), entered.getOrDefault(choice.id(), first));
            }
        }
        for (Control control : part.controls()) {
            if (control instanceof Control.NumberField field && entries.asksFor(field)) {
                entries.check(field.id());
            }
        }
        return entries;
    }

    private void put(String id, String text) {
        texts.put(id, text.replace('\u00a0', ' ').strip()); // spaces that do not break a line come with pasted figures
    }

    private void choose(String id, List<Control.Option> options, String value) {
        put(id, value);
        if (options.stream().noneMatch(option -> option.value().equals(value))) {
            problems.add(new Problem(id, "choose one of what is offered"));
        }
    }

    private boolean asksFor(Control control) {
        Control.When when = control.when();
        return when.id().isEmpty() || text(when.id()).equals(when.value());
    }

    private void check(String id) {
        String text = text(id);
        if (text.isEmpty()) {
            problems.add(new Problem(id, "enter a number, such as 22 or 22.5"));
        } else if (!PlainNumber.isWellFormed(text)) {
            String shown = text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "…";
            problems.add(new Problem(
                    id,
                    "'" + shown + "' is no number: write it with a point and no grouping, such as 22.5, "
                            + "and choose the unit beside it"));
        } else if (isBeyondWater(Double.parseDouble(text))) {
            problems.add(new Problem(
                    id, text + " is beyond anything in water: enter 0 or a number between 0.000000001 and 1000000000"));
        }
    }

    /** Own rule, for all units: the core answers for larger and smaller numbers too, until doubles end. */
    private static boolean isBeyondWater(double number) {
        double size = Math.abs(number);
        return size != 0 && !(size >= LEAST && size <= MOST);
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** The choice, or the unit, or the number as it was written. */
    String text(String id) {
        String text = texts.get(id);
        if (text == null) {
            throw new IllegalStateException("no control is called " + id);
        }
        return text;
    }

    boolean isChosen(String id, String value) {
        return text(id).equals(value);
    }

    double number(String id) {
        return Double.parseDouble(text(id));
    }

    String unit(String id) {
        return text(Control.unitIdOf(id));
    }

    /** Runs a step of the answer; what the core refuses is the fault of a control. */
    <T> T at(String id, Supplier<T> step) {
        try {
            return step.get();
        } catch (IllegalArgumentException | NoAnswerException | ArithmeticException e) {
            throw new RefusedException(new Problem(id, String.valueOf(e.getMessage())), e);
        }
    }
}
