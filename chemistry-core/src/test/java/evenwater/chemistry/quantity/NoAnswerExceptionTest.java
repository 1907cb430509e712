package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;

class NoAnswerExceptionTest {

    private final Hardness wanted = Hardness.of(30, Hardness.GERMAN_DEGREE);
    private final Hardness source = Hardness.of(20, Hardness.GERMAN_DEGREE);

    @Test
    void carriesTheNumbersInTheOrderOfTheMessage() {
        NoAnswerException exception = new NoAnswerException(wanted + " is above " + source, wanted, source);
        assertEquals("30 °dH is above 20 °dH", exception.getMessage());
        assertEquals(List.of(wanted, source), exception.numbers());
    }

    @Test
    void mayCarryNone() {
        assertEquals(List.of(), new NoAnswerException("no answer").numbers());
    }

    @Test
    void numbersCannotBeChangedFromOutside() {
        Quantity<?>[] numbers = {wanted};
        NoAnswerException exception = new NoAnswerException("no answer", numbers);
        numbers[0] = source;
        assertEquals(List.of(wanted), exception.numbers());
        assertThrows(
                UnsupportedOperationException.class, () -> exception.numbers().clear());
    }

    @Test
    void keepsItsMessageOnlyWhenSerialized() throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(new NoAnswerException("no answer", wanted));
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            NoAnswerException read = (NoAnswerException) in.readObject();
            assertEquals("no answer", read.getMessage());
            assertEquals(List.of(), read.numbers());
        }
    }
}
