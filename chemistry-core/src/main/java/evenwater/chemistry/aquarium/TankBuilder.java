package evenwater.chemistry.aquarium;

import static evenwater.chemistry.quantity.FlowRate.LITRE_PER_DAY;
import static evenwater.chemistry.quantity.WaterUnits.DAY;

import evenwater.chemistry.kernel.TankRhythm;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.treatment.Treatment;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * Builds a {@link Tank}: how its water is changed, what evaporates, what comes and goes in a day.
 *
 * <p>What is not stated does not happen. Not thread-safe.
 */
public final class TankBuilder {

    private final TankVolume volume;
    private final Water start;
    private double fraction;
    private double interval = Double.POSITIVE_INFINITY;
    private @Nullable Water change;
    private double drip;
    private FlowRate evaporation = FlowRate.of(0, LITRE_PER_DAY);
    private @Nullable Water level;
    private boolean falls;
    private boolean refilledWithChangeWater;
    private final List<Change> daily = new ArrayList<>();
    private final List<Change> doses = new ArrayList<>();

    TankBuilder(TankVolume volume, Water start) {
        this.volume = Objects.requireNonNull(volume, "volume");
        this.start = Objects.requireNonNull(start, "start");
    }

    /**
     * Sets the water changes; the first is due after one interval.
     *
     * @param newFraction of the net volume that a change takes out; no unit, 0 to 1
     * @param newInterval between two changes; 0.01 to 10 000 days: 3.5 days for twice a week
     * @param with water that is filled in
     * @return this builder
     * @throws IllegalArgumentException if fraction or interval are out of range
     */
    public TankBuilder changing(double newFraction, Quantity<Time> newInterval, Water with) {
        if (!(newFraction >= 0 && newFraction <= 1)) {
            throw new IllegalArgumentException(
                    "fraction of a water change must be from 0 to 1, but was " + newFraction);
        }
        WaterQuantity<Time> stated = WaterUnits.time(Objects.requireNonNull(newInterval, "interval"));
        double days = stated.in(DAY);
        if (!(days >= 0.01 && days <= 10_000)) {
            throw new IllegalArgumentException(
                    "interval between water changes must be from 0.01 d to 10000 d, but was " + stated);
        }
        fraction = newFraction;
        interval = days;
        change = Objects.requireNonNull(with, "with");
        drip = 0;
        return this;
    }

    /**
     * Sets the water changes with what a treatment makes of a source.
     *
     * @param newFraction of the net volume that a change takes out; no unit, 0 to 1
     * @param newInterval between two changes; 0.01 to 10 000 days
     * @param treatment such as a train of softener and membrane
     * @param source water before it
     * @return this builder
     * @throws IllegalArgumentException if fraction or interval are out of range
     * @throws NoAnswerException if the treatment has no answer for this source
     */
    public TankBuilder changing(double newFraction, Quantity<Time> newInterval, Treatment treatment, Water source) {
        Objects.requireNonNull(treatment, "treatment");
        return changing(newFraction, newInterval, treatment.treat(Objects.requireNonNull(source, "source")));
    }

    /**
     * Sets an exchange without pause instead of single changes: fresh water drips in, tank water leaves by the overflow.
     *
     * @param flow of fresh water, over what makes up for evaporation; above 0, at most 1000 net volumes a day
     * @param with the fresh water
     * @return this builder
     * @throws IllegalArgumentException if the flow is out of range
     */
    public TankBuilder dripping(Quantity<FlowRate> flow, Water with) {
        FlowRate stated = FlowRate.from(Objects.requireNonNull(flow, "flow"));
        double share = stated.in(LITRE_PER_DAY) / volume.netInLitres();
        if (!(share > 0 && share <= 1000)) {
            throw new IllegalArgumentException("drip must be above 0, at most 1000 net volumes a day, but was " + stated
                    + " into " + volume.net());
        }
        fraction = 0;
        interval = Double.POSITIVE_INFINITY;
        change = Objects.requireNonNull(with, "with");
        drip = share;
        return this;
    }

    /**
     * Sets the evaporation, made up for daily or all the time.
     *
     * @param flow of pure water into the air; 0 or more, less than the net volume in a day
     * @param with water that keeps the level
     * @return this builder
     * @throws IllegalArgumentException if the flow is out of range
     */
    public TankBuilder evaporatingToppedOffWith(Quantity<FlowRate> flow, Water with) {
        evaporation = evaporation(flow);
        level = Objects.requireNonNull(with, "with");
        falls = false;
        refilledWithChangeWater = false;
        return this;
    }

    /**
     * Sets the evaporation, made up for only at each water change, with the water of the change.
     *
     * @param flow of pure water into the air; 0 or more, less than the net volume in a day
     * @return this builder
     * @throws IllegalArgumentException if the flow is out of range
     */
    public TankBuilder evaporatingUntilChange(Quantity<FlowRate> flow) {
        evaporation = evaporation(flow);
        level = null;
        falls = true;
        refilledWithChangeWater = true;
        return this;
    }

