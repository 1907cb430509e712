package evenwater.page;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The page for teachers: conversion of scales, softening, blending, and carbon dioxide with pH.
 *
 * <p>A part is asked by its name with texts as they stand in a form, and answers figures or problems; it never throws because of a text.
 */
public final class LivePage {

    static final List<Part> PARTS =
            List.of(new ScalePart(), new SofteningPart(), new BlendPart(), new CarbonDioxidePart());

    private LivePage() {}

    /**
     * Returns the names of the parts.
     *
     * @return such as {@code softening}, in the order of the page
     */
    public static List<String> parts() {
        return PARTS.stream().map(Part::id).toList();
    }

    /**
     * Answers a part.
     *
     * @param part name of the part
     * @param entries texts by the names of the part's controls; a control that is missing has its initial value
     * @return figures, or problems of what was entered
     * @throws IllegalArgumentException if there is no such part
     */
    public static Answer answer(String part, Map<String, String> entries) {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(entries, "entries");
        Part asked = PARTS.stream()
                .filter(each -> each.id().equals(part))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("part must be one of " + parts() + ", but was '" + part + "'"));
        Entries read = Entries.of(asked, entries);
        if (!read.problems().isEmpty()) {
            return Answer.refusing(read.problems());
        }
        try {
            return asked.answer(read);
        } catch (RefusedException e) {
            return Answer.refusing(List.of(e.problem()));
        }
    }
}
