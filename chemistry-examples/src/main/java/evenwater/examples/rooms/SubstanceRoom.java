package evenwater.examples.rooms;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import java.util.Locale;

/** The room of substances: ions, formulas, compounds and "expressed as". */
public final class SubstanceRoom {

    private SubstanceRoom() {}

    /**
     * Prints what a substance knows of itself.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        AmountConcentration nitrate = Ion.NITRATE.parseConcentration("4.1 mg/L N");
        System.out.println(nitrate.to(Ion.NITRATE.milligramPerLitre()).toText(Locale.ROOT, 3));

        Compound gypsum = Compound.named("CaSO4·2H2O");
        System.out.println(gypsum + ", " + gypsum.molarMass() + ", gives " + gypsum.ions());
        System.out.println(Formula.parse("Ca(HCO3)2").molarMass());
        System.out.println(Ion.HYDROGEN_PHOSPHATE.referenceForm() + " " + Ion.HYDROGEN_PHOSPHATE.alkalinityPerMole());
        // end
    }
}
