package evenwater.chemistry.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javax.measure.Dimension;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.AddConverter;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.TransformedUnit;

/**
 * A unit of one kind of quantity: its kind, its symbol and its exact size, {@code base = (value + offset) · definition / divisor}.
 *
 * <p>What people hold is {@link #unit}, an indriya {@code TransformedUnit} whose parent is this scale and whose converter is an
 * identity of our own: indriya converts, multiplies and prints it like one of its own, and {@link #of} finds kind and factor behind
 * it with two class checks. The decision record on quantities says which simpler constructions broke and how.
 */
final class KindScale<Q extends Quantity<Q>> extends AbstractUnit<Q> {

    private static final long serialVersionUID = 1L;
    private static final double STEPS = 0x1p20;

    final Class<?> kind;
    final String symbol;
    final double toBase;
    final double offset;
    final Unit<Q> unit;
    private final String ucumCode;
    final Coherent coherent;
    private final Definition definition;
    /** A molar mass where a mass is a unit of amount, else 1. */
    final double divisor;
    /** What is weighed where a mass is a unit of amount, else empty. */
    final String basis;

    /** A unit of ours. An empty UCUM code says that UCUM has none. */
    private KindScale(
            Class<?> kind,
            String symbol,
            String ucumCode,
            Coherent coherent,
            Definition definition,
            double divisor,
            String basis,
            double offset) {
        super(symbol);
        this.kind = kind;
        this.symbol = symbol;
        this.ucumCode = ucumCode;
        this.coherent = coherent;
        this.definition = definition;
        this.divisor = divisor;
        this.basis = basis;
        this.toBase = (double) definition.num / definition.den / divisor;
        this.offset = offset;
        // A null system unit makes the shell ask its parent, so that indriya's own units stay unloaded until someone
        // asks.
        this.unit = new TransformedUnit<>(symbol, symbol, this, null, Same.INSTANCE);
    }

    /** A unit of somebody else's that a quantity of ours is stated in. */
    private KindScale(Class<?> kind, Unit<Q> foreign, Coherent coherent, double toBase, double offset) {
        super(foreign.toString());
        this.kind = kind;
        this.symbol = foreign.toString();
        this.ucumCode = "";
        this.coherent = coherent;
        this.definition = Definition.ONE;
        this.divisor = 1 / toBase;
        this.basis = "";
        this.toBase = toBase;
        this.offset = offset;
        this.unit = foreign;
    }

    /** Makes a unit of so many coherent units. */
    static <Q extends Quantity<Q>> Unit<Q> unit(
            Class<?> kind, Coherent coherent, String symbol, String ucumCode, Definition definition) {
        return new KindScale<Q>(kind, symbol, ucumCode, coherent, definition, 1, "", 0).unit;
    }

    /** Makes a unit with another zero: {@code base = (value + offset) · definition}. */
    static <Q extends Quantity<Q>> Unit<Q> shiftedUnit(
            Class<?> kind, Coherent coherent, String symbol, String ucumCode, Definition definition, double offset) {
        return new KindScale<Q>(kind, symbol, ucumCode, coherent, definition, 1, "", offset).unit;
    }

    /** Makes a mass per volume, this scale, a unit of amount: one of it is {@code mass / gramsPerMole}. */
    Unit<AmountConcentration> amountUnit(String weighed, double gramsPerMole) {
        return new KindScale<AmountConcentration>(
                        AmountConcentration.class,
                        symbol + " " + weighed,
                        "",
                        Coherent.MOLE_PER_CUBIC_METRE,
                        definition.times(1000, "mmol", "mol"), // g/L over g/mol is mol/L, 1000 mol/m³
                        gramsPerMole * divisor,
                        weighed,
                        0)
                .unit;
    }

    /** Finds the scale behind a unit; a foreign unit of the same dimension is adopted, any other is refused by name. */
    @SuppressWarnings({"unchecked", "ReferenceEquality"
    }) // a shell is known by identity; the class token keeps kind and Q together
    static <Q extends Quantity<Q>> KindScale<Q> of(Unit<Q> unit, Class<?> kind, Coherent coherent) {
        if (unit instanceof TransformedUnit<?> shell
                && shell.getParentUnit() instanceof KindScale<?> scale
                && scale.unit == unit) {
            if (scale.kind != kind) {
                throw wrongKind(unit, kind, scale.kind);
            }
            return (KindScale<Q>) scale;
        }
        return adopt(Objects.requireNonNull(unit, "unit"), kind, coherent);
    }

