package evenwater.chemistry.testing;

import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.Component;
import evenwater.chemistry.kernel.ConductivityScratch;
import evenwater.chemistry.kernel.Given;
import evenwater.chemistry.kernel.LimitingConductivity;
import evenwater.chemistry.kernel.OnsagerFuoss;
import evenwater.chemistry.kernel.SolventWater;
import evenwater.chemistry.kernel.SpeciationKernel;
import evenwater.chemistry.kernel.SpeciationState;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.kernel.WaterViscosity;
import java.util.EnumMap;
import java.util.Map;

/**
 * The way from totals to conductivity with the kernel alone: species first, then the mixture law.
 *
 * <p>Totals are in mol per litre at 25 °C and taken as mol per kilogram; at other temperatures the litre expands.
 */
public final class IonicSolution {

    private final double kelvin;
    private final SpeciationState state = new SpeciationState();
    private final Map<LimitingConductivity, Double> inert = new EnumMap<>(LimitingConductivity.class);

    private IonicSolution(double celsius) {
        kelvin = celsius + 273.15;
        state.temperature(kelvin);
    }

    public static IonicSolution at(double celsius) {
        return new IonicSolution(celsius);
    }

    public IonicSolution with(Component component, double molesPerLitre) {
        state.total(component, molesPerLitre);
        return this;
    }

    /** Adds an ion that forms no pairs. */
    public IonicSolution with(LimitingConductivity ion, double molesPerLitre) {
        inert.put(ion, molesPerLitre);
        return this;
    }

    public IonicSolution solved(Given given, double first, double second) {
        double sum = 0;
        for (Map.Entry<LimitingConductivity, Double> entry : inert.entrySet()) {
            int z = entry.getKey().chargeNumber();
            sum += z * z * entry.getValue();
        }
        state.inert(sum);
        int status = SpeciationKernel.solve(state, ActivityLaw.TRUESDELL_JONES, given, first, second);
        if (status != SpeciationKernel.CONVERGED) {
            throw new AssertionError("status " + status);
        }
        return this;
    }

    /** Returns µS/cm of a solution of KCl by its molality, of the salt alone. */
    public static double potassiumChloride(double molality, double celsius) {
        double kelvin = celsius + 273.15;
        // a litre holds less than ρ kg of water by the salt's 74.55 g/mol less the 47 g/L by which a mole makes it
        // heavier
        double moles = molality * (SolventWater.density(kelvin) + 0.047 * molality) / (1 + 0.07455 * molality);
        return OnsagerFuoss.microsiemensPerCentimetre(
                2,
                new double[] {moles, moles},
                new double[] {1, -1},
                new double[] {
                    LimitingConductivity.POTASSIUM.squareCentimetreSiemensPerEquivalent(kelvin),
                    LimitingConductivity.CHLORIDE.squareCentimetreSiemensPerEquivalent(kelvin)
                },
                kelvin,
                SolventWater.dielectricConstant(kelvin),
                WaterViscosity.pascalSeconds(kelvin),
                new ConductivityScratch(2));
    }

    public double carbon() {
        return state.carbon();
    }

    /** Returns µS/cm with the calibrated distance of closest approach. */
    public double conductivity() {
        return conductivity(0);
    }

    /** Returns µS/cm with a distance of closest approach in Å; 0 stands for the calibrated one. */
    public double conductivity(double distanceInAngstrom) {
        int size = LimitingConductivity.values().length;
        double[] moles = new double[size];
        double[] charge = new double[size];
        double[] limiting = new double[size];
        LimitingConductivity.write(kelvin, limiting);
        for (LimitingConductivity ion : LimitingConductivity.values()) {
            charge[ion.place()] = ion.chargeNumber();
        }
        double expansion = SolventWater.density(kelvin) / SolventWater.density(298.15);
        for (Species species : Species.values()) {
            if (species.chargeNumber() != 0) {
                int place = LimitingConductivity.valueOf(species.name()).place();
                moles[place] = state.molality(species) * expansion;
            }
        }
        inert.forEach((ion, amount) -> moles[ion.place()] += amount * expansion);
        double distance =
                distanceInAngstrom == 0 ? OnsagerFuoss.distanceInAngstrom(size, moles, charge) : distanceInAngstrom;
        return OnsagerFuoss.writeConductivities(
                size,
                moles,
                charge,
                limiting,
                kelvin,
                SolventWater.dielectricConstant(kelvin),
                WaterViscosity.pascalSeconds(kelvin),
                distance,
                new double[size],
                new ConductivityScratch(size));
    }
}
