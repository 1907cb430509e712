package evenwater.chemistry.water;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What goes into a litre of water and out of it, with charges that cancel.
 *
 * <p>A change whose ions carry a net charge cannot be built, so charge is conserved by construction. Acids and bases are counted as
 * {@link Water} counts them: K₂HPO₄ brings two potassium, one phosphate and one equivalent of alkalinity; HCl takes one equivalent
 * away. Only the difference of two waters, {@link #between}, may carry unmeasured charge; a chemical change never does.
 *
 * <p>Equal changes move the same amounts. Immutable and thread-safe.
 */
public final class Change {

    /** Rounding that the amounts of a caller may have, relative to the charges they move. */
    private static final double ROUNDING = 1e-12;

    private final Balance balance;

    private Change(Balance balance) {
        this.balance = balance;
    }

    /**
     * Returns a change that moves ions.
     *
     * @param amounts what goes in (positive) and out (negative), any ions, in any form
     * @return the change
     * @throws IllegalArgumentException if the charges do not cancel to 1e-12 of what is moved; names the ions and the rest in meq/L
     */
    public static Change of(Map<Ion, ? extends Quantity<AmountConcentration>> amounts) {
        Objects.requireNonNull(amounts, "amounts");
        SortedMap<Ion, Double> totals = new TreeMap<>();
        double charge = 0;
        double moved = 0;
        double alkalinity = 0;
        double carbon = 0;
        for (Map.Entry<Ion, ? extends Quantity<AmountConcentration>> e : new TreeMap<>(amounts).entrySet()) {
            Ion ion = e.getKey();
            double n = ion.concentration(e.getValue()).in(MILLIMOLE_PER_LITRE);
            charge += ion.chargeNumber() * n;
            moved += Math.abs(ion.chargeNumber() * n);
            alkalinity += ion.alkalinityPerMole() * n;
            if (Counting.isCarbon(ion)) {
                carbon += n;
            } else if (!Counting.isWater(ion)) {
                totals.merge(ion.referenceForm(), n, Double::sum);
            }
        }
        if (!(Math.abs(charge) <= ROUNDING * moved + Double.MIN_NORMAL) || moved > Double.MAX_VALUE) {
            throw new IllegalArgumentException(
                    "charges of a change must cancel, but " + new TreeMap<>(amounts) + " leave " + charge + " meq/L");
        }
        return new Change(Balance.neutral(totals, alkalinity, carbon));
    }

    /**
     * Returns the change by dissolving a compound completely.
     *
     * @param compound what is dissolved, of its {@linkplain Compound#strength() strength}
     * @param mass how much is weighed; 0 or more
     * @param volume of the water; above 0; the volume that the compound adds is neglected
     * @return ions and alkalinity that it brings
     * @throws IllegalArgumentException if mass or volume are out of range
     */
    public static Change dissolving(Compound compound, Quantity<Mass> mass, Quantity<Volume> volume) {
        double grams = WaterUnits.mass(mass).in(WaterUnits.GRAM);
        double litres = WaterUnits.volume(volume).in(WaterUnits.LITRE);
        if (!(grams >= 0)) {
            throw new IllegalArgumentException("mass of " + compound.name() + " must not be negative, but was " + mass);
        }
        if (!(litres > 0)) {
            throw new IllegalArgumentException("volume of the water must be positive, but was " + volume);
        }
        return dissolving(compound, MassConcentration.of(grams / litres, MassConcentration.GRAM_PER_LITRE));
    }

    /**
     * Returns the change by dissolving a compound completely.
     *
     * @param compound what is dissolved, of its {@linkplain Compound#strength() strength}
     * @param dose weighed mass per volume of the water; 0 or more
     * @return ions and alkalinity that it brings
     * @throws IllegalArgumentException if the dose is negative
     */
    public static Change dissolving(Compound compound, Quantity<MassConcentration> dose) {
        Objects.requireNonNull(compound, "compound");
        double milligrams = MassConcentration.from(dose).in(MassConcentration.MILLIGRAM_PER_LITRE);
        if (!(milligrams >= 0)) {
            throw new IllegalArgumentException("dose of " + compound.name() + " must not be negative, but was " + dose);
        }
        double millimoles =
                milligrams * compound.strength() / compound.molarMass().in(MolarMass.GRAM_PER_MOLE);
        SortedMap<Ion, AmountConcentration> ions = new TreeMap<>();
        compound.ions().forEach((ion, n) -> ions.put(ion, AmountConcentration.of(n * millimoles, MILLIMOLE_PER_LITRE)));
        return of(ions);
    }

    /**
     * Returns the change by which one ion takes the place of another, charge for charge.
     *
     * <p>{@code amount that enters = amount that leaves · z(out) / z(in)}: one calcium makes room for two sodium. The folk rule of
     * one for one, or ppm for ppm, is wrong by the charge.
     *
     * @param out ion that leaves; its charge has the sign of the other
     * @param in ion that enters
     * @param leaving amount of {@code out}; 0 or more
     * @return the exchange
     * @throws IllegalArgumentException if the charges have not the same sign or the amount is negative
     */
    public static Change exchanging(Ion out, Ion in, Quantity<AmountConcentration> leaving) {
        Objects.requireNonNull(out, "out");
        Objects.requireNonNull(in, "in");
        if (out.chargeNumber() * in.chargeNumber() <= 0) {
            boolean charged = out.chargeNumber() != 0 && in.chargeNumber() != 0;
            throw new IllegalArgumentException(out + " cannot be exchanged for " + in
                    + (charged ? ": their charges differ in sign" : ": one of them has no charge"));
        }
        double n = out.concentration(leaving).in(MILLIMOLE_PER_LITRE);
        if (!(n >= 0)) {
            throw new IllegalArgumentException(
                    "amount of " + out + " that leaves must not be negative, but was " + leaving);
        }
        SortedMap<Ion, AmountConcentration> ions = new TreeMap<>();
        double entering = n * out.chargeNumber() / in.chargeNumber();
        ions.put(out, AmountConcentration.of(-n, MILLIMOLE_PER_LITRE));
        ions.put(in, AmountConcentration.of(entering, MILLIMOLE_PER_LITRE));
        return of(ions);
    }

    /**
     * Returns the change by which a share of some ions of a water is replaced by another ion, charge for charge.
     *
     * @param water whose ions leave
     * @param out cations that leave, each its own reference form; those that the water lacks do no harm
     * @param in a cation that enters, its own reference form and not among {@code out}
     * @param share of each that leaves; no unit, 0 to 1
     * @return the exchange, which moves no alkalinity
     * @throws IllegalArgumentException if an ion is no cation or the share is out of range
     */
    public static Change exchanging(Water water, Collection<Ion> out, Ion in, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share of the ions that leave must be from 0 to 1, but was " + share);
        }
        for (Ion ion : out) {
            refuseUnlessCation(ion);
            if (ion.equals(in)) {
                throw new IllegalArgumentException(in + " cannot be exchanged for itself");
            }
        }
        refuseUnlessCation(in);
        return new Change(water.balance().exchange(new LinkedHashSet<>(out), in, share));
    }

    private static void refuseUnlessCation(Ion ion) {
        if (ion.chargeNumber() <= 0 || !ion.isReferenceForm()) {
            throw new IllegalArgumentException(ion + " is no cation that a resin exchanges");
        }
    }

    /**
     * Returns what must be added to one water to get another.
     *
     * @param before the water at the start
     * @param after the water at the end
     * @return the difference; may carry unmeasured charge, and unknown carbon if one of the two is unknown
     */
    public static Change between(Water before, Water after) {
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        return new Change(after.balance().combine(1, before.balance(), -1));
    }

    /**
     * Returns both changes together.
     *
     * @param that another change
     * @return the sum
     */
    public Change plus(Change that) {
        Objects.requireNonNull(that, "that");
        return new Change(balance.combine(1, that.balance, 1));
    }

    /**
     * Returns this change several times, or a part of it.
     *
     * @param factor no unit; finite; negative to undo
     * @return the scaled change
     * @throws IllegalArgumentException if the factor is not finite
     */
    public Change times(double factor) {
        if (!Double.isFinite(factor)) {
            throw new IllegalArgumentException("factor of a change must be a finite number, but was " + factor);
        }
        return new Change(balance.times(factor));
    }

    /**
     * Returns the amount of an ion, all its forms together, that goes in.
     *
     * @param ion a reference form
     * @return amount in mmol/L; negative if it goes out
     * @throws IllegalArgumentException if the ion is counted elsewhere
     */
    public AmountConcentration total(Ion ion) {
        Counting.refuseUncounted(ion);
        return AmountConcentration.of(balance.total(ion), MILLIMOLE_PER_LITRE);
    }

    /**
     * Returns the ions that move.
     *
     * @return reference forms with an amount other than 0, in the order of the ions
     */
    public List<Ion> ions() {
        return Stream.of(balance.ions()).filter(ion -> balance.total(ion) != 0).toList();
    }

    /**
     * Returns the alkalinity that goes in.
     *
     * @return alkalinity in meq/L; negative if it is taken away
     */
    public Alkalinity alkalinity() {
        return Alkalinity.of(balance.alkalinity, Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }

    /**
     * Returns the inorganic carbon that goes in.
     *
     * @return carbon in mmol/L; negative if it goes out; empty if unknown
     */
    public Optional<AmountConcentration> carbon() {
        return Double.isNaN(balance.carbon)
                ? Optional.empty()
                : Optional.of(AmountConcentration.of(balance.carbon, MILLIMOLE_PER_LITRE));
    }

    /**
     * Returns the unmeasured charge that goes in.
     *
     * @return charge in meq/L; 0 for every chemical change
     */
    public EquivalentConcentration unmeasuredCharge() {
        return EquivalentConcentration.of(balance.unmeasured, MILLIEQUIVALENT_PER_LITRE);
    }

    /**
     * Returns what the charges add up to: {@code Σ charge × total + unmeasured charge − alkalinity}.
     *
     * @return 0 meq/L but for rounding, below 1e-12 of the charges that move
     */
    public EquivalentConcentration netCharge() {
        return EquivalentConcentration.of(balance.residual(), MILLIEQUIVALENT_PER_LITRE);
    }

    Balance balance() {
        return balance;
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return that instanceof Change c && c.balance.sameAs(balance);
    }

    @Override
    public int hashCode() {
        return balance.hash();
    }

    /** Returns what moves, for logs; all digits. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("change of");
        for (Ion ion : ions()) {
            text.append(' ').append(ion).append(' ').append(total(ion)).append(',');
        }
        text.append(" alkalinity ").append(alkalinity());
        if (balance.unmeasured != 0) {
            text.append(", unmeasured charge ").append(unmeasuredCharge());
        }
        return text.append(carbon().map(c -> ", inorganic carbon " + c).orElse(", inorganic carbon unknown"))
                .toString();
    }
}
