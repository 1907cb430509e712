package evenwater.examples.household;

import evenwater.chemistry.planning.HouseholdUse;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that a softener is planned by. */
final class PlanOptions {

    @Option(names = "--people", paramLabel = "number", description = "People of the household; 4 if nothing is stated.")
    private @Nullable String people;

    @Option(
            names = "--daily-use",
            paramLabel = "volume",
            description =
                    "Water of a day, such as '500 L' or '150 US gal', or of several measured days between commas; with --people, of "
                            + "each of them.")
    private @Nullable String dailyUse;

    @Option(
            names = "--resin",
            paramLabel = "volume",
            description = "Resin of the softener, such as '1 ft3' or '25 L'; if not stated, as much as lasts a week.")
    private @Nullable String resin;

    @Option(
            names = "--salt-dose",
            paramLabel = "dose",
            description =
                    "Salt of a regeneration as sodium chloride, such as '8 lb/ft3'; if not stated, the one that wastes least.")
    private @Nullable String dose;

    @Option(
            names = "--days",
            paramLabel = "number",
            description = "Days between regenerations that the dose must last, such as 7.")
    private @Nullable String days;

    @Option(names = "--counter-flow", description = "The brine goes against the service.")
    private boolean counterFlow;

    private boolean isSomethingSaid() {
        return people != null || dailyUse != null || resin != null || dose != null || days != null || counterFlow;
    }

    void refuseWithoutSoftener(House house) {
        if (isSomethingSaid() && house.softener().isEmpty()) {
            throw new UsageException(
                    "--people, --daily-use, --resin, --salt-dose, --days and --counter-flow need a softener");
        }
    }

    PlanWish wish(PlanWish usual) {
        if (dose != null && days != null) {
            throw new UsageException("--salt-dose and --days contradict each other: leave one out");
        }
        Optional<HouseholdUse> use = use();
        return new PlanWish(
                use.isPresent() ? use : usual.use(),
                Optional.ofNullable(resin).map(PlanOptions::resin).or(usual::resin),
                Optional.ofNullable(dose).map(text -> House.option("--salt-dose", () -> SaltDose.parse(text))),
                Optional.ofNullable(days).map(PlanOptions::days).orElse(OptionalDouble.empty()),
                counterFlow);
    }

    private Optional<HouseholdUse> use() {
        if (people == null) {
            return Optional.ofNullable(dailyUse).map(text -> House.option("--daily-use", () -> measured(text)));
        }
        if (!people.strip().matches("[0-9]{1,5}")) {
            throw new UsageException("--people: '" + people + "' is no number of people such as 4");
        }
        int number = Integer.parseInt(people.strip());
        String each = dailyUse;
        return Optional.of(
                each == null
                        ? House.option("--people", () -> HouseholdUse.ofPeople(number))
                        : House.option(
                                "--people and --daily-use",
                                () -> HouseholdUse.ofPeople(number, WaterUnits.parseVolume(each))));
    }

    private static HouseholdUse measured(String text) {
        if (!text.contains(",")) {
            return HouseholdUse.ofDaily(WaterUnits.parseVolume(text));
        }
        return HouseholdUse.ofDays(
                Stream.of(text.split(",", -1)).map(WaterUnits::parseVolume).toList());
    }

    private static WaterQuantity<Volume> resin(String text) {
        WaterQuantity<Volume> volume = House.option("--resin", () -> WaterUnits.parseVolume(text));
        if (!(volume.getValue() > 0)) {
            throw new UsageException("--resin: volume of the resin must be positive, but was " + volume);
        }
        return volume;
    }

    private static boolean isUsual(double days) {
        return days >= 1 && days <= 365;
    }

    private static OptionalDouble days(String text) {
        if (!text.strip().matches("[0-9]{1,3}(\\.[0-9]{1,6})?") || !isUsual(Double.parseDouble(text))) {
            throw new UsageException("--days: '" + text + "' is no number of days from 1 to 365, such as 7");
        }
        return OptionalDouble.of(Double.parseDouble(text));
    }
}
