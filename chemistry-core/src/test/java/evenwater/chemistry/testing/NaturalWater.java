package evenwater.chemistry.testing;

import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A river, lake or well of the table {@code real-waters-open.csv} with its measured conductivity.
 *
 * @param id its name in the table
 * @param water ions, alkalinity, pH and temperature as measured
 * @param measuredMicrosiemens conductivity at 25 °C in µS/cm
 */
public record NaturalWater(String id, Water water, double measuredMicrosiemens) {

    private static final Map<String, Ion> COLUMNS = new LinkedHashMap<>();

    static {
        COLUMNS.put("Ca", Ion.CALCIUM);
        COLUMNS.put("Mg", Ion.MAGNESIUM);
        COLUMNS.put("Na", Ion.SODIUM);
        COLUMNS.put("K", Ion.POTASSIUM);
        COLUMNS.put("Cl", Ion.CHLORIDE);
        COLUMNS.put("SO4", Ion.SULFATE);
        COLUMNS.put("NO3", Ion.NITRATE);
        COLUMNS.put("SiO2", Ion.SILICA);
    }

    public static List<NaturalWater> all() {
        return Csv.rows("real-waters-open.csv").stream().map(NaturalWater::of).toList();
    }

    private static NaturalWater of(Map<String, String> row) {
        WaterBuilder builder = Water.builder();
        COLUMNS.forEach((name, ion) -> {
            String text = row.get(name + "_mg_L");
            if (!text.isEmpty()) {
                builder.total(ion, AmountConcentration.of(Double.parseDouble(text), ion.milligramPerLitre()));
            }
        });
        builder.alkalinity(Amounts.alkalinity(Double.parseDouble(row.get("alkalinity_meq_L"))));
        builder.measuredPH(Double.parseDouble(row.get("pH")));
        String celsius = row.get("temperature_C");
        if (!celsius.isEmpty()) {
            builder.temperature(Amounts.celsius(Double.parseDouble(celsius)));
        }
        return new NaturalWater(row.get("id"), builder.build(), Double.parseDouble(row.get("EC25_uS_cm")));
    }

    /** Calculated over measured conductivity less 1. */
    public double deviation() {
        return over(CalculatedConductivity.at25Celsius(water));
    }

    /** The same for the estimate of Standard Methods. */
    public double deviationOfStandardMethods() {
        return over(CalculatedConductivity.byStandardMethods2510(water));
    }

    private double over(Conductivity calculated) {
        return calculated.in(Conductivity.MICROSIEMENS_PER_CENTIMETRE) / measuredMicrosiemens - 1;
    }

    /** Sulfate among the equivalents of the anions. */
    public double sulfateShare() {
        double sulfate = 2 * Amounts.of(Ion.SULFATE, water);
        return sulfate
                / (sulfate
                        + Amounts.of(Ion.CHLORIDE, water)
                        + Amounts.of(Ion.NITRATE, water)
                        + Amounts.alkalinityOf(water));
    }
}
