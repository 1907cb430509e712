package evenwater.examples.rooms;

import evenwater.chemistry.exchange.CapacityCurve;
import evenwater.chemistry.exchange.Resin;
import evenwater.chemistry.exchange.SaltEfficiency;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.substance.Ion;
import java.util.Locale;

/** The room of exchange: what a resin prefers and what salt brings back. */
public final class ExchangeRoom {

    private ExchangeRoom() {}

    /**
     * Prints preference, capacity and efficiency.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Resin resin = Resin.gel();
        for (String strength : new String[] {"5 meq/L", "1800 meq/L"}) { // tap water, brine of 10 %
            System.out.printf(
                    Locale.ROOT,
                    "calcium over sodium at %s: %.0f%n",
                    strength,
                    resin.separationFactorAtHalfExchange(
                            Ion.CALCIUM, Ion.SODIUM, EquivalentConcentration.parse(strength)));
        }
        CapacityCurve curve = CapacityCurve.ofTheTrade();
        for (String dose : new String[] {"6 lb/ft³", "15 lb/ft³"}) {
            SaltDose salt = SaltDose.parse(dose);
            ExchangeCapacity capacity = curve.capacity(salt);
            System.out.println(dose + ": "
                    + capacity.to(ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT).toText(Locale.ROOT, 3) + ", "
                    + SaltEfficiency.of(capacity, salt));
        }
        // end
    }
}
