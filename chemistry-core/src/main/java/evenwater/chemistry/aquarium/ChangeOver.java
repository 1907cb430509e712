package evenwater.chemistry.aquarium;

import static evenwater.chemistry.quantity.WaterUnits.LITRE;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Volume;

/**
 * Leading a tank to another water by partial changes that no animal is hurt by.
 *
 * <p>{@link #plan} takes the largest fraction each time that keeps to the {@link ChangeOverLimits} of a day; {@link #step} asks the other way
 * round, what a given change would do. The new water comes at the temperature of the tank; evaporation and what lives in the tank are left out. pH is
 * that of water in equilibrium with the air, so a tank with CO₂ from a bottle moves otherwise. Immutable and thread-safe.
 */
public final class ChangeOver {

    private static final int MOST_STEPS = 365;
    private static final int HALVINGS = 45;
    /** A smaller change is none: a drop in a bucket. */
    private static final double LEAST_FRACTION = 1e-5;

    /** A change that is small and shows in the readings. */
    private static final double A_HUNDREDTH = 0.01;

    private final TankVolume volume;
    private final Water from;
    private final Water to;
    private final ChangeOverLimits limits;
    private final double mostFraction;
    private final double tolerance;
    private final int daysBetween;
    private final WaterQuantity<Pressure> air;

    private ChangeOver(
            TankVolume volume,
            Water from,
            Water to,
            ChangeOverLimits limits,
            double mostFraction,
            double tolerance,
            int daysBetween,
            WaterQuantity<Pressure> air) {
        this.volume = volume;
        this.from = from;
        this.to = to;
        this.limits = limits;
        this.mostFraction = mostFraction;
        this.tolerance = tolerance;
        this.daysBetween = daysBetween;
        this.air = air;
    }

    /**
     * Returns a daily change-over for {@linkplain ChangeOverLimits#sensitive sensitive} animals, by at most half of the water each time, until 5 % of
     * the way are left, aerated with the open air.
     *
     * @param volume of the tank, whose net part counts
     * @param from water in the tank
     * @param to water that it is changed with, and led to; of another routine the water of its changes
     * @return the change-over
     */
    public static ChangeOver of(TankVolume volume, Water from, Water to) {
        Objects.requireNonNull(volume, "volume");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Water tempered = to.with(from.temperature());
        return new ChangeOver(
                volume, from, tempered, ChangeOverLimits.sensitive(), 0.5, 0.05, 1, GasExchange.OUTDOOR_AIR);
    }

    /**
     * Returns the change-over within other limits.
     *
     * @param newLimits of a day
     * @return the change-over
     */
    public ChangeOver within(ChangeOverLimits newLimits) {
        Objects.requireNonNull(newLimits, "newLimits");
        return new ChangeOver(volume, from, to, newLimits, mostFraction, tolerance, daysBetween, air);
    }

    /**
     * Returns the change-over with another largest fraction of one change.
     *
     * @param fraction of the net volume; no unit, above 0 to 1
     * @return the change-over
     * @throws IllegalArgumentException if it is out of range
     */
    public ChangeOver changingAtMost(double fraction) {
        requireFraction(fraction);
        return new ChangeOver(volume, from, to, limits, fraction, tolerance, daysBetween, air);
    }

    private static void requireFraction(double fraction) {
        if (!(fraction > 0 && fraction <= 1)) {
            throw new IllegalArgumentException(
                    "fraction of a water change must be above 0, at most 1, but was " + fraction);
        }
    }

    /**
     * Returns the change-over that ends nearer to the new water, or farther from it.
     *
     * @param remainingShare of the difference between the two waters that may be left; no unit, above 0 and below 1
     * @return the change-over
     * @throws IllegalArgumentException if it is out of range
     */
    public ChangeOver until(double remainingShare) {
        if (!(remainingShare > 0 && remainingShare < 1)) {
            throw new IllegalArgumentException(
                    "share of the way that may be left must be above 0 and below 1, but was " + remainingShare);
        }
        return new ChangeOver(volume, from, to, limits, mostFraction, remainingShare, daysBetween, air);
    }

