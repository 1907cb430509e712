package evenwater.chemistry.control;

import evenwater.chemistry.kernel.UseLearning;
import evenwater.chemistry.kernel.ValveCount;
import evenwater.chemistry.kernel.ValveEvents;
import evenwater.chemistry.kernel.ValveKernel;
import evenwater.chemistry.kernel.ValveSave;
import evenwater.chemistry.kernel.ValveSetting;
import evenwater.chemistry.kernel.ValveState;
import evenwater.chemistry.quantity.WaterQuantity;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * A metered softener at a moment: what is left, what was used, what is kept in reserve, and whether to regenerate. Each reading of the meter
 * and each report of the valve gives the next state.
 *
 * <p>The rules stand in the kernel: {@link ValveKernel} for clock, days and meter, {@link UseLearning} for the reserve,
 * {@link evenwater.chemistry.kernel.ValveRule} for the decision. Volumes are counted in whole nanolitres. Before a
 * report of the valve take a reading, so that the water is counted with the valve as it stood.
 *
 * <p>Not a safety device: the decision replaces neither the protection of the appliance against overflow, brine in the water and
 * backflow, nor a licensed installer, nor the local plumbing code. Capacity is what the owner states; a test of the hardness behind the
 * softener tells whether it is true.
 *
 * <p>Immutable and thread-safe.
 */
public final class SoftenerState {

    private final SoftenerSettings settings;
    private final ValveState numbers;
    private final int notices;

    SoftenerState(SoftenerSettings settings, ValveState numbers, int notices) {
        this.settings = settings;
        this.numbers = numbers;
        this.notices = notices;
    }

    /**
     * Begins behind a good regeneration: the whole capacity is left.
     *
     * @param settings of the softener
     * @param reading of the meter's counter; 0 to 2 to the power of its bits, less 1
     * @param at local wall time; 1970 to 9999
     * @return a state in service
     * @throws IllegalArgumentException if reading or time are out of range
     */
    public static SoftenerState regenerated(SoftenerSettings settings, long reading, LocalDateTime at) {
        Objects.requireNonNull(settings, "settings");
        return begin(settings, reading, at, settings.value(ValveSetting.CAPACITY_NANOLITRES));
    }

    /**
     * Begins with a softener of which nobody knows what is left: nothing is taken to be.
     *
     * @param settings of the softener
     * @param reading of the meter's counter; 0 to 2 to the power of its bits, less 1
     * @param at local wall time; 1970 to 9999
     * @return a state in service
     * @throws IllegalArgumentException if reading or time are out of range
     */
    public static SoftenerState exhausted(SoftenerSettings settings, long reading, LocalDateTime at) {
        Objects.requireNonNull(settings, "settings");
        return begin(settings, reading, at, 0);
    }

    private static SoftenerState begin(SoftenerSettings settings, long reading, LocalDateTime at, long left) {
        ValveState numbers = new ValveState();
        ValveKernel.begin(settings.numbers(), numbers, Checked.reading(settings, reading), Checked.clock(at), left);
        return new SoftenerState(settings, numbers, ValveKernel.OK);
    }

    /**
     * Takes a reading.
     *
     * @param reading of the meter's counter; 0 to 2 to the power of its bits, less 1
     * @param at local wall time; 1970 to 9999
     * @return the next state
     * @throws IllegalArgumentException if reading or time are out of range
     */
    public SoftenerState read(long reading, LocalDateTime at) {
        Checked.reading(settings, reading);
        long clock = Checked.clock(at);
        return next(state -> ValveKernel.step(settings.numbers(), state, reading, clock));
    }

    /**
     * Takes the first reading after the controller was without power: a gap of up to 1000 days is time that has passed, not a changed clock.
     *
     * @param reading of the meter's counter; 0 to 2 to the power of its bits, less 1
     * @param at local wall time; 1970 to 9999
     * @return the next state
     * @throws IllegalArgumentException if reading or time are out of range
     */
    public SoftenerState restarted(long reading, LocalDateTime at) {
        Checked.reading(settings, reading);
        long clock = Checked.clock(at);
        return next(state -> ValveKernel.restart(settings.numbers(), state, reading, clock));
    }

