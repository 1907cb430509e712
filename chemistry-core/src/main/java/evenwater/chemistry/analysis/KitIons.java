package evenwater.chemistry.analysis;

import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Ion;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;

/** The ions that a kit leaves open, and how their ranges are said. */
final class KitIons {

    private static final Map<KitQuantity, Ion> IONS = new EnumMap<>(Map.of(
            KitQuantity.CALCIUM, Ion.CALCIUM,
            KitQuantity.MAGNESIUM, Ion.MAGNESIUM,
            KitQuantity.SODIUM, Ion.SODIUM,
            KitQuantity.POTASSIUM, Ion.POTASSIUM,
            KitQuantity.CHLORIDE, Ion.CHLORIDE,
            KitQuantity.SULFATE, Ion.SULFATE,
            KitQuantity.NITRATE, Ion.NITRATE));

    private static final int DIGITS = 3;

    private KitIons() {}

    static KitQuantity quantityOf(Ion ion) {
        return IONS.entrySet().stream()
                .filter(entry -> entry.getValue().equals(ion))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "a test beside the kit must be of Ca²⁺, Mg²⁺, Na⁺, K⁺, Cl⁻, SO₄²⁻ or NO₃⁻, but was of " + ion));
    }

    static Optional<Ion> ionOf(KitQuantity quantity) {
        return Optional.ofNullable(IONS.get(quantity));
    }

    static double equivalents(Ion ion, Quantity<AmountConcentration> amount) {
        return ion.equivalents(amount).in(EquivalentConcentration.EQUIVALENT_PER_LITRE);
    }

    static AmountConcentration milligrams(Ion ion, EquivalentConcentration equivalents) {
        return ion.amount(equivalents).to(ion.milligramPerLitre());
    }

    static ReadingInterval<AmountConcentration> milligrams(
            Ion ion, ReadingInterval<EquivalentConcentration> equivalents) {
        return new ReadingInterval<>(milligrams(ion, equivalents.least()), milligrams(ion, equivalents.most()), false);
    }

    /** Ions in mg/L, sodium and potassium as if all were sodium, other sums in meq/L. */
    static String text(KitQuantity quantity, ReadingInterval<EquivalentConcentration> range) {
        Ion ion = quantity == KitQuantity.SODIUM_AND_POTASSIUM ? Ion.SODIUM : IONS.get(quantity);
        String text = ion == null ? ends(range) : ends(milligrams(ion, range));
        return quantity == KitQuantity.SODIUM_AND_POTASSIUM ? text + " if all is sodium" : text;
    }

    private static <Q extends WaterQuantity<Q>> String ends(ReadingInterval<Q> range) {
        String unit = " " + range.most().getUnit().getSymbol();
        String from = range.least().toText(Locale.ROOT, DIGITS);
        return from.substring(0, from.length() - unit.length()) + " to "
                + range.most().toText(Locale.ROOT, DIGITS);
    }
}
