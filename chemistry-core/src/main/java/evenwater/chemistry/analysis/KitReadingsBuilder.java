package evenwater.chemistry.analysis;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;

import evenwater.chemistry.instrument.ConductivityReading;
import evenwater.chemistry.instrument.DissolvedSolidsMeter;
import evenwater.chemistry.instrument.FactorMeter;
import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.instrument.TemperatureCompensation;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * Builds {@link KitReadings}.
 *
 * <p>Both ends of every range are included. What is not stated is open: hardness and alkalinity 0 or more, pH from 4 to 10.5 (own rule).
 * Stating something twice replaces it. Not thread-safe.
 */
public final class KitReadingsBuilder {

    /** See {@link #modelAllowance}. */
    private static final double USUAL_ALLOWANCE = 0.065;

    private static final double LARGEST_ERROR = 0.5;
    private static final double LARGEST_MICROSIEMENS = 10_000;
    private static final double LEAST_PH = 3;
    private static final double MOST_PH = 11;
    private static final FactorMeter LEAST_FACTOR = FactorMeter.of(0.5);
    private static final FactorMeter MOST_FACTOR = FactorMeter.of(0.7);
    private static final double EQUIVALENTS_PER_MILLIEQUIVALENT = 1e-3;
    private static final int DIGITS = 4;

    private final Map<KitQuantity, KitRange> measured = new EnumMap<>(KitQuantity.class);
    private final Map<KitQuantity, String> words = new EnumMap<>(KitQuantity.class);
    private KitRange pH = new KitRange(4, 10.5);
    private WaterQuantity<Temperature> temperature = WaterUnits.temperature(25, WaterUnits.CELSIUS);
    private KitRange microsiemens = new KitRange(Double.NaN, Double.NaN);
    private double compensationBelow = 1;
    private double compensationAbove = 1;
    private double allowance = USUAL_ALLOWANCE;

    KitReadingsBuilder() {}

    /**
     * States the hardness that a GH kit leaves, such as {@code DropTest.GENERAL_HARDNESS.turningAt(9)}.
     *
     * @param reading 0 or more
     * @return this builder
     */
    public KitReadingsBuilder hardness(ReadingInterval<Hardness> reading) {
        Objects.requireNonNull(reading, "reading");
        return put(
                KitQuantity.HARDNESS,
                reading.least().in(Hardness.MILLIEQUIVALENT_PER_LITRE) * EQUIVALENTS_PER_MILLIEQUIVALENT,
                reading.most().in(Hardness.MILLIEQUIVALENT_PER_LITRE) * EQUIVALENTS_PER_MILLIEQUIVALENT,
                reading);
    }

