package evenwater.chemistry.control;

import evenwater.chemistry.kernel.PumpKernel;
import evenwater.chemistry.kernel.PumpMemory;
import evenwater.chemistry.kernel.PumpServiceKernel;
import evenwater.chemistry.kernel.SavedNumbers;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ToIntFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What a dosing pump remembers: each event answers with the next state.
 *
 * <p>Call {@link #tick} every few seconds to minutes. On {@link PumpStatus#RUN} {@linkplain #save() save} the state, let the pump make
 * {@link #stepsToRun}, and report by {@code dosed} or {@link #failed} with its {@link #runNumber}. After a loss of power {@linkplain DosingPump#restore restore}
 * the last save and tell it {@link #restarted}: a run whose end was not reported counts as made in full.
 *
 * <p>Cautions and the cap stand with {@link DosingPump}. Arguments out of their stated range are refused with an IllegalArgumentException.
 * Equal states go on alike. Immutable and thread-safe.
 */
public final class DosingPumpState {

    private final DosingPump pump;
    private final long[] memory;

    DosingPumpState(DosingPump pump, long[] memory) {
        this.pump = pump;
        this.memory = memory;
    }

    /** For the kernel and the words, which do not write to it. */
    long[] memory() {
        return memory;
    }

    private PumpAnswer next(LocalDateTime now, Duration uptime, PumpEvents.Timed event) {
        return PumpEvents.at(now, uptime, pump, memory, event);
    }

    private PumpAnswer next(ToIntFunction<long[]> event) {
        return PumpEvents.any(pump, memory, event);
    }

    private DosingPumpState changed(Consumer<long[]> event) {
        long[] m = memory.clone();
        event.accept(m);
        return new DosingPumpState(pump, m);
    }

    /**
     * Decides what to do now.
     *
     * @param now local wall-clock time; 1970 to 9999; may have been set
     * @param uptime a time that only rises while the processor runs; 0 or more; one that fell is taken as a restart
     * @return the next state and what to do
     */
    public PumpAnswer tick(LocalDateTime now, Duration uptime) {
        return next(now, uptime, PumpKernel::tick);
    }

    /**
     * Tells that the processor has started again.
     *
     * @param now local wall-clock time; 1970 to 9999
     * @param uptime counted anew; 0 or more
     * @param certainlyOff for how long the power was off at least, as something better than the wall clock says, such as a server of time; otherwise
     *     zero, and the cap goes on as if no time had passed
     * @return the next state
     */
    public DosingPumpState restarted(LocalDateTime now, Duration uptime, Duration certainlyOff) {
        long off = PumpUnits.seconds("certainlyOff", certainlyOff, 0, PumpMemory.LATEST);
        return next(now, uptime, (s, m, local, seconds) -> PumpKernel.restarted(s, m, local, seconds, off))
                .state();
    }

    /**
     * Tells that a run has ended. Fewer steps than ordered leave the rest of a portion due for the grace; more are counted and noted.
     *
     * <p>A repeated report, and one that comes when the run has already been counted in full for want of it, change nothing. A number larger than any
     * ordered shows that this state is older than the pump: go on with {@link DosingPump#startAfterLoss}.
     *
     * @param run its {@linkplain #runNumber number}; 1 or more
     * @param steps that the pump made, milliseconds of a timed one; 0 or more
     * @param now local wall-clock time; 1970 to 9999
     * @param uptime 0 or more
     * @return {@link PumpStatus#TAKEN} or {@link PumpStatus#OTHER_RUN}
     */
    public PumpAnswer dosed(long run, long steps, LocalDateTime now, Duration uptime) {
        long number = PumpUnits.run(run);
        PumpUnits.checkSteps(steps, memory[PumpMemory.STEP]);
        return next(now, uptime, (s, m, local, seconds) -> PumpKernel.dosed(s, m, number, steps, local, seconds));
    }

    /**
     * Tells that the pump moved something that nobody ordered, such as by a button on it. It is counted into the tank and noted.
     *
     * @param steps that the pump made, milliseconds of a timed one; 0 or more
     * @param now local wall-clock time; 1970 to 9999
     * @param uptime 0 or more
     * @return the next state; a run under way stays so
     */
    public DosingPumpState dosedUnordered(long steps, LocalDateTime now, Duration uptime) {
        PumpUnits.checkSteps(steps, memory[PumpMemory.STEP]);
        return next(
                        now,
                        uptime,
                        (s, m, local, seconds) -> PumpServiceKernel.dosedUnordered(s, m, steps, local, seconds))
                .state();
    }

    /**
     * Tells that a run failed. It counts as made in full; nothing runs until {@link #resumed}. A failure of the run ordered last stops the pump even
     * if its end was reported before; one of an older run changes nothing.
     *
     * @param run its {@linkplain #runNumber number}; 1 or more
     * @param now local wall-clock time; 1970 to 9999
     * @param uptime 0 or more
     * @return {@link PumpStatus#TAKEN} or {@link PumpStatus#OTHER_RUN}
     */
    public PumpAnswer failed(long run, LocalDateTime now, Duration uptime) {
        long number = PumpUnits.run(run);
        return next(now, uptime, (s, m, local, seconds) -> PumpKernel.failed(s, m, number, local, seconds));
    }

    /**
     * Asks for a dose by hand: all of it now, or nothing.
     *
     * @param volume of stock; above 0, at most 100 L
     * @param now local wall-clock time; 1970 to 9999
     * @param uptime 0 or more
     * @return {@link PumpStatus#RUN} or why not
     */
    public PumpAnswer doseByHand(Quantity<Volume> volume, LocalDateTime now, Duration uptime) {
        long picolitres = PumpUnits.dose("dose by hand", volume);
        return next(now, uptime, (s, m, local, seconds) -> PumpKernel.doseByHand(s, m, picolitres, local, seconds));
    }

    /**
     * Asks for filling the tube. It is full when as much as it holds was moved, or when {@link #tubeSeenFull} says so.
     *
     * @param volume of stock to move; above 0, at most what the tube holds by the settings
     * @param intoTank whether the end of the tube is in the tank, so that all of it counts as dose, under the cap
     * @param now local wall-clock time; 1970 to 9999
     * @param uptime 0 or more
     * @return {@link PumpStatus#RUN} or why not
     */
    public PumpAnswer prime(Quantity<Volume> volume, boolean intoTank, LocalDateTime now, Duration uptime) {
        long picolitres = PumpUnits.dose("priming", volume);
        return next(
                now, uptime, (s, m, local, seconds) -> PumpKernel.prime(s, m, picolitres, intoTank, local, seconds));
    }

    /**
     * Tells that water was added, which gets its share of stock at the next tick that the cap allows.
     *
     * @param water volume added; above 0, at most 10 m³, in whole microlitres
     * @return {@link PumpStatus#TAKEN}, or {@link PumpStatus#MORE_THAN_ALLOWED} if more than the cap of a day would be owed; then nothing is
     * @throws IllegalArgumentException if the volume is out of range, or the settings have no dose for added water
     */
    public PumpAnswer waterAdded(Quantity<Volume> water) {
        long microlitres = pump.addedWater(water);
        return next(m -> PumpServiceKernel.waterAdded(pump.settings(), m, microlitres));
    }

    /**
     * Tells what the reservoir holds, after refilling or measuring it.
     *
     * @param level volume in it now; 0 to what it can hold
     * @return {@link PumpStatus#TAKEN}, or {@link PumpStatus#AWAITING_END_OF_RUN}
     * @throws IllegalArgumentException if the level is out of range
     */
    public PumpAnswer refilled(Quantity<Volume> level) {
        long picolitres = pump.level(level);
        return next(m -> PumpServiceKernel.refilled(pump.settings(), m, picolitres));
    }

    /**
     * Tells a new calibration. What was counted stays counted.
     *
     * @param calibration of the same kind, by steps or by time
     * @return {@link PumpStatus#TAKEN}, or {@link PumpStatus#AWAITING_END_OF_RUN}
     * @throws IllegalArgumentException if it is of the other kind
     */
    public PumpAnswer calibrated(PumpCalibration calibration) {
        long picolitres = pump.step(calibration);
        return next(m -> PumpServiceKernel.calibrated(pump.settings(), m, picolitres));
    }

    /**
     * Tells that a person has seen the tube full to its end.
     *
     * @return the next state
     */
    public DosingPumpState tubeSeenFull() {
        return changed(PumpServiceKernel::tubeSeenFull);
    }

    /**
     * Tells that there may be air in the tube.
     *
     * @return the next state
     */
    public DosingPumpState tubeDrained() {
        return changed(PumpServiceKernel::tubeDrained);
    }

    /**
     * Stops the pump. Portions that pass are let go; what added water is owed stays.
     *
     * @return the next state
     */
    public DosingPumpState paused() {
        return changed(PumpServiceKernel::paused);
    }

    /**
     * Lets the pump go on after a pause or a failure, with the first portion after now.
     *
     * @param now local wall-clock time; 1970 to 9999
     * @param uptime 0 or more
     * @return the next state
     */
    public DosingPumpState resumed(LocalDateTime now, Duration uptime) {
        return next(now, uptime, PumpServiceKernel::resumed).state();
    }

    /**
     * Takes news away that a person has read; conditions stay.
     *
     * @return the next state
     */
    public DosingPumpState acknowledged() {
        return changed(m -> PumpServiceKernel.acknowledged(m, PumpKernel.NEWS));
    }

    /**
     * Returns how far the pump is to run, or is running.
     *
     * @return steps, milliseconds of a timed pump; 0 if no run is under way
     */
    public long stepsToRun() {
        return memory[PumpMemory.PENDING];
    }

    /**
     * Returns the number of the run ordered last, which is the one under way if any is. It grows with each run.
     *
     * @return number for {@link #dosed(long, long, LocalDateTime, Duration)} and {@link #failed}; 0 before the first run
     */
    public long runNumber() {
        return memory[PumpMemory.RUN];
    }

    /**
     * Returns what the run under way is to move.
     *
     * @return volume of stock in mL; 0 if no run is under way
     */
    public WaterQuantity<Volume> volumeToRun() {
        return PumpUnits.volume(memory[PumpMemory.PENDING] * memory[PumpMemory.STEP]);
    }

    /** {@return volume in the reservoir in mL, with what the intake cannot reach} */
    public WaterQuantity<Volume> level() {
        return PumpUnits.volume(memory[PumpMemory.LEVEL]);
    }

    /**
     * Returns for how long the reservoir lasts at the use of the schedule, or of the last 24 hours if that was more.
     *
     * @return time in days; empty if nothing is used
     */
    public Optional<WaterQuantity<Time>> reservoirLasts() {
        double use = PumpServiceKernel.dailyUse(pump.settings(), memory);
        double usable = PumpServiceKernel.usable(pump.settings(), memory);
        return use > 0 ? Optional.of(WaterUnits.time(usable / use, WaterUnits.DAY)) : Optional.empty();
    }

    /**
     * Returns all that went into the tank since the start.
     *
     * @return volume of stock in mL
     */
    public WaterQuantity<Volume> dosed() {
        return PumpUnits.volume(memory[PumpMemory.DOSED]);
    }

    /** {@return volume of stock in mL that priming moved to elsewhere since the start} */
    public WaterQuantity<Volume> primed() {
        return PumpUnits.volume(memory[PumpMemory.PRIMED]);
    }

    /**
     * Returns what counts against the cap of 24 hours, as of the last event with a clock.
     *
     * @return volume of stock in mL
     */
    public WaterQuantity<Volume> dosedInLast24Hours() {
        return PumpUnits.volume(memory[PumpMemory.WINDOW_SUM]);
    }

    /**
     * Returns what the cap still allows, as of the last event with a clock.
     *
     * @return volume of stock in mL
     */
    public WaterQuantity<Volume> allowed() {
        return PumpUnits.volume(PumpServiceKernel.allowed(pump.settings(), memory));
    }

    /** {@return volume of stock in mL that is due: portions that wait, and what added water is owed} */
    public WaterQuantity<Volume> due() {
        return PumpUnits.volume(memory[PumpMemory.DUE] + memory[PumpMemory.OWED]);
    }

    /** {@return volume of stock in mL that later portions shall make up} */
    public WaterQuantity<Volume> toMakeUp() {
        return PumpUnits.volume(memory[PumpMemory.DEBT]);
    }

    /** {@return the calibration in use, which is the one declared last} */
    public PumpCalibration calibration() {
        return new PumpCalibration(memory[PumpMemory.STEP], pump.isTimed());
    }

    /** {@return the settings} */
    public DosingPump pump() {
        return pump;
    }

    /**
     * Returns what a person should know.
     *
     * @return news and conditions, in the order of {@link PumpNotice}
     */
    public Set<PumpNotice> notices() {
        return PumpNotice.of(this);
    }

    /**
     * Returns a notice in words, with the numbers of this state.
     *
     * @param notice one of {@link #notices}
     * @return a sentence without a final dot
     */
    public String words(PumpNotice notice) {
        return PumpWords.of(Objects.requireNonNull(notice, "notice"), this);
    }

    /**
     * Returns a number that grows with each event that is taken, so that of two saves that can be restored the newer is known.
     *
     * @return number; 1 at the start, also after a loss: write over both places then
     */
    public long sequence() {
        return memory[PumpMemory.SEQUENCE];
    }

    /**
     * Returns the state as plain numbers: version, fingerprint of the settings, contents, checksum.
     *
     * @return a new array for {@link DosingPump#restore}; for JSON {@link PlainSave#of} makes texts of it
     */
    public long[] save() {
        long[] block = new long[PumpMemory.LENGTH + SavedNumbers.OVERHEAD];
        SavedNumbers.write(PumpMemory.VERSION, pump.fingerprint(), memory, block);
        return block;
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return that instanceof DosingPumpState s
                && s.pump.fingerprint() == pump.fingerprint()
                && Arrays.equals(s.memory, memory);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(memory);
    }

    /** Returns where it stands, for logs. */
    @Override
    public String toString() {
        return PumpWords.of(this);
    }
}
