package evenwater.chemistry.validation;

import evenwater.chemistry.kernel.SaturationFormsKernel;
import java.math.BigDecimal;
import java.util.List;

/** Saturation indices that need no solver, each beside the examples of its own form. */
final class SaturationFormChecks {

    private static final double SOLIDS = 400;
    private static final double CALCIUM = 240;
    private static final double ALKALINITY = 196;
    private static final double PH = 7.5;

    private SaturationFormChecks() {}

    static Topic shortForm() {
        double saturation = saturationPH(25);
        double hot = saturationPH(82);
        return new Topic(
                "Saturation index, textbook short form",
                "One example: pH 7.5, dissolved solids 400 mg/L, calcium hardness 240 and alkalinity 196 mg/L as CaCO₃. A formula by activities "
                        + "gives another index for the same water.",
                List.of(
                        carrier("A", "A, dissolved solids", SaturationFormsKernel.shortFormSolidsTerm(SOLIDS), "0.16"),
                        carrier("B", "B, 25 °C", SaturationFormsKernel.shortFormTemperatureTerm(298.15), "2.09"),
                        carrier("B-hot", "B, 82 °C", SaturationFormsKernel.shortFormTemperatureTerm(355.15), "1.09"),
                        carrier("C", "C, calcium", SaturationFormsKernel.calciumFactor(CALCIUM), "1.98"),
                        carrier("D", "D, alkalinity", SaturationFormsKernel.alkalinityFactor(ALKALINITY), "2.29"),
                        carrier("pHs", "pH of saturation, 25 °C", saturation, "7.28")
                                .differing(
                                        "the example adds the rounded terms: 9.3 + 0.16 + 2.09 − 1.98 − 2.29",
                                        new BigDecimal("7.28")),
                        carrier("pHs-rounded", "pH of saturation, 25 °C", saturation, "7.3"),
                        carrier("index", "pH − pHs, 25 °C", PH - saturation, "0.2"),
                        carrier("ryznar", "2 pHs − pH, 25 °C", 2 * saturation - PH, "7.05"),
                        carrier("pHs-hot", "pH of saturation, 82 °C", hot, "6.3"),
                        carrier("index-hot", "pH − pHs, 82 °C", PH - hot, "1.2")));
    }

    private static double saturationPH(double celsius) {
        return SaturationFormsKernel.shortFormSaturationPH(SOLIDS, celsius + 273.15, CALCIUM, ALKALINITY);
    }

    private static PublishedCheck carrier(String id, String what, double ours, String published) {
        return new Result("short-form-" + id, what, "1", ours)
                .printed(published, Source.CARRIER_1965, Status.FROM_MEMORY);
    }

    static Topic factorTable() {
        return new Topic(
                "Saturation index, factor table of pools",
                "pH + TF + CF + AF − 12.1, with factors for temperature, calcium hardness and alkalinity in mg/L as CaCO₃. The examples take "
                        + "factors of one decimal.",
                List.of(
                        pool("AF-75", "AF of 75", SaturationFormsKernel.alkalinityFactor(75), "1.9"),
                        pool("CF-300", "CF of 300", SaturationFormsKernel.calciumFactor(300), "2.1"),
                        pool("TF-84", "TF at 84 °F", SaturationFormsKernel.factorTableTemperature(84), "0.7"),
                        index(7.6, 84, 300, 75, "0.2"),
                        pool("AF-50", "AF of 50", SaturationFormsKernel.alkalinityFactor(50), "1.7"),
                        pool("CF-200", "CF of 200", SaturationFormsKernel.calciumFactor(200), "1.9"),
                        pool("TF-76", "TF at 76 °F", SaturationFormsKernel.factorTableTemperature(76), "0.6"),
                        index(7.0, 76, 200, 50, "-0.9"),
                        pool("AF-150", "AF of 150", SaturationFormsKernel.alkalinityFactor(150), "2.2"),
                        pool("CF-400", "CF of 400", SaturationFormsKernel.calciumFactor(400), "2.2"),
                        pool("TF-94", "TF at 94 °F", SaturationFormsKernel.factorTableTemperature(94), "0.8"),
                        index(8.0, 94, 400, 150, "1.1")));
    }

    private static PublishedCheck index(
            double pH, double fahrenheit, double calcium, double alkalinity, String published) {
        String water = "pH " + pH + ", " + (int) fahrenheit + " °F, calcium " + (int) calcium + ", alkalinity "
                + (int) alkalinity;
        return pool(
                water, water, SaturationFormsKernel.factorTableIndex(pH, fahrenheit, calcium, alkalinity), published);
    }

    private static PublishedCheck pool(String id, String what, double ours, String published) {
        return new Result("factor-table-" + id, what, "1", ours)
                .printed(published, Source.POOL_OPERATORS, Status.VERIFIED);
    }
}
