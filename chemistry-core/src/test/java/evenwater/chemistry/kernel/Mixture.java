package evenwater.chemistry.kernel;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.RandomDistribution;

/** Ions in water at 25 °C, for tests of {@link OnsagerFuoss}. */
record Mixture(double[] moles, double[] charge, double[] limiting) {

    static final double KELVIN = 298.15;
    static final double DIELECTRIC_CONSTANT = SolventWater.dielectricConstant(KELVIN);
    static final double VISCOSITY = WaterViscosity.pascalSeconds(KELVIN);

    static Mixture of(LimitingConductivity[] ions, double... moles) {
        double[] charge = new double[ions.length];
        double[] limiting = new double[ions.length];
        for (int i = 0; i < ions.length; i++) {
            charge[i] = ions[i].chargeNumber();
            limiting[i] = ions[i].squareCentimetreSiemensPerEquivalent(KELVIN);
        }
        return new Mixture(moles, charge, limiting);
    }

    /** Any ions in any amounts; charges need not cancel. */
    static Arbitrary<Mixture> any(int fewest) {
        return Arbitraries.integers()
                .between(fewest, 20)
                .flatMap(n -> Combinators.combine(
                                Arbitraries.doubles()
                                        .between(-9, -1.3)
                                        .withDistribution(RandomDistribution.uniform())
                                        .array(double[].class)
                                        .ofSize(n),
                                Arbitraries.of(LimitingConductivity.values())
                                        .array(LimitingConductivity[].class)
                                        .ofSize(n))
                        .as((exponents, ions) -> {
                            double[] moles = new double[n];
                            for (int i = 0; i < n; i++) {
                                moles[i] = Math.pow(10, exponents[i]);
                            }
                            return of(ions, moles);
                        }));
    }

    int size() {
        return moles.length;
    }

    Mixture scaled(double factor) {
        double[] scaled = moles.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= factor;
        }
        return new Mixture(scaled, charge, limiting);
    }

    /** Returns µS/cm. */
    double conductivity() {
        return OnsagerFuoss.microsiemensPerCentimetre(
                size(),
                moles,
                charge,
                limiting,
                KELVIN,
                DIELECTRIC_CONSTANT,
                VISCOSITY,
                new ConductivityScratch(size()));
    }

    /** Returns λ of each ion in S cm²/eq. */
    double[] equivalentConductivities(double distanceInAngstrom) {
        double[] result = new double[size()];
        OnsagerFuoss.writeConductivities(
                size(),
                moles,
                charge,
                limiting,
                KELVIN,
                DIELECTRIC_CONSTANT,
                VISCOSITY,
                distanceInAngstrom,
                result,
                new ConductivityScratch(size()));
        return result;
    }

    double atInfiniteDilution() {
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            sum += 1000 * Math.abs(charge[i]) * limiting[i] * moles[i];
        }
        return sum;
    }
}
