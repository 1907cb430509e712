package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.carbonOf;
import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.elementsOf;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static evenwater.chemistry.testing.Amounts.unmeasuredOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of a membrane for random feeds and rejections: all of them have an answer. */
class ReverseOsmosisPropertiesTest {

    /** Relative rounding of sums of some twenty terms. */
    private static final double ROUNDING = 1e-13;

    @Provide
    Arbitrary<Water> feeds() {
        return Waters.any();
    }

    @Provide
    Arbitrary<Double> recoveries() {
        return Arbitraries.doubles().between(0.01, 0.9).ofScale(3);
    }

    /** Any two rejections, and up to three more for single ions. */
    @Provide
    Arbitrary<ReverseOsmosis> membranes() {
        List<Ion> counted = new ArrayList<>(List.of(
                Ion.CALCIUM,
                Ion.SODIUM,
                Ion.CHLORIDE,
                Ion.SULFATE,
                Ion.NITRATE,
                Ion.BORIC_ACID,
                Ion.BICARBONATE,
                Waters.LEAD));
        Arbitrary<Map<Ion, Double>> special =
                Arbitraries.maps(Arbitraries.of(counted), Waters.shares()).ofMaxSize(3);
        return Combinators.combine(Waters.shares(), Waters.shares(), special)
                .as((single, multiple, more) -> {
                    ReverseOsmosis membrane = ReverseOsmosis.rejecting(single, multiple);
                    for (Map.Entry<Ion, Double> e : more.entrySet()) {
                        membrane = membrane.rejecting(e.getKey(), e.getValue());
                    }
                    return membrane;
                })
                .withoutEdgeCases();
    }

    @Property
    void theStreamsHoldAllOfTheFeed(
            @ForAll("membranes") ReverseOsmosis membrane,
            @ForAll("feeds") Water feed,
            @ForAll("recoveries") double recovery) {
        MembraneStreams streams = membrane.recovering(recovery).streams(feed);
        Water p = streams.permeate();
        Water c = streams.concentrate();
        double size = chargesIn(feed) + 15; // and carbon
        for (Ion ion : feed.ions()) {
            double both = recovery * of(ion, p) + (1 - recovery) * of(ion, c);
            assertEquals(of(ion, feed), both, ROUNDING * size, ion::symbol);
        }
        assertTrue(feed.ions().containsAll(new TreeSet<>(p.ions())));
        assertTrue(feed.ions().containsAll(new TreeSet<>(c.ions())));
        assertEquals(
                alkalinityOf(feed), recovery * alkalinityOf(p) + (1 - recovery) * alkalinityOf(c), ROUNDING * size);
        assertEquals(
                unmeasuredOf(feed), recovery * unmeasuredOf(p) + (1 - recovery) * unmeasuredOf(c), ROUNDING * size);
        assertEquals(carbonOf(feed), recovery * carbonOf(p) + (1 - recovery) * carbonOf(c), ROUNDING * size);
    }

    @Property
    void everyElementIsInOneOfTheStreams(
            @ForAll("membranes") ReverseOsmosis membrane,
            @ForAll("feeds") Water feed,
            @ForAll("recoveries") double recovery) {
        MembraneStreams streams = membrane.recovering(recovery).streams(feed);
        Map<Element, Double> p = elementsOf(streams.permeate());
        Map<Element, Double> c = elementsOf(streams.concentrate());
        elementsOf(feed)
                .forEach((element, n) -> assertEquals(
                        n,
                        recovery * p.getOrDefault(element, 0.0) + (1 - recovery) * c.getOrDefault(element, 0.0),
                        ROUNDING * (n + chargesIn(feed)),
                        element::symbol));
    }

    @Property
    void bothStreamsAreNeutralAndAtTheTemperatureOfTheFeed(
            @ForAll("membranes") ReverseOsmosis membrane, @ForAll("feeds") Water feed) {
        MembraneStreams streams = membrane.streams(feed);
        for (Water stream : List.of(streams.permeate(), streams.concentrate())) {
            assertEquals(0, stream.netCharge().getValue(), 1e-12 * chargesIn(stream));
            assertEquals(feed.temperature(), stream.temperature());
            assertTrue(stream.measuredPH().isEmpty());
        }
    }

    @Property
    void nothingPassesThatIsNotInTheFeed(@ForAll("membranes") ReverseOsmosis membrane, @ForAll("feeds") Water feed) {
        MembraneStreams streams = membrane.streams(feed);
        Water p = streams.permeate();
        for (Ion ion : feed.ions()) {
            assertTrue(of(ion, p) >= 0, ion::symbol);
            assertTrue(of(ion, p) <= of(ion, feed) * (1 + 1e-11), ion::symbol);
            assertTrue(of(ion, streams.concentrate()) >= of(ion, feed) * (1 - 1e-11), ion::symbol);
        }
        double alkalinity = alkalinityOf(feed);
        double slack = ROUNDING * chargesIn(feed);
        assertTrue(alkalinityOf(p) >= Math.min(0, alkalinity) - slack);
        assertTrue(alkalinityOf(p) <= Math.max(0, alkalinity) + slack);
    }

