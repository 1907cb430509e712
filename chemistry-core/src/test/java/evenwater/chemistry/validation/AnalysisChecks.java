package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.analysis.Acceptance;
import evenwater.chemistry.analysis.AcceptanceCriteria;
import evenwater.chemistry.analysis.HardnessScheme;
import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.ReportOptions;
import evenwater.chemistry.analysis.ReportRow;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.water.IonBalance;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;

/** Criteria for a correct analysis, and who calls what hard. */
final class AnalysisChecks {

    /** Bounds are whole or halved numbers; this leaves room for what the library counts as on a bound, and for nothing else. */
    private static final String RESOLUTION = "0.000001";

    private AnalysisChecks() {}

    static Topic criteria() {
        MassConcentration solids = MassConcentration.of(300, MILLIGRAM_PER_LITRE);
        Conductivity conductivity = Conductivity.of(500, Conductivity.MICROSIEMENS_PER_CENTIMETRE);
        List<PublishedCheck> checks = new ArrayList<>(List.of(
                ionBalance(2, "meq/L", "0.2"),
                ionBalance(3, "meq/L", "0.2"),
                ionBalance(3.001, "%", "2"),
                ionBalance(10, "%", "2"),
                ionBalance(10.001, "%", "5"),
                ionBalance(800, "%", "5"),
                new Result(
                                "mixed-accepted",
                                "mixed water of Standard Methods 2510",
                                "%",
                                AcceptanceCriteria.ionBalance(
                                                WaterChecks.mixed().ionBalance())
                                        .value())
                        .against(Figure.range("-2", "2"), Source.SM_1030, Status.FROM_MEMORY)));
        checks.addAll(limits(
                "measured over calculated solids", AcceptanceCriteria.measuredSolids(solids, solids), "1.0", "1.2"));
        checks.addAll(limits(
                "calculated solids over conductivity",
                AcceptanceCriteria.solidsAgainstConductivity(solids, conductivity),
                "0.55",
                "0.7"));
        checks.addAll(limits(
                "100 × anions over conductivity",
                AcceptanceCriteria.anionsAgainstConductivity(balance(5), conductivity),
                "0.9",
                "1.1"));
        checks.addAll(limits(
                "100 × cations over conductivity",
                AcceptanceCriteria.cationsAgainstConductivity(balance(5), conductivity),
                "0.9",
                "1.1"));
        checks.addAll(ColoradoRiver.solidsOverConductivity());
        checks.add(new Result(
                        "conductivity-20-25",
                        "1000 µS/cm at 20 °C, taken to 25 °C",
                        "µS/cm",
                        LabReport.read(
                                        List.of(new ReportRow(1, "conductivity", "1000", "µS/cm at 20 °C", "")),
                                        ReportOptions.none())
                                .conductivity()
                                .orElseThrow()
                                .in(MICROSIEMENS_PER_CENTIMETRE))
                .against(Figure.within("1116", "0.5"), Source.ISO_7888, Status.FROM_MEMORY));
        return new Topic(
                "Correctness of an analysis", "Limits of the criteria, and measured waters that meet them.", checks);
    }

    private static IonBalance balance(double milliequivalentsPerLitre) {
        EquivalentConcentration side = EquivalentConcentration.of(milliequivalentsPerLitre, MILLIEQUIVALENT_PER_LITRE);
        return new IonBalance(side, side);
    }

    private static PublishedCheck ionBalance(double anions, String unit, String limit) {
        Acceptance acceptance = AcceptanceCriteria.ionBalance(balance(anions));
        if (!acceptance.unit().equals(unit)) {
            throw new IllegalStateException("limit at " + anions + " meq/L is in " + acceptance.unit());
        }
        return new Result(
                        "ion-balance-" + anions,
                        "ion balance, largest difference at " + anions + " meq/L of anions",
                        unit,
                        acceptance.high())
                .against(Figure.exact(limit), Source.SM_1030, Status.FROM_MEMORY);
    }

