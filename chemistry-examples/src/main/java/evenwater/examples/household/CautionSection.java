package evenwater.examples.household;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import java.util.LinkedHashSet;
import java.util.Set;

/** The usual cautions, for what this house does. */
final class CautionSection {

    /** 10 mg/L as N (US EPA, checked in a quotation), the stricter of the two that the caution names. */
    private static final double MUCH_NITRATE_NITROGEN = 10;

    /** The advisory for diets of 500 mg a day (US EPA 2003, checked in a quotation). */
    private static final double MUCH_SODIUM = 20;

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
        if (house.doses().stream()
                .anyMatch(dose -> dose.change().total(Ion.POTASSIUM).getValue() > 0)) {
            apply.add("potassium");
        }
        for (int stage = 0; stage <= stages.last(); stage++) {
            AmountConcentration sodium =
                    stages.bounds(stage, water -> water.total(Ion.SODIUM)).high();
            if (sodium.in(Ion.SODIUM.milligramPerLitre()) > MUCH_SODIUM) {
                apply.add("sodium");
            }
            AmountConcentration most =
                    stages.bounds(stage, water -> water.total(Ion.NITRATE)).high();
            if (most.in(Ion.NITRATE.milligramPerLitreAs(Element.NITROGEN)) > MUCH_NITRATE_NITROGEN) {
                apply.add("nitrate");
            }
        }
        return apply;
    }
}
