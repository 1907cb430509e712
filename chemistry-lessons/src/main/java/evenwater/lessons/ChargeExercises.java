package evenwater.lessons;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Blending;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import evenwater.chemistry.worked.WorkedSolutions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
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
                "The report of " + dice.house() + " lists " + ion.name() + ", " + stated
                        + ". How much is that in milliequivalents per litre?",
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

    /** The alkalinity follows from the others but for a few percent, as in the report of a careful laboratory. */
    private static Exercise balance(Dice dice) {
        Map<Ion, Integer> cations = new LinkedHashMap<>();
        cations.put(Ion.CALCIUM, dice.whole(30, 120));
        cations.put(Ion.MAGNESIUM, dice.whole(4, 30));
        cations.put(Ion.SODIUM, dice.whole(5, 60));
        double charges = milliequivalents(cations);
        Map<Ion, Integer> anions = new LinkedHashMap<>();
        anions.put(Ion.CHLORIDE, share(dice.whole(5, 30), charges, Ion.CHLORIDE));
        anions.put(Ion.SULFATE, share(dice.whole(5, 30), charges, Ion.SULFATE));
        int missingPercent = dice.whole(-6, 6);
        double balanced = charges * (100 - missingPercent) / (100 + missingPercent);
        double alkalinity = Math.rint(10 * (balanced - milliequivalents(anions))) / 10;
        Map<Ion, Integer> ions = new LinkedHashMap<>(cations);
        ions.putAll(anions);
        WaterBuilder water =
                Water.builder().alkalinity(Alkalinity.of(alkalinity, Alkalinity.MILLIEQUIVALENT_PER_LITRE));
        ions.forEach((ion, milligrams) -> water.total(ion, milligrams(milligrams, ion)));
        String listed = ions.entrySet().stream()
                .map(ion -> ion.getKey().name() + " " + ion.getValue())
                .collect(Collectors.joining(", "));
        return new Exercise(
                "A laboratory found in the water of " + dice.house() + " in mg/L: " + listed + ", and an alkalinity of "
                        + alkalinity + " meq/L. By how much do the charges miss each other, in percent of their sum?",
                WorkedSolutions.ionBalance(water.build()));
    }

    private static double milliequivalents(Map<Ion, Integer> milligrams) {
        return milligrams.entrySet().stream()
                .mapToDouble(ion -> ion.getKey()
                        .equivalents(milligrams(ion.getValue(), ion.getKey()))
                        .in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE))
                .sum();
    }

    /** Whole milligrams of an ion that carries some percent of the charges. */
    private static int share(int percent, double charges, Ion ion) {
        return (int) Math.rint(percent / 100.0 * charges / milliequivalents(Map.of(ion, 1)));
    }

    private static Exercise softener(Dice dice) {
        int calcium = dice.whole(30, 180);
        return new Exercise(
                "A softener that works with sodium takes all the calcium out of the water of " + dice.house() + ", "
                        + calcium + " mg/L; there is no magnesium in it. How much sodium does it add?",
                WorkedSolutions.softening(
                        Softener.withSodium(), calciumWater(calcium, calcium / 25), dice.one(SCALES)));
    }

    private static Exercise dilution(Dice dice) {
        int calcium = dice.whole(30, 180);
        int alkalinity = dice.whole(1, 6);
        int percent = 5 * dice.whole(2, 17);
        Water water = calciumWater(calcium, alkalinity);
        Unit<Hardness> scale = dice.one(SCALES);
        return new Exercise(
                dice.person() + " mixes " + (100 - percent) + " % of a water with "
                        + water.hardness().to(scale).toText(Locale.ROOT, 4) + " of hardness, all of it " + calcium
                        + " mg/L of calcium, and " + alkalinity + " meq/L of alkalinity with " + percent
                        + " % of pure water. What is left of hardness, alkalinity and calcium?",
                WorkedSolutions.blending(Blending.withPureWater(percent / 100.0), water, scale));
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
