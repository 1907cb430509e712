package evenwater.chemistry.substance;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Objects;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;

/**
 * The mass of a level US teaspoon of a powder, and how far it may be off.
 *
 * @param mass of one level teaspoon, 4.92892159375 mL; above 0
 * @param relativeUncertainty how far a teaspoon may be off, such as 20 %; from 0 to below 100 %
 * @param source who says so
 */
public record LevelTeaspoon(WaterQuantity<Mass> mass, WaterQuantity<Dimensionless> relativeUncertainty, String source) {

    /**
     * Checks the parts.
     *
     * @param mass of one level teaspoon
     * @param relativeUncertainty how far a teaspoon may be off
     * @param source who says so
     */
    public LevelTeaspoon {
        Objects.requireNonNull(mass, "mass");
        Objects.requireNonNull(relativeUncertainty, "relativeUncertainty");
        if (!(mass.in(WaterUnits.GRAM) > 0)) {
            throw new IllegalArgumentException("mass of a level teaspoon must be positive, but was " + mass);
        }
        double relative = relativeUncertainty.in(WaterUnits.ONE);
        if (!(relative >= 0 && relative < 1)) {
            throw new IllegalArgumentException(
                    "relative uncertainty of a teaspoon must be from 0 to below 100 %, but was " + relativeUncertainty);
        }
        Objects.requireNonNull(source, "source");
    }
}
