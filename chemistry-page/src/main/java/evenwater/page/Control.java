package evenwater.page;

import java.util.List;
import java.util.Objects;

/** What somebody fills in or chooses: a number, or one of several words. */
sealed interface Control {

    /** Name within its part; the key of what is entered. */
    String id();

    String label();

    /** When it is asked for. */
    When when();

    /** That another control has a value; asked for always if the name of that control is empty. */
    record When(String id, String value) {
        static final When ALWAYS = new When("", "");
    }

    /** One of the words to choose from. */
    record Option(String value, String label) {}

    /** A number in a unit that is chosen beside it. */
    record NumberField(
            String id, String label, String initial, List<Option> units, String initialUnit, String hint, When when)
            implements Control {

        public NumberField {
            if (units.stream().noneMatch(unit -> unit.value().equals(initialUnit))) {
                throw new IllegalArgumentException("unit of " + id + " must be one of " + units + ", but was "
                        + Objects.requireNonNull(initialUnit));
            }
        }

        NumberField(String id, String label, String initial, List<Option> units, String initialUnit) {
            this(id, label, initial, units, initialUnit, "", When.ALWAYS);
        }

        /** Key of the unit that is chosen. */
        String unitId() {
            return unitIdOf(id);
        }

        NumberField hinted(String words) {
            return new NumberField(id, label, initial, units, initialUnit, words, when);
        }

        NumberField onlyIf(String choice, String value) {
            return new NumberField(id, label, initial, units, initialUnit, hint, new When(choice, value));
        }
    }

    /** One of several words. */
    record Choice(String id, String label, List<Option> options) implements Control {
        @Override
        public When when() {
            return When.ALWAYS;
        }
    }

    static String unitIdOf(String id) {
        return id + "-unit";
    }
}
