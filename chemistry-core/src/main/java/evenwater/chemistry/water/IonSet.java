package evenwater.chemistry.water;

import evenwater.chemistry.substance.Ion;
import java.util.Arrays;

/** Sorted reference forms and their charges; shared by all waters that descend from each other. */
final class IonSet {

    final Ion[] ions;
    final double[] charges;

    /** Takes ions that are sorted, distinct and each its own reference form. */
    IonSet(Ion[] sorted) {
        ions = sorted;
        charges = new double[sorted.length];
        for (int i = 0; i < sorted.length; i++) {
            charges[i] = sorted[i].chargeNumber();
        }
    }

    /** Returns the index of an ion, or a negative number if it is not here. */
    int indexOf(Ion ion) {
        return Arrays.binarySearch(ions, ion);
    }

    /** Returns the union; this or that very set where it holds all of the other. */
    IonSet union(IonSet that) {
        if (this == that || containsAll(that)) {
            return this;
        }
        if (that.containsAll(this)) {
            return that;
        }
        Ion[] all = new Ion[ions.length + that.ions.length];
        int n = 0;
        int a = 0;
        int b = 0;
        while (a < ions.length || b < that.ions.length) {
            int order = a == ions.length ? 1 : b == that.ions.length ? -1 : ions[a].compareTo(that.ions[b]);
            all[n++] = order <= 0 ? ions[a] : that.ions[b];
            if (order <= 0) {
                a++;
            }
            if (order >= 0) {
                b++;
            }
        }
        return new IonSet(Arrays.copyOf(all, n));
    }

    private boolean containsAll(IonSet that) {
        int a = 0;
        for (Ion ion : that.ions) {
            while (a < ions.length && !ions[a].equals(ion)) {
                a++;
            }
            if (a++ == ions.length) {
                return false;
            }
        }
        return true;
    }
}
