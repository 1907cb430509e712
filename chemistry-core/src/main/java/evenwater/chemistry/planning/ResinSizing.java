package evenwater.chemistry.planning;

import static evenwater.chemistry.quantity.ExchangeCapacity.EQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.FlowRate.LITRE_PER_HOUR;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;

import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;

/**
 * How much resin a household needs: by its hardness for some days, and by its flow. The larger of the two counts.
 *
 * <p>Limits of flow are common practice, no source: 8 to 40 bed volumes per hour (1 to 5 US gpm per cubic foot) in service, 80 at the peak, for beds of 0.6 m and more.
 * Pressure and pipes are left out: they are for a licensed plumber and the local code. Immutable and thread-safe.
 */
public final class ResinSizing {

    private static final double LEAST_SERVICE = 8;
    private static final double MOST_SERVICE = 40;
    private static final double MOST_PEAK = 80;
    private static final double SHALLOWEST_IN_METRES = 0.6;

    private final SoftenerPlan plan;
    private final SaltDose dose;
    private final double days;

    private ResinSizing(SoftenerPlan plan, SaltDose dose, double days) {
        this.plan = plan;
        this.dose = dose;
        this.days = days;
    }

    /**
     * Returns the sizing for a plan; its volume of resin does not matter.
     *
     * @param plan water, use, curve, reserve and bypass
     * @param sodiumChloride salt per volume of resin, within the curve
     * @param days between regenerations, the reserve not counted; above 0, at most 365
     * @return the sizing
     * @throws IllegalArgumentException if the days are out of range
     */
    public static ResinSizing of(SoftenerPlan plan, Quantity<SaltDose> sodiumChloride, double days) {
        Objects.requireNonNull(plan, "plan");
        if (!(days > 0 && days <= 365)) {
            throw new IllegalArgumentException(
                    "days between regenerations must be above 0 and at most 365, but were " + days);
        }
        return new ResinSizing(plan, SaltDose.from(sodiumChloride), days);
    }

    /**
     * Returns the resin that lasts the days.
     *
     * @return volume of settled resin in litres
     * @throws evenwater.chemistry.quantity.NoAnswerException if the curve does not know the dose
     */
    public WaterQuantity<Volume> resinForDays() {
        double needed = plan.dailyEquivalents() * days + plan.reserveEquivalents();
        return WaterUnits.volume(needed / plan.curve().capacity(dose).in(EQUIVALENT_PER_LITRE), LITRE);
    }

    /**
     * Returns the resin that lasts the days and takes the flow: the larger of the two.
     *
     * @param peak largest flow through the resin; 0 or more
     * @return volume of settled resin in litres
     * @throws IllegalArgumentException if the flow is negative
     */
    public WaterQuantity<Volume> resin(Quantity<FlowRate> peak) {
        WaterQuantity<Volume> forPeak = resinForPeak(peak);
        WaterQuantity<Volume> forDays = resinForDays();
        return forDays.compareTo(forPeak) >= 0 ? forDays : forPeak;
    }

    /**
     * Returns the least resin for a flow at the peak.
     *
     * @param peak largest flow through the resin; 0 or more
     * @return volume of settled resin in litres, at 80 bed volumes per hour
     * @throws IllegalArgumentException if the flow is negative
     */
    public static WaterQuantity<Volume> resinForPeak(Quantity<FlowRate> peak) {
        return WaterUnits.volume(litresPerHour(peak, "peak flow") / MOST_PEAK, LITRE);
    }

    /**
     * Returns the flow that a bed takes all day.
     *
     * @param resin volume of settled resin; above 0
     * @return 40 bed volumes per hour
     * @throws IllegalArgumentException if the volume is not positive
     */
    public static FlowRate mostServiceFlow(Quantity<Volume> resin) {
        return FlowRate.of(MOST_SERVICE * litres(resin), LITRE_PER_HOUR);
    }

    /**
     * Returns the flow that a bed takes for some minutes.
     *
     * @param resin volume of settled resin; above 0
     * @return 80 bed volumes per hour
     * @throws IllegalArgumentException if the volume is not positive
     */
    public static FlowRate mostPeakFlow(Quantity<Volume> resin) {
        return FlowRate.of(MOST_PEAK * litres(resin), LITRE_PER_HOUR);
    }

    /**
     * Returns what is outside of usual practice.
     *
     * @param resin volume of settled resin; above 0
     * @param depth of the settled bed; above 0
     * @param service usual flow; 0 or more
     * @param peak largest flow; 0 or more
     * @return sentences without a final dot; possibly none
     * @throws IllegalArgumentException if one is out of range
     */
    public static List<String> warnings(
            Quantity<Volume> resin, Quantity<Length> depth, Quantity<FlowRate> service, Quantity<FlowRate> peak) {
        double litres = WaterUnits.volume(resin).in(LITRE);
        double metres = WaterUnits.length(depth).in(WaterUnits.METRE);
        if (!(litres > 0 && metres > 0)) {
            throw new IllegalArgumentException("volume and depth of the resin must be positive, but were "
                    + WaterUnits.volume(resin) + " and " + WaterUnits.length(depth));
        }
        double usual = litresPerHour(service, "service flow") / litres;
        double most = litresPerHour(peak, "peak flow") / litres;
        if (usual > most) {
            throw new IllegalArgumentException("service flow must not be above the peak, but was "
                    + FlowRate.from(service) + " and " + FlowRate.from(peak));
        }
        List<String> warnings = new ArrayList<>();
        if (metres < SHALLOWEST_IN_METRES) {
            warnings.add("a bed of " + WaterUnits.length(depth) + " is shallower than the usual 0.6 m: it leaks early");
        }
        if (usual > MOST_SERVICE) {
            warnings.add("a flow of " + text(usual)
                    + " bed volumes per hour is above the usual 40: the run gets short and leaks");
        }
        if (usual < LEAST_SERVICE) {
            warnings.add("a flow of " + text(usual)
                    + " bed volumes per hour is below the usual 8: water finds channels through the bed");
        }
        if (most > MOST_PEAK) {
            warnings.add(
                    "a peak of " + text(most) + " bed volumes per hour is above the usual 80: hardness comes through");
        }
        return List.copyOf(warnings);
    }

    private static double litres(Quantity<Volume> resin) {
        double litres = WaterUnits.volume(resin).in(LITRE);
        if (!(litres > 0)) {
            throw new IllegalArgumentException(
                    "volume of the resin must be positive, but was " + WaterUnits.volume(resin));
        }
        return litres;
    }

    private static double litresPerHour(Quantity<FlowRate> flow, String what) {
        FlowRate stated = FlowRate.from(flow);
        if (stated.getValue() < 0) {
            throw new IllegalArgumentException(what + " must not be negative, but was " + stated);
        }
        return stated.in(LITRE_PER_HOUR);
    }

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.3g", number);
    }
}
