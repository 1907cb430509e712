package evenwater.examples.household;

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
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
        if (raw.hardness().compareTo(END_POINT) <= 0) {
            page.say(
                    "The water in front of the softener is as soft as the trade calls soft, 1 gpg or less: it hardly needs one.");
        }
        try {
            plan(page);
        } catch (NoAnswerException | IllegalArgumentException e) { // such as less resin than there is
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
                .orElseGet(() -> ResinSizing.of(draft, USUAL_DOSE, wish.days().orElse(WEEK))
                        .resinForDays());
        SoftenerPlan plan = drafted(use, resin);
        page.say("For " + use + (wish.use().isPresent() ? "" : " (assumed: say --people or --daily-use)") + ", "
                + text(resin) + " of resin"
                + (wish.resin().isPresent()
                        ? ""
                        : " (as much as lasts " + days(wish.days().orElse(WEEK)) + " at 8 lb/ft³: say --resin)")
                + ", hardness in front of it "
                + plan.sizedFor().toText(Locale.ROOT, 3) + iron(plan) + ", with a reserve of one day of use.");
        Choice choice = chosen(plan);
        SoftenerSchedule schedule = choice.schedule();
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
                + choice.why() + ", " + (wish.counterFlow() ? "counter-flow" : "co-flow") + ".");
        Optional<SofteningCycle> cycle = modelled(page, schedule);
        Optional<SoftenerSchedule> bed = cycle.flatMap(steady -> schedule(page, plan, steady));
        PlanTable table = new PlanTable(schedule, bed);
        Ion gives = softener.regenerant();
        table.row(
                gives.name() + " behind the softener, mg/L",
                softened(softener.treat(raw), gives),
                cycle.map(steady -> softened(blend(steady), gives)));
        page.gap().table(table.rows()).gap();
        page.picture("", () -> HouseholdPictures.capacity(schedule, cycle));
        cycle.ifPresent(steady -> page.picture(
                "Computed with this water, and with the bed as its regenerations leave it; on the right of the mark is what would come if the valve did not regenerate. The plan reckons with the whole hardness and the surcharge, so that it is due a little before the mark.",
                () -> HouseholdPictures.breakthrough(steady, raw, USUAL_FLOW_IN_BED_VOLUMES_PER_HOUR, END_POINT)));
        page.say("The table is common practice for co-flow and some 10 gpg of hardness in water without much else.");
        cycle.ifPresent(steady -> bed(page, steady));
        choice.days()
                .ifPresent(days -> bed.filter(model -> model.days() < days * (1 - 1e-9))
                        .ifPresent(model -> page.say("By the bed this dose lasts " + Page.number(model.days())
                                + " days, not " + days(days) + ".")));
        cautions(page);
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

    /** A dose with its reason, and the days that were asked for. */
    private record Choice(SoftenerSchedule schedule, String why, Optional<Double> days) {}

    private Choice chosen(SoftenerPlan plan) {
        if (wish.dose().isPresent()) {
            return new Choice(plan.at(wish.dose().get()), "", Optional.empty());
        }
        double days = wish.days().orElse(wish.resin().isEmpty() ? WEEK : FEWEST_DAYS);
        String last = "last " + days(days);
        try {
            String why = ", which by the table takes least salt of those that " + last;
            return new Choice(plan.leastSaltFor(days), why, Optional.of(days));
        } catch (NoAnswerException tooLittleResin) {
            if (wish.days().isPresent()) {
                throw tooLittleResin;
            }
            String why = ", the most of the table, since by it no dose would " + last;
            return new Choice(plan.at(plan.curve().most()), why, Optional.empty());
        }
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

    private static String softened(Water water, Ion ion) {
        return Page.number(water.total(ion).in(ion.milligramPerLitre()));
    }

    /** The water of the bed with as much raw water past it as the wanted hardness takes. */
    private Water blend(SofteningCycle cycle) {
        Water soft = cycle.service().meanWater();
        if (softener.bypassShare(raw) == 0) {
            return soft;
        }
        double[] hardness = Stream.of(raw, soft, softener.treat(raw))
                .mapToDouble(water -> water.hardness().in(Hardness.MILLIMOLE_PER_LITRE))
                .toArray();
        double share = (hardness[2] - hardness[1]) / (hardness[0] - hardness[1]);
        return soft.mixedWith(raw, Math.max(0, Math.min(1, share)));
    }

    private void cautions(Page page) {
        if (wish.counterFlow()) {
            page.say(
                    "The table of the trade is for co-flow; practice expects 10 to 20 % more of counter-flow at small doses, the "
                            + "bed shows less of that, but softer water. Such a bed must be held down under the brine and washed from time to time.");
        }
        if (softener.regenerant().equals(Ion.POTASSIUM)) {
            page.say(
                    "What the bed gives with potassium hangs on how the selectivities are read, 6 to 16 % more than with sodium: plan by the "
                            + "table. Potassium chloride dissolves less in the cold, so a cold brine tank gives less.");
        }
    }

    private static Optional<SoftenerSchedule> schedule(Page page, SoftenerPlan plan, SofteningCycle cycle) {
        try {
            return Optional.of(plan.at(cycle));
        } catch (NoAnswerException e) {
            page.say("By the bed there is no schedule: " + e.getMessage() + ".");
            return Optional.empty();
        }
    }

    private void bed(Page page, SofteningCycle cycle) {
        Hardness leak = cycle.service().leakage().to(speech.hardness());
        RegenerationRun.Waste waste = cycle.regeneration().mixedWaste();
        page.say(
                "The bed is computed with your water, at 16 bed volumes per hour to 1 gpg; two rates of it are calibrated on that "
                        + "table. Where the two differ, set the valve by the fewer days and litres.");
        page.say("In the middle of a run the bed lets through " + leak.toText(Locale.ROOT, 2)
                + ". A regeneration sends " + text(waste.volume()) + " to the drain, on the whole with "
                + grams(waste, Ion.CHLORIDE) + " g/L of chloride, "
                + Stream.of(Ion.SODIUM, Ion.POTASSIUM, Ion.CALCIUM, Ion.MAGNESIUM)
                        .filter(ion -> !grams(waste, ion).equals("0.000"))
                        .map(ion -> grams(waste, ion) + " of " + ion.name())
                        .collect(Collectors.joining(", "))
                + "; where it may go is for the local code.");
    }

    private static String grams(RegenerationRun.Waste waste, Ion ion) {
        return Page.number(waste.water().total(ion).in(ion.unit(MassConcentration.GRAM_PER_LITRE, ion.formula())));
    }

    private static void flows(Page page, WaterQuantity<Volume> resin) {
        page.say("This much resin takes " + minutes(ResinSizing.mostServiceFlow(resin)) + " all day and "
                + minutes(ResinSizing.mostPeakFlow(resin))
                + " for some minutes (common practice); the bed is computed at "
                + minutes(FlowRate.of(USUAL_FLOW_IN_BED_VOLUMES_PER_HOUR * resin.in(LITRE), FlowRate.LITRE_PER_HOUR))
                + ", and faster flow shortens the run.");
    }

    private static String days(double days) {
        return Page.number(days).replaceFirst("\\.?0+$", "") + (days == 1 ? " day" : " days");
    }

    private static String minutes(FlowRate flow) {
        return flow.to(FlowRate.LITRE_PER_MINUTE).toText(Locale.ROOT, 2);
    }

    private static String text(WaterQuantity<Volume> volume) {
        return WaterUnits.volume(volume.getValue(), volume.getUnit()).toText(Locale.ROOT, 3);
    }
}
