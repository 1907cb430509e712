package evenwater.chemistry.exchange;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import javax.measure.quantity.Dimensionless;

/** The scales of the data file {@code selectivities.csv}, read between their columns. */
final class SelectivityTable {

    private static final String FILE = "selectivities.csv";
    /** Percent of divinylbenzene of the columns. */
    private static final double[] COLUMNS = {4, 8, 12, 16};

    private static final int FIRST_COLUMN = 2;

    /** By table and ion: value over cross-linking in percent. */
    private static final Map<String, Map<Ion, NavigableMap<Double, Double>>> TABLES = read();

    private SelectivityTable() {}

    private static Map<String, Map<Ion, NavigableMap<Double, Double>>> read() {
        Map<String, Map<Ion, NavigableMap<Double, Double>>> tables = new LinkedHashMap<>();
        for (String line : lines()) {
            if (!line.startsWith("#")) {
                String[] f = line.split("; ?", -1);
                NavigableMap<Double, Double> row = new TreeMap<>();
                for (int i = 0; i < COLUMNS.length; i++) {
                    if (!f[FIRST_COLUMN + i].isBlank()) {
                        row.put(COLUMNS[i], Double.valueOf(f[FIRST_COLUMN + i]));
                    }
                }
                tables.computeIfAbsent(f[0], name -> new LinkedHashMap<>()).put(Ion.parse(f[1]), row);
            }
        }
        return tables;
    }

    private static List<String> lines() {
        try (InputStream in = SelectivityTable.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is missing beside " + SelectivityTable.class.getName());
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The values of a table at a cross-linking: linear between its columns. */
    static Map<Ion, Double> at(String table, WaterQuantity<Dimensionless> crossLinking) {
        double percent = crossLinking.in(WaterUnits.PERCENT);
        if (!(percent >= COLUMNS[0] && percent <= COLUMNS[COLUMNS.length - 1])) {
            throw new IllegalArgumentException(
                    "cross-linking must be from 4 % to 16 % of divinylbenzene, but was " + crossLinking);
        }
        Map<Ion, Double> values = new LinkedHashMap<>();
        TABLES.getOrDefault(table, Map.of()).forEach((ion, row) -> values.put(ion, Interpolation.linear(row, percent)));
        return values;
    }
}
