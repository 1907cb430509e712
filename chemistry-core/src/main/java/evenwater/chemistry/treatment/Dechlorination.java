package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static evenwater.chemistry.substance.Compound.SODIUM_THIOSULFATE_PENTAHYDRATE;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * Taking chlorine or chloramine out of tap water with sodium thiosulfate, Na₂S₂O₃·5H₂O.
 *
 * <p>One mole of HOCl or of NH₂Cl counts as one of Cl₂. Ended in sulfate it takes 0.875 mg of the salt for each mg of Cl₂, ended in tetrathionate
 * 7.0 mg; the trade doses at the upper end (common practice, no source), which is enough either way, and so does this class unless told otherwise.
 * A water states no chlorine, so only what it leaves behind is booked: sodium, chloride, the product, thiosulfate that was not needed, and with
 * chloramine the ammonia, as NH₄⁺. Alkalinity moves by −1.5 eq for each mole of free chlorine ended in sulfate, by +1 ended in tetrathionate; ammonia
 * brings one more.
 *
 * <p>Left out: oxygen that bacteria take later to oxidise thiosulfate that is left and tetrathionate, and acid that this makes. Immutable and
 * thread-safe.
 */
public final class Dechlorination implements Treatment {

    /** Tetrathionate, S₄O₆²⁻; exchanges no protons. */
    public static final Ion TETRATHIONATE = Ion.of("tetrathionate", Formula.parse("S4O6^2-"));

    private static final double CHLORINE_MOLAR_MASS =
            Formula.parse("Cl2").molarMass().in(MolarMass.GRAM_PER_MOLE);

    private static final double SALT_MOLAR_MASS =
            SODIUM_THIOSULFATE_PENTAHYDRATE.molarMass().in(MolarMass.GRAM_PER_MOLE);

    private final MassConcentration chlorine;
    private final boolean bound;
    private final ThiosulfateProduct product;
    private final MassConcentration dose;

    private Dechlorination(
            MassConcentration chlorine, boolean bound, ThiosulfateProduct product, MassConcentration dose) {
        this.chlorine = chlorine;
        this.bound = bound;
        this.product = product;
        this.dose = dose;
    }

    /**
     * Returns the treatment of free chlorine, dosed for tetrathionate.
     *
     * @param asChlorine free chlorine as Cl₂; 0 to 1000 mg/L
     * @param product what the thiosulfate ends as
     * @return the treatment
     * @throws IllegalArgumentException if it is out of range
     */
    public static Dechlorination ofFreeChlorine(Quantity<MassConcentration> asChlorine, ThiosulfateProduct product) {
        return of(asChlorine, false, product);
    }

    /**
     * Returns the treatment of chloramine, NH₂Cl, dosed for tetrathionate; sets its ammonia free, which must be dealt with.
     *
     * @param asChlorine combined chlorine as Cl₂; 0 to 1000 mg/L
     * @param product what the thiosulfate ends as
     * @return the treatment
     * @throws IllegalArgumentException if it is out of range
     */
    public static Dechlorination ofChloramine(Quantity<MassConcentration> asChlorine, ThiosulfateProduct product) {
        return of(asChlorine, true, product);
    }

    private static Dechlorination of(
            Quantity<MassConcentration> asChlorine, boolean bound, ThiosulfateProduct product) {
        MassConcentration stated = MassConcentration.from(Objects.requireNonNull(asChlorine, "asChlorine"));
        Objects.requireNonNull(product, "product");
        if (!(stated.getValue() >= 0 && stated.in(MILLIGRAM_PER_LITRE) <= 1000)) {
            throw new IllegalArgumentException("chlorine as Cl₂ must be from 0 to 1000 mg/L, but was " + stated);
        }
        return new Dechlorination(stated, bound, product, needed(stated, ThiosulfateProduct.TETRATHIONATE));
    }

    private static MassConcentration needed(MassConcentration chlorine, ThiosulfateProduct product) {
        return MassConcentration.of(
                chlorine.in(MILLIGRAM_PER_LITRE)
                        / CHLORINE_MOLAR_MASS
                        * product.thiosulfatePerChlorine()
                        * SALT_MOLAR_MASS,
                MILLIGRAM_PER_LITRE);
    }

    /**
     * Returns the treatment with just as much as its product takes.
     *
     * @return the treatment, which leaves no thiosulfate
     */
    public Dechlorination withLeastDose() {
        return new Dechlorination(chlorine, bound, product, needed(chlorine, product));
    }

