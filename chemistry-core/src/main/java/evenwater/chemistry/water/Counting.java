package evenwater.chemistry.water;

import evenwater.chemistry.substance.Ion;
import java.util.Objects;

/** Where a water counts an ion: as itself, in another form, as inorganic carbon, or as alkalinity alone. */
final class Counting {

    private Counting() {}

    static boolean isCarbon(Ion ion) {
        return ion.referenceForm().equals(Ion.CARBON_DIOXIDE);
    }

    static boolean isWater(Ion ion) {
        return ion.referenceForm().equals(Ion.WATER);
    }

    /** Refuses ions that have no total of their own, so that one water has one way to be written. */
    static void refuseUncounted(Ion ion) {
        Objects.requireNonNull(ion, "ion");
        if (isCarbon(ion)) {
            throw new IllegalArgumentException(
                    ion + " has no total of its own: it is counted in inorganic carbon and alkalinity");
        }
        if (isWater(ion)) {
            throw new IllegalArgumentException(ion + " has no total of its own: it is counted in alkalinity");
        }
        if (!ion.isReferenceForm()) {
            throw new IllegalArgumentException(
                    ion + " has no total of its own: it is counted in " + ion.referenceForm() + " and alkalinity");
        }
    }
}
