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
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The ions of a water that carry current, for the kernels of conductivity. */
final class ConductingIons {

    private static final double KELVIN_AT_25 = 298.15;
    private static final double DENSITY_AT_25 = SolventWater.density(KELVIN_AT_25);

    private static final Map<String, LimitingConductivity> BY_SYMBOL = new HashMap<>();
    /** Species that carry current, and what carries it, at the same places. */
    private static final Species[] SPECIES;

    private static final LimitingConductivity[] OF_SPECIES;

    static {
        for (LimitingConductivity ion : LimitingConductivity.values()) {
            BY_SYMBOL.put(ion.symbol(), ion);
        }
        SPECIES = Stream.of(Species.values())
                .filter(species -> BY_SYMBOL.containsKey(species.symbol()))
                .toArray(Species[]::new);
        OF_SPECIES = Stream.of(SPECIES)
                .map(species -> BY_SYMBOL.get(species.symbol()))
                .toArray(LimitingConductivity[]::new);
    }

    private final double kelvin;
    /** Of each ion that is there: charge number, λ0 in S cm²/eq and concentration in mmol/L. */
    private final double[] charge;

    private final double[] limiting;
    private final double[] millimoles;
    private final int count;

    /** Leaves out what is not there and neutral solutes; each has the λ0 of what it is like. */
    private ConductingIons(double kelvin, LimitingConductivity[] like, int[] charges, double[] amounts) {
        double[] limitingByPlace = new double[LimitingConductivity.values().length];
        LimitingConductivity.write(kelvin, limitingByPlace);
        this.kelvin = kelvin;
        charge = new double[like.length];
        limiting = new double[like.length];
        millimoles = new double[like.length];
        int n = 0;
        for (int i = 0; i < like.length; i++) {
            if (amounts[i] > 0 && charges[i] != 0) {
                charge[n] = charges[i];
                limiting[n] = limitingByPlace[like[i].place()];
                millimoles[n] = amounts[i];
                n++;
            }
        }
        count = n;
    }

    /** Free ions, charged pairs and spectators. */
    static ConductingIons of(Speciation speciation) {
        Water water = speciation.water();
        List<Ion> spectators = speciation.spectatorIons();
        int most = SPECIES.length + spectators.size();
        LimitingConductivity[] like = Arrays.copyOf(OF_SPECIES, most);
        int[] charges = new int[most];
        double[] amounts = new double[most];
        for (int i = 0; i < SPECIES.length; i++) {
            charges[i] = SPECIES[i].chargeNumber();
            amounts[i] = speciation.concentration(SPECIES[i]).in(MILLIMOLE_PER_LITRE);
        }
        write(water, spectators, SPECIES.length, like, charges, amounts);
        return new ConductingIons(water.temperature().in(WaterUnits.KELVIN), like, charges, amounts);
    }

    /** Totals as a laboratory states them, alkalinity as HCO₃⁻, at 25 °C. */
    static ConductingIons totals(Water water) {
        List<Ion> present = water.ions();
        int most = 1 + present.size();
        LimitingConductivity[] like = new LimitingConductivity[most];
        int[] charges = new int[most];
        double[] amounts = new double[most];
        double alkalinity = water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        int last = present.size();
        write(water, present, 0, like, charges, amounts);
        like[last] = alkalinity < 0 ? LimitingConductivity.HYDROGEN : LimitingConductivity.BICARBONATE;
        charges[last] = like[last].chargeNumber();
        amounts[last] = Math.abs(alkalinity);
        return new ConductingIons(KELVIN_AT_25, like, charges, amounts);
    }

    private static void write(
            Water water, List<Ion> ions, int from, LimitingConductivity[] like, int[] charges, double[] amounts) {
        int i = from;
        for (Ion ion : ions) {
            like[i] = BY_SYMBOL.getOrDefault(ion.symbol(), likeness(ion.chargeNumber()));
            charges[i] = ion.chargeNumber();
            amounts[i] = water.total(ion).in(MILLIMOLE_PER_LITRE);
            i++;
        }
    }

    /** Whose conductivity an ion has of which only the charge is known. */
    private static LimitingConductivity likeness(int charge) {
        return charge < 0 ? LimitingConductivity.CHLORIDE : LimitingConductivity.SODIUM;
    }

    AmountConcentration ionicStrength() {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += charge[i] * charge[i] * millimoles[i] / 2;
        }
        return AmountConcentration.of(sum, MILLIMOLE_PER_LITRE);
    }

    /** Returns κ in µS/cm at the temperature. */
    double byOnsagerFuoss() {
        double litresAt25 = SolventWater.density(kelvin) / DENSITY_AT_25;
        double[] molesPerLitre = new double[count];
        for (int i = 0; i < count; i++) {
            molesPerLitre[i] = millimoles[i] * 1e-3 * litresAt25;
        }
        return OnsagerFuoss.microsiemensPerCentimetre(
                count,
                molesPerLitre,
                charge,
                limiting,
                kelvin,
                SolventWater.dielectricConstant(kelvin),
                WaterViscosity.pascalSeconds(kelvin),
                new ConductivityScratch(count));
    }

    /** Returns k in µS/cm at 25 °C. */
    double byStandardMethods2510() {
        return StandardMethods2510Kernel.microsiemensPerCentimetre(count, millimoles, charge, limiting);
    }
}
