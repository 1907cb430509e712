package evenwater.examples.rooms;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.Locale;

/** The room of quantities: one amount in several statements. */
public final class QuantityRoom {

    private QuantityRoom() {}

    /**
     * Prints what equal, equivalent and stated mean.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Hardness stated = Hardness.parse("22 gpg");
        Hardness restated = stated.to(Hardness.FRENCH_DEGREE);

        System.out.println(stated + ", restated " + restated.toText(Locale.ROOT, 4));
        System.out.println(Hardness.parse("1 mmol/L").equals(Hardness.parse("2 meq/L"))); // the same statement?
        System.out.println(Hardness.parse("1 mmol/L").isEquivalentTo(Hardness.parse("2 meq/L"))); // the same amount?
        try {
            Hardness.parse("7,3 dH");
        } catch (UnreadableTextException e) {
            System.out.println(e.getMessage());
        }
        // end
    }
}
