package evenwater.chemistry.kernel;

/**
 * The compositions within given ranges of their amounts and sums that balance in charge: the flows of a small network, from cations to
 * anions.
 *
 * <p>So every way from one composition to another is a sum of exchanges of two: a cation for a cation, an anion for an anion, or a cation
 * and an anion together. A linear function is largest where no exchange raises it. All in eq/L by {@link KitQuantity#place()}.
 */
final class CompositionRanges {

    static final int AMOUNTS = KitQuantity.HARDNESS.place();
    private static final int CATIONS = KitQuantity.ALKALINITY.place();
    private static final int SUMS = KitQuantity.count();
    private static final int NO_SUM = -1;
    private static final int[] SUM_OF = {
        KitQuantity.HARDNESS.place(),
        KitQuantity.HARDNESS.place(),
        KitQuantity.SODIUM_AND_POTASSIUM.place(),
        KitQuantity.SODIUM_AND_POTASSIUM.place(),
        NO_SUM,
        KitQuantity.STRONG_ANIONS.place(),
        KitQuantity.STRONG_ANIONS.place(),
        KitQuantity.STRONG_ANIONS.place()
    };

    /** Kinds of exchanges: any, of ions with charges of one sign, or of ions of one sum. */
    static final int ANY = 0;

    static final int ALIKE = 1;
    static final int WITHIN_SUMS = 2;

    /** More exchanges than a path through these few amounts takes. */
    private static final int EXCHANGES = 60;

    /** Rounding, relative to the amounts. */
    private static final double ROUNDING = 1e-12;

    final double[] least = new double[SUMS];
    final double[] most = new double[SUMS];
    private final double[] from = new double[SUMS];
    private final double[] to = new double[SUMS];

    static boolean isCation(int amount) {
        return amount < CATIONS;
    }

    static boolean belongsTo(int amount, int quantity) {
        return amount == quantity || SUM_OF[amount] == quantity;
    }

    static double valueOf(double[] z, int quantity) {
        double sum = 0;
        for (int i = 0; i < AMOUNTS; i++) {
            sum += belongsTo(i, quantity) ? z[i] : 0;
        }
        return sum;
    }

    void copy(CompositionRanges other) {
        System.arraycopy(other.least, 0, least, 0, SUMS);
        System.arraycopy(other.most, 0, most, 0, SUMS);
    }

    /** Writes a composition within the ranges, with as few ions as may be; false if there is none. */
    boolean writeFirst(double[] z) {
        for (int sum = AMOUNTS; sum < SUMS; sum++) {
            from[sum] = 0;
            to[sum] = 0;
        }
        for (int i = 0; i < AMOUNTS; i++) {
            if (SUM_OF[i] != NO_SUM) {
                from[SUM_OF[i]] += least[i];
                to[SUM_OF[i]] += most[i];
            }
        }
        int hard = KitQuantity.HARDNESS.place();
        int alkali = KitQuantity.SODIUM_AND_POTASSIUM.place();
        int strong = KitQuantity.STRONG_ANIONS.place();
        int weak = KitQuantity.ALKALINITY.place();
        double fewest = Math.max(low(hard) + low(alkali), low(strong) + least[weak]);
        double largest = Math.min(high(hard) + high(alkali), high(strong) + most[weak]);
        double rounding = ROUNDING * (Math.abs(fewest) + Math.abs(largest));
        if (!(fewest <= largest + rounding)
                || !(low(hard) <= high(hard) + rounding)
                || !(low(alkali) <= high(alkali) + rounding)
                || !(low(strong) <= high(strong) + rounding)) {
            return false;
        }
        share(z, fewest, hard, alkali);
        double ofWeak =
                between(share(fewest, low(strong) + least[weak], high(strong) + most[weak]), least[weak], most[weak]);
        z[weak] = ofWeak;
        fill(z, strong, fewest - ofWeak);
        return true;
    }

    private void share(double[] z, double total, int first, int second) {
        double share = share(total, low(first) + low(second), high(first) + high(second));
        double ofFirst = between(share, low(first), high(first));
        fill(z, first, ofFirst);
        fill(z, second, total - ofFirst);
    }

