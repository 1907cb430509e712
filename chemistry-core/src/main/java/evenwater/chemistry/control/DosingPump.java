package evenwater.chemistry.control;

import evenwater.chemistry.kernel.PumpKernel;
import evenwater.chemistry.kernel.PumpMemory;
import evenwater.chemistry.kernel.PumpServiceKernel;
import evenwater.chemistry.kernel.PumpSettings;
import evenwater.chemistry.kernel.SavedNumbers;
import evenwater.chemistry.quantity.WaterQuantity;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/**
 * The settings of a pump that doses a stock solution into a tank, and where its {@link DosingPumpState} begins.
 *
 * <p><b>This is bookkeeping and no safety device.</b> An overdose kills animals within minutes. A pump can fail open, a relay can stick, a tube
 * can siphon a reservoir empty after the pump has stopped: put the end of the tube above the water or break the siphon, and keep no more in
 * the reservoir than the tank survives. Acids, lime water, CO₂ and whatever harms in a single dose do not belong on an unattended pump without a
 * stop that does not depend on this program.
 *
 * <p><b>The daily cap</b> bounds everything that is ordered into the tank: schedule, made-up portions, added water, doses by hand and priming into
 * the tank. Within any 24 hours of true time ordered runs move no more than the cap, however the wall clock is set and however often the power
 * fails, if:
 *
 * <ul>
 *   <li>uptime and time certainly off never run ahead of the true time;
 *   <li>the pump moves no more than its steps and its calibration say, and has stopped when the end of a run is reported, when the time to confirm
 *       is over, and when the processor starts again;
 *   <li>fewer steps than ordered are reported only if no more were made;
 *   <li>the state is saved before each run and not lost ({@link #startAfterLoss} if it is), and {@link #start} tells the truth of the 24 hours before;
 *   <li>the cap was not changed within those 24 hours.
 * </ul>
 *
 * <p>If reports of fewer steps are false, no more than three times the cap flows: in a day, one cap of what was reported short is believed; beyond it
 * runs count as made in full. That figure is an own rule. What flows without an order is counted when it is told, but not held back. On a calendar
 * day the cap holds under the same conditions, unless the clock is set. A run counts until 24 hours after its end: leave room for a portion
 * between the daily dose and the cap, or doses will slip later by the length of a run each day until one is missed.
 *
 * <p>Immutable and thread-safe.
 */
public final class DosingPump {

    private final StockSolution stock;
    private final PumpCalibration calibration;
    private final long[] settings;

    DosingPump(StockSolution stock, PumpCalibration calibration, long[] settings) {
        this.stock = stock;
        this.calibration = calibration;
        this.settings = settings;
    }

    /**
     * Begins the settings of a pump with what none can do without.
     *
     * @param stock what is dosed
     * @param calibration of the pump when it starts; later ones are declared to the state. It belongs to the settings as all the rest
     * @param dailyCap the most stock that may get into the tank in 24 hours; above 0, at most 100 L
     * @param reservoir what a full reservoir holds; above 0, at most 1000 L
     * @return a builder
     * @throws IllegalArgumentException if a volume is out of range
     */
    public static DosingPumpBuilder builder(
            StockSolution stock, PumpCalibration calibration, Quantity<Volume> dailyCap, Quantity<Volume> reservoir) {
        return new DosingPumpBuilder(stock, calibration, dailyCap, reservoir);
    }

    /**
     * Reads the plain form that {@link #toPlain} writes.
     *
     * @param plain of {@link PlainDosingPump#VERSION}
     * @return the settings; a state that was saved under those that were written can be {@linkplain #restore restored} under them
     * @throws IllegalArgumentException if something is missing, unknown, not whole, out of range or of a newer version; names it
     */
    public static DosingPump from(PlainDosingPump plain) {
        return PumpForm.read(Objects.requireNonNull(plain, "plain"));
    }

