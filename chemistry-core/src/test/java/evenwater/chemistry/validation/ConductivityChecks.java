package evenwater.chemistry.validation;

import evenwater.chemistry.kernel.Component;
import evenwater.chemistry.kernel.Given;
import evenwater.chemistry.kernel.LimitingConductivity;
import evenwater.chemistry.kernel.StandardMethods2510Kernel;
import evenwater.chemistry.testing.IonicSolution;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Conductivity computed from ions against measured solutions. */
final class ConductivityChecks {

    private static final String UNIT = "µS/cm";

    /** What a law may miss a measurement of a standard solution by; the measurement itself is good to 0.03 %. */
    private static final BigDecimal STANDARD = new BigDecimal("0.02");

    /** What a law may miss a measurement of a salt by. */
    private static final BigDecimal SALT = new BigDecimal("0.03");

    private ConductivityChecks() {}

    static Topic topic() {
        List<PublishedCheck> checks = new ArrayList<>();
        String[] standards = "0 772.92 10 1013.95 20 1273.03 25 1408.23 35 1687.79".split(" ", -1);
        for (int i = 0; i < standards.length; i += 2) {
            double celsius = Double.parseDouble(standards[i]);
            checks.add(new Result(
                            "kcl-" + standards[i],
                            "0.01 mol/kg of KCl at " + standards[i] + " °C",
                            UNIT,
                            IonicSolution.potassiumChloride(0.01, celsius))
                    .against(within(standards[i + 1], STANDARD), Source.PRATT_2001, Status.VERIFIED));
        }
        checks.add(new Result("kcl-molar", "0.01 mol/L of KCl at 25 °C", UNIT, salt("KCl", 0.01))
                .against(within("1412", STANDARD), Source.SM_2510, Status.FROM_MEMORY));
        checks.add(sodiumChloride("0.001", "123.68"));
        checks.add(sodiumChloride("0.01", "1184.5"));
        checks.add(sodiumChloride("0.1", "10669"));
        checks.add(new Result("kcl-salt", "0.001 eq/L of KCl", UNIT, salt("KCl", 0.001))
                .against(within("146.88", SALT), Source.CRC_CONDUCTIVITY, Status.FROM_MEMORY));
        checks.add(calciumChloride("0.01", "1203.0"));
        checks.add(calciumChloride("0.1", "10241"));
        checks.addAll(mixedWater());
        checks.add(teaspoon());
        return new Topic(
                "Conductivity: from the ions",
                "The law of Onsager and Fuoss for mixtures, on ions and pairs; a law is allowed 2 % of a standard and 3 % of a salt. At 25 °C "
                        + "where nothing else is said. The mixed water is the example of Standard Methods 2510 A, in mg/L: Ca 55, Mg 12, Na 28, "
                        + "K 3.2, HCO₃ 170, SO₄ 77, Cl 20.",
                checks);
    }

    private static Figure within(String digits, BigDecimal share) {
        BigDecimal value = new BigDecimal(digits);
        BigDecimal allowed = value.multiply(share).round(new MathContext(2, RoundingMode.DOWN));
        return Figure.within(digits, allowed.toPlainString());
    }

    private static PublishedCheck sodiumChloride(String equivalents, String measured) {
        return new Result(
                        "nacl-" + equivalents,
                        equivalents + " eq/L of NaCl",
                        UNIT,
                        salt("NaCl", Double.parseDouble(equivalents)))
                .against(within(measured, SALT), Source.CRC_CONDUCTIVITY, Status.VERIFIED);
    }

    private static PublishedCheck calciumChloride(String equivalents, String measured) {
        return new Result(
                        "cacl2-" + equivalents,
                        equivalents + " eq/L of CaCl₂",
                        UNIT,
                        salt("CaCl2", Double.parseDouble(equivalents)))
                .against(within(measured, SALT), Source.CRC_CONDUCTIVITY, Status.FROM_MEMORY);
    }

    private static double salt(String salt, double equivalents) {
        IonicSolution solution = IonicSolution.at(25).with(LimitingConductivity.CHLORIDE, equivalents);
        switch (salt) {
            case "NaCl" -> solution.with(Component.SODIUM, equivalents);
            case "KCl" -> solution.with(Component.POTASSIUM, equivalents);
            case "CaCl2" -> solution.with(Component.CALCIUM, equivalents / 2);
            default -> throw new IllegalArgumentException(salt);
        }
        return solution.solved(Given.ALKALINITY_AND_CARBON, 0, 0).conductivity();
    }

    /** The spoon holds 5.7 to 6.2 g, so the figure is open by 5 %. */
    private static PublishedCheck teaspoon() {
        double molesPerLitre = 6 / 58.44 / 3.785411784;
        return new Result(
                        "teaspoon",
                        "6 g of table salt in a US gallon, on a meter of factor 0.7",
                        "ppm",
                        0.7 * salt("NaCl", molesPerLitre))
                .against(Figure.within("2120", "106"), Source.METER_MAKERS, Status.COMMON_PRACTICE)
                .remarking("a level teaspoon holds 5.7 to 6.2 g");
    }

    private static List<PublishedCheck> mixedWater() {
        double[] millimoles = {55 / 40.078, 12 / 24.305, 28 / 22.990, 3.2 / 39.098, 170 / 61.016, 77 / 96.06, 20 / 35.45
        };
        double[] charge = {2, 2, 1, 1, -1, -2, -1};
        double[] limiting = {59.5, 53, 50.1, 73.5, 44.5, 80, 76.4};
        Result limit = new Result(
                "sm2510-k0",
                "the mixed water as if at infinite dilution",
                UNIT,
                StandardMethods2510Kernel.microsiemensPerCentimetreAtInfiniteDilution(7, millimoles, charge, limiting));
        Result estimate = new Result(
                "sm2510-k",
                "the mixed water by the formula of Standard Methods",
                UNIT,
                StandardMethods2510Kernel.microsiemensPerCentimetre(7, millimoles, charge, limiting));
        double bicarbonate = millimoles[4] / 1000;
        Result law = new Result(
                "sm2510-law",
                "the mixed water by the law",
                UNIT,
                IonicSolution.at(25)
                        .with(Component.CALCIUM, millimoles[0] / 1000)
                        .with(Component.MAGNESIUM, millimoles[1] / 1000)
                        .with(Component.SODIUM, millimoles[2] / 1000)
                        .with(Component.POTASSIUM, millimoles[3] / 1000)
                        .with(Component.SULFATE, millimoles[5] / 1000)
                        .with(LimitingConductivity.CHLORIDE, millimoles[6] / 1000)
                        .solved(Given.ALKALINITY_AND_CARBON, bicarbonate, bicarbonate)
                        .conductivity());
        return List.of(
                limit.printed("578", Source.SM_2510, Status.FROM_MEMORY),
                estimate.printed("476.5", Source.SM_2510, Status.FROM_MEMORY)
                        .differing(
                                "the example prints y = 0.908, its formula gives 0.9139",
                                new BigDecimal("578").multiply(new BigDecimal("0.908").pow(2))),
                estimate.computed("482.8"),
                law.against(within("476.5", STANDARD), Source.SM_2510, Status.FROM_MEMORY));
    }
}
