package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.analysis.AcceptanceCriteria;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/** Eight measured analyses of one river, with their weighed residues and conductivities. */
final class ColoradoRiver {

    private static final List<Ion> IONS = List.of(
            Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM, Ion.CHLORIDE, Ion.SULFATE, Ion.NITRATE, Ion.SILICA);

    /** Date, the ions above in mg/L, alkalinity in meq/L, conductivity at 25 °C in µS/cm, residue at 180 °C in mg/L. */
    private static final String ANALYSES = """
            1980-12-03 61 23 79 4.8 65 200 1.1952 7.7 2.5978 863 553
            1982-07-21 70 27 96 4.1 76 250 2.6117 7.6 2.7576 983 627
            1983-05-18 69 25 83 3.6 68 230 1.6821 7.6 2.8376 922 600
            1983-10-06 66 20 76 3.5 53 210 1.7264 7.9 2.7776 798 555
            1985-02-07 61 22 62 3 44 180 1.6379 9 2.5978 716 439
            1989-10-07 64 23 80 3.5 69 220 1.4165 8 2.8775 894 564
            1989-10-09 68 25 100 3.7 110 220 1.3723 8.2 3.1573 1030 622
            2017-02-22 69.3 20.9 72.7 3.26 68.6 171 1.1332 0 2.8176 835 519
            """;

    private ColoradoRiver() {}

    static PublishedCheck meanOfWeighedOverCalculated() {
        DoubleSummaryStatistics ratios = ANALYSES.lines()
                .mapToDouble(ColoradoRiver::weighedOverCalculated)
                .summaryStatistics();
        return new Result(
                        "residue-river",
                        "weighed over calculated residue, mean of eight samples of USGS 09402500",
                        "",
                        ratios.getAverage())
                .against(Figure.range("1.0", "1.2"), Source.SM_1030, Status.FROM_MEMORY)
                .remarking("singly " + rounded(ratios.getMin()) + " to " + rounded(ratios.getMax())
                        + ": a sum of ions is good to about 2 %, and a weighed residue holds some water");
    }

    private static String rounded(double ratio) {
        return new BigDecimal(ratio).setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** Calculated residue over conductivity, one check for each analysis. */
    static List<PublishedCheck> solidsOverConductivity() {
        return ANALYSES.lines().map(ColoradoRiver::overConductivity).toList();
    }

    private static double weighedOverCalculated(String line) {
        String[] fields = line.split(" ", -1);
        MassConcentration weighed = MassConcentration.of(number(fields, 11), MILLIGRAM_PER_LITRE);
        return AcceptanceCriteria.measuredSolids(weighed, water(fields).residueAt180Celsius())
                .value();
    }

    private static PublishedCheck overConductivity(String line) {
        String[] fields = line.split(" ", -1);
        Conductivity measured = Conductivity.of(number(fields, 10), Conductivity.MICROSIEMENS_PER_CENTIMETRE);
        return new Result(
                        "river-" + fields[0],
                        "solids over conductivity, USGS 09402500 of " + fields[0],
                        "mg/L per µS/cm",
                        AcceptanceCriteria.solidsAgainstConductivity(
                                        water(fields).residueAt180Celsius(), measured)
                                .value())
                .against(Figure.range("0.55", "0.7"), Source.SM_1030, Status.FROM_MEMORY);
    }

    private static Water water(String[] fields) {
        WaterBuilder builder =
                Water.builder().alkalinity(Alkalinity.of(number(fields, 9), Alkalinity.MILLIEQUIVALENT_PER_LITRE));
        for (int i = 0; i < IONS.size(); i++) {
            Ion ion = IONS.get(i);
            builder.total(ion, AmountConcentration.of(number(fields, i + 1), ion.milligramPerLitre()));
        }
        return builder.build();
    }

    private static double number(String[] fields, int i) {
        return Double.parseDouble(fields[i]);
    }
}
