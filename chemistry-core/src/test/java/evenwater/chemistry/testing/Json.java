package evenwater.chemistry.testing;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.google.gson.Gson;
import java.io.UncheckedIOException;
import java.util.Map;

/** Two libraries for JSON as they come, without configuration, and a tree of plain maps, lists, texts and doubles as a third reader. */
public final class Json {

    private static final ObjectMapper JACKSON = new ObjectMapper();
    private static final Gson GSON = new Gson();

    private Json() {}

    public static <T> T throughJackson(T plain, Class<T> type) {
        return readByJackson(writtenByJackson(plain), type);
    }

    public static <T> T throughGson(T plain, Class<T> type) {
        return GSON.fromJson(GSON.toJson(plain), type);
    }

    /** Written by one, read by the other into a tree in which every number is a double, as in a browser, and written again. */
    public static <T> T throughDoubles(T plain, Class<T> type) {
        Map<?, ?> tree = GSON.fromJson(writtenByJackson(plain), Map.class);
        return GSON.fromJson(writtenByJackson(tree), type);
    }

    public static String writtenByJackson(Object plain) {
        try {
            return JACKSON.writeValueAsString(plain);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static <T> T readByJackson(String json, Class<T> type) {
        try {
            return JACKSON.readValue(json, type);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static <T> T readByGson(String json, Class<T> type) {
        return GSON.fromJson(json, type);
    }
}
