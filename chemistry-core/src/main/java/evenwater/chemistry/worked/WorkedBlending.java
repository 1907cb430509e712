package evenwater.chemistry.worked;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Blending;
import evenwater.chemistry.treatment.Stage;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import javax.measure.Unit;

/** What a blend of two waters is, quantity by quantity. */
final class WorkedBlending {

    private WorkedBlending() {}

    static Worked<Stage> of(Blending blending, Water source, Unit<Hardness> scale) {
        Water other = blending.other(source);
        double share = blending.shareOfOther(source);
        Water after = blending.treat(source);
        Term raw = Term.of(source.hardness(), scale);
        Term others = Term.of(other.hardness(), scale);
        Term blended = Term.of(after.hardness(), scale);
        List<Step> steps = new ArrayList<>();
        List<Mistake> mistakes = new ArrayList<>();
        List<Result> results = new ArrayList<>();
        if (blending.wantsHardness()) {
            results.add(new Result("share of the other water", share, ""));
        }
        if (blending.wantsHardness() && raw.value() != others.value()) {
            steps.add(Step.of(
                    "Share of the other water",
                    raw.minus(blended).over(raw.minus(others)),
                    share,
                    "",
                    "from (1 − share) × one + share × other = wanted"));
            if (others.value() > 0 && raw.value() > 0) {
                mistakes.add(Mistake.of(
                        "the other water taken for pure",
                        Term.exact(1, "").minus(blended.over(raw)),
                        share,
                        "",
                        "the other water brings hardness of its own"));
            }
        }
        steps.add(WorkedSoftening.blend("Hardness", share, raw, others, blended.value(), scale.toString()));
        Unit<Alkalinity> meq = Alkalinity.MILLIEQUIVALENT_PER_LITRE;
        steps.add(WorkedSoftening.blend(
                "Alkalinity",
                share,
                Term.of(source.alkalinity(), meq),
                Term.of(other.alkalinity(), meq),
                after.alkalinity().in(meq),
                meq.toString()));
        results.add(Result.of("hardness", after.hardness(), scale));
        results.add(Result.of("alkalinity", after.alkalinity(), meq));
        TreeSet<Ion> ions = new TreeSet<>(source.ions());
        ions.addAll(other.ions());
        for (Ion ion : ions) {
            Unit<AmountConcentration> milligrams = ion.milligramPerLitre();
            steps.add(WorkedSoftening.blend(
                    ion.name(),
                    share,
                    Term.of(source.total(ion), milligrams),
                    Term.of(other.total(ion), milligrams),
                    after.total(ion).in(milligrams),
                    milligrams.toString()));
            results.add(Result.of(ion.name(), after.total(ion), milligrams));
        }
        averageOfPH(source, other, after, share).ifPresent(mistakes::add);
        return new Worked<>(
                "What the " + blending.name() + " makes of a water of " + raw.text(4),
                steps,
                Stage.between(blending.name(), source, after),
                results,
                mistakes);
    }

    private static Optional<Mistake> averageOfPH(Water source, Water other, Water after, double share) {
        OptionalDouble one = pH(source);
        OptionalDouble two = pH(other);
        OptionalDouble blend = pH(after);
        if (one.isEmpty() || two.isEmpty() || blend.isEmpty() || share == 0 || share == 1) {
            return Optional.empty();
        }
        Term part = Term.rounded(share, "");
        return Optional.of(Mistake.of(
                "mean of the pH",
                Term.exact(1, "")
                        .minus(part)
                        .times(Term.rounded(one.getAsDouble(), ""))
                        .plus(part.times(Term.rounded(two.getAsDouble(), ""))),
                blend.getAsDouble(),
                "",
                "pH is no amount: alkalinity and inorganic carbon mix, and the pH follows from them: "
                        + Numbers.rounded(blend.getAsDouble(), 4)));
    }

    /** A pH is known where the carbon is, or a measured pH tells it. */
    private static OptionalDouble pH(Water water) {
        if (water.carbon().isEmpty() && water.measuredPH().isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Speciation.of(water).pH());
        } catch (NoAnswerException | IllegalArgumentException e) { // such as water too hot for the constants
            return OptionalDouble.empty();
        }
    }
}
