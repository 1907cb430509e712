package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.EquivalentConcentration.EQUIVALENT_PER_LITRE;

import evenwater.chemistry.exchange.Regeneration;
import evenwater.chemistry.exchange.Resin;
import evenwater.chemistry.exchange.ResinBed;
import evenwater.chemistry.exchange.Selectivity;
import evenwater.chemistry.exchange.SelectivityConvention;
import evenwater.chemistry.exchange.SofteningCycle;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;

/** What a resin prefers, and what a bed of it takes up for its salt. */
final class ResinChecks {

    private static final String CALIBRATED =
            "the two rates of the bed are calibrated on this row; other tables of the trade have ";

    private ResinChecks() {}

    static Topic equilibrium() {
        return new Topic(
                "Resin: what it prefers",
                "Affinities relative to H⁺ at 8 % of divinylbenzene, and the separation factor of Ca²⁺ over Na⁺ with half of the resin each, K = 2.6 and 2 eq/L, by the law of mass action.",
                List.of(
                        perHydrogen(Ion.SODIUM, "1.56"),
                        perHydrogen(Ion.AMMONIUM, "2.01"),
                        perHydrogen(Ion.POTASSIUM, "2.28"),
                        perHydrogen(Ion.CALCIUM, "4.06"),
                        separation(0.005, "520.998"),
                        separation(0.01, "260.996"),
                        separation(0.1, "26.9642"),
                        separation(1.8, "2.12438")));
    }

    private static PublishedCheck perHydrogen(Ion ion, String printed) {
        Selectivity scale = Resin.gel().selectivity();
        return new Result(
                        "affinity-" + ion.name(),
                        ion.symbol() + " over H⁺",
                        "",
                        scale.constant(ion) / scale.constant(Ion.HYDROGEN))
                .printed(printed, Source.RESIN_SHEET, Status.VERIFIED);
    }

    private static PublishedCheck separation(double strength, String computed) {
        Resin resin = Resin.gel()
                .with(Selectivity.of(
                        "a constant", Map.of(Ion.SODIUM, 1.0, Ion.CALCIUM, 2.6), SelectivityConvention.PLAIN_RATIO));
        double factor = resin.separationFactorAtHalfExchange(
                Ion.CALCIUM, Ion.SODIUM, EquivalentConcentration.of(strength, EQUIVALENT_PER_LITRE));
        return new Result("separation-" + strength, "Ca²⁺ over Na⁺ in " + strength + " eq/L", "", factor)
                .computed(computed);
    }

    static Topic capacity() {
        return new Topic(
                "Resin: capacity by the model of the bed",
                "Steady cycles of 1 ft³, co-flow, 16 bed volumes per hour to 1 gpg, with 10 gpg of hardness (calcium to magnesium 2 : 1) and 4 mmol/L of sodium.",
                List.of(
                        capacity(4, "16.5", "1.65", Status.COMMON_PRACTICE)
                                .remarking("not calibrated on this row; the trade prints 16 to 17"),
                        capacity(6, "20", "2.0", Status.VERIFIED).remarking(CALIBRATED + "21"),
                        capacity(8, "24", "2.4", Status.VERIFIED).remarking("not calibrated on this row"),
                        capacity(10, "27", "2.7", Status.VERIFIED).remarking(CALIBRATED + "25 to 26"),
                        capacity(15, "30", "3.0", Status.VERIFIED).remarking(CALIBRATED + "32"),
                        capacity(20, "33", "3.3", Status.COMMON_PRACTICE)
                                .remarking("not calibrated on this row; other tables have 35")));
    }

    private static PublishedCheck capacity(double pounds, String kilograins, String tenPercent, Status status) {
        double hardness = Hardness.of(10, Hardness.GRAIN_PER_US_GALLON).in(Hardness.MILLIMOLE_PER_LITRE);
        Water feed = Water.builder()
                .total(Ion.CALCIUM, millimoles(hardness * 2 / 3))
                .total(Ion.MAGNESIUM, millimoles(hardness / 3))
                .total(Ion.SODIUM, millimoles(4))
                .total(Ion.CHLORIDE, millimoles(1))
                .build();
        ResinBed bed = ResinBed.of(Resin.gel(), WaterUnits.volume(1, WaterUnits.CUBIC_FOOT));
        SofteningCycle cycle = SofteningCycle.steady(
                bed,
                feed,
                bed.flow(16),
                Hardness.of(1, Hardness.GRAIN_PER_US_GALLON),
                Regeneration.coFlow(SaltDose.of(pounds, SaltDose.POUND_PER_CUBIC_FOOT)));
        return new Result(
                        "bed-capacity-" + pounds,
                        "capacity at " + (int) pounds + " lb/ft³",
                        "kgr/ft³",
                        cycle.capacity().in(ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT))
                .against(
                        Figure.within(kilograins, tenPercent),
                        status == Status.VERIFIED ? Source.TRADE_PAGE : Source.SOFTENING_TRADE,
                        status);
    }

    private static AmountConcentration millimoles(double perLitre) {
        return AmountConcentration.of(perLitre, AmountConcentration.MILLIMOLE_PER_LITRE);
    }
}
