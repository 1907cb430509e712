package evenwater.firmware;

import evenwater.chemistry.kernel.AtomicWeights;
import java.util.List;

/** What sodium an exchange adds for each unit of hardness that it takes away. */
final class Sodium {

    private static final Scales HARDNESS = Scales.hardness();

    private Sodium() {}

    /** Milligrams of sodium for each unit of hardness, exact: one equivalent of hardness is exchanged for one of sodium, which has a single charge. */
    static Ratio exact(int unit) {
        return HARDNESS.exact(unit, milliequivalent()).times(Ratio.of(AtomicWeights.SODIUM, 10_000));
    }

    private static int milliequivalent() {
        List<String> names =
                HARDNESS.units().stream().map(Scales.Scale::constant).toList();
        return names.indexOf("MILLIEQUIVALENT_PER_LITRE");
    }

    static Ratio used(int unit) {
        return exact(unit).nearest(Scales.LARGEST);
    }

    static Ratio worstError() {
        Ratio worst = Ratio.HALF;
        for (int unit = 0; unit < HARDNESS.units().size(); unit++) {
            Ratio error = Scales.worstError(exact(unit), used(unit));
            worst = worst.compareTo(error) < 0 ? error : worst;
        }
        return worst;
    }
}
