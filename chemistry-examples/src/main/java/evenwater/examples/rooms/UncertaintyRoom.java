package evenwater.examples.rooms;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.uncertainty.Uncertain;
import evenwater.chemistry.uncertainty.UncertaintyBudget;
import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Dimensionless;

/** The room of uncertainty: which reading a result hangs on. */
public final class UncertaintyRoom {

    private UncertaintyRoom() {}

    /**
     * Prints a budget with its contributions.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Uncertain<Hardness> tap = Uncertain.normal(Hardness.parse("18 °dH"), Hardness.parse("0.5 °dH"))
                .named("tap");
        Uncertain<WaterQuantity<Dimensionless>> share =
                Uncertain.between(0.45, 0.55).named("share of pure water");

        UncertaintyBudget<Hardness> blend = UncertaintyBudget.of(
                List.of(tap, share),
                draw -> draw.of(tap).multiply(1 - draw.of(share).in(WaterUnits.ONE)));

        System.out.println(blend);
        blend.contributions()
                .forEach(part -> System.out.printf(Locale.ROOT, "%s: %.0f %%%n", part.input(), 100 * part.share()));
        // end
    }
}
