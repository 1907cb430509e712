package evenwater.chemistry.control;

import evenwater.chemistry.control.RegenerationDecision.Due;
import evenwater.chemistry.control.RegenerationDecision.Hold;
import evenwater.chemistry.control.RegenerationDecision.Reason;
import evenwater.chemistry.kernel.RegenerationCount;
import evenwater.chemistry.kernel.RegenerationRule;
import evenwater.chemistry.kernel.RegenerationSetting;
import evenwater.chemistry.kernel.RegenerationSettings;
import evenwater.chemistry.kernel.RegenerationState;
import evenwater.chemistry.kernel.UseLearning;

/** The codes of {@link RegenerationRule} as a decision with its words. */
final class DecisionWords {

    private DecisionWords() {}

    static RegenerationDecision decide(SoftenerSettings settings, RegenerationState state) {
        RegenerationSettings numbers = settings.numbers();
        Due due = due(RegenerationRule.due(numbers, state));
        Reason reason = reason(RegenerationRule.reason(numbers, state));
        Hold hold = hold(RegenerationRule.hold(numbers, state));
        return new RegenerationDecision(due, reason, hold, words(settings, state, due, reason, hold));
    }

    private static Due due(int code) {
        return switch (code) {
            case RegenerationRule.AT_NIGHT -> Due.AT_NIGHT;
            case RegenerationRule.AT_ONCE -> Due.AT_ONCE;
            default -> Due.NOT;
        };
    }

    private static Reason reason(int code) {
        return switch (code) {
            case RegenerationRule.EXHAUSTED -> Reason.EXHAUSTED;
            case RegenerationRule.NEARLY_EXHAUSTED -> Reason.NEARLY_EXHAUSTED;
            case RegenerationRule.RESERVE -> Reason.RESERVE;
            case RegenerationRule.CALENDAR -> Reason.CALENDAR;
            default -> Reason.NONE;
        };
    }

    private static Hold hold(int code) {
        return switch (code) {
            case RegenerationRule.HELD_BY_SALT -> Hold.NO_SALT;
            case RegenerationRule.HELD_BY_INTERVAL -> Hold.SHORTEST_INTERVAL;
            case RegenerationRule.HELD_FOR_NIGHT -> Hold.NIGHT;
            default -> Hold.NONE;
        };
    }

    private static String words(SoftenerSettings settings, RegenerationState state, Due due, Reason reason, Hold hold) {
        if (due == Due.NOT) {
            return state.count(RegenerationCount.REGENERATING) == 1
                    ? "a regeneration is under way"
                    : "no regeneration is due: " + left(state) + " left, reserve " + reserve(settings, state);
        }
        String night = "at night from " + settings.nightBegins();
        String when = hold == Hold.NONE ? "now" : due == Due.AT_ONCE ? "at once" : night;
        return "regeneration due " + when + ": " + why(settings, state, reason) + heldBy(settings, state, hold);
    }

    private static String why(SoftenerSettings settings, RegenerationState state, Reason reason) {
        return switch (reason) {
            case EXHAUSTED ->
                "nothing is left, " + Nanolitres.text(state.count(RegenerationCount.OVERDRAWN)) + " passed hard since";
            case NEARLY_EXHAUSTED ->
                left(state) + " left, at once from "
                        + Nanolitres.text(settings.value(RegenerationSetting.AT_ONCE_NANOLITRES));
            case RESERVE -> left(state) + " left do not cover the reserve of " + reserve(settings, state);
            default ->
                "the last one is " + Spans.text(state.count(RegenerationCount.AGE)) + " old, at most "
                        + Spans.text(settings.value(RegenerationSetting.LONGEST_AGE_SECONDS)) + " allowed";
        };
    }

    private static String heldBy(SoftenerSettings settings, RegenerationState state, Hold hold) {
        return switch (hold) {
            case NO_SALT -> "; held back, the salt is missing";
            case SHORTEST_INTERVAL ->
                "; held back, the last one ended "
                        + Spans.text(state.count(RegenerationCount.SINCE_END)) + " ago, at least "
                        + Spans.text(settings.value(RegenerationSetting.SHORTEST_INTERVAL_SECONDS)) + " wanted";
            default -> "";
        };
    }

    private static String left(RegenerationState state) {
        return Nanolitres.text(state.count(RegenerationCount.LEFT));
    }

    private static String reserve(SoftenerSettings settings, RegenerationState state) {
        return Nanolitres.text(UseLearning.reserveNanolitres(settings.numbers(), state));
    }
}