    private static List<PublishedCheck> limits(String what, Acceptance acceptance, String low, String high) {
        return List.of(
                new Result("least-" + what, what + ", least", acceptance.unit(), acceptance.low())
                        .against(Figure.exact(low), Source.SM_1030, Status.FROM_MEMORY),
                new Result("most-" + what, what + ", most", acceptance.unit(), acceptance.high())
                        .against(Figure.exact(high), Source.SM_1030, Status.FROM_MEMORY));
    }

    static Topic classes() {
        Unit<Hardness> milligrams = Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE;
        List<PublishedCheck> checks = new ArrayList<>();
        checks.addAll(bounds(
                HardnessScheme.USGS,
                milligrams,
                Source.USGS_WSP_1812,
                Status.VERIFIED,
                "soft 60 moderately hard 120 hard 180 very hard"));
        checks.addAll(bounds(
                HardnessScheme.WHO,
                milligrams,
                Source.WHO_2011,
                Status.VERIFIED,
                "soft 60 moderately hard 120 hard 180 very hard"));
        checks.addAll(bounds(
                HardnessScheme.SAWYER_AND_MCCARTY,
                milligrams,
                Source.SAWYER_MCCARTY,
                Status.VERIFIED,
                "soft 75 moderately hard 150 hard 300 very hard"));
        checks.addAll(bounds(
                HardnessScheme.SOFTENING_TRADE,
                Hardness.GRAIN_PER_US_GALLON,
                Source.ASAE_S339,
                Status.VERIFIED,
                "soft 1.0 slightly hard 3.5 moderately hard 7.0 hard 10.5 very hard"));
        checks.addAll(bounds(
                HardnessScheme.GERMANY,
                Hardness.MILLIMOLE_PER_LITRE,
                Source.WRMG_2007,
                Status.FROM_MEMORY,
                "soft 1.5 medium 2.5 hard"));
        checks.addAll(bounds(
                HardnessScheme.AQUARISTS,
                Hardness.GERMAN_DEGREE,
                Source.AQUARISTS,
                Status.COMMON_PRACTICE,
                "very soft 4 soft 8 medium 12 fairly hard 18 hard 30 very hard"));
        return new Topic(
                "Classes of hardness",
                "Where one class ends and the next begins, found by asking for the class of ever closer values. A value within a "
                        + "billionth of a bound counts as on it, in whatever unit it was stated.",
                checks);
    }

    /** Reads names of classes with the bounds between them. */
    private static List<PublishedCheck> bounds(
            HardnessScheme scheme, Unit<Hardness> unit, Source source, Status status, String classes) {
        String[] names = classes.split(" [0-9.]+ ", -1);
        String[] published = classes.replaceAll("[a-z ]+", " ").strip().split(" ", -1);
        List<PublishedCheck> checks = new ArrayList<>();
        for (int i = 0; i < published.length; i++) {
            double end = end(scheme, names[i], names[i + 1], unit, Double.parseDouble(published[i]));
            checks.add(new Result("class-" + scheme, names[i] + " to " + names[i + 1], unit.toString(), end)
                    .against(Figure.within(published[i], RESOLUTION), source, status));
        }
        return checks;
    }

    /** Halves the interval around the published bound until the class changes between two neighbouring doubles. */
    private static double end(HardnessScheme scheme, String softer, String harder, Unit<Hardness> unit, double near) {
        double low = near * 0.9;
        double high = near * 1.1;
        if (!scheme.classOf(Hardness.of(low, unit)).equals(softer)
                || !scheme.classOf(Hardness.of(high, unit)).equals(harder)) {
            throw new IllegalStateException(
                    scheme + " has no bound from " + softer + " to " + harder + " near " + near);
        }
        while (Math.nextUp(low) < high) {
            double middle = low + (high - low) / 2;
            if (scheme.classOf(Hardness.of(middle, unit)).equals(softer)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
