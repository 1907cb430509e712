package evenwater.chemistry.exchange;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Time;

/**
 * How a bed is brought back: backwash, brine, slow rinse, fast rinse, with how much salt and which way the brine goes.
 *
 * <p>Volumes count in volumes of the bed (BV), flows in bed volumes per hour. The figures to begin with are common practice: brine of 10 % at 4 BV/h, a slow rinse of 1.5 BV at the
 * same flow, a fast rinse of 4 BV at 12 BV/h. Immutable and thread-safe.
 *
 * <p><b>Caution.</b> Spent brine is salty and hard: where it may go, to a sewer, a septic tank or the ground, is for the local code. Use salt that is made for
 * softeners; the connection to the drain needs an air gap.
 */
public final class Regeneration {

    /** Which way the brine goes. */
    public enum Direction {
        /** Down, as the water in service: the simplest valve. What is left of the hardness stays at the outlet. */
        CO_FLOW,
        /** Up, against the service: the outlet sees the freshest brine. */
        COUNTER_FLOW
    }

    private static final String BRINE = "brine";
    private static final String SLOW_RINSE = "slow rinse";
    private static final double MOST_BED_VOLUMES = 100;

    private final Brine brine;
    private final SaltDose dose;
    private final Direction direction;
    private final WaterQuantity<Dimensionless> share;
    private final double brineFlow;
    private final double backwash;
    private final double slowRinse;
    private final double fastRinse;
    private final boolean softRinse;

    private Regeneration(
            Brine brine,
            SaltDose dose,
            Direction direction,
            WaterQuantity<Dimensionless> share,
            double brineFlow,
            double backwash,
            double slowRinse,
            double fastRinse,
            boolean softRinse) {
        this.brine = brine;
        this.dose = dose;
        this.direction = direction;
        this.share = share;
        this.brineFlow = brineFlow;
        this.backwash = backwash;
        this.slowRinse = slowRinse;
        this.fastRinse = fastRinse;
        this.softRinse = softRinse;
    }

    /**
     * Returns a regeneration with sodium chloride that goes the way of the service, after a backwash of 2.5 BV; rinsed with raw water.
     *
     * @param sodiumChloride per volume of resin; above 0, at most 1 kg/L
     * @return the regeneration
     * @throws IllegalArgumentException if the dose is out of range
     */
    public static Regeneration coFlow(Quantity<SaltDose> sodiumChloride) {
        return of(Direction.CO_FLOW, sodiumChloride, 2.5, false);
    }

    /**
     * Returns a regeneration with sodium chloride that goes against the service, without backwash; the slow rinse is softened water, since raw water would load the
     * outlet again. Such a bed must be held down while the brine goes up, and washed from time to time all the same, or it clogs: say so by
     * {@link #withWater}. The softened water is that of the run before; it is not taken off what a run gives.
     *
     * @param sodiumChloride per volume of resin; above 0, at most 1 kg/L
     * @return the regeneration
     * @throws IllegalArgumentException if the dose is out of range
     */
    public static Regeneration counterFlow(Quantity<SaltDose> sodiumChloride) {
        return of(Direction.COUNTER_FLOW, sodiumChloride, 0, true);
    }

    private static Regeneration of(Direction direction, Quantity<SaltDose> dose, double backwash, boolean softRinse) {
        return new Regeneration(
                Brine.SODIUM_CHLORIDE,
                checked(dose),
                direction,
                WaterUnits.share(10, WaterUnits.PERCENT),
                4,
                backwash,
                1.5,
                4,
                softRinse);
    }

    private static WaterQuantity<Dimensionless> checked(Quantity<Dimensionless> share, Brine of) {
        WaterQuantity<Dimensionless> stated = WaterUnits.share(Objects.requireNonNull(share, "massOfSalt"));
        double percent = stated.in(WaterUnits.PERCENT);
        if (!(percent >= 1 && percent <= of.mostPercent())) {
            throw new IllegalArgumentException("brine of " + of.salt.name() + " must be from 1 % to "
                    + Math.round(of.mostPercent()) + " % by mass, but was " + stated);
        }
        return stated;
    }

