package evenwater.chemistry.analysis;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.substance.Ion;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * What a kit fixes of a water: for each ion the range that no water with those readings leaves.
 *
 * <p>Ranges are outer bounds: each by itself may be as wide as it says, and all of them at once need not be possible. Which waters are meant,
 * {@link KitReadings} says. Immutable and thread-safe.
 */
public final class KitBounds {

    private static final double EQUIVALENTS_PER_MILLIEQUIVALENT = 1e-3;

    /** Less than this is not worth a finding, in meq/L; what a drop of a kit may be off. */
    private static final double WORTH_SAYING = 0.1;

    private final Map<KitQuantity, ReadingInterval<EquivalentConcentration>> ranges;
    private final List<String> findings;

    KitBounds(Map<KitQuantity, KitRange> equivalentsPerLitre) {
        Map<KitQuantity, ReadingInterval<EquivalentConcentration>> all = new EnumMap<>(KitQuantity.class);
        equivalentsPerLitre.forEach((quantity, range) -> all.put(quantity, interval(range)));
        this.ranges = Collections.unmodifiableMap(all);
        this.findings = List.copyOf(find());
    }

    static ReadingInterval<EquivalentConcentration> interval(KitRange equivalentsPerLitre) {
        return new ReadingInterval<>(
                milliequivalents(equivalentsPerLitre.least()), milliequivalents(equivalentsPerLitre.most()), false);
    }

    private static EquivalentConcentration milliequivalents(double equivalents) {
        return EquivalentConcentration.of(equivalents / EQUIVALENTS_PER_MILLIEQUIVALENT, MILLIEQUIVALENT_PER_LITRE);
    }

    /**
     * Returns the range of a quantity in equivalents.
     *
     * @param quantity an ion, or a sum of ions
     * @return meq/L; both ends are included
     */
    public ReadingInterval<EquivalentConcentration> equivalents(KitQuantity quantity) {
        return Objects.requireNonNull(ranges.get(Objects.requireNonNull(quantity, "quantity")));
    }

    /**
     * Returns the range of an ion in mg/L.
     *
     * @param ion Ca²⁺, Mg²⁺, Na⁺, K⁺, Cl⁻, SO₄²⁻ or NO₃⁻
     * @return mg/L of the ion; both ends are included
     * @throws IllegalArgumentException if it is another ion
     */
    public ReadingInterval<AmountConcentration> total(Ion ion) {
        return KitIons.milligrams(ion, equivalents(KitIons.quantityOf(Objects.requireNonNull(ion, "ion"))));
    }

    /**
     * Returns the range of sodium: from 0 unless potassium was tested, since potassium may take its place.
     *
     * @return mg/L Na⁺
     */
    public ReadingInterval<AmountConcentration> sodium() {
        return total(Ion.SODIUM);
    }

    /**
     * Returns the range of sodium and potassium together, which a kit tells better than either.
     *
     * @return meq/L; times 22.99 in mg/L if all of it is sodium
     */
    public ReadingInterval<EquivalentConcentration> sodiumAndPotassium() {
        return equivalents(KitQuantity.SODIUM_AND_POTASSIUM);
    }

    /**
     * Returns the range of chloride, sulfate and nitrate together.
     *
     * @return meq/L
     */
    public ReadingInterval<EquivalentConcentration> strongAnions() {
        return equivalents(KitQuantity.STRONG_ANIONS);
    }

    /**
     * Returns the range of calcium.
     *
     * @return mg/L Ca²⁺
     */
    public ReadingInterval<AmountConcentration> calcium() {
        return total(Ion.CALCIUM);
    }

    /**
     * Returns the range of magnesium.
     *
     * @return mg/L Mg²⁺
     */
    public ReadingInterval<AmountConcentration> magnesium() {
        return total(Ion.MAGNESIUM);
    }

    /**
     * Returns what the ranges mean in words, where they exclude something that an owner of a kit might have thought.
     *
     * @return sentences without a final dot; possibly none
     */
    public List<String> findings() {
        return findings;
    }

    private List<String> find() {
        List<String> found = new ArrayList<>();
        EquivalentConcentration alkali = sodiumAndPotassium().least();
        EquivalentConcentration strong = strongAnions().least();
        EquivalentConcentration hard = equivalents(KitQuantity.HARDNESS).most();
        EquivalentConcentration alkalinity = equivalents(KitQuantity.ALKALINITY).most();
        if (alkali.in(MILLIEQUIVALENT_PER_LITRE) > WORTH_SAYING) {
            found.add("at least " + text(alkali) + " of sodium or potassium: hardness of at most " + text(hard)
                    + " does not explain the conductivity");
        }
        if (strong.in(MILLIEQUIVALENT_PER_LITRE) > WORTH_SAYING) {
            found.add("at least " + text(strong) + " of chloride, sulfate or nitrate: alkalinity of at most "
                    + text(alkalinity) + " does not explain the conductivity");
        }
        if (alkali.compareTo(hard) > 0 && strong.compareTo(alkalinity) > 0) {
            found.add("mostly a salt that neither kit shows: of sodium or potassium with chloride, sulfate or nitrate");
        }
        return found;
    }

    private static String text(EquivalentConcentration amount) {
        return amount.toText(Locale.ROOT, 3);
    }

    /** Returns the ranges, such as {@code sodium and potassium 20 to 85 mg/L Na⁺ if all is sodium, calcium 10 to 40 mg/L Ca²⁺}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        ranges.forEach((quantity, range) -> text.append(text.length() == 0 ? "" : ", ")
                .append(quantity)
                .append(' ')
                .append(KitIons.text(quantity, range)));
        return text.toString();
    }
}
