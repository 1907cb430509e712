package evenwater.chemistry.water;

import evenwater.chemistry.substance.Ion;
import java.util.List;

/** Which ions a figure of total hardness counts. */
public enum HardnessCount {

    /** Calcium and magnesium, as hardness by calculation does (Standard Methods 2340 B, from memory). */
    CALCIUM_AND_MAGNESIUM(List.of(Ion.CALCIUM, Ion.MAGNESIUM)),

    /** All alkaline earths: calcium, magnesium, strontium and barium (ISO 6059, from memory). */
    ALKALINE_EARTHS(List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.STRONTIUM, Ion.BARIUM)),

    /** What an EDTA titration without masking sees: the alkaline earths, and dissolved iron and manganese. */
    EDTA_TITRATION(List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.STRONTIUM, Ion.BARIUM, Ion.IRON_II, Ion.MANGANESE_II));

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<Ion> ions;

    HardnessCount(List<Ion> ions) {
        this.ions = ions;
    }

    /**
     * Returns the ions that are counted, each mole as one mole of hardness.
     *
     * @return double-charged ions
     */
    public List<Ion> ions() {
        return ions;
    }
}
