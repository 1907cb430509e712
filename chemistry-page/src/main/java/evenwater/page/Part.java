package evenwater.page;

import evenwater.chemistry.verdict.CautionTopic;
import java.util.List;
import java.util.Set;

/** A question that the page asks and answers. */
interface Part {

    /** Such as {@code softening}; becomes part of names in the HTML. */
    String id();

    String title();

    /** What it is for, in a sentence or two. */
    String lead();

    List<ControlGroup> groups();

    /** What must be said of it where it can hurt. */
    Set<CautionTopic> cautions();

    /** Answers what was entered; its numbers are well formed and its choices among those offered. */
    Answer answer(Entries entries);

    default List<Control> controls() {
        return groups().stream().flatMap(group -> group.controls().stream()).toList();
    }
}
