package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Ion exchange against hydrogen ions, as bookkeeping.
 *
 * <p>A <b>weak-acid</b> resin takes hardness as far as there is alkalinity to take up the hydrogen it gives: temporary hardness leaves,
 * bicarbonate becomes CO₂. A <b>strong-acid</b> resin in hydrogen form takes every cation: alkalinity turns negative, the water is a
 * dilute mineral acid that attacks pipes and kills fish, and is for blending only. Both leave the carbon: the water holds much CO₂ and a low pH
 * until it is aerated.
 *
 * <p>Hydrochloric and sulfuric acid for regeneration burn skin and eyes and must never meet chlorine bleach; follow local codes for their
 * disposal. What the resin does over its run is left out. Immutable and thread-safe.
 */
public final class Dealkalizer implements Treatment {

    /** All taken in proportion, though a carboxylic resin prefers some. */
    private static final List<Ion> HARDNESS =
            List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.STRONTIUM, Ion.BARIUM, Ion.IRON_II, Ion.MANGANESE_II);

    private final boolean strong;

    private Dealkalizer(boolean strong) {
        this.strong = strong;
    }

    /**
     * Returns a weak-acid resin in hydrogen form.
     *
     * @return the treatment; hardness ions leave in proportion, up to the alkalinity
     */
    public static Dealkalizer withWeakAcidResin() {
        return new Dealkalizer(false);
    }

    /**
     * Returns a strong-acid resin in hydrogen form.
     *
     * @return the treatment; all cations leave
     */
    public static Dealkalizer withStrongAcidResin() {
        return new Dealkalizer(true);
    }

    @Override
    public Water treat(Water source) {
        Objects.requireNonNull(source, "source");
        List<Ion> leaving = source.ions().stream()
                .filter(ion -> strong ? ion.chargeNumber() > 0 : HARDNESS.contains(ion))
                .toList();
        double charge = 0;
        for (Ion ion : leaving) {
            charge += ion.chargeNumber() * source.total(ion).in(MILLIMOLE_PER_LITRE);
        }
        double alkalinity = source.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        double share = strong || charge <= alkalinity ? 1 : Math.max(0, alkalinity) / charge;
        if (charge == 0 || share == 0) {
            return source;
        }
        SortedMap<Ion, AmountConcentration> moved = new TreeMap<>();
        double hydrogen = 0;
        for (Ion ion : leaving) {
            double amount = share * source.total(ion).in(MILLIMOLE_PER_LITRE);
            moved.put(ion, AmountConcentration.of(-amount, MILLIMOLE_PER_LITRE));
            hydrogen += ion.chargeNumber() * amount;
        }
        moved.put(Ion.HYDROGEN, AmountConcentration.of(hydrogen, MILLIMOLE_PER_LITRE));
        return known(source).plus(Change.of(moved));
    }

    /** A measured pH tells the carbon, which stays; a water that knows neither is treated all the same. */
    private static Water known(Water source) {
        return source.measuredPH().isPresent() ? Speciation.of(source).water() : source;
    }

    @Override
    public String name() {
        return (strong ? "strong-acid" : "weak-acid") + " resin in hydrogen form";
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name();
    }
}
