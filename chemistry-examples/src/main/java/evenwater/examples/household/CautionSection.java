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

    /** 3 mg/L of NO₂⁻ and 50 of NO₃⁻, alone or in parts of both (WHO, EU), and 1 mg/L of NO₂⁻ as N (US); from memory. */
    private static final double MUCH_NITRITE = 3;

    private static final double MUCH_NITRATE = 50;
    private static final double MUCH_NITRITE_NITROGEN = 1;

    /** 1.5 mg/L (WHO, EU; from memory). */
    private static final double MUCH_FLUORIDE = 1.5;

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
        if (house.neutralizer().isPresent()) {
            apply.add("neutralizer");
        }
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
            if (most(stage, Ion.SODIUM).in(Ion.SODIUM.milligramPerLitre()) > MUCH_SODIUM) {
                apply.add("sodium");
            }
            nitrogen(stage, apply);
            if (most(stage, Ion.FLUORIDE).in(Ion.FLUORIDE.milligramPerLitre()) > MUCH_FLUORIDE) {
                apply.add("fluoride");
            }
        }
        if (!new Reservations(stages).poisons().isEmpty()) {
            apply.add("poison");
        }
        return apply;
    }

    private void nitrogen(int stage, Set<String> apply) {
        AmountConcentration nitrate = most(stage, Ion.NITRATE);
        AmountConcentration nitrite = most(stage, Ion.NITRITE);
        if (nitrate.in(Ion.NITRATE.milligramPerLitreAs(Element.NITROGEN)) > MUCH_NITRATE_NITROGEN) {
            apply.add("nitrate");
        }
        double together = nitrate.in(Ion.NITRATE.milligramPerLitre()) / MUCH_NITRATE
                + nitrite.in(Ion.NITRITE.milligramPerLitre()) / MUCH_NITRITE;
        if (nitrite.getValue() > 0
                && (together > 1
                        || nitrite.in(Ion.NITRITE.milligramPerLitreAs(Element.NITROGEN)) > MUCH_NITRITE_NITROGEN)) {
            apply.add("nitrite");
        }
    }

    private AmountConcentration most(int stage, Ion ion) {
        return stages.bounds(stage, water -> water.total(ion)).high();
    }
}
