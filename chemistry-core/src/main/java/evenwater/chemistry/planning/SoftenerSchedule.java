package evenwater.chemistry.planning;

import static evenwater.chemistry.quantity.ExchangeCapacity.EQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.WaterUnits.KILOGRAM;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;

import evenwater.chemistry.exchange.EfficiencyStandard;
import evenwater.chemistry.exchange.Regeneration;
import evenwater.chemistry.exchange.SaltEfficiency;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** What a dose of salt means for a household: days, salt, water to the drain, chloride. Immutable and thread-safe. */
public final class SoftenerSchedule {

    /** Common practice, no source: days between regenerations. */
    private static final double FEWEST_DAYS = 3;

    private static final double MOST_DAYS = 14;
    private static final double ROUNDING = 1e-9;
    /** Common practice, no source: from here on ferrous iron fouls the resin whatever the plan says, in mg/L. */
    private static final double MUCH_IRON = 3;

    /** Litres per kilogram of CaCO₃ that are 1 US gallon for 1000 grains: 3.785411784 L for 64.79891 g. */
    private static final double LITRES_PER_GALLON_BY_KILOGRAINS = 3.785411784 / 0.06479891;

    private static final double MOST_DRAIN = 5 * LITRES_PER_GALLON_BY_KILOGRAINS;

    private static final double DAYS_OF_A_YEAR = 365.25;

    private final SoftenerPlan plan;
    private final SaltDose dose;
    private final ExchangeCapacity capacity;
    private final Regeneration regeneration;

    /** The dose counts sodium chloride; the regeneration has its own salt, of as many charges. */
    SoftenerSchedule(SoftenerPlan plan, SaltDose sodiumChloride, ExchangeCapacity capacity) {
        this.plan = plan;
        this.dose = sodiumChloride;
        this.capacity = capacity;
        Regeneration sodium = Regeneration.coFlow(dose);
        boolean potassium = plan.regeneration().cation().equals(Ion.POTASSIUM);
        this.regeneration = plan.regeneration()
                .with(potassium ? sodium.withPotassiumChloride().dose() : sodium.dose());
    }

    /**
     * Returns the time between regenerations, with the reserve taken off.
     *
     * @return days of mean use
     */
    public double days() {
        return (totalEquivalents() - plan.reserveEquivalents()) / plan.dailyEquivalents();
    }

    /**
     * Returns the time that the whole capacity lasts.
     *
     * @return days of mean use, the reserve included
     */
    public double daysWithoutReserve() {
        return totalEquivalents() / plan.dailyEquivalents();
    }

    private double totalEquivalents() {
        return capacity.in(EQUIVALENT_PER_LITRE) * plan.resin().in(LITRE);
    }

    /**
     * Returns the water that passes the resin before it is spent, as a meter behind it counts.
     *
     * @return in litres, the reserve included, the bypass not
     */
    public WaterQuantity<Volume> softenedPerRegeneration() {
        return WaterUnits.volume(totalEquivalents() / plan.equivalentsPerLitre(), LITRE);
    }

    /**
     * Returns the part of that water which is kept for a day that does not regenerate in time.
     *
     * @return in litres
     */
    public WaterQuantity<Volume> reserve() {
        return WaterUnits.volume(plan.reserveEquivalents() / plan.equivalentsPerLitre(), LITRE);
    }

    /**
     * Returns what the resin takes up.
     *
     * @return hardness per volume of resin
     */
    public ExchangeCapacity capacity() {
        return capacity;
    }

    /**
     * Returns the salt of one regeneration.
     *
     * @return mass of the salt that is used, for the whole bed
     */
    public WaterQuantity<Mass> saltPerRegeneration() {
        return WaterUnits.mass(
                regeneration.dose().in(SaltDose.GRAM_PER_LITRE) * plan.resin().in(LITRE) / 1000, KILOGRAM);
    }

    /**
     * Returns the salt of a week.
     *
     * @return mass of the salt that is used
     */
    public WaterQuantity<Mass> saltPerWeek() {
        return saltIn(7);
    }

    /**
     * Returns the salt of a year of 365.25 days.
     *
     * @return mass of the salt that is used
     */
    public WaterQuantity<Mass> saltPerYear() {
        return saltIn(DAYS_OF_A_YEAR);
    }

    private WaterQuantity<Mass> saltIn(double span) {
        return WaterUnits.mass(saltPerRegeneration().in(KILOGRAM) * span / days(), KILOGRAM);
    }

