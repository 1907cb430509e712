package evenwater.lessons;

/** How far a pupil has come. */
public enum Level {
    /** One chain of exact factors. */
    UNITS(1, "units"),

    /** Charges instead of milligrams: equivalents, hardness, what a softener exchanges, dilution. */
    CHARGES(2, "charges"),

    /** Several steps: leakage and bypass, a blend for a target, hydrates by weight, carbon dioxide. */
    TREATMENT(3, "treatment");

    private final int number;
    private final String title;

    Level(int number, String title) {
        this.number = number;
        this.title = title;
    }

    /**
     * Returns the number of the level.
     *
     * @return 1 to 3
     */
    public int number() {
        return number;
    }

    /**
     * Returns what the level is about.
     *
     * @return a word
     */
    public String title() {
        return title;
    }

    /**
     * Returns the level of a number.
     *
     * @param number 1 to 3
     * @return the level
     * @throws IllegalArgumentException if there is no such level
     */
    public static Level of(int number) {
        for (Level level : values()) {
            if (level.number == number) {
                return level;
            }
        }
        throw new IllegalArgumentException("level must be from 1 to 3, but was " + number);
    }
}
