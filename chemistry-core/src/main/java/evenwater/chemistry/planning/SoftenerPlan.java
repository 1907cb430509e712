package evenwater.chemistry.planning;

import static evenwater.chemistry.quantity.ExchangeCapacity.EQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;

import evenwater.chemistry.analysis.IronCompensation;
import evenwater.chemistry.exchange.CapacityCurve;
import evenwater.chemistry.exchange.Regeneration;
import evenwater.chemistry.exchange.SofteningCycle;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * The softener of a household before its dose of salt is chosen: water, use, resin, capacity curve, reserve, bypass.
 *
 * <p>{@link #at} answers what a dose means, {@link #leastSaltFor} which dose wastes least and still lasts. Sizing counts the hardness that the trade compensates for iron and
 * manganese; sodium follows from the true hardness. Immutable and thread-safe.
 */
public final class SoftenerPlan {

    private static final double LEAST_RESIN = 1e-3;
    private static final double MOST_RESIN = 1e6;
    private static final double ROUNDING = 1e-9;

    private final Water source;
    private final HouseholdUse use;
    private final WaterQuantity<Volume> resin;
    private final CompensatedHardness sizedFor;
    private final CapacityCurve curve;
    private final Regeneration regeneration;
    private final double reserveDays;
    private final @Nullable Hardness remaining;

    private SoftenerPlan(
            Water source,
            HouseholdUse use,
            WaterQuantity<Volume> resin,
            CompensatedHardness sizedFor,
            CapacityCurve curve,
            Regeneration regeneration,
            double reserveDays,
            @Nullable Hardness remaining) {
        this.source = source;
        this.use = use;
        this.resin = resin;
        this.sizedFor = sizedFor;
        this.curve = curve;
        this.regeneration = regeneration;
        this.reserveDays = reserveDays;
        this.remaining = remaining;
    }

    /**
     * Returns a plan by the table of the trade, co-flow with sodium chloride, with a reserve of one day and without bypass.
     *
     * @param source raw water; its iron and manganese add to the hardness that is planned for, as {@link IronCompensation#USUAL} says
     * @param use of the household
     * @param resin volume of settled resin; 1 mL to 1000 m³
     * @return the plan
     * @throws IllegalArgumentException if the volume is out of range
     * @throws NoAnswerException if the water has no hardness
     */
    public static SoftenerPlan of(Water source, HouseholdUse use, Quantity<Volume> resin) {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(use, "use");
        WaterQuantity<Volume> stated = WaterUnits.volume(Objects.requireNonNull(resin, "resin"));
        if (!(stated.in(LITRE) >= LEAST_RESIN && stated.in(LITRE) <= MOST_RESIN)) {
            throw new IllegalArgumentException("volume of the resin must be from 1 mL to 1000 m³, but was " + stated);
        }
        CompensatedHardness sizedFor =
                IronCompensation.USUAL.of(source.hardness(), source.total(Ion.IRON_II), source.total(Ion.MANGANESE_II));
        return new SoftenerPlan(
                source,
                use,
                stated,
                checked(sizedFor),
                CapacityCurve.ofTheTrade(),
                Regeneration.coFlow(CapacityCurve.ofTheTrade().least()),
                1,
                null);
    }

    private static CompensatedHardness checked(CompensatedHardness hardness) {
        if (!(hardness.getValue() > 0)) {
            throw new NoAnswerException(
                    "a water without hardness needs no softener: hardness was " + hardness, hardness);
        }
        return hardness;
    }

    /**
     * Returns the plan for another hardness, compensated in another way.
     *
     * @param hardness what the resin is planned for; above 0
     * @return the plan
     * @throws NoAnswerException if it is not positive
     */
    public SoftenerPlan sizedFor(Quantity<CompensatedHardness> hardness) {
        CompensatedHardness stated = checked(CompensatedHardness.from(hardness));
        return new SoftenerPlan(source, use, resin, stated, curve, regeneration, reserveDays, remaining);
    }

    /**
     * Returns the plan by another curve.
     *
     * @param other capacity against dose, such as {@link CapacityCurve#modelled}
     * @return the plan
     */
    public SoftenerPlan with(CapacityCurve other) {
        Objects.requireNonNull(other, "curve");
        return new SoftenerPlan(source, use, resin, sizedFor, other, regeneration, reserveDays, remaining);
    }

    /**
     * Returns the plan with another way of regeneration.
     *
     * @param other salt, direction and water; its dose does not matter
     * @return the plan
     */
    public SoftenerPlan with(Regeneration other) {
        Objects.requireNonNull(other, "regeneration");
        return new SoftenerPlan(source, use, resin, sizedFor, curve, other, reserveDays, remaining);
    }

    /**
     * Returns the plan with another reserve: what must be left in the evening when the night does not regenerate.
     *
     * @param days of use by the busiest day; 0 to 7; 1 is usual
     * @return the plan
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerPlan withReserve(double days) {
        if (!(days >= 0 && days <= 7)) {
            throw new IllegalArgumentException("reserve must be from 0 to 7 days of use, but was " + days);
        }
        return new SoftenerPlan(source, use, resin, sizedFor, curve, regeneration, days, remaining);
    }

    /**
     * Returns the plan with a bypass: some raw water goes past the resin, so that some hardness remains.
     *
     * @param hardness of the blend; above 0, below that of the raw water
     * @return the plan
     * @throws NoAnswerException if it is out of range
     */
    public SoftenerPlan leaving(Quantity<Hardness> hardness) {
        Hardness stated = Hardness.from(hardness);
        if (!(stated.getValue() > 0 && stated.compareTo(source.hardness()) < 0)) {
            Hardness raw = source.hardness().to(stated.getUnit());
            throw new NoAnswerException(
                    "hardness that remains must be above 0 and below the " + raw.toText(Locale.ROOT, 6)
                            + " of the raw water, but was " + stated,
                    raw,
                    stated);
        }
        return new SoftenerPlan(source, use, resin, sizedFor, curve, regeneration, reserveDays, stated);
    }

    /**
     * Returns what a dose means for the household.
     *
     * @param sodiumChloride salt per volume of resin, within the curve; for potassium chloride what it stands for
     * @return days, salt, water, chloride
     * @throws NoAnswerException if the curve does not know the dose, or the reserve takes all of the capacity
     */
    public SoftenerSchedule at(Quantity<SaltDose> sodiumChloride) {
        return schedule(SaltDose.from(sodiumChloride), curve.capacity(sodiumChloride));
    }

    /**
     * Returns what a computed cycle means for the household, in place of the curve.
     *
     * <p>Its capacity counts what the resin took, without what leaked; the household's hardness is counted whole, so the days are on the safe side by the
     * leakage.
     *
     * @param cycle of a bed with this water
     * @return days, salt, water, chloride
     * @throws IllegalArgumentException if the cycle is of a water of another hardness
     * @throws NoAnswerException if the reserve takes all of its capacity
     */
    public SoftenerSchedule at(SofteningCycle cycle) {
        Hardness of = cycle.service().feed().hardness();
        if (Math.abs(of.ratioTo(source.hardness()) - 1) > ROUNDING) {
            throw new IllegalArgumentException("the cycle must be of the water of the plan, hardness "
                    + source.hardness() + ", but is of one of " + of);
        }
        Regeneration way = cycle.regeneration().regeneration();
        return with(way).schedule(way.sodiumChlorideDose(), cycle.capacity());
    }

    private SoftenerSchedule schedule(SaltDose sodiumChloride, ExchangeCapacity capacity) {
        SoftenerSchedule schedule = new SoftenerSchedule(this, sodiumChloride, capacity);
        if (!(schedule.days() > 0)) {
            WaterQuantity<Volume> softened = schedule.softenedPerRegeneration();
            throw new NoAnswerException(
                    "a reserve of " + reserveDays + " days takes more than the " + softened.toText(Locale.ROOT, 4)
                            + " that " + resin.toText(Locale.ROOT, 6) + " of resin soften with "
                            + sodiumChloride.toText(Locale.ROOT, 4),
                    softened);
        }
        return schedule;
    }

    /**
     * Returns the dose that takes least salt in a year among those that last long enough; what is kept as a reserve counts as thrown away.
     *
     * @param days between regenerations, the reserve taken off; above 0
     * @return the schedule at that dose
     * @throws IllegalArgumentException if the days are not positive
     * @throws NoAnswerException if no dose of the curve lasts so long
     */
    public SoftenerSchedule leastSaltFor(double days) {
        if (!(days > 0 && days <= 365)) {
            throw new IllegalArgumentException(
                    "days between regenerations must be above 0 and at most 365, but were " + days);
        }
        double needed = dailyEquivalents() * days + reserveEquivalents();
        Optional<SaltDose> best = curve.mostEfficientDose(
                ExchangeCapacity.of(needed / resin.in(LITRE), EQUIVALENT_PER_LITRE),
                ExchangeCapacity.of(reserveEquivalents() / resin.in(LITRE), EQUIVALENT_PER_LITRE));
        if (best.isEmpty()) {
            ExchangeCapacity most = curve.capacity(curve.most());
            double longest =
                    (most.in(EQUIVALENT_PER_LITRE) * resin.in(LITRE) - reserveEquivalents()) / dailyEquivalents();
            throw new NoAnswerException(resin.toText(Locale.ROOT, 6) + " of resin cannot last " + days
                    + " days with this water and use: with the most salt of the "
                    + curve.source() + " it lasts " + String.format(Locale.ROOT, "%.3g", Math.max(0, longest))
                    + " days; "
                    + WaterUnits.volume(needed / most.in(EQUIVALENT_PER_LITRE), LITRE)
                            .toText(Locale.ROOT, 3)
                    + " of resin would last so long");
        }
        return at(best.get());
    }

    /** Hardness that a mean day brings to the resin, in equivalents. */
    double dailyEquivalents() {
        return use.daily().in(LITRE) * (1 - bypassShare()) * equivalentsPerLitre();
    }

    double reserveEquivalents() {
        return reserveDays * use.busiestDay().in(LITRE) * (1 - bypassShare()) * equivalentsPerLitre();
    }

    double equivalentsPerLitre() {
        double milligrams = sizedFor.in(CompensatedHardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
        return Hardness.of(milligrams, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)
                        .in(Hardness.MILLIEQUIVALENT_PER_LITRE)
                / 1000;
    }

    /**
     * Returns the share of the water that goes past the resin, which is taken to leak nothing.
     *
     * @return hardness that remains over that of the raw water; no unit; 0 without bypass
     */
    public double bypassShare() {
        return remaining == null ? 0 : remaining.ratioTo(source.hardness());
    }

    /**
     * Returns the water that the household gets, its bypass mixed in.
     *
     * @return softened water, as {@link Softener} keeps the books
     */
    public Water softened() {
        Softener softener =
                regeneration.cation().equals(Ion.POTASSIUM) ? Softener.withPotassium() : Softener.withSodium();
        return (remaining == null ? softener : softener.bypassFor(remaining)).treat(source);
    }

    /**
     * Returns the raw water.
     *
     * @return as stated
     */
    public Water source() {
        return source;
    }

    /**
     * Returns the use of the household.
     *
     * @return as stated
     */
    public HouseholdUse use() {
        return use;
    }

    /**
     * Returns the resin.
     *
     * @return volume as stated
     */
    public WaterQuantity<Volume> resin() {
        return resin;
    }

    /**
     * Returns the hardness that the resin is planned for.
     *
     * @return compensated for iron and manganese
     */
    public CompensatedHardness sizedFor() {
        return sizedFor;
    }

    /**
     * Returns the capacity against the dose.
     *
     * @return the curve
     */
    public CapacityCurve curve() {
        return curve;
    }

    /**
     * Returns how it is regenerated.
     *
     * @return but for the dose
     */
    public Regeneration regeneration() {
        return regeneration;
    }

    /** Returns water, use and resin in short, for logs. */
    @Override
    public String toString() {
        return "softener of " + resin.toText(Locale.ROOT, 6) + " of resin for " + use + ", planned for "
                + sizedFor.toText(Locale.ROOT, 4) + " by the " + curve;
    }
}
