package evenwater.chemistry.testing;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.mmol;

import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.List;
import java.util.Map;

/** The twelve waters of {@code reference/computed-waters.csv}, as waters of the library. */
public final class ComputedWaters {

    private static final Map<String, Ion> IONS = Map.of(
            "Ca [mmol/L]", Ion.CALCIUM,
            "Mg [mmol/L]", Ion.MAGNESIUM,
            "Na [mmol/L]", Ion.SODIUM,
            "K [mmol/L]", Ion.POTASSIUM,
            "Cl [mmol/L]", Ion.CHLORIDE,
            "SO4 [mmol/L]", Ion.SULFATE,
            "NO3 [mmol/L]", Ion.NITRATE);

    private ComputedWaters() {}

    /** Rows that have a figure in a column. */
    public static List<Map<String, String>> with(String column) {
        return Csv.rows("computed-waters.csv").stream()
                .filter(row -> !row.get(column).isEmpty())
                .toList();
    }

    /** Ions, alkalinity, temperature and measured pH of a row. */
    public static Water water(Map<String, String> row) {
        WaterBuilder builder = Water.builder();
        IONS.forEach((column, ion) -> builder.total(ion, mmol(number(row, column))));
        return builder.alkalinity(alkalinity(number(row, "alkalinity [meq/L]")))
                .temperature(WaterUnits.temperature(number(row, "temperature [C]"), WaterUnits.CELSIUS))
                .measuredPH(number(row, "pH"))
                .build();
    }

    public static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
