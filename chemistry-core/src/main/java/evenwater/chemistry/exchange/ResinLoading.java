package evenwater.chemistry.exchange;

import evenwater.chemistry.substance.Ion;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a resin holds: the equivalent fraction of each ion, all of them together 1. Immutable and thread-safe. */
public final class ResinLoading {

    private final Map<Ion, Double> fractions;

    private ResinLoading(Map<Ion, Double> fractions) {
        this.fractions = Collections.unmodifiableMap(new TreeMap<>(fractions));
    }

    /**
     * Returns a loading.
     *
     * @param equivalents of each ion in any unit of charge, such as eq/L or percent; 0 or more, not all 0
     * @return the loading, scaled so that the fractions add up to 1
     * @throws IllegalArgumentException if an ion is no cation, a number is negative or no number, or all are 0
     */
    public static ResinLoading of(Map<Ion, Double> equivalents) {
        Objects.requireNonNull(equivalents, "equivalents");
        double sum = 0;
        for (Map.Entry<Ion, Double> e : equivalents.entrySet()) {
            if (e.getKey().chargeNumber() <= 0) {
                throw new IllegalArgumentException("a cation resin holds no " + e.getKey());
            }
            if (!(e.getValue() >= 0)) {
                throw new IllegalArgumentException(
                        "loading with " + e.getKey() + " must not be negative, but was " + e.getValue());
            }
            sum += e.getValue();
        }
        if (!(sum > 0 && sum <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("a resin is loaded with something, but the sum was " + sum);
        }
        Map<Ion, Double> fractions = new TreeMap<>();
        for (Map.Entry<Ion, Double> e : equivalents.entrySet()) {
            fractions.put(e.getKey(), e.getValue() / sum);
        }
        return new ResinLoading(fractions);
    }

    /**
     * Returns the share of the capacity that an ion has.
     *
     * @param ion any ion
     * @return equivalent fraction; no unit, 0 to 1; 0 if the resin holds none
     */
    public double fraction(Ion ion) {
        return fractions.getOrDefault(Objects.requireNonNull(ion, "ion"), 0.0);
    }

    /**
     * Returns the ions that were named.
     *
     * @return in their order
     */
    public List<Ion> ions() {
        return List.copyOf(fractions.keySet());
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return that instanceof ResinLoading l && l.fractions.equals(fractions);
    }

    @Override
    public int hashCode() {
        return fractions.hashCode();
    }

    /** Returns the fractions, for logs; all digits. */
    @Override
    public String toString() {
        return fractions.entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue())
                .collect(Collectors.joining(", ", "resin with ", ""));
    }
}
