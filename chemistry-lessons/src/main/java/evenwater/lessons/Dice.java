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

    private static final List<String> HOUSES = List.of(
            "a farmhouse above Quillbrook",
            "a laundry in Old Copper Row",
            "the teahouse by Marl Ferry",
            "a cottage behind Juniper Hall",
            "the bakery at Osier Bridge",
            "a boarding house on Gannet Row");

    private static final List<String> FISH_ROOMS = List.of(
            "the school aquarium in Amber Quay",
            "a greenhouse at Thistle Weir",
            "the fish room of the Fennel Cross club",
            "the shrimp nursery on Heron Steps",
            "the waiting room of a dentist in Teasel Lane",
            "the library of Brindle Mill");

    private final Random random;

    Dice(long seed) {
        random = new Random(mixed(seed));
    }

    /** Seeds near each other draw nearly the same first numbers; so their bits are stirred (the finisher of SplitMix64, Steele and others 2014). */
    private static long mixed(long seed) {
        long bits = seed;
        bits = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
        bits = (bits ^ (bits >>> 27)) * 0x94D049BB133111EBL;
        return bits ^ (bits >>> 31);
    }

    <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    String person() {
        return one(PEOPLE);
    }

    /** Where water comes from a tap. */
    String house() {
        return one(HOUSES);
    }

    /** Where water stands in a tank. */
    String fishRoom() {
        return one(FISH_ROOMS);
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
