package evenwater.chemistry.water;

import evenwater.chemistry.kernel.CompensatedSum;
import evenwater.chemistry.substance.Ion;
import java.util.Set;
import java.util.SortedMap;

/**
 * The double entry behind {@link Water} and {@link Change}: {@code alkalinity = Σ charge × total + unmeasured charge}.
 *
 * <p>Each total counts an ion in its reference form. Both sides are stored: with one of them alone, it would creep by the rounding of
 * every operation; with both, a change that has no alkalinity leaves alkalinity and unmeasured charge bit for bit.
 */
final class Balance {

    /** A rounding rest of an amount that was taken out completely; 4 ulp of a double. */
    private static final double ROUNDING = 4 * 0x1p-52;

    /** Taking out more than there is by less than this share is rounding of the caller's arithmetic, not an error. */
    private static final double TOLERATED = 1e-12;

    /** Far beyond any water; sums and products of such amounts stay finite, so no double entry is lost. */
    private static final double LARGEST = 1e100;

    private final IonSet set;
    private final double[] millimolesPerLitre;
    /** Alkalinity in meq/L. */
    final double alkalinity;
    /** Unmeasured charge in meq/L. */
    final double unmeasured;
    /** Inorganic carbon in mmol/L; NaN is unknown, and the arithmetic carries "unknown" by itself. */
    final double carbon;

    private Balance(IonSet set, double[] millimolesPerLitre, double alkalinity, double unmeasured, double carbon) {
        this.set = set;
        this.millimolesPerLitre = millimolesPerLitre;
        this.alkalinity = alkalinity + 0.0;
        this.unmeasured = unmeasured + 0.0;
        this.carbon = carbon + 0.0;
        for (int i = 0; i < millimolesPerLitre.length; i++) {
            if (!(Math.abs(millimolesPerLitre[i]) <= LARGEST)) {
                throw tooLarge(set.ions[i] + "", millimolesPerLitre[i] + " mmol/L");
            }
        }
        if (!(Math.abs(alkalinity) <= LARGEST)) {
            throw tooLarge("alkalinity", alkalinity + " meq/L");
        }
        if (!(Math.abs(unmeasured) <= LARGEST)) {
            throw tooLarge("unmeasured charge", unmeasured + " meq/L");
        }
        if (Math.abs(carbon) > LARGEST) { // NaN is unknown
            throw tooLarge("inorganic carbon", carbon + " mmol/L");
        }
    }

    private static IllegalArgumentException tooLarge(String what, String value) {
        return new IllegalArgumentException(
                what + " must be from -1e100 to 1e100 in mmol/L or meq/L, but was " + value);
    }

    /** A side where the totals and the unmeasured charge are known: alkalinity closes it. */
    static Balance closing(SortedMap<Ion, Double> totals, double unmeasured, double carbon) {
        IonSet set = new IonSet(totals.keySet().toArray(Ion[]::new));
        double[] amounts = amounts(totals);
        double strong = CompensatedSum.ofProducts(set.charges, amounts);
        return new Balance(set, amounts, strong + unmeasured, unmeasured, carbon);
    }

    /** A side where totals and alkalinity are known: unmeasured charge closes it. */
    static Balance reported(SortedMap<Ion, Double> totals, double alkalinity, double carbon) {
        IonSet set = new IonSet(totals.keySet().toArray(Ion[]::new));
        double[] amounts = amounts(totals);
        double strong = CompensatedSum.ofProducts(set.charges, amounts);
        return new Balance(set, amounts, alkalinity, alkalinity - strong, carbon);
    }

    /** A neutral chemical change, whose alkalinity is counted from its ions. */
    static Balance neutral(SortedMap<Ion, Double> totals, double alkalinity, double carbon) {
        IonSet set = new IonSet(totals.keySet().toArray(Ion[]::new));
        return new Balance(set, amounts(totals), alkalinity, 0, carbon);
    }

    /** Both sides as they were stored; the caller sees to it that they add up. */
    static Balance stored(SortedMap<Ion, Double> totals, double alkalinity, double unmeasured, double carbon) {
        IonSet set = new IonSet(totals.keySet().toArray(Ion[]::new));
        return new Balance(set, amounts(totals), alkalinity, unmeasured, carbon);
    }

    Balance withCarbon(double newCarbon) {
        return new Balance(set, millimolesPerLitre, alkalinity, unmeasured, newCarbon);
    }

    /** A share of some ions leaves, another enters charge for charge; the ions of this balance stay the same set if they can. */
    Balance exchange(Set<Ion> out, Ion in, double share) {
        int inside = set.indexOf(in);
        IonSet ions = inside >= 0 ? set : set.union(new IonSet(new Ion[] {in}));
        double[] amounts = new double[ions.ions.length];
        double charge = 0;
        for (Ion ion : out) {
            int i = set.indexOf(ion);
            if (i >= 0) {
                double leaving = millimolesPerLitre[i] * share;
                amounts[ions.indexOf(ion)] = -leaving;
                charge += set.charges[i] * leaving;
            }
        }
        int i = ions.indexOf(in);
        amounts[i] += charge / ions.charges[i];
        return new Balance(ions, amounts, 0, 0, 0);
    }

