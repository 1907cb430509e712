package evenwater.chemistry.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.testing.Kits;
import evenwater.chemistry.testing.NaturalWater;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rivers, lakes and wells of which a kit reads only hardness, alkalinity, pH and conductivity; sources stand in the file of the waters. */
class KitNaturalWatersReferenceTest {

    /**
     * Their ions do not balance exactly (up to 5 %), so none is quite a water of the bounds; even so all are inside, without counting their
     * imbalance. How wide the bounds are, the page {@code docs/kit.md} says, which {@link KitPageTest} holds.
     */
    @Test
    void whatWasMeasuredIsWithinTheBounds() {
        List<String> outside = NaturalWater.all().stream()
                .flatMap(natural ->
                        Kits.outside(natural.water(), Kits.readingsOf(natural).bounds()).stream())
                .toList();
        assertEquals(List.of(), outside);
    }
}
