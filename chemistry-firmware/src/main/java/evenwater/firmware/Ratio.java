package evenwater.firmware;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * An exact fraction.
 *
 * @param num numerator
 * @param den denominator; above 0
 */
record Ratio(BigInteger num, BigInteger den) implements Comparable<Ratio> {

    static final Ratio HALF = of(1, 2);

    Ratio {
        if (den.signum() <= 0) {
            throw new IllegalArgumentException("denominator must be above 0, but was " + den);
        }
        BigInteger common = num.gcd(den);
        num = num.divide(common);
        den = den.divide(common);
    }

    static Ratio of(long num, long den) {
        return new Ratio(BigInteger.valueOf(num), BigInteger.valueOf(den));
    }

    static Ratio of(BigDecimal number) {
        return new Ratio(
                number.movePointRight(Math.max(0, number.scale())).toBigIntegerExact(),
                BigInteger.TEN.pow(Math.max(0, number.scale())));
    }

    Ratio plus(Ratio that) {
        return new Ratio(num.multiply(that.den).add(that.num.multiply(den)), den.multiply(that.den));
    }

    Ratio minus(Ratio that) {
        return plus(new Ratio(that.num.negate(), that.den));
    }

    Ratio times(Ratio that) {
        return new Ratio(num.multiply(that.num), den.multiply(that.den));
    }

    /** Of a fraction above 0. */
    Ratio inverse() {
        return new Ratio(den, num);
    }

    Ratio abs() {
        return new Ratio(num.abs(), den);
    }

    @Override
    public int compareTo(Ratio that) {
        return num.multiply(that.den).compareTo(that.num.multiply(den));
    }

    /** The last convergent of the continued fraction whose two numbers are at most so large: the nearest fraction of small numbers. */
    Ratio nearest(BigInteger most) {
        if (compareTo(new Ratio(most, BigInteger.ONE)) > 0) {
            throw new IllegalArgumentException("fraction must be at most " + most + ", but was " + toDouble());
        }
        BigInteger n = num;
        BigInteger d = den;
        BigInteger p0 = BigInteger.ZERO;
        BigInteger q0 = BigInteger.ONE;
        BigInteger p1 = BigInteger.ONE;
        BigInteger q1 = BigInteger.ZERO;
        while (d.signum() > 0) {
            BigInteger[] step = n.divideAndRemainder(d);
            BigInteger p2 = step[0].multiply(p1).add(p0);
            BigInteger q2 = step[0].multiply(q1).add(q0);
            if (p2.compareTo(most) > 0 || q2.compareTo(most) > 0) {
                break;
            }
            p0 = p1;
            q0 = q1;
            p1 = p2;
            q1 = q2;
            n = d;
            d = step[1];
        }
        return new Ratio(p1, q1);
    }

    /** The nearest double. */
    double toDouble() {
        return new BigDecimal(num)
                .divide(new BigDecimal(den), new MathContext(60, RoundingMode.HALF_EVEN))
                .doubleValue();
    }

    /** With so many decimals, rounded up, for a bound. */
    String roundedUp(int decimals) {
        return new BigDecimal(num)
                .divide(new BigDecimal(den), decimals, RoundingMode.CEILING)
                .toPlainString();
    }
}
