package evenwater.chemistry.exchange;

import static evenwater.chemistry.quantity.EquivalentConcentration.EQUIVALENT_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResinTest {

    private static EquivalentConcentration strength(double equivalentsPerLitre) {
        return EquivalentConcentration.of(equivalentsPerLitre, EQUIVALENT_PER_LITRE);
    }

    private static Resin withCalcium(double constant) {
        return Resin.gel()
                .with(Selectivity.of(
                        "a constant",
                        Map.of(Ion.SODIUM, 1.0, Ion.CALCIUM, constant),
                        SelectivityConvention.PLAIN_RATIO));
    }

    /** K 2.6, 2 eq/L: several hundred in tap water, about 2 in brine of 10 % (1.8 eq/L), 1 at C = K Q; derived from the law of mass action. */
    @ParameterizedTest(name = "{0} eq/L: {1}")
    @CsvSource({"0.003, 867.665", "0.005, 520.998", "0.01, 260.996", "1.8, 2.12438", "5.2, 1"})
    void thePreferenceForCalciumFadesInBrine(double equivalentsPerLitre, double expected) {
        double found =
                withCalcium(2.6).separationFactorAtHalfExchange(Ion.CALCIUM, Ion.SODIUM, strength(equivalentsPerLitre));
        assertEquals(expected, found, 3e-6 * expected);
    }

    @Test
    void betweenEqualChargesTheStrengthDoesNotMatter() {
        Resin resin = Resin.gel();
        double tap = resin.separationFactorAtHalfExchange(Ion.CALCIUM, Ion.MAGNESIUM, strength(0.005));
        double brine = resin.separationFactorAtHalfExchange(Ion.CALCIUM, Ion.MAGNESIUM, strength(1.8));
        assertEquals(5.16 / 3.29, tap, 1e-14);
        assertEquals(5.16 / 3.29, brine, 1e-14);
    }

    @Test
    void theResinOfATapWaterIsMostlyCalcium() {
        ResinLoading loading = Resin.gel().loadingIn(Feeds.usual());
        assertTrue(loading.fraction(Ion.CALCIUM) > 0.7);
        assertEquals(5.16 / 3.29 * 2, loading.fraction(Ion.CALCIUM) / loading.fraction(Ion.MAGNESIUM), 1e-12);
        double sum = loading.ions().stream().mapToDouble(loading::fraction).sum();
        assertEquals(1, sum, 1e-15);
    }

    @Test
    void waterAndResinLeadToEachOther() {
        Water feed = Feeds.usual();
        double strength = feed.ions().stream()
                .filter(ion -> ion.chargeNumber() > 0)
                .mapToDouble(ion -> ion.equivalents(feed.total(ion)).in(EQUIVALENT_PER_LITRE))
                .sum();
        Map<Ion, EquivalentConcentration> back =
                Resin.gel().waterOver(Resin.gel().loadingIn(feed), strength(strength));
        assertEquals(List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM), List.copyOf(new TreeMap<>(back).keySet()));
        back.forEach((ion, c) -> assertEquals(
                ion.equivalents(feed.total(ion)).in(EQUIVALENT_PER_LITRE),
                c.in(EQUIVALENT_PER_LITRE),
                1e-15,
                ion.symbol()));
    }

    @Test
    void figuresAreThoseThatWereGiven() {
        Resin resin = Resin.gel()
                .with(ExchangeCapacity.parse("43.7 kgr/ft3"))
                .withVoid(0.35)
                .withBead(WaterUnits.length(500e-6, WaterUnits.METRE))
                .withCrossLinking(WaterUnits.share(10, WaterUnits.PERCENT));
        assertEquals(ExchangeCapacity.parse("43.7 kgr/ft3"), resin.capacity());
        assertEquals(
                2.0,
                resin.capacity().in(ExchangeCapacity.EQUIVALENT_PER_LITRE),
                0.002); // a resin maker's pair of figures
        assertEquals(0.35, resin.voidFraction());
        assertEquals(0.5, resin.bead().in(WaterUnits.MILLIMETRE), 1e-12);
        assertEquals(10, resin.crossLinking().in(WaterUnits.PERCENT));
        assertNotEquals(Resin.gel().selectivity(), resin.selectivity());
        assertEquals(
                "cation resin of 2 eq/L, 8 % divinylbenzene, void 0.38, beads of 0.6 mm, selectivity of O. D. Bonner and L. L. Smith 1957 (from memory)",
                Resin.gel().toString());
    }

    @Test
    void nonsenseIsRefused() {
        Resin resin = Resin.gel();
        Refused.argument(
                "capacity of a resin must be above 0 and at most 10 eq/L, but was 0 eq/L",
                () -> resin.with(ExchangeCapacity.of(0, ExchangeCapacity.EQUIVALENT_PER_LITRE)));
        Refused.argument(
                "capacity of a resin must be above 0 and at most 10 eq/L, but was 2000 kgr/ft³",
                () -> resin.with(ExchangeCapacity.parse("2000 kgr/ft3")));
        Refused.argument(
                "void of a bed must be from 0.2 to 0.6 of its volume, but was NaN", () -> resin.withVoid(Double.NaN));
        Refused.argument(
                "diameter of the beads must be from 0.1 mm to 2 mm, but was 6 mm",
                () -> resin.withBead(WaterUnits.length(6, WaterUnits.MILLIMETRE)));
        Refused.argument(
                "strength of the water must be positive, but was 0 eq/L",
                () -> resin.separationFactorAtHalfExchange(Ion.CALCIUM, Ion.SODIUM, strength(0)));
        Refused.argument(
                "no selectivity of Al³⁺ is known to O. D. Bonner and L. L. Smith 1957 (from memory), only of "
                        + resin.selectivity().ions(),
                () -> resin.separationFactorAtHalfExchange(Ion.ALUMINIUM, Ion.SODIUM, strength(1)));
        Refused.withoutAnswer(
                "a water without cations that the resin exchanges loads it with nothing",
                List.of(),
                () -> resin.loadingIn(Water.pure()));
        Refused.argument("a cation resin holds no Cl⁻", () -> ResinLoading.of(Map.of(Ion.CHLORIDE, 1.0)));
        Refused.argument(
                "loading with Na⁺ must not be negative, but was -1.0",
                () -> ResinLoading.of(Map.of(Ion.SODIUM, -1.0, Ion.CALCIUM, 2.0)));
        Refused.argument(
                "a resin is loaded with something, but the sum was 0.0",
                () -> ResinLoading.of(Map.of(Ion.SODIUM, 0.0)));
        Refused.argument(
                "rates of exchange must be positive, but were NaN 1/h in the film and 18.0 1/h in the bead",
                () -> new ExchangeRates(Double.NaN, 18));
        Refused.argument(
                "diameter of the beads must be positive, but was 0 mm",
                () -> ExchangeRates.ofBead(WaterUnits.length(0, WaterUnits.MILLIMETRE)));
    }

    @Test
    void smallBeadsAreFaster() {
        ExchangeRates usual = ExchangeRates.ofBead(WaterUnits.length(0.6, WaterUnits.MILLIMETRE));
        ExchangeRates small = ExchangeRates.ofBead(WaterUnits.length(0.3, WaterUnits.MILLIMETRE));
        assertEquals(ExchangeRates.CALIBRATED.filmPerHour(), usual.filmPerHour(), 1e-12);
        assertEquals(4, small.solidPerHour() / usual.solidPerHour(), 1e-12);
        assertEquals(Math.pow(2, 1.5), small.filmPerHour() / usual.filmPerHour(), 1e-12);
    }

    @Test
    void loadingsPrintAndCompare() {
        ResinLoading loading = ResinLoading.of(Map.of(Ion.SODIUM, 1.0, Ion.CALCIUM, 3.0));
        assertEquals("resin with Ca²⁺ 0.75, Na⁺ 0.25", loading.toString());
        assertEquals(ResinLoading.of(Map.of(Ion.SODIUM, 25.0, Ion.CALCIUM, 75.0)), loading);
        assertEquals(0, loading.fraction(Ion.BARIUM));
    }
}
