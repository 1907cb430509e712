package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.equilibrium.SolverInput.MOLES_PER_MILLIMOLE;
import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.WaterUnits.ATMOSPHERE;

import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.EquilibriumConstant;
import evenwater.chemistry.kernel.Given;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;

/**
 * The carbonate system of a water from any two of pH, titration alkalinity, inorganic carbon, and dissolved CO₂ or its partial pressure.
 *
 * <p>State two of them, then {@link #solve()}:
 *
 * <pre>{@code
 * Speciation tank = CarbonateSystem.of(ions).withPH(6.8).withCarbonDioxide(co2).solve();
 * }</pre>
 *
 * <p>Ions and temperature come from a water, whose own alkalinity, carbon and pH count only where {@link #withItsAlkalinity} says so. Where
 * alkalinity is not among the two, it follows, and with it the unmeasured charge of the result. Immutable and thread-safe.
 */
public final class CarbonateSystem {

    /** Rounds in which unmeasured charge and CO₂ activity settle; each gains three digits or more. */
    private static final int ROUNDS = 60;

    /** Of the carbon: a smaller rest is within what CO₂ is known to. */
    private static final double LEAST_TOLD = 1e-3;

    private final Water ions;
    private final double pH;
    private final double alkalinity;
    private final double carbon;
    /** Molality of CO₂, or NaN. */
    private final double carbonDioxide;
    /** Partial pressure of CO₂ in atm, or NaN. */
    private final double pressure;

    private CarbonateSystem(
            Water ions, double pH, double alkalinity, double carbon, double carbonDioxide, double pressure) {
        this.ions = ions;
        this.pH = pH;
        this.alkalinity = alkalinity;
        this.carbon = carbon;
        this.carbonDioxide = carbonDioxide;
        this.pressure = pressure;
    }

