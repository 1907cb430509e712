package evenwater.chemistry.control;

/** What becomes of portions that a pump missed: through a loss of power, an empty reservoir or the cap. */
public enum MissedDoses {

    /** They are left out; the safe choice where too much harms and a day without does not. */
    SKIP,

    /**
     * Later portions make some of them up: each at most doubles, and only so many as the pump's settings say, always under the cap. Portions let
     * go by a pause are not made up.
     */
    CATCH_UP
}
