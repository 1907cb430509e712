package evenwater.examples.household;

import static evenwater.chemistry.quantity.WaterUnits.CUBIC_METRE;
import static evenwater.chemistry.quantity.WaterUnits.KILOGRAM;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;

import evenwater.chemistry.exchange.SaltEfficiency;
import evenwater.chemistry.planning.SoftenerSchedule;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The figures of a schedule by the table of the trade, and beside it by the bed where that has an answer. */
final class PlanTable {

    /** 1000 grains in kilograms of CaCO₃. */
    private static final double KILOGRAIN = 0.06479891;

    private final SoftenerSchedule trade;
    private final Optional<SoftenerSchedule> bed;
    private final List<String[]> rows = new ArrayList<>();

    PlanTable(SoftenerSchedule trade, Optional<SoftenerSchedule> bed) {
        this.trade = trade;
        this.bed = bed;
        row("by the", "table of the trade", bed.map(any -> "model of the bed"));
        row("capacity, kgr/ft³", s -> s.capacity().in(ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT));
        row("days between regenerations, the reserve kept", SoftenerSchedule::days);
        row(
                "litres through the resin, the reserve included",
                s -> s.softenedPerRegeneration().in(LITRE));
        if (trade.plan().bypassShare() > 0) {
            row(
                    "the same on a meter in front of the bypass",
                    s -> s.softenedPerRegeneration().in(LITRE) / (1 - s.plan().bypassShare()));
        }
        row("reserve, litres", s -> s.reserve().in(LITRE));
        row("salt a time, kg", s -> s.saltPerRegeneration().in(KILOGRAM));
        row("salt a week, kg", s -> s.saltPerWeek().in(KILOGRAM));
        row("salt a year, kg", s -> s.saltPerYear().in(KILOGRAM));
        row("chloride to the drain, kg a year", s -> s.chloridePerYear().in(KILOGRAM));
        row("water to the drain, litres a time", s -> s.drainPerRegeneration().in(LITRE));
        row("water to the drain, m³ a year", s -> s.drainPerYear().in(CUBIC_METRE));
        row("water to the drain for 1000 grains, US gal", PlanTable::gallons);
        row("salt efficiency, run to the end, grain/lb", s -> grains(s.efficiency()));
        row("salt efficiency, percent of theory", s -> 100 * s.efficiency().shareOfTheory());
        row("salt efficiency, the reserve kept, grain/lb", s -> grains(s.efficiencyWithReserve()));
    }

    private static double grains(SaltEfficiency efficiency) {
        return efficiency.perSalt().in(WaterUnits.GRAIN_PER_POUND);
    }

    private static double gallons(SoftenerSchedule schedule) {
        return WaterUnits.volume(schedule.drainPerKilogramOfHardness().in(LITRE) * KILOGRAIN, LITRE)
                .in(WaterUnits.US_GALLON);
    }

    private void row(String name, ToDoubleFunction<SoftenerSchedule> figure) {
        row(name, Page.number(figure.applyAsDouble(trade)), bed.map(model -> Page.number(figure.applyAsDouble(model))));
    }

    void row(String name, String byTable, Optional<String> byBed) {
        rows.add(byBed.map(model -> new String[] {name, byTable, model}).orElse(new String[] {name, byTable}));
    }

    List<String[]> rows() {
        return List.copyOf(rows);
    }
}
