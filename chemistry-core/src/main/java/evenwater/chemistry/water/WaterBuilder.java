package evenwater.chemistry.water;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * Builds a {@link Water} from its parts.
 *
 * <p>State alkalinity, and what the ions lack becomes unmeasured charge; or state the unmeasured charge, and alkalinity closes the
 * balance; or neither, and the water balances without unmeasured charge. Not thread-safe.
 */
public final class WaterBuilder {

    private final SortedMap<Ion, Double> totals = new TreeMap<>();
    private double alkalinity = Double.NaN;
    private double unmeasured = Double.NaN;
    private double carbon = Double.NaN;
    private double pH = Double.NaN;
    private double kelvin = Water.DEFAULT_KELVIN;

    WaterBuilder() {}

    /**
     * Sets the total amount of an ion, all its forms together.
     *
     * @param ion a reference form
     * @param concentration 0 or more
     * @return this builder
     * @throws IllegalArgumentException if the ion is counted elsewhere, or the amount is negative or in the mass of another ion
     */
    public WaterBuilder total(Ion ion, Quantity<AmountConcentration> concentration) {
        Counting.refuseUncounted(ion);
        totals.put(ion, millimoles(ion.concentration(concentration), ion.symbol()));
        return this;
    }

    /**
     * Sets the titration alkalinity.
     *
     * @param newAlkalinity may be negative
     * @return this builder
     */
    public WaterBuilder alkalinity(Quantity<Alkalinity> newAlkalinity) {
        alkalinity = Alkalinity.from(newAlkalinity).in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        return this;
    }

    /**
     * Sets the charge of ions that are not among the totals.
     *
     * @param charge with its sign: negative for anions
     * @return this builder
     */
    public WaterBuilder unmeasuredCharge(Quantity<EquivalentConcentration> charge) {
        unmeasured = EquivalentConcentration.from(charge).in(MILLIEQUIVALENT_PER_LITRE);
        return this;
    }

    /**
     * Sets the total inorganic carbon.
     *
     * @param concentration 0 or more
     * @return this builder
     * @throws IllegalArgumentException if it is negative
     */
    public WaterBuilder carbon(Quantity<AmountConcentration> concentration) {
        carbon = millimoles(concentration, "inorganic carbon");
        return this;
    }

    /**
     * Sets the pH that was measured.
     *
     * @param reading no unit; 0 to 14
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public WaterBuilder measuredPH(double reading) {
        if (!(reading >= 0 && reading <= 14)) {
            throw new IllegalArgumentException("pH must be from 0 to 14, but was " + reading);
        }
        pH = reading;
        return this;
    }

    /**
     * Sets the temperature, 25 °C if it is not set.
     *
     * @param temperature from 0 to 100 °C
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public WaterBuilder temperature(Quantity<Temperature> temperature) {
        kelvin = kelvin(temperature);
        return this;
    }

    /**
     * Returns the water.
     *
     * @return a water whose charges balance in double entry
     * @throws IllegalArgumentException if both alkalinity and unmeasured charge, or both carbon and pH, were stated
     */
    public Water build() {
        if (!Double.isNaN(alkalinity) && !Double.isNaN(unmeasured)) {
            throw new IllegalArgumentException("alkalinity and unmeasured charge must not both be stated: "
                    + "one follows from the other and the ions");
        }
        if (!Double.isNaN(carbon) && !Double.isNaN(pH)) {
            throw new IllegalArgumentException(
                    "inorganic carbon and a measured pH must not both be stated: one follows from the other");
        }
        Balance balance = Double.isNaN(alkalinity)
                ? Balance.closing(totals, Double.isNaN(unmeasured) ? 0 : unmeasured, carbon)
                : Balance.reported(totals, alkalinity, carbon);
        return new Water(balance, kelvin, pH);
    }

    static double millimoles(Quantity<AmountConcentration> concentration, String what) {
        AmountConcentration stated = AmountConcentration.from(concentration);
        double millimoles = stated.in(MILLIMOLE_PER_LITRE);
        if (!(millimoles >= 0)) {
            throw new IllegalArgumentException("concentration of " + what + " must not be negative, but was " + stated);
        }
        return millimoles;
    }

    static double kelvin(Quantity<Temperature> temperature) {
        double kelvin = WaterUnits.temperature(temperature).in(WaterUnits.KELVIN);
        if (!(kelvin >= 273.15 - 1e-9 && kelvin <= 373.15 + 1e-9)) {
            throw new IllegalArgumentException(
                    "temperature must be from 0 °C to 100 °C, but was " + WaterUnits.temperature(temperature));
        }
        return kelvin;
    }
}
