package evenwater.chemistry.kernel;

import java.util.Arrays;

/** The conductivity at 25 °C of a composition in equivalents with a pH, by {@link OnsagerFuoss} on its species. Not thread-safe. */
final class CompositionConductivity {

    private static final double KELVIN = 298.15;
    private static final double LN_10 = Math.log(10);
    private static final double DIELECTRIC_CONSTANT = SolventWater.dielectricConstant(KELVIN);
    private static final double VISCOSITY = WaterViscosity.pascalSeconds(KELVIN);

    /** Species that carry current here, then Cl⁻ and NO₃⁻, which are no species: charge numbers and λ0 at 25 °C. */
    private static final Species[] SPECIES;

    private static final double[] CHARGE;
    private static final double[] LIMITING;

    static {
        Species[] all = Species.values();
        Species[] found = new Species[all.length];
        LimitingConductivity[] like = new LimitingConductivity[all.length + 2];
        int n = 0;
        for (Species species : all) {
            for (LimitingConductivity ion : LimitingConductivity.values()) {
                if (species.place() < Species.AMMONIUM.place() && ion.symbol().equals(species.symbol())) {
                    found[n] = species;
                    like[n++] = ion;
                }
            }
        }
        SPECIES = Arrays.copyOf(found, n);
        like[n] = LimitingConductivity.CHLORIDE;
        like[n + 1] = LimitingConductivity.NITRATE;
        CHARGE = new double[n + 2];
        LIMITING = new double[n + 2];
        for (int i = 0; i < n + 2; i++) {
            CHARGE[i] = like[i].chargeNumber();
            LIMITING[i] = like[i].squareCentimetreSiemensPerEquivalent(KELVIN);
        }
    }

    private final double kelvinOfPH;
    private final SpeciationState state = new SpeciationState();
    private final SpeciationState atReading = new SpeciationState();
    private final double[] molesPerLitre = new double[CHARGE.length];
    private final ConductivityScratch scratch = new ConductivityScratch(CHARGE.length);

    /** Creates the function; the temperature of the reading of pH in K. */
    CompositionConductivity(double kelvinOfPH) {
        this.kelvinOfPH = kelvinOfPH;
        state.temperature(KELVIN);
        atReading.temperature(kelvinOfPH);
    }

    /**
     * Returns κ at 25 °C in µS/cm, NaN where the species cannot be found.
     *
     * <p>Where the alkalinity is less than what H⁺ and OH⁻ make of it at that pH, that of the water without carbon is returned, which is
     * the nearest there is: the function is continuous and takes no value that no water has.
     *
     * @param equivalents amounts in eq/L by {@link KitQuantity#place()}
     * @param pH at the temperature of its reading
     */
    double of(double[] equivalents, double pH) {
        double alkalinity = equivalents[KitQuantity.ALKALINITY.place()];
        int status;
        if (Math.abs(kelvinOfPH - KELVIN) < 1e-9) {
            write(equivalents, state);
            status = solve(state, Given.PH_AND_ALKALINITY, pH, alkalinity);
            if (status == SpeciationKernel.NO_SUCH_WATER) {
                status = solve(state, Given.ALKALINITY_AND_CARBON, alkalinity, 0);
            }
        } else {
            write(equivalents, atReading);
            status = solve(atReading, Given.PH_AND_ALKALINITY, pH, alkalinity);
            double carbon = status == SpeciationKernel.NO_SUCH_WATER ? 0 : atReading.carbon();
            if (status == SpeciationKernel.CONVERGED || status == SpeciationKernel.NO_SUCH_WATER) {
                write(equivalents, state);
                status = solve(state, Given.ALKALINITY_AND_CARBON, alkalinity, Math.max(0, carbon));
            }
        }
        return status == SpeciationKernel.CONVERGED ? conductivity(equivalents) : Double.NaN;
    }

    /**
     * Returns the least alkalinity that a water with a pH can have, in eq/L: that of OH⁻ less that of H⁺, without carbon.
     *
     * <p>In pure water; ions raise both, so where it is above 0 it is a lower bound for every water.
     */
    double leastAlkalinity(double pH) {
        double hydrogen = Math.exp(-pH * LN_10);
        return Math.exp(atReading.lnConstant(EquilibriumConstant.WATER)) / hydrogen - hydrogen;
    }

    private static int solve(SpeciationState state, Given given, double first, double second) {
        return SpeciationKernel.solve(state, ActivityLaw.TRUESDELL_JONES, given, first, second);
    }

    private static void write(double[] equivalents, SpeciationState into) {
        into.total(Component.CALCIUM, equivalents[KitQuantity.CALCIUM.place()] / 2);
        into.total(Component.MAGNESIUM, equivalents[KitQuantity.MAGNESIUM.place()] / 2);
        into.total(Component.SODIUM, equivalents[KitQuantity.SODIUM.place()]);
        into.total(Component.POTASSIUM, equivalents[KitQuantity.POTASSIUM.place()]);
        into.total(Component.SULFATE, equivalents[KitQuantity.SULFATE.place()] / 2);
        into.inert(equivalents[KitQuantity.CHLORIDE.place()] + equivalents[KitQuantity.NITRATE.place()]);
    }

    private double conductivity(double[] equivalents) {
        int n = SPECIES.length;
        for (int i = 0; i < n; i++) {
            molesPerLitre[i] = state.molality(SPECIES[i]);
        }
        molesPerLitre[n] = equivalents[KitQuantity.CHLORIDE.place()];
        molesPerLitre[n + 1] = equivalents[KitQuantity.NITRATE.place()];
        return OnsagerFuoss.microsiemensPerCentimetre(
                n + 2, molesPerLitre, CHARGE, LIMITING, KELVIN, DIELECTRIC_CONSTANT, VISCOSITY, scratch);
    }
}
