package evenwater.chemistry.treatment;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * One line of a ledger.
 *
 * @param name what the treatment is
 * @param before the water in front of it
 * @param change what went in and out; its charges add up to zero
 * @param after the water behind it
 */
public record Stage(String name, Water before, Change change, Water after) {

    /**
     * Checks that the change leads from one water to the other.
     *
     * @param name see the record
     * @param before see the record
     * @param change see the record
     * @param after see the record
     */
    public Stage {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(change, "change");
        if (!change.equals(Change.between(before, after))) {
            throw new IllegalArgumentException("change of stage '" + name + "' must lead from before to after");
        }
    }

    /**
     * Returns the stage between two waters.
     *
     * @param name what the treatment is
     * @param before the water in front of it
     * @param after the water behind it
     * @return the stage with the change between them
     */
    public static Stage between(String name, Water before, Water after) {
        return new Stage(name, before, Change.between(before, after), after);
    }

    /**
     * Returns what follows from the water behind this stage: pH, CO₂, saturation, conductivity, what a meter shows.
     *
     * @return the condition of the water behind
     */
    public WaterCondition condition() {
        return WaterCondition.of(after);
    }

    /** Returns what goes in, what goes out, the water behind in mg/L and its condition, rounded for people. */
    @Override
    public String toString() {
        List<String> in = new ArrayList<>();
        List<String> out = new ArrayList<>();
        for (Ion ion : change.ions()) {
            double milligrams = change.total(ion).in(ion.milligramPerLitre());
            (milligrams > 0 ? in : out).add(ion + " " + number(Math.abs(milligrams)));
        }
        double alkalinity = change.alkalinity().in(Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE);
        if (alkalinity != 0) {
            (alkalinity > 0 ? in : out).add("alkalinity as HCO₃⁻ " + number(Math.abs(alkalinity)));
        }
        return name + "\n  in:  " + listed(in) + "\n  out: " + listed(out) + "\n  behind it: " + shown(after)
                + "\n  which has: " + condition();
    }

    private static String listed(List<String> parts) {
        return parts.isEmpty() ? "nothing" : String.join(", ", parts) + " mg/L";
    }

    /** A water in mg/L. */
    static String shown(Water water) {
        List<String> parts = new ArrayList<>();
        for (Ion ion : water.ions()) {
            parts.add(ion + " " + number(water.total(ion).in(ion.milligramPerLitre())));
        }
        parts.add("alkalinity as HCO₃⁻ " + number(water.alkalinity().in(Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE)));
        String unmeasured = water.unmeasuredCharge()
                .to(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE)
                .toText(Locale.ROOT, 3);
        return String.join(", ", parts) + " mg/L, unmeasured charge " + unmeasured;
    }

    private static String number(double value) {
        double rounded = Math.rint(value * 1000) / 1000;
        return Double.toString(rounded).replaceFirst("\\.0$", "");
    }
}
