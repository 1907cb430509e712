package evenwater.chemistry.uncertainty;

import java.util.Locale;
import java.util.SplittableRandom;

/** What is known of a number, as a distribution; all in the unit of the input. */
sealed interface Knowledge permits Knowledge.Exact, TruncatedNormal, Knowledge.Between {

    /** The number as stated, or the middle of an interval. */
    double value();

    /** The mean of the distribution; the value unless what is impossible was cut off. */
    double expectation();

    double standardUncertainty();

    double draw(SplittableRandom random);

    /** The same without what lies outside of two ends, which may be infinite; the caller has checked that the value is inside. */
    Knowledge within(double least, double most);

    /** A constant. */
    record Exact(double value) implements Knowledge {

        @Override
        public double expectation() {
            return value;
        }

        @Override
        public double standardUncertainty() {
            return 0;
        }

        @Override
        public double draw(SplittableRandom random) {
            return value;
        }

        @Override
        public Knowledge within(double least, double most) {
            return this;
        }
    }

    /**
     * Anything between two ends: all alike likely (JCGM 100:2008 4.3.7, JCGM 101:2008 6.4.2), or the middle most likely (4.3.9, 6.4.5).
     */
    record Between(double least, double most, boolean isTriangular) implements Knowledge {

        @Override
        public double value() {
            return least + (most - least) / 2;
        }

        @Override
        public double expectation() {
            return value();
        }

        @Override
        public double standardUncertainty() {
            return (most - least) / 2 / Math.sqrt(isTriangular ? 6 : 3);
        }

        @Override
        public double draw(SplittableRandom random) {
            double place = StandardNormal.uniform(random);
            double drawn = isTriangular ? (place + StandardNormal.uniform(random)) / 2 : place;
            return least + drawn * (most - least);
        }

        @Override
        public Knowledge within(double lowest, double highest) {
            if (least < lowest || most > highest) {
                throw new IllegalArgumentException(
                        String.format(Locale.ROOT, "state ends that are possible instead of %s and %s", least, most));
            }
            return this;
        }
    }
}
