package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.MonotoneInverse;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;

/**
 * Taking alkalinity away with a strong acid, in steps that do not suffocate the animals.
 *
 * <p>{@code HCO₃⁻ + H⁺ → CO₂ + H₂O}: each meq/L sets free 44 mg/L of CO₂ at once. Taking 5 °dKH out of a tank in one dose makes some 80 mg/L
 * and a pH near 6, so each step here stays below a limit of CO₂ and is aerated before the next. Chloride or sulfate takes the place of the
 * alkalinity.
 *
 * <p><b>Caution.</b> Strong acids burn: goggles and gloves, acid into water and never the other way, never near chlorine or bleach. Dose into a
 * bucket without animals where you can, and measure alkalinity and pH after every step.
 *
 * <p>Immutable and thread-safe.
 */
public final class AlkalinityReduction implements Treatment {

    private static final int MOST_STEPS = 200;

    private final Alkalinity target;
    private final Ion anion;
    private final AmountConcentration limit;
    private final WaterQuantity<Pressure> air;

    private AlkalinityReduction(Alkalinity target, Ion anion, AmountConcentration limit, WaterQuantity<Pressure> air) {
        this.target = target;
        this.anion = anion;
        this.limit = limit;
        this.air = air;
    }

    /**
     * Returns a reduction with hydrochloric acid, at most 30 mg/L of CO₂ in each step (common practice, no source), aerated to the open air.
     *
     * @param alkalinity what is to be left; 0 or more
     * @return the treatment
     * @throws IllegalArgumentException if it is negative
     */
    public static AlkalinityReduction to(Quantity<Alkalinity> alkalinity) {
        Alkalinity stated = Alkalinity.from(alkalinity);
        if (stated.getValue() < 0) {
            throw new IllegalArgumentException("wanted alkalinity must not be negative, but was " + stated);
        }
        return new AlkalinityReduction(
                stated,
                Ion.CHLORIDE,
                AmountConcentration.of(30, Ion.CARBON_DIOXIDE.milligramPerLitre()),
                GasExchange.OUTDOOR_AIR);
    }

    /**
     * Returns the reduction with sulfuric acid.
     *
     * @return the treatment
     */
    public AlkalinityReduction withSulfuricAcid() {
        return new AlkalinityReduction(target, Ion.SULFATE, limit, air);
    }

    /**
     * Returns the reduction with another limit of CO₂ in each step.
     *
     * @param carbonDioxide above 0
     * @return the treatment
     * @throws IllegalArgumentException if it is not positive
     */
    public AlkalinityReduction keepingCarbonDioxideBelow(Quantity<AmountConcentration> carbonDioxide) {
        AmountConcentration stated = Ion.CARBON_DIOXIDE.concentration(carbonDioxide);
        if (!(stated.getValue() > 0)) {
            throw new IllegalArgumentException("limit of CO₂ must be positive, but was " + stated);
        }
        return new AlkalinityReduction(target, anion, stated, air);
    }

    /**
     * Returns the reduction aerated with another air.
     *
     * @param carbonDioxide partial pressure of CO₂; above 0, to 10 atm
     * @return the treatment
     * @throws IllegalArgumentException if it is out of range
     */
    public AlkalinityReduction aeratedWith(Quantity<Pressure> carbonDioxide) {
        return new AlkalinityReduction(target, anion, limit, GasPressure.checked(carbonDioxide));
    }

    /**
     * Returns the steps.
     *
     * @param source with its inorganic carbon or a measured pH
     * @return steps in their order; none if the alkalinity is as low already
     * @throws NoAnswerException if the water holds more CO₂ than the limit before any acid, or its carbon is unknown
     */
    public List<AcidStep> plan(Water source) {
        Water water = Speciation.of(Objects.requireNonNull(source, "source")).water();
        List<AcidStep> steps = new ArrayList<>();
        double left = toTake(water);
        while (left > 0) {
            double held = carbonDioxide(water, 0);
            if (steps.size() == MOST_STEPS) {
                throw new NoAnswerException("it would take more than " + MOST_STEPS + " steps to keep CO₂ below "
                        + limit + ": raise the limit");
            }
            if (held >= limitInMillimoles()) {
                throw new NoAnswerException("CO₂ stays above " + limit + " before any acid: the water holds "
                        + text(Speciation.of(water)) + "; aerate it first or raise the limit");
            }
            Water now = water;
            double dose = carbonDioxide(now, left) <= limitInMillimoles()
                    ? left
                    : MonotoneInverse.of(x -> carbonDioxide(now, x), 0, left, limitInMillimoles());
            Water dosed = now.plus(acid(dose));
            water = GasExchange.equilibrated(dosed, air);
            steps.add(new AcidStep(AmountConcentration.of(dose, MILLIMOLE_PER_LITRE), Speciation.of(dosed), water));
            left = dose == left ? 0 : toTake(water);
        }
        return List.copyOf(steps);
    }

    /**
     * Returns the water after all the acid in one dose, before any aeration.
     *
     * @param source with its inorganic carbon or a measured pH
     * @return the water
     * @throws NoAnswerException if its CO₂ is above the limit; says how much and at which pH
     */
    public Water atOnce(Water source) {
        Water known = Speciation.of(Objects.requireNonNull(source, "source")).water();
        Water dosed = known.plus(acid(Math.max(0, toTake(known))));
        Speciation after = Speciation.of(dosed);
        if (after.carbonDioxide().in(MILLIMOLE_PER_LITRE) > limitInMillimoles()) {
            AmountConcentration made = after.carbonDioxide().to(Ion.CARBON_DIOXIDE.milligramPerLitre());
            throw new NoAnswerException(
                    "this acid in one dose would make " + text(after) + ", above the limit of " + limit
                            + ": plan it in steps with aeration",
                    made);
        }
        return dosed;
    }

    private static String text(Speciation after) {
        return after.carbonDioxide().to(Ion.CARBON_DIOXIDE.milligramPerLitre()).toText(Locale.ROOT, 3) + " at pH "
                + Math.rint(after.pH() * 100) / 100;
    }

    private double limitInMillimoles() {
        return limit.in(MILLIMOLE_PER_LITRE);
    }

    private double toTake(Water water) {
        return water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE)
                - target.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }

    private double carbonDioxide(Water water, double dose) {
        return Speciation.of(water.plus(acid(dose))).carbonDioxide().in(MILLIMOLE_PER_LITRE);
    }

    private Change acid(double equivalents) {
        return Change.of(Map.of(
                Ion.HYDROGEN,
                AmountConcentration.of(equivalents, MILLIMOLE_PER_LITRE),
                anion,
                AmountConcentration.of(equivalents / -anion.chargeNumber(), MILLIMOLE_PER_LITRE)));
    }

    /**
     * Returns the water after all steps.
     *
     * @param source with its inorganic carbon or a measured pH
     * @return the water of the last step, aerated; the source if there is nothing to take
     * @throws NoAnswerException as {@link #plan}
     */
    @Override
    public Water treat(Water source) {
        List<AcidStep> steps = plan(source);
        return steps.isEmpty() ? source : steps.get(steps.size() - 1).aerated();
    }

    @Override
    public String name() {
        String acid = anion.equals(Ion.CHLORIDE) ? "hydrochloric" : "sulfuric";
        return acid + " acid in steps, to an alkalinity of " + target;
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name();
    }
}
