package evenwater.page.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The form of a part, filled in by keys alone. */
final class KeyboardForm {

    private static final String READ = """
            const form = document.querySelector('form[data-part="' + arguments[0] + '"]');
            return [...form.elements].filter((each) => each.name).map((each) => {
              const field = each.closest('.field').dataset;
              return [each, each.name, each.value, [...(each.options || [])].map((option) => option.value),
                field.when || '', field.value || ''];
            });
            """;

    private final Map<String, WebElement> elements = new LinkedHashMap<>();
    private final Map<String, List<String>> options = new LinkedHashMap<>();
    private final Map<String, String> entries = new LinkedHashMap<>();

    /** The choice, and the value of it, with which a control is shown. */
    private final Map<String, List<String>> conditions = new LinkedHashMap<>();

    KeyboardForm(Chromium chromium, String part) {
        for (Object each : (List<?>) chromium.script(READ, part)) {
            List<?> control = (List<?>) each;
            String name = (String) control.get(1);
            elements.put(name, (WebElement) control.get(0));
            entries.put(name, (String) control.get(2));
            List<String> values = new ArrayList<>();
            ((List<?>) control.get(3)).forEach(value -> values.add((String) value));
            options.put(name, values);
            conditions.put(name, List.of((String) control.get(4), (String) control.get(5)));
        }
    }

    /** What the form holds now. */
    Map<String, String> entries() {
        return Map.copyOf(entries);
    }

    /** The names that can be filled in now. */
    List<String> shown() {
        return elements.keySet().stream().filter(this::isShown).toList();
    }

    boolean isShown(String name) {
        List<String> condition = conditions.get(name);
        return condition.get(0).isEmpty() || entries.get(condition.get(0)).equals(condition.get(1));
    }

    boolean isChoice(String name) {
        return !options.get(name).isEmpty();
    }

    List<String> options(String name) {
        return options.get(name);
    }

    void type(String name, String text) {
        elements.get(name).sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, text);
        entries.put(name, text);
    }

    void choose(String name, String value) {
        int downs = options.get(name).indexOf(value);
        elements.get(name).sendKeys(Keys.HOME, Keys.ARROW_DOWN.toString().repeat(downs));
        entries.put(name, value);
    }

    /** Fills all controls in thought; what a number's range depends on is in the entries before it is asked for. */
    Map<String, String> randomEntries(Random random, Function<String, String> number) {
        entries.replaceAll((name, before) -> isChoice(name)
                ? options.get(name).get(random.nextInt(options.get(name).size()))
                : before);
        entries.replaceAll((name, before) -> isChoice(name) ? before : number.apply(name));
        return entries();
    }

    void press(String name, Keys key) {
        elements.get(name).sendKeys(key);
    }
}
