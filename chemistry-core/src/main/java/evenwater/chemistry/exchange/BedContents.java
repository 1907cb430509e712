package evenwater.chemistry.exchange;

import evenwater.chemistry.kernel.BedState;
import evenwater.chemistry.substance.Ion;

/** What every slice of a bed holds, by ion: the snapshot from which a run starts and that it leaves. Never changed after it was made. */
final class BedContents {

    private final ExchangingIons ions;
    private final int cells;
    /** In eq per litre of bed and per litre of water; of ion i in cell j at {@code j * ions + i}. */
    private final double[] resin;

    private final double[] water;
    private final boolean wet;

    private BedContents(ExchangingIons ions, int cells, double[] resin, double[] water, boolean wet) {
        this.ions = ions;
        this.cells = cells;
        this.resin = resin;
        this.water = water;
        this.wet = wet;
    }

    /** A bed that holds the same everywhere and has not seen water yet. */
    static BedContents dry(ExchangingIons ions, int cells, double[] equivalentsPerLitre) {
        double[] resin = new double[ions.size() * cells];
        for (int k = 0; k < resin.length; k++) {
            resin[k] = equivalentsPerLitre[k % ions.size()];
        }
        return new BedContents(ions, cells, resin, new double[resin.length], false);
    }

    static BedContents of(BedState state, ExchangingIons ions) {
        double[] resin = new double[ions.size() * state.cells()];
        double[] water = new double[resin.length];
        for (int k = 0; k < resin.length; k++) {
            int cell = k / ions.size();
            int ion = k % ions.size();
            resin[k] = state.resin(cell, ion);
            water[k] = state.water(cell, ion);
        }
        return new BedContents(ions, state.cells(), resin, water, true);
    }

    int cells() {
        return cells;
    }

    ExchangingIons ions() {
        return ions;
    }

    double resin(int cell, Ion ion) {
        int place = ions.place(ion);
        return place < 0 ? 0 : resin[cell * ions.size() + place];
    }

    /** Mean of all slices, in eq per litre of bed. */
    double loading(Ion ion) {
        double sum = 0;
        for (int cell = 0; cell < cells; cell++) {
            sum += resin(cell, ion);
        }
        return sum / cells;
    }

    double water(int cell, Ion ion) {
        int place = ions.place(ion);
        return place < 0 ? 0 : water[cell * ions.size() + place];
    }

    /** The state that the kernel takes; the pores of a dry bed are filled with the strength of the feed in what the resin of each slice holds. */
    BedState state(ExchangingIons all, double voidFraction, double strength) {
        BedState state = new BedState(all.constants(), all.charges(), cells, voidFraction);
        for (int j = 0; j < cells; j++) {
            double held = 0;
            for (int i = 0; i < all.size(); i++) {
                state.resin(j, i, resin(j, all.ion(i)));
                held += resin(j, all.ion(i));
            }
            for (int i = 0; i < all.size(); i++) {
                state.water(j, i, wet ? water(j, all.ion(i)) : strength * resin(j, all.ion(i)) / held);
            }
        }
        return state;
    }
}
