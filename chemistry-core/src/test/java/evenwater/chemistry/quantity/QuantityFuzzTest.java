package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import evenwater.chemistry.testing.FuzzTexts;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;

/** Whatever comes in: a value or our exception, nothing else. */
class QuantityFuzzTest {

    private static final long SEED = 20_261_125;

    private static final List<String> SPELLINGS = List.of(
            "gr/gal",
            "grains per US gallon",
            "ppm CaCO3",
            "mg/L as CaCO₃",
            "dGH",
            "°Clark",
            "KH",
            "mg/L HCO3-",
            "mval/L",
            "M",
            "µmho/cm",
            "US gal",
            "imperial gallons",
            "kgr/cu ft",
            "lbs/ft3",
            "US gpm",
            "degrees Celsius",
            "℉",
            "percent",
            "mg/L",
            "gpm",
            "cups");

    @Test
    void everyReaderAnswersOrThrowsOurException() {
        FuzzTexts texts = new FuzzTexts(SEED, validTexts());
        int read = 0;
        int count = FuzzTexts.count();
        for (int i = 0; i < count; i++) {
            String text = texts.next();
            for (Kind<?> kind : Kind.all()) {
                read += tryReaders(kind, text);
            }
        }
        // otherwise the texts were too spoilt to test what happens behind the first check
        assertTrue(read > count / 4, "only " + read + " values read from " + count + " texts");
    }

    private static List<String> validTexts() {
        List<String> valid = new ArrayList<>(List.of("3.2", "-40 °F", "1e-3 mol/L", "+.5E+2 gpg"));
        SPELLINGS.forEach(spelling -> valid.add("12.5 " + spelling));
        for (Kind<?> kind : Kind.all()) {
            kind.units().forEach(unit -> valid.add("7 " + unit.getSymbol()));
        }
        return valid;
    }

    /** Returns how many readers answered a value. */
    private static <Q extends Quantity<Q>> int tryReaders(Kind<Q> kind, String text) {
        int read = 0;
        if (kind.parse().isPresent()) {
            WaterQuantity<Q> quantity = answer(kind.parse().get(), kind, text);
            if (quantity != null) {
                read++;
                assertEquals(quantity, answer(kind.parse().get(), kind, quantity.toString()), text);
            }
        }
        if (kind.unit().isPresent()) {
            Unit<Q> unit = answer(kind.unit().get(), kind, text);
            assertTrue(unit == null || kind.units().contains(unit), text);
        }
        return read;
    }

    /** Returns the answer, null if the text was refused as it should be. */
    private static <T> T answer(Function<String, T> reader, Kind<?> kind, String text) {
        try {
            return reader.apply(text);
        } catch (UnreadableTextException e) {
            assertTrue(e.index() >= 0 && e.index() <= text.length(), () -> "index " + e.index() + " of " + shown(text));
            assertTrue(e.getMessage().length() < 500, e::getMessage);
            assertTrue(e.getMessage().chars().noneMatch(Character::isISOControl), e::getMessage);
            return null;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return fail(kind + " from " + shown(text), e);
        }
    }

    private static String shown(String text) {
        StringBuilder escaped = new StringBuilder();
        text.chars()
                .limit(200)
                .forEach(c -> escaped.append(
                        c < 128 && c >= ' ' ? String.valueOf((char) c) : String.format(Locale.ROOT, "\\u%04x", c)));
        return escaped.toString();
    }
}
