package evenwater.chemistry.aquarium;

import static evenwater.chemistry.kernel.TankRhythm.INFLOWS;
import static evenwater.chemistry.quantity.WaterUnits.DAY;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;

import evenwater.chemistry.kernel.TankKernel;
import evenwater.chemistry.kernel.TankRhythm;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;

/**
 * A tank over weeks: what water changes, evaporation, doses and living things make of its water.
 *
 * <p>Each ion, alkalinity and unmeasured charge follow {@code C' = (1 − q) C + b} from change to change, in closed form, so that 10 000 weeks cost
 * as much as one and do not drift. What comes in a day comes evenly; the first change is due after one interval. A dose of salt adds no volume, rain
 * and fish add none either. The tank keeps the temperature of its start water.
 *
 * <p><b>Carbon and pH.</b> Inorganic carbon is booked as if the tank were closed to the air; a tank is not: ask for the pH of
 * {@code GasExchange.equilibrated(tank.after(…), GasExchange.OUTDOOR_AIR)}, which needs no carbon. Calcite that drops and gas that leaves are not
 * reckoned with.
 *
 * <p><b>What runs out.</b> Nothing falls below zero: where the daily changes would take more than there is, there is no answer, and the
 * {@linkplain #exhaustionOf day} tells why. Alkalinity may: below zero the water is acid.
 *
 * <p>Immutable and thread-safe.
 */
public final class Tank {

    /** Some 2700 years. */
    private static final double MOST_DAYS = 1e6;

    private static final int MOST_MOMENTS = 100_000;
    private static final double SAME_MOMENT = 1e-9;
    /** Rounding of a day; what is taken up in it stays below the rounding that a water forgives. */
    private static final double ROUNDING = 1e-13;

    private final TankVolume volume;
    private final TankRhythm rhythm;
    private final TankInflows inflows;
    private final boolean rests;
    /** What runs out first, or an empty text. */
    private final String exhausted;

    private final double dayOfExhaustion;

    /** A tank to which nothing comes and from which nothing goes is at rest as it is. */
    Tank(TankVolume volume, TankRhythm rhythm, TankInflows inflows, boolean rests) {
        this.volume = volume;
        this.rhythm = rhythm;
        this.inflows = inflows;
        this.rests = rests;
        String first = "inorganic carbon";
        double day = inflows.dayWithoutCarbon(rhythm);
        for (Ion ion : inflows.ions()) {
            double without = inflows.dayWithout(ion, rhythm);
            if (without < day) {
                first = ion.name();
                day = without;
            }
        }
        this.exhausted = first;
        this.dayOfExhaustion = day;
    }

    /**
     * Returns a builder for a tank.
     *
     * @param volume of which the net part counts
     * @param start water on day 0, whose temperature the tank keeps
     * @return the builder of a tank without changes and evaporation
     */
    public static TankBuilder builder(TankVolume volume, Water start) {
        return new TankBuilder(volume, start);
    }

    /**
     * Returns the volume.
     *
     * @return nominal and net
     */
    public TankVolume volume() {
        return volume;
    }

    /**
     * Returns the water after a time; at the moment of a change, that just after it.
     *
     * @param time since the start; 0 to 10⁶ days
     * @return the water
     * @throws IllegalArgumentException if the time is out of range
     * @throws NoAnswerException if something runs out before, or all the water has evaporated
     */
    public Water after(Quantity<Time> time) {
        double day = days(time, "time");
        return water(day, rhythm.changesBy(day), rhythm.daysSinceChange(day));
    }

    /**
     * Returns the water after some weeks of 7 days.
     *
     * @param weeks since the start; 0 to 142 857
     * @return the water, as of {@link #after}
     * @throws IllegalArgumentException if the number is out of range
     * @throws NoAnswerException as {@link #after}
     */
    public Water afterWeeks(int weeks) {
        return after(WaterUnits.time(7.0 * weeks, DAY));
    }

    private static double days(Quantity<Time> time, String what) {
        WaterQuantity<Time> stated = WaterUnits.time(Objects.requireNonNull(time, what));
        double days = stated.in(DAY);
        if (!(days >= 0 && days <= MOST_DAYS)) {
            throw new IllegalArgumentException(
                    what + " in the life of a tank must be from 0 d to 1000000 d, but was " + stated);
        }
        return days;
    }

    private Water water(double day, double changes, double daysSince) {
        if (day > dayOfExhaustion * (1 + ROUNDING)) {
            WaterQuantity<Time> when = WaterUnits.time(dayOfExhaustion, DAY);
            throw new NoAnswerException(
                    exhausted + " runs out on day " + number(dayOfExhaustion)
                            + ": more is taken up than the tank has and gets",
                    when);
        }
        double share = rhythm.volumeShare(daysSince);
        if (!(share > 1e-9)) {
            double dry = day - daysSince + daysSince / (1 - share);
            throw new NoAnswerException(
                    "the tank is dry on day " + number(dry) + ": nothing makes up for evaporation",
                    WaterUnits.time(dry, DAY));
        }
        double[] weights = new double[INFLOWS];
        rhythm.weights(changes, daysSince, weights);
        return inflows.water(weights, share);
    }

    /**
     * Returns where the tank comes to rest.
     *
     * @return the waters just after and just before a change
     * @throws NoAnswerException if nothing leaves the tank, so that it never rests, or more of something is taken up than comes
     */
    public SteadyState steadyState() {
        if (rests) {
            double cycle = Double.isInfinite(rhythm.intervalInDays()) ? 0 : rhythm.intervalInDays();
            return new SteadyState(water(0, 0, 0), water(0, 0, cycle));
        }
        requireReplacement();
        double interval = rhythm.intervalInDays();
        boolean drips = Double.isInfinite(interval);
        double changes = drips ? 0 : Double.POSITIVE_INFINITY;
        Water after = atRest(changes, drips ? interval : 0);
        return new SteadyState(after, drips ? after : atRest(changes, interval));
    }

