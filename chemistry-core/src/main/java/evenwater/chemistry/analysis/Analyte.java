package evenwater.chemistry.analysis;

import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something that reports name.
 *
 * @param name our name for it
 * @param kind how its rows are read
 * @param ion what its amount counts as; null where it is no ion
 * @param bases what a blank basis may mean; several if it is ambiguous
 */
record Analyte(String name, Kind kind, @Nullable Ion ion, List<Formula> bases) {

    /** How the rows of an analyte are read. */
    enum Kind {
        ION,
        BICARBONATE,
        CARBONATE,
        HYDROXIDE,
        HARDNESS,
        CALCIUM_HARDNESS,
        MAGNESIUM_HARDNESS,
        CARBONATE_HARDNESS,
        COMPENSATED_HARDNESS,
        ALKALINITY,
        PH,
        CONDUCTIVITY,
        TEMPERATURE,
        DISSOLVED_SOLIDS,
        AMBIGUOUS,
        UNUSED
    }
}
