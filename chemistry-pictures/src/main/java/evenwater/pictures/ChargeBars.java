package evenwater.pictures;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The charges of a water on both sides.
 *
 * @param name of the water
 * @param cations parts of the upper bar
 * @param anions parts of the lower bar
 */
record ChargeBars(String name, List<Part> cations, List<Part> anions) {

    /** A colour for the ions that most waters have; the same on both sides for those that often come together. */
    private static final Map<Ion, Integer> STYLES = Map.of(
            Ion.CALCIUM, 0,
            Ion.MAGNESIUM, 2,
            Ion.SODIUM, 1,
            Ion.POTASSIUM, 4,
            Ion.CHLORIDE, 1,
            Ion.SULFATE, 3,
            Ion.NITRATE, 4);

    private static final int ALKALINITY = 0;
    private static final int OTHERS = 5;
    private static final double ROUNDING = 1e-9;

    /** Common ions first, each side in the order in which analyses print it. */
    private static final List<Ion> ORDER =
            List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM, Ion.SULFATE, Ion.CHLORIDE, Ion.NITRATE);

    /**
     * A part of a bar.
     *
     * @param symbol of the ion
     * @param milliequivalents per litre, without sign
     * @param style colour; negative for what nobody measured
     */
    record Part(String symbol, double milliequivalents, int style) {

        String words() {
            return symbol + "\u00A0" + Figures.few(milliequivalents);
        }

        /** Whether it is more than nothing at three decimals. */
        boolean isShown() {
            return !Figures.few(milliequivalents).equals("0");
        }

        boolean isMeasured() {
            return style >= 0;
        }
    }

    static ChargeBars of(String name, Water water) {
        List<Part> cations = new ArrayList<>();
        List<Part> anions = new ArrayList<>();
        double alkalinity = water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        if (alkalinity > 0) {
            anions.add(new Part("alkalinity", alkalinity, ALKALINITY));
        }
        if (alkalinity < 0) {
            cations.add(new Part("acid", -alkalinity, OTHERS));
        }
        water.ions().stream()
                .filter(ion -> ion.chargeNumber() != 0)
                .filter(ion -> water.total(ion).getValue() > 0)
                .sorted(Comparator.comparingInt(ChargeBars::place))
                .forEach(ion -> (ion.chargeNumber() > 0 ? cations : anions)
                        .add(new Part(
                                ion.symbol(),
                                ion.equivalents(water.total(ion)).in(MILLIEQUIVALENT_PER_LITRE),
                                STYLES.getOrDefault(ion, OTHERS))));
        double unmeasured = water.unmeasuredCharge().in(MILLIEQUIVALENT_PER_LITRE);
        if (Math.abs(unmeasured) > ROUNDING) {
            (unmeasured > 0 ? cations : anions).add(new Part("not measured", Math.abs(unmeasured), -1));
        }
        return new ChargeBars(name, List.copyOf(cations), List.copyOf(anions));
    }

    private static int place(Ion ion) {
        int place = ORDER.indexOf(ion);
        return place < 0 ? ORDER.size() : place;
    }

    /** The length of the longer bar; but for rounding both are as long. */
    double sum() {
        return Math.max(sum(cations), sum(anions));
    }

    private static double sum(List<Part> parts) {
        return parts.stream().mapToDouble(Part::milliequivalents).sum();
    }

    String words() {
        return name + ", " + Figures.text(sum()) + " meq/L on each side, of which " + words(cations) + "; "
                + words(anions);
    }

    private static String words(List<Part> parts) {
        String words = parts.stream().filter(Part::isShown).map(Part::words).collect(Collectors.joining(", "));
        return words.isEmpty() ? "nothing" : words;
    }
}
