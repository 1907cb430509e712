package evenwater.lessons;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Blending;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.worked.WorkedSolutions;
import java.util.List;
import javax.measure.Unit;

/** Level 2: charges instead of milligrams. */
final class ChargeExercises {

    static final List<Unit<Hardness>> SCALES = List.of(
            Hardness.GERMAN_DEGREE,
            Hardness.GRAIN_PER_US_GALLON,
            Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE,
            Hardness.FRENCH_DEGREE);

    private ChargeExercises() {}

    static Exercise next(Dice dice) {
        return switch (dice.whole(1, 5)) {
            case 1 -> equivalents(dice);
            case 2 -> hardness(dice);
            case 3 -> balance(dice);
            case 4 -> softener(dice);
            default -> dilution(dice);
        };
    }

    private static Exercise equivalents(Dice dice) {
        Ion ion = dice.one(List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.SULFATE, Ion.NITRATE, Ion.CHLORIDE));
        AmountConcentration stated = milligrams(dice.whole(3, 150), ion);
        return new Exercise(
                "The report of " + dice.place() + " lists " + ion.name() + ", " + stated
                        + ". How many milliequivalents per litre are that?",
                WorkedSolutions.equivalents(ion, stated));
    }

    private static Exercise hardness(Dice dice) {
        int calcium = dice.whole(20, 140);
        int magnesium = dice.whole(2, 40);
        Unit<Hardness> scale = dice.one(SCALES);
        Water water = Water.builder()
                .total(Ion.CALCIUM, milligrams(calcium, Ion.CALCIUM))
                .total(Ion.MAGNESIUM, milligrams(magnesium, Ion.MAGNESIUM))
                .build();
        return new Exercise(
                dice.person() + " has a water with " + calcium + " mg/L of calcium and " + magnesium
                        + " mg/L of magnesium. What is its hardness in " + scale + "?",
                WorkedSolutions.hardness(water, scale));
    }

    private static Exercise balance(Dice dice) {
        int calcium = dice.whole(30, 120);
        int magnesium = dice.whole(4, 30);
        int sodium = dice.whole(5, 60);
        int chloride = dice.whole(5, 80);
        int sulfate = dice.whole(5, 90);
        double alkalinity = dice.tenths(1, 6);
        Water water = Water.builder()
                .total(Ion.CALCIUM, milligrams(calcium, Ion.CALCIUM))
                .total(Ion.MAGNESIUM, milligrams(magnesium, Ion.MAGNESIUM))
                .total(Ion.SODIUM, milligrams(sodium, Ion.SODIUM))
                .total(Ion.CHLORIDE, milligrams(chloride, Ion.CHLORIDE))
                .total(Ion.SULFATE, milligrams(sulfate, Ion.SULFATE))
                .alkalinity(Alkalinity.of(alkalinity, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .build();
        return new Exercise(
                "A laboratory found in the water of " + dice.place() + " in mg/L: calcium " + calcium + ", magnesium "
                        + magnesium
                        + ", sodium " + sodium + ", chloride " + chloride + ", sulfate " + sulfate
                        + ", and an alkalinity of "
                        + alkalinity + " meq/L. By how much do the charges miss each other, in percent of their sum?",
                WorkedSolutions.ionBalance(water));
    }

    private static Exercise softener(Dice dice) {
        int calcium = dice.whole(30, 180);
        return new Exercise(
                "A softener that works with sodium takes all the calcium out of the water of " + dice.place() + ", "
                        + calcium + " mg/L; there is no magnesium in it. How much sodium does it add?",
                WorkedSolutions.softening(
                        Softener.withSodium(), calciumWater(calcium, calcium / 25), dice.one(SCALES)));
    }

    private static Exercise dilution(Dice dice) {
        int calcium = dice.whole(30, 180);
        int alkalinity = dice.whole(1, 6);
        int percent = 5 * dice.whole(2, 17);
        return new Exercise(
                dice.person() + " mixes " + (100 - percent) + " % of a water that has " + calcium
                        + " mg/L of calcium and "
                        + alkalinity + " meq/L of alkalinity with " + percent
                        + " % of pure water. What is left of calcium and alkalinity?",
                WorkedSolutions.blending(
                        Blending.withPureWater(percent / 100.0), calciumWater(calcium, alkalinity), dice.one(SCALES)));
    }

    /** A water of stated calcium, its only hardness, and stated alkalinity. */
    static Water calciumWater(int milligramsOfCalcium, int milliequivalentsOfAlkalinity) {
        return Water.builder()
                .total(Ion.CALCIUM, milligrams(milligramsOfCalcium, Ion.CALCIUM))
                .alkalinity(Alkalinity.of(milliequivalentsOfAlkalinity, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .build();
    }

    /** Calcium and bicarbonate alone, of a stated hardness. */
    static Water hard(Hardness stated) {
        double millimoles = stated.in(Hardness.MILLIMOLE_PER_LITRE);
        return Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(millimoles, AmountConcentration.MILLIMOLE_PER_LITRE))
                .alkalinity(Alkalinity.of(2 * millimoles, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .build();
    }

    static AmountConcentration milligrams(double value, Ion ion) {
        return AmountConcentration.of(value, ion.milligramPerLitre());
    }
}
