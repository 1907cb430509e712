package evenwater.chemistry.exchange;

import static evenwater.chemistry.exchange.Feeds.END_POINT;
import static evenwater.chemistry.exchange.Feeds.cubicFoot;
import static evenwater.chemistry.exchange.Feeds.feed;
import static evenwater.chemistry.exchange.Feeds.pounds;
import static evenwater.chemistry.exchange.Feeds.usual;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CapacityCurveTest {

    private static final CapacityCurve TRADE = CapacityCurve.ofTheTrade();

    private static double kilograins(CapacityCurve curve, double pounds) {
        return curve.capacity(pounds(pounds)).in(ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT);
    }

    @ParameterizedTest
    @CsvSource({"4, 16.5", "6, 20", "7, 22", "8, 24", "10, 27", "12.5, 28.5", "15, 30", "20, 33"})
    void theTableOfTheTradeIsLinearBetweenItsRows(double pounds, double kilograins) {
        assertEquals(kilograins, kilograins(TRADE, pounds), 1e-12);
    }

    @Test
    void outsideItHasNoAnswer() {
        Refused.withoutAnswer(
                "the table of the trade (common practice) knows doses from 4 lb/ft³ to 20 lb/ft³, not 3 lb/ft³",
                List.of(pounds(3)),
                () -> TRADE.capacity(pounds(3)));
        assertEquals(4, TRADE.least().in(SaltDose.POUND_PER_CUBIC_FOOT), 1e-12);
        assertEquals(20, TRADE.most().in(SaltDose.POUND_PER_CUBIC_FOOT), 1e-12);
    }

    @Test
    void theModelStandsBesideTheTable() {
        ResinBed bed = cubicFoot();
        CapacityCurve model =
                CapacityCurve.modelled(bed, usual(), bed.flow(16), END_POINT, Regeneration.coFlow(pounds(6)));
        for (double pounds : new double[] {6, 8, 10, 15, 20}) {
            assertEquals(1, kilograins(model, pounds) / kilograins(TRADE, pounds), 0.1, pounds + " lb");
        }
        assertEquals(
                kilograins(model, 10),
                Feeds.cycle(usual(), Regeneration.coFlow(pounds(10)))
                        .capacity()
                        .in(ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT),
                0.01);
        assertEquals("bed model, co-flow", model.toString());
    }

    @Test
    void potassiumIsCountedByTheSodiumThatItStandsFor() {
        ResinBed bed = cubicFoot(40);
        CapacityCurve curve = CapacityCurve.modelled(
                bed,
                usual(),
                bed.flow(16),
                END_POINT,
                Regeneration.coFlow(pounds(6)).withPotassiumChloride());
        assertEquals(4, curve.least().in(SaltDose.POUND_PER_CUBIC_FOOT), 1e-12);
        ExchangeCapacity direct = SofteningCycle.steady(
                        bed,
                        usual(),
                        bed.flow(16),
                        END_POINT,
                        Regeneration.coFlow(pounds(10)).withPotassiumChloride())
                .capacity();
        assertEquals(direct.in(ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT), kilograins(curve, 10), 0.01);
    }

    @Test
    void dosesThatLeakTooMuchAreLeftOut() {
        ResinBed bed = cubicFoot(40);
        CapacityCurve salty =
                CapacityCurve.modelled(bed, feed(10, 20), bed.flow(16), END_POINT, Regeneration.coFlow(pounds(6)));
        assertTrue(
                salty.least().in(SaltDose.POUND_PER_CUBIC_FOOT) > 4.5,
                salty.least().toString());
        assertTrue(kilograins(salty, 15) < kilograins(TRADE, 15));
    }

    @Test
    void onesOwnFiguresMakeACurve() {
        CapacityCurve own = CapacityCurve.of(
                Map.of(
                        SaltDose.of(100, SaltDose.GRAM_PER_LITRE),
                        ExchangeCapacity.of(1, ExchangeCapacity.EQUIVALENT_PER_LITRE),
                        SaltDose.of(200, SaltDose.GRAM_PER_LITRE),
                        ExchangeCapacity.of(1.4, ExchangeCapacity.EQUIVALENT_PER_LITRE)),
                "a maker's sheet");
        assertEquals(
                1.2,
                own.capacity(SaltDose.of(150, SaltDose.GRAM_PER_LITRE)).in(ExchangeCapacity.EQUIVALENT_PER_LITRE),
                1e-15);
        assertEquals("a maker's sheet", own.source());
        Refused.argument("a curve needs two doses or more, but had 0", () -> CapacityCurve.of(Map.of(), "x"));
        Refused.argument(
                "dose and capacity must be positive, but were 0 g/L and 1 eq/L",
                () -> CapacityCurve.of(
                        Map.of(
                                SaltDose.of(0, SaltDose.GRAM_PER_LITRE),
                                ExchangeCapacity.of(1, ExchangeCapacity.EQUIVALENT_PER_LITRE)),
                        "x"));
    }
}
