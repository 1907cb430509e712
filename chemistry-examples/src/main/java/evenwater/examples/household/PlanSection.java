package evenwater.examples.household;

import static evenwater.chemistry.quantity.WaterUnits.CUBIC_METRE;
import static evenwater.chemistry.quantity.WaterUnits.KILOGRAM;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;

import evenwater.chemistry.exchange.Regeneration;
import evenwater.chemistry.exchange.RegenerationRun;
import evenwater.chemistry.exchange.Resin;
import evenwater.chemistry.exchange.ResinBed;
import evenwater.chemistry.exchange.SofteningCycle;
import evenwater.chemistry.planning.HouseholdUse;
import evenwater.chemistry.planning.ResinSizing;
import evenwater.chemistry.planning.SoftenerPlan;
import evenwater.chemistry.planning.SoftenerSchedule;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/** How often the softener is regenerated, what that takes, and what goes down the drain: by the table of the trade and by the bed. */
final class PlanSection {

    /** What people are assumed to be, and how long resin of our choice lasts. */
    private static final int PEOPLE = 4;

    private static final double WEEK = 7;
    /** Common practice, no source: more often is too often. */
    private static final double FEWEST_DAYS = 3;

    private static final SaltDose USUAL_DOSE = SaltDose.of(8, SaltDose.POUND_PER_CUBIC_FOOT);
    private static final double USUAL_FLOW_IN_BED_VOLUMES_PER_HOUR = 16;
    private static final Hardness END_POINT = Hardness.of(1, Hardness.GRAIN_PER_US_GALLON);

    private final Water raw;
    private final Softener softener;
    private final PlanWish wish;
    private final Speech speech;

    PlanSection(Water raw, Softener softener, PlanWish wish, Speech speech) {
        this.raw = raw;
        this.softener = softener;
        this.wish = wish;
        this.speech = speech;
    }

    void write(Page page) {
        page.heading("Plan of the softener");
        try {
            plan(page);
        } catch (NoAnswerException e) {
            if (wish.dose().isPresent()
                    || wish.days().isPresent()
                    || wish.resin().isPresent()) {
                throw new UsageException(
                        (wish.days().isPresent() ? "--days: " : wish.dose().isPresent() ? "--salt-dose: " : "--resin: ")
                                + e.getMessage());
            }
            page.say("There is no plan: " + e.getMessage() + ".");
        }
    }

    private void plan(Page page) {
        HouseholdUse use = wish.use().orElseGet(() -> HouseholdUse.ofPeople(PEOPLE));
        SoftenerPlan draft = drafted(use, WaterUnits.volume(1, LITRE));
        WaterQuantity<Volume> resin = wish.resin()
                .orElseGet(() -> ResinSizing.of(draft, USUAL_DOSE, WEEK).resinForDays());
        SoftenerPlan plan = drafted(use, resin);
        page.say("For " + use + (wish.use().isPresent() ? "" : " (assumed: say --people or --daily-use)") + ", "
                + text(resin) + " of resin"
                + (wish.resin().isPresent() ? "" : " (as much as lasts a week at 8 lb/ft³: say --resin)")
                + ", hardness in front of it "
                + plan.sizedFor().toText(Locale.ROOT, 3) + iron(plan) + ", with a reserve of one day of use.");
        SoftenerSchedule schedule = chosen(plan);
        SaltDose dose = schedule.regeneration().sodiumChlorideDose();
        page.say("Dose: " + dose.to(SaltDose.POUND_PER_CUBIC_FOOT).toText(Locale.ROOT, 3) + " ("
                + dose.to(SaltDose.GRAM_PER_LITRE).toText(Locale.ROOT, 3) + ") of sodium chloride"
                + (softener.regenerant().equals(Ion.POTASSIUM)
                        ? ", as potassium chloride "
                                + schedule.regeneration()
                                        .dose()
                                        .to(SaltDose.GRAM_PER_LITRE)
                                        .toText(Locale.ROOT, 3)
                        : "")
                + why() + ", " + (wish.counterFlow() ? "counter-flow" : "co-flow") + ".");
        Optional<SofteningCycle> cycle = modelled(page, schedule);
        List<String[]> rows = table(schedule, cycle.map(plan::at));
        rows.add(row(
                "sodium of the softened water, mg/L",
                sodium(softener.treat(raw)),
                cycle.map(steady -> sodium(steady.service().meanWater().mixedWith(raw, softener.bypassShare(raw))))));
        page.gap().table(rows).gap();
        cycle.ifPresent(steady -> bed(page, steady));
        flows(page, resin);
        schedule.warnings().forEach(warning -> page.say(NeutralizerSection.sentence(warning)));
    }

    private SoftenerPlan drafted(HouseholdUse use, WaterQuantity<Volume> resin) {
        SoftenerPlan plan = SoftenerPlan.of(raw, use, resin).with(regeneration(USUAL_DOSE));
        return softener.bypassShare(raw) > 0 ? plan.leaving(softener.treat(raw).hardness()) : plan;
    }

    private Regeneration regeneration(SaltDose dose) {
        Regeneration way = wish.counterFlow() ? Regeneration.counterFlow(dose) : Regeneration.coFlow(dose);
        return softener.regenerant().equals(Ion.POTASSIUM) ? way.withPotassiumChloride() : way;
    }

    private SoftenerSchedule chosen(SoftenerPlan plan) {
        if (wish.dose().isPresent()) {
            return plan.at(wish.dose().get());
        }
        if (wish.days().isPresent() || wish.resin().isEmpty()) {
            return plan.leastSaltFor(wish.days().orElse(WEEK));
        }
        try {
            return plan.leastSaltFor(FEWEST_DAYS);
        } catch (NoAnswerException tooLittleResin) {
            return plan.at(plan.curve().most());
        }
    }

