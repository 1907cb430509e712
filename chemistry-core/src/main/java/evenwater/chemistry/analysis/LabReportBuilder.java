package evenwater.chemistry.analysis;

import evenwater.chemistry.analysis.Analyte.Kind;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * Builds a {@link LabReport} from quantities.
 *
 * <p>Stating something twice replaces it. What no water holds is refused, such as more than 10 mol/L. Not thread-safe.
 */
public final class LabReportBuilder {

    private final Map<Entry.Key, Entry> entries = new LinkedHashMap<>();
    private double relative;

    LabReportBuilder() {}

    /**
     * States the total hardness (GH of aquarists).
     *
     * @param hardness 0 or more
     * @return this builder
     */
    public LabReportBuilder hardness(Quantity<Hardness> hardness) {
        return hardness(Kind.HARDNESS, hardness);
    }

    /**
     * States the hardness by calcium.
     *
     * @param hardness 0 or more
     * @return this builder
     */
    public LabReportBuilder calciumHardness(Quantity<Hardness> hardness) {
        return hardness(Kind.CALCIUM_HARDNESS, hardness);
    }

    /**
     * States the hardness by magnesium.
     *
     * @param hardness 0 or more
     * @return this builder
     */
    public LabReportBuilder magnesiumHardness(Quantity<Hardness> hardness) {
        return hardness(Kind.MAGNESIUM_HARDNESS, hardness);
    }

    /**
     * States a laboratory's carbonate hardness in the strict sense, min(hardness, alkalinity): a lower bound of alkalinity.
     *
     * <p>The KH of a hobby kit is {@link #alkalinity(Quantity)}, not this.
     *
     * @param hardness 0 or more
     * @return this builder
     */
    public LabReportBuilder strictCarbonateHardness(Quantity<Hardness> hardness) {
        return hardness(Kind.CARBONATE_HARDNESS, hardness);
    }

    private LabReportBuilder hardness(Kind kind, Quantity<Hardness> hardness) {
        Hardness stated = Hardness.from(hardness);
        Entry.Key key = new Entry.Key(kind, null);
        return put(key, RowLimits.amount(stated.in(Hardness.MILLIMOLE_PER_LITRE), key, stated), stated);
    }

    /**
     * States the total hardness with its standard uncertainty.
     *
     * @param hardness 0 or more
     * @param standardUncertainty 0 or more
     * @return this builder
     * @throws IllegalArgumentException if an argument is out of range
     */
    public LabReportBuilder hardness(Quantity<Hardness> hardness, Quantity<Hardness> standardUncertainty) {
        Hardness u = Hardness.from(Objects.requireNonNull(standardUncertainty, "standardUncertainty"));
        Entry.Key key = new Entry.Key(Kind.HARDNESS, null);
        double millimoles = RowLimits.uncertainty(u.in(Hardness.MILLIMOLE_PER_LITRE), key, u);
        return hardness(hardness).with(key, millimoles);
    }

    /**
     * States a total hardness that lies between two values, as the last drop of a test kit leaves it.
     *
     * @param least 0 or more
     * @param most not below {@code least}
     * @return this builder
     * @throws IllegalArgumentException if the ends are out of order or out of range
     */
    public LabReportBuilder hardnessBetween(Quantity<Hardness> least, Quantity<Hardness> most) {
        Hardness low = Hardness.from(Objects.requireNonNull(least, "least"));
        Hardness high = Hardness.from(Objects.requireNonNull(most, "most"));
        Entry.Key key = new Entry.Key(Kind.HARDNESS, null);
        return putBetween(
                key,
                RowLimits.amount(low.in(Hardness.MILLIMOLE_PER_LITRE), key, low),
                RowLimits.amount(high.in(Hardness.MILLIMOLE_PER_LITRE), key, high),
                low,
                high);
    }

    /**
     * States the hardness that the softening trade compensated for iron; kept beside the water, never in it.
     *
     * @param hardness 0 or more
     * @return this builder
     */
    public LabReportBuilder compensatedHardness(Quantity<CompensatedHardness> hardness) {
        CompensatedHardness stated = CompensatedHardness.from(hardness);
        double grains = stated.in(CompensatedHardness.GRAIN_PER_US_GALLON);
        Entry.Key key = new Entry.Key(Kind.COMPENSATED_HARDNESS, null);
        return put(key, RowLimits.amount(grains, key, stated), stated);
    }