    /**
     * Returns the change-over with more time between the changes; the limits of a day hold for each change all the same.
     *
     * @param days between two changes; 1 to 60
     * @return the change-over
     * @throws IllegalArgumentException if it is out of range
     */
    public ChangeOver everyDays(int days) {
        if (days < 1 || days > 60) {
            throw new IllegalArgumentException("days between two changes must be from 1 to 60, but were " + days);
        }
        return new ChangeOver(volume, from, to, limits, mostFraction, tolerance, days, air);
    }

    /**
     * Returns the change-over of a tank aerated with another air.
     *
     * @param carbonDioxide partial pressure of CO₂; above 0 atm, to 10 atm
     * @return the change-over
     * @throws IllegalArgumentException if it is out of range
     */
    public ChangeOver aeratedWith(Quantity<Pressure> carbonDioxide) {
        WaterQuantity<Pressure> stated = WaterUnits.pressure(Objects.requireNonNull(carbonDioxide, "carbonDioxide"));
        double atmospheres = stated.in(WaterUnits.ATMOSPHERE);
        if (!(atmospheres > 0 && atmospheres <= 10)) {
            throw new IllegalArgumentException(
                    "partial pressure of CO₂ must be above 0 atm, to 10 atm, but was " + stated);
        }
        return new ChangeOver(volume, from, to, limits, mostFraction, tolerance, daysBetween, stated);
    }

    /**
     * Returns what one change on the first day would do, however fast.
     *
     * @param fraction of the net volume; no unit, above 0 to 1
     * @return the change, with the limits that it exceeds
     * @throws IllegalArgumentException if it is out of range
     * @throws NoAnswerException if the ionic strength is above 1 mol/L
     */
    public ChangeOverStep step(double fraction) {
        requireFraction(fraction);
        return step(1, fraction, from, reading(from));
    }

    private ChangeOverStep step(int day, double fraction, Water water, TankReading before) {
        Water after = water.mixedWith(to, fraction);
        TankReading reading = reading(after);
        WaterQuantity<Volume> litres = WaterUnits.volume(fraction * volume.netInLitres(), LITRE);
        return new ChangeOverStep(day, fraction, litres, after, before, reading, limits.excesses(before, reading));
    }

    private TankReading reading(Water water) {
        return TankReading.of(water, air);
    }

    /**
     * Returns the changes that lead there, each by the largest fraction that keeps to the limits.
     *
     * @return the plan; without a change if both waters are the same
     * @throws NoAnswerException if the limits allow no change at some point, or it would take more than 365
     */
    public ChangeOverPlan plan() {
        List<ChangeOverStep> steps = new ArrayList<>();
        Water water = from;
        TankReading now = reading(from);
        double left = from.equals(to) ? 0 : 1;
        while (left > tolerance) {
            if (steps.size() == MOST_STEPS) {
                throw new NoAnswerException(String.format(
                        Locale.ROOT,
                        "the change-over would take more than %d changes: %.3g %% of the way are left then",
                        MOST_STEPS,
                        100 * left));
            }
            int day = 1 + steps.size() * daysBetween;
            ChangeOverStep step = step(day, largestFraction(water, now, day), water, now);
            steps.add(step);
            water = step.water();
            now = step.after();
            left *= 1 - step.fraction();
        }
        return new ChangeOverPlan(steps, left, now, reading(to));
    }

    /** By halving: where a reading turns back on its way, the fraction may be smaller than the largest, never too large. */
    private double largestFraction(Water water, TankReading before, int day) {
        if (keeps(water, before, mostFraction)) {
            return mostFraction;
        }
        double gentle = 0;
        double tooMuch = mostFraction;
        for (int i = 0; i < HALVINGS && tooMuch - gentle > 1e-9 * tooMuch; i++) {
            double middle = (gentle + tooMuch) / 2;
            if (keeps(water, before, middle)) {
                gentle = middle;
            } else {
                tooMuch = middle;
            }
        }
        if (gentle < LEAST_FRACTION) {
            List<String> why = limits.excesses(before, reading(water.mixedWith(to, A_HUNDREDTH)));
            throw new NoAnswerException(
                    "the limits allow no water change on day " + day + ": by one of 1 % " + String.join("; ", why));
        }
        return gentle;
    }

    private boolean keeps(Water water, TankReading before, double fraction) {
        return limits.usedBy(before, reading(water.mixedWith(to, fraction))) <= 1;
    }
}
