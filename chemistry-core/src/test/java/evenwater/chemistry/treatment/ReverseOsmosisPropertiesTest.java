package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.carbonOf;
import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.elementsOf;
import static evenwater.chemistry.testing.Amounts.of;
import static evenwater.chemistry.testing.Amounts.unmeasuredOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of a membrane for random feeds and rejections; those that have no answer are left out by name. */
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

    private static Optional<MembraneStreams> streams(ReverseOsmosis membrane, Water feed) {
        try {
            return Optional.of(membrane.streams(feed));
        } catch (NoAnswerException e) {
            assertTrue(
                    e.getMessage()
                            .startsWith("no single ion can make the permeate neutral: the rejections leave "
                                    + e.numbers().get(0)),
                    e::getMessage);
            return Optional.empty();
        }
    }

    @Property
    void theStreamsHoldAllOfTheFeed(
            @ForAll("membranes") ReverseOsmosis membrane,
            @ForAll("feeds") Water feed,
            @ForAll("recoveries") double recovery) {
        streams(membrane.recovering(recovery), feed).ifPresent(streams -> {
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
        });
    }

    @Property
    void everyElementIsInOneOfTheStreams(
            @ForAll("membranes") ReverseOsmosis membrane,
            @ForAll("feeds") Water feed,
            @ForAll("recoveries") double recovery) {
        streams(membrane.recovering(recovery), feed).ifPresent(streams -> {
            Map<Element, Double> p = elementsOf(streams.permeate());
            Map<Element, Double> c = elementsOf(streams.concentrate());
            elementsOf(feed)
                    .forEach((element, n) -> assertEquals(
                            n,
                            recovery * p.getOrDefault(element, 0.0) + (1 - recovery) * c.getOrDefault(element, 0.0),
                            ROUNDING * (n + chargesIn(feed)),
                            element::symbol));
        });
    }

    @Property
    void bothStreamsAreNeutralAndAtTheTemperatureOfTheFeed(
            @ForAll("membranes") ReverseOsmosis membrane, @ForAll("feeds") Water feed) {
        streams(membrane, feed).ifPresent(streams -> {
            for (Water stream : List.of(streams.permeate(), streams.concentrate())) {
                assertEquals(0, stream.netCharge().getValue(), 1e-12 * chargesIn(stream));
                assertEquals(feed.temperature(), stream.temperature());
                assertTrue(stream.measuredPH().isEmpty());
            }
        });
    }

    @Property
    void nothingPassesThatIsNotInTheFeed(@ForAll("membranes") ReverseOsmosis membrane, @ForAll("feeds") Water feed) {
        streams(membrane, feed).ifPresent(streams -> {
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
        });
    }

    @Property
    void allButOneIonPassByTheirRejection(
            @ForAll("feeds") Water feed, @ForAll("rejections") double single, @ForAll("rejections") double multiple) {
        streams(ReverseOsmosis.rejecting(single, multiple), feed).ifPresent(streams -> {
            for (Ion ion : feed.ions()) {
                if (!ion.equals(streams.adjusted())) {
                    double rejection = Math.abs(ion.chargeNumber()) > 1 ? multiple : single;
                    assertEquals((1 - rejection) * of(ion, feed), of(ion, streams.permeate()), ion::symbol);
                }
            }
            if (!streams.adjusted().equals(Ion.BICARBONATE)) {
                assertEquals(
                        (1 - single) * alkalinityOf(feed),
                        alkalinityOf(streams.permeate()),
                        ROUNDING * chargesIn(feed));
            }
            assertEquals((1 - single) * unmeasuredOf(feed) + 0.0, unmeasuredOf(streams.permeate()));
        });
    }

    @Provide
    Arbitrary<Double> rejections() {
        return Waters.shares();
    }

    @Property
    void withoutExcessTheMostAbundantSingleChargedIonIsNamed(@ForAll("feeds") Water feed) {
        // equal rejections pass equal charges, so nothing has to give
        streams(ReverseOsmosis.rejecting(0.9, 0.9), feed).ifPresent(streams -> {
            double most = Math.abs(alkalinityOf(feed));
            for (Ion ion : feed.ions()) {
                most = Math.max(most, Math.abs(ion.chargeNumber()) == 1 ? of(ion, feed) : 0);
            }
            Ion adjusted = streams.adjusted();
            double named = adjusted.equals(Ion.BICARBONATE)
                    ? Math.abs(alkalinityOf(feed))
                    : Math.abs(adjusted.chargeNumber()) * of(adjusted, feed);
            if (most > 1e-9 * chargesIn(feed)) { // else rounding of the others may be more than it can take
                assertEquals(most, named);
            }
            for (Ion ion : feed.ions()) {
                assertEquals(
                        0.1 * of(ion, feed),
                        of(ion, streams.permeate()),
                        ROUNDING * (chargesIn(feed) + of(ion, feed)),
                        ion::symbol);
            }
        });
    }

    @Property
    void freeCarbonDioxidePassesWhole(@ForAll("membranes") ReverseOsmosis membrane, @ForAll("feeds") Water feed) {
        streams(membrane, feed).ifPresent(streams -> {
            assertEquals(feed.carbon().isPresent(), streams.permeate().carbon().isPresent());
            if (feed.carbon().isPresent()) {
                double free = Math.max(0, carbonOf(feed) - Math.max(0, alkalinityOf(feed)));
                assertTrue(carbonOf(streams.permeate()) >= free * (1 - ROUNDING) - ROUNDING * chargesIn(feed));
                assertTrue(carbonOf(streams.permeate()) <= carbonOf(feed) * (1 + ROUNDING));
            }
        });
    }

    @Property
    void aFeedOfHalfTheStrengthGivesStreamsOfHalfTheStrength(
            @ForAll("membranes") ReverseOsmosis membrane, @ForAll("feeds") Water feed) {
        Optional<MembraneStreams> whole = streams(membrane, feed);
        Optional<MembraneStreams> half = streams(membrane, feed.dilutedBy(2)); // exact in doubles
        assertEquals(whole.isPresent(), half.isPresent());
        whole.ifPresent(streams -> {
            assertEquals(streams.permeate().dilutedBy(2), half.orElseThrow().permeate());
            assertEquals(streams.concentrate().dilutedBy(2), half.orElseThrow().concentrate());
            assertEquals(streams.adjusted(), half.orElseThrow().adjusted());
        });
    }
}
