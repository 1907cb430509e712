package evenwater.chemistry.exchange;

import evenwater.chemistry.kernel.BedRun;
import evenwater.chemistry.kernel.BedState;
import evenwater.chemistry.kernel.EffluentCurve;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/** One run of a bed under way: the arrays of the kernel, and how long its steps are. */
final class RunningBed {

    private static final List<Ion> HARDNESS = List.of(Ion.CALCIUM, Ion.MAGNESIUM);
    /** A front passes a slice in so many steps. */
    private static final int STEPS_PER_CELL = 4;
    /** A bed gives up after so many times what it can hold. */
    private static final int MOST_FILLINGS = 4;

    private static final double MOST_STEPS = 1e6;
    /** Brine renews the water of so many slices in one step; a step of a rinse may be longer. */
    private static final double CELLS_PER_STEP = 2;

    private static final double LONGER = 4;
    /** A single-charged ion that has this share of the bed brings no front of its own. */
    private static final double MOSTLY = 0.2;

    private final BedContents before;
    private final Resin resin;
    private final ExchangeRates rates;
    private final ExchangingIons ions;
    private final BedState state;
    private final BedState spare;
    private final double[] feed;
    private final double[] effluent;

    private RunningBed(BedContents before, Resin resin, ExchangeRates rates, ExchangingIons ions, double[] feed) {
        this.before = before;
        this.resin = resin;
        this.rates = rates;
        this.ions = ions;
        this.feed = feed;
        state = before.state(ions, resin.voidFraction(), Streams.sum(feed));
        spare = before.state(ions, resin.voidFraction(), 0);
        effluent = new double[feed.length];
    }

    static RunningBed of(BedContents before, Resin resin, ExchangeRates rates, Water feed, Collection<Ion> others) {
        TreeSet<Ion> all = new TreeSet<>(before.ions().ions());
        all.addAll(others);
        all.addAll(ExchangingIons.in(feed, resin.selectivity()).ions());
        ExchangingIons ions = ExchangingIons.of(all, resin.selectivity());
        double[] entering = ions.equivalentsPerLitre(feed);
        if (!(Streams.sum(entering) > 0)) {
            throw new NoAnswerException("a water without cations that the resin exchanges does nothing in a bed");
        }
        return new RunningBed(before, resin, rates, ions, entering);
    }

    ExchangingIons ions() {
        return ions;
    }

    BedContents contents() {
        return BedContents.of(state, ions);
    }

    /** Service until hardness in eq/L; answers the status of the kernel. */
    int serve(double bedVolumesPerHour, double endPoint, EffluentCurve curve) {
        boolean[] counted = new boolean[ions.size()];
        for (int i = 0; i < counted.length; i++) {
            counted[i] = HARDNESS.contains(ions.ion(i));
        }
        flowAt(bedVolumesPerHour);
        return BedRun.serve(
                state, spare, feed, bedVolumesPerHour, step(), mostSteps(), counted, endPoint, effluent, curve);
    }

    /** Service of some bed volumes. */
    int pass(double bedVolumes, double bedVolumesPerHour, EffluentCurve curve) {
        flowAt(bedVolumesPerHour);
        return BedRun.pass(state, feed, false, bedVolumes, bedVolumesPerHour, step(bedVolumes), effluent, curve);
    }

    /** A part of a regeneration; {@code salt} is the place of what the salt brings. */
    int pass(Regeneration.Part part, int salt, EffluentCurve curve) {
        double[] entering = feed.clone();
        if (part.softened()) {
            entering = new double[feed.length];
            entering[salt] = Streams.sum(feed);
        }
        entering[salt] += part.salt();
        double shortest = CELLS_PER_STEP * resin.voidFraction() / before.cells();
        double step = part.gentle() ? shortest : LONGER * shortest;
        flowAt(part.flow());
        return BedRun.pass(state, entering, part.upward(), part.bedVolumes(), part.flow(), step, effluent, curve);
    }

    private void flowAt(double bedVolumesPerHour) {
        state.rates(rates.filmPerHourAt(bedVolumesPerHour), rates.solidPerHour());
    }

    /** Until the bed could have been filled some times with what is held most strongly. */
    int mostSteps() {
        double held = 0;
        for (int i = 0; i < feed.length; i++) {
            held += ions.charges()[i] > 1 ? feed[i] : 0;
        }
        return (int) Math.min(MOST_STEPS, Math.ceil(MOST_FILLINGS * resin.equivalentsPerLitre() / held / step()));
    }

    /** How many steps the service of some bed volumes takes. */
    double steps(double bedVolumes) {
        return Math.ceil(bedVolumes / step(bedVolumes));
    }

    private double step(double bedVolumes) {
        return Math.min(step(), bedVolumes / before.cells());
    }

    /** So that a front of what the feed brings to the bed passes a slice in some steps. */
    private double step() {
        double brought = 0;
        for (int i = 0; i < feed.length; i++) {
            boolean isNew = ions.charges()[i] > 1 || before.loading(ions.ion(i)) < MOSTLY * resin.equivalentsPerLitre();
            brought += isNew ? feed[i] : 0;
        }
        double exchanged = Math.max(brought, Streams.sum(feed) / 1000);
        return resin.equivalentsPerLitre() / exchanged / (STEPS_PER_CELL * before.cells());
    }
}
