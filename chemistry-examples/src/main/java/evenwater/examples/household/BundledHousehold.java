package evenwater.examples.household;

import evenwater.chemistry.planning.HouseholdUse;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Households of our own invention that come with the program. */
enum BundledHousehold {

    /** A hard well with softener, membrane and salts that are put back. */
    LARCH_LANE("larch-lane") {
        @Override
        House house() {
            return new House(
                    Optional.empty(),
                    Optional.of(House.softener("sodium", Optional.of("0.5 gpg"), Optional.empty())),
                    Optional.of(House.membrane("0.95,0.98", Optional.of("0.3"), List.of())),
                    Optional.empty(),
                    List.of());
        }

        @Override
        String tank() {
            return "planted tank with CO₂";
        }

        @Override
        PlanWish plan() {
            return PlanWish.of(HouseholdUse.ofPeople(3), WaterUnits.volume(2, WaterUnits.CUBIC_FOOT));
        }
    },

    /** A soft acid well with a calcite neutralizer and a softener behind it. */
    FERN_HOLLOW("fern-hollow") {
        @Override
        House house() {
            return new House(
                    Optional.of(House.neutralizer("calcite", Optional.empty(), Optional.empty(), Optional.empty())),
                    Optional.of(House.softener("sodium", Optional.empty(), Optional.empty())),
                    Optional.empty(),
                    Optional.empty(),
                    List.of());
        }

        @Override
        String tank() {
            return "soft-water community (tetra, angelfish, dwarf cichlid)";
        }

        @Override
        PlanWish plan() {
            return PlanWish.of(
                    HouseholdUse.ofPeople(2, WaterUnits.volume(140, WaterUnits.LITRE)),
                    WaterUnits.volume(12, WaterUnits.LITRE));
        }
    };

    private final String words;

    BundledHousehold(String words) {
        this.words = words;
    }

    static BundledHousehold named(String words) {
        return Stream.of(values())
                .filter(household -> household.words.equals(words))
                .findFirst()
                .orElseThrow(() -> new UsageException("--bundled: '" + words + "' is none of "
                        + Stream.of(values()).map(h -> h.words).collect(Collectors.joining(" and "))));
    }

    /** What the house does to its water. */
    abstract House house();

    /** The kind of tank it keeps. */
    abstract String tank();

    /** Its people and its resin. */
    abstract PlanWish plan();

    /** The report of its well. */
    String file() {
        return words + "-well.csv";
    }
}
