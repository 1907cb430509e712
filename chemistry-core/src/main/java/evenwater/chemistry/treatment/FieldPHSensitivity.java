package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.Objects;

/**
 * How much of what a neutralizer does hangs on the pH of the raw water, at one alkalinity.
 *
 * <p>The pH stands for the CO₂, which dissolves the calcite: one that is 0.3 lower means twice the CO₂. It must be a field value, read at the
 * tap at once: a bottle that stood open has lost CO₂ and shows a higher pH, so that hardness and sodium behind the filter come out too low.
 *
 * @param uncertainty how far the pH may be off either way; no unit; above 0
 * @param lower if the pH was lower by the uncertainty: more dissolves
 * @param stated with the pH as stated, or as it follows from the carbon of the water
 * @param higher if the pH was higher by the uncertainty: less dissolves
 */
public record FieldPHSensitivity(double uncertainty, Reading lower, Reading stated, Reading higher) {

    private static final double MOST = 2;

    /**
     * Checks that all are there.
     *
     * @param uncertainty see the record
     * @param lower see the record
     * @param stated see the record
     * @param higher see the record
     * @throws IllegalArgumentException if the uncertainty is not above 0, to 2
     */
    public FieldPHSensitivity {
        requireUncertainty(uncertainty);
        Objects.requireNonNull(lower, "lower");
        Objects.requireNonNull(stated, "stated");
        Objects.requireNonNull(higher, "higher");
    }

    static FieldPHSensitivity of(Neutralizer filter, Water source, double uncertainty) {
        requireUncertainty(uncertainty);
        Water known = Speciation.of(Objects.requireNonNull(source, "source")).water();
        return new FieldPHSensitivity(
                uncertainty,
                Reading.of(filter, known, -uncertainty),
                Reading.of(filter, known, 0),
                Reading.of(filter, known, uncertainty));
    }

    private static void requireUncertainty(double uncertainty) {
        if (!(uncertainty > 0 && uncertainty <= MOST)) {
            throw new IllegalArgumentException("uncertainty of a pH must be above 0, to 2, but was " + uncertainty);
        }
    }

    /**
     * What a neutralizer makes of a raw water of one pH.
     *
     * @param rawPH of the raw water; no unit
     * @param dissolved calcite and magnesia that dissolve, in mmol/L
     * @param outletPH behind the filter; no unit
     * @param alkalinity behind the filter
     * @param hardness behind the filter
     * @param sodiumOfASoftener sodium that a softener without leakage adds behind the filter, in mg/L
     */
    public record Reading(
            double rawPH,
            AmountConcentration dissolved,
            double outletPH,
            Alkalinity alkalinity,
            Hardness hardness,
            AmountConcentration sodiumOfASoftener) {

        /**
         * Checks that nothing is null.
         *
         * @param rawPH see the record
         * @param dissolved see the record
         * @param outletPH see the record
         * @param alkalinity see the record
         * @param hardness see the record
         * @param sodiumOfASoftener see the record
         */
        public Reading {
            Objects.requireNonNull(dissolved, "dissolved");
            Objects.requireNonNull(alkalinity, "alkalinity");
            Objects.requireNonNull(hardness, "hardness");
            Objects.requireNonNull(sodiumOfASoftener, "sodiumOfASoftener");
        }

        /**
         * The reading of a water that knows its carbon, with its pH shifted.
         *
         * @throws NoAnswerException if the filter cannot do what it was set to
         */
        static Reading of(Neutralizer filter, Water known, double shift) {
            double pH = Speciation.of(known).pH() + shift;
            Water raw = shift == 0 ? known : withPH(known, pH);
            Water outlet = filter.treat(raw);
            double sodium = sodium(Softener.withSodium().treat(outlet)) - sodium(outlet);
            return new Reading(
                    pH,
                    filter.dissolved(raw),
                    Speciation.of(outlet).pH(),
                    outlet.alkalinity(),
                    outlet.hardness(),
                    AmountConcentration.of(sodium, MILLIMOLE_PER_LITRE).to(Ion.SODIUM.milligramPerLitre()));
        }

        private static double sodium(Water water) {
            return water.total(Ion.SODIUM).in(MILLIMOLE_PER_LITRE);
        }

        private static Water withPH(Water water, double pH) {
            WaterBuilder builder = Water.builder()
                    .alkalinity(water.alkalinity())
                    .temperature(water.temperature())
                    .measuredPH(pH);
            water.ions().forEach(ion -> builder.total(ion, water.total(ion)));
            return builder.build();
        }
    }
}
