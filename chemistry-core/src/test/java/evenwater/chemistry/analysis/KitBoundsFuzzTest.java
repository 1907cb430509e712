package evenwater.chemistry.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.testing.Kits;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A kit reads a water that is known: what it holds has to lie within the bounds, always, all eleven quantities of it.
 *
 * <p>How many waters: {@code -Dkit.waters}, else 50. Every run has waters of its own, unless {@code -Dkit.seed} says where to start; each water
 * has the seed that stands beside it where it fails, so that it can be had again alone.
 */
class KitBoundsFuzzTest {

    private static final int COUNT = Integer.getInteger("kit.waters", 50);
    private static final long FIRST_SEED = Long.getLong("kit.seed", System.nanoTime());

    @Test
    void whatAWaterHoldsIsWithinTheBoundsOfItsExactReadings() {
        assertNoneOutside((water, random) -> water.readExactly());
    }

    @Test
    void whatAWaterHoldsIsWithinTheBoundsOfWhatAKitShows() {
        assertNoneOutside((water, random) -> water.readByKit(random).build());
    }

    @Test
    void whatAWaterHoldsIsWithinTheBoundsOfAPartOfAKit() {
        assertNoneOutside((water, random) -> water.readInPart(random).build());
    }

    private static void assertNoneOutside(BiFunction<KitWater, Random, KitReadings> reader) {
        List<String> outside = LongStream.range(FIRST_SEED, FIRST_SEED + COUNT)
                .parallel()
                .boxed()
                .flatMap(seed -> outside(seed, reader))
                .toList();
        assertEquals(List.of(), outside);
    }

    private static Stream<String> outside(long seed, BiFunction<KitWater, Random, KitReadings> reader) {
        Random random = new Random(seed);
        KitWater water = KitWater.random(random);
        try {
            return Kits.outside(water.water(), reader.apply(water, random).bounds()).stream()
                    .map(found -> "seed " + seed + ": " + found);
        } catch (RuntimeException refused) {
            return Stream.of("seed " + seed + ": " + refused + ", of " + water.water());
        }
    }
}
