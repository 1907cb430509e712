package evenwater.chemistry.kernel;

/** Where the solver starts: the carbonate system of an ideal water without pairs. */
final class Guess {

    /** Least concentration for a first guess, in mol/kg; keeps logarithms finite. */
    private static final double LITTLE = 1e-12;

    private static final double LN_10 = Math.log(10);

    private Guess() {}

    static void write(SpeciationState state, Given given, double first, double second) {
        double k1 = state.constants().value[EquilibriumConstant.CARBONIC_ACID_1.place()];
        double k2 = state.constants().value[EquilibriumConstant.CARBONIC_ACID_2.place()];
        double kw = state.constants().value[EquilibriumConstant.WATER.place()];
        double h;
        double a;
        switch (given) {
            case PH_AND_ALKALINITY, PH_AND_CARBON, PH_AND_CARBON_DIOXIDE -> {
                h = Math.exp(-first * LN_10);
                double perAcid = k1 / h * (1 + 2 * k2 / h);
                a = given == Given.PH_AND_ALKALINITY
                        ? Math.max(LITTLE, second - kw / h + h) / perAcid
                        : given == Given.PH_AND_CARBON ? second / (1 + k1 / h * (1 + k2 / h)) : second;
            }
            case ALKALINITY_AND_CARBON -> {
                h = acid(first, second, k1, k2, kw);
                a = second / (1 + k1 / h * (1 + k2 / h));
            }
            case ALKALINITY_AND_CARBON_DIOXIDE -> {
                a = second;
                h = first > 0 ? a * k1 / first + Math.sqrt(kw) * 1e-4 : Math.sqrt(kw + k1 * a) - first;
            }
            default -> {
                a = second;
                double bound = Math.max(LITTLE, first - second);
                h = k1 * a / bound;
            }
        }
        if (given.acid) { // known, and no logarithm for it
            state.values[SpeciationState.ACID] = h;
            state.values[SpeciationState.LN_ACID] = -first * LN_10;
        } else {
            write(state, SpeciationState.ACID, SpeciationState.LN_ACID, Math.max(h, 1e-16));
        }
        write(state, SpeciationState.CARBON_DIOXIDE, SpeciationState.LN_CARBON_DIOXIDE, Math.max(a, 1e-30));
        double sulfate = state.totals[Component.SULFATE.place()];
        write(state, SpeciationState.SULFATE, SpeciationState.LN_SULFATE, Math.max(sulfate / 2, 1e-300));
    }

    private static void write(SpeciationState state, int activity, int logarithm, double value) {
        state.values[activity] = value;
        state.values[logarithm] = Math.log(value);
    }

    /** By the species that prevail: strong acid, CO₂ and HCO₃⁻, HCO₃⁻ and CO₃²⁻, or hydroxide. */
    private static double acid(double alkalinity, double carbon, double k1, double k2, double kw) {
        if (alkalinity <= 0) {
            return Math.sqrt(kw + k1 * carbon) - alkalinity;
        }
        if (carbon > alkalinity) {
            return k1 * (carbon - alkalinity) / alkalinity + Math.sqrt(k1 * k2);
        }
        double carbonate = alkalinity - carbon;
        if (carbonate < carbon) {
            return k2 * (carbon - carbonate) / (carbonate + LITTLE) + kw / (carbonate + LITTLE) * 1e-2;
        }
        return kw / (alkalinity - 2 * carbon + Math.sqrt(kw)) * 1.0 + kw * 1e-2;
    }

    static double ionicStrength(SpeciationState state, Given given, double first, double second) {
        double[] t = state.totals;
        double carbonates = given == Given.PH_AND_ALKALINITY
                ? Math.abs(second)
                : given == Given.CARBON_AND_CARBON_DIOXIDE
                        ? Math.max(0, first - second)
                        : given == Given.PH_AND_CARBON ? second : given.alkalinity ? Math.abs(first) : 0;
        double sum = state.values[SpeciationState.INERT]
                + 4 * (t[Component.CALCIUM.place()] + t[Component.MAGNESIUM.place()] + t[Component.SULFATE.place()])
                + t[Component.SODIUM.place()]
                + t[Component.POTASSIUM.place()]
                + carbonates;
        return sum / 2 + 1e-9;
    }
}
