package evenwater.chemistry.verdict;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.equilibrium.UnionisedAmmonia;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;

/** Evidence with what follows from it in a tank: its pH from alkalinity and carbon dioxide, its un-ionised ammonia from the pH. */
final class Derived {

    /** Of a tank whose temperature nobody states. */
    private static final WaterQuantity<Temperature> USUAL = WaterUnits.temperature(25, WaterUnits.CELSIUS);

    private static final Bounds<WaterQuantity<Dimensionless>> NO_PH = pH(0, 7, 14);

    private final Evidence evidence;

    private Derived(Evidence evidence) {
        this.evidence = evidence;
    }

    static Derived of(Evidence evidence, TankAir air) {
        Evidence all = evidence;
        Bounds<WaterQuantity<Temperature>> temperature =
                all.known(Parameter.TEMPERATURE).orElse(new Bounds<>(USUAL, USUAL, USUAL));
        Optional<Bounds<WaterQuantity<Dimensionless>>> pH =
                all.known(Parameter.PH).or(() -> inTank(evidence.waters(), air, temperature));
        if (pH.isPresent()) {
            all = all.with(Parameter.PH, pH.get());
        }
        Optional<Bounds<AmountConcentration>> total = all.known(Parameter.TOTAL_AMMONIA);
        if (all.known(Parameter.UNIONISED_AMMONIA).isEmpty() && total.isPresent()) {
            all = all.with(Parameter.UNIONISED_AMMONIA, ammonia(total.get(), pH.orElse(NO_PH), temperature));
        }
        return new Derived(all);
    }

    /**
     * The pH over all waters that are left open, with the most and the least carbon dioxide. What nobody measured counts as none: it moves the
     * pH by its ionic strength alone, less than 0.1 in fresh water.
     */
    private static Optional<Bounds<WaterQuantity<Dimensionless>>> inTank(
            List<Water> waters, TankAir air, Bounds<WaterQuantity<Temperature>> temperature) {
        if (waters.isEmpty()) {
            return Optional.empty();
        }
        try {
            List<Double> all = new ArrayList<>();
            for (Water water : waters) {
                for (Water end : air.isTank()
                        ? List.of(water.with(temperature.low()), water.with(temperature.high()))
                        : List.of(water)) {
                    all.add(air.leastPH().applyAsDouble(end));
                    all.add(air.mostPH().applyAsDouble(end));
                }
            }
            double least = all.stream().min(Double::compare).orElseThrow();
            double most = all.stream().max(Double::compare).orElseThrow();
            return Optional.of(pH(least, (least + most) / 2, most));
        } catch (NoAnswerException | IllegalArgumentException noAnswer) { // such as a water too hot for the constants
            return Optional.empty();
        }
    }

    private static Bounds<WaterQuantity<Dimensionless>> pH(double least, double middle, double most) {
        return new Bounds<>(Parameter.PH.of(least), Parameter.PH.of(middle), Parameter.PH.of(most));
    }

    /** The fraction rises with pH and temperature. */
    private static Bounds<AmountConcentration> ammonia(
            Bounds<AmountConcentration> total,
            Bounds<WaterQuantity<Dimensionless>> pH,
            Bounds<WaterQuantity<Temperature>> temperature) {
        return new Bounds<>(
                unionised(total.low(), pH.low(), temperature.low()),
                unionised(total.value(), pH.value(), temperature.value()),
                unionised(total.high(), pH.high(), temperature.high()),
                total.openBelow(),
                total.openAbove());
    }

    private static AmountConcentration unionised(
            AmountConcentration total, WaterQuantity<Dimensionless> pH, WaterQuantity<Temperature> temperature) {
        return UnionisedAmmonia.concentration(total, Parameter.PH.number(pH), temperature);
    }

    <Q extends WaterQuantity<?>> Optional<Bounds<Q>> known(Parameter<Q> parameter) {
        return evidence.known(parameter);
    }
}