    private static double[] amounts(SortedMap<Ion, Double> totals) {
        return totals.values().stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Returns {@code p · this + q · that}, field by field. */
    Balance combine(double p, Balance that, double q) {
        IonSet union = set.union(that.set);
        double[] sum = new double[union.ions.length];
        addTo(sum, union, p);
        that.addTo(sum, union, q);
        return new Balance(
                union,
                sum,
                p * alkalinity + q * that.alkalinity,
                p * unmeasured + q * that.unmeasured,
                p * carbon + q * that.carbon);
    }

    /** Returns a blend with a share of another, field by field; what both have alike stays bit for bit. */
    Balance mixedWith(Balance that, double share) {
        IonSet union = set.union(that.set);
        double[] mixed = new double[union.ions.length];
        addTo(mixed, union, 1);
        double[] others = new double[union.ions.length];
        that.addTo(others, union, 1);
        for (int i = 0; i < mixed.length; i++) {
            mixed[i] = between(mixed[i], others[i], share);
        }
        return new Balance(
                union,
                mixed,
                between(alkalinity, that.alkalinity, share),
                between(unmeasured, that.unmeasured, share),
                between(carbon, that.carbon, share));
    }

    /** The point that lies {@code share} of the way from one value to another. */
    static double between(double from, double to, double share) {
        return from + share * (to - from);
    }

    private void addTo(double[] sum, IonSet union, double factor) {
        if (union == set) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += factor * millimolesPerLitre[i];
            }
            return;
        }
        int j = 0;
        for (int i = 0; i < millimolesPerLitre.length; i++) {
            while (!union.ions[j].equals(set.ions[i])) {
                j++;
            }
            sum[j] += factor * millimolesPerLitre[i];
        }
    }

    Balance times(double factor) {
        double[] scaled = millimolesPerLitre.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= factor;
        }
        return new Balance(set, scaled, alkalinity * factor, unmeasured * factor, carbon * factor);
    }

    /** Returns this water's balance after a change; rounding rests become zero, anything taken out beyond that is refused. */
    Balance after(Balance change) {
        Balance sum = combine(1, change, 1);
        for (int i = 0; i < sum.millimolesPerLitre.length; i++) {
            double before = at(i, sum.set);
            sum.millimolesPerLitre[i] =
                    rest(sum.millimolesPerLitre[i], before, change.at(i, sum.set), sum.set.ions[i].symbol());
        }
        double newCarbon = rest(sum.carbon, carbon, change.carbon, "inorganic carbon");
        return new Balance(sum.set, sum.millimolesPerLitre, sum.alkalinity, sum.unmeasured, newCarbon);
    }

    private static double rest(double after, double before, double change, String what) {
        if (change < 0 && Math.abs(after) <= ROUNDING * before) {
            return 0;
        }
        if (after < 0) {
            if (after >= -TOLERATED * before) {
                return 0;
            }
            throw new IllegalArgumentException("cannot take " + -change + " mmol/L of " + what
                    + " out of a water that holds " + before + " mmol/L");
        }
        return after;
    }

    Ion[] ions() {
        return set.ions;
    }

    double total(Ion ion) {
        int i = set.indexOf(ion);
        return i < 0 ? 0 : millimolesPerLitre[i];
    }

    /** The total of an ion of a set that holds at least the ions of this balance. */
    private double at(int i, IonSet union) {
        return union == set ? millimolesPerLitre[i] : total(union.ions[i]);
    }

    double at(int i) {
        return millimolesPerLitre[i];
    }

    /** Σ charge × total in meq/L. */
    double chargeOfTotals() {
        return CompensatedSum.ofProducts(set.charges, millimolesPerLitre);
    }

    /** What the double entry lacks, in meq/L; rounding apart, 0. */
    double residual() {
        return chargeOfTotals() + unmeasured - alkalinity;
    }

    /** The same ions in the same amounts; an ion that is absent is an ion with amount 0. */
    boolean sameAs(Balance that) {
        if (alkalinity != that.alkalinity
                || unmeasured != that.unmeasured
                || Double.compare(carbon, that.carbon) != 0) {
            return false;
        }
        for (Ion ion : set.union(that.set).ions) {
            if (total(ion) != that.total(ion)) {
                return false;
            }
        }
        return true;
    }

    int hash() {
        int hash = Double.hashCode(alkalinity) + 31 * Double.hashCode(unmeasured) + 961 * Double.hashCode(carbon);
        for (int i = 0; i < millimolesPerLitre.length; i++) {
            if (millimolesPerLitre[i] != 0) {
                hash += set.ions[i].hashCode() ^ Double.hashCode(millimolesPerLitre[i]);
            }
        }
        return hash;
    }
}