    private Water atRest(double changes, double daysSince) {
        double[] weights = new double[INFLOWS];
        rhythm.weights(changes, daysSince, weights);
        inflows.lacking(weights).ifPresent(what -> {
            throw new NoAnswerException(
                    "no steady state: " + what + " runs out, as more is taken up than the tank gets");
        });
        return inflows.water(weights, rhythm.volumeShare(daysSince));
    }

    private void requireReplacement() {
        if (!rhythm.replaces()) {
            throw new NoAnswerException("no steady state: without water changes nothing leaves the tank");
        }
    }

    /**
     * Returns how long it takes until a share of the way from the start to the steady state is behind, the same for everything dissolved.
     *
     * @param share of the way; no unit, 0 or more and below 1
     * @return time of the first change after which it is so; of a drip the very moment
     * @throws IllegalArgumentException if the share is out of range
     * @throws NoAnswerException if there is no steady state to go to
     */
    public WaterQuantity<Time> timeUntil(double share) {
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException(
                    "share of the way to the steady state must be from 0 to below 1, but was " + share);
        }
        if (rests) {
            return WaterUnits.time(0, DAY);
        }
        requireReplacement();
        if (Double.isInfinite(rhythm.intervalInDays())) {
            double[] weights = new double[INFLOWS];
            rhythm.weights(0, 1, weights);
            return WaterUnits.time(Math.log1p(-share) / Math.log(weights[TankRhythm.START]), DAY);
        }
        double changes = TankKernel.changesUntil(rhythm.takenAway(), share);
        return WaterUnits.time(changes * rhythm.intervalInDays(), DAY);
    }

    /**
     * Returns the path of the tank, day by day, with both waters of each change.
     *
     * @param period from the start; 0 to 10⁶ days, with at most 100 000 moments
     * @return every moment in its order
     * @throws IllegalArgumentException if the period is out of range
     * @throws NoAnswerException as {@link #after}
     */
    public TankCourse course(Quantity<Time> period) {
        double end = days(period, "period");
        double interval = rhythm.intervalInDays();
        double count = end + 2 * rhythm.changesBy(end);
        if (count > MOST_MOMENTS) {
            throw new IllegalArgumentException("a course has at most 100000 moments, but this period has "
                    + String.format(Locale.ROOT, "%.0f", count) + ": ask for single days");
        }
        List<TankMoment> moments = new ArrayList<>();
        moments.add(moment(0, 0, 0, false));
        double day = 1;
        for (double changes = 0; changes <= rhythm.changesBy(end); changes++) {
            double since = changes == 0 ? 0 : changes * interval;
            double next = (changes + 1) * interval;
            for (; day <= end && day < next * (1 - SAME_MOMENT); day++) {
                if (day > since * (1 + SAME_MOMENT)) {
                    moments.add(moment(day, changes, day - since, false));
                }
            }
            if (changes < rhythm.changesBy(end)) {
                moments.add(moment(next, changes, interval, false));
                moments.add(moment(next, changes + 1, 0, true));
            }
        }
        return new TankCourse(moments);
    }

    private TankMoment moment(double day, double changes, double daysSince, boolean afterChange) {
        Water water = water(day, changes, daysSince);
        WaterQuantity<Volume> held = WaterUnits.volume(volume.netInLitres() * rhythm.volumeShare(daysSince), LITRE);
        return new TankMoment(WaterUnits.time(day, DAY), water, held, afterChange);
    }

    /**
     * Returns when an ion runs out.
     *
     * @param ion a reference form
     * @return time since the start; empty if it does not within 10⁶ days
     * @throws IllegalArgumentException if the ion is counted elsewhere
     */
    public Optional<WaterQuantity<Time>> exhaustionOf(Ion ion) {
        Objects.requireNonNull(ion, "ion");
        return time(inflows.dayWithout(ion, rhythm));
    }

    /**
     * Returns when alkalinity is used up, so that the pH loses its hold.
     *
     * @return time since the start at which it first falls below 0; empty if it does not within 10⁶ days
     */
    public Optional<WaterQuantity<Time>> exhaustionOfAlkalinity() {
        return time(inflows.dayWithoutAlkalinity(rhythm));
    }

    private static Optional<WaterQuantity<Time>> time(double day) {
        return Double.isInfinite(day) ? Optional.empty() : Optional.of(WaterUnits.time(day, DAY));
    }

    /**
     * Returns what a keeper of this tank ought to know.
     *
     * @return sentences without a final dot: when alkalinity is used up, when an ion runs out; possibly none
     */
    public List<String> findings() {
        List<String> findings = new ArrayList<>();
        exhaustionOfAlkalinity()
                .ifPresent(when -> findings.add("alkalinity used up on day " + number(when.in(DAY))
                        + ": the pH crashes, and bacteria stop oxidising ammonia; more or larger changes, or a dose of bicarbonate, "
                        + "hold it up"));
        if (dayOfExhaustion <= MOST_DAYS) {
            findings.add(exhausted + " runs out on day " + number(dayOfExhaustion)
                    + ": what is taken up from then on is less than stated");
        }
        return List.copyOf(findings);
    }

    private static String number(double day) {
        return String.format(Locale.ROOT, "%.1f", day);
    }

    /** Returns the volume, for logs. */
    @Override
    public String toString() {
        return "tank with " + volume;
    }
}
