package evenwater.pictures;

import java.util.ArrayList;
import java.util.List;

/** What pictures that compare several things have in common. */
final class Named {

    private Named() {}

    static IllegalArgumentException tooMany(String what, int most) {
        return new IllegalArgumentException(what + " of one picture must be at most " + most
                + ", so that they can be told apart, but this is one more");
    }

    /** A copy with one more. */
    static <T> List<T> plus(List<T> list, T one) {
        List<T> longer = new ArrayList<>(list);
        longer.add(one);
        return List.copyOf(longer);
    }
}