    @Property
    void noIonPassesMoreThanItsRejectionAndOneSidePassesAll(
            @ForAll("feeds") Water feed, @ForAll("rejections") double single, @ForAll("rejections") double multiple) {
        MembraneStreams streams = ReverseOsmosis.rejecting(single, multiple).streams(feed);
        Set<Integer> sides = new HashSet<>();
        for (Ion ion : feed.ions()) {
            double rejection = Math.abs(ion.chargeNumber()) > 1 ? multiple : single;
            double byRejection = ion.equals(Ion.HYDROGEN_SULFIDE) ? of(ion, feed) : (1 - rejection) * of(ion, feed);
            if (streams.adjusted().contains(ion)) {
                sides.add(Integer.signum(ion.chargeNumber()));
                assertTrue(of(ion, streams.permeate()) <= byRejection, ion::symbol);
            } else {
                assertEquals(byRejection, of(ion, streams.permeate()), ion::symbol);
            }
        }
        assertTrue(sides.size() <= 1, () -> "cations or anions, not " + streams.adjusted());
        double slack = ROUNDING * chargesIn(feed);
        assertTrue(Math.abs(alkalinityOf(streams.permeate())) <= (1 - single) * Math.abs(alkalinityOf(feed)) + slack);
        assertTrue(Math.abs(unmeasuredOf(streams.permeate())) <= (1 - single) * Math.abs(unmeasuredOf(feed)));
    }

    @Property
    void feedsThatDifferALittleHavePermeatesThatDifferALittle(
            @ForAll("membranes") ReverseOsmosis membrane, @ForAll("feeds") Water feed) {
        Water permeate = membrane.treat(feed);
        double step = 1e-6 * chargesIn(feed) + 1e-9;
        for (Change salt : List.of(
                Change.of(Map.of(Ion.SODIUM, mmol(step), Ion.CHLORIDE, mmol(step))),
                Change.of(Map.of(Ion.CALCIUM, mmol(step), Ion.SULFATE, mmol(step))),
                Change.of(Map.of(Ion.SODIUM, mmol(step), Ion.BICARBONATE, mmol(step))))) {
            Water other = membrane.treat(feed.plus(salt));
            // at most the salt's own charge, 2 meq/L a step, on each side and in the ion itself
            other.ions().forEach(ion -> assertEquals(of(ion, permeate), of(ion, other), 6 * step, ion::symbol));
            assertEquals(alkalinityOf(permeate), alkalinityOf(other), 6 * step);
        }
    }

    @Provide
    Arbitrary<Double> rejections() {
        return Waters.shares();
    }

    @Property
    void equalRejectionsLeaveEveryIonAsItsRejectionSays(@ForAll("feeds") Water feed) {
        MembraneStreams streams = ReverseOsmosis.rejecting(0.9, 0.9)
                .rejecting(Ion.HYDROGEN_SULFIDE, 0.9)
                .streams(feed);
        assertEquals(List.of(), streams.adjusted());
        for (Ion ion : feed.ions()) {
            assertEquals(0.1 * of(ion, feed), of(ion, streams.permeate()), ROUNDING * of(ion, feed), ion::symbol);
        }
    }

    @Property
    void freeCarbonDioxidePassesWhole(@ForAll("membranes") ReverseOsmosis membrane, @ForAll("feeds") Water feed) {
        MembraneStreams streams = membrane.streams(feed);
        assertEquals(feed.carbon().isPresent(), streams.permeate().carbon().isPresent());
        if (feed.carbon().isPresent()) {
            double free = free(feed);
            assertTrue(carbonOf(streams.permeate()) >= free * (1 - ROUNDING) - ROUNDING * chargesIn(feed));
            assertTrue(carbonOf(streams.permeate()) <= carbonOf(feed) * (1 + ROUNDING));
        }
    }

    /** Dissolved CO₂ by the species, or what no alkalinity can hold where there are none to compute. */
    private static double free(Water feed) {
        try {
            return Speciation.extrapolated(feed, ActivityLaw.TRUESDELL_JONES)
                    .carbonDioxide()
                    .getValue();
        } catch (NoAnswerException noSpecies) {
            return Math.max(0, carbonOf(feed) - Math.max(0, alkalinityOf(feed)));
        }
    }

    /** But for carbon: what share of it is CO₂ depends on the strength. */
    @Property
    void aFeedOfHalfTheStrengthGivesStreamsOfHalfTheStrength(
            @ForAll("membranes") ReverseOsmosis membrane, @ForAll("feeds") Water feed) {
        MembraneStreams whole = membrane.streams(feed);
        MembraneStreams half = membrane.streams(feed.dilutedBy(2)); // exact in doubles
        assertEquals(withoutCarbon(whole.permeate().dilutedBy(2)), withoutCarbon(half.permeate()));
        assertEquals(withoutCarbon(whole.concentrate().dilutedBy(2)), withoutCarbon(half.concentrate()));
        assertEquals(whole.adjusted(), half.adjusted());
    }

    private static Water withoutCarbon(Water water) {
        return water.withCarbon(mmol(0));
    }
}
