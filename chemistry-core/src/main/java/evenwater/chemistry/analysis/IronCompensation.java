package evenwater.chemistry.analysis;

import static evenwater.chemistry.quantity.Hardness.GRAIN_PER_US_GALLON;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import javax.measure.Quantity;

/**
 * The trade's surcharge on hardness for iron and manganese, by which a softener is sized (common practice, no source).
 *
 * <p>It makes up for fouling and extra regenerations, not for charge: one mg/L of iron exchanges like 0.105 grains per US gallon, and
 * the trade adds 3 to 5. So the result is a {@link CompensatedHardness}, which never gives sodium or a recipe.
 *
 * @param grainsPerMilligramOfIron grains per US gallon for each mg/L of iron; 0 or more
 * @param grainsPerMilligramOfManganese grains per US gallon for each mg/L of manganese; 0 or more
 */
public record IronCompensation(double grainsPerMilligramOfIron, double grainsPerMilligramOfManganese) {

    /** A surcharge in use: 3 grains for iron (the trade has 3 to 5), 2 for manganese (seen on one page of the trade). */
    public static final IronCompensation USUAL = new IronCompensation(3, 2);

    /**
     * Checks the figures.
     *
     * @param grainsPerMilligramOfIron see the record
     * @param grainsPerMilligramOfManganese see the record
     */
    public IronCompensation {
        if (!(grainsPerMilligramOfIron >= 0
                && grainsPerMilligramOfManganese >= 0
                && grainsPerMilligramOfIron + grainsPerMilligramOfManganese <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("surcharges must be finite and not negative, but were "
                    + grainsPerMilligramOfIron + " and " + grainsPerMilligramOfManganese + " gpg per mg/L");
        }
    }

    /**
     * Returns the sizing figure.
     *
     * @param hardness true hardness; 0 or more
     * @param iron dissolved iron; 0 or more
     * @param manganese dissolved manganese; 0 or more
     * @return hardness with its surcharge, in grains per US gallon
     * @throws IllegalArgumentException if one of them is negative
     */
    public CompensatedHardness of(
            Quantity<Hardness> hardness, Quantity<AmountConcentration> iron, Quantity<AmountConcentration> manganese) {
        double grains = notNegative(Hardness.from(hardness).in(GRAIN_PER_US_GALLON), "hardness", hardness)
                + grainsPerMilligramOfIron * milligrams(Ion.IRON_II, "iron", iron)
                + grainsPerMilligramOfManganese * milligrams(Ion.MANGANESE_II, "manganese", manganese);
        return CompensatedHardness.of(grains, CompensatedHardness.GRAIN_PER_US_GALLON);
    }

    private static double milligrams(Ion ion, String name, Quantity<AmountConcentration> stated) {
        return notNegative(AmountConcentration.from(stated).in(ion.milligramPerLitre()), name, stated);
    }

    private static double notNegative(double value, String name, Quantity<?> stated) {
        if (value < 0) {
            throw new IllegalArgumentException(name + " must not be negative, but was " + stated);
        }
        return value;
    }
}