    private void fill(double[] z, int sum, double amount) {
        double share = share(amount, from[sum], to[sum]);
        for (int i = 0; i < AMOUNTS; i++) {
            if (SUM_OF[i] == sum) {
                z[i] = between(share, least[i], most[i]);
            }
        }
    }

    private static double share(double total, double least, double most) {
        return most > least ? Math.max(0, Math.min(1, (total - least) / (most - least))) : 0;
    }

    private static double between(double share, double least, double most) {
        return least + share * (most - least);
    }

    private double low(int sum) {
        return Math.max(least[sum], from[sum]);
    }

    private double high(int sum) {
        return Math.min(most[sum], to[sum]);
    }

    /** Moves a composition within the ranges to where the sum of gains times amounts is largest, by any exchanges; returns by how much that rose. */
    double raise(double[] z, double[] gain) {
        return raise(z, gain, ANY);
    }

    /** The same by exchanges of one kind. */
    double raise(double[] z, double[] gain, int kind) {
        double raised = 0;
        for (int round = 0; round < EXCHANGES; round++) {
            double best = 0;
            int bestI = 0;
            int bestJ = 0;
            int bestSign = 0;
            for (int i = 0; i < AMOUNTS; i++) {
                for (int j = 0; j < AMOUNTS; j++) {
                    if (isOfKind(kind, i, j)) {
                        for (int sign = 1; sign >= -1; sign -= 2) {
                            double rate = rate(gain, i, j, sign);
                            double gained = rate > 0 ? rate * room(z, i, j, sign, signOfOther(i, j, sign)) : 0;
                            if (gained > best) {
                                best = gained;
                                bestI = i;
                                bestJ = j;
                                bestSign = sign;
                            }
                        }
                    }
                }
            }
            if (!(best > ROUNDING * raised)) {
                return raised;
            }
            exchange(z, bestI, bestJ, bestSign, z);
            raised += best;
        }
        return raised;
    }

    private static boolean isOfKind(int kind, int i, int j) {
        return kind == ANY || (kind == ALIKE ? isCation(i) == isCation(j) : SUM_OF[i] == SUM_OF[j]);
    }

    /** What an exchange gains for each equivalent: i goes up or down by its sign, j so that charges balance; each way counts once. */
    double rate(double[] gain, int i, int j, int sign) {
        boolean alike = isCation(i) == isCation(j);
        boolean counts = alike ? sign > 0 && i != j : i < j;
        return counts ? sign * gain[i] + signOfOther(i, j, sign) * gain[j] : 0;
    }

    private static int signOfOther(int i, int j, int sign) {
        return isCation(i) == isCation(j) ? -sign : sign;
    }

    /** Writes where an exchange ends, and returns how many equivalents it moves. */
    double exchange(double[] z, int i, int j, int sign, double[] end) {
        int signOfOther = signOfOther(i, j, sign);
        double step = room(z, i, j, sign, signOfOther);
        if (end != z) {
            System.arraycopy(z, 0, end, 0, AMOUNTS);
        }
        end[i] = Math.max(0, end[i] + sign * step);
        end[j] = Math.max(0, end[j] + signOfOther * step);
        return step;
    }

    /** How far two amounts may go together until one of the ranges ends. */
    private double room(double[] z, int i, int j, int signI, int signJ) {
        double room = Math.min(room(z, i, signI), room(z, j, signJ));
        int sumI = SUM_OF[i];
        int sumJ = SUM_OF[j];
        if (sumI != sumJ) {
            if (sumI != NO_SUM) {
                room = Math.min(room, room(z, sumI, signI));
            }
            if (sumJ != NO_SUM) {
                room = Math.min(room, room(z, sumJ, signJ));
            }
        }
        return Math.max(0, room);
    }

    private double room(double[] z, int quantity, int sign) {
        double value = valueOf(z, quantity);
        return sign > 0 ? most[quantity] - value : value - least[quantity];
    }
}
