package evenwater.chemistry.quantity;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * What one of a unit is in coherent units: a chain of exact factors, and the ratio of whole numbers that they make.
 *
 * <p>Units are built of this chain, and worked conversions show it: the two cannot disagree.
 */
final class Definition implements Serializable {

    private static final long serialVersionUID = 1L;

    /** The coherent unit itself, or one of its size. */
    static final Definition ONE = new Definition(1, 1, List.of());

    final long num;
    final long den;
    private final List<Link> links;

    /** A factor of the chain, multiplied or divided by. */
    record Link(Factor factor, boolean divides) implements Serializable {}

    private Definition(long num, long den, List<Link> links) {
        this.num = num;
        this.den = den;
        this.links = links;
    }

    List<Link> links() {
        return links;
    }

    /** The definition that multiplies by a factor, as customary units do, and divides by each of others. */
    static Definition of(Factor factor, Factor... under) {
        return ONE.times(factor).overAll(under);
    }

    /** The definition that divides by each of some factors, as prefixed units do. */
    static Definition under(Factor... factors) {
        return ONE.overAll(factors);
    }

    Definition overAll(Factor... factors) {
        Definition definition = this;
        for (Factor factor : factors) {
            definition = definition.over(factor);
        }
        return definition;
    }

    Definition times(Factor factor) {
        return with(factor, false, factor.num(), factor.den());
    }

    Definition over(Factor factor) {
        return with(factor, true, factor.den(), factor.num());
    }

    Definition times(long number, String unit, String perUnit) {
        return times(Factor.whole(number, unit, perUnit));
    }

    Definition over(long number, String unit, String perUnit) {
        return over(Factor.whole(number, unit, perUnit));
    }

    private Definition with(Factor factor, boolean divides, long factorNum, long factorDen) {
        // reduced crosswise before they are multiplied, the products of all our units fit into a long
        long ofFactor = gcd(factorNum, factorDen);
        long a = gcd(num, factorDen / ofFactor);
        long b = gcd(factorNum / ofFactor, den);
        List<Link> longer = new ArrayList<>(links);
        longer.add(new Link(factor, divides));
        return new Definition(
                Math.multiplyExact(num / a, factorNum / ofFactor / b),
                Math.multiplyExact(den / b, factorDen / ofFactor / a),
                List.copyOf(longer));
    }

    private static long gcd(long a, long b) {
        long x = a;
        long y = b;
        while (y != 0) {
            long rest = x % y;
            x = y;
            y = rest;
        }
        return x;
    }
}
