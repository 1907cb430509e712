package evenwater.firmware;

import java.math.BigInteger;
import java.util.List;

/**
 * The fixed-point functions that round one exact quotient of whole numbers, so that their worst error is one half, as long as numerator
 * and denominator stay within 64 bits over all arguments that are allowed. A test proves that at the corners: numerator and denominator
 * are linear in each argument alone, hence largest and smallest there.
 */
enum FixedFormula {
    /** Raw, soft, target; share in millionths. */
    BYPASS("ew_fixed_bypass_share", List.of(Range.ANY, Range.ANY, Range.ANY)) {
        @Override
        BigInteger numerator(BigInteger... x) {
            return x[2].subtract(x[1]).multiply(MILLION);
        }

        @Override
        BigInteger denominator(BigInteger... x) {
            return x[0].subtract(x[1]);
        }
    },
    /** Raw, soft, share in millionths. */
    BLEND("ew_fixed_blended_hardness", List.of(Range.ANY, Range.ANY, new Range(0, 1_000_000))) {
        @Override
        BigInteger numerator(BigInteger... x) {
            return x[1].multiply(MILLION).add(x[0].subtract(x[1]).multiply(x[2]));
        }

        @Override
        BigInteger denominator(BigInteger... x) {
            return MILLION;
        }
    },
    /** Conductivity, thousandths of a degree, millionths for a kelvin. */
    LINEAR("ew_fixed_linear_to_25", List.of(Range.ANY, new Range(0, 100_000), new Range(0, 100_000))) {
        @Override
        BigInteger numerator(BigInteger... x) {
            return x[0].multiply(BILLION);
        }

        @Override
        BigInteger denominator(BigInteger... x) {
            return BILLION.add(x[2].multiply(x[1].subtract(BigInteger.valueOf(25_000))));
        }
    },
    /** Conductivity, thousandths of a degree. */
    NATURAL("ew_fixed_natural_to_25", List.of(Range.ANY, new Range(0, 35_900))) {
        @Override
        BigInteger numerator(BigInteger... x) {
            int tenths = x[1].intValueExact() / 100;
            long lower = NumberSources.naturalWater(tenths);
            long upper = NumberSources.naturalWater(tenths + 1);
            return x[0].multiply(BigInteger.valueOf(100 * lower + (upper - lower) * (x[1].intValueExact() % 100)));
        }

        @Override
        BigInteger denominator(BigInteger... x) {
            return BigInteger.valueOf(100_000);
        }
    },
    /** Hardness, iron, manganese, both surcharges. */
    COMPENSATED(
            "ew_fixed_compensated_hardness",
            List.of(Range.ANY, Range.ANY, Range.ANY, new Range(0, 100_000), new Range(0, 100_000))) {
        @Override
        BigInteger numerator(BigInteger... x) {
            return x[0].multiply(BigInteger.valueOf(1000))
                    .add(x[1].multiply(x[3]))
                    .add(x[2].multiply(x[4]));
        }

        @Override
        BigInteger denominator(BigInteger... x) {
            return BigInteger.valueOf(1000);
        }
    },
    /** Feed, permeate, recovery in millionths. */
    MEMBRANE("ew_fixed_membrane_concentrate", List.of(Range.ANY, Range.ANY, new Range(0, 999_999))) {
        @Override
        BigInteger numerator(BigInteger... x) {
            return x[0].multiply(MILLION).subtract(x[2].multiply(x[1]));
        }

        @Override
        BigInteger denominator(BigInteger... x) {
            return MILLION.subtract(x[2]);
        }
    },
    /** From, to, thousandths of a degree. */
    TEMPERATURE("ew_fixed_temperature", List.of(new Range(0, 2), new Range(0, 2), Range.SIGNED)) {
        @Override
        BigInteger numerator(BigInteger... x) {
            TemperatureScale from = TemperatureScale.all().get(x[0].intValueExact());
            TemperatureScale to = TemperatureScale.all().get(x[1].intValueExact());
            return x[2].add(BigInteger.valueOf(from.offsetInThousandths()))
                    .multiply(from.size().num())
                    .multiply(to.size().den())
                    .subtract(BigInteger.valueOf(to.offsetInThousandths()).multiply(denominator(x)));
        }

        @Override
        BigInteger denominator(BigInteger... x) {
            TemperatureScale from = TemperatureScale.all().get(x[0].intValueExact());
            TemperatureScale to = TemperatureScale.all().get(x[1].intValueExact());
            return from.size().den().multiply(to.size().num());
        }
    };

    /**
     * What an argument may be.
     *
     * @param least smallest
     * @param most largest
     */
    record Range(int least, int most) {
        static final Range ANY = new Range(0, Integer.MAX_VALUE);
        static final Range SIGNED = new Range(Integer.MIN_VALUE, Integer.MAX_VALUE);
    }

    private static final BigInteger MILLION = BigInteger.valueOf(1_000_000);
    private static final BigInteger BILLION = BigInteger.valueOf(1_000_000_000);

    final String function;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    final List<Range> arguments;

    FixedFormula(String function, List<Range> arguments) {
        this.function = function;
        this.arguments = arguments;
    }

    /** The exact answer is numerator over denominator. */
    abstract BigInteger numerator(BigInteger... x);

    /** Above 0 where there is an answer. */
    abstract BigInteger denominator(BigInteger... x);
}
