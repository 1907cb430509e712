package evenwater.chemistry.control;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.GRAM_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Dissolving;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.water.Change;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * What a dosing pump doses: a compound dissolved in water.
 *
 * <p>Volumes of stock that reach a wanted rise neglect the volume that they add to the tank, as {@link Dosing} does. Two stocks that drop out when
 * they meet, such as calcium and carbonate, need two pumps and time between their doses.
 *
 * @param compound what is dissolved, of its strength
 * @param concentration weighed mass per volume of finished stock; above 0, not above what pure water of 20 °C surely takes up
 */
public record StockSolution(Compound compound, MassConcentration concentration) {

    /**
     * Checks the parts. A stock that may or may not dissolve is let through: ask {@link #dissolving}.
     *
     * @param compound what is dissolved
     * @param concentration weighed mass per volume of finished stock
     * @throws IllegalArgumentException if the concentration is not positive or surely above the solubility
     */
    public StockSolution {
        Objects.requireNonNull(compound, "compound");
        Objects.requireNonNull(concentration, "concentration");
        double grams = concentration.in(GRAM_PER_LITRE);
        if (!(grams > 0)) {
            throw new IllegalArgumentException(
                    "concentration of " + compound.name() + " in the stock must be positive, but was " + concentration);
        }
        if (dissolving(compound, grams)
                .filter(Dissolving.DOES_NOT_DISSOLVE::equals)
                .isPresent()) {
            throw new IllegalArgumentException("a stock with " + concentration + " of " + compound.name()
                    + " does not dissolve: pure water takes up "
                    + compound.solubility().orElseThrow().massPerMassOfWater() + " of "
                    + compound.solubility().orElseThrow().basis());
        }
    }

    /**
     * Returns a stock.
     *
     * @param compound what is dissolved
     * @param concentration weighed mass per volume of finished stock; above 0
     * @return the stock
     * @throws IllegalArgumentException if the concentration is not positive or above the solubility
     */
    public static StockSolution of(Compound compound, Quantity<MassConcentration> concentration) {
        return new StockSolution(compound, MassConcentration.from(concentration));
    }

    private static Optional<Dissolving> dissolving(Compound compound, double gramsPerLitre) {
        MassConcentration pure = MassConcentration.of(gramsPerLitre * compound.strength(), GRAM_PER_LITRE);
        return compound.solubility().map(solubility -> solubility.dissolving(compound.formula(), pure));
    }

    /**
     * Tells whether the compound dissolves at this concentration in water of 20 °C.
     *
     * <p>The solubility is one per mass of water, the concentration one per volume of stock, and the density is not known: see
     * {@link evenwater.chemistry.substance.Solubility#dissolving}. Where it may not, prepare it warm, let it cool and look for crystals.
     *
     * @return the answer; empty if the solubility is not known or the compound mixes in all proportions
     */
    public Optional<Dissolving> dissolving() {
        return dissolving(compound, concentration.in(GRAM_PER_LITRE));
    }

    /**
     * Returns how much stock raises an ion in a tank: {@code rise · volume / c(ion in the stock)}.
     *
     * @param ion a reference form that the compound brings
     * @param rise of its total; 0 or more
     * @param tank volume of its water; above 0
     * @return volume of stock in mL
     * @throws IllegalArgumentException if the compound does not bring the ion, or rise or volume are out of range
     */
    public WaterQuantity<Volume> volumeRaising(Ion ion, Quantity<AmountConcentration> rise, Quantity<Volume> tank) {
        Objects.requireNonNull(ion, "ion");
        double inStock = Change.dissolving(compound, concentration).total(ion).in(MILLIMOLE_PER_LITRE);
        double wanted = ion.concentration(rise).in(MILLIMOLE_PER_LITRE);
        double litres = WaterUnits.volume(tank).in(WaterUnits.LITRE);
        if (!(inStock > 0)) {
            throw new IllegalArgumentException("stock of " + compound.name() + " brings no " + ion);
        }
        if (!(wanted >= 0)) {
            throw new IllegalArgumentException("rise of " + ion + " must not be negative, but was " + rise);
        }
        if (!(litres > 0)) {
            throw new IllegalArgumentException("volume of the tank must be positive, but was " + tank);
        }
        return WaterUnits.volume(wanted * litres / inStock * 1000, WaterUnits.MILLILITRE);
    }

    /**
     * Returns how much stock raises the hardness of a tank.
     *
     * @param rise 0 or more
     * @param tank volume of its water; above 0
     * @return volume of stock in mL
     * @throws IllegalArgumentException if the compound brings no hardness, or rise or volume are out of range
     */
    public WaterQuantity<Volume> volumeRaisingHardness(Quantity<Hardness> rise, Quantity<Volume> tank) {
        return volumeOf(Dosing.raisingHardness(compound, rise, tank).mass());
    }

    /**
     * Returns how much stock raises the alkalinity of a tank.
     *
     * @param rise 0 or more; 0 or less with an acid
     * @param tank volume of its water; above 0
     * @return volume of stock in mL
     * @throws IllegalArgumentException if the compound moves alkalinity the other way or not at all, or the volume is out of range
     */
    public WaterQuantity<Volume> volumeRaisingAlkalinity(Quantity<Alkalinity> rise, Quantity<Volume> tank) {
        return volumeOf(Dosing.raisingAlkalinity(compound, rise, tank).mass());
    }

    private WaterQuantity<Volume> volumeOf(WaterQuantity<Mass> mass) {
        return WaterUnits.volume(
                mass.in(WaterUnits.GRAM) / concentration.in(GRAM_PER_LITRE) * 1000, WaterUnits.MILLILITRE);
    }

    /**
     * Returns what is in a volume of stock, ready for {@link Dosing#of}.
     *
     * @param stock volume of stock
     * @return weighed mass of the compound in g
     */
    public WaterQuantity<Mass> massIn(Quantity<Volume> stock) {
        return WaterUnits.mass(
                WaterUnits.volume(stock).in(WaterUnits.LITRE) * concentration.in(GRAM_PER_LITRE), WaterUnits.GRAM);
    }

    /** Returns what is dissolved and how much. */
    @Override
    public String toString() {
        return "stock with " + concentration.toText(Locale.ROOT, 6) + " of " + compound.name();
    }
}
