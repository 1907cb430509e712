package evenwater.chemistry.exchange;

import static evenwater.chemistry.quantity.EquivalentConcentration.EQUIVALENT_PER_LITRE;

import evenwater.chemistry.kernel.ExchangeEquilibrium;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;

/**
 * A strong-acid cation resin: capacity, cross-linking, void, bead size and what it prefers.
 *
 * <p>In equilibrium with a water it holds ions by {@link Selectivity}; the preference for a double charge over a single one grows as the water gets weaker
 * and fades in brine, which is what regeneration lives on. Hydrogen ions of the water are left out: at pH 5 and above they are too few to load the resin.
 * Immutable and thread-safe.
 */
public final class Resin {

    private final ExchangeCapacity capacity;
    private final WaterQuantity<Dimensionless> crossLinking;
    private final double voidFraction;
    private final WaterQuantity<Length> bead;
    private final Selectivity selectivity;

    private Resin(
            ExchangeCapacity capacity,
            WaterQuantity<Dimensionless> crossLinking,
            double voidFraction,
            WaterQuantity<Length> bead,
            Selectivity selectivity) {
        this.capacity = capacity;
        this.crossLinking = crossLinking;
        this.voidFraction = voidFraction;
        this.bead = bead;
        this.selectivity = selectivity;
    }

    /**
     * Returns the usual resin of a house softener: a gel with 8 % of divinylbenzene.
     *
     * @return 2.0 eq per litre of settled bed (resin makers' figure), void 0.38, beads of 0.6 mm (common practice, no source), selectivities of Bonner and Smith
     */
    public static Resin gel() {
        WaterQuantity<Dimensionless> eightPercent = WaterUnits.share(8, WaterUnits.PERCENT);
        return new Resin(
                ExchangeCapacity.of(2.0, ExchangeCapacity.EQUIVALENT_PER_LITRE),
                eightPercent,
                0.38,
                WaterUnits.length(0.6, WaterUnits.MILLIMETRE),
                Selectivity.bonnerAndSmith(eightPercent));
    }

    /**
     * Returns the resin with another capacity.
     *
     * @param total charges per volume of settled bed in the sodium form; above 0, at most 10 eq/L
     * @return the resin
     * @throws IllegalArgumentException if it is out of range
     */
    public Resin with(Quantity<ExchangeCapacity> total) {
        ExchangeCapacity stated = ExchangeCapacity.from(total);
        double equivalents = stated.in(ExchangeCapacity.EQUIVALENT_PER_LITRE);
        if (!(equivalents > 0 && equivalents <= 10)) {
            throw new IllegalArgumentException(
                    "capacity of a resin must be above 0 and at most 10 eq/L, but was " + stated);
        }
        return new Resin(stated, crossLinking, voidFraction, bead, selectivity);
    }

    /**
     * Returns the resin with another cross-linking and the selectivities of Bonner and Smith for it; the capacity stays.
     *
     * @param divinylbenzene 4 % to 16 %
     * @return the resin
     * @throws IllegalArgumentException if it is out of range
     */
    public Resin withCrossLinking(Quantity<Dimensionless> divinylbenzene) {
        Selectivity of = Selectivity.bonnerAndSmith(divinylbenzene);
        return new Resin(capacity, WaterUnits.share(divinylbenzene), voidFraction, bead, of);
    }

    /**
     * Returns the resin with other selectivities.
     *
     * @param other constants against sodium, with their source and convention
     * @return the resin
     */
    public Resin with(Selectivity other) {
        return new Resin(capacity, crossLinking, voidFraction, bead, Objects.requireNonNull(other, "selectivity"));
    }

    /**
     * Returns the resin packed in another way.
     *
     * @param waterInBed water between the beads per volume of settled bed; no unit; 0.2 to 0.6
     * @return the resin
     * @throws IllegalArgumentException if it is out of range
     */
    public Resin withVoid(double waterInBed) {
        if (!(waterInBed >= 0.2 && waterInBed <= 0.6)) {
            throw new IllegalArgumentException(
                    "void of a bed must be from 0.2 to 0.6 of its volume, but was " + waterInBed);
        }
        return new Resin(capacity, crossLinking, waterInBed, bead, selectivity);
    }

    /**
     * Returns the resin in beads of another size.
     *
     * @param diameter of the beads, harmonic mean; 0.1 mm to 2 mm
     * @return the resin
     * @throws IllegalArgumentException if it is out of range
     */
    public Resin withBead(Quantity<Length> diameter) {
        WaterQuantity<Length> stated = WaterUnits.length(diameter);
        double millimetres = stated.in(WaterUnits.MILLIMETRE);
        if (!(millimetres >= 0.1 && millimetres <= 2)) {
            throw new IllegalArgumentException("diameter of the beads must be from 0.1 mm to 2 mm, but was " + stated);
        }
        return new Resin(capacity, crossLinking, voidFraction, stated, selectivity);
    }

    /**
     * Returns the charges that the resin holds.
     *
     * @return per volume of settled bed
     */
    public ExchangeCapacity capacity() {
        return capacity;
    }

