package evenwater.chemistry.exchange;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** What a regeneration did: the bed that it left and the waste that went to the drain. Immutable and thread-safe. */
public final class RegenerationRun {

    private final Regeneration regeneration;
    private final ResinBed before;
    private final List<Waste> waste;
    private final ResinBed after;

    RegenerationRun(Regeneration regeneration, ResinBed before, List<Waste> waste, ResinBed after) {
        this.regeneration = regeneration;
        this.before = before;
        this.waste = List.copyOf(waste);
        this.after = after;
    }

    /**
     * What one part of a regeneration sent to the drain.
     *
     * @param name backwash, brine, slow rinse or fast rinse
     * @param volume in litres
     * @param water mixed; chloride of the salt included
     */
    public record Waste(String name, WaterQuantity<Volume> volume, Water water) {

        /**
         * Checks that nothing is missing.
         *
         * @param name see the record
         * @param volume see the record
         * @param water see the record
         */
        public Waste {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(volume, "volume");
            Objects.requireNonNull(water, "water");
        }
    }

    /**
     * Returns the waste of each part.
     *
     * @return in the order of time
     */
    public List<Waste> waste() {
        return waste;
    }

    /**
     * Returns all waste mixed.
     *
     * @return its name is "waste"
     */
    public Waste mixedWaste() {
        Water mixed = waste.get(0).water();
        double litres = waste.get(0).volume().in(WaterUnits.LITRE);
        for (Waste part : waste.subList(1, waste.size())) {
            double more = part.volume().in(WaterUnits.LITRE);
            mixed = mixed.mixedWith(part.water(), more / (litres + more));
            litres += more;
        }
        return new Waste("waste", WaterUnits.volume(litres, WaterUnits.LITRE), mixed);
    }

    /**
     * Returns the mass of an ion that went to the drain, that of the raw water included.
     *
     * @param ion such as Cl⁻ or Ca²⁺
     * @return in grams
     */
    public WaterQuantity<Mass> discharged(Ion ion) {
        Waste all = mixedWaste();
        AmountConcentration total = all.water().total(ion);
        return WaterUnits.mass(
                total.in(ion.milligramPerLitre()) * all.volume().in(WaterUnits.LITRE) / 1000, WaterUnits.GRAM);
    }

    /**
     * Returns the salt that was used.
     *
     * @return mass for the whole bed, in grams
     */
    public WaterQuantity<Mass> salt() {
        return WaterUnits.mass(
                regeneration.dose().in(SaltDose.GRAM_PER_LITRE)
                        * before.volume().in(WaterUnits.LITRE),
                WaterUnits.GRAM);
    }

    /**
     * Returns how it was done.
     *
     * @return salt, strength, water and direction
     */
    public Regeneration regeneration() {
        return regeneration;
    }

    /**
     * Returns the bed that it left.
     *
     * @return the bed after
     */
    public ResinBed bedAfter() {
        return after;
    }
}
