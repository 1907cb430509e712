package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.Conductivity.MILLISIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.instrument.ConductivityReading;
import evenwater.chemistry.instrument.FactorMeter;
import evenwater.chemistry.instrument.ReferenceSolution;
import evenwater.chemistry.instrument.TemperatureCompensation;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Temperature;

/** What meters do with a conductivity: take it to 25 °C, and call it dissolved solids. */
final class InstrumentChecks {

    private InstrumentChecks() {}

    static Topic temperature() {
        List<PublishedCheck> checks = new ArrayList<>();
        String[] factors = "0 1.918 5 1.643 10 1.428 15 1.256 20 1.116 30 0.903 35 0.822".split(" ", -1);
        for (int i = 0; i < factors.length; i += 2) {
            checks.add(naturalWaterFactor(Double.parseDouble(factors[i]))
                    .printed(factors[i + 1], Source.ISO_7888, Status.VERIFIED));
        }
        checks.add(naturalWaterFactor(22.5)
                .against(Figure.range("1.044", "1.067"), Source.ISO_7888, Status.VERIFIED)
                .remarking("between the figures of 23 and 22 °C"));
        checks.add(naturalWaterFactor(22.5)
                .against(Figure.within("1.0555", "0.002"), Source.ARITHMETIC, Status.COMPUTED)
                .remarking("the middle of the two"));
        checks.add(new Result(
                        "reading-15-25",
                        "448 µS/cm at 15 °C, taken to 25 °C",
                        "µS/cm",
                        uncompensated(448, 15, TemperatureCompensation.ISO_7888))
                .computed("562.7"));
        checks.add(new Result(
                        "reading-20-25",
                        "1000 µS/cm compensated to 20 °C, taken to 25 °C",
                        "µS/cm",
                        ConductivityReading.compensatedTo20Celsius(microsiemens(1000))
                                .at25Celsius(TemperatureCompensation.ISO_7888)
                                .in(MICROSIEMENS_PER_CENTIMETRE))
                .printed("1116", Source.ISO_7888, Status.VERIFIED));
        checks.add(new Result(
                        "linear-15-25",
                        "1000 µS/cm at 15 °C, taken to 25 °C with 1.91 %/K",
                        "µS/cm",
                        uncompensated(1000, 15, TemperatureCompensation.STANDARD_METHODS_2510))
                .computed("1236.09"));
        checks.add(new Result(
                        "calibration-15-25",
                        "0.01 mol/kg of KCl, 1141.45 µS/cm at 15 °C, taken to 25 °C with its 1.89 %/K",
                        "µS/cm",
                        uncompensated(1141.45, 15, TemperatureCompensation.linear(0.0189)))
                .against(Figure.within("1408.23", "0.9"), Source.PRATT_2001, Status.VERIFIED)
                .remarking("the coefficient is rounded to 0.005 %/K"));
        return new Topic(
                "Conductivity: temperature",
                "Factors that take the conductivity of a natural water to 25 °C, and linear laws. Whole degrees of the table of ISO 7888 "
                        + "are all reproduced to the last digit; a few stand here.",
                checks);
    }

    private static Result naturalWaterFactor(double celsius) {
        WaterQuantity<Temperature> temperature = WaterUnits.temperature(celsius, WaterUnits.CELSIUS);
        return new Result(
                "f25-" + celsius,
                "factor f25 at " + temperature,
                "",
                TemperatureCompensation.ISO_7888.factor(temperature));
    }

    private static double uncompensated(double microsiemens, double celsius, TemperatureCompensation law) {
        return ConductivityReading.uncompensated(
                        microsiemens(microsiemens), WaterUnits.temperature(celsius, WaterUnits.CELSIUS))
                .at25Celsius(law)
                .in(MICROSIEMENS_PER_CENTIMETRE);
    }

    static Topic solids() {
        Result sodium = factor(Compound.SODIUM_CHLORIDE, 1184.5);
        Result potassium = factor(Compound.POTASSIUM_CHLORIDE, 1413);
        return new Topic(
                "Conductivity: dissolved solids by a factor",
                "What a handheld meter shows in mg/L, printed as ppm by its makers: a conductivity times a factor. The factor of a "
                        + "solution is its weighed mg/L over its measured conductivity.",
                List.of(
                        sodium.computed("0.493"),
                        sodium.against(Figure.range("0.47", "0.50"), Source.METER_MAKERS, Status.COMMON_PRACTICE),
                        potassium.computed("0.528"),
                        potassium.against(Figure.range("0.50", "0.57"), Source.METER_MAKERS, Status.COMMON_PRACTICE),
                        new Result(
                                        "meter-sodium-chloride",
                                        "0.01 mol/L of sodium chloride, 1184.5 µS/cm, by the factor 0.493",
                                        "mg/L",
                                        FactorMeter.of(0.493)
                                                .reading(microsiemens(1184.5))
                                                .in(MILLIGRAM_PER_LITRE))
                                .against(Figure.within("584.4", "0.6"), Source.ARITHMETIC, Status.COMPUTED)
                                .remarking("the factor is rounded to three decimals"),
                        scale("500", FactorMeter.SCALE_500)
                                .against(Figure.exact("500"), Source.METER_MAKERS, Status.COMMON_PRACTICE),
                        scale("640", FactorMeter.SCALE_640)
                                .against(Figure.exact("640"), Source.USDA_60, Status.FROM_MEMORY),
                        scale("700", FactorMeter.SCALE_700)
                                .against(Figure.exact("700"), Source.METER_MAKERS, Status.COMMON_PRACTICE),
                        new Result(
                                        "mixture-442-sodium",
                                        "sodium in 1000 mg/L of the mixture called 442",
                                        "mg/L",
                                        sodiumIn442())
                                .computed("317.6")));
    }

    /** mg/L for each µS/cm of a solution with 0.01 mol/L of a salt. */
    private static Result factor(Compound salt, double microsiemens) {
        double milligrams = 10 * salt.molarMass().in(MolarMass.GRAM_PER_MOLE);
        return new Result(
                "factor-" + salt.name(),
                "0.01 mol/L of " + salt.name() + " over its " + microsiemens(microsiemens),
                "mg/L per µS/cm",
                milligrams / microsiemens);
    }

    private static Result scale(String name, FactorMeter meter) {
        return new Result(
                "meter-scale",
                "reading of the " + name + " scale at 1 mS/cm",
                "mg/L",
                meter.reading(Conductivity.of(1, MILLISIEMENS_PER_CENTIMETRE)).in(MILLIGRAM_PER_LITRE));
    }

    private static double sodiumIn442() {
        return ReferenceSolution.SULFATE_BICARBONATE_CHLORIDE
                .water(MassConcentration.of(1000, MILLIGRAM_PER_LITRE))
                .total(Ion.SODIUM)
                .in(Ion.SODIUM.milligramPerLitre());
    }

    private static Conductivity microsiemens(double value) {
        return Conductivity.of(value, MICROSIEMENS_PER_CENTIMETRE);
    }
}
