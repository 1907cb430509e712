package evenwater.lessons;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.worked.WorkedSolutions;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;

/** Level 1: one chain of factors. */
final class UnitExercises {

    static final List<Unit<Volume>> VOLUMES =
            List.of(WaterUnits.LITRE, WaterUnits.US_GALLON, WaterUnits.IMPERIAL_GALLON);

    private UnitExercises() {}

    static Exercise next(Dice dice) {
        return switch (dice.whole(1, 4)) {
            case 1 -> hardness(dice);
            case 2 -> alkalinity(dice);
            case 3 -> volume(dice);
            default -> temperature(dice);
        };
    }

    private static Exercise hardness(Dice dice) {
        Unit<Hardness> from = dice.one(Hardness.units());
        Unit<Hardness> to =
                another(dice, Hardness.units(), unit -> Hardness.of(1, from).in(unit));
        Hardness round = Hardness.of(dice.tenths(0.6, 6), Hardness.MILLIMOLE_PER_LITRE);
        Hardness stated = Hardness.of(rounded(round.in(from)), from);
        return exercise(
                "A strip in the water of " + dice.house() + " shows a hardness of " + stated + ". What does "
                        + dice.person() + " write down in " + to + "?",
                stated,
                to);
    }

    private static Exercise alkalinity(Dice dice) {
        Unit<Alkalinity> from = dice.one(Alkalinity.units());
        Unit<Alkalinity> to =
                another(dice, Alkalinity.units(), unit -> Alkalinity.of(1, from).in(unit));
        Alkalinity round = Alkalinity.of(dice.tenths(0.5, 7), Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        Alkalinity stated = Alkalinity.of(rounded(round.in(from)), from);
        return exercise(
                dice.person() + " titrates the water of " + dice.house() + " and finds an alkalinity of " + stated
                        + ". How much is that in " + to + "?",
                stated,
                to);
    }

    private static Exercise volume(Dice dice) {
        Unit<Volume> from = dice.one(VOLUMES);
        Unit<Volume> to =
                another(dice, VOLUMES, unit -> WaterUnits.volume(1, from).in(unit));
        WaterQuantity<Volume> stated = WaterUnits.volume(dice.whole(5, 120), from);
        return exercise(
                "A tank in " + dice.fishRoom() + " holds " + stated + ". How many " + to + " are that for "
                        + dice.person() + ", who doses by them?",
                stated,
                to);
    }

    private static Exercise temperature(Dice dice) {
        boolean fahrenheit = dice.whole(0, 1) == 1;
        Unit<Temperature> to = fahrenheit ? WaterUnits.CELSIUS : WaterUnits.FAHRENHEIT;
        WaterQuantity<Temperature> stated = fahrenheit
                ? WaterUnits.temperature(dice.whole(50, 90), WaterUnits.FAHRENHEIT)
                : WaterUnits.temperature(dice.whole(10, 32), WaterUnits.CELSIUS);
        return exercise(
                "The thermometer in " + dice.fishRoom() + " reads " + stated + ". What does " + dice.person()
                        + " write down in " + to + "?",
                stated,
                to);
    }

    private static <Q extends Quantity<Q>> Exercise exercise(String question, WaterQuantity<Q> stated, Unit<Q> to) {
        return new Exercise(question, WorkedSolutions.conversion(stated, to));
    }

    /** Another unit, and not one of the same size, where there is nothing to convert. */
    private static <T> T another(Dice dice, List<T> all, ToDoubleFunction<T> inIt) {
        return dice.one(
                all.stream().filter(unit -> inIt.applyAsDouble(unit) != 1).toList());
    }

    /** As a kit or a report would print it. */
    private static double rounded(double value) {
        return value >= 20 ? Math.rint(value) : value >= 2 ? Math.rint(value * 10) / 10 : Math.rint(value * 100) / 100;
    }
}
