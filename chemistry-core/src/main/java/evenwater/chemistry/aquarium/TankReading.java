package evenwater.chemistry.aquarium;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.Water;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;

/**
 * What a keeper measures in an aerated tank.
 *
 * @param hardness by calcium and magnesium, "GH"
 * @param alkalinity "KH"; negative in acid water
 * @param conductivity at 25 °C
 * @param pH in equilibrium with the air; no unit
 */
public record TankReading(Hardness hardness, Alkalinity alkalinity, Conductivity conductivity, double pH) {

    /**
     * Refuses null.
     *
     * @param hardness see the record
     * @param alkalinity see the record
     * @param conductivity see the record
     * @param pH see the record
     */
    public TankReading {
        Objects.requireNonNull(hardness, "hardness");
        Objects.requireNonNull(alkalinity, "alkalinity");
        Objects.requireNonNull(conductivity, "conductivity");
    }

    /**
     * Returns the readings of a water in equilibrium with an air.
     *
     * @param water any water; its carbon and pH before do not matter
     * @param carbonDioxide partial pressure of CO₂; 0 to 10 atm
     * @return the readings
     * @throws IllegalArgumentException if the pressure is out of range
     * @throws NoAnswerException if the ionic strength is above 1 mol/L
     */
    public static TankReading of(Water water, Quantity<Pressure> carbonDioxide) {
        Objects.requireNonNull(water, "water");
        Water aerated = GasExchange.equilibrated(water, Objects.requireNonNull(carbonDioxide, "carbonDioxide"));
        return new TankReading(
                water.hardness().to(Hardness.GERMAN_DEGREE),
                water.alkalinity().to(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS),
                CalculatedConductivity.at25Celsius(aerated),
                Speciation.of(aerated).pH());
    }

    /** Returns the readings, rounded for people. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.1f °dH, %.1f °dKH, %.0f µS/cm, pH %.2f",
                hardness.in(Hardness.GERMAN_DEGREE),
                alkalinity.in(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS),
                conductivity.in(MICROSIEMENS_PER_CENTIMETRE),
                pH);
    }
}