    /**
     * Returns the settings in numbers and texts, for JSON and the like.
     *
     * @return the plain form
     * @throws IllegalArgumentException if the stock is of a compound that is not in the table, or stated in a unit of another library
     */
    public PlainDosingPump toPlain() {
        return PumpForm.of(stock, calibration, settings);
    }

    /**
     * Starts a pump that has dosed nothing in the last 24 hours. There is air in its tube; portions of today that are past are left out.
     *
     * @param now local wall-clock time; 1970 to 9999
     * @param uptime a time that only rises while the processor runs, such as that of {@link System#nanoTime}; 0 or more
     * @param level what the reservoir holds
     * @return the first state
     * @throws IllegalArgumentException if an argument is out of range
     */
    public DosingPumpState start(LocalDateTime now, Duration uptime, Quantity<Volume> level) {
        return start(now, uptime, level, 0);
    }

    /**
     * Starts a pump whose state was lost: as if it had dosed all of its cap just now, so that nothing is dosed for 24 hours.
     *
     * @param now local wall-clock time; 1970 to 9999
     * @param uptime 0 or more
     * @param level what the reservoir holds
     * @return the first state
     * @throws IllegalArgumentException if an argument is out of range
     */
    public DosingPumpState startAfterLoss(LocalDateTime now, Duration uptime, Quantity<Volume> level) {
        return start(now, uptime, level, settings[PumpSettings.CAP]);
    }

    private DosingPumpState start(LocalDateTime now, Duration uptime, Quantity<Volume> level, long givenBefore) {
        long[] memory = new long[PumpMemory.LENGTH];
        PumpStatus.of(PumpKernel.start(
                settings,
                memory,
                PumpUnits.local(now),
                PumpUnits.uptime(uptime),
                calibration.picolitresPerStep(),
                level(level),
                givenBefore));
        return new DosingPumpState(this, memory);
    }

    long level(Quantity<Volume> level) {
        return PumpUnits.picolitres("level of the reservoir", level, 0, settings[PumpSettings.RESERVOIR]);
    }

    /**
     * Takes up a saved state. Tell it {@link DosingPumpState#restarted} next.
     *
     * <p>The calibration that the pump was built with is one of its settings; one that was declared later comes with the save.
     *
     * @param saved what {@link DosingPumpState#save} wrote under the same settings
     * @return the state
     * @throws UnusableSaveException if the save is torn or damaged, of another version, or made under other settings or another calibration
     */
    public DosingPumpState restore(long[] saved) {
        return restore(saved, false);
    }

    /**
     * Takes up a state that was saved under other settings or another calibration of the same pump. What was counted stays counted, also against
     * the cap; what was due by the old schedule is dropped; a run that was under way counts as made in full, by the old calibration. From then on
     * the calibration is the one that these settings were built with, by steps or by time, whatever was declared to the old state: build them with
     * the one that holds now. If a step of it differs much from the one before, that is noted. A save of these very settings is taken up as by
     * {@link #restore}, with the calibration that was declared last. Tell the state {@link DosingPumpState#restarted} next.
     *
     * @param saved what {@link DosingPumpState#save} wrote
     * @return the state
     * @throws UnusableSaveException if the save is torn or damaged, of another version, or the reservoir cannot hold what is in it
     */
    public DosingPumpState restoreUnderNewSettings(long[] saved) {
        return restore(saved, true);
    }

