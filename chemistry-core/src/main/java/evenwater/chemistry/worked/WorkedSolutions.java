package evenwater.chemistry.worked;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Blending;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Stage;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.IonBalance;
import evenwater.chemistry.water.Water;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Volume;

/**
 * Calculations with their steps. Each asks the room that answers, and shows the numbers of its answer.
 *
 * <p>Like the quantities themselves, all throw {@link ArithmeticException} where a number is too large for a double in the unit of a step.
 */
public final class WorkedSolutions {

    private WorkedSolutions() {}

    /**
     * Works a conversion by the factor-label method.
     *
     * @param <Q> the kind of quantity
     * @param quantity what is converted
     * @param unit the wanted unit
     * @return the chain of exact factors that the two units are defined by
     * @throws IllegalArgumentException if the unit is of another kind
     */
    public static <Q extends Quantity<Q>> Worked<Q> conversion(WaterQuantity<Q> quantity, Unit<Q> unit) {
        return WorkedConversion.of(Objects.requireNonNull(quantity, "quantity"), Objects.requireNonNull(unit, "unit"));
    }

    /**
     * Works the charge that an ion carries.
     *
     * @param ion an ion with a charge
     * @param concentration as stated, such as mg/L of the ion
     * @return milligrams, millimoles, milliequivalents
     * @throws IllegalArgumentException if the solute is neutral
     */
    public static Worked<EquivalentConcentration> equivalents(Ion ion, Quantity<AmountConcentration> concentration) {
        return WorkedEquivalents.of(
                Objects.requireNonNull(ion, "ion"), Objects.requireNonNull(concentration, "concentration"));
    }

    /**
     * Works the ion balance of a water.
     *
     * @param water any water
     * @return each ion in meq/L, the sums, and their difference over their sum
     */
    public static Worked<IonBalance> ionBalance(Water water) {
        return WorkedEquivalents.balance(Objects.requireNonNull(water, "water"));
    }

    /**
     * Works the hardness of a water from its calcium and magnesium.
     *
     * @param water any water
     * @param unit the wanted scale
     * @return millimoles of each, their sum, the scale
     */
    public static Worked<Hardness> hardness(Water water, Unit<Hardness> unit) {
        return WorkedEquivalents.hardness(Objects.requireNonNull(water, "water"), Objects.requireNonNull(unit, "unit"));
    }

    /**
     * Works what a softener does.
     *
     * @param softener with its leakage and bypass
     * @param source raw water
     * @param scale in which hardness is shown
     * @return charges that leave and enter, the bypass; the answer is the line of the ledger
     * @throws NoAnswerException if no bypass reaches the wanted hardness
     */
    public static Worked<Stage> softening(Softener softener, Water source, Unit<Hardness> scale) {
        return WorkedSoftening.of(
                Objects.requireNonNull(softener, "softener"),
                Objects.requireNonNull(source, "source"),
                Objects.requireNonNull(scale, "scale"));
    }

    /**
     * Works a blend of two waters.
     *
     * @param blending by a share or for a hardness
     * @param source the water that is blended
     * @param scale in which hardness is shown
     * @return the share where a hardness is wanted, then every quantity that mixes; the answer is the line of the ledger
     * @throws NoAnswerException if no share reaches the wanted hardness
     */
    public static Worked<Stage> blending(Blending blending, Water source, Unit<Hardness> scale) {
        return WorkedBlending.of(
                Objects.requireNonNull(blending, "blending"),
                Objects.requireNonNull(source, "source"),
                Objects.requireNonNull(scale, "scale"));
    }

    /**
     * Works what a dose brings.
     *
     * @param dosing a weighed compound in a volume of water
     * @return dose, millimoles, each ion, the rise of hardness and alkalinity
     */
    public static Worked<Change> dosing(Dosing dosing) {
        return WorkedDosing.of(Objects.requireNonNull(dosing, "dosing"));
    }

    /**
     * Works how much of a compound a rise of hardness takes.
     *
     * @param compound a compound that brings calcium or magnesium
     * @param rise by how much hardness shall rise; 0 or more
     * @param volume of the water; above 0
     * @return from the rise to the mass to weigh
     * @throws IllegalArgumentException if the compound brings neither, or rise or volume are out of range
     */
    public static Worked<Dosing> raisingHardness(Compound compound, Quantity<Hardness> rise, Quantity<Volume> volume) {
        return WorkedDosing.hardness(compound, rise, volume);
    }

    /**
     * Works how much of a compound a rise of alkalinity takes, or a fall with an acid.
     *
     * @param compound a compound that brings alkalinity, or an acid
     * @param rise by how much alkalinity shall rise; 0 or less with an acid
     * @param volume of the water; above 0
     * @return from the rise to the mass to weigh
     * @throws IllegalArgumentException if the compound moves alkalinity the other way or not at all, or the volume is out of range
     */
    public static Worked<Dosing> raisingAlkalinity(
            Compound compound, Quantity<Alkalinity> rise, Quantity<Volume> volume) {
        return WorkedDosing.alkalinity(compound, rise, volume);
    }

    /**
     * Works the carbon dioxide of a water by the law of mass action.
     *
     * @param speciation the species of the water
     * @return activities, the constant at the temperature of the water, mg/L; the usual wrong answer is the aquarists' rule
     * @throws NoAnswerException if the water has no bicarbonate, or its alkalinity is negative
     */
    public static Worked<Speciation> carbonDioxide(Speciation speciation) {
        return WorkedCarbonDioxide.of(Objects.requireNonNull(speciation, "speciation"));
    }
}
