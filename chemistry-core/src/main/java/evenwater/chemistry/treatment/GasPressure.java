package evenwater.chemistry.treatment;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;

/** Partial pressures of CO₂ as arguments of treatments. */
final class GasPressure {

    private GasPressure() {}

    /** Above 0, to 10 atm. */
    static WaterQuantity<Pressure> checked(Quantity<Pressure> carbonDioxide) {
        WaterQuantity<Pressure> stated = WaterUnits.pressure(carbonDioxide);
        double atmospheres = stated.in(WaterUnits.ATMOSPHERE);
        if (!(atmospheres > 0 && atmospheres <= 10)) {
            throw new IllegalArgumentException(
                    "partial pressure of CO₂ must be above 0 atm, to 10 atm, but was " + stated);
        }
        return stated;
    }
}