    /**
     * Returns a system of which nothing is known yet.
     *
     * @param ions water whose ions and temperature it has
     * @return the system
     */
    public static CarbonateSystem of(Water ions) {
        Objects.requireNonNull(ions, "ions");
        return new CarbonateSystem(ions, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    /**
     * States the pH.
     *
     * @param newPH no unit; 0 to 14
     * @return the system with it
     * @throws IllegalArgumentException if it is out of range
     */
    public CarbonateSystem withPH(double newPH) {
        return new CarbonateSystem(ions, Checked.pH(newPH), alkalinity, carbon, carbonDioxide, pressure);
    }

    /**
     * States the titration alkalinity.
     *
     * @param newAlkalinity may be negative
     * @return the system with it
     */
    public CarbonateSystem withAlkalinity(Quantity<Alkalinity> newAlkalinity) {
        double equivalents = Alkalinity.from(newAlkalinity).in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        return new CarbonateSystem(ions, pH, equivalents * MOLES_PER_MILLIMOLE, carbon, carbonDioxide, pressure);
    }

    /**
     * States that the alkalinity is the one that the water has.
     *
     * @return the system with it
     */
    public CarbonateSystem withItsAlkalinity() {
        return withAlkalinity(ions.alkalinity());
    }

    /**
     * States the total inorganic carbon.
     *
     * @param newCarbon 0 or more
     * @return the system with it
     * @throws IllegalArgumentException if it is negative
     */
    public CarbonateSystem withCarbon(Quantity<AmountConcentration> newCarbon) {
        double moles = moles(newCarbon, "inorganic carbon");
        return new CarbonateSystem(ions, pH, alkalinity, moles, carbonDioxide, pressure);
    }

    /**
     * States the dissolved carbon dioxide.
     *
     * @param newCarbonDioxide 0 or more
     * @return the system with it
     * @throws IllegalArgumentException if it is negative
     */
    public CarbonateSystem withCarbonDioxide(Quantity<AmountConcentration> newCarbonDioxide) {
        double moles = moles(Ion.CARBON_DIOXIDE.concentration(newCarbonDioxide), "CO₂");
        return new CarbonateSystem(ions, pH, alkalinity, carbon, moles, pressure);
    }

    /**
     * States the partial pressure of carbon dioxide with which the water is in equilibrium.
     *
     * @param newPressure 0 to 10 atm; the gas is taken as ideal, which is 0.5 % off at 1 atm
     * @return the system with it
     * @throws IllegalArgumentException if it is out of range
     */
    public CarbonateSystem withPartialPressure(Quantity<Pressure> newPressure) {
        return new CarbonateSystem(ions, pH, alkalinity, carbon, carbonDioxide, atmospheres(newPressure));
    }

    static double atmospheres(Quantity<Pressure> pressure) {
        double atmospheres = WaterUnits.pressure(pressure).in(ATMOSPHERE);
        if (!(atmospheres >= 0 && atmospheres <= 10)) {
            throw new IllegalArgumentException(
                    "partial pressure of CO₂ must be from 0 atm to 10 atm, but was " + WaterUnits.pressure(pressure));
        }
        return atmospheres;
    }

    private static double moles(Quantity<AmountConcentration> concentration, String what) {
        double moles = AmountConcentration.from(concentration).in(MILLIMOLE_PER_LITRE) * MOLES_PER_MILLIMOLE;
        if (!(moles >= 0)) {
            throw new IllegalArgumentException(
                    "concentration of " + what + " must not be negative, but was " + concentration);
        }
        return moles;
    }

    /**
     * Finds the rest, with the activity law of Truesdell and Jones; above 50 °C with the constants of {@link Speciation#extrapolated}.
     *
     * @return the speciation, whose water has alkalinity and carbon
     * @throws IllegalArgumentException if not exactly two figures are stated, or both CO₂ and its partial pressure
     * @throws NoAnswerException if no water can have both
     */
    public Speciation solve() {
        Given given = given();
        refuseCarbonDioxideAlone();
        double first = given == Given.CARBON_AND_CARBON_DIOXIDE ? carbon : Double.isNaN(pH) ? alkalinity : pH;
        if (given == Given.PH_AND_ALKALINITY || given == Given.ALKALINITY_AND_CARBON) {
            double second = given == Given.PH_AND_ALKALINITY ? alkalinity : carbon;
            return Speciation.solve(water(alkalinity), ActivityLaw.TRUESDELL_JONES, given, first, second)
                    .withItsCarbon();
        }
        double charge = Double.isNaN(alkalinity) ? itsAlkalinity() : alkalinity;
        double gamma = 1;
        Speciation found = null;
        for (int round = 0; round < ROUNDS; round++) {
            double second = given == Given.PH_AND_CARBON ? carbon : activity(gamma);
            found = Speciation.solve(water(charge), ActivityLaw.TRUESDELL_JONES, given, first, second);
            double newGamma = found.gammaOf(Species.CARBON_DIOXIDE);
            double newCharge = Double.isNaN(alkalinity) ? found.alkalinityInMolesPerLitre() : alkalinity;
            boolean still = Math.abs(newGamma - gamma) <= 1e-14
                    && Math.abs(newCharge - charge) <= 1e-14 * (Math.abs(charge) + 1e-7);
            gamma = newGamma;
            charge = newCharge;
            if (still) {
                break;
            }
        }
        return Objects.requireNonNull(found).withItsCarbon();
    }

    /** Without a trace of HCO₃⁻ to tell, the rest is rounding. */
    private void refuseCarbonDioxideAlone() {
        // of CO₂ that is not stated, the difference is NaN and refuses nothing
        if (carbon - carbonDioxide < LEAST_TOLD * carbon || (carbon == 0 && carbonDioxide == 0)) {
            throw new NoAnswerException(
                    "inorganic carbon and CO₂ tell no pH where they are the same within 0.1 %, or no carbon at all");
        }
    }

    private Given given() {
        int stated = 0;
        for (double figure : new double[] {pH, alkalinity, carbon, carbonDioxide, pressure}) {
            stated += Double.isNaN(figure) ? 0 : 1;
        }
        if (stated != 2) {
            throw new IllegalArgumentException(
                    "exactly two of pH, alkalinity, inorganic carbon, CO₂ and its partial pressure "
                            + "must be stated, but " + stated + (stated == 1 ? " was" : " were"));
        }
        if (!Double.isNaN(carbonDioxide) && !Double.isNaN(pressure)) {
            throw new IllegalArgumentException(
                    "CO₂ and its partial pressure must not both be stated: one follows from the other");
        }
        boolean gas = !Double.isNaN(carbonDioxide) || !Double.isNaN(pressure);
        if (!Double.isNaN(pH)) {
            return gas
                    ? Given.PH_AND_CARBON_DIOXIDE
                    : Double.isNaN(carbon) ? Given.PH_AND_ALKALINITY : Given.PH_AND_CARBON;
        }
        if (!Double.isNaN(alkalinity)) {
            return gas ? Given.ALKALINITY_AND_CARBON_DIOXIDE : Given.ALKALINITY_AND_CARBON;
        }
        return Given.CARBON_AND_CARBON_DIOXIDE;
    }

    private double itsAlkalinity() {
        return ions.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE) * MOLES_PER_MILLIMOLE;
    }

    private double activity(double gamma) {
        if (!Double.isNaN(carbonDioxide)) {
            return carbonDioxide * gamma;
        }
        double kelvin = ions.temperature().in(WaterUnits.KELVIN);
        return pressure * Math.exp(EquilibriumConstant.CARBON_DIOXIDE_GAS.ln(kelvin));
    }

    /** The ions with an alkalinity in mol/L, which sets the unmeasured charge; carbon is what is looked for. */
    private Water water(double equivalents) {
        if (equivalents == itsAlkalinity()) {
            return ions; // and not a copy, whose unmeasured charge would differ by rounding
        }
        WaterBuilder builder = Water.builder().temperature(ions.temperature());
        for (Ion ion : ions.ions()) {
            builder.total(ion, ions.total(ion));
        }
        return builder.alkalinity(
                        Alkalinity.of(equivalents / MOLES_PER_MILLIMOLE, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .build();
    }
}
