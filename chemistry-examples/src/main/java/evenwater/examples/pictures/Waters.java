package evenwater.examples.pictures;

import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.ReportOptions;
import evenwater.chemistry.analysis.ReportRow;
import evenwater.chemistry.water.Water;
import java.util.List;

/** Waters of our own invention. */
final class Waters {

    private Waters() {}

    /** The hard well of the bundled household, by the rows of its report that count. */
    static Water larchLane() {
        return water(List.of(
                new ReportRow(1, "hardness", "22", "gr/gal", "CaCO3"),
                new ReportRow(2, "calcium", "104", "mg/L", "Ca"),
                new ReportRow(3, "alkalinity", "14.5", "°dH", ""),
                new ReportRow(4, "pH", "7.6", "", ""),
                new ReportRow(5, "sodium", "<2", "mg/L", ""),
                new ReportRow(6, "potassium", "2.1", "mg/L", "K"),
                new ReportRow(7, "chloride", "32", "mg/L", "Cl"),
                new ReportRow(8, "sulfate", "49", "mg/L", "SO4"),
                new ReportRow(9, "nitrate", "4.1", "mg/L", "N"),
                new ReportRow(10, "iron(II)", "0.05", "mg/L", "Fe"),
                new ReportRow(11, "temperature", "12", "°C", "")));
    }

    /** A hard tap water with some sodium of its own. */
    static Water tap() {
        return water(List.of(
                new ReportRow(1, "calcium", "96", "mg/L", "Ca"),
                new ReportRow(2, "magnesium", "24", "mg/L", "Mg"),
                new ReportRow(3, "sodium", "14", "mg/L", ""),
                new ReportRow(4, "potassium", "3", "mg/L", "K"),
                new ReportRow(5, "alkalinity", "13", "°dH", ""),
                new ReportRow(6, "chloride", "38", "mg/L", "Cl"),
                new ReportRow(7, "sulfate", "56", "mg/L", "SO4"),
                new ReportRow(8, "nitrate", "11", "mg/L", "NO3"),
                new ReportRow(9, "pH", "7.5", "", ""),
                new ReportRow(10, "temperature", "14", "°C", "")));
    }

    private static Water water(List<ReportRow> rows) {
        return LabReport.read(rows, ReportOptions.none()).interpret().water();
    }
}
