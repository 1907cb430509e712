package evenwater.chemistry.worked;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.worked.WorkedEquivalents.MEQ;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Stage;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;

/** What a softener does, from the change that it made. */
final class WorkedSoftening {

    private final Softener softener;
    private final Water source;
    private final Unit<Hardness> scale;
    private final Water behind;
    private final Water after;
    private final Change change;
    private final Ion regenerant;
    private final Unit<AmountConcentration> milligrams;
    private final List<Step> steps = new ArrayList<>();

    private WorkedSoftening(Softener softener, Water source, Unit<Hardness> scale) {
        this.softener = softener;
        this.source = source;
        this.scale = scale;
        this.behind = softener.behindResin(source);
        this.after = softener.treat(source);
        this.change = softener.exchange(source);
        this.regenerant = softener.regenerant();
        this.milligrams = regenerant.milligramPerLitre();
    }

    static Worked<Stage> of(Softener softener, Water source, Unit<Hardness> scale) {
        return new WorkedSoftening(softener, source, scale).work();
    }

    private Worked<Stage> work() {
        List<Ion> leaving = change.ions().stream()
                .filter(ion -> change.total(ion).getValue() < 0)
                .toList();
        double added = change.total(regenerant).in(milligrams);
        if (leaving.isEmpty()) {
            steps.add(Step.of(
                    "Nothing is exchanged",
                    Term.exact(0, MEQ),
                    0,
                    MEQ,
                    "the water is no harder than what leaks through"));
        } else {
            exchange(leaving, added);
        }
        double share = softener.bypassShare(source);
        if (share > 0) {
            bypass(share);
        }
        List<Result> results = new ArrayList<>();
        results.add(Result.of(regenerant.name(), after.total(regenerant), milligrams));
        results.add(Result.of("hardness", after.hardness(), scale));
        if (share > 0) {
            results.add(new Result("share past the resin", share, ""));
        }
        return new Worked<>(
                "What a " + softener.name() + " makes of a water of "
                        + Term.of(source.hardness(), scale).text(4),
                steps,
                Stage.between(softener.name(), source, after),
                results,
                leaving.isEmpty() ? List.of() : mistakes(leaving, added, share));
    }

    private void exchange(List<Ion> leaving, double added) {
        List<Expression> entering = new ArrayList<>();
        for (Ion ion : source.ions()) {
            if (leaving.contains(ion)) {
                Step step = WorkedEquivalents.step(ion, source);
                steps.add(step);
                entering.add(Term.rounded(step.result(), MEQ));
            }
        }
        double exchangeable = entering.stream().mapToDouble(Expression::value).sum();
        if (entering.size() != 1) {
            steps.add(WorkedEquivalents.sum("What the resin can take up", entering, exchangeable, ""));
        }

        double kept = behind.hardness().in(scale);
        double raw = source.hardness().in(scale);
        double share = kept == 0 ? 0 : kept / raw;
        if (share > 0 || after.hardness().in(scale) > kept) {
            steps.addAll(WorkedEquivalents.hardness(source, scale).steps());
        }
        if (share > 0) {
            steps.add(Step.of(
                    "Share that leaks through",
                    Term.rounded(kept, scale.toString()).over(Term.rounded(raw, scale.toString())),
                    share,
                    "",
                    "each ion keeps the same share"));
        }
        double left = leaving.stream()
                .mapToDouble(ion -> -ion.chargeNumber() * change.total(ion).in(MILLIMOLE_PER_LITRE))
                .sum();
        steps.add(Step.of(
                "Charge that leaves the water",
                Term.rounded(exchangeable, MEQ).times(Term.exact(1, "").minus(Term.rounded(share, ""))),
                left,
                MEQ));
        steps.add(Step.of(
                "The same charge of " + regenerant.name() + " enters",
                Term.rounded(left, MEQ)
                        .over(Term.factor(regenerant.chargeNumber(), "meq", "mmol"))
                        .times(Term.factor(regenerant.molarMass().in(MolarMass.GRAM_PER_MOLE), "mg", "mmol")),
                added,
                milligrams.toString(),
                "charge for charge: one ion with two charges makes room for two with one"));
        steps.add(Step.of(
                regenerant.name() + " behind the resin",
                Term.of(source.total(regenerant), milligrams).plus(Term.rounded(added, milligrams.toString())),
                behind.total(regenerant).in(milligrams),
                milligrams.toString()));
        double charge = change.total(regenerant).in(MILLIMOLE_PER_LITRE) * regenerant.chargeNumber();
        steps.add(Step.of(
                "Ledger: charge in and charge out cancel",
                Term.rounded(charge, MEQ).minus(Term.rounded(left, MEQ)),
                0,
                MEQ,
                "alkalinity, chloride and everything else stay as they are"));
    }

    private void bypass(double share) {
        String unit = scale.toString();
        Term raw = Term.of(source.hardness(), scale);
        Term soft = Term.of(behind.hardness(), scale);
        Term wanted = Term.of(after.hardness(), scale);
        if (raw.value() > soft.value()) {
            steps.add(Step.of(
                    "Share of raw water that goes past the resin",
                    wanted.minus(soft).over(raw.minus(soft)),
                    share,
                    "",
                    "from share × raw + (1 − share) × soft = wanted"));
        }
        steps.add(blend(
                regenerant.name() + " of the blend",
                share,
                Term.of(behind.total(regenerant), milligrams),
                Term.of(source.total(regenerant), milligrams),
                after.total(regenerant).in(milligrams),
                milligrams.toString()));
        steps.add(blend("Hardness of the blend", share, soft, raw, wanted.value(), unit));
    }

    /** A blend of a first water and a share of a second one. */
    static Step blend(String title, double share, Term first, Term second, double result, String unit) {
        Term part = Term.rounded(share, "");
        return Step.of(title, Term.exact(1, "").minus(part).times(first).plus(part.times(second)), result, unit);
    }

    /** What is added, in the blend if some water goes past: only the rest of it brings the regenerant's ion. */
    private List<Mistake> mistakes(List<Ion> leaving, double addedByResin, double share) {
        double added = addedByResin * (1 - share);
        Sum moles = Sum.of(leaving.stream()
                .map(ion -> Term.rounded(-change.total(ion).in(MILLIMOLE_PER_LITRE), MILLIMOLE_PER_LITRE.toString()))
                .toList());
        Term removed =
                Term.of(source.hardness().subtract(behind.hardness()), Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
        return List.of(
                Mistake.of(
                        "mole for mole",
                        softened(
                                moles.times(
                                        Term.factor(regenerant.molarMass().in(MolarMass.GRAM_PER_MOLE), "mg", "mmol")),
                                share),
                        added,
                        milligrams.toString(),
                        "one calcium or magnesium carries two charges and takes two " + regenerant.symbol()
                                + ", not one"),
                Mistake.of(
                        "ppm for ppm",
                        softened(removed.times(Term.factor(1, "mg " + regenerant.symbol(), "mg CaCO3")), share),
                        added,
                        milligrams.toString(),
                        "an equivalent of " + regenerant.symbol() + " weighs "
                                + Numbers.rounded(regenerant.molarMass().in(MolarMass.GRAM_PER_MOLE), 6)
                                + " mg per meq, one of CaCO3 50.043"));
    }

    /** The part of the blend that went through the resin. */
    private static Chain softened(Chain added, double share) {
        return share == 0 ? added : added.times(Term.exact(1, "").minus(Term.rounded(share, "")));
    }
}
