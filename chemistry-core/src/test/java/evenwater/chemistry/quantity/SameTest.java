package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.Test;
import tech.units.indriya.function.MultiplyConverter;

/** The contract of {@code UnitConverter} for the identity. */
class SameTest {

    @Test
    void changesNothing() {
        assertTrue(Same.INSTANCE.isIdentity());
        assertTrue(Same.INSTANCE.isLinear());
        assertEquals(7.3, Same.INSTANCE.convert(7.3));
        assertEquals(new BigDecimal("7.30"), Same.INSTANCE.convert(new BigDecimal("7.30")));
    }

    @Test
    void composesToTheOtherOne() {
        UnitConverter triple = MultiplyConverter.of(3);
        assertSame(triple, Same.INSTANCE.concatenate(triple));
        assertSame(triple, triple.concatenate(Same.INSTANCE));
    }

    @Test
    void isItsOwnInverseAndOnlyStep() {
        assertSame(Same.INSTANCE, Same.INSTANCE.inverse());
        assertEquals(List.of(Same.INSTANCE), Same.INSTANCE.getConversionSteps());
    }
}
