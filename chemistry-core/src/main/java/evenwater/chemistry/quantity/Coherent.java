package evenwater.chemistry.quantity;

import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/** The coherent SI unit that the scales of a kind are multiples of; indriya wakes only when the unit itself is asked for. */
enum Coherent {
    MOLE_PER_CUBIC_METRE,
    KILOGRAM_PER_MOLE,
    KILOGRAM_PER_CUBIC_METRE,
    SIEMENS_PER_METRE,
    CUBIC_METRE_PER_SECOND,
    CUBIC_METRE,
    METRE,
    KILOGRAM,
    KELVIN,
    PASCAL,
    SECOND,
    ONE;

    Unit<?> unit() {
        return switch (this) {
            case MOLE_PER_CUBIC_METRE -> Units.MOLE.divide(Units.CUBIC_METRE);
            case KILOGRAM_PER_MOLE -> Units.KILOGRAM.divide(Units.MOLE);
            case KILOGRAM_PER_CUBIC_METRE -> Units.KILOGRAM.divide(Units.CUBIC_METRE);
            case SIEMENS_PER_METRE -> Units.SIEMENS.divide(Units.METRE);
            case CUBIC_METRE_PER_SECOND -> Units.CUBIC_METRE.divide(Units.SECOND);
            case CUBIC_METRE -> Units.CUBIC_METRE;
            case METRE -> Units.METRE;
            case KILOGRAM -> Units.KILOGRAM;
            case KELVIN -> Units.KELVIN;
            case PASCAL -> Units.PASCAL;
            case SECOND -> Units.SECOND;
            case ONE -> one();
        };
    }

    private static Unit<Dimensionless> one() {
        return AbstractUnit.ONE;
    }
}
