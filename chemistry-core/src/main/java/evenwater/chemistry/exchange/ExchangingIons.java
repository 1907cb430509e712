package evenwater.chemistry.exchange;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/** The ions of one computation in their order, with the arrays that the kernel takes. */
final class ExchangingIons {

    private static final double MOLES_PER_MILLIMOLE = 1e-3;

    private final List<Ion> ions;
    private final double[] constants;
    private final int[] charges;

    private ExchangingIons(List<Ion> ions, Selectivity selectivity) {
        this.ions = ions;
        constants = ions.stream().mapToDouble(selectivity::constant).toArray();
        charges = ions.stream().mapToInt(Ion::chargeNumber).toArray();
    }

    static ExchangingIons of(Collection<Ion> ions, Selectivity selectivity) {
        return new ExchangingIons(List.copyOf(new TreeSet<>(ions)), selectivity);
    }

    /** What of a water the resin exchanges; hydrogen ions are no total of a water and stay out. */
    static ExchangingIons in(Water water, Selectivity selectivity) {
        return of(water.ions().stream().filter(selectivity.ions()::contains).toList(), selectivity);
    }

    int size() {
        return ions.size();
    }

    Ion ion(int place) {
        return ions.get(place);
    }

    List<Ion> ions() {
        return ions;
    }

    int place(Ion ion) {
        return ions.indexOf(ion);
    }

    double[] constants() {
        return constants;
    }

    int[] charges() {
        return charges;
    }

    double[] equivalentsPerLitre(Water water) {
        double[] concentrations = new double[size()];
        for (int i = 0; i < concentrations.length; i++) {
            concentrations[i] = water.total(ions.get(i)).in(MILLIMOLE_PER_LITRE) * charges[i] * MOLES_PER_MILLIMOLE;
        }
        return concentrations;
    }
}
