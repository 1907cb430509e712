package evenwater.chemistry.testing;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.EnumMap;
import java.util.Map;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;

/** Short ways to state and to read amounts of waters in tests. */
public final class Amounts {

    private Amounts() {}

    public static AmountConcentration mmol(double millimolesPerLitre) {
        return AmountConcentration.of(millimolesPerLitre, MILLIMOLE_PER_LITRE);
    }

    public static EquivalentConcentration charge(double milliequivalentsPerLitre) {
        return EquivalentConcentration.of(milliequivalentsPerLitre, EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE);
    }

    public static Alkalinity alkalinity(double milliequivalentsPerLitre) {
        return Alkalinity.of(milliequivalentsPerLitre, Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }

    public static Hardness hardness(double millimolesPerLitre) {
        return Hardness.of(millimolesPerLitre, Hardness.MILLIMOLE_PER_LITRE);
    }

    public static WaterQuantity<Temperature> celsius(double degrees) {
        return WaterUnits.temperature(degrees, WaterUnits.CELSIUS);
    }

    public static WaterQuantity<Mass> grams(double grams) {
        return WaterUnits.mass(grams, WaterUnits.GRAM);
    }

    public static WaterQuantity<Volume> litres(double litres) {
        return WaterUnits.volume(litres, WaterUnits.LITRE);
    }

    /** mmol/L of an ion in a water. */
    public static double of(Ion ion, Water water) {
        return water.total(ion).in(MILLIMOLE_PER_LITRE);
    }

    /** mmol/L of an ion that a change brings. */
    public static double of(Ion ion, Change change) {
        return change.total(ion).in(MILLIMOLE_PER_LITRE);
    }

    /** Alkalinity in meq/L. */
    public static double alkalinityOf(Water water) {
        return water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }

    /** Unmeasured charge in meq/L. */
    public static double unmeasuredOf(Water water) {
        return water.unmeasuredCharge().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE);
    }

    /** Inorganic carbon in mmol/L, NaN if unknown. */
    public static double carbonOf(Water water) {
        return water.carbon().map(c -> c.in(MILLIMOLE_PER_LITRE)).orElse(Double.NaN);
    }

    /** Calcium and magnesium in mmol/L. */
    public static double hardnessOf(Water water) {
        return water.hardness().in(Hardness.MILLIMOLE_PER_LITRE);
    }

    /** Σ charge × total in meq/L, summed by hand. */
    public static double chargeOfTotals(Water water) {
        double sum = 0;
        for (Ion ion : water.ions()) {
            sum += ion.chargeNumber() * of(ion, water);
        }
        return sum;
    }

    /** The charges that a water holds, all of them positive, in meq/L: what a rest of charge is small against. */
    public static double chargesIn(Water water) {
        double sum = Math.abs(alkalinityOf(water)) + Math.abs(unmeasuredOf(water));
        for (Ion ion : water.ions()) {
            sum += Math.abs(ion.chargeNumber()) * of(ion, water);
        }
        return sum;
    }

    /** The charges that a change moves, all of them positive, in meq/L. */
    public static double chargesIn(Change change) {
        double sum = Math.abs(change.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                + Math.abs(change.unmeasuredCharge().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE));
        for (Ion ion : change.ions()) {
            sum += Math.abs(ion.chargeNumber() * of(ion, change));
        }
        return sum;
    }

    /** mmol/L of each element but hydrogen and oxygen, which water itself holds. */
    public static Map<Element, Double> elementsOf(Water water) {
        Map<Element, Double> sum = new EnumMap<>(Element.class);
        for (Ion ion : water.ions()) {
            addElements(sum, ion, of(ion, water));
        }
        water.carbon().ifPresent(c -> addElements(sum, Ion.CARBON_DIOXIDE, c.in(MILLIMOLE_PER_LITRE)));
        return sum;
    }

    /** mmol/L of each element but hydrogen and oxygen that a change brings. */
    public static Map<Element, Double> elementsOf(Change change) {
        Map<Element, Double> sum = new EnumMap<>(Element.class);
        for (Ion ion : change.ions()) {
            addElements(sum, ion, of(ion, change));
        }
        change.carbon().ifPresent(c -> addElements(sum, Ion.CARBON_DIOXIDE, c.in(MILLIMOLE_PER_LITRE)));
        return sum;
    }

    public static void addElements(Map<Element, Double> sum, Ion ion, double millimolesPerLitre) {
        for (Element element : ion.formula().elements()) {
            if (element != Element.HYDROGEN && element != Element.OXYGEN) {
                sum.merge(element, ion.formula().count(element) * millimolesPerLitre, Double::sum);
            }
        }
    }
}
