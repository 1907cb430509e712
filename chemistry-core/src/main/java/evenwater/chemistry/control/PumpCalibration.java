package evenwater.chemistry.control;

import evenwater.chemistry.kernel.PumpMemory;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.time.Duration;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What one step of a pump moves, from a measured run. A pump without steps counts milliseconds.
 *
 * <p>Measure with the tube, the height and the liquid that it will have, into a measuring cylinder, over a volume that its divisions
 * resolve. A step counts in whole picolitres: a run of 100 mL or more is calibrated to its digits.
 *
 * <p>Immutable and thread-safe.
 */
public final class PumpCalibration {

    private static final long MOST_STEPS = 1_000_000_000_000L;

    private final long picolitresPerStep;
    private final boolean timed;

    PumpCalibration(long picolitresPerStep, boolean timed) {
        this.picolitresPerStep = picolitresPerStep;
        this.timed = timed;
    }

    /**
     * Returns a calibration from a run that was counted in steps.
     *
     * @param steps that the pump made; 1 to 10¹²
     * @param volume that came out of the tube
     * @return the calibration
     * @throws IllegalArgumentException if a step would not move 1 pL to 10 mL
     */
    public static PumpCalibration ofSteps(long steps, Quantity<Volume> volume) {
        if (steps < 1 || steps > MOST_STEPS) {
            throw new IllegalArgumentException("steps of a measured run must be from 1 to 1e12, but were " + steps);
        }
        return of((double) steps, steps + " steps", volume, false);
    }

    /**
     * Returns a calibration from a run that was timed.
     *
     * @param time that the pump ran; 1 ms to 10¹² ms
     * @param volume that came out of the tube
     * @return the calibration, with steps of a millisecond
     * @throws IllegalArgumentException if a millisecond would not move 1 pL to 10 mL
     */
    public static PumpCalibration ofTime(Duration time, Quantity<Volume> volume) {
        Objects.requireNonNull(time, "time");
        if (time.compareTo(Duration.ofMillis(1)) < 0 || time.compareTo(Duration.ofMillis(MOST_STEPS)) > 0) {
            throw new IllegalArgumentException(
                    "time of a measured run must be from 1 ms to 1e12 ms, but was " + PumpUnits.text(time));
        }
        return of(time.toNanos() / 1e6, PumpUnits.text(time), volume, true);
    }

    private static PumpCalibration of(double steps, String run, Quantity<Volume> volume, boolean timed) {
        WaterQuantity<Volume> stated = WaterUnits.volume(volume);
        double each = Math.rint(stated.in(WaterUnits.LITRE) * 1e12 / steps);
        if (!(each >= 1 && each <= PumpMemory.LARGEST_STEP)) {
            throw new IllegalArgumentException((timed ? "a millisecond" : "a step")
                    + " must move from 1e-9 mL to 10 mL, but " + stated + " in " + run + " was measured");
        }
        return new PumpCalibration((long) each, timed);
    }

    long picolitresPerStep() {
        return picolitresPerStep;
    }

    /**
     * Tells whether the steps are milliseconds.
     *
     * @return true for a pump that is run by time
     */
    public boolean isTimed() {
        return timed;
    }

    /**
     * Returns what a step moves.
     *
     * @return volume in mL
     */
    public WaterQuantity<Volume> volumePerStep() {
        return PumpUnits.volume(picolitresPerStep);
    }

    /**
     * Returns how fast a timed pump moves.
     *
     * @return flow in L/h; empty for a pump with steps, whose speed is not known
     */
    public Optional<FlowRate> flowRate() {
        return timed
                ? Optional.of(FlowRate.of(picolitresPerStep * 3.6e6 / 1e12, FlowRate.LITRE_PER_HOUR))
                : Optional.empty();
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return that instanceof PumpCalibration c && c.picolitresPerStep == picolitresPerStep && c.timed == timed;
    }

    @Override
    public int hashCode() {
        return 31 * Long.hashCode(picolitresPerStep) + Boolean.hashCode(timed);
    }

    /** Returns what a step or a second moves. */
    @Override
    public String toString() {
        return timed
                ? PumpUnits.volume(picolitresPerStep * 1000).toText(Locale.ROOT, 6) + " a second"
                : volumePerStep().toText(Locale.ROOT, 6) + " a step";
    }
}
