package evenwater.chemistry.control;

import evenwater.chemistry.kernel.RegenerationCount;
import evenwater.chemistry.kernel.RegenerationKernel;
import evenwater.chemistry.kernel.RegenerationSetting;
import evenwater.chemistry.kernel.RegenerationState;
import evenwater.chemistry.kernel.UseLearning;
import java.util.ArrayList;
import java.util.List;

/** What was noticed, and how things stand, for people. */
final class NoticeWords {

    private final SoftenerSettings settings;
    private final RegenerationState state;

    NoticeWords(SoftenerSettings settings, RegenerationState state) {
        this.settings = settings;
        this.state = state;
    }

    List<String> of(Iterable<SoftenerNotice> notices) {
        List<String> words = new ArrayList<>();
        for (SoftenerNotice notice : notices) {
            words.add(of(notice));
        }
        if (state.count(RegenerationCount.REGENERATING) == 1) {
            words.add("regenerating for " + Spans.text(state.count(RegenerationCount.REGENERATING_FOR))
                    + ": water passes hard");
        }
        if (state.count(RegenerationCount.OVERDRAWN) > 0) {
            words.add("exhausted: " + volume(RegenerationCount.OVERDRAWN) + " passed hard since");
        }
        if (state.count(RegenerationCount.FAILED) == 1) {
            words.add("the last regeneration failed: " + volume(RegenerationCount.LEFT) + " taken to be left");
        }
        if (state.count(RegenerationCount.SALT_MISSING) == 1) {
            words.add("the salt is missing");
        }
        if (state.count(RegenerationCount.HOLIDAY) == 1) {
            words.add("holiday: the reserve stays at " + reserve());
        }
        return List.copyOf(words);
    }

    private String of(SoftenerNotice notice) {
        return switch (notice) {
            case CLOCK_CHANGED ->
                "the clock was changed, now "
                        + Checked.dateTime(state.count(RegenerationCount.CLOCK))
                        + ": no time is credited, and the day is not learned from";
            case READING_REFUSED ->
                "reading " + state.count(RegenerationCount.REFUSED_READING)
                        + " is refused and not counted: the last believed one is "
                        + state.count(RegenerationCount.READING);
            case METER_UNCLEAR ->
                "readings do not go on from " + state.count(RegenerationCount.READING)
                        + ": no water is counted until an exchange of the meter is declared";
            case ROLLOVER_AMBIGUOUS ->
                "the counter may have rolled over once more than counted, which would be "
                        + Nanolitres.text((double) settings.value(RegenerationSetting.PULSE_NANOLITRES)
                                * (1L << settings.value(RegenerationSetting.COUNTER_BITS)))
                        + " more: the least volume was taken";
            case METER_SILENT ->
                "no pulse for " + span(RegenerationCount.WITHOUT_PULSE)
                        + ": the meter is stuck or nobody is there, which cannot be told; the calendar goes on";
            case REGENERATION_INTERRUPTED ->
                "the regeneration did not report its end within "
                        + Spans.text(settings.value(RegenerationSetting.LONGEST_REGENERATION_SECONDS))
                        + ": taken as interrupted, with nothing left";
            case REGENERATION_WITHOUT_SALT -> "the regeneration ended while the salt was missing: taken as failed";
            case REPORT_DOES_NOT_FIT ->
                "the report does not fit and is ignored: "
                        + (state.count(RegenerationCount.REGENERATING) == 1
                                ? "a regeneration is under way already"
                                : "no regeneration is under way");
            case DAY_LEARNED ->
                "a day was learned from: usual use " + Nanolitres.text(state.meanNanolitresPerDay()) + ", reserve "
                        + reserve();
            case LOW_DAY ->
                "a day of no use or little, " + state.count(RegenerationCount.LOW_DAYS)
                        + " with little in a row: reserve " + reserve();
            case OUTLIER_DAY -> "a day of uncommon use was cut for learning: reserve " + reserve();
            case TOTALS_FULL ->
                "a total has reached " + Nanolitres.text(RegenerationKernel.FULL_NANOLITRES) + " and stands still";
        };
    }

    private String reserve() {
        return Nanolitres.text(UseLearning.reserveNanolitres(settings.numbers(), state));
    }

    private String volume(RegenerationCount count) {
        return Nanolitres.text(state.count(count));
    }

    private String span(RegenerationCount count) {
        return Spans.text(state.count(count));
    }
}