    /**
     * Reports that a regeneration has started: water passes hard. While failures hold one back, it was started by hand, and their row begins
     * anew.
     *
     * @return the next state; the same with a notice if one is under way
     */
    public SoftenerState regenerationStarted() {
        return next(state -> ValveEvents.started(settings.numbers(), state));
    }

    /**
     * Reports that a regeneration went to its end and gave the capacity of the settings.
     *
     * @return the next state; the same with a notice if none was under way
     */
    public SoftenerState regenerationFinished() {
        return regenerationFinished(settings.capacity());
    }

    /**
     * Reports that a regeneration went to its end, with the capacity that its dose of salt gave. The end of one that was taken as interrupted
     * is believed too, while no other has started.
     *
     * @param capacity above 0, above what is left for a regeneration at once, and at most 1000 m³
     * @return the next state; the same with a notice if none was under way
     * @throws IllegalArgumentException if the capacity is out of range
     */
    public SoftenerState regenerationFinished(Quantity<Volume> capacity) {
        long nanolitres = Checked.capacity(settings, capacity);
        return next(state -> ValveEvents.finished(settings.numbers(), state, nanolitres));
    }

    /**
     * Reports that a regeneration failed or was interrupted.
     *
     * @param brineDrawn whether brine had reached the resin: then nothing is taken to be left, else what was left before
     * @return the next state; the same with a notice if none was under way
     */
    public SoftenerState regenerationFailed(boolean brineDrawn) {
        return next(state -> ValveEvents.failed(state, brineDrawn));
    }

    /**
     * Reports that a person has seen to the regenerations that failed: the next may start by itself.
     *
     * @return the next state
     */
    public SoftenerState failuresAcknowledged() {
        return next(ValveEvents::failuresAcknowledged);
    }

    /**
     * Reports that the salt is missing, or was filled in.
     *
     * @param missing whether it is
     * @return the next state
     */
    public SoftenerState withSaltMissing(boolean missing) {
        return next(state -> ValveEvents.salt(state, missing));
    }

    /**
     * Declares a holiday or its end: its days teach nothing, and a meter without pulses is no trouble. The calendar goes on.
     * What is so already changes nothing.
     *
     * @param away whether nobody is there
     * @return the next state
     */
    public SoftenerState withHoliday(boolean away) {
        return next(state -> ValveEvents.holiday(state, away));
    }

    /**
     * Declares that the meter was exchanged or set back. Water between the last believed reading and this one is lost to all counts: totals are
     * too low, and {@link #left} is too high by as much; where that may matter, regenerate.
     *
     * @param reading of the new counter now; 0 to 2 to the power of its bits, less 1
     * @return the next state, which counts on from there
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerState meterExchanged(long reading) {
        Checked.reading(settings, reading);
        return next(state -> ValveEvents.meterExchanged(settings.numbers(), state, reading));
    }

    private SoftenerState next(ToIntFunction<ValveState> change) {
        ValveState copy = new ValveState();
        copy.copyFrom(numbers);
        int noticed = change.applyAsInt(copy);
        return new SoftenerState(settings, copy, noticed);
    }

    /**
     * Returns the time of the last reading.
     *
     * @return local wall time
     */
    public LocalDateTime time() {
        return Checked.dateTime(numbers.count(ValveCount.CLOCK));
    }

    /**
     * Returns what the last good regeneration gave.
     *
     * @return in litres
     */
    public WaterQuantity<Volume> capacity() {
        return volume(ValveCount.CAPACITY);
    }

    /**
     * Returns what is left of the capacity.
     *
     * @return 0 to the capacity, in litres
     */
    public WaterQuantity<Volume> left() {
        return volume(ValveCount.LEFT);
    }

    /**
     * Returns how much hard water was drawn since nothing was left.
     *
     * @return 0 while something is left, in litres
     */
    public WaterQuantity<Volume> overdrawn() {
        return volume(ValveCount.OVERDRAWN);
    }

