package evenwater.chemistry.verdict;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.treatment.Treatment;
import java.util.ArrayList;
import java.util.List;

/** What the spoons of a treatment leave open. */
final class Spoons {

    /** Each more doubles the ways; nobody dissolves more by the spoon. */
    private static final int MOST_SPOONS = 5;

    private Spoons() {}

    /**
     * The ways that a treatment may have gone: as stated first, then every combination of spoons at their ends. Doses by the spoon beyond the
     * fifth all go the way of the fifth.
     */
    static List<Treatment> ways(Treatment treatment) {
        List<Treatment> stages = treatment instanceof Train train ? train.treatments() : List.of(treatment);
        List<Integer> spoons = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            if (stages.get(i) instanceof Dosing dosing && isBySpoon(dosing)) {
                spoons.add(i);
            }
        }
        List<Treatment> ways = new ArrayList<>(List.of(treatment));
        int combinations = spoons.isEmpty() ? 0 : 1 << Math.min(MOST_SPOONS, spoons.size());
        for (int bits = 0; bits < combinations; bits++) {
            List<Treatment> way = new ArrayList<>(stages);
            for (int s = 0; s < spoons.size(); s++) {
                Dosing dosing = (Dosing) stages.get(spoons.get(s));
                boolean most = (bits >> Math.min(s, MOST_SPOONS - 1) & 1) == 1;
                way.set(spoons.get(s), most ? dosing.most() : dosing.least());
            }
            ways.add(Train.of(way));
        }
        return ways;
    }

    /** A dose that was weighed is its own least. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean isBySpoon(Dosing dosing) {
        return dosing.least() != dosing;
    }

    /** The range over several ways; the value of the first. */
    static <Q extends WaterQuantity<?>> Bounds<Q> together(Parameter<Q> parameter, List<Bounds<Q>> ways) {
        Q low = ways.get(0).low();
        Q high = ways.get(0).high();
        boolean openBelow = false;
        boolean openAbove = false;
        for (Bounds<Q> way : ways) {
            low = parameter.number(way.low()) < parameter.number(low) ? way.low() : low;
            high = parameter.number(way.high()) > parameter.number(high) ? way.high() : high;
            openBelow |= way.openBelow();
            openAbove |= way.openAbove();
        }
        return new Bounds<>(low, ways.get(0).value(), high, openBelow, openAbove);
    }
}
