package evenwater.chemistry.verdict;

/** What makes a caution apply. */
public enum CautionTopic {
    /** Much sodium where people may drink the water. */
    SODIUM("sodium"),
    /** Potassium from a softener or a dose. */
    POTASSIUM("potassium"),
    /** An acid neutralizer. */
    NEUTRALIZER("neutralizer"),
    /** A softener. */
    SOFTENER("softener"),
    /** A reverse-osmosis membrane. */
    MEMBRANE("membrane"),
    /** An acid is dosed. */
    ACID("acid"),
    /** A strong base or a carbonate is dosed. */
    BASE("base"),
    /** The pH rises, where ammonia may be in the water. */
    AMMONIA("ammonia"),
    /** Chlorine is in the water, or unknown. */
    CHLORINE("chlorine"),
    /** Carbon dioxide is dosed, or high. */
    CARBON_DIOXIDE("carbon dioxide"),
    /** Copper is in the water, or unknown. */
    COPPER("copper"),
    /** Nitrate above the guideline for drinking water. */
    NITRATE("nitrate"),
    /** Nitrite above the guideline for drinking water. */
    NITRITE("nitrite"),
    /** Fluoride above the guideline for drinking water. */
    FLUORIDE("fluoride"),
    /** A poison that the report names and no water holds. */
    POISON("poison"),
    /** Water stands in pipes or a resin bed. */
    STAGNANT("stagnant"),
    /** Something is dosed. */
    DOSE("dose"),
    /** The water of a tank is changed for another. */
    CHANGE("change"),
    /** Whatever is computed. */
    ALWAYS("always");

    private final String word;

    CautionTopic(String word) {
        this.word = word;
    }

    /** Returns it in a word or two. */
    @Override
    public String toString() {
        return word;
    }
}
