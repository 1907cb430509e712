package evenwater.chemistry.analysis;

import evenwater.chemistry.kernel.KitKernel;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.kernel.KitState;
import evenwater.chemistry.quantity.NoAnswerException;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a hobby kit shows of a water: hardness (GH), alkalinity (KH), pH and the conductivity or "TDS" of a meter, each with its range.
 *
 * <p>It does not tell sodium, chloride or sulfate, but it bounds them: ions balance in charge, and together they conduct what the meter
 * shows. {@link #bounds} are outer bounds over all waters that have these readings.
 *
 * <p><b>Which waters.</b> 0 or more of Ca²⁺, Mg²⁺, Na⁺, K⁺, Cl⁻, SO₄²⁻ and NO₃⁻, and carbonates and hydroxide by alkalinity and pH; charges
 * balance; hardness is calcium and magnesium; alkalinity is 0 or more, so free mineral acid is left out. The conductivity at 25 °C of the ions and
 * pairs, as {@link evenwater.chemistry.instrument.CalculatedConductivity} has it, lies in the range of the reading, widened by an allowance
 * for the model. Neutral silica, carbon dioxide and anything else without charge make no difference. Saturation is not asked: a water may
 * hold more than would stay dissolved. Where neither hardness nor alkalinity is read, an equivalent is taken to conduct 20 S cm² or more.
 *
 * <p><b>What is left out</b> counts as what it is like: ammonium as potassium, bromide and nitrite as chloride or nitrate, strontium as hardness
 * if the kit titrates it. Phosphate, fluoride, silicate, borate, iron and organic acids conduct like bicarbonate or less; their equivalents
 * are within the bounds of no ion, so that a bound may be wrong by as much as there is of them. In ordinary waters they are less
 * than 1 % of the ions.
 *
 * <p><b>How sure.</b> The bounds are found by a search for the least and the largest conductivity with each amount, not proved; the reading
 * is widened by another 0.2 % for what a search may miss. Immutable and thread-safe.
 */
public final class KitReadings {

    /** How many results of a test are tried, from the least to the most that is possible. */
    private static final int RESULTS = 5;

    /** Less than any equivalent of a salt conducts, in S cm²/eq, up to the largest reading; heavily supersaturated waters aside. */
    private static final double LEAST_EQUIVALENT_CONDUCTIVITY = 20;

    private static final double MICROSIEMENS_PER_EQUIVALENT = 1e6 / 1000;

    /** Added to the largest amounts, in eq/L, for readings near 0. */
    private static final double FEW_EQUIVALENTS = 1e-3;

    private final Map<KitQuantity, KitRange> measured;
    private final KitRange pH;
    private final double kelvin;
    private final KitRange microsiemens;
    private final KitComplaints complaints;

    KitReadings(
            Map<KitQuantity, KitRange> measured,
            KitRange pH,
            double kelvin,
            KitRange microsiemens,
            KitComplaints complaints) {
        this.measured = measured;
        this.pH = pH;
        this.kelvin = kelvin;
        this.microsiemens = microsiemens;
        this.complaints = complaints;
    }

    /**
     * Returns a builder; the conductivity or the reading of a meter has to be stated.
     *
     * @return a builder without readings
     */
    public static KitReadingsBuilder builder() {
        return new KitReadingsBuilder();
    }

    /**
     * Returns the bounds of all ions; some 30 ms of computing.
     *
     * @return outer bounds
     * @throws NoAnswerException if no water has these readings; the message says which contradict each other
     */
    public KitBounds bounds() {
        KitState state = prepared();
        Map<KitQuantity, KitRange> found = new EnumMap<>(KitQuantity.class);
        for (KitQuantity quantity : KitQuantity.values()) {
            found.put(quantity, range(state, quantity));
        }
        return new KitBounds(found);
    }

    /**
     * Returns how one more test would narrow a quantity, over five results that the readings allow.
     *
     * @param wanted what is asked for
     * @param test the test that could be made
     * @return the range before and after
     * @throws NoAnswerException if no water has these readings
     */
    public Narrowing narrowing(KitQuantity wanted, ExtraTest test) {
        Objects.requireNonNull(wanted, "wanted");
        Objects.requireNonNull(test, "test");
        KitState state = prepared();
        return narrowing(wanted, test, range(state, wanted), state);
    }

    /**
     * Returns the usual tests, the one that narrows a quantity most on average first.
     *
     * @param wanted what is asked for
     * @return all of {@link ExtraTest#usual}; some 200 ms of computing
     * @throws NoAnswerException if no water has these readings
     */
    public List<Narrowing> narrowings(KitQuantity wanted) {
        Objects.requireNonNull(wanted, "wanted");
        KitState state = prepared();
        KitRange before = range(state, wanted);
        return ExtraTest.usual().stream()
                .map(test -> narrowing(wanted, test, before, state))
                .sorted(Comparator.comparingDouble(Narrowing::meanWidthLeft))
                .toList();
    }

    /**
     * Returns the usual test that narrows a quantity most on average.
     *
     * @param wanted what is asked for
     * @return the first of {@link #narrowings}
     * @throws NoAnswerException if no water has these readings
     */
    public Narrowing mostInformativeTest(KitQuantity wanted) {
        return narrowings(wanted).get(0);
    }

    private Narrowing narrowing(KitQuantity wanted, ExtraTest test, KitRange before, KitState state) {
        KitRange results = range(state, test.quantity());
        KitRange widest = null;
        double sum = 0;
        for (int i = 0; i < RESULTS; i++) {
            KitRange result = test.around(results.least() + i * results.width() / (RESULTS - 1));
            KitState known = state(with(test.quantity(), result));
            if (KitKernel.prepare(known)
                    == KitKernel.FOUND) { // else beyond the very last water, which leaves nothing open
                KitRange left = range(known, wanted);
                widest = widest == null || left.width() > widest.width() ? left : widest;
                sum += left.width();
            }
        }
        boolean told = widest != null && before.width() > 0;
        return new Narrowing(
                test,
                wanted,
                KitBounds.interval(before),
                KitBounds.interval(widest == null ? before : widest),
                told ? sum / RESULTS / before.width() : 1);
    }

    private Map<KitQuantity, KitRange> with(KitQuantity quantity, KitRange result) {
        Map<KitQuantity, KitRange> all = new EnumMap<>(measured);
        all.merge(
                quantity,
                result,
                (a, b) -> new KitRange(
                        Math.max(a.least(), Math.min(a.most(), b.least())),
                        Math.min(a.most(), Math.max(a.least(), b.most()))));
        return all;
    }

    private KitState prepared() {
        KitState state = state(measured);
        int status = KitKernel.prepare(state);
        if (status != KitKernel.FOUND) {
            throw complaints.exception(status, state, one -> {
                KitState alone = state(one);
                return KitKernel.prepare(alone) == status ? Optional.of(alone) : Optional.empty();
            });
        }
        return state;
    }

    private KitState state(Map<KitQuantity, KitRange> known) {
        KitState state = new KitState(pH.least(), pH.most(), kelvin);
        double least = known.values().stream().mapToDouble(KitRange::least).sum();
        state.conductivity(
                microsiemens.least(),
                microsiemens.most(),
                microsiemens.most() / (MICROSIEMENS_PER_EQUIVALENT * LEAST_EQUIVALENT_CONDUCTIVITY)
                        + least
                        + FEW_EQUIVALENTS);
        known.forEach((quantity, range) -> state.measured(quantity, range.least(), range.most()));
        return state;
    }

    private static KitRange range(KitState state, KitQuantity quantity) {
        double least = KitKernel.bound(state, quantity, -1);
        double most = KitKernel.bound(state, quantity, 1);
        if (Double.isNaN(least) || Double.isNaN(most)) {
            throw KitComplaints.notSolved();
        }
        return new KitRange(Math.max(0, least), Math.max(0, Math.max(least, most)));
    }
}
