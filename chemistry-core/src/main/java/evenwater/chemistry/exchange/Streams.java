package evenwater.chemistry.exchange;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.Map;
import java.util.TreeMap;

/** From the cations that leave a bed to a water: everything that a cation resin lets pass is that of the feed. */
final class Streams {

    private static final double MILLIMOLES_PER_MOLE = 1e3;

    /** Strengths that differ by less than this are the same but for rounding. */
    private static final double ROUNDING = 1e-9;

    private Streams() {}

    /**
     * The water with given exchanging cations. Where it is stronger than the feed, the rest of the charge is chloride, from brine that is not rinsed out; where it
     * is weaker, it is the feed diluted, from the pores of a bed that last saw less.
     */
    static Water of(Water feed, ExchangingIons ions, double[] equivalentsPerLitre) {
        double entered = sum(ions.equivalentsPerLitre(feed));
        double left = sum(equivalentsPerLitre);
        Water base = left < entered * (1 - ROUNDING)
                ? feed.mixedWith(Water.pure().with(feed.temperature()), 1 - left / entered)
                : feed;
        Map<Ion, AmountConcentration> moved = new TreeMap<>();
        double charge = 0;
        int most = 0;
        for (int i = 0; i < ions.size(); i++) {
            most = equivalentsPerLitre[i] > equivalentsPerLitre[most] ? i : most;
        }
        for (int i = 0; i < ions.size(); i++) {
            double change = equivalentsPerLitre[i] * MILLIMOLES_PER_MOLE / ions.charges()[i]
                    - base.total(ions.ion(i)).in(MILLIMOLE_PER_LITRE);
            charge += change * ions.charges()[i];
            moved.put(ions.ion(i), AmountConcentration.of(change, MILLIMOLE_PER_LITRE));
        }
        if (left > entered * (1 + ROUNDING)) {
            moved.put(Ion.CHLORIDE, AmountConcentration.of(charge, MILLIMOLE_PER_LITRE));
        } else {
            Ion largest = ions.ion(most);
            AmountConcentration rest = AmountConcentration.of(-charge / ions.charges()[most], MILLIMOLE_PER_LITRE);
            moved.merge(largest, rest, AmountConcentration::add);
        }
        return base.plus(Change.of(moved));
    }

    static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
