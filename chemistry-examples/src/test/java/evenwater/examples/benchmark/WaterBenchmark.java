package evenwater.examples.benchmark;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.ReportOptions;
import evenwater.chemistry.analysis.ReportRow;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Ledger;
import evenwater.chemistry.treatment.ReverseOsmosis;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.treatment.Treatment;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What treating and blending a water of twelve ions costs, and reading the report that it comes from. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
@Fork(
        value = 2,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m", "-XX:+AlwaysPreTouch"})
public class WaterBenchmark {

    /** Fifteen rows of an invented well: two below a limit, one that no water is made of. */
    private static final String REPORT = """
            hardness,22,gr/gal,CaCO3
            calcium,104,mg/L,Ca
            alkalinity,14.5,°dH,
            pH,7.6,,
            conductivity,720,µS/cm,
            sodium,<2,mg/L,
            potassium,2.1,mg/L,K
            chloride,32,mg/L,Cl
            sulfate,49,mg/L,SO4
            nitrate,4.1,mg/L,N
            iron,0.05,mg/L,Fe
            silica,14,mg/L,SiO2
            fluoride,<0.1,mg/L,F
            temperature,12,°C,
            turbidity,0.3,NTU,
            """;

    private final Water well = Water.builder()
            .total(Ion.CALCIUM, millimoles(2.6))
            .total(Ion.MAGNESIUM, millimoles(1.1))
            .total(Ion.SODIUM, millimoles(0.4))
            .total(Ion.POTASSIUM, millimoles(0.05))
            .total(Ion.AMMONIUM, millimoles(0.01))
            .total(Ion.STRONTIUM, millimoles(0.004))
            .total(Ion.IRON_II, millimoles(0.003))
            .total(Ion.MANGANESE_II, millimoles(0.002))
            .total(Ion.CHLORIDE, millimoles(0.9))
            .total(Ion.SULFATE, millimoles(0.5))
            .total(Ion.NITRATE, millimoles(0.3))
            .total(Ion.FLUORIDE, millimoles(0.01))
            .alkalinity(Alkalinity.of(5.2, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
            .carbon(millimoles(5.6))
            .build();

    private final Treatment softener = Softener.withSodium();
    private final Treatment softenerWithBypass =
            Softener.withSodium().bypassFor(Hardness.of(6, Hardness.GERMAN_DEGREE));
    private final Water soft = softener.treat(well);
    private final MassConcentration gypsum = MassConcentration.of(100, MassConcentration.MILLIGRAM_PER_LITRE);
    private final Change dose = Change.dissolving(Compound.CALCIUM_SULFATE_DIHYDRATE, gypsum);
    private final Change newIon = Change.dissolving(Compound.POTASSIUM_BROMIDE, gypsum);
    private final Train train = Train.of(
            softener,
            ReverseOsmosis.rejecting(0.95, 0.98),
            Dosing.of(
                    Compound.CALCIUM_SULFATE_DIHYDRATE,
                    WaterUnits.mass(4, WaterUnits.GRAM),
                    WaterUnits.volume(40, WaterUnits.LITRE)));
    private final List<ReportRow> rows = rows();
    private final LabReport report = LabReport.read(rows, ReportOptions.none());

    private static AmountConcentration millimoles(double perLitre) {
        return AmountConcentration.of(perLitre, MILLIMOLE_PER_LITRE);
    }

    private static List<ReportRow> rows() {
        List<ReportRow> rows = new ArrayList<>();
        for (String line : REPORT.lines().toList()) {
            String[] cells = line.split(",", -1);
            rows.add(new ReportRow(rows.size() + 1, cells[0], cells[1], cells[2], cells[3]));
        }
        return rows;
    }

    /** Calcium and its like out, sodium in. */
    @Benchmark
    public Water soften() {
        return softener.treat(well);
    }

    /** The same, with so much raw water past it that 6 °dH are reached. */
    @Benchmark
    public Water softenWithBypass() {
        return softenerWithBypass.treat(well);
    }

    /** A blend of two waters with the same set of ions. */
    @Benchmark
    public Water mix() {
        return soft.mixedWith(well, 0.3);
    }

    /** A change whose ions the water has. */
    @Benchmark
    public Water plusChange() {
        return well.plus(dose);
    }

    /** A change that brings an ion that the water has not. */
    @Benchmark
    public Water plusChangeWithNewIon() {
        return well.plus(newIon);
    }

    /** Making a change from a dose. */
    @Benchmark
    public Change dissolve() {
        return Change.dissolving(Compound.CALCIUM_SULFATE_DIHYDRATE, gypsum);
    }

    /** Fifteen rows of text to readings. */
    @Benchmark
    public LabReport readReport() {
        return LabReport.read(rows, ReportOptions.none());
    }

    /** Readings to a water with its corners, assumptions and findings. */
    @Benchmark
    public Interpretation interpretReport() {
        return report.interpret();
    }

    /** Softener, membrane and dosing. */
    @Benchmark
    public Water trainOfThree() {
        return train.treat(well);
    }

    /** The same with its ledger. */
    @Benchmark
    public Ledger trainOfThreeWithLedger() {
        return train.run(well);
    }
}
