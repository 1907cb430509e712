package evenwater.chemistry.substance;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/** Checks that the ions of a compound are what its formula can become in water. */
final class Dissolution {

    private Dissolution() {}

    static void check(String compound, Formula formula, Map<Ion, Integer> ions) {
        if (formula.chargeNumber() != 0) {
            throw new IllegalArgumentException(
                    compound + " is no compound: it has a charge of " + formula.chargeNumber());
        }
        if (ions.isEmpty()) {
            throw new IllegalArgumentException(compound + " sets no ions or solutes free");
        }
        int charge = 0;
        for (Map.Entry<Ion, Integer> e : ions.entrySet()) {
            if (e.getValue() < 1) {
                throw new IllegalArgumentException(
                        "number of " + e.getKey() + " in " + compound + " must be 1 or more, but was " + e.getValue());
            }
            charge += e.getKey().chargeNumber() * e.getValue();
        }
        if (charge != 0) {
            throw new IllegalArgumentException(
                    "ions of " + compound + " must cancel in charge, but " + ions + " carry " + charge);
        }
        checkAtoms(compound, formula, ions);
    }

    /** Water may be taken up (oxides) or set free (hydrates); every other atom must be found again. */
    private static void checkAtoms(String compound, Formula formula, Map<Ion, Integer> ions) {
        Set<Element> elements = EnumSet.copyOf(formula.elements());
        ions.keySet().forEach(ion -> elements.addAll(ion.formula().elements()));
        elements.remove(Element.HYDROGEN);
        elements.remove(Element.OXYGEN);
        for (Element element : elements) {
            if (excess(formula, ions, element) != 0) {
                throw new IllegalArgumentException("ions of " + compound + " must have its atoms, but "
                        + element.symbol() + " does not match in " + ions);
            }
        }
        if (excess(formula, ions, Element.HYDROGEN) != 2 * excess(formula, ions, Element.OXYGEN)) {
            throw new IllegalArgumentException("ions of " + compound
                    + " must differ from it by water alone, but hydrogen and oxygen do not match in " + ions);
        }
    }

    private static double excess(Formula formula, Map<Ion, Integer> ions, Element element) {
        double sum = formula.count(element);
        for (Map.Entry<Ion, Integer> e : ions.entrySet()) {
            sum -= e.getKey().formula().count(element) * e.getValue();
        }
        return sum;
    }
}
