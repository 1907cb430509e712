package evenwater.chemistry.control;

import evenwater.chemistry.kernel.UseLearning;
import evenwater.chemistry.kernel.ValveCount;
import evenwater.chemistry.kernel.ValveKernel;
import evenwater.chemistry.kernel.ValveSetting;
import evenwater.chemistry.kernel.ValveState;
import java.util.ArrayList;
import java.util.List;

/** What was noticed, and how things stand, for people. */
final class NoticeWords {

    private final SoftenerSettings settings;
    private final ValveState state;

    NoticeWords(SoftenerSettings settings, ValveState state) {
        this.settings = settings;
        this.state = state;
    }

    List<String> of(Iterable<SoftenerNotice> notices) {
        List<String> words = new ArrayList<>();
        for (SoftenerNotice notice : notices) {
            words.add(of(notice));
        }
        if (state.count(ValveCount.REGENERATING) == 1) {
            words.add(
                    "regenerating for " + Spans.text(state.count(ValveCount.REGENERATING_FOR)) + ": water passes hard");
        }
        if (state.count(ValveCount.OVERDRAWN) > 0) {
            words.add("exhausted: " + volume(ValveCount.OVERDRAWN) + " passed hard since");
        }
        if (state.count(ValveCount.FAILED) == 1) {
            words.add("the last regeneration failed: " + volume(ValveCount.LEFT) + " taken to be left");
        }
        long failures = state.count(ValveCount.FAILURES);
        if (failures >= settings.value(ValveSetting.MOST_FAILURES)) {
            words.add(failures
                    + " regenerations in a row failed: none starts by itself until that is acknowledged or one is"
                    + " started by hand");
        }
        if (state.count(ValveCount.SALT_MISSING) != 0) {
            words.add("the salt is missing");
        }
        if (state.count(ValveCount.HOLIDAY) == 1) {
            words.add("holiday: the reserve stays at " + reserve());
        }
        return List.copyOf(words);
    }

    private String of(SoftenerNotice notice) {
        return switch (notice) {
            case CLOCK_CHANGED ->
                "the clock was changed, now "
                        + Checked.dateTime(state.count(ValveCount.CLOCK))
                        + ": no time is credited, and the day is not learned from";
            case LONG_GAP ->
                "more than the longest gap of " + Spans.text(settings.value(ValveSetting.LONGEST_GAP_SECONDS))
                        + " since the reading before: readings are missing, or the clock was put forward";
            case READING_REPEATED ->
                "reading " + state.count(ValveCount.READING)
                        + " came again with the same time: a message came twice, or the clock stands";
            case READING_REFUSED ->
                "reading " + state.count(ValveCount.REFUSED_READING)
                        + " is refused and not counted: the last believed one is "
                        + state.count(ValveCount.READING);
            case METER_UNCLEAR ->
                "readings do not go on from " + state.count(ValveCount.READING)
                        + ": no water is counted until an exchange of the meter is declared";
            case ROLLOVER_AMBIGUOUS ->
                "the counter may have rolled over once more than counted, which would be "
                        + Nanolitres.text((double) settings.value(ValveSetting.PULSE_NANOLITRES)
                                * (1L << settings.value(ValveSetting.COUNTER_BITS)))
                        + " more: the least volume was taken";
            case METER_SILENT ->
                "no pulse for " + span(ValveCount.WITHOUT_PULSE)
                        + ": the meter is stuck or nobody is there, which cannot be told; the calendar goes on";
            case REGENERATION_INTERRUPTED ->
                "the regeneration did not report its end within "
                        + Spans.text(settings.value(ValveSetting.LONGEST_REGENERATION_SECONDS))
                        + ": taken as interrupted, with nothing left";
            case REGENERATION_WITHOUT_SALT -> "the regeneration ended while the salt was missing: taken as failed";
            case REGENERATION_FINISHED_LATE ->
                "the regeneration that was taken as interrupted reported its end after all: " + volume(ValveCount.LEFT)
                        + " left";
            case REPORT_DOES_NOT_FIT ->
                "the report does not fit and is ignored: "
                        + (state.count(ValveCount.REGENERATING) == 1
                                ? "a regeneration is under way already"
                                : "no regeneration is under way");
            case DAY_LEARNED ->
                "a day was learned from: usual use " + Nanolitres.text(state.meanNanolitresPerDay()) + ", reserve "
                        + reserve();
            case LOW_DAY ->
                "a day of no use or little, " + state.count(ValveCount.LOW_DAYS) + " with little in a row: reserve "
                        + reserve();
            case OUTLIER_DAY -> "a day of uncommon use was cut for learning: reserve " + reserve();
            case TOTALS_FULL ->
                "a total has reached " + Nanolitres.text(ValveKernel.FULL_NANOLITRES) + " and stands still";
        };
    }

    private String reserve() {
        return Nanolitres.text(UseLearning.reserveNanolitres(settings.numbers(), state));
    }

    private String volume(ValveCount count) {
        return Nanolitres.text(state.count(count));
    }

    private String span(ValveCount count) {
        return Spans.text(state.count(count));
    }
}