    /**
     * States the alkalinity (KH of aquarists).
     *
     * @param alkalinity may be negative, where there is mineral acid
     * @return this builder
     */
    public LabReportBuilder alkalinity(Quantity<Alkalinity> alkalinity) {
        Alkalinity stated = Alkalinity.from(alkalinity);
        Entry.Key key = new Entry.Key(Kind.ALKALINITY, null);
        return put(key, RowLimits.ofWater(stated.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), key, stated), stated);
    }

    /**
     * States the alkalinity with its standard uncertainty.
     *
     * @param alkalinity may be negative
     * @param standardUncertainty 0 or more
     * @return this builder
     * @throws IllegalArgumentException if an argument is out of range
     */
    public LabReportBuilder alkalinity(Quantity<Alkalinity> alkalinity, Quantity<Alkalinity> standardUncertainty) {
        Alkalinity u = Alkalinity.from(Objects.requireNonNull(standardUncertainty, "standardUncertainty"));
        Entry.Key key = new Entry.Key(Kind.ALKALINITY, null);
        double milliequivalents = RowLimits.uncertainty(u.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), key, u);
        return alkalinity(alkalinity).with(key, milliequivalents);
    }

    /**
     * States an alkalinity that lies between two values, as the last drop of a test kit leaves it.
     *
     * @param least may be negative
     * @param most not below {@code least}
     * @return this builder
     * @throws IllegalArgumentException if the ends are out of order or out of range
     */
    public LabReportBuilder alkalinityBetween(Quantity<Alkalinity> least, Quantity<Alkalinity> most) {
        Alkalinity low = Alkalinity.from(Objects.requireNonNull(least, "least"));
        Alkalinity high = Alkalinity.from(Objects.requireNonNull(most, "most"));
        Entry.Key key = new Entry.Key(Kind.ALKALINITY, null);
        return putBetween(
                key,
                RowLimits.ofWater(low.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), key, low),
                RowLimits.ofWater(high.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), key, high),
                low,
                high);
    }

    /**
     * States the total amount of an ion, all its forms together.
     *
     * @param ion a reference form, such as NH₄⁺ for all ammonia; HCO₃⁻, CO₃²⁻ and OH⁻ become alkalinity
     * @param concentration 0 or more
     * @return this builder
     * @throws IllegalArgumentException if the ion is counted in another form or the amount is negative
     */
    public LabReportBuilder total(Ion ion, Quantity<AmountConcentration> concentration) {
        Entry.Key key = Entry.Key.of(ion);
        AmountConcentration stated = ion.concentration(concentration);
        return put(key, RowLimits.amount(stated.in(AmountConcentration.MILLIMOLE_PER_LITRE), key, stated), stated);
    }

    /**
     * States the total amount of an ion with its standard uncertainty.
     *
     * @param ion as in {@link #total(Ion, Quantity)}
     * @param concentration 0 or more
     * @param standardUncertainty 0 or more
     * @return this builder
     * @throws IllegalArgumentException if the ion is counted in another form, or an argument is out of range
     */
    public LabReportBuilder total(
            Ion ion, Quantity<AmountConcentration> concentration, Quantity<AmountConcentration> standardUncertainty) {
        Entry.Key key = Entry.Key.of(ion);
        AmountConcentration u = ion.concentration(Objects.requireNonNull(standardUncertainty, "standardUncertainty"));
        double millimoles = RowLimits.uncertainty(u.in(AmountConcentration.MILLIMOLE_PER_LITRE), key, u);
        return total(ion, concentration).with(key, millimoles);
    }

    /**
     * States that the total amount of an ion lies between two values.
     *
     * @param ion as in {@link #total(Ion, Quantity)}
     * @param least 0 or more
     * @param most not below {@code least}
     * @return this builder
     * @throws IllegalArgumentException if the ion is counted in another form, or the ends are out of order or out of range
     */
    public LabReportBuilder totalBetween(
            Ion ion, Quantity<AmountConcentration> least, Quantity<AmountConcentration> most) {
        Entry.Key key = Entry.Key.of(ion);
        AmountConcentration low = ion.concentration(Objects.requireNonNull(least, "least"));
        AmountConcentration high = ion.concentration(Objects.requireNonNull(most, "most"));
        return putBetween(
                key,
                RowLimits.amount(low.in(AmountConcentration.MILLIMOLE_PER_LITRE), key, low),
                RowLimits.amount(high.in(AmountConcentration.MILLIMOLE_PER_LITRE), key, high),
                low,
                high);
    }

    /**
     * States that an ion is below a detection limit: anything from 0 to the limit.
     *
     * @param ion as in {@link #total(Ion, Quantity)}
     * @param limit above 0
     * @return this builder
     * @throws IllegalArgumentException if the ion is counted in another form or the limit is not positive
     */
    public LabReportBuilder totalBelow(Ion ion, Quantity<AmountConcentration> limit) {
        Entry.Key key = Entry.Key.of(ion);
        AmountConcentration stated = ion.concentration(limit);
        double high = stated.in(AmountConcentration.MILLIMOLE_PER_LITRE);
        if (!(high > 0)) {
            throw new IllegalArgumentException(
                    "detection limit of " + key.name() + " must be positive, but was " + stated);
        }
        entries.put(key, new Entry(key, 0, RowLimits.ofWater(high, key, stated), "<" + stated, 0));
        return this;
    }

    /**
     * States the measured pH.
     *
     * @param reading no unit; 0 to 14
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public LabReportBuilder pH(double reading) {
        if (!(reading >= 0 && reading <= 14)) {
            throw new IllegalArgumentException("pH must be from 0 to 14, but was " + reading);
        }
        return put(new Entry.Key(Kind.PH, null), reading, reading);
    }

    /**
     * States the measured pH with its standard uncertainty.
     *
     * @param reading no unit; 0 to 14
     * @param standardUncertainty no unit; 0 or more
     * @return this builder
     * @throws IllegalArgumentException if an argument is out of range
     */
    public LabReportBuilder pH(double reading, double standardUncertainty) {
        Entry.Key key = new Entry.Key(Kind.PH, null);
        return pH(reading).with(key, RowLimits.uncertainty(standardUncertainty, key, standardUncertainty));
    }

    /**
     * States the measured conductivity at 25 °C.
     *
     * @param conductivity 0 or more
     * @return this builder
     */
    public LabReportBuilder conductivity(Quantity<Conductivity> conductivity) {
        Conductivity stated = Conductivity.from(conductivity);
        double value = stated.in(Conductivity.MICROSIEMENS_PER_CENTIMETRE);
        Entry.Key key = new Entry.Key(Kind.CONDUCTIVITY, null);
        return put(key, RowLimits.amount(value, key, stated), stated);
    }

    /**
     * States the measured dissolved solids.
     *
     * @param solids 0 or more
     * @return this builder
     */
    public LabReportBuilder dissolvedSolids(Quantity<MassConcentration> solids) {
        MassConcentration stated = MassConcentration.from(solids);
        double value = stated.in(MassConcentration.MILLIGRAM_PER_LITRE);
        Entry.Key key = new Entry.Key(Kind.DISSOLVED_SOLIDS, null);
        return put(key, RowLimits.amount(value, key, stated), stated);
    }

    /**
     * States the temperature of the water.
     *
     * @param temperature from 0 to 100 °C
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public LabReportBuilder temperature(Quantity<Temperature> temperature) {
        WaterQuantity<Temperature> stated = WaterUnits.temperature(temperature);
        double kelvin = stated.in(WaterUnits.KELVIN);
        if (!RowLimits.isLiquid(kelvin)) {
            throw new IllegalArgumentException("temperature must be from 0 °C to 100 °C, but was " + stated);
        }
        return put(new Entry.Key(Kind.TEMPERATURE, null), kelvin, stated);
    }

    /**
     * States the temperature of the water with its standard uncertainty.
     *
     * @param temperature from 0 to 100 °C
     * @param standardUncertainty in kelvin; 0 or more
     * @return this builder
     * @throws IllegalArgumentException if an argument is out of range
     */
    public LabReportBuilder temperature(Quantity<Temperature> temperature, Quantity<Temperature> standardUncertainty) {
        Objects.requireNonNull(standardUncertainty, "standardUncertainty");
        Entry.Key key = new Entry.Key(Kind.TEMPERATURE, null);
        // a sum refuses a difference that is stated in °C
        double kelvins = WaterUnits.temperature(
                        WaterUnits.temperature(0, WaterUnits.KELVIN).add(standardUncertainty))
                .in(WaterUnits.KELVIN);
        return temperature(temperature).with(key, RowLimits.uncertainty(kelvins, key, standardUncertainty));
    }

    /**
     * States the relative standard uncertainty of all concentrations that have none of their own and are no intervals: hardness,
     * alkalinity, ions and dissolved solids, not pH, temperature or conductivity.
     *
     * @param share of the reading; from 0 to 1; 0.05 for 5 %
     * @return this builder
     * @throws IllegalArgumentException if the share is out of range
     */
    public LabReportBuilder uncertainty(double share) {
        relative = Entry.checkedShare(share);
        return this;
    }

    private LabReportBuilder with(Entry.Key key, double standardUncertainty) {
        entries.computeIfPresent(key, (same, entry) -> entry.with(standardUncertainty));
        return this;
    }

    private LabReportBuilder put(Entry.Key key, double value, Object stated) {
        entries.put(key, new Entry(key, value, value, stated.toString(), 0));
        return this;
    }

    private LabReportBuilder putBetween(Entry.Key key, double low, double high, Object least, Object most) {
        if (low > high) {
            throw new IllegalArgumentException(
                    "ends of " + key.name() + " must be in order, but were " + least + " and " + most);
        }
        entries.put(key, new Entry(key, low, high, least + " to " + most, 0));
        return this;
    }

    /**
     * Returns the report.
     *
     * @return what was stated
     * @throws UnusableReportException if nothing was stated
     */
    public LabReport build() {
        if (entries.isEmpty()) {
            throw new UnusableReportException(
                    0, "no reading that can be used, such as hardness, alkalinity, calcium or sodium");
        }
        Map<Entry.Key, Entry> stated = new LinkedHashMap<>(entries);
        stated.replaceAll((key, entry) -> entry.withUsual(relative));
        return new LabReport(stated, List.of(), List.of());
    }
}