    private static <Q extends Quantity<Q>> KindScale<Q> adopt(Unit<Q> foreign, Class<?> kind, Coherent coherent) {
        KindScale<?> ancestor = ancestor(foreign);
        if (ancestor != null && ancestor.kind != kind) {
            throw wrongKind(foreign, kind, ancestor.kind);
        }
        Unit<?> base = coherent.unit();
        if (!foreign.getDimension().equals(base.getDimension())) {
            throw new IllegalArgumentException(nameOf(kind) + " cannot be stated in " + foreign + ", a unit of "
                    + foreign.getDimension() + ", but only in units of " + base.getDimension());
        }
        UnitConverter converter = converter(foreign, base);
        if (!converter.isLinear() && coherent != Coherent.KELVIN) {
            throw new IllegalArgumentException(
                    nameOf(kind) + " cannot be stated in " + foreign + ", which is no multiple of " + base);
        }
        double zero = converter.convert(0.0);
        // a million steps keep the digits that one step would lose beside an offset such as 273.15
        double toBase = zero == 0 ? converter.convert(1.0) : (converter.convert(STEPS) - zero) / STEPS;
        if (!(toBase > 0 && toBase <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    nameOf(kind) + " cannot be stated in " + foreign + ", which is " + toBase + " times " + base);
        }
        return new KindScale<>(kind, foreign, coherent, toBase, zero == 0 ? 0 : zero / toBase);
    }

    private static UnitConverter converter(Unit<?> from, Unit<?> to) {
        try {
            return from.getConverterToAny(to);
        } catch (IncommensurableException | UnconvertibleException | UnsupportedOperationException e) {
            throw new IllegalArgumentException("cannot convert " + from + " to " + to, e);
        }
    }

    /** A multiple of one of our units, such as milli-degrees, still knows its kind. */
    private static @Nullable KindScale<?> ancestor(Unit<?> unit) {
        Unit<?> u = unit;
        while (u instanceof TransformedUnit<?> t) {
            u = t.getParentUnit();
        }
        return u instanceof KindScale<?> scale ? scale : null;
    }

    private static IllegalArgumentException wrongKind(Unit<?> unit, Class<?> wanted, Class<?> found) {
        return new IllegalArgumentException(
                nameOf(wanted) + " cannot be stated in " + unit + ", a unit of " + nameOf(found));
    }

    /** Returns the UCUM code of a unit of ours, empty if UCUM has none or the unit is not ours. */
    @SuppressWarnings("ReferenceEquality") // a shell is known by identity
    static String ucumCodeOf(Unit<?> unit) {
        return unit instanceof TransformedUnit<?> shell
                        && shell.getParentUnit() instanceof KindScale<?> scale
                        && scale.unit == unit
                ? scale.ucumCode
                : "";
    }

    /** The factors that lead from this unit to the coherent one, as people write them. */
    List<ConversionFactor> factors() {
        List<ConversionFactor> factors = new ArrayList<>();
        if (isForeign()) {
            factors.add(new ConversionFactor(
                    BigDecimal.valueOf(toBase), coherent.unit().toString(), symbol, false));
        } else {
            definition.links().forEach(link -> factors.add(ConversionFactor.of(link)));
        }
        return divisor == 1 || isForeign() ? factors : weighed(factors);
    }

    /** Milligrams are divided by mg/mmol, any other mass by g/mol. */
    private List<ConversionFactor> weighed(List<ConversionFactor> factors) {
        ConversionFactor toMillimoles = factors.remove(factors.size() - 1); // from moles, see amountUnit
        ConversionFactor milligrams = ConversionFactor.of(new Definition.Link(Factor.MILLIGRAMS, true));
        BigDecimal molarMass = BigDecimal.valueOf(divisor);
        if (!factors.isEmpty() && factors.get(factors.size() - 1).equals(milligrams)) {
            factors.set(factors.size() - 1, new ConversionFactor(molarMass, "mg " + basis, "mmol", true));
        } else {
            factors.add(new ConversionFactor(molarMass, "g " + basis, "mol", true));
            factors.add(toMillimoles);
        }
        return factors;
    }

    private boolean isForeign() {
        return !(unit instanceof TransformedUnit<?> shell && shell.getParentUnit() == this);
    }

    /** "ExchangeCapacity" reads "exchange capacity" in messages. */
    static String nameOf(Class<?> kind) {
        StringBuilder words = new StringBuilder();
        for (char c : kind.getSimpleName().toCharArray()) {
            if (Character.isUpperCase(c) && words.length() > 0) {
                words.append(' ');
            }
            words.append(c);
        }
        return words.toString().toLowerCase(Locale.ROOT);
    }

    @Override
    @SuppressWarnings("unchecked") // the coherent unit has the dimension of Q
    protected Unit<Q> toSystemUnit() {
        return (Unit<Q>) coherent.unit();
    }

    @Override
    public UnitConverter getSystemConverter() {
        UnitConverter factor = MultiplyConverter.ofRational(RationalNumber.of(definition.num, definition.den)
                .multiply(RationalNumber.of(divisor).reciprocal()));
        return offset == 0 ? factor : factor.concatenate(new AddConverter(RationalNumber.of(offset)));
    }

    @Override
    public @Nullable Map<? extends Unit<?>, Integer> getBaseUnits() {
        return toSystemUnit().getBaseUnits();
    }

    @Override
    public Dimension getDimension() {
        return coherent.unit().getDimension();
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return this == that
                || (that instanceof KindScale<?> s
                        && s.kind == kind
                        && s.symbol.equals(symbol)
                        && s.toBase == toBase
                        && s.offset == offset);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, symbol, toBase, offset);
    }

    @Override
    public String toString() {
        return symbol;
    }
}
