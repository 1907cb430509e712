package evenwater.chemistry.uncertainty;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;

/**
 * An input and what is known of it: a value with a standard uncertainty, an interval, or an exact number.
 *
 * <p>An input is itself, not its numbers: two readings of 8 ± 0.5 °dH are two inputs, which vary each on its own, and one input used twice
 * in a computation is the same value both times. That is how correlation is stated: what two readings share, such as the strength of one
 * titrant, is an input of its own that both are computed from.
 *
 * <p>Uncertainties are differences: of a temperature they are stated in kelvin.
 *
 * <p>Immutable and thread-safe; {@code equals} is identity.
 *
 * @param <Q> type of the value, such as {@code Hardness} or {@code WaterQuantity<Temperature>}
 * @see "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 4.3; JCGM 101:2008, Supplement 1, 6.4"
 */
public final class Uncertain<Q extends WaterQuantity<?>> {

    private final Stated<Q> unit;
    private final Knowledge knowledge;
    private final String name;

    private Uncertain(Stated<Q> unit, Knowledge knowledge, String name) {
        this.unit = unit;
        this.knowledge = knowledge;
        this.name = name;
    }

    private static <Q extends WaterQuantity<?>> Uncertain<Q> of(Q like, Knowledge knowledge) {
        return new Uncertain<>(new Stated<>(like), knowledge, "");
    }

    /**
     * Returns a normally distributed input.
     *
     * @param <K> kind of the value
     * @param <Q> type of the value
     * @param value the best estimate
     * @param standardUncertainty one standard deviation; 0 or more; of a temperature in kelvin
     * @return the input
     * @throws IllegalArgumentException if the uncertainty is negative or of another kind
     */
    public static <K extends Quantity<K>, Q extends WaterQuantity<K>> Uncertain<Q> normal(
            Q value, Quantity<K> standardUncertainty) {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(standardUncertainty, "standardUncertainty");
        double deviation = new Stated<>(value).readDifference(standardUncertainty);
        if (!(deviation >= 0)) {
            throw new IllegalArgumentException(
                    "standard uncertainty of " + value + " must not be negative, but was " + standardUncertainty);
        }
        return of(value, TruncatedNormal.whole(value.getValue(), deviation));
    }

    /**
     * Returns a normally distributed number without a unit, such as a pH.
     *
     * @param value the best estimate; finite
     * @param standardUncertainty one standard deviation; 0 or more, finite
     * @return the input; {@link Draw#valueOf} has its number
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Uncertain<WaterQuantity<Dimensionless>> normal(double value, double standardUncertainty) {
        return normal(number(value), number(standardUncertainty));
    }

    /**
     * Returns a normally distributed input by its expanded uncertainty {@code U = k u}, as a certificate states it.
     *
     * @param <K> kind of the value
     * @param <Q> type of the value
     * @param value the best estimate
     * @param expandedUncertainty U; 0 or more; of a temperature in kelvin
     * @param coverageFactor k; above 0, mostly 2
     * @return the input, with {@code u = U / k}
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static <K extends Quantity<K>, Q extends WaterQuantity<K>> Uncertain<Q> expanded(
            Q value, Quantity<K> expandedUncertainty, double coverageFactor) {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(expandedUncertainty, "expandedUncertainty");
        if (!(coverageFactor > 0 && coverageFactor <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "coverage factor of " + value + " must be positive and finite, but was " + coverageFactor);
        }
        double deviation = new Stated<>(value).readDifference(expandedUncertainty) / coverageFactor;
        if (!(deviation >= 0 && deviation <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("expanded uncertainty of " + value
                    + " must not be negative or too large, but was " + expandedUncertainty);
        }
        return of(value, TruncatedNormal.whole(value.getValue(), deviation));
    }

    /**
     * Returns a normally distributed input by its relative standard uncertainty: {@code u = share · |value|}.
     *
     * @param <Q> type of the value
     * @param value the best estimate; at 0 the input is exact
     * @param share 0 or more, finite; 0.05 for 5 %
     * @return the input
     * @throws IllegalArgumentException if the share is out of range
     * @throws ArithmeticException if the unit has a zero of its own, as °C
     */
    public static <Q extends WaterQuantity<?>> Uncertain<Q> relative(Q value, double share) {
        Objects.requireNonNull(value, "value");
        if (!(share >= 0 && share <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "relative uncertainty of " + value + " must be a finite number from 0, but was " + share);
        }
        double deviation = Math.abs(value.multiply(share).getValue().doubleValue());
        return of(value, TruncatedNormal.whole(value.getValue(), deviation));
    }

    /**
     * Returns an input of which only two ends are known: anything between is alike likely (rectangular distribution).
     *
     * <p>So for a detection limit, the last drop of a kit, or a tolerance; its standard uncertainty is half the width over √3 (JCGM 100:2008
     * 4.3.7), its value the middle.
     *
     * @param <K> kind of the value
     * @param <Q> type of the value
     * @param least the lower end; its unit is that of the input
     * @param most the upper end; not below {@code least}
     * @return the input
     * @throws IllegalArgumentException if the ends are out of order
     */
    public static <K extends Quantity<K>, Q extends WaterQuantity<K>> Uncertain<Q> between(Q least, Q most) {
        return of(least, ends(least, most, false));
    }

