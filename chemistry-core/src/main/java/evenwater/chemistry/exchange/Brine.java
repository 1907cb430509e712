package evenwater.chemistry.exchange;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import java.util.Collections;
import java.util.NavigableMap;
import java.util.TreeMap;
import javax.measure.quantity.Dimensionless;

/** A salt of regeneration and its brines at 20 °C: densities of the CRC Handbook of Chemistry and Physics (from memory), linear between the rows. */
final class Brine {

    static final Brine SODIUM_CHLORIDE = new Brine(
            Compound.SODIUM_CHLORIDE,
            Ion.SODIUM,
            0.9982,
            1.0125,
            1.0268,
            1.0413,
            1.0559,
            1.0707,
            1.0857,
            1.1008,
            1.1162,
            1.1319,
            1.1478,
            1.1640,
            1.1804,
            1.1972);

    static final Brine POTASSIUM_CHLORIDE = new Brine(
            Compound.POTASSIUM_CHLORIDE,
            Ion.POTASSIUM,
            0.9982,
            1.0110,
            1.0239,
            1.0369,
            1.0500,
            1.0633,
            1.0768,
            1.0905,
            1.1043,
            1.1185,
            1.1328,
            1.1474,
            1.1623);

    private static final double PERCENT_PER_ROW = 2;

    final Compound salt;
    final Ion cation;
    /** In kg/L by percent of salt. */
    private final NavigableMap<Double, Double> densities;

    private Brine(Compound salt, Ion cation, double... kilogramsPerLitre) {
        this.salt = salt;
        this.cation = cation;
        NavigableMap<Double, Double> rows = new TreeMap<>();
        for (double density : kilogramsPerLitre) {
            rows.put(PERCENT_PER_ROW * rows.size(), density);
        }
        densities = Collections.unmodifiableNavigableMap(rows);
    }

    /** The strongest brine of the table, in percent by mass: about what dissolves. */
    double mostPercent() {
        return densities.lastKey();
    }

    /** Salt per litre of a brine of a mass share. */
    MassConcentration strength(WaterQuantity<Dimensionless> share) {
        double density = Interpolation.linear(densities, share.in(WaterUnits.PERCENT));
        return MassConcentration.ofMassFraction(
                        share, MassConcentration.of(density, MassConcentration.KILOGRAM_PER_LITRE))
                .to(MassConcentration.GRAM_PER_LITRE);
    }
}
