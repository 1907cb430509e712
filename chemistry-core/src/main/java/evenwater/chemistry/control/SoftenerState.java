package evenwater.chemistry.control;

import evenwater.chemistry.kernel.RegenerationCount;
import evenwater.chemistry.kernel.RegenerationEvents;
import evenwater.chemistry.kernel.RegenerationKernel;
import evenwater.chemistry.kernel.RegenerationSave;
import evenwater.chemistry.kernel.RegenerationSetting;
import evenwater.chemistry.kernel.RegenerationState;
import evenwater.chemistry.kernel.UseLearning;
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
 * <p>The rules stand in the kernel: {@link RegenerationKernel} for clock, days and meter, {@link UseLearning} for the reserve,
 * {@link evenwater.chemistry.kernel.RegenerationRule} for the decision. Volumes are counted in whole nanolitres. Before a
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
    private final RegenerationState numbers;
    private final int notices;

    private SoftenerState(SoftenerSettings settings, RegenerationState numbers, int notices) {
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
        return begin(settings, reading, at, settings.value(RegenerationSetting.CAPACITY_NANOLITRES));
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
        RegenerationState numbers = new RegenerationState();
        RegenerationKernel.begin(
                settings.numbers(), numbers, Checked.reading(settings, reading), Checked.clock(at), left);
        return new SoftenerState(settings, numbers, RegenerationKernel.OK);
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
        return next(state -> RegenerationKernel.step(settings.numbers(), state, reading, clock));
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
        return next(state -> RegenerationKernel.restart(settings.numbers(), state, reading, clock));
    }

    /**
     * Reports that a regeneration has started: water passes hard.
     *
     * @return the next state; the same with a notice if one is under way
     */
    public SoftenerState regenerationStarted() {
        return next(RegenerationEvents::started);
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
     * Reports that a regeneration went to its end, with the capacity that its dose of salt gave.
     *
     * @param capacity above 0 and at most 1000 m³
     * @return the next state; the same with a notice if none was under way
     * @throws IllegalArgumentException if the capacity is out of range
     */
    public SoftenerState regenerationFinished(Quantity<Volume> capacity) {
        long nanolitres = Nanolitres.of(capacity);
        if (nanolitres < 1 || nanolitres > RegenerationKernel.LARGEST_CAPACITY) {
            throw new IllegalArgumentException("capacity must be above 0 L and at most 1000000 L, but was " + capacity);
        }
        return next(state -> RegenerationEvents.finished(state, nanolitres));
    }

    /**
     * Reports that a regeneration failed or was interrupted.
     *
     * @param brineDrawn whether brine had reached the resin: then nothing is taken to be left, else what was left before
     * @return the next state; the same with a notice if none was under way
     */
    public SoftenerState regenerationFailed(boolean brineDrawn) {
        return next(state -> RegenerationEvents.failed(state, brineDrawn));
    }

    /**
     * Reports that the salt is missing, or was filled in.
     *
     * @param missing whether it is
     * @return the next state
     */
    public SoftenerState withSaltMissing(boolean missing) {
        return next(state -> RegenerationEvents.salt(state, missing));
    }

    /**
     * Declares a holiday or its end: its days teach nothing, and a meter without pulses is no trouble. The calendar goes on.
     *
     * @param away whether nobody is there
     * @return the next state
     */
    public SoftenerState withHoliday(boolean away) {
        return next(state -> RegenerationEvents.holiday(state, away));
    }

    /**
     * Declares that the meter was exchanged or set back. Water since the last believed reading is not counted.
     *
     * @param reading of the new counter now; 0 to 2 to the power of its bits, less 1
     * @return the next state, which counts on from there
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerState meterExchanged(long reading) {
        Checked.reading(settings, reading);
        return next(state -> RegenerationEvents.meterExchanged(settings.numbers(), state, reading));
    }

    private SoftenerState next(ToIntFunction<RegenerationState> change) {
        RegenerationState copy = new RegenerationState();
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
        return Checked.dateTime(numbers.count(RegenerationCount.CLOCK));
    }

    /**
     * Returns what the last good regeneration gave.
     *
     * @return in litres
     */
    public WaterQuantity<Volume> capacity() {
        return volume(RegenerationCount.CAPACITY);
    }

    /**
     * Returns what is left of the capacity.
     *
     * @return 0 to the capacity, in litres
     */
    public WaterQuantity<Volume> left() {
        return volume(RegenerationCount.LEFT);
    }

    /**
     * Returns how much hard water was drawn since nothing was left.
     *
     * @return 0 while something is left, in litres
     */
    public WaterQuantity<Volume> overdrawn() {
        return volume(RegenerationCount.OVERDRAWN);
    }

    /**
     * Returns what is to be left at the regeneration hour so that the next day is covered.
     *
     * @return {@code m + 2 d} of {@link UseLearning}, between the least reserve and the capacity, in litres
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
        return numbers.count(RegenerationCount.DAYS) == 0
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
                volume(RegenerationCount.TODAY_SOFTENED),
                volume(RegenerationCount.TODAY_BYPASSED),
                volume(RegenerationCount.TODAY_EXHAUSTED));
    }

    /**
     * Returns what was used since the beginning.
     *
     * @return of all days
     */
    public WaterUse total() {
        return new WaterUse(
                volume(RegenerationCount.TOTAL_SOFTENED),
                volume(RegenerationCount.TOTAL_BYPASSED),
                volume(RegenerationCount.TOTAL_EXHAUSTED));
    }

    /**
     * Returns how long ago the last good regeneration ended, as far as the clock could tell.
     *
     * @return 0 or more
     */
    public Duration age() {
        return Duration.ofSeconds(numbers.count(RegenerationCount.AGE));
    }

    /**
     * Tells whether a regeneration is under way.
     *
     * @return whether water passes hard
     */
    public boolean isRegenerating() {
        return numbers.count(RegenerationCount.REGENERATING) == 1;
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
     * Returns the state as plain numbers, notices apart. Keep two places and write them in turn, so that one is whole at any time.
     *
     * @return a new array, see {@link RegenerationSave}
     */
    public long[] save() {
        long[] save = new long[RegenerationSave.LENGTH];
        RegenerationSave.write(settings.numbers(), numbers, save);
        return save;
    }

    /**
     * Returns the state that was saved under these settings; {@link #restarted} comes next.
     *
     * @param settings the same as then
     * @param save as {@link #save} gave it
     * @return the state
     * @throws UnusableSaveException if the save is torn, damaged, of another version, or made under other settings
     */
    public static SoftenerState restore(SoftenerSettings settings, long[] save) {
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(save, "save");
        RegenerationState numbers = new RegenerationState();
        Checked.save(RegenerationSave.read(settings.numbers(), numbers, save), save.length);
        return new SoftenerState(settings, numbers, RegenerationKernel.OK);
    }

    /**
     * Returns the state that was saved, under settings that were changed on purpose: volumes stay, and the day is not learned from.
     *
     * @param settings to go on with
     * @param save as {@link #save} gave it
     * @return the state
     * @throws UnusableSaveException if the save is torn, damaged or of another version, or its reading too large for the counter
     */
    public static SoftenerState restoreUnderOtherSettings(SoftenerSettings settings, long[] save) {
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(save, "save");
        RegenerationState numbers = new RegenerationState();
        Checked.save(RegenerationSave.readUnderOtherSettings(settings.numbers(), numbers, save), save.length);
        return new SoftenerState(settings, numbers, RegenerationKernel.OK);
    }

    private WaterQuantity<Volume> volume(RegenerationCount count) {
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
                numbers.count(RegenerationCount.CLOCK),
                numbers.count(RegenerationCount.PULSES),
                numbers.count(RegenerationCount.LEFT),
                notices);
    }

    /** Returns the moment and the decision. */
    @Override
    public String toString() {
        return time() + ": " + decision().words();
    }
}