    private DosingPumpState restore(long[] saved, boolean newSettings) {
        long[] m = new long[PumpMemory.LENGTH];
        int status = SavedNumbers.read(
                PumpMemory.VERSION,
                fingerprint(),
                Objects.requireNonNull(saved, "saved").clone(),
                m);
        boolean other = status == SavedNumbers.OTHER_FINGERPRINT;
        String reason = switch (status) {
            case SavedNumbers.WRONG_LENGTH ->
                "it has " + saved.length + " numbers instead of " + (PumpMemory.LENGTH + SavedNumbers.OVERHEAD);
            case SavedNumbers.OTHER_VERSION -> "it is of another version or kind";
            case SavedNumbers.TORN -> "it is torn or damaged, its checksum does not fit";
            default ->
                !PumpMemory.isUsable(m)
                        ? "its numbers are out of range"
                        : other && !newSettings ? "it was made under other settings or another calibration" : "";
        };
        if (!reason.isEmpty()) {
            throw new UnusableSaveException("saved state of the pump cannot be used: " + reason);
        }
        if (other) {
            adopt(m);
        }
        return new DosingPumpState(this, m);
    }

    private void adopt(long[] m) {
        long unmoved =
                Math.max(0, m[PumpMemory.UPTIME] - 1); // what passed since the save is told by the restart that follows
        if (PumpServiceKernel.settingsChanged(
                        settings, m, calibration.picolitresPerStep(), m[PumpMemory.LOCAL], unmoved)
                != PumpKernel.DONE) {
            throw new UnusableSaveException("saved state of the pump cannot be used: the reservoir held "
                    + PumpUnits.text(m[PumpMemory.LEVEL] - m[PumpMemory.PENDING] * m[PumpMemory.STEP])
                    + ", more than the " + PumpUnits.text(settings[PumpSettings.RESERVOIR]) + " that it can hold now");
        }
    }

    /** Of what a saved state belongs to; the text of a hash of strings is fixed by the language. */
    long fingerprint() {
        long[] all = Arrays.copyOf(settings, settings.length + 3);
        all[settings.length] = stock.toString().hashCode();
        all[settings.length + 1] = calibration.picolitresPerStep();
        all[settings.length + 2] = calibration.isTimed() ? 1 : 0;
        return SavedNumbers.checksum(all, all.length);
    }

    /** For the kernel, which does not write to it. */
    long[] settings() {
        return settings;
    }

    /**
     * Returns what is dosed.
     *
     * @return the stock
     */
    public StockSolution stock() {
        return stock;
    }

    /**
     * Returns the most that may get into the tank in 24 hours.
     *
     * @return volume of stock in mL
     */
    public WaterQuantity<Volume> dailyCap() {
        return PumpUnits.volume(settings[PumpSettings.CAP]);
    }

    /**
     * Returns what the schedule gives a day.
     *
     * @return volume of stock in mL; 0 without a schedule
     */
    public WaterQuantity<Volume> dailyDose() {
        return PumpUnits.volume(settings[PumpSettings.DAILY]);
    }

    /**
     * Returns what becomes of missed doses.
     *
     * @return the policy
     */
    public MissedDoses missedDoses() {
        return settings[PumpSettings.CATCH_UP] == 0 ? MissedDoses.SKIP : MissedDoses.CATCH_UP;
    }

    long addedWater(Quantity<Volume> water) {
        if (settings[PumpSettings.PER_LITRE] == 0) {
            throw new IllegalArgumentException("settings of the pump state no dose for added water");
        }
        return PumpUnits.microlitres("added water", water);
    }

    long step(PumpCalibration newCalibration) {
        Objects.requireNonNull(newCalibration, "calibration");
        if (newCalibration.isTimed() != isTimed()) {
            throw new IllegalArgumentException("calibration must be by " + (isTimed() ? "time" : "steps")
                    + " as the pump's is, but was " + newCalibration);
        }
        return newCalibration.picolitresPerStep();
    }

    boolean isTimed() {
        return calibration.isTimed();
    }

    boolean isLow(long[] memory) {
        return PumpServiceKernel.isLow(settings, memory);
    }

    /** Returns what it doses and how much at most. */
    @Override
    public String toString() {
        return "dosing pump for " + stock + ", " + PumpUnits.text(settings[PumpSettings.DAILY])
                + " a day by schedule, at most " + PumpUnits.text(settings[PumpSettings.CAP]);
    }
}
