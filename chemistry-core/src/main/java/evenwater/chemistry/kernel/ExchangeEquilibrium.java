package evenwater.chemistry.kernel;

/**
 * Equilibrium between a water and a cation resin, for any number of single- and double-charged ions and any strength of the water.
 *
 * <p>Mass action in equivalents per litre: {@code K = q · c(Na)^z / (c · q(Na)^z)} for an ion of charge z against sodium, with c per litre of water and q
 * per litre of resin. So the resin holds {@code q = K sᶻ c} of every ion, with one number {@code s = q(Na)/c(Na)} for them all, whether or not
 * there is sodium. Neutrality, Σ q = capacity or Σ c = strength, makes s the positive root of a quadratic. That a double-charged ion is held
 * against all comers in tap water and let go in brine is not put in: it is the power of s. With equivalent fractions x, y and the total strength C and
 * capacity Q the same law reads {@code K = (y/y(Na)ᶻ)(x(Na)ᶻ/x)(C/Q)^(z−1)}. Activity coefficients are left out; K is a constant.
 *
 * @see "F. Helfferich, Ion Exchange, McGraw-Hill, New York 1962, ch. 5 (from memory)"
 */
public final class ExchangeEquilibrium {

    private ExchangeEquilibrium() {}

    /**
     * Returns the number s of a resin in equilibrium with a water.
     *
     * @param constant K of each ion against sodium, in equivalents per litre as above; above 0
     * @param charge charge number of each; 1 or 2
     * @param water concentration of each in eq per litre of water; 0 or more, not all 0
     * @param capacity total capacity in eq per litre of resin; above 0
     * @return s, litres of water per litre of resin; above 0
     */
    public static double ratioOverWater(double[] constant, int[] charge, double[] water, double capacity) {
        double single = 0;
        double twice = 0;
        for (int i = 0; i < water.length; i++) {
            if (charge[i] == 1) {
                single += constant[i] * water[i];
            } else {
                twice += constant[i] * water[i];
            }
        }
        return positiveRoot(twice, single, capacity);
    }

    /**
     * Returns the number s of a resin in equilibrium with a water of a strength.
     *
     * @param constant K of each ion against sodium; above 0
     * @param charge charge number of each; 1 or 2
     * @param resin amount of each in eq per litre of resin; 0 or more, not all 0
     * @param strength all exchanging cations of the water together, in eq per litre; above 0
     * @return s, litres of water per litre of resin; above 0
     */
    public static double ratioOverResin(double[] constant, int[] charge, double[] resin, double strength) {
        double single = 0;
        double twice = 0;
        for (int i = 0; i < resin.length; i++) {
            if (charge[i] == 1) {
                single += resin[i] / constant[i];
            } else {
                twice += resin[i] / constant[i];
            }
        }
        return 1 / positiveRoot(twice, single, strength);
    }

    /** Returns the positive root of {@code a r² + b r = c}, in the form that does not cancel. */
    private static double positiveRoot(double a, double b, double c) {
        return 2 * c / (b + Math.sqrt(b * b + 4 * a * c));
    }

    /**
     * Returns what a litre of resin holds of an ion for each unit of its concentration in the water: {@code q/c = K sᶻ}.
     *
     * @param constant K of the ion against sodium; above 0
     * @param charge its charge number; 1 or 2
     * @param ratio s, litres of water per litre of resin
     * @return litres of water per litre of resin
     */
    public static double distribution(double constant, int charge, double ratio) {
        return charge == 1 ? constant * ratio : constant * ratio * ratio;
    }
}
