package evenwater.chemistry.substance;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.EnumSet;
import java.util.Set;
import javax.measure.Unit;

/** What "expressed as" means: how much of a basis stands for one mole of an ion. */
final class Basis {

    /** Other atomic weights make a smaller difference than another ion. */
    private static final double SAME = 0.01;

    private static final Formula CALCIUM_CARBONATE = Formula.parse("CaCO3");

    private Basis() {}

    static Unit<AmountConcentration> unit(Ion ion, Unit<MassConcentration> massUnit, Formula basis) {
        return AmountConcentration.ofMass(
                massUnit, basis.toString(), MolarMass.of(gramsPerMole(ion, basis), MolarMass.GRAM_PER_MOLE));
    }

    /** Refuses a mass that stands for another substance; mol stand for anything, and so does a basis that is no formula. */
    static void refuseOther(Ion ion, AmountConcentration stated) {
        if (stated.basis().isEmpty()) {
            return;
        }
        double own;
        try {
            own = gramsPerMole(ion, Formula.parse(stated.basis().orElseThrow()));
        } catch (UnreadableTextException e) {
            return;
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    stated + " is no concentration of " + ion.name() + ": " + e.getMessage());
        }
        double said = stated.basisPerMole().orElseThrow().in(MolarMass.GRAM_PER_MOLE);
        if (Math.abs(said / own - 1) > SAME) {
            throw new IllegalArgumentException(stated + " is no concentration of " + ion.name() + ": its unit takes "
                    + said + " g for a mole, and " + ion + " takes " + own);
        }
    }

    /** Grams of the basis that stand for one mole of the ion. */
    private static double gramsPerMole(Ion ion, Formula basis) {
        double mass = basis.molarMassInGramsPerMole();
        if (basis.hasSameAtomsAs(ion.formula())) {
            return mass;
        }
        if (basis.hasSameAtomsAs(CALCIUM_CARBONATE)) {
            return mass / 2 * ion.chargesOrRefuse("amount as CaCO₃");
        }
        return mass / ionsPerBasis(ion, basis);
    }

    /** NH₄NO₃ is as much ammonium as nitrate: by atoms it would be two of either. */
    private static boolean isOfTwoKindsOfNitrogen(Formula basis) {
        return basis.elements().equals(EnumSet.of(Element.HYDROGEN, Element.NITROGEN, Element.OXYGEN))
                && basis.count(Element.NITROGEN) > 1;
    }

    /** Moles of the ion that the atoms of one mole of the basis stand for. */
    private static double ionsPerBasis(Ion ion, Formula basis) {
        Set<Element> shared = keyElements(ion.formula());
        shared.retainAll(keyElements(basis));
        if (shared.isEmpty()) {
            throw new IllegalArgumentException(ion + " cannot be expressed as " + basis
                    + ": they share no element other than hydrogen and oxygen");
        }
        if (isOfTwoKindsOfNitrogen(basis)) {
            throw new IllegalArgumentException(ion + " cannot be expressed as " + basis
                    + ": its nitrogen is of two kinds, as N or as itself it can");
        }
        double ratio = Double.NaN;
        for (Element element : shared) {
            double r = basis.count(element) / ion.formula().count(element);
            if (!Double.isNaN(ratio) && r != ratio) {
                throw new IllegalArgumentException(
                        ion + " cannot be expressed as " + basis + ": their elements are in other ratios");
            }
            ratio = r;
        }
        return ratio;
    }

    static boolean sameAtomsButHydrogenAndOxygen(Formula a, Formula b) {
        Set<Element> elements = keyElements(a);
        return elements.equals(keyElements(b)) && elements.stream().allMatch(e -> a.count(e) == b.count(e));
    }

    private static Set<Element> keyElements(Formula formula) {
        Set<Element> elements = EnumSet.copyOf(formula.elements());
        elements.remove(Element.HYDROGEN);
        elements.remove(Element.OXYGEN);
        return elements;
    }
}
