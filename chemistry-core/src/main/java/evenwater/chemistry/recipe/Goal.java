package evenwater.chemistry.recipe;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;

import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;

/**
 * A target with what it speaks of, as numbers in one unit of its own.
 *
 * @param quantity what the target speaks of, in words
 * @param target the target in its statement
 * @param wanted its value as a number
 * @param perMilliequivalent how much of that number stands for 1 meq/L, so that targets of different kinds can be compared
 * @param ofWater the number of a water
 * @param ofChange the number by which a change moves it; for a quantity that is not linear, none
 * @param reached what a water has, in the statement of the target; empty where it has none, as a ratio of nothing
 */
record Goal<T>(
        String quantity,
        Target<T> target,
        double wanted,
        double perMilliequivalent,
        ToDoubleFunction<Water> ofWater,
        Optional<ToDoubleFunction<Change>> ofChange,
        Function<Water, Optional<T>> reached) {

    /** A target below this share of the reference concentration counts as 0. */
    private static final double NOTHING = 1e-4;

    /** In fresh water 1 meq/L of salt conducts about this, in µS/cm; common practice, no source. */
    private static final double MICROSIEMENS_PER_MILLIEQUIVALENT = 100;

    static Goal<Hardness> hardness(Target<? extends Quantity<Hardness>> target) {
        Hardness value = Hardness.from(target.value());
        return new Goal<>(
                "hardness",
                target.of(value),
                notNegative("hardness", value, value.in(Hardness.MILLIEQUIVALENT_PER_LITRE)),
                1,
                water -> water.hardness().in(Hardness.MILLIEQUIVALENT_PER_LITRE),
                Optional.of(change -> 2 * (millimoles(change, Ion.CALCIUM) + millimoles(change, Ion.MAGNESIUM))),
                water -> Optional.of(water.hardness().to(value.getUnit())));
    }

    static Goal<Alkalinity> alkalinity(Target<? extends Quantity<Alkalinity>> target) {
        Alkalinity value = Alkalinity.from(target.value());
        return new Goal<>(
                "alkalinity",
                target.of(value),
                value.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                1,
                water -> water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                Optional.of(change -> change.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE)),
                water -> Optional.of(water.alkalinity().to(value.getUnit())));
    }

    static Goal<AmountConcentration> total(Ion ion, Target<? extends Quantity<AmountConcentration>> target) {
        Water.pure().total(ion); // refuses what is counted elsewhere
        AmountConcentration value = ion.concentration(target.value());
        return new Goal<>(
                ion.symbol(),
                target.of(value),
                notNegative(ion.symbol(), value, value.in(MILLIMOLE_PER_LITRE)),
                1.0 / charges(ion),
                water -> water.total(ion).in(MILLIMOLE_PER_LITRE),
                Optional.of(change -> millimoles(change, ion)),
                water -> Optional.of(water.total(ion).to(value.getUnit())));
    }

    /** {@code (z n − r z' n') / (1 + r)} in meq/L, with r the ratio of equivalents: what one ion has too much against the other. */
    static Goal<IonRatio> ratio(Target<IonRatio> target) {
        IonRatio value = target.value();
        Ion ion = value.ion();
        Ion perIon = value.perIon();
        double ofEquivalents = value.ofAmounts() * charges(ion) / charges(perIon);
        double share = 1 / (1 + ofEquivalents);
        double own = charges(ion) * share;
        double other = charges(perIon) * ofEquivalents * share;
        return new Goal<>(
                "ratio of " + ion + " to " + perIon,
                target,
                0,
                1,
                water -> own * millimoles(water, ion) - other * millimoles(water, perIon),
                Optional.of(change -> own * millimoles(change, ion) - other * millimoles(change, perIon)),
                water -> ratioIn(water, value));
    }

    static Goal<Conductivity> conductivity(Target<? extends Quantity<Conductivity>> target) {
        Conductivity value = Conductivity.from(target.value());
        return new Goal<>(
                "conductivity at 25 °C",
                target.of(value),
                notNegative("conductivity", value, value.in(MICROSIEMENS_PER_CENTIMETRE)),
                MICROSIEMENS_PER_MILLIEQUIVALENT,
                water -> CalculatedConductivity.at25Celsius(water).in(MICROSIEMENS_PER_CENTIMETRE),
                Optional.empty(),
                water -> Optional.of(CalculatedConductivity.at25Celsius(water).to(value.getUnit())));
    }

    /** How large the target is in meq/L. */
    double size() {
        return Math.abs(wanted) / perMilliequivalent;
    }

    /** What a deviation is relative to: the target, or where it is nothing, the reference concentration in meq/L. */
    double scale(double reference) {
        return size() > NOTHING * reference ? Math.abs(wanted) : reference * perMilliequivalent;
    }

    boolean isLinear() {
        return ofChange.isPresent();
    }

    boolean mustBeMet() {
        return target.aim() != Aim.NEAR;
    }

    /** Returns such as {@code hardness exactly 6 °dH}. */
    @Override
    public String toString() {
        return quantity + " " + target;
    }

    private static Optional<IonRatio> ratioIn(Water water, IonRatio wanted) {
        double ratio = millimoles(water, wanted.ion()) / millimoles(water, wanted.perIon());
        return ratio > 0 && ratio <= Double.MAX_VALUE ? Optional.of(wanted.withAmounts(ratio)) : Optional.empty();
    }

    private static double notNegative(String what, Quantity<?> value, double number) {
        if (!(number >= 0)) {
            throw new IllegalArgumentException("target of " + what + " must not be negative, but was " + value);
        }
        return number;
    }

    /** Charges of an ion; a neutral solute counts as one. */
    private static double charges(Ion ion) {
        return Math.max(1, Math.abs(ion.chargeNumber()));
    }

    private static double millimoles(Water water, Ion ion) {
        return water.total(ion).in(MILLIMOLE_PER_LITRE);
    }

    private static double millimoles(Change change, Ion ion) {
        return change.total(ion).in(MILLIMOLE_PER_LITRE);
    }
}