    /**
     * Returns the treatment with another dose.
     *
     * @param thiosulfate mass of Na₂S₂O₃·5H₂O per volume of water; at least what the product takes, at most 100 g/L
     * @return the treatment
     * @throws IllegalArgumentException if it is less, so that chlorine would be left, or more
     */
    public Dechlorination withDose(Quantity<MassConcentration> thiosulfate) {
        MassConcentration stated = MassConcentration.from(Objects.requireNonNull(thiosulfate, "thiosulfate"));
        MassConcentration least = needed(chlorine, product);
        double milligrams = stated.in(MILLIGRAM_PER_LITRE);
        if (!(milligrams >= least.in(MILLIGRAM_PER_LITRE) * (1 - 1e-12) && milligrams <= 1e5)) {
            throw new IllegalArgumentException("dose of sodium thiosulfate pentahydrate must be at least the "
                    + least.toText(Locale.ROOT, 4) + " that " + chlorine
                    + " of chlorine takes, at most 100 g/L, but was "
                    + stated);
        }
        return new Dechlorination(chlorine, bound, product, stated);
    }

    /**
     * Returns the dose.
     *
     * @return mass of Na₂S₂O₃·5H₂O per volume of water
     */
    public MassConcentration dose() {
        return dose;
    }

    /**
     * Returns how much to weigh for a volume.
     *
     * @param volume of the water; above 0
     * @return mass of Na₂S₂O₃·5H₂O
     * @throws IllegalArgumentException if the volume is not positive
     */
    public WaterQuantity<Mass> mass(Quantity<Volume> volume) {
        WaterQuantity<Volume> stated = WaterUnits.volume(Objects.requireNonNull(volume, "volume"));
        double litres = stated.in(WaterUnits.LITRE);
        if (!(litres > 0)) {
            throw new IllegalArgumentException("volume of the water must be positive, but was " + stated);
        }
        return WaterUnits.mass(dose.in(MassConcentration.GRAM_PER_LITRE) * litres, WaterUnits.GRAM);
    }

    /**
     * Returns what the treatment leaves in the water.
     *
     * @return sodium, chloride, the product, thiosulfate that was not needed, and ammonia of chloramine
     */
    public Change change() {
        double hypochlorous = chlorine.in(MILLIGRAM_PER_LITRE) / CHLORINE_MOLAR_MASS;
        double brought = dose.in(MILLIGRAM_PER_LITRE) / SALT_MOLAR_MASS;
        double spent = Math.min(brought, hypochlorous * product.thiosulfatePerChlorine());
        boolean complete = product == ThiosulfateProduct.SULFATE;
        Map<Ion, AmountConcentration> moved = new TreeMap<>();
        put(moved, Ion.SODIUM, 2 * brought);
        put(moved, Ion.THIOSULFATE, brought - spent);
        put(moved, complete ? Ion.SULFATE : TETRATHIONATE, complete ? 2 * spent : spent / 2);
        put(moved, Ion.CHLORIDE, hypochlorous);
        put(moved, Ion.HYDROGEN, complete ? 6 * spent : -spent / 2);
        put(moved, Ion.AMMONIA, bound ? hypochlorous : 0);
        return Change.of(moved);
    }

    private static void put(Map<Ion, AmountConcentration> moved, Ion ion, double millimoles) {
        if (millimoles != 0) {
            moved.put(ion, AmountConcentration.of(millimoles, MILLIMOLE_PER_LITRE));
        }
    }

    /**
     * Returns what to mind.
     *
     * @return sentences without a final dot; possibly none
     */
    public List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        if (bound && chlorine.getValue() > 0) {
            String ammonia = change().total(Ion.AMMONIUM)
                    .to(Ion.AMMONIUM.milligramPerLitre())
                    .toText(Locale.ROOT, 2);
            cautions.add(
                    "chloramine sets free " + ammonia
                            + ", which thiosulfate does not bind: it must be dealt with by a filter or a binder, above all at high pH");
        }
        if (change().total(Ion.THIOSULFATE).getValue() > 0) {
            cautions.add("thiosulfate that is not needed stays, and bacteria take oxygen to oxidise it: aerate");
        }
        return List.copyOf(cautions);
    }

    @Override
    public Water treat(Water source) {
        return Objects.requireNonNull(source, "source").plus(change());
    }

    @Override
    public String name() {
        return dose.toText(Locale.ROOT, 4) + " of sodium thiosulfate pentahydrate against " + chlorine + " of "
                + (bound ? "chloramine" : "free chlorine") + " as Cl₂";
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name();
    }
}
