package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Events that Java has played, with its answers, to be played by C. */
final class Replay {

    private static final int NUMBERS_OF_AN_EVENT = 9;

    private final List<long[]> events = new ArrayList<>();
    private final List<long[]> answers = new ArrayList<>();

    void add(long[] event, long[] answer) {
        events.add(event);
        answers.add(answer);
    }

    int size() {
        return events.size();
    }

    /** Plays the events by a program of C and compares each number that it answers. */
    void assertSame(Path program) {
        ByteBuffer in = ByteBuffer.allocate(events.size() * NUMBERS_OF_AN_EVENT * Long.BYTES)
                .order(ByteOrder.nativeOrder());
        for (long[] event : events) {
            for (int i = 0; i < NUMBERS_OF_AN_EVENT; i++) {
                in.putLong(i < event.length ? event[i] : 0);
            }
        }
        ByteBuffer out = ByteBuffer.wrap(Compiler.run(in.array(), List.of(program.toString())))
                .order(ByteOrder.nativeOrder());
        for (int i = 0; i < answers.size(); i++) {
            long[] expected = answers.get(i);
            for (int k = 0; k < expected.length; k++) {
                long actual = out.getLong();
                int event = i;
                int place = k;
                assertEquals(
                        expected[k],
                        actual,
                        () -> "number " + place + " after event " + event + " " + Arrays.toString(events.get(event)));
            }
        }
        assertEquals(0, out.remaining());
    }
}
