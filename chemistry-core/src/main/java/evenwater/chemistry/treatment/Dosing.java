package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.GRAM_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.substance.LevelTeaspoon;
import evenwater.chemistry.substance.Solubility;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * Dissolving a weighed compound in a volume of water: by mass, by teaspoons, or as much as a rise of hardness or alkalinity takes.
 *
 * <p>Masses are of what is weighed; a compound that is sold damp or in solution says so by {@link Compound#ofStrength}. All of it is
 * taken to dissolve; {@link #exceedsSolubility} tells whether pure water would take it. The volume that it adds is neglected.
 *
 * <p>The pH that results is {@code Speciation.of(dosing.treat(water)).pH()}, closed to the air. It needs the inorganic carbon: of a water with
 * a measured pH, dose {@code Speciation.of(water).water()}, for the dose drops the reading. Bicarbonate leads towards some pH 8.3
 * at 25 °C (8.5 in cold water, 8.0 in salty) from either side and not beyond, carbonate past 10.
 *
 * <p>Immutable and thread-safe.
 */
public final class Dosing implements Treatment {

    private final Compound compound;
    private final WaterQuantity<Mass> mass;
    private final MassConcentration dose;
    private final Change change;
    private final WaterQuantity<Volume> volume;
    private final String name;
    /** How far the mass may be off, as a share of it. */
    private final double uncertainty;

    private Dosing(
            Compound compound,
            WaterQuantity<Mass> mass,
            WaterQuantity<Volume> volume,
            String amount,
            double uncertainty) {
        this.compound = compound;
        this.mass = mass;
        this.volume = volume;
        this.uncertainty = uncertainty;
        this.change = Change.dissolving(compound, mass, volume);
        this.dose = MassConcentration.of(mass.in(WaterUnits.GRAM) / volume.in(WaterUnits.LITRE), GRAM_PER_LITRE);
        this.name = amount + " of " + compound.name() + " in " + volume;
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
        Objects.requireNonNull(compound, "compound");
        return new Dosing(compound, WaterUnits.mass(mass), WaterUnits.volume(volume), mass.toString(), 0);
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
        Objects.requireNonNull(compound, "compound");
        LevelTeaspoon one = compound.teaspoon()
                .orElseThrow(() -> new IllegalArgumentException(
                        "mass of a teaspoon of " + compound.name() + " is not known: weigh it"));
        if (!(teaspoons >= 0)) {
            throw new IllegalArgumentException(
                    "teaspoons of " + compound.name() + " must be 0 or more, but were " + teaspoons);
        }
        return new Dosing(
                compound,
                WaterUnits.mass(one.mass().multiply(teaspoons)),
                WaterUnits.volume(volume),
                WaterUnits.volume(teaspoons, WaterUnits.US_TEASPOON) + " (" + one.mass() + " ± "
                        + one.relativeUncertainty().to(WaterUnits.PERCENT) + " each)",
                one.relativeUncertainty().in(WaterUnits.ONE));
    }

    /**
     * Returns as much of a compound as a rise of hardness takes.
     *
     * @param compound a compound that brings calcium or magnesium
     * @param rise by how much calcium and magnesium shall rise; 0 or more
     * @param volume of the water; above 0
     * @return the treatment; {@link #mass} is what to weigh
     * @throws IllegalArgumentException if the compound brings neither, or rise or volume are out of range
     */
    public static Dosing raisingHardness(Compound compound, Quantity<Hardness> rise, Quantity<Volume> volume) {
        Change ofOneGram = ofOneGramPerLitre(compound);
        double each = ofOneGram.total(Ion.CALCIUM).in(MILLIMOLE_PER_LITRE)
                + ofOneGram.total(Ion.MAGNESIUM).in(MILLIMOLE_PER_LITRE);
        Hardness wanted = Hardness.from(rise);
        return raising(
                compound, "hardness", wanted, wanted.in(Hardness.MILLIMOLE_PER_LITRE), each, WaterUnits.volume(volume));
    }

    /**
     * Returns as much of a compound as a rise of alkalinity takes, or a fall with an acid.
     *
     * @param compound a compound that brings alkalinity, or an acid
     * @param rise by how much alkalinity shall rise, 0 or more; 0 or less with an acid
     * @param volume of the water; above 0
     * @return the treatment; {@link #mass} is what to weigh
     * @throws IllegalArgumentException if the compound moves alkalinity the other way or not at all, or the volume is out of range
     */
    public static Dosing raisingAlkalinity(Compound compound, Quantity<Alkalinity> rise, Quantity<Volume> volume) {
        double each = ofOneGramPerLitre(compound).alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        Alkalinity wanted = Alkalinity.from(rise);
        return raising(
                compound,
                "alkalinity",
                wanted,
                wanted.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                each,
                WaterUnits.volume(volume));
    }

    private static Change ofOneGramPerLitre(Compound compound) {
        return Change.dissolving(compound, MassConcentration.of(1, GRAM_PER_LITRE));
    }

    private static Dosing raising(
            Compound compound,
            String what,
            WaterQuantity<?> rise,
            double wanted,
            double each,
            WaterQuantity<Volume> volume) {
        double gramsPerLitre = wanted == 0 ? 0 : wanted / each;
        if (each == 0 || gramsPerLitre < 0) {
            throw new IllegalArgumentException(compound.name()
                    + (each == 0 ? " does not move " : each > 0 ? " only raises " : " only lowers ") + what
                    + ", so it cannot change it by " + rise);
        }
        if (!(volume.in(WaterUnits.LITRE) > 0)) {
            throw new IllegalArgumentException("volume of the water must be positive, but was " + volume);
        }
        WaterQuantity<Mass> mass = WaterUnits.mass(gramsPerLitre * volume.in(WaterUnits.LITRE), WaterUnits.GRAM);
        return new Dosing(compound, mass, volume, mass.toText(Locale.ROOT, 4), 0);
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
     * Returns how much is weighed.
     *
     * @return mass of what is dosed, of the compound's strength
     */
    public WaterQuantity<Mass> mass() {
        return mass;
    }

    /**
     * Returns the water that it is dosed into.
     *
     * @return its volume, as stated
     */
    public WaterQuantity<Volume> volume() {
        return volume;
    }

    /**
     * Returns the dose.
     *
     * @return weighed mass per volume of water in g/L
     */
    public MassConcentration dose() {
        return dose;
    }

    /**
     * Returns the least that may be in it.
     *
     * @return the same dose as if every teaspoon held as little as its uncertainty allows; this dose itself if it was weighed
     */
    public Dosing least() {
        return uncertainty == 0 ? this : scaled(1 - uncertainty);
    }

    /**
     * Returns the most that may be in it.
     *
     * @return the same dose as if every teaspoon held as much as its uncertainty allows; this dose itself if it was weighed
     */
    public Dosing most() {
        return uncertainty == 0 ? this : scaled(1 + uncertainty);
    }

    private Dosing scaled(double factor) {
        WaterQuantity<Mass> scaled = WaterUnits.mass(mass.multiply(factor));
        return new Dosing(compound, scaled, volume, scaled.toText(Locale.ROOT, 4), 0);
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
            return dose.in(GRAM_PER_LITRE) * compound.strength()
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

    /** Returns the name. */
    @Override
    public String toString() {
        return name;
    }
}
