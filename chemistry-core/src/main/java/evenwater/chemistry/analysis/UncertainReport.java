package evenwater.chemistry.analysis;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.uncertainty.Draw;
import evenwater.chemistry.uncertainty.Uncertain;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;

/**
 * A report whose readings are inputs with an uncertainty, so that whatever follows from its water can be propagated.
 *
 * <pre>{@code
 * UncertainReport report = LabReport.read(rows, options).uncertain();
 * MonteCarlo.seeded(42).propagate(report.inputs(), draw -> sodiumOf(report.drawn(draw).interpret().water()));
 * }</pre>
 *
 * <p><b>What is drawn.</b> Each reading on its own: a number with a standard uncertainty is normal, an interval such as the last drop of a kit
 * or anything below a detection limit is rectangular, and a number without an uncertainty is exact. What cannot be less than 0 is cut off
 * there ({@link Uncertain#notBelow}), a pH at 0 and 14, a temperature at 0 and 100 °C; an alkalinity may be negative. What was assumed for
 * want of a reading, such as calcium to magnesium, stays as assumed: {@link Interpretation#bounds} has its range.
 *
 * <p><b>Readings that determine each other.</b> Each draw is interpreted as a report of its own. Of hardness, calcium and magnesium, all
 * three given, hardness is compared only; of hardness and one of them the other is the rest. Where the draw of calcium is more than that of
 * the hardness, magnesium is 0 in that draw, however much more it is, and a finding of its interpretation says so: that both were drawn apart
 * is no contradiction, which the report itself is searched for beforehand. So a magnesium below its own uncertainty comes out too high
 * on the average, by up to 0.4 u where there is none, and the hardness with it, which is then that of the calcium.
 *
 * <p>Immutable and thread-safe.
 */
public final class UncertainReport {

    /** As {@link RowLimits#isLiquid}, with the same allowance for a temperature that was converted. */
    private static final double LEAST_KELVIN = 273.15 - 1e-9;

    private static final double MOST_KELVIN = 373.15 + 1e-9;

    private final LabReport report;
    private final Map<Entry.Key, Uncertain<?>> uncertain = new LinkedHashMap<>();

    UncertainReport(LabReport report) {
        this.report = report;
        report.entries().forEach((key, entry) -> {
            if (entry.isInterval() || Objects.requireNonNullElse(entry.uncertainty(), 0.0) > 0) {
                uncertain.put(key, input(entry));
            }
        });
    }

    /**
     * Returns the readings that have an uncertainty, by name: {@code hardness}, {@code sodium}, {@code pH}.
     *
     * @return in the order of the report, hardness and ions in mmol/L, alkalinity in meq/L, temperature in K; possibly empty
     */
    public List<Uncertain<?>> inputs() {
        return List.copyOf(uncertain.values());
    }

    /**
     * Returns the report with the numbers of a draw.
     *
     * @param draw one that was made with {@link #inputs}, and possibly others
     * @return a report without intervals of readings; its texts show the readings as they were stated
     * @throws IllegalArgumentException if an input was not declared
     */
    public LabReport drawn(Draw draw) {
        Objects.requireNonNull(draw, "draw");
        Map<Entry.Key, Entry> numbers = new LinkedHashMap<>(report.entries());
        uncertain.forEach(
                (key, input) -> numbers.computeIfPresent(key, (same, entry) -> entry.drawn(draw.valueOf(input))));
        return report.drawn(numbers);
    }

    /**
     * Returns the report as it was stated.
     *
     * @return the readings
     */
    public LabReport report() {
        return report;
    }

    private static Uncertain<?> input(Entry entry) {
        return switch (entry.key().kind()) {
            case HARDNESS, CALCIUM_HARDNESS, MAGNESIUM_HARDNESS, CARBONATE_HARDNESS ->
                positive(entry, Hardness.of(0, Hardness.MILLIMOLE_PER_LITRE));
            case ALKALINITY -> input(entry, Alkalinity.of(0, Alkalinity.MILLIEQUIVALENT_PER_LITRE));
            case COMPENSATED_HARDNESS ->
                positive(entry, CompensatedHardness.of(0, CompensatedHardness.GRAIN_PER_US_GALLON));
            case CONDUCTIVITY -> positive(entry, Conductivity.of(0, Conductivity.MICROSIEMENS_PER_CENTIMETRE));
            case DISSOLVED_SOLIDS -> positive(entry, MassConcentration.of(0, MassConcentration.MILLIGRAM_PER_LITRE));
            case PH ->
                positive(entry, WaterUnits.share(0, WaterUnits.ONE)).notAbove(WaterUnits.share(14, WaterUnits.ONE));
            case TEMPERATURE ->
                input(entry, WaterUnits.temperature(0, WaterUnits.KELVIN))
                        .notBelow(WaterUnits.temperature(LEAST_KELVIN, WaterUnits.KELVIN))
                        .notAbove(WaterUnits.temperature(MOST_KELVIN, WaterUnits.KELVIN));
            default -> positive(entry, AmountConcentration.of(0, AmountConcentration.MILLIMOLE_PER_LITRE));
        };
    }

    private static <K extends Quantity<K>, Q extends WaterQuantity<K>> Uncertain<Q> positive(Entry entry, Q zero) {
        return input(entry, zero).notNegative();
    }

    /** The input with numbers in the unit of the zero, which is the canonical one of the kind. */
    @SuppressWarnings("unchecked") // a quantity makes those of its own class
    private static <K extends Quantity<K>, Q extends WaterQuantity<K>> Uncertain<Q> input(Entry entry, Q zero) {
        Q low = (Q) zero.withValue(entry.low());
        Uncertain<Q> input = entry.isInterval()
                ? Uncertain.between(low, (Q) zero.withValue(entry.high()))
                : Uncertain.normal(low, zero.withValue(Objects.requireNonNull(entry.uncertainty())));
        return input.named(entry.key().name());
    }
}
