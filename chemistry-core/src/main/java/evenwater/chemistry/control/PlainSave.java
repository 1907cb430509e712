package evenwater.chemistry.control;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A saved state of a controller in texts, for JSON and the like.
 *
 * <p>The numbers of {@link SoftenerState#save} and {@link DosingPumpState#save} use all 64 bits, of which a reader that makes doubles of numbers keeps 53; as
 * decimal texts they survive any. What was changed or cut off on the way is refused where the state is taken up, by the checksum in the save. It is made
 * by {@link #of} or by a library for JSON, carries whatever came, also nothing where something was missing, and {@link #toSave} checks it. Immutable and
 * thread-safe.
 *
 * @param version of this form, {@link #VERSION}
 * @param numbers of the save, in their order, in decimal digits with a leading minus where they are negative
 */
public record PlainSave(@Nullable Integer version, @Nullable List<@Nullable String> numbers) {

    /** The version of the form that this library writes, and the newest that it reads. */
    public static final int VERSION = 1;

    /** Stricter than {@link Long#parseLong}, which takes a plus and the digits of every script. */
    private static final Pattern DIGITS = Pattern.compile("-?[0-9]+");

    /**
     * Takes what came; nothing is checked here.
     *
     * @param version see the record, as the other
     * @param numbers copied
     */
    public PlainSave {
        numbers = numbers == null ? null : Collections.unmodifiableList(new ArrayList<>(numbers));
    }

    /**
     * Returns a save in texts.
     *
     * @param saved what {@link SoftenerState#save} or {@link DosingPumpState#save} gave
     * @return the texts
     */
    public static PlainSave of(long[] saved) {
        List<@Nullable String> numbers = new ArrayList<>();
        for (long number : Objects.requireNonNull(saved, "saved")) {
            numbers.add(Long.toString(number));
        }
        return new PlainSave(VERSION, numbers);
    }

    /**
     * Returns the save.
     *
     * @return a new array for {@link SoftenerSettings#restore} or {@link DosingPump#restore}
     * @throws UnusableSaveException if something is missing, no whole number or of a newer version
     */
    public long[] toSave() {
        if (version == null || numbers == null) {
            throw new UnusableSaveException("plain save lacks " + (version == null ? "version" : "numbers"));
        }
        if (version != VERSION) {
            throw new UnusableSaveException("plain save: version must be " + VERSION + ", but was " + version
                    + (version > VERSION ? ", of a newer library" : ""));
        }
        long[] saved = new long[numbers.size()];
        for (int i = 0; i < saved.length; i++) {
            saved[i] = number(i, numbers.get(i));
        }
        return saved;
    }

    private static long number(int index, @Nullable String text) {
        try {
            if (text != null && DIGITS.matcher(text).matches()) {
                return Long.parseLong(text);
            }
        } catch (NumberFormatException moreThan64Bits) {
            // refused below
        }
        throw new UnusableSaveException("plain save: number " + index + " must be a whole number of 64 bits, but was "
                + (text == null ? "missing" : "'" + text + "'"));
    }
}
