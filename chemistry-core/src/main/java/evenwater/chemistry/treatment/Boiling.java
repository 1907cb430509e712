package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.WaterUnits.ATMOSPHERE;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.MineralEquilibrium;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;

/**
 * Boiling, which drives out CO₂ and drops the temporary hardness as calcite; the water is then poured off and cooled.
 *
 * <p>Calcium falls with the alkalinity, one to two, to what calcite leaves dissolved at 100 °C under the CO₂ that is left over the water.
 * Magnesium stays, and so does calcium beyond the alkalinity, the permanent hardness. Computed at equilibrium: some minutes of
 * boiling come near it, a kettle that switches off at once does not. Constants are extrapolated above 90 °C.
 *
 * <p>Immutable and thread-safe.
 */
public final class Boiling implements Treatment {

    private static final WaterQuantity<Temperature> BOILING_POINT = WaterUnits.temperature(100, WaterUnits.CELSIUS);

    /** Where the way down begins, in atm: the open air. Above it less drops, so nothing is missed. */
    private static final double BEGINNING = 420e-6;

    private final WaterQuantity<Pressure> carbonDioxide;
    private final double concentration;

    private Boiling(WaterQuantity<Pressure> carbonDioxide, double concentration) {
        this.carbonDioxide = carbonDioxide;
        this.concentration = concentration;
    }

    /**
     * Returns boiling under the CO₂ of the open air.
     *
     * @return the treatment, without loss of water
     */
    public static Boiling inOpenPot() {
        return under(GasExchange.OUTDOOR_AIR);
    }

    /**
     * Returns boiling under a partial pressure of CO₂.
     *
     * @param carbonDioxide above 0, to 10 atm; less than that of the air where steam carries it off
     * @return the treatment, without loss of water
     * @throws IllegalArgumentException if it is out of range
     */
    public static Boiling under(Quantity<Pressure> carbonDioxide) {
        return new Boiling(GasPressure.checked(carbonDioxide), 1);
    }

    /**
     * Returns boiling that also evaporates water.
     *
     * @param factor volume before over volume after; no unit, 1 to 100
     * @return the treatment
     * @throws IllegalArgumentException if it is out of range
     */
    public Boiling concentratingBy(double factor) {
        if (!(factor >= 1 && factor <= 100)) {
            throw new IllegalArgumentException(
                    "concentration factor of boiling must be from 1 to 100, but was " + factor);
        }
        return new Boiling(carbonDioxide, factor);
    }

    /**
     * Returns how much calcite drops.
     *
     * @param source any water
     * @return CaCO₃ in mmol per litre of the boiled water; 0 if it has too little of it
     */
    public AmountConcentration dropped(Water source) {
        Water hot = hot(source);
        return AmountConcentration.of(calcium(hot) - calcium(boiled(hot)), MILLIMOLE_PER_LITRE);
    }

    private Water hot(Water source) {
        return Objects.requireNonNull(source, "source")
                .concentratedBy(concentration)
                .with(BOILING_POINT);
    }

    /**
     * CO₂ leaves little by little, and calcite that has dropped does not come back when the last of the carbon leaves: so the most that drops
     * at any pressure on the way down to the one at the end.
     */
    private Water boiled(Water hot) {
        double end = carbonDioxide.in(ATMOSPHERE);
        Water poured = hot;
        for (double pressure = Math.max(end, BEGINNING); ; pressure = Math.max(end, pressure / 2)) {
            Water here = withoutCalcite(hot, WaterUnits.pressure(pressure, ATMOSPHERE));
            if (calcium(here) > calcium(poured)) {
                break;
            }
            poured = here;
            if (pressure == end) {
                break;
            }
        }
        return GasExchange.equilibrated(poured, carbonDioxide);
    }

    /** The water under a gas, after as much calcite has dropped as it cannot hold. */
    private static Water withoutCalcite(Water hot, WaterQuantity<Pressure> gas) {
        Water open = GasExchange.equilibrated(hot, gas);
        boolean drops = Speciation.extrapolated(open, ActivityLaw.TRUESDELL_JONES)
                        .saturationIndex(Mineral.CALCITE)
                        .orElse(-1)
                > 0;
        return drops ? MineralEquilibrium.saturated(hot, Mineral.CALCITE, gas) : open;
    }

    private static double calcium(Water water) {
        return water.total(Ion.CALCIUM).in(MILLIMOLE_PER_LITRE);
    }

    /**
     * Returns the water after boiling, poured off its calcite and cooled without contact with air.
     *
     * @param source any water; its carbon and pH before do not matter
     * @return the water at the temperature of the source
     */
    @Override
    public Water treat(Water source) {
        return boiled(hot(source)).with(source.temperature());
    }

    @Override
    public String name() {
        return concentration == 1 ? "boiling" : "boiling down by a factor of " + concentration;
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name();
    }
}