    /**
     * Returns a number without a unit of which only two ends are known.
     *
     * @param least the lower end; finite
     * @param most the upper end; finite, not below {@code least}
     * @return the input
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Uncertain<WaterQuantity<Dimensionless>> between(double least, double most) {
        return between(number(least), number(most));
    }

    /**
     * Returns an input between two ends whose middle is most likely (triangular distribution), such as the volume of a flask with its
     * tolerance; its standard uncertainty is half the width over √6 (JCGM 100:2008 4.3.9).
     *
     * @param <K> kind of the value
     * @param <Q> type of the value
     * @param least the lower end; its unit is that of the input
     * @param most the upper end; not below {@code least}
     * @return the input
     * @throws IllegalArgumentException if the ends are out of order
     */
    public static <K extends Quantity<K>, Q extends WaterQuantity<K>> Uncertain<Q> triangularBetween(Q least, Q most) {
        return of(least, ends(least, most, true));
    }

    private static <K extends Quantity<K>, Q extends WaterQuantity<K>> Knowledge ends(
            Q least, Q most, boolean isTriangular) {
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(most, "most");
        double high = most.in(least.getUnit());
        if (!(least.getValue() <= high)) {
            throw new IllegalArgumentException("ends must be in order, but were " + least + " and " + most);
        }
        if (Double.isInfinite(high - least.getValue())) {
            throw new IllegalArgumentException(least + " and " + most + " are too far apart for a double");
        }
        return new Knowledge.Between(least.getValue(), high, isTriangular);
    }

    /**
     * Returns an input without uncertainty.
     *
     * @param <Q> type of the value
     * @param value the value
     * @return the input
     */
    public static <Q extends WaterQuantity<?>> Uncertain<Q> exact(Q value) {
        Objects.requireNonNull(value, "value");
        return of(value, new Knowledge.Exact(value.getValue()));
    }

    private static WaterQuantity<Dimensionless> number(double value) {
        return WaterUnits.share(value, WaterUnits.ONE);
    }

    /**
     * Returns an input like this one with a name for budgets and messages; it is another input.
     *
     * @param newName such as "total hardness"; not blank
     * @return the named input
     * @throws IllegalArgumentException if the name is blank
     */
    public Uncertain<Q> named(String newName) {
        if (Objects.requireNonNull(newName, "newName").isBlank()) {
            throw new IllegalArgumentException("name of " + this + " must not be blank");
        }
        return new Uncertain<>(unit, knowledge, newName);
    }

    /**
     * Returns an input like this one that cannot be less than a floor, as a concentration cannot be less than 0; it is another input.
     *
     * <p>The part of a normal distribution below the floor is cut off and the rest is scaled up (truncated normal): no draw is moved to the
     * floor. The {@link #expectation} rises and the {@link #standardUncertainty} falls: with {@code α = (floor - value)/u} and
     * {@code λ = φ(α)/(1 - Φ(α))} it is {@code value + λ u}, and {@code u √(1 + α λ - λ²)}. At a floor one u below the value the expectation
     * is 0.29 u above it; at three u, 0.004 u. The ends of an interval have to be possible in the first place.
     *
     * @param floor the lowest possible value; not above the value
     * @return the input with that floor
     * @throws IllegalArgumentException if the value or an end is below the floor
     */
    public Uncertain<Q> notBelow(Q floor) {
        return within(unit.read(Objects.requireNonNull(floor, "floor")), Double.POSITIVE_INFINITY, "below " + floor);
    }

    /**
     * Returns an input like this one that cannot be more than a ceiling, as a share cannot be more than 1; it is another input. What was
     * said of {@link #notBelow} holds here the other way round.
     *
     * @param ceiling the highest possible value; not below the value
     * @return the input with that ceiling
     * @throws IllegalArgumentException if the value or an end is above the ceiling, or less than 1 % of a normal distribution is left
     *     between floor and ceiling
     */
    public Uncertain<Q> notAbove(Q ceiling) {
        return within(
                Double.NEGATIVE_INFINITY, unit.read(Objects.requireNonNull(ceiling, "ceiling")), "above " + ceiling);
    }

    /**
     * Returns an input like this one that cannot be less than zero in its unit; it is another input.
     *
     * @return the input with zero as floor, see {@link #notBelow}
     * @throws IllegalArgumentException if the value or an end is negative
     */
    public Uncertain<Q> notNegative() {
        return notBelow(unit.value(0));
    }

    private Uncertain<Q> within(double least, double most, String beyond) {
        double value = knowledge.value();
        if (value < least || value > most) {
            throw new IllegalArgumentException(this + " must not be " + beyond);
        }
        try {
            return new Uncertain<>(unit, knowledge.within(least, most), name);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(this + " must not be " + beyond + ": " + e.getMessage(), e);
        }
    }

    /**
     * Returns the value as stated.
     *
     * @return the best estimate without a floor or ceiling; the middle of an interval
     */
    public Q value() {
        return unit.value(knowledge.value());
    }

    /**
     * Returns the mean of what the value may be.
     *
     * @return {@link #value}, unless a floor or ceiling has cut off a part of a normal distribution
     */
    public Q expectation() {
        return unit.value(knowledge.expectation());
    }

    /**
     * Returns the standard uncertainty u: the standard deviation of what the value may be.
     *
     * @return in the unit of the value, of a temperature in kelvin; 0 if it is exact
     */
    public Q standardUncertainty() {
        return unit.difference(knowledge.standardUncertainty());
    }

    /**
     * Returns the name.
     *
     * @return as given, or the text of the value
     */
    public String name() {
        return name.isEmpty() ? value().toString() : name;
    }

    Stated<Q> unit() {
        return unit;
    }

    Knowledge knowledge() {
        return knowledge;
    }

    /** Returns name, value and standard uncertainty, for logs. */
    @Override
    public String toString() {
        String prefix = name.isEmpty() ? "" : name + " ";
        return prefix + value() + " (u = " + standardUncertainty() + ")";
    }
}
