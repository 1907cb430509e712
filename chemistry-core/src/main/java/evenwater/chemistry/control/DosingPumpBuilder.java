package evenwater.chemistry.control;

import static evenwater.chemistry.kernel.PumpSettings.LARGEST_CAP;
import static evenwater.chemistry.kernel.PumpSettings.LARGEST_PER_LITRE;
import static evenwater.chemistry.kernel.PumpSettings.LARGEST_RESERVOIR;
import static evenwater.chemistry.kernel.PumpSettings.MOST_PORTIONS;

import evenwater.chemistry.kernel.PumpSettings;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/**
 * Builds a {@link DosingPump}. Stating something twice replaces it.
 *
 * <p>Without a statement: no schedule, nothing for added water, missed doses skipped, an hour of grace, a tube that only a person can
 * declare full, a warning a week before the reservoir is empty, a note when a calibration differs by a tenth, a quarter of an hour of
 * waiting for the end of a run. These figures are own rules.
 */
public final class DosingPumpBuilder {

    private static final long DAY = Duration.ofDays(1).toSeconds();

    private final StockSolution stock;
    private final PumpCalibration calibration;
    private final long[] s = new long[PumpSettings.LENGTH];
    private MissedDoses policy = MissedDoses.SKIP;
    private int mostPortions; // 0 if not stated

    DosingPumpBuilder(
            StockSolution stock, PumpCalibration calibration, Quantity<Volume> dailyCap, Quantity<Volume> reservoir) {
        this.stock = Objects.requireNonNull(stock, "stock");
        this.calibration = Objects.requireNonNull(calibration, "calibration");
        s[PumpSettings.CAP] = PumpUnits.picolitres("daily cap", dailyCap, 1, LARGEST_CAP);
        s[PumpSettings.RESERVOIR] = PumpUnits.picolitres("reservoir", reservoir, 1, LARGEST_RESERVOIR);
        s[PumpSettings.GRACE] = Duration.ofHours(1).toSeconds();
        s[PumpSettings.LOW_DAYS] = 7;
        s[PumpSettings.DRIFT_PER_MILLE] = 100;
        s[PumpSettings.CONFIRM_WITHIN] = Duration.ofMinutes(15).toSeconds();
        s[PumpSettings.MILLISECONDS_PER_STEP] = calibration.isTimed() ? 1 : 0;
    }

    /**
     * States what the schedule gives a day, in equal portions.
     *
     * @param volume of stock a day; above 0, at most the daily cap
     * @param times of the portions; 1 to 24 different ones, on whole seconds
     * @return this builder
     * @throws IllegalArgumentException if the dose is above the cap, or the times are too many or the same
     */
    public DosingPumpBuilder dailyDose(Quantity<Volume> volume, LocalTime... times) {
        long daily = PumpUnits.picolitres("daily dose of stock under the daily cap", volume, 1, s[PumpSettings.CAP]);
        List<Integer> seconds = Stream.of(times)
                .map(LocalTime::toSecondOfDay)
                .distinct()
                .sorted()
                .toList();
        if (seconds.isEmpty() || seconds.size() != times.length || seconds.size() > MOST_PORTIONS) {
            throw new IllegalArgumentException(
                    "times of the portions must be 1 to 24 different ones, but were " + List.of(times));
        }
        s[PumpSettings.DAILY] = daily;
        s[PumpSettings.PORTIONS] = seconds.size();
        for (int i = 0; i < MOST_PORTIONS; i++) {
            s[PumpSettings.TIMES + i] = i < seconds.size() ? seconds.get(i) : 0;
        }
        return this;
    }

    /**
     * States what each litre of added water gets, as of a top-off or a change of water.
     *
     * @param volume of stock for each litre; 0 to 100 mL
     * @return this builder
     */
    public DosingPumpBuilder dosePerLitreOfAddedWater(Quantity<Volume> volume) {
        s[PumpSettings.PER_LITRE] =
                PumpUnits.picolitres("stock for a litre of added water", volume, 0, LARGEST_PER_LITRE);
        return this;
    }

