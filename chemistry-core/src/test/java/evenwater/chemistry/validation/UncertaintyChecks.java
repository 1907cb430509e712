package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static evenwater.chemistry.quantity.WaterUnits.MILLIGRAM;
import static evenwater.chemistry.quantity.WaterUnits.MILLILITRE;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.uncertainty.Draw;
import evenwater.chemistry.uncertainty.MonteCarlo;
import evenwater.chemistry.uncertainty.Uncertain;
import evenwater.chemistry.uncertainty.UncertainResult;
import evenwater.chemistry.uncertainty.UncertaintyBudget;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** Results with an uncertainty, by the law of propagation and by Monte Carlo. */
final class UncertaintyChecks {

    private static final MonteCarlo MILLION = MonteCarlo.seeded(25).draws(1_000_000);

    private UncertaintyChecks() {}

    static Topic topic() {
        List<PublishedCheck> checks = new ArrayList<>(solution());
        checks.addAll(additive());
        return new Topic(
                "Uncertainty",
                "A million draws with one seed; the standard error of their u is 0.1 % of it, that of their ends 0.003 u.",
                checks);
    }

    private static List<PublishedCheck> solution() {
        Uncertain<WaterQuantity<Mass>> mass =
                Uncertain.normal(WaterUnits.mass(100.28, MILLIGRAM), WaterUnits.mass(0.05, MILLIGRAM));
        Uncertain<WaterQuantity<Dimensionless>> purity = Uncertain.between(0.9998, 1.0000);
        Uncertain<WaterQuantity<Volume>> volume =
                Uncertain.normal(WaterUnits.volume(100, MILLILITRE), WaterUnits.volume(0.07, MILLILITRE));
        List<Uncertain<?>> inputs = List.of(mass, purity, volume);
        UncertaintyBudget<MassConcentration> law =
                UncertaintyBudget.of(inputs, draw -> strength(draw, mass, purity, volume));
        UncertainResult<MassConcentration> draws =
                MILLION.propagate(inputs, draw -> strength(draw, mass, purity, volume));
        String what = "100.28 mg of cadmium, 99.99 % pure, in 100.0 mL: ";
        return List.of(
                milligrams("law-c", what + "c", law.value()).printed("1002.7", Source.QUAM, Status.VERIFIED),
                milligrams("law-u", what + "u", law.standardUncertainty()).printed("0.9", Source.QUAM, Status.VERIFIED),
                milligrams("law-u", what + "u", law.standardUncertainty()).computed("0.864"),
                milligrams("law-U", what + "U, k = 2", law.expandedUncertainty())
                        .printed("1.8", Source.QUAM, Status.FROM_MEMORY)
                        .differing("the source doubles its u rounded to 0.9", new BigDecimal("1.8")),
                milligrams("draws-c", what + "c by Monte Carlo", draws.mean())
                        .printed("1002.7", Source.QUAM, Status.VERIFIED),
                milligrams("draws-u", what + "u by Monte Carlo", draws.standardUncertainty())
                        .printed("0.9", Source.QUAM, Status.VERIFIED));
    }

    private static MassConcentration strength(
            Draw draw,
            Uncertain<WaterQuantity<Mass>> mass,
            Uncertain<WaterQuantity<Dimensionless>> purity,
            Uncertain<WaterQuantity<Volume>> volume) {
        double milligrams = draw.of(mass).in(MILLIGRAM) * draw.valueOf(purity);
        return MassConcentration.of(1000 * milligrams / draw.of(volume).in(MILLILITRE), MILLIGRAM_PER_LITRE);
    }

    private static Result milligrams(String id, String what, MassConcentration ours) {
        return new Result("standard-" + id, what, "mg/L", ours.in(MILLIGRAM_PER_LITRE));
    }

    private static List<PublishedCheck> additive() {
        double half = Math.sqrt(3);
        List<Uncertain<WaterQuantity<Dimensionless>>> inputs = List.of(
                Uncertain.between(-half, half),
                Uncertain.between(-half, half),
                Uncertain.between(-half, half),
                Uncertain.between(-half, half));
        ToDoubleFunction<Draw> sum =
                draw -> inputs.stream().mapToDouble(draw::valueOf).sum();
        UncertainResult<WaterQuantity<Dimensionless>> draws = MILLION.propagateNumber(inputs, sum);
        String what = "sum of four rectangulars of u = 1: ";
        return List.of(
                number("u", what + "u by Monte Carlo", draws.standardUncertainty())
                        .printed("2.00", Source.JCGM_101, Status.FROM_MEMORY),
                number(
                                "high",
                                what + "upper end of 95 % by Monte Carlo",
                                draws.symmetricInterval().high())
                        .against(Figure.within("3.88", "0.02"), Source.JCGM_101, Status.FROM_MEMORY)
                        .remarking("its runs of a million draws scatter by 0.01"),
                number(
                                "exact",
                                what + "upper end of 95 % by Monte Carlo",
                                draws.symmetricInterval().high())
                        .against(Figure.within("3.8794", "0.02"), Source.ARITHMETIC, Status.COMPUTED)
                        .remarking("exact; four standard errors of a million draws"));
    }

    private static Result number(String id, String what, WaterQuantity<Dimensionless> ours) {
        return new Result("additive-" + id, what, "", ours.in(WaterUnits.ONE));
    }
}
