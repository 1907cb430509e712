package evenwater.chemistry.recipe;

import evenwater.chemistry.control.StockSolution;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.treatment.Dosing;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * One dose of a recipe: by mass, in level teaspoons where somebody states what one holds, in millilitres where it comes from a stock.
 *
 * @param dosing the dose by mass
 * @param stock the stock that it comes from; empty if it is dosed dry
 * @param volume of the water that it goes into
 */
public record RecipeDose(Dosing dosing, Optional<StockSolution> stock, WaterQuantity<Volume> volume) {

    /**
     * Checks that nothing is null.
     *
     * @param dosing see the record
     * @param stock see the record
     * @param volume see the record
     */
    public RecipeDose {
        Objects.requireNonNull(dosing, "dosing");
        Objects.requireNonNull(stock, "stock");
        Objects.requireNonNull(volume, "volume");
    }

    /**
     * Returns what is dosed.
     *
     * @return the compound, of its strength
     */
    public Compound compound() {
        return dosing.compound();
    }

    /**
     * Returns how much is weighed.
     *
     * @return mass in g, of the compound's strength
     */
    public WaterQuantity<Mass> mass() {
        return dosing.mass();
    }

    /**
     * Returns how much stock holds the dose.
     *
     * @return volume of stock in mL; empty if the dose does not come from a stock
     */
    public Optional<WaterQuantity<Volume>> stockVolume() {
        return stock.map(solution -> WaterUnits.volume(
                mass().in(WaterUnits.GRAM) / solution.concentration().in(MassConcentration.GRAM_PER_LITRE) * 1000,
                WaterUnits.MILLILITRE));
    }

    /**
     * Returns how many level US teaspoons hold the dose.
     *
     * @return number of teaspoons; no unit; empty if nobody states what one holds, or the dose comes from a stock
     */
    public OptionalDouble teaspoons() {
        return stock.isEmpty() && compound().teaspoon().isPresent()
                ? OptionalDouble.of(
                        mass().ratioTo(compound().teaspoon().orElseThrow().mass()))
                : OptionalDouble.empty();
    }

    /**
     * Returns the dose as measured by teaspoons, with the least and the most that may be in them.
     *
     * @return the dose; empty as {@link #teaspoons}
     */
    public Optional<Dosing> byTeaspoons() {
        return teaspoons().isPresent()
                ? Optional.of(Dosing.teaspoons(compound(), teaspoons().getAsDouble(), volume))
                : Optional.empty();
    }

    /** Returns the dose for people, such as {@code 2.94 g of calcium chloride dihydrate (0.717 level teaspoons ± 20 %)}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(
                mass().toText(Locale.ROOT, 4) + " of " + compound().name());
        stockVolume()
                .ifPresent(millilitres -> text.append(" (")
                        .append(millilitres.toText(Locale.ROOT, 4))
                        .append(" of ")
                        .append(stock.orElseThrow())
                        .append(')'));
        teaspoons()
                .ifPresent(number -> text.append(" (")
                        .append(WaterUnits.share(number, WaterUnits.ONE).toText(Locale.ROOT, 3))
                        .append(" level teaspoons ± ")
                        .append(compound()
                                .teaspoon()
                                .orElseThrow()
                                .relativeUncertainty()
                                .to(WaterUnits.PERCENT))
                        .append(')'));
        return text.toString();
    }
}