    /**
     * Returns the divinylbenzene in the resin.
     *
     * @return share of the mass
     */
    public WaterQuantity<Dimensionless> crossLinking() {
        return crossLinking;
    }

    /**
     * Returns the water between the beads.
     *
     * @return share of the volume of the settled bed; no unit
     */
    public double voidFraction() {
        return voidFraction;
    }

    /**
     * Returns the size of the beads.
     *
     * @return diameter
     */
    public WaterQuantity<Length> bead() {
        return bead;
    }

    /**
     * Returns what the resin prefers.
     *
     * @return constants against sodium
     */
    public Selectivity selectivity() {
        return selectivity;
    }

    double equivalentsPerLitre() {
        return capacity.in(ExchangeCapacity.EQUIVALENT_PER_LITRE);
    }

    /**
     * Returns what the resin holds after much water has passed.
     *
     * @param water any water with cations that the resin exchanges
     * @return the loading in equilibrium with it
     * @throws NoAnswerException if there is no such cation
     */
    public ResinLoading loadingIn(Water water) {
        ExchangingIons ions = ExchangingIons.in(water, selectivity);
        double[] concentration = ions.equivalentsPerLitre(water);
        if (Arrays.stream(concentration).sum() <= 0) {
            throw new NoAnswerException("a water without cations that the resin exchanges loads it with nothing");
        }
        double s = ExchangeEquilibrium.ratioOverWater(
                ions.constants(), ions.charges(), concentration, equivalentsPerLitre());
        Map<Ion, Double> held = new TreeMap<>();
        for (int i = 0; i < ions.size(); i++) {
            double k = ExchangeEquilibrium.distribution(ions.constants()[i], ions.charges()[i], s);
            held.put(ions.ion(i), k * concentration[i]);
        }
        return ResinLoading.of(held);
    }

    /**
     * Returns the cations of a water of a strength that is in equilibrium with a loaded resin.
     *
     * @param loading what the resin holds
     * @param strength all exchanging cations of the water together; above 0
     * @return concentration of each ion that the resin holds; they add up to the strength
     * @throws IllegalArgumentException if the strength is not positive, or there is no selectivity of an ion of the loading
     */
    public Map<Ion, EquivalentConcentration> waterOver(
            ResinLoading loading, Quantity<EquivalentConcentration> strength) {
        ExchangingIons ions = ExchangingIons.of(loading.ions(), selectivity);
        double s = ratio(loading, ions, strength);
        Map<Ion, EquivalentConcentration> water = new TreeMap<>();
        for (int i = 0; i < ions.size(); i++) {
            double k = ExchangeEquilibrium.distribution(ions.constants()[i], ions.charges()[i], s);
            double held = loading.fraction(ions.ion(i)) * equivalentsPerLitre();
            water.put(ions.ion(i), EquivalentConcentration.of(held / k, EQUIVALENT_PER_LITRE));
        }
        return water;
    }

    private double ratio(ResinLoading loading, ExchangingIons ions, Quantity<EquivalentConcentration> strength) {
        EquivalentConcentration stated = EquivalentConcentration.from(strength);
        if (!(stated.getValue() > 0)) {
            throw new IllegalArgumentException("strength of the water must be positive, but was " + stated);
        }
        double[] held = new double[ions.size()];
        Arrays.setAll(held, i -> loading.fraction(ions.ion(i)) * equivalentsPerLitre());
        return ExchangeEquilibrium.ratioOverResin(
                ions.constants(), ions.charges(), held, stated.in(EQUIVALENT_PER_LITRE));
    }

    /**
     * Returns the separation factor of two ions when each has half of the resin: {@code (y/x) of one over (y/x) of the other}, in equivalent fractions.
     *
     * <p>Above 1 the resin prefers the first. Of calcium over sodium it is some hundreds in tap water and about 2 in the brine of a regeneration; it would be 1 at a strength of
     * K times the capacity.
     *
     * @param preferred the one
     * @param other the other
     * @param strength both ions together in the water; above 0
     * @return no unit; above 0
     * @throws IllegalArgumentException if the strength is not positive, or there is no selectivity of an ion
     */
    public double separationFactorAtHalfExchange(Ion preferred, Ion other, Quantity<EquivalentConcentration> strength) {
        ResinLoading half = ResinLoading.of(Map.of(preferred, 0.5, other, 0.5));
        ExchangingIons ions = ExchangingIons.of(half.ions(), selectivity);
        double s = ratio(half, ions, strength);
        return ExchangeEquilibrium.distribution(selectivity.constant(preferred), preferred.chargeNumber(), s)
                / ExchangeEquilibrium.distribution(selectivity.constant(other), other.chargeNumber(), s);
    }

    /** Returns the figures of the resin, for logs. */
    @Override
    public String toString() {
        return "cation resin of " + capacity + ", " + crossLinking + " divinylbenzene, void " + voidFraction
                + ", beads of " + bead + ", selectivity of " + selectivity.source();
    }
}
