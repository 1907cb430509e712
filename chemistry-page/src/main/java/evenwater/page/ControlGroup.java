package evenwater.page;

import java.util.List;

/** Controls that belong together under a legend. */
record ControlGroup(String legend, List<Control> controls) {

    ControlGroup(String legend, Control... controls) {
        this(legend, List.of(controls));
    }
}
