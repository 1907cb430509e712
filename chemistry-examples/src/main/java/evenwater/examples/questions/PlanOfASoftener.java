package evenwater.examples.questions;

import evenwater.chemistry.planning.HouseholdUse;
import evenwater.chemistry.planning.SoftenerPlan;
import evenwater.chemistry.planning.SoftenerSchedule;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** How often a softener is regenerated, and what it takes: the dose of salt that wastes least and still lasts. */
public final class PlanOfASoftener {

    private PlanOfASoftener() {}

    /**
     * Prints the plan of a household of three.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Water source = Water.builder()
                .total(Ion.CALCIUM, Ion.CALCIUM.parseConcentration("80 mg/L Ca"))
                .total(Ion.MAGNESIUM, Ion.MAGNESIUM.parseConcentration("18 mg/L Mg"))
                .total(Ion.IRON_II, Ion.IRON_II.parseConcentration("0.4 mg/L Fe"))
                .build();
        // snippet
        SoftenerPlan plan = SoftenerPlan.of(
                source,
                HouseholdUse.ofPeople(3, WaterUnits.parseVolume("140 L")),
                WaterUnits.parseVolume("25 L")); // of resin
        SoftenerSchedule schedule = plan.leaving(Hardness.parse("4 °dH")).leastSaltFor(7);

        System.out.printf(
                Locale.ROOT,
                "planned for %s; %s; every %.1f days%n",
                plan.sizedFor().toText(Locale.ROOT, 3),
                schedule.regeneration(),
                schedule.days());
        System.out.printf(
                Locale.ROOT,
                "%.0f kg of salt and %.1f m³ of water to the drain a year; %s%n",
                schedule.saltPerYear().in(WaterUnits.KILOGRAM),
                schedule.drainPerYear().in(WaterUnits.CUBIC_METRE),
                schedule.efficiency());
        // end
    }
}
