package evenwater.chemistry.recipe;

/**
 * A row that may be missed at a price: {@code sum − over ≤ wanted}, with {@code wanted ≥ 0}, so that doing nothing keeps it.
 *
 * <p>What it is under, {@code wanted − sum + over}, needs no variable of its own.
 *
 * @see RankedProgramme
 */
final class ElasticRow {

    private final double[] sum;
    private final double wanted;
    private final double priceOver;
    private final double priceUnder;

    /** The place of its variable "over". */
    private final int over;

    private ElasticRow(double[] sum, double wanted, double priceOver, double priceUnder, int over) {
        this.sum = sum;
        this.wanted = wanted;
        this.priceOver = priceOver;
        this.priceUnder = priceUnder;
        this.over = over;
    }

    /** A row that wants less than nothing is turned round: then over is under. */
    static ElasticRow of(double[] sum, double wanted, double priceOver, double priceUnder, int over) {
        if (wanted >= 0) {
            return new ElasticRow(sum, wanted, priceOver, priceUnder, over);
        }
        double[] turned = new double[sum.length];
        for (int i = 0; i < sum.length; i++) {
            turned[i] = -sum[i];
        }
        return new ElasticRow(turned, -wanted, priceUnder, priceOver, over);
    }

    Simplex addTo(Simplex limits) {
        double[] condition = sum.clone();
        condition[over] = -1;
        return limits.atMost(condition, wanted);
    }

    /** Adds {@code priceOver · over + priceUnder · under} to a price of all, but for a constant. */
    void addPriceTo(double[] price) {
        price[over] += priceOver + priceUnder;
        for (int i = 0; i < sum.length; i++) {
            price[i] -= priceUnder * sum[i];
        }
    }

    /** What missing it costs. */
    double price(double[] solution) {
        double excess = Simplex.of(sum, solution) - wanted;
        return excess > 0 ? priceOver * excess : -priceUnder * excess;
    }
}