    /**
     * Returns the water that one regeneration sends to the drain.
     *
     * @return in litres
     */
    public WaterQuantity<Volume> drainPerRegeneration() {
        return WaterUnits.volume(regeneration.bedVolumes() * plan.resin().in(LITRE), LITRE);
    }

    /**
     * Returns the water that goes to the drain in a year of 365.25 days.
     *
     * @return in litres
     */
    public WaterQuantity<Volume> drainPerYear() {
        return WaterUnits.volume(drainPerRegeneration().in(LITRE) * DAYS_OF_A_YEAR / days(), LITRE);
    }

    /**
     * Returns the chloride of the salt, all of which goes to the drain, in a year of 365.25 days.
     *
     * @return mass of chloride
     */
    public WaterQuantity<Mass> chloridePerYear() {
        double share = Ion.CHLORIDE.molarMass().in(MolarMass.GRAM_PER_MOLE)
                / regeneration.salt().molarMass().in(MolarMass.GRAM_PER_MOLE);
        return WaterUnits.mass(saltPerYear().in(KILOGRAM) * share, KILOGRAM);
    }

    /**
     * Returns how well the salt is used when the bed is run to its end, as capacity tables and standards count.
     *
     * @return charges of hardness per charge of salt
     */
    public SaltEfficiency efficiency() {
        return SaltEfficiency.of(capacity, dose);
    }

    /**
     * Returns how well the salt is used when the reserve is thrown away with every regeneration, as the salt of a year counts.
     *
     * @return charges of hardness per charge of salt
     */
    public SaltEfficiency efficiencyWithReserve() {
        return new SaltEfficiency(efficiency().shareOfTheory() * days() / daysWithoutReserve());
    }

    /**
     * Returns the water that goes to the drain for a kilogram of hardness as CaCO₃, run to the end.
     *
     * @return in litres; NSF/ANSI 44 allows 292 (5 US gallons for 1000 grains; from memory)
     */
    public WaterQuantity<Volume> drainPerKilogramOfHardness() {
        double kilograms = capacity.in(ExchangeCapacity.GRAM_PER_LITRE_CALCIUM_CARBONATE)
                * plan.resin().in(LITRE)
                / 1000;
        return WaterUnits.volume(drainPerRegeneration().in(LITRE) / kilograms, LITRE);
    }

    /**
     * Returns the regeneration with its dose.
     *
     * @return salt, direction and water
     */
    public Regeneration regeneration() {
        return regeneration;
    }

    /**
     * Returns the plan that it answers.
     *
     * @return water, use and resin
     */
    public SoftenerPlan plan() {
        return plan;
    }

    /**
     * Returns what is outside of usual practice (common practice, no source, but for the standards).
     *
     * @return sentences without a final dot; possibly none
     */
    public List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        if (days() < FEWEST_DAYS * (1 - ROUNDING)) {
            warnings.add("regeneration after " + text(days())
                    + " days is more often than the usual 3 to 14: more resin would save water");
        }
        if (days() > MOST_DAYS * (1 + ROUNDING)) {
            warnings.add(
                    "regeneration after " + text(days())
                            + " days is rarer than the usual 3 to 14: standing resin compacts, fouls and grows germs, so set the calendar to 14 days, or to fewer where the local code asks for it");
        }
        if (!efficiency().meets(EfficiencyStandard.NSF_ANSI_44)) {
            warnings.add("salt efficiency of " + efficiency() + " is below the "
                    + EfficiencyStandard.NSF_ANSI_44.least().toText(Locale.ROOT, 4) + " that "
                    + EfficiencyStandard.NSF_ANSI_44.source() + " asks of efficient softeners");
        }
        double drain = drainPerKilogramOfHardness().in(LITRE);
        if (drain > MOST_DRAIN) {
            warnings.add(
                    "regeneration takes " + text(drain / LITRES_PER_GALLON_BY_KILOGRAINS)
                            + " US gallons for 1000 grains of hardness, above the 5 that NSF/ANSI 44 (number from memory) allows efficient softeners");
        }
        double iron = plan.source().total(Ion.IRON_II).in(Ion.IRON_II.milligramPerLitre());
        if (iron > MUCH_IRON) {
            warnings.add(
                    "iron of " + text(iron)
                            + " mg/L fouls a softener sooner or later: it belongs to an iron filter in front; iron that has met air is no task for resin at all");
        }
        return List.copyOf(warnings);
    }

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.3g", number);
    }

    /** Returns dose, days and salt in short, for logs. */
    @Override
    public String toString() {
        return regeneration + ", every " + text(days()) + " days, "
                + saltPerYear().toText(Locale.ROOT, 3) + " of salt a year";
    }
}
