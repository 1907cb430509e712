package evenwater.chemistry.aquarium;

import static evenwater.chemistry.kernel.TankRhythm.CHANGE;
import static evenwater.chemistry.kernel.TankRhythm.DAILY;
import static evenwater.chemistry.kernel.TankRhythm.DOSE;
import static evenwater.chemistry.kernel.TankRhythm.INFLOWS;
import static evenwater.chemistry.kernel.TankRhythm.LEVEL;
import static evenwater.chemistry.kernel.TankRhythm.START;
import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.kernel.TankExhaustion;
import evenwater.chemistry.kernel.TankRhythm;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** What comes into a tank: waters that only bring, and neutral changes that also take; adds them up by weights. */
final class TankInflows {

    private static final Change NOTHING = Change.of(Map.of());

    /** What lacks by less than this share of what came is rounding, which a water drops by itself. */
    private static final double ROUNDING = 5e-13;

    private final Water start;
    private final Water change;
    private final Water level;
    private final List<Change> daily;
    private final List<Change> doses;

    TankInflows(Water start, Water change, Water level, List<Change> daily, List<Change> doses) {
        this.start = start;
        this.change = change;
        this.level = level;
        this.daily = List.copyOf(daily);
        this.doses = List.copyOf(doses);
    }

    /** Every ion that comes from somewhere or goes. */
    SortedSet<Ion> ions() {
        SortedSet<Ion> ions = new TreeSet<>(start.ions());
        ions.addAll(change.ions());
        ions.addAll(level.ions());
        daily.forEach(one -> ions.addAll(one.ions()));
        doses.forEach(one -> ions.addAll(one.ions()));
        return ions;
    }

    double dayWithout(Ion ion, TankRhythm rhythm) {
        return day(rhythm, water -> millimoles(water.total(ion)), moved -> millimoles(moved.total(ion)));
    }

    /** Infinity also where the carbon is unknown. */
    double dayWithoutCarbon(TankRhythm rhythm) {
        return day(rhythm, water -> carbon(water.carbon()), moved -> carbon(moved.carbon()));
    }

    double dayWithoutAlkalinity(TankRhythm rhythm) {
        return day(
                rhythm, water -> milliequivalents(water.alkalinity()), moved -> milliequivalents(moved.alkalinity()));
    }

    private double day(TankRhythm rhythm, ToDoubleFunction<Water> ofWater, ToDoubleFunction<Change> ofChange) {
        double[] gains = new double[INFLOWS];
        double[] losses = new double[INFLOWS];
        add(START, ofWater.applyAsDouble(start), gains, losses);
        add(CHANGE, ofWater.applyAsDouble(change), gains, losses);
        add(LEVEL, ofWater.applyAsDouble(level), gains, losses);
        daily.forEach(one -> add(DAILY, ofChange.applyAsDouble(one), gains, losses));
        doses.forEach(one -> add(DOSE, ofChange.applyAsDouble(one), gains, losses));
        for (int i = 0; i < INFLOWS; i++) {
            if (Double.isNaN(gains[i] + losses[i])) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return TankExhaustion.day(rhythm, gains, losses);
    }

    private static void add(int index, double amount, double[] gains, double[] losses) {
        gains[index] += Math.max(0, amount);
        losses[index] += Math.max(0, -amount);
    }

    /** The name of the first thing that these weights would leave below nothing. */
    Optional<String> lacking(double[] weights) {
        Water came = waters(weights);
        Change moved = moved(weights, daily, doses);
        List<Change> gains = parts(weights).stream().map(TankInflows::gains).toList();
        for (Ion ion : moved.ions()) {
            double gained = millimoles(came.total(ion));
            for (Change gain : gains) {
                gained += millimoles(gain.total(ion));
            }
            if (millimoles(came.total(ion)) + millimoles(moved.total(ion)) < -ROUNDING * gained) {
                return Optional.of(ion.name());
            }
        }
        double carbon = carbon(came.carbon()) + carbon(moved.carbon());
        return carbon < -ROUNDING * carbon(came.carbon()) ? Optional.of("inorganic carbon") : Optional.empty();
    }

    /** The water that the weights add up to; the caller has made sure that nothing lacks. */
    Water water(double[] weights, double volumeShare) {
        Water came = waters(weights);
        Change moved = moved(weights, daily, doses);
        Water sum = takesOnlyWhatIsThere(came, moved) ? came.plus(moved) : gainsFirst(came, weights);
        return volumeShare < 1 ? sum.concentratedBy(1 / volumeShare) : sum;
    }

    private Water waters(double[] weights) {
        Water sum = Water.pure().with(start.temperature());
        sum = plus(sum, start, weights[START]);
        sum = plus(sum, change, weights[CHANGE]);
        return plus(sum, level, weights[LEVEL]);
    }

    private static Water plus(Water sum, Water part, double weight) {
        // not times 0: the unknown carbon of a water that is gone is no concern any more
        return weight == 0 ? sum : sum.plus(Change.between(Water.pure(), part).times(weight));
    }

    private static Change moved(double[] weights, List<Change> daily, List<Change> doses) {
        Change sum = NOTHING;
        for (Change one : daily) {
            sum = sum.plus(one.times(weights[DAILY]));
        }
        for (Change one : doses) {
            sum = sum.plus(one.times(weights[DOSE]));
        }
        return sum;
    }

    private static boolean takesOnlyWhatIsThere(Water water, Change moved) {
        boolean carbon = !(carbon(water.carbon()) + carbon(moved.carbon()) < 0); // unknown takes nothing
        return carbon
                && moved.ions().stream()
                        .allMatch(ion -> millimoles(water.total(ion)) + millimoles(moved.total(ion)) >= 0);
    }

    /** Where a dose and an uptake cancel but for rounding: the water sees first what comes, so that it knows what rounding is. */
    private Water gainsFirst(Water came, double[] weights) {
        Change gains = NOTHING;
        Change losses = NOTHING;
        for (Change part : parts(weights)) {
            Change gain = gains(part);
            gains = gains.plus(gain);
            losses = losses.plus(part.plus(gain.times(-1)));
        }
        return came.plus(gains).plus(losses);
    }

    private List<Change> parts(double[] weights) {
        List<Change> parts = new ArrayList<>();
        daily.forEach(one -> parts.add(one.times(weights[DAILY])));
        doses.forEach(one -> parts.add(one.times(weights[DOSE])));
        return parts;
    }

    /** The ions that come, with all the alkalinity; charge that this leaves open the rest closes again. */
    private static Change gains(Change change) {
        WaterBuilder brought = Water.builder().alkalinity(change.alkalinity());
        for (Ion ion : change.ions()) {
            if (millimoles(change.total(ion)) > 0) {
                brought.total(ion, change.total(ion));
            }
        }
        change.carbon()
                .ifPresent(
                        c -> brought.carbon(AmountConcentration.of(Math.max(0, millimoles(c)), MILLIMOLE_PER_LITRE)));
        return Change.between(Water.pure(), brought.build());
    }

    private static double millimoles(AmountConcentration amount) {
        return amount.in(MILLIMOLE_PER_LITRE);
    }

    private static double carbon(Optional<AmountConcentration> carbon) {
        return carbon.map(TankInflows::millimoles).orElse(Double.NaN);
    }

    private static double milliequivalents(Alkalinity alkalinity) {
        return alkalinity.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }
}