    /**
     * Returns what is to be left at the regeneration hour so that the next day is covered.
     *
     * @return by the rule of {@link UseLearning}; at most the capacity, in litres
     */
    public WaterQuantity<Volume> reserve() {
        return Nanolitres.volume(UseLearning.reserveNanolitres(settings.numbers(), numbers));
    }

    /**
     * Returns what the household usually uses in a day.
     *
     * @return the learned mean in litres; empty before the first whole day with use
     */
    public Optional<WaterQuantity<Volume>> usualDay() {
        return numbers.count(ValveCount.DAYS) == 0
                ? Optional.empty()
                : Optional.of(Nanolitres.volume(numbers.meanNanolitresPerDay()));
    }

    /**
     * Returns what was used since the night's window last opened.
     *
     * @return of the day under way
     */
    public WaterUse today() {
        return new WaterUse(
                volume(ValveCount.TODAY_SOFTENED),
                volume(ValveCount.TODAY_BYPASSED),
                volume(ValveCount.TODAY_EXHAUSTED));
    }

    /**
     * Returns what was used since the beginning.
     *
     * @return of all days
     */
    public WaterUse total() {
        return new WaterUse(
                volume(ValveCount.TOTAL_SOFTENED),
                volume(ValveCount.TOTAL_BYPASSED),
                volume(ValveCount.TOTAL_EXHAUSTED));
    }

    /**
     * Returns how long ago the last good regeneration ended, as far as the clock could tell.
     *
     * @return 0 or more
     */
    public Duration age() {
        return Duration.ofSeconds(numbers.count(ValveCount.AGE));
    }

    /**
     * Tells whether a regeneration is under way.
     *
     * @return whether water passes hard
     */
    public boolean isRegenerating() {
        return numbers.count(ValveCount.REGENERATING) == 1;
    }

    /**
     * Tells whether and when to regenerate.
     *
     * @return the decision at this moment
     */
    public RegenerationDecision decision() {
        return DecisionWords.decide(settings, numbers);
    }

    /**
     * Returns what was noticed in the step that led here.
     *
     * @return in the order of the enum; empty if nothing was
     */
    public Set<SoftenerNotice> notices() {
        EnumSet<SoftenerNotice> noticed = EnumSet.noneOf(SoftenerNotice.class);
        for (SoftenerNotice notice : SoftenerNotice.values()) {
            if (notice.isIn(notices)) {
                noticed.add(notice);
            }
        }
        return Collections.unmodifiableSet(noticed);
    }

    /**
     * Returns what was noticed, and what else is out of the ordinary, for people.
     *
     * @return one sentence for each, with the numbers; empty if all is well
     */
    public List<String> words() {
        return new NoticeWords(settings, numbers).of(notices());
    }

    /**
     * Returns how many readings and reports were taken since the beginning. A state that begins anew starts from 0: overwrite all saves of the one
     * before.
     *
     * @return 0 or more; of two saves that can be restored the newer one has the larger number
     */
    public long sequence() {
        return numbers.count(ValveCount.SEQUENCE);
    }

    /**
     * Returns the state as plain numbers, notices apart. Keep two places and write them in turn, so that one is whole at any time; of two that are
     * whole the one with the larger {@link #sequence} is newer.
     *
     * @return a new array for {@link SoftenerSettings#restore}, see {@link ValveSave}; for JSON {@link PlainSave#of} makes texts of it
     */
    public long[] save() {
        long[] save = new long[ValveSave.LENGTH];
        ValveSave.write(settings.numbers(), numbers, save);
        return save;
    }

    private WaterQuantity<Volume> volume(ValveCount count) {
        return Nanolitres.volume(numbers.count(count));
    }

    /** States are equal if they go on alike and noticed the same. */
    @Override
    public boolean equals(@Nullable Object object) {
        return object instanceof SoftenerState other
                && notices == other.notices
                && settings.equals(other.settings)
                && numbers.isSameAs(other.numbers);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                numbers.count(ValveCount.CLOCK),
                numbers.count(ValveCount.PULSES),
                numbers.count(ValveCount.LEFT),
                notices);
    }

    /** Returns the moment and the decision. */
    @Override
    public String toString() {
        return time() + ": " + decision().words();
    }
}
