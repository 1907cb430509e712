package evenwater.examples.household;

import evenwater.chemistry.analysis.Interpretation;

/** The report of a household, as text for a person. */
final class HouseholdReport {

    private final String name;
    private final Interpretation source;
    private final House house;
    private final Speech speech;
    private final boolean softenerAssumed;

    HouseholdReport(String name, Interpretation source, House house, Speech speech, boolean softenerAssumed) {
        this.name = name;
        this.source = source;
        this.house = house;
        this.speech = speech;
        this.softenerAssumed = softenerAssumed;
    }

    String text() {
        Stages stages = new Stages(source, house.train());
        Page page = new Page();
        page.title("Household water: " + name);
        if (softenerAssumed) {
            page.say(
                    "No treatment was named, so a sodium softener without leakage is assumed. Say --softener, --reverse-osmosis, "
                            + "--dose or --no-treatment for your house.");
        }
        new SourceSection(source, speech).write(page);
        new StageSection(stages, house, speech).write(page);
        new SodiumSection(stages).write(page);
        new TankSection(stages).write(page);
        new CautionSection(stages, house).write(page);
        return page.toString();
    }
}
