package evenwater.chemistry.control;

import evenwater.chemistry.control.RegenerationDecision.Due;
import evenwater.chemistry.control.RegenerationDecision.Hold;
import evenwater.chemistry.control.RegenerationDecision.Reason;
import evenwater.chemistry.kernel.UseLearning;
import evenwater.chemistry.kernel.ValveCount;
import evenwater.chemistry.kernel.ValveRule;
import evenwater.chemistry.kernel.ValveSetting;
import evenwater.chemistry.kernel.ValveSettings;
import evenwater.chemistry.kernel.ValveState;

/** The codes of {@link ValveRule} as a decision with its words. */
final class DecisionWords {

    private static final String UNCLEAR =
            "; no water is counted until an exchange of the meter is declared, so more may be used up";

    private DecisionWords() {}

    static RegenerationDecision decide(SoftenerSettings settings, ValveState state) {
        ValveSettings numbers = settings.numbers();
        Due due = due(ValveRule.due(numbers, state));
        Reason reason = reason(ValveRule.reason(numbers, state));
        Hold hold = hold(ValveRule.hold(numbers, state));
        String words = words(settings, state, due, reason, hold);
        boolean unclear = state.count(ValveCount.REFUSED_READINGS) >= settings.value(ValveSetting.AGREEING_READINGS);
        return new RegenerationDecision(due, reason, hold, unclear ? words + UNCLEAR : words);
    }

    private static Due due(int code) {
        return switch (code) {
            case ValveRule.AT_NIGHT -> Due.AT_NIGHT;
            case ValveRule.AT_ONCE -> Due.AT_ONCE;
            default -> Due.NOT;
        };
    }

    private static Reason reason(int code) {
        return switch (code) {
            case ValveRule.EXHAUSTED -> Reason.EXHAUSTED;
            case ValveRule.NEARLY_EXHAUSTED -> Reason.NEARLY_EXHAUSTED;
            case ValveRule.RESERVE -> Reason.RESERVE;
            case ValveRule.CALENDAR -> Reason.CALENDAR;
            default -> Reason.NONE;
        };
    }

    private static Hold hold(int code) {
        return switch (code) {
            case ValveRule.HELD_BY_SALT -> Hold.NO_SALT;
            case ValveRule.HELD_BY_FAILURES -> Hold.FAILURES;
            case ValveRule.HELD_BY_INTERVAL -> Hold.SHORTEST_INTERVAL;
            case ValveRule.HELD_FOR_NIGHT -> Hold.NIGHT;
            default -> Hold.NONE;
        };
    }

    private static String words(SoftenerSettings settings, ValveState state, Due due, Reason reason, Hold hold) {
        if (due == Due.NOT) {
            return state.count(ValveCount.REGENERATING) == 1
                    ? "a regeneration is under way"
                    : "no regeneration is due: " + left(state) + " left, reserve " + reserve(settings, state);
        }
        String night = "at night from " + settings.nightBegins();
        String when = hold == Hold.NONE ? "now" : due == Due.AT_ONCE ? "at once" : night;
        return "regeneration due " + when + ": " + why(settings, state, reason) + heldBy(settings, state, hold);
    }

    private static String why(SoftenerSettings settings, ValveState state, Reason reason) {
        return switch (reason) {
            case EXHAUSTED ->
                "nothing is left, " + Nanolitres.text(state.count(ValveCount.OVERDRAWN)) + " passed hard since";
            case NEARLY_EXHAUSTED ->
                left(state) + " left, at once from " + Nanolitres.text(settings.value(ValveSetting.AT_ONCE_NANOLITRES));
            case RESERVE -> left(state) + " left do not cover the reserve of " + reserve(settings, state);
            default ->
                "the last one is " + Spans.text(state.count(ValveCount.AGE)) + " old, at most "
                        + Spans.text(settings.value(ValveSetting.LONGEST_AGE_SECONDS)) + " allowed";
        };
    }

    private static String heldBy(SoftenerSettings settings, ValveState state, Hold hold) {
        return switch (hold) {
            case NO_SALT -> "; held back, the salt is missing";
            case FAILURES ->
                "; held back, " + state.count(ValveCount.FAILURES)
                        + " in a row failed: acknowledge it or start one by hand";
            case SHORTEST_INTERVAL ->
                "; held back, the last one ended "
                        + Spans.text(state.count(ValveCount.SINCE_END)) + " ago, at least "
                        + Spans.text(settings.value(ValveSetting.SHORTEST_INTERVAL_SECONDS)) + " wanted";
            default -> "";
        };
    }

    private static String left(ValveState state) {
        return Nanolitres.text(state.count(ValveCount.LEFT));
    }

    private static String reserve(SoftenerSettings settings, ValveState state) {
        return Nanolitres.text(UseLearning.reserveNanolitres(settings.numbers(), state));
    }
}
