package evenwater.examples.household;

import evenwater.chemistry.substance.Ion;
import java.util.LinkedHashSet;
import java.util.Set;

/** The usual cautions, for what this house does. */
final class CautionSection {

    /** 50 mg/L as NO₃ (WHO, EU; from memory). */
    private static final double MUCH_NITRATE = 50;

    private final Stages stages;
    private final House house;

    CautionSection(Stages stages, House house) {
        this.stages = stages;
        this.house = house;
    }

    void write(Page page) {
        page.heading("Cautions");
        Set<String> apply = applying();
        for (String[] row : Resource.rows("cautions.csv")) {
            if (apply.contains(row[0])) {
                page.item(row[1]);
            }
        }
    }

    private Set<String> applying() {
        Set<String> apply = new LinkedHashSet<>();
        apply.add("always");
        if (house.softener().isPresent()) {
            apply.add("softener");
            apply.add(house.usesPotassium() ? "potassium" : "sodium");
        }
        if (house.membrane().isPresent()) {
            apply.add("membrane");
        }
        if (!house.doses().isEmpty()) {
            apply.add("dose");
        }
        for (int stage = 0; stage <= stages.last(); stage++) {
            if (stages.water(stage).total(Ion.NITRATE).in(Ion.NITRATE.milligramPerLitre()) > MUCH_NITRATE) {
                apply.add("nitrate");
            }
        }
        return apply;
    }
}