    /**
     * States the alkalinity that a KH kit leaves, such as {@code DropTest.CARBONATE_HARDNESS.turningAt(5)}; it may be more than the hardness.
     *
     * @param reading 0 or more
     * @return this builder
     */
    public KitReadingsBuilder alkalinity(ReadingInterval<Alkalinity> reading) {
        Objects.requireNonNull(reading, "reading");
        return put(
                KitQuantity.ALKALINITY,
                reading.least().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE) * EQUIVALENTS_PER_MILLIEQUIVALENT,
                reading.most().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE) * EQUIVALENTS_PER_MILLIEQUIVALENT,
                reading);
    }

    /**
     * States what a test of one ion leaves.
     *
     * @param ion Ca²⁺, Mg²⁺, Na⁺, K⁺, Cl⁻, SO₄²⁻ or NO₃⁻
     * @param reading 0 or more
     * @return this builder
     * @throws IllegalArgumentException if it is another ion
     */
    public KitReadingsBuilder total(Ion ion, ReadingInterval<AmountConcentration> reading) {
        KitQuantity quantity = KitIons.quantityOf(Objects.requireNonNull(ion, "ion"));
        Objects.requireNonNull(reading, "reading");
        return put(
                quantity, KitIons.equivalents(ion, reading.least()), KitIons.equivalents(ion, reading.most()), reading);
    }

    private KitReadingsBuilder put(KitQuantity quantity, double least, double most, ReadingInterval<?> reading) {
        measured.put(quantity, new KitRange(least, most));
        words.put(quantity, quantity + " " + reading.toText(Locale.ROOT, DIGITS));
        return this;
    }

    /**
     * States the pH.
     *
     * @param least the lowest it may be; 3 to 11
     * @param most the highest it may be; from {@code least} to 11
     * @return this builder
     * @throws IllegalArgumentException if an end is out of range or the ends are out of order
     */
    public KitReadingsBuilder pH(double least, double most) {
        if (!(least >= LEAST_PH && least <= most && most <= MOST_PH)) {
            throw new IllegalArgumentException(
                    "pH of a kit must be from 3 to 11 and in order, but was from " + least + " to " + most);
        }
        pH = new KitRange(least, most);
        return this;
    }

    /**
     * States the temperature at which the pH was read; 25 °C if not stated.
     *
     * @param ofPH 0 °C to 50 °C
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public KitReadingsBuilder temperature(Quantity<Temperature> ofPH) {
        WaterQuantity<Temperature> stated = WaterUnits.temperature(Objects.requireNonNull(ofPH, "ofPH"));
        double celsius = stated.in(WaterUnits.CELSIUS);
        if (!(celsius >= -1e-9 && celsius <= 50 + 1e-9)) {
            throw new IllegalArgumentException("temperature of a kit must be from 0 °C to 50 °C, but was " + stated);
        }
        temperature = stated;
        return this;
    }

    /**
     * States the conductivity at 25 °C.
     *
     * @param at25Celsius range of the reading with the error of the meter in it; 0 to 10 mS/cm
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public KitReadingsBuilder conductivity(ReadingInterval<Conductivity> at25Celsius) {
        Objects.requireNonNull(at25Celsius, "at25Celsius");
        return conductivity(at25Celsius.least(), at25Celsius.most(), 0);
    }

    /**
     * States the conductivity by a reading, taken to 25 °C by ISO 7888 if the meter has not done so.
     *
     * @param reading what the meter shows; 0 to 10 mS/cm at 25 °C
     * @param relativeError of the meter and its compensation, either way; no unit, 0 to 0.5; 2 % is usual near 25 °C (common practice)
     * @return this builder
     * @throws IllegalArgumentException if an argument is out of range
     */
    public KitReadingsBuilder conductivity(ConductivityReading reading, double relativeError) {
        Conductivity at25Celsius =
                Objects.requireNonNull(reading, "reading").at25Celsius(TemperatureCompensation.ISO_7888);
        return conductivity(at25Celsius, at25Celsius, relativeError);
    }

    /**
     * States the conductivity by a dissolved-solids meter of a known scale.
     *
     * @param meter with its scale
     * @param shown range of the display, such as {@code ReadingInterval.ofRounded(…)}; ppm are mg/L
     * @param relativeError of the meter, either way; no unit, 0 to 0.5
     * @return this builder
     * @throws IllegalArgumentException if an argument is out of range
     * @throws evenwater.chemistry.quantity.NoAnswerException if a reading is not on the scale
     */
    public KitReadingsBuilder meter(
            DissolvedSolidsMeter meter, ReadingInterval<MassConcentration> shown, double relativeError) {
        Objects.requireNonNull(meter, "meter");
        Objects.requireNonNull(shown, "shown");
        return conductivity(meter.conductivity(shown.least()), meter.conductivity(shown.most()), relativeError);
    }

    /**
     * States the conductivity by a dissolved-solids meter whose factor nobody knows: from 0.5 to 0.7 mg/L for each µS/cm.
     *
     * @param shown range of the display; ppm are mg/L
     * @param relativeError of the meter beside its factor, either way; no unit, 0 to 0.5
     * @return this builder
     * @throws IllegalArgumentException if an argument is out of range
     */
    public KitReadingsBuilder meterOfUnknownFactor(ReadingInterval<MassConcentration> shown, double relativeError) {
        Objects.requireNonNull(shown, "shown");
        return conductivity(
                MOST_FACTOR.conductivity(shown.least()), LEAST_FACTOR.conductivity(shown.most()), relativeError);
    }

    private KitReadingsBuilder conductivity(Conductivity least, Conductivity most, double relativeError) {
        if (!(relativeError >= 0 && relativeError <= LARGEST_ERROR)) {
            throw new IllegalArgumentException(
                    "relative error of a meter must be from 0 to 0.5, but was " + relativeError);
        }
        if (!(most.in(MICROSIEMENS_PER_CENTIMETRE) <= LARGEST_MICROSIEMENS)) {
            throw new IllegalArgumentException(
                    "conductivity of a kit must be at most 10 mS/cm at 25 °C, but was " + most);
        }
        microsiemens = new KitRange(least.in(MICROSIEMENS_PER_CENTIMETRE), most.in(MICROSIEMENS_PER_CENTIMETRE))
                .widenedBy(1 / (1 + relativeError), 1 / (1 - relativeError));
        return this;
    }

    /**
     * Says that nobody knows whether the meter compensates: what it shows may be for 25 °C or for the temperature of the water.
     *
     * @param water temperature of the water in the cell; 0 °C to 35.9 °C, the range of ISO 7888
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public KitReadingsBuilder perhapsUncompensatedAt(Quantity<Temperature> water) {
        double factor = TemperatureCompensation.ISO_7888.factor(Objects.requireNonNull(water, "water"));
        compensationBelow = Math.min(1, factor);
        compensationAbove = Math.max(1, factor);
        return this;
    }

    /**
     * States how far the calculated conductivity may be from the true one, either way; 6.5 % if not stated.
     *
     * <p>Of 59 natural waters the worst is 6.3 % off, five more than 5 %, rms 2.7 %; of that some 2.5 % is the noise of their analyses.
     *
     * @param relative no unit, 0 to 0.5; 0 takes the model for the truth
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public KitReadingsBuilder modelAllowance(double relative) {
        if (!(relative >= 0 && relative <= LARGEST_ERROR)) {
            throw new IllegalArgumentException("allowance for the model must be from 0 to 0.5, but was " + relative);
        }
        allowance = relative;
        return this;
    }

    /**
     * Builds the readings.
     *
     * @return the readings; whether any water has them, {@link KitReadings#bounds} says
     * @throws IllegalArgumentException if neither a conductivity nor a meter was stated
     */
    public KitReadings build() {
        if (Double.isNaN(microsiemens.most())) {
            throw new IllegalArgumentException(
                    "conductivity or the reading of a dissolved-solids meter must be stated: without it nothing bounds sodium or chloride");
        }
        KitRange widened =
                microsiemens.widenedBy(compensationBelow, compensationAbove).widenedBy(1 - allowance, 1 + allowance);
        Map<KitQuantity, KitRange> read = Collections.unmodifiableMap(new EnumMap<>(measured));
        return new KitReadings(
                read,
                pH,
                temperature.in(WaterUnits.KELVIN),
                widened,
                new KitComplaints(read, new EnumMap<>(words), "pH " + pH.least() + " to " + pH.most(), widened));
    }
}
