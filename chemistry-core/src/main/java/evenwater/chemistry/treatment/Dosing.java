package evenwater.chemistry.treatment;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.LevelTeaspoon;
import evenwater.chemistry.substance.Solubility;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * Dissolving a weighed compound in a volume of water.
 *
 * <p>All of it is taken to dissolve; {@link #exceedsSolubility} tells whether pure water would take it. What is sold may be damp or
 * impure. Immutable and thread-safe.
 */
public final class Dosing implements Treatment {

    private final Compound compound;
    private final MassConcentration dose;
    private final Change change;
    private final String name;

    private Dosing(Compound compound, MassConcentration dose, Change change, String name) {
        this.compound = compound;
        this.dose = dose;
        this.change = change;
        this.name = name;
    }

    /**
     * Returns a dose by mass.
     *
     * @param compound what is dosed
     * @param mass 0 or more
     * @param volume of the water; above 0
     * @return the treatment
     * @throws IllegalArgumentException if mass or volume are out of range
     */
    public static Dosing of(Compound compound, Quantity<Mass> mass, Quantity<Volume> volume) {
        Change change = Change.dissolving(compound, mass, volume);
        double gramsPerLitre = WaterUnits.mass(mass).in(WaterUnits.GRAM)
                / WaterUnits.volume(volume).in(WaterUnits.LITRE);
        return new Dosing(
                compound,
                MassConcentration.of(gramsPerLitre, MassConcentration.GRAM_PER_LITRE),
                change,
                mass + " of " + compound.name() + " in " + volume);
    }

    /**
     * Returns a dose by level US teaspoons, which are only as good as the figure for their mass.
     *
     * @param compound what is dosed; its table must have the mass of a teaspoon
     * @param teaspoons number of level teaspoons; no unit, 0 or more
     * @param volume of the water; above 0
     * @return the treatment
     * @throws IllegalArgumentException if nobody states the mass of a teaspoon, or number or volume are out of range
     */
    public static Dosing teaspoons(Compound compound, double teaspoons, Quantity<Volume> volume) {
        LevelTeaspoon one = compound.teaspoon()
                .orElseThrow(() -> new IllegalArgumentException(
                        "mass of a teaspoon of " + compound.name() + " is not known: weigh it"));
        Dosing dosing = of(compound, one.mass().multiply(teaspoons), volume);
        return new Dosing(
                compound,
                dosing.dose,
                dosing.change,
                WaterUnits.volume(teaspoons, WaterUnits.US_TEASPOON) + " (" + one.mass() + " ± "
                        + one.relativeUncertainty().to(WaterUnits.PERCENT) + " each) of " + compound.name() + " in "
                        + volume);
    }

    /**
     * Returns what is dosed.
     *
     * @return the compound
     */
    public Compound compound() {
        return compound;
    }

    /**
     * Returns the dose.
     *
     * @return mass per volume of water in g/L
     */
    public MassConcentration dose() {
        return dose;
    }

    /**
     * Returns what the dose brings.
     *
     * @return ions and alkalinity
     */
    public Change change() {
        return change;
    }

    /**
     * Tells whether the dose is more than pure water at 20 °C takes up, at 1 kg of water per litre.
     *
     * @return true if some of it would stay undissolved; false if it dissolves or its solubility is not known
     */
    public boolean exceedsSolubility() {
        return compound.solubility().filter(this::isExceeded).isPresent();
    }

    private boolean isExceeded(Solubility solubility) {
        try {
            return dose.in(MassConcentration.GRAM_PER_LITRE)
                    > solubility.of(compound.formula()).in(WaterUnits.GRAM_PER_KILOGRAM);
        } catch (IllegalArgumentException e) {
            return false; // it dissolves in its own water of crystallisation in any amount
        }
    }

    @Override
    public Water treat(Water source) {
        return Objects.requireNonNull(source, "source").plus(change);
    }

    @Override
    public String name() {
        return name;
    }
}
