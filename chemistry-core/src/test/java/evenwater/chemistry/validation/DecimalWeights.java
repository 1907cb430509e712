package evenwater.chemistry.validation;

import java.math.BigDecimal;
import java.util.Map;

/**
 * Atomic weights in decimal arithmetic, typed a second time and apart from the library: to recompute results without it, and to show
 * that an older table of weights gives an older figure.
 */
final class DecimalWeights {

    /** Abridged standard atomic weights of 2021; see {@link Source#IUPAC_2021}. */
    static final DecimalWeights OF_2021 = new DecimalWeights(Map.ofEntries(
            Map.entry("H", "1.0080"),
            Map.entry("B", "10.81"),
            Map.entry("C", "12.011"),
            Map.entry("N", "14.007"),
            Map.entry("O", "15.999"),
            Map.entry("F", "18.998"),
            Map.entry("Na", "22.990"),
            Map.entry("Mg", "24.305"),
            Map.entry("P", "30.974"),
            Map.entry("S", "32.06"),
            Map.entry("Cl", "35.45"),
            Map.entry("K", "39.098"),
            Map.entry("Ca", "40.078"),
            Map.entry("Fe", "55.845"),
            Map.entry("Sr", "87.62")));

    /** Standard atomic weights of 2005; see {@link Source#IUPAC_2005}. */
    static final DecimalWeights OF_2005 = new DecimalWeights(Map.ofEntries(
            Map.entry("H", "1.00794"),
            Map.entry("B", "10.811"),
            Map.entry("C", "12.0107"),
            Map.entry("N", "14.0067"),
            Map.entry("O", "15.9994"),
            Map.entry("F", "18.9984032"),
            Map.entry("Na", "22.98976928"),
            Map.entry("Mg", "24.3050"),
            Map.entry("P", "30.973762"),
            Map.entry("S", "32.065"),
            Map.entry("Cl", "35.453"),
            Map.entry("K", "39.0983"),
            Map.entry("Ca", "40.078"),
            Map.entry("Cu", "63.546"),
            Map.entry("Br", "79.904"),
            Map.entry("Sr", "87.62")));

    private final Map<String, String> weights;

    private DecimalWeights(Map<String, String> weights) {
        this.weights = weights;
    }

    /**
     * Returns a molar mass.
     *
     * @param atoms symbols, each followed by its number, such as {@code Ca 1 C 1 O 3}
     * @return sum of the weights in g/mol
     */
    BigDecimal mass(String atoms) {
        String[] parts = atoms.split(" ", -1);
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < parts.length; i += 2) {
            String weight = weights.get(parts[i]);
            if (weight == null) {
                throw new IllegalArgumentException("no weight of " + parts[i] + " for " + atoms);
            }
            sum = sum.add(new BigDecimal(weight).multiply(new BigDecimal(parts[i + 1])));
        }
        return sum;
    }
}
