package evenwater.chemistry.testing;

import static evenwater.chemistry.testing.Amounts.mmol;

import evenwater.chemistry.equilibrium.CarbonateSystem;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.Tuple;

/**
 * Random natural waters whose inorganic carbon is known: 0 to 50 °C, alkalinity 0.05 to 12 meq/L, pH 5.5 to 9.5, to some 5000 µS/cm.
 *
 * <p>Cations carry what the anions ask for, so that charges balance. Any of the ions may be absent but sodium.
 */
public final class KnownWaters {

    private static final List<Ion> ANIONS = List.of(Ion.CHLORIDE, Ion.SULFATE, Ion.NITRATE);
    private static final List<Ion> CATIONS = List.of(Ion.SODIUM, Ion.CALCIUM, Ion.MAGNESIUM, Ion.POTASSIUM);

    /** The most of each in mmol/L; together the cations among them carry less than the least alkalinity. */
    private static final Map<Ion, Double> TRACES = Map.of(
            Ion.AMMONIUM, 0.02,
            Ion.STRONTIUM, 0.005,
            Ion.MANGANESE_II, 0.002,
            Ion.FLUORIDE, 0.1,
            Ion.DIHYDROGEN_PHOSPHATE, 0.02,
            Ion.BORIC_ACID, 0.05,
            Ion.SILICA, 0.5,
            Waters.UREA, 0.1);

    private KnownWaters() {}

    /** Waters without unmeasured charge. */
    public static Arbitrary<Water> balanced() {
        return of(Arbitraries.just(0.0));
    }

    /** Waters with an unmeasured charge of up to 5 % of their anions, as analyses have. */
    public static Arbitrary<Water> analysed() {
        return of(uniform(-0.05, 0.05));
    }

    /** From least to most, which must be positive; every order of magnitude is as likely. */
    public static Arbitrary<Double> logarithmic(double least, double most) {
        return uniform(0, 1).map(u -> least * Math.pow(most / least, u));
    }

    public static Arbitrary<Double> uniform(double least, double most) {
        return Arbitraries.doubles().between(least, most).ofScale(6).withDistribution(RandomDistribution.uniform());
    }

    private static Arbitrary<Water> of(Arbitrary<Double> unmeasuredShare) {
        Arbitrary<Double> anion =
                Arbitraries.frequencyOf(Tuple.of(1, Arbitraries.just(0.0)), Tuple.of(4, logarithmic(1e-3, 15)));
        Arbitrary<Double> cation =
                Arbitraries.frequencyOf(Tuple.of(1, Arbitraries.just(0.0)), Tuple.of(4, uniform(0.01, 1)));
        return Combinators.combine(
                        uniform(0, 50),
                        logarithmic(0.05, 12),
                        uniform(5.5, 9.5),
                        anion.list().ofSize(ANIONS.size()),
                        cation.list().ofSize(CATIONS.size()),
                        Arbitraries.maps(Arbitraries.of(TRACES.keySet()), uniform(0, 1)),
                        unmeasuredShare)
                .as(KnownWaters::water)
                .withoutEdgeCases(); // they outnumber the tries
    }

    private static Water water(
            double celsius,
            double alkalinity,
            double pH,
            List<Double> anions,
            List<Double> cationShares,
            Map<Ion, Double> traces,
            double unmeasuredShare) {
        Map<Ion, Double> totals = new TreeMap<>();
        traces.forEach((ion, share) -> totals.put(ion, share * TRACES.getOrDefault(ion, 0.0)));
        for (int i = 0; i < anions.size(); i++) {
            totals.put(ANIONS.get(i), anions.get(i));
        }
        double charge = alkalinity;
        for (Map.Entry<Ion, Double> e : totals.entrySet()) {
            charge -= e.getKey().chargeNumber() * e.getValue();
        }
        double shares = 0.01;
        for (double share : cationShares) {
            shares += share;
        }
        for (int i = 0; i < CATIONS.size(); i++) {
            Ion ion = CATIONS.get(i);
            double share = cationShares.get(i) + (ion.equals(Ion.SODIUM) ? 0.01 : 0);
            totals.put(ion, charge * share / shares / ion.chargeNumber());
        }
        WaterBuilder builder = Water.builder().temperature(Amounts.celsius(celsius));
        totals.forEach((ion, n) -> builder.total(ion, mmol(n)));
        if (unmeasuredShare == 0) {
            builder.unmeasuredCharge(Amounts.charge(0));
        } else { // a wrong analysis of sodium and chloride, with the alkalinity as titrated
            Ion wrong = unmeasuredShare > 0 ? Ion.CHLORIDE : Ion.SODIUM;
            builder.total(wrong, mmol(totals.getOrDefault(wrong, 0.0) + Math.abs(unmeasuredShare) * charge));
            builder.alkalinity(Amounts.alkalinity(alkalinity));
        }
        return withPH(builder.build(), pH);
    }

    /** A pH is lowered as long as hydroxide and weak acids ask for more alkalinity than there is. */
    private static Water withPH(Water water, double pH) {
        for (double tried = pH; ; tried -= 0.25) {
            try {
                return CarbonateSystem.of(water)
                        .withItsAlkalinity()
                        .withPH(tried)
                        .solve()
                        .water();
            } catch (NoAnswerException e) {
                if (tried < 5) {
                    throw e;
                }
            }
        }
    }
}
