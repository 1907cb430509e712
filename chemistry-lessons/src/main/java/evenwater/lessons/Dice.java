package evenwater.lessons;

import java.util.List;
import java.util.Random;

/**
 * Chooses numbers and settings for a seed.
 *
 * <p>{@link Random} and no newer generator: its sequence is part of its specification, so that a sheet of a seed is the same on every
 * machine and in every year.
 */
final class Dice {

    private static final List<String> PEOPLE =
            List.of("Imke", "Tomas", "Odile", "Raul", "Sanna", "Bram", "Ines", "Kofi", "Mirja", "Anselm");

    private static final List<String> PLACES = List.of(
            "the school aquarium in Amber Quay",
            "a greenhouse at Thistle Weir",
            "the fish room of the Fennel Cross club",
            "a farmhouse above Quillbrook",
            "the shrimp nursery on Heron Steps",
            "a laundry in Old Copper Row",
            "the teahouse by Marl Ferry",
            "a well behind Juniper Hall");

    private final Random random;

    Dice(long seed) {
        random = new Random(seed);
    }

    <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    String person() {
        return one(PEOPLE);
    }

    String place() {
        return one(PLACES);
    }

    /** A whole number, both ends included. */
    int whole(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    /** A number of tenths, both ends included. */
    double tenths(double least, double most) {
        return whole((int) Math.round(least * 10), (int) Math.round(most * 10)) / 10.0;
    }
}
