package evenwater.chemistry.water;

import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Between {@link Water} and {@link PlainWater}: writes, and refuses by name what cannot be a water. */
final class PlainForm {

    /**
     * How far the charges of what is read may be from adding up, in meq/L and as a share of all charges; own rule. A water that this library wrote is far
     * nearer, a figure that a person changed by hand is farther, and so is one written with six digits.
     */
    private static final double TOLERANCE = 1e-9;

    private PlainForm() {}

    static PlainWater of(Balance balance, double kelvin, double pH) {
        Map<String, @Nullable Double> totals = new LinkedHashMap<>();
        Map<String, @Nullable String> names = new LinkedHashMap<>();
        for (int i = 0; i < balance.ions().length; i++) {
            if (balance.at(i) > 0) {
                Ion ion = balance.ions()[i];
                totals.put(ion.symbol(), balance.at(i));
                if (!Ion.all().contains(ion)) {
                    names.put(ion.symbol(), ion.name());
                }
            }
        }
        return new PlainWater(
                PlainWater.VERSION,
                kelvin,
                totals,
                names,
                balance.alkalinity,
                balance.unmeasured,
                orNull(balance.carbon),
                orNull(pH));
    }

    private static @Nullable Double orNull(double value) {
        return Double.isNaN(value) ? null : value;
    }

    static Water read(PlainWater plain) {
        int version = present("version", plain.version());
        if (version != PlainWater.VERSION) {
            throw refused(
                    "version",
                    "be " + PlainWater.VERSION,
                    version + (version > PlainWater.VERSION ? ", of a newer library" : ""));
        }
        double kelvin = within(
                "temperatureInKelvin",
                plain.temperatureInKelvin(),
                273.15 - 1e-9,
                373.15 + 1e-9,
                "from 273.15 to 373.15 K",
                " K");
        SortedMap<Ion, Double> totals = totals(plain);
        double alkalinity =
                finite("alkalinityInMilliequivalentsPerLitre", plain.alkalinityInMilliequivalentsPerLitre());
        double unmeasured = finite(
                "unmeasuredChargeInMilliequivalentsPerLitre", plain.unmeasuredChargeInMilliequivalentsPerLitre());
        double carbon = plain.inorganicCarbonInMillimolesPerLitre() == null
                ? Double.NaN
                : amount("inorganicCarbonInMillimolesPerLitre", plain.inorganicCarbonInMillimolesPerLitre());
        double pH = plain.measuredPH() == null
                ? Double.NaN
                : within("measuredPH", plain.measuredPH(), 0, 14, "from 0 to 14", "");
        if (!Double.isNaN(carbon) && !Double.isNaN(pH)) {
            throw new IllegalArgumentException(
                    "plain water must not state both inorganicCarbonInMillimolesPerLitre and measuredPH: one follows from the other");
        }
        Balance balance = Balance.stored(totals, alkalinity, unmeasured, carbon);
        refuseOpen(balance, totals);
        return new Water(balance, kelvin, pH);
    }

    private static SortedMap<Ion, Double> totals(PlainWater plain) {
        Map<String, @Nullable Double> stated = present("millimolesPerLitre", plain.millimolesPerLitre());
        Map<String, @Nullable String> names = plain.namesOfOwnIons() == null ? Map.of() : plain.namesOfOwnIons();
        SortedMap<Ion, Double> totals = new TreeMap<>();
        for (Map.Entry<String, @Nullable Double> entry : stated.entrySet()) {
            present("the symbol of an ion in millimolesPerLitre", entry.getKey());
            Ion ion = ion(entry.getKey(), names);
            Counting.refuseUncounted(ion);
            double amount = amount("millimolesPerLitre of " + entry.getKey(), entry.getValue());
            if (totals.put(ion, amount) != null) {
                throw new IllegalArgumentException(
                        "plain water must state " + ion + " once, but has it in two spellings");
            }
        }
        for (String symbol : names.keySet()) {
            present("the symbol of an ion in namesOfOwnIons", symbol);
            if (!stated.containsKey(symbol)) {
                throw new IllegalArgumentException(
                        "plain water names " + symbol + " among namesOfOwnIons, but has no millimolesPerLitre of it");
            }
        }
        return totals;
    }

    /** A constant by its text, or an own ion that is declared as one, so that a slip of the pen makes no new ion. */
    private static Ion ion(String text, Map<String, @Nullable String> names) {
        if (names.containsKey(text)) {
            return ownIon(text, present("namesOfOwnIons of " + text, names.get(text)));
        }
        try {
            return Ion.parse(text);
        } catch (UnreadableTextException e) {
            throw new IllegalArgumentException(
                    "plain water has an unknown ion '" + text
                            + "' in millimolesPerLitre: an ion of your own must be named in namesOfOwnIons",
                    e);
        }
    }

    private static Ion ownIon(String symbol, String name) {
        try {
            return Ion.of(name, Formula.parse(symbol));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("plain water: " + symbol + " of namesOfOwnIons: " + e.getMessage(), e);
        }
    }

    private static void refuseOpen(Balance balance, SortedMap<Ion, Double> totals) {
        double charges = Math.abs(balance.alkalinity) + Math.abs(balance.unmeasured);
        for (Map.Entry<Ion, Double> entry : totals.entrySet()) {
            charges += Math.abs(entry.getKey().chargeNumber()) * entry.getValue();
        }
        double residual = balance.residual();
        if (!(Math.abs(residual) <= TOLERANCE * (1 + charges))) {
            throw new IllegalArgumentException(
                    "plain water must add up: charges of the ions and unmeasuredChargeInMilliequivalentsPerLitre are "
                            + (balance.alkalinity + residual) + " meq/L, but alkalinityInMilliequivalentsPerLitre is "
                            + balance.alkalinity + " meq/L");
        }
    }

    private static <T> T present(String what, @Nullable T value) {
        if (value == null) {
            throw new IllegalArgumentException("plain water lacks " + what);
        }
        return value;
    }

    private static double finite(String what, @Nullable Double value) {
        return within(what, value, -Double.MAX_VALUE, Double.MAX_VALUE, "a finite number", " meq/L");
    }

    private static double amount(String what, @Nullable Double value) {
        return within(what, value, 0, Double.MAX_VALUE, "0 mmol/L or more", " mmol/L");
    }

    private static double within(
            String what, @Nullable Double value, double least, double most, String allowed, String unit) {
        double number = present(what, value);
        if (!(number >= least && number <= most)) { // NaN fails
            throw refused(what, "be " + allowed, number + unit);
        }
        return number;
    }

    private static IllegalArgumentException refused(String what, String allowed, String value) {
        return new IllegalArgumentException("plain water: " + what + " must " + allowed + ", but was " + value);
    }
}
