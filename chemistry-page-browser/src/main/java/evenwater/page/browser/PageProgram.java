package evenwater.page.browser;

import evenwater.page.LivePage;
import java.util.HashMap;
import java.util.Map;
import org.teavm.jso.JSExport;

/** What the scripts of the page can call. */
public final class PageProgram {

    private PageProgram() {}

    /**
     * Answers a part of the page.
     *
     * @param part name of the part
     * @param names names of its controls
     * @param values what each of them holds, in the same order
     * @return the answer as JSON
     */
    @JSExport
    public static String evenwaterAnswer(String part, String[] names, String[] values) {
        Map<String, String> entries = new HashMap<>();
        for (int i = 0; i < names.length; i++) {
            entries.put(names[i], values[i]);
        }
        return LivePage.answer(part, entries).toJson();
    }
}
