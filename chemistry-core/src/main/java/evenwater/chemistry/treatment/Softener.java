package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.Hardness.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.kernel.SofteningKernel;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * An ion-exchange softener as bookkeeping: hardness ions leave, sodium or potassium takes their place charge for charge.
 *
 * <p>Each mmol/L of hardness brings 2 mmol/L of sodium: 0.459405 mg of Na⁺ for each mg of hardness as CaCO₃, 7.864 mg/L for each
 * grain per US gallon. The folk rule "one sodium for one calcium, ppm for ppm" is wrong by the charge. Alkalinity, chloride and
 * everything else stay as they are; pH hardly moves, since no acid or base is exchanged. A measured pH is dropped all the same:
 * to ask for the pH behind, soften {@code Speciation.of(water).water()}, which knows its carbon.
 *
 * <p><b>Leakage</b> is split by one rule: every exchanged ion (Ca²⁺, Mg²⁺, Sr²⁺, Ba²⁺, Fe²⁺, Mn²⁺) keeps the same share of what
 * entered. Hardness here counts calcium and magnesium. What the resin does over its run, and what it does to potassium, ammonium,
 * copper and zinc, is left out.
 *
 * <p>Immutable and thread-safe.
 */
public final class Softener implements Treatment {

    /** Ions that the resin takes up against sodium or potassium. */
    private static final List<Ion> EXCHANGED =
            List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.STRONTIUM, Ion.BARIUM, Ion.IRON_II, Ion.MANGANESE_II);

    /** Hardnesses that differ by less than this share of themselves are the same but for rounding. */
    private static final double ROUNDING = 1e-12;

    private final Ion regenerant;
    private final Hardness leakage;
    private final @Nullable Hardness target;

    private Softener(Ion regenerant, Hardness leakage, @Nullable Hardness target) {
        this.regenerant = regenerant;
        this.leakage = leakage;
        this.target = target;
    }

    /**
     * Returns a softener that was regenerated with sodium chloride.
     *
     * @return a softener without leakage or bypass
     */
    public static Softener withSodium() {
        return new Softener(Ion.SODIUM, Hardness.of(0, MILLIMOLE_PER_LITRE), null);
    }

    /**
     * Returns a softener that was regenerated with potassium chloride.
     *
     * @return a softener without leakage or bypass
     */
    public static Softener withPotassium() {
        return new Softener(Ion.POTASSIUM, Hardness.of(0, MILLIMOLE_PER_LITRE), null);
    }

    /**
     * Returns a softener that lets some hardness through.
     *
     * @param hardness calcium and magnesium behind the resin; 0 or more; a raw water softer than this passes unchanged
     * @return the softener
     * @throws IllegalArgumentException if it is negative
     */
    public Softener leaking(Quantity<Hardness> hardness) {
        return new Softener(regenerant, notNegative(hardness, "leakage of hardness"), target);
    }

    /**
     * Returns a softener with so much raw water blended past it that a hardness is reached.
     *
     * <p>The sodium of the blend does not depend on the leakage: raw minus wanted hardness decides.
     *
     * @param hardness calcium and magnesium of the blend; 0 or more
     * @return the softener with its bypass
     * @throws IllegalArgumentException if it is negative
     */
    public Softener bypassFor(Quantity<Hardness> hardness) {
        return new Softener(regenerant, leakage, notNegative(hardness, "wanted hardness"));
    }

    private static Hardness notNegative(Quantity<Hardness> hardness, String what) {
        Hardness stated = Hardness.from(hardness);
        if (stated.in(MILLIMOLE_PER_LITRE) < 0) {
            throw new IllegalArgumentException(what + " must not be negative, but was " + stated);
        }
        return stated;
    }

    /**
     * Returns the ion that the resin gives.
     *
     * @return Na⁺ or K⁺
     */
    public Ion regenerant() {
        return regenerant;
    }

    /**
     * Returns the share of raw water that goes past the resin.
     *
     * @param source raw water
     * @return no unit, 0 to 1; 0 without a bypass
     * @throws NoAnswerException if the wanted hardness is above that of the raw water or below the leakage
     */
    public double bypassShare(Water source) {
        return bypassShare(source, behindResin(source));
    }

    private double bypassShare(Water source, Water behindResin) {
        if (target == null) {
            return 0;
        }
        Hardness raw = source.hardness().to(target.getUnit());
        Hardness soft = behindResin.hardness().to(target.getUnit());
        double wanted = target.getValue();
        if (wanted > raw.getValue() * (1 + ROUNDING)) {
            throw new NoAnswerException(
                    "wanted hardness " + target + " is above the " + text(raw) + " of the raw water: "
                            + "a softener cannot add hardness",
                    target,
                    raw);
        }
        if (wanted < soft.getValue() * (1 - ROUNDING)) {
            throw new NoAnswerException(
                    "wanted hardness " + target + " is below the " + text(soft)
                            + " behind the resin: no bypass can reach it",
                    target,
                    soft);
        }
        if (raw.equals(soft)) {
            return 0;
        }
        double share = SofteningKernel.bypassShare(raw.getValue(), soft.getValue(), wanted);
        return Math.max(0, Math.min(1, share)); // rounding must not lead out of the range
    }

    /** Without the last digits of its conversion. */
    static String text(Hardness hardness) {
        return hardness.toText(Locale.ROOT, 12);
    }

    /**
     * Returns the water right behind the resin, before any bypass joins it.
     *
     * @param source raw water
     * @return softened water
     */
    public Water behindResin(Water source) {
        return source.plus(exchange(source));
    }

    /**
     * Returns what the resin exchanges.
     *
     * @param source raw water
     * @return what leaves the water and what enters it instead, charge for charge
     */
    public Change exchange(Water source) {
        Objects.requireNonNull(source, "source");
        double kept = SofteningKernel.leakageFraction(
                source.hardness().in(MILLIMOLE_PER_LITRE), leakage.in(MILLIMOLE_PER_LITRE));
        return Change.exchanging(source, EXCHANGED, regenerant, 1 - kept);
    }

    @Override
    public Water treat(Water source) {
        Water behindResin = behindResin(source);
        return behindResin.mixedWith(source, bypassShare(source, behindResin));
    }

    @Override
    public String name() {
        String name = "softener with " + regenerant.name();
        if (leakage.in(MILLIMOLE_PER_LITRE) > 0) {
            name += ", leaking " + leakage;
        }
        return target == null ? name : name + ", bypass for " + target;
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name();
    }
}