    private static SaltDose checked(Quantity<SaltDose> dose) {
        SaltDose stated = SaltDose.from(Objects.requireNonNull(dose, "dose"));
        if (!(stated.getValue() > 0 && stated.in(SaltDose.GRAM_PER_LITRE) <= 1000)) {
            throw new IllegalArgumentException(
                    "salt dose must be above 0 and at most 1000 g/L of resin, but was " + stated);
        }
        return stated;
    }

    /**
     * Returns the regeneration with another dose of its salt.
     *
     * @param other mass of salt per volume of resin; above 0, at most 1 kg/L
     * @return the regeneration
     * @throws IllegalArgumentException if it is out of range
     */
    public Regeneration with(Quantity<SaltDose> other) {
        return new Regeneration(
                brine, checked(other), direction, share, brineFlow, backwash, slowRinse, fastRinse, softRinse);
    }

    /**
     * Returns the regeneration with potassium chloride of as many equivalents: 1.2756 times the mass.
     *
     * <p>It dissolves less in the cold (28 g in 100 g of water at 0 °C, 34 at 20 °C; CRC Handbook, from memory), so that a cold brine tank gives less.
     *
     * @return the regeneration, the same if it is with potassium chloride
     * @throws IllegalArgumentException if the brine is stronger than potassium chloride dissolves
     */
    public Regeneration withPotassiumChloride() {
        double mass = molarMass(Brine.POTASSIUM_CHLORIDE) / molarMass(brine);
        return new Regeneration(
                Brine.POTASSIUM_CHLORIDE,
                dose.multiply(mass),
                direction,
                checked(share, Brine.POTASSIUM_CHLORIDE),
                brineFlow,
                backwash,
                slowRinse,
                fastRinse,
                softRinse);
    }

    /**
     * Returns the regeneration with a brine of another strength.
     *
     * @param massOfSalt per mass of brine at the resin; 1 % to 26 %, for potassium chloride to 24 %
     * @return the regeneration
     * @throws IllegalArgumentException if it is out of range
     */
    public Regeneration withBrine(Quantity<Dimensionless> massOfSalt) {
        WaterQuantity<Dimensionless> stated = checked(massOfSalt, brine);
        return new Regeneration(brine, dose, direction, stated, brineFlow, backwash, slowRinse, fastRinse, softRinse);
    }

    /**
     * Returns the regeneration with brine and slow rinse at another flow.
     *
     * @param bedVolumesPerHour 0.1 to 100; 4 to 8 is usual
     * @return the regeneration
     * @throws IllegalArgumentException if it is out of range
     */
    public Regeneration withBrineFlow(double bedVolumesPerHour) {
        if (!(bedVolumesPerHour >= 0.1 && bedVolumesPerHour <= 100)) {
            throw new IllegalArgumentException(
                    "flow of the brine must be from 0.1 to 100 bed volumes per hour, but was " + bedVolumesPerHour);
        }
        return new Regeneration(
                brine, dose, direction, share, bedVolumesPerHour, backwash, slowRinse, fastRinse, softRinse);
    }

    /**
     * Returns the regeneration with brine and slow rinse so slow that they take a time.
     *
     * @param contact of brine and slow rinse together; above 0; at least 20 to 30 minutes are usual (common practice)
     * @return the regeneration
     * @throws IllegalArgumentException if it is not positive, or would take a flow outside of 0.1 to 100 bed volumes per hour
     */
    public Regeneration withContact(Quantity<Time> contact) {
        WaterQuantity<Time> stated = WaterUnits.time(contact);
        if (!(stated.getValue() > 0)) {
            throw new IllegalArgumentException("contact with the brine must be positive, but was " + stated);
        }
        return withBrineFlow((brineVolumes() + slowRinse) / stated.in(WaterUnits.HOUR));
    }

    /**
     * Returns the regeneration with other amounts of water around the brine.
     *
     * @param backwashVolumes raw water upward before the brine, in BV; 0 to 100. The bed keeps its order: mixing by the backwash is left out
     * @param slowRinseVolumes water that pushes the brine through, in BV; 0 to 100
     * @param fastRinseVolumes raw water downward at the end, in BV; 0 to 100
     * @return the regeneration
     * @throws IllegalArgumentException if one is out of range
     */
    public Regeneration withWater(double backwashVolumes, double slowRinseVolumes, double fastRinseVolumes) {
        return new Regeneration(
                brine,
                dose,
                direction,
                share,
                brineFlow,
                volumes("backwash", backwashVolumes),
                volumes("slow rinse", slowRinseVolumes),
                volumes("fast rinse", fastRinseVolumes),
                softRinse);
    }

