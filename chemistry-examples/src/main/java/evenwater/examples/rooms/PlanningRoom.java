package evenwater.examples.rooms;

import evenwater.chemistry.planning.HouseholdUse;
import evenwater.chemistry.planning.ResinSizing;
import evenwater.chemistry.planning.SoftenerPlan;
import evenwater.chemistry.planning.SoftenerSchedule;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** The room of planning: how much resin a household needs. */
public final class PlanningRoom {

    private PlanningRoom() {}

    /**
     * Prints the resin for the days and for the flow.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Water source = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(90, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.MAGNESIUM, AmountConcentration.of(15, Ion.MAGNESIUM.milligramPerLitre()))
                .build();
        // snippet
        SoftenerPlan plan = SoftenerPlan.of(
                source, HouseholdUse.ofDaily(WaterUnits.parseVolume("450 L")), WaterUnits.parseVolume("20 L"));

        ResinSizing sizing = ResinSizing.of(plan, SaltDose.parse("96 g/L"), 5); // days
        FlowRate peak = FlowRate.of(25, FlowRate.LITRE_PER_MINUTE);
        System.out.println("for five days: " + sizing.resinForDays().toText(Locale.ROOT, 3));
        System.out.println("for the flow: " + ResinSizing.resinForPeak(peak).toText(Locale.ROOT, 3));

        SoftenerSchedule schedule = plan.at(SaltDose.parse("96 g/L"));
        System.out.printf(Locale.ROOT, "with 20 L: every %.1f days%n", schedule.days());
        System.out.println(schedule.saltPerRegeneration().toText(Locale.ROOT, 3) + " of salt each time");
        // end
    }
}