    /**
     * States what becomes of missed doses.
     *
     * @param missed skip or catch up
     * @return this builder
     */
    public DosingPumpBuilder missedDoses(MissedDoses missed) {
        policy = Objects.requireNonNull(missed, "missed");
        return this;
    }

    /**
     * States how many missed portions are made up at most; 1 without a statement. Belongs to {@link MissedDoses#CATCH_UP}.
     *
     * @param portions 1 to 24
     * @return this builder
     */
    public DosingPumpBuilder catchUpAtMost(int portions) {
        if (portions < 1 || portions > MOST_PORTIONS) {
            throw new IllegalArgumentException("portions to make up must be from 1 to 24, but were " + portions);
        }
        mostPortions = portions;
        return this;
    }

    /**
     * States how late a portion may be given before it counts as missed.
     *
     * @param grace 1 minute to 1 day
     * @return this builder
     */
    public DosingPumpBuilder grace(Duration grace) {
        s[PumpSettings.GRACE] = PumpUnits.seconds("grace", grace, 60, DAY);
        return this;
    }

    /**
     * States what stays in the reservoir below the intake of the tube.
     *
     * @param volume 0 to less than the reservoir
     * @return this builder
     */
    public DosingPumpBuilder unusable(Quantity<Volume> volume) {
        s[PumpSettings.UNUSABLE] =
                PumpUnits.picolitres("unusable rest of the reservoir", volume, 0, s[PumpSettings.RESERVOIR] - 1);
        return this;
    }

    /**
     * States what the tube holds, which is also the most that one priming may move.
     *
     * @param volume 0 to 100 L
     * @return this builder
     */
    public DosingPumpBuilder tube(Quantity<Volume> volume) {
        s[PumpSettings.TUBE] = PumpUnits.picolitres("volume of the tube", volume, 0, LARGEST_CAP);
        return this;
    }

    /**
     * States below how many days of use the reservoir is low.
     *
     * @param days 0 to 366; 0 for no warning
     * @return this builder
     */
    public DosingPumpBuilder warnBelowDays(int days) {
        if (days < 0 || days > 366) {
            throw new IllegalArgumentException("days of use to warn below must be from 0 to 366, but were " + days);
        }
        s[PumpSettings.LOW_DAYS] = days;
        return this;
    }

    /**
     * States by which share a new calibration may differ from the one before, as a tube wears, before it is noted.
     *
     * @param share no unit; 0.001 to 1
     * @return this builder
     */
    public DosingPumpBuilder noteCalibrationDrift(double share) {
        if (!(share >= 0.001 && share <= 1)) {
            throw new IllegalArgumentException("drift of a calibration must be from 0.001 to 1, but was " + share);
        }
        s[PumpSettings.DRIFT_PER_MILLE] = Math.round(share * 1000);
        return this;
    }

    /**
     * States how long the end of a run is waited for, besides the run itself if the pump is timed, before it counts as made in full.
     *
     * @param time 1 second to 1 day
     * @return this builder
     */
    public DosingPumpBuilder confirmWithin(Duration time) {
        s[PumpSettings.CONFIRM_WITHIN] = PumpUnits.seconds("time to confirm", time, 1, DAY);
        return this;
    }

    /**
     * Returns the pump.
     *
     * @return its settings, complete
     * @throws IllegalArgumentException if portions to make up are stated, but missed doses are skipped
     */
    public DosingPump build() {
        if (policy == MissedDoses.SKIP && mostPortions > 0) {
            throw new IllegalArgumentException(
                    "missed doses must be CATCH_UP where portions to make up are stated, but were "
                            + "SKIP with at most " + mostPortions);
        }
        long[] complete = s.clone();
        complete[PumpSettings.CATCH_UP] = policy == MissedDoses.SKIP ? 0 : Math.max(1, mostPortions);
        return new DosingPump(stock, calibration, complete);
    }
}
