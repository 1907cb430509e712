package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.kernel.Component;
import evenwater.chemistry.kernel.SpeciationState;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Map;

/** Hands the totals of a water to the solver: mmol/L taken as mmol per kg of water. */
final class SolverInput {

    static final double MOLES_PER_MILLIMOLE = 1e-3;

    private static final Map<Ion, Component> COMPONENTS = Map.ofEntries(
            Map.entry(Ion.CALCIUM, Component.CALCIUM),
            Map.entry(Ion.MAGNESIUM, Component.MAGNESIUM),
            Map.entry(Ion.SODIUM, Component.SODIUM),
            Map.entry(Ion.POTASSIUM, Component.POTASSIUM),
            Map.entry(Ion.SULFATE, Component.SULFATE),
            Map.entry(Ion.AMMONIUM, Component.AMMONIA),
            Map.entry(Ion.DIHYDROGEN_PHOSPHATE, Component.PHOSPHATE),
            Map.entry(Ion.BORIC_ACID, Component.BORATE),
            Map.entry(Ion.SILICA, Component.SILICA),
            Map.entry(Ion.FLUORIDE, Component.FLUORIDE),
            Map.entry(Ion.HYDROGEN_SULFIDE, Component.SULFIDE),
            Map.entry(Ion.DIHYDROGEN_CITRATE, Component.CITRATE));

    private SolverInput() {}

    static SpeciationState of(Water water) {
        SpeciationState state = new SpeciationState();
        state.temperature(water.temperature().in(WaterUnits.KELVIN));
        double inert = Math.abs(water.unmeasuredCharge().in(MILLIEQUIVALENT_PER_LITRE));
        for (Ion ion : water.ions()) {
            double millimoles = water.total(ion).in(MILLIMOLE_PER_LITRE);
            Component component = COMPONENTS.get(ion);
            if (component == null) {
                inert += (double) ion.chargeNumber() * ion.chargeNumber() * millimoles;
            } else {
                state.total(component, millimoles * MOLES_PER_MILLIMOLE);
            }
        }
        state.inert(inert * MOLES_PER_MILLIMOLE);
        return state;
    }

    static boolean isSpectator(Ion ion) {
        return !COMPONENTS.containsKey(ion);
    }

    /** What reacts with nothing, in mol/kg, with one charge for each equivalent that nobody measured. */
    static double inertAmount(Water water) {
        double sum = Math.abs(water.unmeasuredCharge().in(MILLIEQUIVALENT_PER_LITRE));
        for (Ion ion : water.ions()) {
            sum += isSpectator(ion) ? water.total(ion).in(MILLIMOLE_PER_LITRE) : 0;
        }
        return sum * MOLES_PER_MILLIMOLE;
    }

    static AmountConcentration concentration(double molesPerKilogram) {
        return AmountConcentration.of(molesPerKilogram / MOLES_PER_MILLIMOLE, MILLIMOLE_PER_LITRE);
    }
}
