package evenwater.chemistry.quantity;

import static evenwater.chemistry.kernel.AtomicWeights.CALCIUM;
import static evenwater.chemistry.kernel.AtomicWeights.CARBON;
import static evenwater.chemistry.kernel.AtomicWeights.HYDROGEN;
import static evenwater.chemistry.kernel.AtomicWeights.OXYGEN;

/** The molar masses that the definitions of scales weigh in, in 1e-4 g/mol, as exact sums of atomic weights. */
final class MolarMasses {

    /** CaCO₃: 100.0860 g/mol. */
    static final long CALCIUM_CARBONATE = CALCIUM + CARBON + 3L * OXYGEN;

    /** CaO: 56.0770 g/mol. */
    static final long CALCIUM_OXIDE = CALCIUM + (long) OXYGEN;

    /** HCO₃⁻: 61.0160 g/mol. */
    static final long BICARBONATE = HYDROGEN + CARBON + 3L * OXYGEN;

    private MolarMasses() {}
}