    /**
     * Sets the evaporation, made up for only at each water change, with a water of its own.
     *
     * @param flow of pure water into the air; 0 or more, less than the net volume in a day
     * @param with water that makes up for it
     * @return this builder
     * @throws IllegalArgumentException if the flow is out of range
     */
    public TankBuilder evaporatingUntilChange(Quantity<FlowRate> flow, Water with) {
        evaporation = evaporation(flow);
        level = Objects.requireNonNull(with, "with");
        falls = true;
        refilledWithChangeWater = false;
        return this;
    }

    private FlowRate evaporation(Quantity<FlowRate> flow) {
        FlowRate stated = FlowRate.from(Objects.requireNonNull(flow, "flow"));
        double litres = stated.in(LITRE_PER_DAY);
        if (!(litres >= 0 && litres < volume.netInLitres())) {
            throw new IllegalArgumentException("evaporation must be from 0 L/d to below the " + volume.net()
                    + " of the tank in a day, but was " + stated);
        }
        return stated;
    }

    /**
     * Adds what happens in every day, evenly over it: uptake, release, nitrification, gravel that dissolves.
     *
     * @param perLitre change in a day, per litre of the net volume, such as {@code Metabolism.nitrifying(…)}
     * @return this builder
     */
    public TankBuilder daily(Change perLitre) {
        daily.add(Objects.requireNonNull(perLitre, "perLitre"));
        return this;
    }

    /**
     * Adds a dose of every day.
     *
     * @param compound what is dosed
     * @param mass for the whole tank; 0 or more
     * @return this builder
     * @throws IllegalArgumentException if the mass is negative
     */
    public TankBuilder daily(Compound compound, Quantity<Mass> mass) {
        return daily(dissolving(compound, mass));
    }

    /**
     * Adds what is dosed at each water change, just after it.
     *
     * @param perLitre change per litre of the net volume
     * @return this builder
     */
    public TankBuilder atEachChange(Change perLitre) {
        doses.add(Objects.requireNonNull(perLitre, "perLitre"));
        return this;
    }

    /**
     * Adds a dose at each water change, just after it.
     *
     * @param compound what is dosed
     * @param mass for the whole tank; 0 or more
     * @return this builder
     * @throws IllegalArgumentException if the mass is negative
     */
    public TankBuilder atEachChange(Compound compound, Quantity<Mass> mass) {
        return atEachChange(dissolving(compound, mass));
    }

    private Change dissolving(Compound compound, Quantity<Mass> mass) {
        Objects.requireNonNull(compound, "compound");
        return Change.dissolving(compound, Objects.requireNonNull(mass, "mass"), volume.net());
    }

    /**
     * Returns the tank.
     *
     * @return the tank
     * @throws IllegalArgumentException if doses or refills are to come at changes and there are none, or evaporation and a change take more than
     *     the net volume
     */
    public Tank build() {
        boolean changes = !Double.isInfinite(interval);
        if (!doses.isEmpty() && !changes) {
            throw new IllegalArgumentException("a dose at each water change needs water changes, but none are stated");
        }
        double share = evaporation.in(LITRE_PER_DAY) / volume.netInLitres();
        if (falls && share > 0 && drip > 0) {
            throw new IllegalArgumentException("a drip keeps the level, so evaporation cannot wait for a water change");
        }
        Water none = Water.pure();
        Water fresh = change == null ? none : change;
        Water made = refilledWithChangeWater ? fresh : level == null ? none : level;
        return new Tank(
                volume,
                rhythm(share, changes),
                new TankInflows(start, fresh, made, daily, doses),
                rests(share, changes, made));
    }

    private TankRhythm rhythm(double share, boolean changes) {
        if (drip > 0) {
            return TankRhythm.dripping(drip, share);
        }
        if (!falls) {
            return TankRhythm.toppedOff(fraction, interval, share);
        }
        if (changes && !(share * interval < 1 && fraction + share * interval <= 1 + 1e-12)) {
            WaterQuantity<?> gone = WaterUnits.volume(evaporation.in(LITRE_PER_DAY) * interval, WaterUnits.LITRE);
            throw new IllegalArgumentException("evaporation of " + gone + " between two changes leaves less than the "
                    + WaterUnits.share(100 * fraction, WaterUnits.PERCENT) + " that a change takes out of "
                    + volume.net());
        }
        return TankRhythm.falling(fraction, interval, share);
    }

    /** Whether every interval ends as it began: nothing comes in and nothing goes, but water that pure water makes up for. */
    private boolean rests(double share, boolean changes, Water made) {
        boolean still = fraction == 0 && drip == 0 && daily.isEmpty() && doses.isEmpty();
        boolean pure = made.equals(Water.pure().with(made.temperature()));
        return still && (share == 0 || (pure && (changes || !falls)));
    }
}
