package evenwater.chemistry.treatment;

import evenwater.chemistry.substance.Ion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What passes a membrane.
 *
 * @param amounts mmol/L; HCO₃⁻ stands for alkalinity and may be negative
 * @param unmeasured unmeasured charge that passes, in meq/L
 * @param adjusted ions of which something else passes than their rejections say
 */
record Passing(Map<Ion, Double> amounts, double unmeasured, List<Ion> adjusted) {

    /** Sides that differ by less than this share of themselves are neutral but for rounding. */
    private static final double ROUNDING = 1e-12;

    /** What passes by rejections alone, whether neutral or not. */
    static Passing byRejection(Map<Ion, Double> amounts, double unmeasured) {
        return new Passing(amounts, unmeasured, List.of());
    }

    /** Charge in meq/L that passes too much; negative where anions prevail. */
    double excess() {
        return side(1) - side(-1);
    }

    private double side(int sign) {
        double sum = Math.max(0, sign * unmeasured);
        for (Map.Entry<Ion, Double> e : amounts.entrySet()) {
            sum += Math.max(0, sign * e.getKey().chargeNumber() * e.getValue());
        }
        return sum;
    }

    /** With the side that prevails held back by one factor. */
    Passing heldBack() {
        double positive = side(1);
        double negative = side(-1);
        double larger = Math.max(positive, negative);
        if (Math.abs(positive - negative) <= ROUNDING * larger) {
            return this;
        }
        int sign = positive > negative ? 1 : -1;
        double factor = Math.min(positive, negative) / larger;
        List<Ion> held = new ArrayList<>();
        Map<Ion, Double> after = new TreeMap<>(amounts);
        amounts.forEach((ion, amount) -> {
            if (sign * ion.chargeNumber() * amount > 0) {
                after.put(ion, factor * amount);
                held.add(ion);
            }
        });
        return new Passing(after, sign * unmeasured > 0 ? factor * unmeasured : unmeasured, held);
    }

    /** With one ion taking the excess; empty if it would leave 0 to all that the feed has of it. */
    Optional<Passing> adjusting(Ion ion, double inFeed) {
        double result = amounts.getOrDefault(ion, 0.0) - excess() / ion.chargeNumber();
        double slack = ROUNDING * Math.abs(inFeed);
        if (result < Math.min(0, inFeed) - slack || result > Math.max(0, inFeed) + slack) {
            return Optional.empty();
        }
        Map<Ion, Double> after = new TreeMap<>(amounts);
        after.put(ion, result);
        return Optional.of(new Passing(after, unmeasured, List.of(ion)));
    }
}