    private String why() {
        if (wish.dose().isPresent()) {
            return "";
        }
        double days = wish.days().orElse(wish.resin().isEmpty() ? WEEK : FEWEST_DAYS);
        return ", which wastes least of those that last " + Page.number(days).replaceFirst("\\.?0+$", "") + " days";
    }

    private String iron(SoftenerPlan plan) {
        double true_ = raw.hardness().in(Hardness.GRAIN_PER_US_GALLON);
        double planned = plan.sizedFor().in(CompensatedHardness.GRAIN_PER_US_GALLON);
        return planned > true_ * (1 + 1e-9)
                ? " (" + Page.number(planned - true_) + " of it the trade's surcharge for iron and manganese)"
                : "";
    }

    private Optional<SofteningCycle> modelled(Page page, SoftenerSchedule schedule) {
        ResinBed bed = ResinBed.of(Resin.gel(), schedule.plan().resin());
        try {
            return Optional.of(SofteningCycle.steady(
                    bed, raw, bed.flow(USUAL_FLOW_IN_BED_VOLUMES_PER_HOUR), END_POINT, schedule.regeneration()));
        } catch (NoAnswerException e) {
            page.say("The model of the bed has no answer: " + e.getMessage() + ".");
            return Optional.empty();
        }
    }

    private static List<String[]> table(SoftenerSchedule table, Optional<SoftenerSchedule> bed) {
        List<String[]> rows = new ArrayList<>();
        rows.add(row("by the", "table of the trade", bed.map(any -> "model of the bed")));
        row(rows, "capacity, kgr/ft³", table, bed, s -> s.capacity().in(ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT));
        row(rows, "days between regenerations, the reserve kept", table, bed, SoftenerSchedule::days);
        row(
                rows,
                "litres through the resin, the reserve included",
                table,
                bed,
                s -> s.softenedPerRegeneration().in(LITRE));
        row(rows, "reserve, litres", table, bed, s -> s.reserve().in(LITRE));
        row(rows, "salt a time, kg", table, bed, s -> s.saltPerRegeneration().in(KILOGRAM));
        row(rows, "salt a week, kg", table, bed, s -> s.saltPerWeek().in(KILOGRAM));
        row(rows, "salt a year, kg", table, bed, s -> s.saltPerYear().in(KILOGRAM));
        row(
                rows,
                "chloride to the drain, kg a year",
                table,
                bed,
                s -> s.chloridePerYear().in(KILOGRAM));
        row(
                rows,
                "water to the drain, litres a time",
                table,
                bed,
                s -> s.drainPerRegeneration().in(LITRE));
        row(
                rows,
                "water to the drain, m³ a year",
                table,
                bed,
                s -> s.drainPerYear().in(CUBIC_METRE));
        row(
                rows,
                "hardness taken for the salt, grain/lb",
                table,
                bed,
                s -> s.efficiency().perSalt().in(WaterUnits.GRAIN_PER_POUND));
        row(
                rows,
                "the same, percent of theory",
                table,
                bed,
                s -> 100 * s.efficiency().shareOfTheory());
        return rows;
    }

    private static void row(
            List<String[]> rows,
            String name,
            SoftenerSchedule table,
            Optional<SoftenerSchedule> bed,
            ToDoubleFunction<SoftenerSchedule> figure) {
        rows.add(row(
                name,
                Page.number(figure.applyAsDouble(table)),
                bed.map(model -> Page.number(figure.applyAsDouble(model)))));
    }

    private static String[] row(String name, String table, Optional<String> bed) {
        return bed.map(model -> new String[] {name, table, model}).orElse(new String[] {name, table});
    }

    private static String sodium(Water water) {
        return Page.number(water.total(Ion.SODIUM).in(Ion.SODIUM.milligramPerLitre()));
    }

    private void bed(Page page, SofteningCycle cycle) {
        Quantity<Volume> middle = cycle.service().volume().divide(2);
        Hardness leak = cycle.service().waterAt(middle).hardness().to(speech.hardness());
        RegenerationRun.Waste waste = cycle.regeneration().mixedWaste();
        page.say(
                "The table is common practice for co-flow and some 10 gpg of hardness. The bed is computed with your water, at 16 "
                        + "bed volumes per hour to 1 gpg; two rates of it are calibrated on that table. Where the two differ, set the valve "
                        + "by the fewer days.");
        page.say("In the middle of a run the bed lets through " + leak.toText(Locale.ROOT, 2)
                + ". A regeneration sends " + text(waste.volume()) + " to the drain, on the whole with "
                + grams(waste, Ion.CHLORIDE) + " g/L of chloride, " + grams(waste, Ion.SODIUM) + " of sodium and "
                + grams(waste, Ion.CALCIUM) + " of calcium; where it may go is for the local code.");
    }

    private static String grams(RegenerationRun.Waste waste, Ion ion) {
        return Page.number(waste.water().total(ion).in(ion.unit(MassConcentration.GRAM_PER_LITRE, ion.formula())));
    }

    private static void flows(Page page, WaterQuantity<Volume> resin) {
        page.say("This much resin takes " + minutes(ResinSizing.mostServiceFlow(resin)) + " all day and "
                + minutes(ResinSizing.mostPeakFlow(resin)) + " for some minutes (common practice).");
    }

    private static String minutes(FlowRate flow) {
        return flow.to(FlowRate.LITRE_PER_MINUTE).toText(Locale.ROOT, 2);
    }

    private static String text(WaterQuantity<Volume> volume) {
        return WaterUnits.volume(volume.getValue(), volume.getUnit()).toText(Locale.ROOT, 3);
    }
}
