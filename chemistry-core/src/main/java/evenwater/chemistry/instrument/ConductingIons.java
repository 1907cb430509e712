package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.ConductivityScratch;
import evenwater.chemistry.kernel.LimitingConductivity;
import evenwater.chemistry.kernel.OnsagerFuoss;
import evenwater.chemistry.kernel.SolventWater;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.kernel.StandardMethods2510Kernel;
import evenwater.chemistry.kernel.WaterViscosity;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** The ions of a water that carry current, for the kernels of conductivity. */
final class ConductingIons {

    private static final double KELVIN_AT_25 = 298.15;
    private static final double DENSITY_AT_25 = SolventWater.density(KELVIN_AT_25);

    private static final Species[] SPECIES = Species.values();
    private static final LimitingConductivity[] OF_SPECIES = new LimitingConductivity[SPECIES.length];
    private static final Map<String, LimitingConductivity> BY_SYMBOL = new HashMap<>();

    static {
        for (LimitingConductivity ion : LimitingConductivity.values()) {
            BY_SYMBOL.put(ion.symbol(), ion);
        }
        for (Species species : SPECIES) {
            if (species.chargeNumber() != 0) {
                OF_SPECIES[species.place()] = BY_SYMBOL.get(species.symbol());
            }
        }
    }

    /** One ion with its charge number, λ0 in S cm²/eq and concentration in mmol/L. */
    private record Carrier(int charge, double limitingConductivity, double millimoles) {}

    private final double kelvin;
    private final double[] limitingByPlace = new double[LimitingConductivity.values().length];
    private final List<Carrier> carriers = new ArrayList<>();

    private ConductingIons(double kelvin) {
        this.kelvin = kelvin;
        LimitingConductivity.write(kelvin, limitingByPlace);
    }

    /** Free ions, charged pairs and spectators. */
    static ConductingIons of(Speciation speciation) {
        Water water = speciation.water();
        ConductingIons ions = new ConductingIons(water.temperature().in(WaterUnits.KELVIN));
        for (Species species : SPECIES) {
            LimitingConductivity ion = OF_SPECIES[species.place()];
            if (ion != null) {
                ions.add(ion, speciation.concentration(species).in(MILLIMOLE_PER_LITRE));
            }
        }
        for (Ion ion : speciation.spectatorIons()) {
            ions.add(ion, water);
        }
        return ions;
    }

    /** Totals as a laboratory states them, alkalinity as HCO₃⁻, at 25 °C. */
    static ConductingIons totals(Water water) {
        ConductingIons ions = new ConductingIons(KELVIN_AT_25);
        for (Ion ion : water.ions()) {
            ions.add(ion, water);
        }
        double alkalinity = water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        ions.add(
                alkalinity < 0 ? LimitingConductivity.HYDROGEN : LimitingConductivity.BICARBONATE,
                Math.abs(alkalinity));
        return ions;
    }

    private void add(Ion ion, Water water) {
        if (ion.chargeNumber() != 0) {
            LimitingConductivity known = BY_SYMBOL.getOrDefault(ion.symbol(), likeness(ion.chargeNumber()));
            double limiting = limitingByPlace[known.place()];
            carriers.add(
                    new Carrier(ion.chargeNumber(), limiting, water.total(ion).in(MILLIMOLE_PER_LITRE)));
        }
    }

    /** Whose conductivity an ion has of which only the charge is known. */
    private static LimitingConductivity likeness(int charge) {
        return charge < 0 ? LimitingConductivity.CHLORIDE : LimitingConductivity.SODIUM;
    }

    private void add(LimitingConductivity ion, double millimoles) {
        if (millimoles > 0) {
            carriers.add(new Carrier(ion.chargeNumber(), limitingByPlace[ion.place()], millimoles));
        }
    }

    AmountConcentration ionicStrength() {
        double sum = 0;
        for (Carrier ion : carriers) {
            sum += ion.charge() * ion.charge() * ion.millimoles() / 2;
        }
        return AmountConcentration.of(sum, MILLIMOLE_PER_LITRE);
    }

    /** Returns κ in µS/cm at the temperature. */
    double byOnsagerFuoss() {
        int count = carriers.size();
        double litresAt25 = SolventWater.density(kelvin) / DENSITY_AT_25;
        return OnsagerFuoss.microsiemensPerCentimetre(
                count,
                all(ion -> ion.millimoles() * 1e-3 * litresAt25),
                all(Carrier::charge),
                all(Carrier::limitingConductivity),
                kelvin,
                SolventWater.dielectricConstant(kelvin),
                WaterViscosity.pascalSeconds(kelvin),
                new ConductivityScratch(count));
    }

    /** Returns k in µS/cm at 25 °C. */
    double byStandardMethods2510() {
        return StandardMethods2510Kernel.microsiemensPerCentimetre(
                carriers.size(), all(Carrier::millimoles), all(Carrier::charge), all(Carrier::limitingConductivity));
    }

    private double[] all(ToDoubleFunction<Carrier> figure) {
        double[] figures = new double[carriers.size()];
        for (int i = 0; i < figures.length; i++) {
            figures[i] = figure.applyAsDouble(carriers.get(i));
        }
        return figures;
    }
}
