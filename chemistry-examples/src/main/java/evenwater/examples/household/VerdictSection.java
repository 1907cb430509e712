package evenwater.examples.household;

import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.treatment.Treatment;
import evenwater.chemistry.verdict.Caution;
import evenwater.chemistry.verdict.CautionTopic;
import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Finding;
import evenwater.chemistry.verdict.Outcome;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.verdict.Standing;
import evenwater.chemistry.verdict.Verdict;
import evenwater.chemistry.verdict.Weight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** What the last water means for a tank. */
final class VerdictSection {

    /** What harms in weeks rather than days. */
    private static final Set<Parameter<?>> SLOW = Set.of(
            Parameter.GENERAL_HARDNESS,
            Parameter.CARBONATE_HARDNESS,
            Parameter.CONDUCTIVITY,
            Parameter.SODIUM,
            Parameter.NITRATE);

    private final Stages stages;
    private final Train train;
    private final Trust trust;
    private final TankWish wish;
    private final Evidence evidence;

    VerdictSection(Stages stages, House house, Trust trust, TankWish wish) {
        this.stages = stages;
        this.train = house.train();
        this.trust = trust;
        this.wish = wish;
        this.evidence = wish.readings().apply(Evidence.from(stages.source(), train));
    }

    void write(Page page) {
        page.heading("Is it right for the tank?");
        page.say((stages.last() == 0 ? "The source" : "The water behind the last stage")
                + " against what kinds of tank ask for. These ranges are common practice without a source: take them as a start. The pH is "
                + "that of a tank, whose water holds one to ten times the CO₂ of open air, or what is dosed, "
                + "at 25 °C unless --reading temperature says otherwise.");
        trust.doubt().ifPresent(page::say);
        harm(page);
        wish.kind().ifPresentOrElse(kind -> one(page, kind), () -> all(page));
    }

    /** What harms whatever lives in it. */
    private void harm(Page page) {
        Verdict any = Requirements.ofTank("general community").judge(evidence);
        List<Finding<?>> harm =
                any.toChange().stream().filter(VerdictSection::isHarm).toList();
        if (!harm.isEmpty()) {
            page.gap().say("DO NOT USE this water for animals before this is settled:");
            harm.forEach(finding -> page.item(finding.toText(Locale.ROOT) + help(finding) + "."));
        }
    }

    private static boolean isHarm(Finding<?> finding) {
        return finding.standing() == Standing.ABOVE
                && finding.requirement().least().isEmpty()
                && !SLOW.contains(finding.requirement().parameter());
    }

    private static String help(Finding<?> finding) {
        return finding.remedy().isEmpty() ? "" : "; " + finding.remedy();
    }

    private void one(Page page, Requirements kind) {
        Verdict verdict = kind.judge(evidence);
        page.gap().say(verdict.statement(Locale.ROOT));
        page.gap();
        verdict.findings().stream()
                .filter(finding -> finding.requirement().weight() != Weight.FOR_INFORMATION)
                .filter(finding -> finding.standing() != Standing.NOT_MEASURED)
                .forEach(finding -> page.item(finding.toText(Locale.ROOT) + help(finding)));
        List<Finding<?>> information = verdict.findings().stream()
                .filter(finding -> finding.requirement().weight() == Weight.FOR_INFORMATION)
                .filter(finding -> finding.standing() != Standing.NOT_MEASURED)
                .toList();
        if (!information.isEmpty()) {
            page.gap().say("For information:");
            information.forEach(finding -> page.item(
                    finding.toText(Locale.ROOT) + " (" + finding.requirement().meaning() + "; "
                            + finding.requirement().citation() + ")"));
        }
    }

    private void all(Page page) {
        page.gap();
        for (String kind : Requirements.tankKinds()) {
            Verdict verdict = Requirements.ofTank(kind).judge(evidence);
            String reasons = verdict.counting().stream()
                    .filter(finding -> verdict.outcome() == Outcome.UNFIT
                            ? finding.standing().isOutside()
                            : finding.standing() == Standing.UNDECIDED)
                    .filter(finding -> !isHarm(finding))
                    .map(finding -> finding.toText(Locale.ROOT))
                    .collect(Collectors.joining("; "));
            page.item(kind + ": " + verdict.outcome() + (reasons.isEmpty() ? "" : ": " + reasons));
        }
        List<Parameter<?>> missing =
                Requirements.ofTank("general community").judge(evidence).missing();
        if (!missing.isEmpty()) {
            page.say("Not measured, and no water is fit for animals while they are unknown: "
                    + missing.stream().map(Parameter::name).collect(Collectors.joining(", "))
                    + ". State them with --reading, such as --reading 'chlorine=0 mg/L'.");
        }
    }

    /** The cautions of the tank and of what is dosed for it, and those of drinking the water at any stage. */
    void cautions(Page page, List<Dosing> doses) {
        page.heading("Cautions");
        List<Treatment> all = new ArrayList<>(train.treatments());
        all.addAll(doses);
        Set<Caution> cautions = new LinkedHashSet<>(wish.kind()
                .orElseGet(() -> Requirements.ofTank("general community"))
                .judge(wish.readings().apply(Evidence.from(stages.source(), Train.of(all))))
                .cautions());
        for (int stage = 0; stage <= stages.last(); stage++) {
            Evidence drunk = Evidence.from(stages.source(), train.first(stage));
            cautions.addAll(Requirements.ofDrinkingWater().judge(drunk).cautions());
        }
        cautions.stream()
                .sorted(Comparator.comparing(caution -> caution.topic() == CautionTopic.ALWAYS))
                .map(Caution::text)
                .forEach(page::item);
    }
}
