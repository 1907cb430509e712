package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Three statements of one kind, each in some unit of the kind: what the laws speak about. */
record Statements<Q extends Quantity<Q>>(Kind<Q> kind, List<Double> values, List<Unit<Q>> units) {

    static Arbitrary<Statements<?>> any() {
        return Arbitraries.of(Kind.proportional()).flatMap(Statements::ofKind);
    }

    private static <Q extends Quantity<Q>> Arbitrary<Statements<?>> ofKind(Kind<Q> kind) {
        // what waters have and some powers of ten around it, not the edge of the doubles
        Arbitrary<Double> value = Arbitraries.oneOf(
                Arbitraries.doubles().between(-1e6, 1e6).ofScale(6),
                Arbitraries.doubles().between(-1e3, 1e3).ofScale(0),
                Arbitraries.doubles().between(1e-12, 1e12).ofScale(12));
        return Combinators.combine(
                        value.list().ofSize(3),
                        Arbitraries.of(kind.units()).list().ofSize(3))
                .as((values, units) -> new Statements<>(kind, values, units));
    }

    WaterQuantity<Q> a() {
        return kind.of(values.get(0), units.get(0));
    }

    WaterQuantity<Q> b() {
        return kind.of(values.get(1), units.get(1));
    }

    WaterQuantity<Q> c() {
        return kind.of(values.get(2), units.get(2));
    }

    Unit<Q> unitOfA() {
        return units.get(0);
    }

    Unit<Q> unitOfB() {
        return units.get(1);
    }

    Unit<Q> unitOfC() {
        return units.get(2);
    }

    /** The sizes of all three in the unit of the first, added up: what rounding is measured against. */
    double sizeInUnitOfA() {
        Unit<Q> unit = unitOfA();
        return Math.abs(a().in(unit)) + Math.abs(b().in(unit)) + Math.abs(c().in(unit));
    }

    @Override
    public String toString() {
        return kind + ": " + a() + ", " + b() + ", " + c();
    }
}