    private static double volumes(String what, double bedVolumes) {
        if (!(bedVolumes >= 0 && bedVolumes <= MOST_BED_VOLUMES)) {
            throw new IllegalArgumentException(what + " must be from 0 to 100 bed volumes, but was " + bedVolumes);
        }
        return bedVolumes;
    }

    /**
     * Returns the regeneration with its slow rinse, and the water of the brine, softened or raw.
     *
     * @param softened whether it is softened
     * @return the regeneration
     */
    public Regeneration rinsingSoftened(boolean softened) {
        return new Regeneration(brine, dose, direction, share, brineFlow, backwash, slowRinse, fastRinse, softened);
    }

    /**
     * Returns the salt.
     *
     * @return sodium chloride or potassium chloride
     */
    public Compound salt() {
        return brine.salt;
    }

    /**
     * Returns the ion that the salt gives to the resin.
     *
     * @return Na⁺ or K⁺
     */
    public Ion cation() {
        return brine.cation;
    }

    /**
     * Returns the mass of the salt.
     *
     * @return per volume of resin
     */
    public SaltDose dose() {
        return dose;
    }

    /**
     * Returns the sodium chloride that the salt stands for: as capacity curves and standards count.
     *
     * @return mass of sodium chloride with as many charges per volume of resin
     */
    public SaltDose sodiumChlorideDose() {
        return brine == Brine.SODIUM_CHLORIDE
                ? dose
                : dose.multiply(molarMass(Brine.SODIUM_CHLORIDE) / molarMass(brine));
    }

    /**
     * Returns which way the brine goes.
     *
     * @return the direction
     */
    public Direction direction() {
        return direction;
    }

    /**
     * Returns the salt in the brine at the resin, at 20 °C.
     *
     * @return mass per volume of brine
     */
    public MassConcentration brineStrength() {
        return brine.strength(share);
    }

    /**
     * Returns all water that goes to the drain.
     *
     * @return volumes of the bed
     */
    public double bedVolumes() {
        return backwash + brineVolumes() + slowRinse + fastRinse;
    }

    /**
     * Returns how long brine and slow rinse take: the resin sees brine for about so long.
     *
     * @return in minutes
     */
    public WaterQuantity<Time> contactTime() {
        return WaterUnits.time((brineVolumes() + slowRinse) / brineFlow * 60, WaterUnits.MINUTE);
    }

    /**
     * Returns the charges that the salt brings.
     *
     * @return equivalents per litre of resin
     */
    double equivalentsPerLitre() {
        return dose.in(SaltDose.GRAM_PER_LITRE) / molarMass(brine);
    }

    private double brineVolumes() {
        return dose.in(SaltDose.GRAM_PER_LITRE) / brineStrength().in(MassConcentration.GRAM_PER_LITRE);
    }

    private static double molarMass(Brine of) {
        return of.salt.molarMass().in(MolarMass.GRAM_PER_MOLE);
    }

    /** One part of a regeneration; salt in eq/L. */
    record Part(String name, boolean upward, boolean softened, double salt, double bedVolumes, double flow) {

        /** Whether brine moves through the bed, which short steps follow best. */
        boolean gentle() {
            return name.equals(BRINE) || name.equals(SLOW_RINSE);
        }
    }

    /** The parts in their order, those without water left out. */
    List<Part> parts() {
        boolean up = direction == Direction.COUNTER_FLOW;
        double salt = equivalentsPerLitre() / brineVolumes();
        return List.of(
                        new Part("backwash", true, false, 0, backwash, 16),
                        new Part(BRINE, up, softRinse, salt, brineVolumes(), brineFlow),
                        new Part(SLOW_RINSE, up, softRinse, 0, slowRinse, brineFlow),
                        new Part("fast rinse", false, false, 0, fastRinse, 12))
                .stream()
                .filter(part -> part.bedVolumes > 0)
                .toList();
    }

    /** Returns salt, dose and direction, for people and logs. */
    @Override
    public String toString() {
        return dose.toText(Locale.ROOT, 4) + " of " + brine.salt.name() + ", "
                + (direction == Direction.CO_FLOW ? "co-flow" : "counter-flow") + ", brine of " + share;
    }
}
