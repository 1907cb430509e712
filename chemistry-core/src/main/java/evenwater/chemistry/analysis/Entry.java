package evenwater.chemistry.analysis;

import evenwater.chemistry.analysis.Analyte.Kind;
import evenwater.chemistry.substance.Ion;
import java.util.Comparator;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One reading of a report in the canonical unit of its kind: mmol/L of an ion or of hardness, meq/L of alkalinity, µS/cm, K, mg/L.
 *
 * @param key what was read
 * @param low the least it may be
 * @param high the most it may be; {@code low} if it was measured
 * @param stated the reading as it was written, for messages
 * @param line where it stands; 0 if it was not read from text
 * @param uncertainty standard uncertainty in the same unit; null if none was stated, and of an interval
 */
record Entry(
        Key key,
        double low,
        double high,
        String stated,
        int line,
        @Nullable Double uncertainty) {

    Entry(Key key, double low, double high, String stated, int line) {
        this(key, low, high, stated, line, null);
    }

    /** The same reading with a standard uncertainty. */
    Entry with(double standardUncertainty) {
        return new Entry(key, low, high, stated, line, standardUncertainty);
    }

    /** The same reading with a relative uncertainty, if it is a concentration that states none and no interval. */
    Entry withUsual(double relative) {
        boolean isConcentration = switch (key.kind()) {
            case PH, TEMPERATURE, CONDUCTIVITY -> false;
            default -> true;
        };
        return isConcentration && relative > 0 && !isInterval() && uncertainty == null
                ? with(relative * Math.abs(high))
                : this;
    }

    static double checkedShare(double relative) {
        if (!(relative >= 0 && relative <= 1)) {
            throw new IllegalArgumentException("relative uncertainty must be from 0 to 1, but was " + relative);
        }
        return relative;
    }

    /** The same reading as a number that it may be. */
    Entry drawn(double number) {
        return new Entry(key, number, number, stated, line);
    }

    /** Which of several readings of one thing is used, in whatever order they come: the narrowest, then the larger. */
    static final Comparator<Entry> PREFERRED = Comparator.comparingDouble((Entry e) -> e.high - e.low)
            .thenComparing(Entry::high, Comparator.reverseOrder());

    /** Of two readings of one thing what both allow: the overlap of two intervals, or else the preferred one. */
    Entry narrowed(Entry that) {
        double least = Math.max(low, that.low);
        double most = Math.min(high, that.high);
        if (isInterval() && that.isInterval() && least < most) {
            boolean thisIsFirst = line <= that.line;
            String both = thisIsFirst ? stated + " and " + that.stated : that.stated + " and " + stated;
            boolean holdsThat = least == that.low && most == that.high;
            boolean isHeld = least == low && most == high;
            String words = isHeld ? stated : holdsThat ? that.stated : both;
            return new Entry(key, least, most, words, Math.min(line, that.line));
        }
        return PREFERRED.compare(this, that) <= 0 ? this : that;
    }

    /** What a reading is of. */
    record Key(Kind kind, @Nullable Ion ion) {

        /** The reading of an ion's amount; of the forms of alkalinity that of alkalinity. */
        static Key of(Ion ion) {
            return new Key(kindOf(ion), ion);
        }

        private static Kind kindOf(Ion ion) {
            Objects.requireNonNull(ion, "ion");
            if (ion.equals(Ion.BICARBONATE)) {
                return Kind.BICARBONATE;
            }
            if (ion.equals(Ion.CARBONATE)) {
                return Kind.CARBONATE;
            }
            if (ion.equals(Ion.HYDROXIDE)) {
                return Kind.HYDROXIDE;
            }
            if (ion.referenceForm().equals(Ion.CARBON_DIOXIDE)
                    || ion.referenceForm().equals(Ion.WATER)) {
                throw new IllegalArgumentException(
                        ion + " is not reported on its own: a water counts it in its inorganic carbon or alkalinity");
            }
            if (!ion.isReferenceForm()) {
                throw new IllegalArgumentException(
                        ion + " is not reported on its own: it is counted in " + ion.referenceForm());
            }
            return Kind.ION;
        }

        String name() {
            if (kind == Kind.PH) {
                return "pH";
            }
            return ion == null ? kind.name().toLowerCase(Locale.ROOT).replace('_', ' ') : ion.name();
        }
    }

    boolean isInterval() {
        return low != high;
    }

    double middle() {
        return (low + high) / 2;
    }

    /**
     * Tells whether two readings of one thing agree: they overlap or differ by no more than rounding of a report: 2 %, 0.1 of a pH, half
     * a kelvin.
     */
    boolean agreesWith(Entry that) {
        double gap = Math.max(low, that.low) - Math.min(high, that.high);
        return switch (key.kind()) {
            case PH -> gap <= 0.1 + 1e-9;
            case TEMPERATURE -> gap <= 0.5 + 1e-9;
            default -> gap <= 0.02 * Math.max(Math.abs(high), Math.abs(that.high));
        };
    }
}
