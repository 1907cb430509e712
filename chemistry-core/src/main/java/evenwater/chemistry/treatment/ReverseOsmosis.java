package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.MembraneKernel;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A reverse-osmosis membrane by its rejections: what stays behind, what passes, and the stream that goes to the drain.
 *
 * <p>Rejection is meant against the feed: {@code permeate = (1 − rejection) · feed}. Rejections that were measured one by one do not
 * pass equal charges, and a permeate is neutral. So the side that would pass too much, cations or anions, is held back until it passes
 * no more charge than the other: all its ions by one factor, {@code Σ(other side) / Σ(this side)}. Then no ion passes more than its
 * rejection says, every feed has an answer, and waters that differ a little have permeates that differ a little.
 * {@link #adjusting} lets a single ion of your choice take the difference instead. {@link MembraneStreams} names the ions.
 *
 * <p>Dissolved CO₂ and H₂S pass freely, so the permeate of hard water is acid. A measured pH is dropped: for that of the permeate, feed it
 * {@code Speciation.of(water).water()}, which knows its carbon. Unmeasured charge passes, and is held back, like single-charged ions of
 * its sign. Other neutral solutes pass like single-charged ions unless you say otherwise; boric acid is held back much less, so set its rejection.
 *
 * <p>Immutable and thread-safe.
 */
public final class ReverseOsmosis implements Treatment {

    private final double single;
    private final double multiple;
    private final Map<Ion, Double> special;
    private final double recovery;
    private final @Nullable Ion adjusted;

    private ReverseOsmosis(
            double single, double multiple, Map<Ion, Double> special, double recovery, @Nullable Ion adjusted) {
        this.single = single;
        this.multiple = multiple;
        this.special = special;
        this.recovery = recovery;
        this.adjusted = adjusted;
    }

    /**
     * Returns a membrane.
     *
     * @param ofSingleCharged rejection of single-charged ions such as Na⁺, Cl⁻ and HCO₃⁻; no unit, 0 to 1
     * @param ofMultipleCharged rejection of ions with more charges such as Ca²⁺ and SO₄²⁻; no unit, 0 to 1
     * @return the membrane, with a recovery of 0.25
     * @throws IllegalArgumentException if a rejection is out of range
     */
    public static ReverseOsmosis rejecting(double ofSingleCharged, double ofMultipleCharged) {
        return new ReverseOsmosis(
                fraction(ofSingleCharged, "rejection of single-charged ions"),
                fraction(ofMultipleCharged, "rejection of multiple-charged ions"),
                Map.of(),
                0.25,
                null);
    }

    /**
     * Returns a membrane with another rejection for one ion.
     *
     * @param ion a reference form, or HCO₃⁻ for alkalinity
     * @param rejection no unit, 0 to 1
     * @return the membrane
     * @throws IllegalArgumentException if the rejection is out of range or the ion is counted elsewhere
     */
    public ReverseOsmosis rejecting(Ion ion, double rejection) {
        Map<Ion, Double> more = new LinkedHashMap<>(special);
        more.put(refuseUncounted(ion), fraction(rejection, "rejection of " + ion));
        return new ReverseOsmosis(single, multiple, more, recovery, adjusted);
    }

    /**
     * Returns a membrane with another recovery.
     *
     * @param share permeate volume over feed volume; no unit, above 0 and below 1
     * @return the membrane
     * @throws IllegalArgumentException if it is out of range
     */
    public ReverseOsmosis recovering(double share) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException("recovery must be above 0 and below 1, but was " + share);
        }
        return new ReverseOsmosis(single, multiple, special, share, adjusted);
    }

    /**
     * Returns the recovery.
     *
     * @return permeate volume over feed volume; no unit, above 0 and below 1; 0.25 unless stated
     */
    public double recovery() {
        return recovery;
    }

    /**
     * Returns a membrane that adjusts this ion alone until the permeate is neutral; all others pass by their rejections.
     *
     * @param ion a charged reference form, or HCO₃⁻ for alkalinity
     * @return the membrane
     * @throws IllegalArgumentException if the ion has no charge or is counted elsewhere
     */
    public ReverseOsmosis adjusting(Ion ion) {
        refuseUncounted(ion);
        if (ion.chargeNumber() == 0) {
            throw new IllegalArgumentException(ion + " has no charge to adjust");
        }
        return new ReverseOsmosis(single, multiple, special, recovery, ion);
    }

    private static Ion refuseUncounted(Ion ion) {
        Objects.requireNonNull(ion, "ion");
        Ion form = ion.referenceForm();
        if (ion.equals(Ion.BICARBONATE)) {
            return ion;
        }
        if (form.equals(Ion.CARBON_DIOXIDE) || form.equals(Ion.WATER)) {
            throw new IllegalArgumentException(
                    ion + " has no rejection of its own: state HCO₃⁻ for alkalinity; dissolved CO₂ passes freely");
        }
        if (!ion.isReferenceForm()) {
            throw new IllegalArgumentException(
                    ion + " is counted in " + form + ": state that one, or HCO₃⁻ for alkalinity");
        }
        return ion;
    }

    private static double fraction(double value, String what) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(what + " must be from 0 to 1, but was " + value);
        }
        return value;
    }

    @Override
    public Water treat(Water source) {
        return streams(source).permeate();
    }

    /**
     * Returns both streams.
     *
     * @param feed water before the membrane
     * @return permeate, concentrate and the ions that were adjusted
     * @throws NoAnswerException if a single ion was named that cannot make the permeate neutral within 0 to all of the feed
     */
    public MembraneStreams streams(Water feed) {
        Objects.requireNonNull(feed, "feed");
        Map<Ion, Double> passed = new TreeMap<>();
        for (Ion ion : feed.ions()) {
            passed.put(ion, passage(ion) * inFeed(feed, ion));
        }
        passed.put(Ion.BICARBONATE, passage(Ion.BICARBONATE) * inFeed(feed, Ion.BICARBONATE));
        Passing byRejection = Passing.byRejection(
                passed, (1 - single) * feed.unmeasuredCharge().in(MILLIEQUIVALENT_PER_LITRE));
        Passing neutral = adjusted == null ? byRejection.heldBack() : adjust(feed, byRejection, adjusted);
        Water permeate = permeate(feed, neutral);
        return new MembraneStreams(permeate, concentrate(feed, permeate), neutral.adjusted());
    }

    private static Passing adjust(Water feed, Passing passing, Ion ion) {
        double all = inFeed(feed, ion);
        return passing.adjusting(ion, all)
                .orElseThrow(() -> new NoAnswerException(
                        "adjusting " + ion + " cannot make the permeate neutral: the rejections leave "
                                + passing.excess() + " meq/L, and the feed holds " + all + " mmol/L of it",
                        EquivalentConcentration.of(passing.excess(), MILLIEQUIVALENT_PER_LITRE),
                        AmountConcentration.of(all, MILLIMOLE_PER_LITRE)));
    }

    private static Water permeate(Water feed, Passing passing) {
        WaterBuilder builder = Water.builder()
                .temperature(feed.temperature())
                .unmeasuredCharge(EquivalentConcentration.of(passing.unmeasured(), MILLIEQUIVALENT_PER_LITRE));
        passing.amounts().forEach((ion, amount) -> {
            if (!ion.equals(Ion.BICARBONATE)) {
                builder.total(ion, AmountConcentration.of(Math.max(0, amount), MILLIMOLE_PER_LITRE));
            }
        });
        feed.carbon().ifPresent(carbon -> {
            double permeateCarbon = MembraneKernel.permeateCarbon(
                    carbon.in(MILLIMOLE_PER_LITRE),
                    carbonDioxide(feed, carbon.in(MILLIMOLE_PER_LITRE)),
                    inFeed(feed, Ion.BICARBONATE),
                    passing.amounts().getOrDefault(Ion.BICARBONATE, 0.0));
            builder.carbon(AmountConcentration.of(Math.max(0, permeateCarbon), MILLIMOLE_PER_LITRE));
        });
        return builder.build();
    }

    /** What is free to pass, in mmol/L; in waters too strong or too strange to solve, the carbon that no alkalinity can hold. */
    private static double carbonDioxide(Water feed, double carbon) {
        try {
            return Speciation.extrapolated(feed, ActivityLaw.TRUESDELL_JONES)
                    .carbonDioxide()
                    .in(MILLIMOLE_PER_LITRE);
        } catch (NoAnswerException noSpecies) {
            return Math.max(0, carbon - Math.max(0, inFeed(feed, Ion.BICARBONATE)));
        }
    }

    private Water concentrate(Water feed, Water permeate) {
        WaterBuilder builder = Water.builder().temperature(feed.temperature());
        for (Ion ion : feed.ions()) {
            double rejected = MembraneKernel.concentrate(inFeed(feed, ion), inFeed(permeate, ion), recovery);
            builder.total(ion, AmountConcentration.of(Math.max(0, rejected), MILLIMOLE_PER_LITRE));
        }
        builder.unmeasuredCharge(EquivalentConcentration.of(
                MembraneKernel.concentrate(
                        feed.unmeasuredCharge().in(MILLIEQUIVALENT_PER_LITRE),
                        permeate.unmeasuredCharge().in(MILLIEQUIVALENT_PER_LITRE),
                        recovery),
                MILLIEQUIVALENT_PER_LITRE));
        feed.carbon()
                .ifPresent(carbon -> builder.carbon(AmountConcentration.of(
                        Math.max(
                                0,
                                MembraneKernel.concentrate(
                                        carbon.in(MILLIMOLE_PER_LITRE),
                                        permeate.carbon().orElse(carbon).in(MILLIMOLE_PER_LITRE),
                                        recovery)),
                        MILLIMOLE_PER_LITRE)));
        return builder.build();
    }

    private double passage(Ion ion) {
        double usual = Math.abs(ion.chargeNumber()) > 1 ? multiple : single;
        double unlessSaid = ion.equals(Ion.HYDROGEN_SULFIDE) ? 0 : usual; // a dissolved gas, like CO₂
        return 1 - special.getOrDefault(ion, unlessSaid);
    }

    /** mmol/L of an ion in the feed; alkalinity stands for HCO₃⁻. */
    private static double inFeed(Water feed, Ion ion) {
        return ion.equals(Ion.BICARBONATE)
                ? feed.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE)
                : feed.total(ion).in(MILLIMOLE_PER_LITRE);
    }

    @Override
    public String name() {
        StringBuilder name = new StringBuilder("reverse osmosis rejecting ")
                .append(percent(single))
                .append(" of single-charged and ")
                .append(percent(multiple))
                .append(" of multiple-charged ions");
        special.forEach(
                (ion, r) -> name.append(", ").append(percent(r)).append(" of ").append(ion));
        return adjusted == null
                ? name.toString()
                : name.append(", adjusting ").append(adjusted).toString();
    }

    static String percent(double share) {
        return WaterUnits.share(100 * share, WaterUnits.PERCENT).toText(Locale.ROOT, share < 0.9999 ? 4 : 15);
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name();
    }
}
