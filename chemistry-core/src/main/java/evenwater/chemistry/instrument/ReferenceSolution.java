package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;

/** A solution after which the scale of a dissolved-solids meter is made. */
public enum ReferenceSolution {

    /** Sodium chloride, NaCl. */
    SODIUM_CHLORIDE("sodium chloride", new Part(Compound.SODIUM_CHLORIDE, 1)),

    /** Potassium chloride, KCl, with which conductivity meters are calibrated. */
    POTASSIUM_CHLORIDE("potassium chloride", new Part(Compound.POTASSIUM_CHLORIDE, 1)),

    /** By mass 40 % Na₂SO₄, 40 % NaHCO₃ and 20 % NaCl, called 442, as a likeness of fresh water (common practice). */
    SULFATE_BICARBONATE_CHLORIDE(
            "442 (40 % Na₂SO₄, 40 % NaHCO₃, 20 % NaCl)",
            new Part(Compound.SODIUM_SULFATE, 0.4),
            new Part(Compound.SODIUM_BICARBONATE, 0.4),
            new Part(Compound.SODIUM_CHLORIDE, 0.2));

    private record Part(Compound compound, double share) {}

    private final String words;

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of immutable compounds
    private final List<Part> parts;

    ReferenceSolution(String words, Part... parts) {
        this.words = words;
        this.parts = List.of(parts);
    }

    /**
     * Returns what is dissolved.
     *
     * @return mass of each compound over the mass of all; no unit; the shares add up to 1
     */
    public Map<Compound, Double> massShares() {
        Map<Compound, Double> shares = new LinkedHashMap<>();
        parts.forEach(part -> shares.put(part.compound(), part.share()));
        return Collections.unmodifiableMap(shares);
    }

    /**
     * Returns the solution as a water.
     *
     * @param concentration mass of all that is dissolved per volume of solution; 0 or more
     * @return the water at 25 °C, without carbon dioxide from the air
     * @throws IllegalArgumentException if the concentration is negative
     */
    public Water water(Quantity<MassConcentration> concentration) {
        MassConcentration stated = MassConcentration.from(Objects.requireNonNull(concentration, "concentration"));
        double milligrams = stated.in(MILLIGRAM_PER_LITRE);
        if (milligrams < 0) {
            throw new IllegalArgumentException(
                    "concentration of the reference solution must not be negative, but was " + stated);
        }
        Water water = Water.pure();
        for (Part part : parts) {
            water = water.plus(Change.dissolving(
                    part.compound(), MassConcentration.of(part.share() * milligrams, MILLIGRAM_PER_LITRE)));
        }
        return water;
    }

    /** Returns the solution in words, such as {@code sodium chloride}. */
    @Override
    public String toString() {
        return words;
    }
}
