package evenwater.chemistry.quantity;

import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A value and its unit exactly as somebody stated them: what every kind of quantity in this library is.
 *
 * <p>{@code 22 gpg} stays {@code 22 gpg} in text, errors and {@link #getValue()}; {@link #in(Unit)} answers a plain double in any
 * unit of the kind, at the cost of one division and one multiplication, and {@link #to(Unit)} restates. Units of other libraries are
 * accepted if they have the dimension; units and quantities of another kind are refused by name even where raw types would let them
 * through (hardness and alkalinity share a dimension and do not mix).
 *
 * <p><b>Equality and order.</b> {@code equals} compares the statement: kind, value and unit; equal quantities print alike.
 * {@code compareTo} and {@code isEquivalentTo} compare the amount: 1 mmol/L and 2 meq/L of hardness are equivalent and not equal.
 * Amounts are doubles; to compare with a limit stated in another unit, compare {@code in(unit)} with a tolerance.
 *
 * <p>Immutable and thread-safe. Only this package adds kinds.
 *
 * @param <Q> the kind, such as {@link Hardness} or {@link javax.measure.quantity.Volume}
 */
@SuppressWarnings("ComparableType") // any library's quantity of the kind is comparable, as Quantity itself compares
public abstract class WaterQuantity<Q extends Quantity<Q>> implements Quantity<Q>, Comparable<Quantity<Q>> {

    /** Sizes up to here and down to its inverse are compared as they are. */
    private static final double LARGE = 0x1p600;

    private final double value;
    private final KindScale<Q> scale;

    WaterQuantity(double value, Unit<Q> unit, Class<?> kind, Coherent coherent) {
        this.scale = KindScale.of(unit, kind, coherent);
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    KindScale.nameOf(kind) + " must be a finite number, but was " + value + " " + scale.symbol);
        }
        this.value = value + 0.0; // -0.0 + 0.0 is 0.0
    }

    /** Makes a quantity of the same kind; the only method that a kind writes. */
    abstract Q make(double value, Unit<Q> unit);

    /** The scale of the statement, for kinds whose zero is not the zero of the base. */
    final KindScale<Q> scale() {
        return scale;
    }

    final double value() {
        return value;
    }

    /** The size in coherent units. */
    double inBase() {
        return value * scale.toBase;
    }

    /**
     * Returns the number that this quantity has in a unit.
     *
     * @param unit a unit of this kind; one of ours costs nanoseconds, a foreign one microseconds
     * @return the value in {@code unit}; the stated value itself if it was stated in {@code unit}
     * @throws IllegalArgumentException if the unit belongs to another kind or dimension
     * @throws ArithmeticException if the value does not fit into a double
     */
    @SuppressWarnings("ReferenceEquality") // the same unit object needs no conversion; equal ones take the general way
    public double in(Unit<Q> unit) {
        if (unit == scale.unit) {
            return value;
        }
        double result = value * (scale.toBase / KindScale.of(unit, scale.kind, scale.coherent).toBase);
        if (Math.abs(result) <= Double.MAX_VALUE) {
            return result;
        }
        throw overflow(unit);
    }

    /**
     * Returns how this quantity is converted, to show it.
     *
     * @param unit any unit of the kind
     * @return the exact factors that the two units are defined by, in their order
     * @throws IllegalArgumentException if the unit is of another kind
     */
    public final UnitConversion conversionTo(Unit<Q> unit) {
        return UnitConversion.between(scale, KindScale.of(unit, scale.kind, scale.coherent));
    }

    final ArithmeticException overflow(Unit<Q> unit) {
        return new ArithmeticException(this + " is too large for a double in " + unit);
    }

    /**
     * Returns the same amount stated in another unit.
     *
     * @param unit a unit of this kind
     * @return the restated quantity
     * @throws IllegalArgumentException if the unit belongs to another kind or dimension
     * @throws ArithmeticException if the value does not fit into a double
     */
    @Override
    public final Q to(Unit<Q> unit) {
        return make(in(unit), unit);
    }

    /**
     * Returns a quantity of the same kind and unit with another value, also where the unit has a zero of its own: 20 °C with the value
     * 21.5 is 21.5 °C.
     *
     * @param value number in the unit of this quantity; finite
     * @return the quantity
     * @throws IllegalArgumentException if the value is NaN or infinite, or the kind does not have it, such as -300 °C
     */
    public final Q withValue(double value) {
        return make(value, scale.unit);
    }

    /**
     * Returns the sum, in the unit of this quantity.
     *
     * @param addend a quantity of the same kind, ours or foreign, in any unit
     * @return the sum
     * @throws IllegalArgumentException if the addend is of another kind, or the sum does not fit into a double
     */
    @Override
    public Q add(Quantity<Q> addend) {
        return make(value + read(addend).in(scale.unit), scale.unit);
    }

    /**
     * Returns the difference, in the unit of this quantity.
     *
     * @param subtrahend a quantity of the same kind, ours or foreign, in any unit
     * @return the difference; may be negative
     * @throws IllegalArgumentException if the subtrahend is of another kind, or the difference does not fit into a double
     */
    @Override
    public Q subtract(Quantity<Q> subtrahend) {
        return make(value - read(subtrahend).in(scale.unit), scale.unit);
    }

    /**
     * Returns this quantity times a number, in the same unit.
     *
     * @param factor no unit; finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite, or the product does not fit into a double
     * @throws ArithmeticException if its unit has a zero of its own, as °C: 20 °C times 2 is not 40 °C
     */
    public final Q multiply(double factor) {
        refuseOwnZero("times " + factor);
        return make(value * finite(factor, "factor"), scale.unit);
    }

    @Override
    public final Q multiply(Number factor) {
        return multiply(Objects.requireNonNull(factor, "factor").doubleValue());
    }

    /**
     * Returns this quantity divided by a number, in the same unit.
     *
     * @param divisor no unit; finite, not 0
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is 0 or not finite, or the quotient does not fit into a double
     * @throws ArithmeticException if its unit has a zero of its own, as °C
     */
    public final Q divide(double divisor) {
        refuseOwnZero("divided by " + divisor);
        if (finite(divisor, "divisor") == 0) {
            throw new IllegalArgumentException("divisor of " + this + " must not be 0");
        }
        return make(value / divisor, scale.unit);
    }

    @Override
    public final Q divide(Number divisor) {
        return divide(Objects.requireNonNull(divisor, "divisor").doubleValue());
    }

    @Override
    public final Q negate() {
        refuseOwnZero("times -1");
        return make(-value, scale.unit);
    }

    private void refuseOwnZero(String operation) {
        if (scale.offset != 0) {
            throw new ArithmeticException(
                    this + " " + operation + " depends on the zero of its scale: convert it to K first");
        }
    }

    /**
     * Returns this quantity divided by another of the same kind: a plain number.
     *
     * @param that a quantity of the same kind, ours or foreign, in any unit; not 0
     * @return the ratio; no unit
     * @throws IllegalArgumentException if {@code that} is 0 or of another kind, or the ratio does not fit into a double
     */
    public final double ratioTo(Quantity<Q> that) {
        WaterQuantity<Q> divisor = read(that);
        boolean ownZero = scale.offset != 0 || divisor.scale.offset != 0;
        if (divisor.inBase() == 0 && (ownZero || divisor.value == 0)) {
            throw new IllegalArgumentException("ratio of " + this + " to " + divisor + " is not defined");
        }
        double ratio = ownZero || (hasAllDigits() && divisor.hasAllDigits())
                ? inBase() / divisor.inBase()
                : value / divisor.value * (scale.toBase / divisor.scale.toBase);
        return finite(ratio, "ratio to " + divisor);
    }

    @Override
    public final Quantity<?> multiply(Quantity<?> factor) {
        return UnitAlgebra.multiply(this, Objects.requireNonNull(factor, "factor"));
    }

    @Override
    public final Quantity<?> divide(Quantity<?> divisor) {
        return UnitAlgebra.divide(this, Objects.requireNonNull(divisor, "divisor"));
    }

    @Override
    public final Quantity<?> inverse() {
        return UnitAlgebra.inverse(this);
    }

    @Override
    @SuppressWarnings("unchecked") // checked by the class token
    public final <T extends Quantity<T>> Quantity<T> asType(Class<T> type) {
        if (type != scale.kind) {
            throw new ClassCastException(this + " is of kind " + KindScale.nameOf(scale.kind) + ", not "
                    + KindScale.nameOf(Objects.requireNonNull(type, "type")));
        }
        return (Quantity<T>) this;
    }

    @Override
    public final Double getValue() {
        return value;
    }

    @Override
    public final Unit<Q> getUnit() {
        return scale.unit;
    }

    @Override
    public final Scale getScale() {
        return Scale.ABSOLUTE;
    }

    /**
     * Tells whether both quantities are the same amount, whatever their units.
     *
     * @param that a quantity of the same kind, ours or foreign
     * @return true if {@link #compareTo} is 0
     */
    @Override
    public final boolean isEquivalentTo(Quantity<Q> that) {
        return compareTo(that) == 0;
    }

    /**
     * Compares amounts, whatever their units; not consistent with {@code equals}, as with {@link java.math.BigDecimal}.
     *
     * @param that a quantity of the same kind, ours or foreign
     * @return below, at or above 0
     */
    @Override
    public final int compareTo(Quantity<Q> that) {
        WaterQuantity<Q> other = read(that);
        double factor = comparable(other);
        return Double.compare(inBase(factor), other.inBase(factor));
    }

    /** A power of two that brings sizes such as 1.7e308 kg/L or 1e-320 µg/L to where a double has all its digits in coherent units. */
    private double comparable(WaterQuantity<Q> other) {
        double size = Math.max(Math.abs(inBase()), Math.abs(other.inBase()));
        if (scale.offset != 0 || other.scale.offset != 0) {
            return 1;
        }
        return size > LARGE ? 1 / LARGE : size < 1 / LARGE ? LARGE : 1;
    }

    /** Whether the size in coherent units is a double as good as the value: 1.7e308 kg/L is not. */
    private boolean hasAllDigits() {
        double size = Math.abs(inBase());
        return size >= Double.MIN_NORMAL && size <= Double.MAX_VALUE;
    }

    private double inBase(double factor) {
        return factor == 1 ? inBase() : value * factor * scale.toBase;
    }

    /** Reads any quantity of this kind once, at the border. */
    @SuppressWarnings("unchecked") // the kind is compared first
    final WaterQuantity<Q> read(Quantity<Q> that) {
        return that instanceof WaterQuantity<?> ours && ours.scale.kind == scale.kind
                ? (WaterQuantity<Q>) ours
                : adoptForeign(that);
    }

    @SuppressWarnings("unchecked") // what a kind makes is of the kind
    WaterQuantity<Q> adoptForeign(Quantity<Q> foreign) {
        return (WaterQuantity<Q>) adopt(foreign, scale.kind, this::make);
    }

    /** Restates a quantity of another library; refuses one of ours, which is of another kind, also through raw types. */
    static <Q extends Quantity<Q>, R> R adopt(Quantity<Q> foreign, Class<?> kind, QuantityText.Maker<Q, R> maker) {
        Objects.requireNonNull(foreign, "quantity");
        if (foreign instanceof WaterQuantity<?> ours) {
            throw new IllegalArgumentException("expected a quantity of kind " + KindScale.nameOf(kind) + ", but was "
                    + ours + ", of kind " + KindScale.nameOf(ours.scale.kind));
        }
        double value = Objects.requireNonNull(foreign.getValue(), "value of the quantity")
                .doubleValue();
        return maker.make(value, Objects.requireNonNull(foreign.getUnit(), "unit of the quantity"));
    }

    private double finite(double number, String name) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException(name + " of " + this + " must be a finite number, but was " + number);
        }
        return number;
    }

    @Override
    public final boolean equals(@Nullable Object that) {
        return that instanceof WaterQuantity<?> q
                && q.getClass() == getClass()
                && q.value == value
                && q.scale.unit.equals(scale.unit);
    }

    @Override
    public final int hashCode() {
        return 31 * Double.hashCode(value) + scale.unit.hashCode();
    }

    /**
     * Returns the statement as text, such as {@code 22 gpg}. In a unit of this library {@code parse} reads it back to an equal
     * quantity, and {@code Ion.parseConcentration} does so for a unit of an ion such as {@code mg/L NO₃⁻}; the text of a foreign unit is
     * its own.
     *
     * @return all digits of the value with a decimal point, a space, the symbol of the unit
     */
    @Override
    public final String toString() {
        return scale.symbol.isEmpty() ? QuantityText.number(value) : QuantityText.number(value) + " " + scale.symbol;
    }

    /**
     * Returns the statement as text for people, rounded and with the decimal sign of a locale, such as {@code 21,1 °dH}.
     *
     * @param locale whose decimal sign and grouping to use
     * @param significantDigits digits to keep; 1 to 17
     * @return rounded text; not meant to be read back
     */
    public final String toText(Locale locale, int significantDigits) {
        String number = QuantityText.rounded(value, locale, significantDigits);
        return scale.symbol.isEmpty() ? number : number + " " + scale.symbol;
    }
}
