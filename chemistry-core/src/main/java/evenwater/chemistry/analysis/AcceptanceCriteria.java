package evenwater.chemistry.analysis;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.IonBalance;
import java.util.Objects;
import javax.measure.Quantity;

/**
 * The checks for correctness of a complete analysis of Standard Methods 1030 E.
 *
 * <p>They are meant for analyses with all major ions measured.
 *
 * @see "Standard Methods for the Examination of Water and Wastewater, 1030 E (from memory)"
 */
public final class AcceptanceCriteria {

    private static final String SOURCE = "Standard Methods 1030 E (from memory)";
    private static final double SMALL_SUM = 3;
    private static final double MEDIUM_SUM = 10;
    private static final double LARGEST_SUM = 800;

    private AcceptanceCriteria() {}

    /**
     * Checks that cations and anions balance.
     *
     * <p>With an anion sum up to 3 meq/L they may differ by 0.2 meq/L; from 3 to 10 meq/L by 2 %, from 10 to 800 meq/L by 5 % of
     * their sum.
     *
     * @param balance measured cations and anions
     * @return the check, in meq/L for small sums and in % above
     * @throws NoAnswerException if the anions exceed 800 meq/L, for which the criterion was not made
     */
    public static Acceptance ionBalance(IonBalance balance) {
        Objects.requireNonNull(balance, "balance");
        double anions = balance.anions().in(MILLIEQUIVALENT_PER_LITRE);
        if (anions > LARGEST_SUM) {
            throw new NoAnswerException(
                    "ion balance is judged up to " + LARGEST_SUM + " meq/L of anions, but they were "
                            + balance.anions(),
                    balance.anions());
        }
        if (anions <= SMALL_SUM) {
            double difference = balance.difference().in(MILLIEQUIVALENT_PER_LITRE);
            return new Acceptance("cations minus anions", difference, -0.2, 0.2, "meq/L", SOURCE);
        }
        double limit = anions <= MEDIUM_SUM ? 2 : 5;
        return new Acceptance(
                "cations minus anions over their sum", balance.percentDifference(), -limit, limit, "%", SOURCE);
    }

    /**
     * Checks the sum of anions against a measured conductivity: {@code 100 · anions / conductivity} from 0.9 to 1.1.
     *
     * @param balance measured cations and anions
     * @param conductivity at 25 °C; above 0
     * @return the check of the anions
     * @throws IllegalArgumentException if the conductivity is not positive
     */
    public static Acceptance anionsAgainstConductivity(IonBalance balance, Quantity<Conductivity> conductivity) {
        Objects.requireNonNull(balance, "balance");
        double anions = balance.anions().in(MILLIEQUIVALENT_PER_LITRE);
        return new Acceptance(
                "100 × anions in meq/L over conductivity in µS/cm",
                100 * anions / positive(conductivity),
                0.9,
                1.1,
                "",
                SOURCE);
    }

    /**
     * Checks the sum of cations against a measured conductivity: {@code 100 · cations / conductivity} from 0.9 to 1.1.
     *
     * @param balance measured cations and anions
     * @param conductivity at 25 °C; above 0
     * @return the check of the cations
     * @throws IllegalArgumentException if the conductivity is not positive
     */
    public static Acceptance cationsAgainstConductivity(IonBalance balance, Quantity<Conductivity> conductivity) {
        Objects.requireNonNull(balance, "balance");
        double cations = balance.cations().in(MILLIEQUIVALENT_PER_LITRE);
        return new Acceptance(
                "100 × cations in meq/L over conductivity in µS/cm",
                100 * cations / positive(conductivity),
                0.9,
                1.1,
                "",
                SOURCE);
    }

    /**
     * Checks weighed against calculated dissolved solids: {@code measured / calculated} from 1.0 to 1.2.
     *
     * @param measured weighed residue
     * @param calculated sum of the ions with bicarbonate as carbonate; above 0
     * @return the check
     * @throws IllegalArgumentException if the calculated solids are not positive, or the measured negative
     */
    public static Acceptance measuredSolids(
            Quantity<MassConcentration> measured, Quantity<MassConcentration> calculated) {
        double sum = MassConcentration.from(calculated).in(MILLIGRAM_PER_LITRE);
        if (!(sum > 0)) {
            throw new IllegalArgumentException("calculated dissolved solids must be positive, but were " + calculated);
        }
        double ratio = notNegative(measured, "measured") / sum;
        return new Acceptance("measured over calculated dissolved solids", ratio, 1.0, 1.2, "", SOURCE);
    }

    /**
     * Checks calculated dissolved solids against a measured conductivity: {@code solids / conductivity} from 0.55 to 0.7.
     *
     * @param calculated sum of the ions with bicarbonate as carbonate; 0 or more
     * @param conductivity at 25 °C; above 0
     * @return the check
     * @throws IllegalArgumentException if the conductivity is not positive or the solids are negative
     */
    public static Acceptance solidsAgainstConductivity(
            Quantity<MassConcentration> calculated, Quantity<Conductivity> conductivity) {
        double ratio = notNegative(calculated, "calculated") / positive(conductivity);
        return new Acceptance(
                "calculated dissolved solids in mg/L over conductivity in µS/cm", ratio, 0.55, 0.7, "", SOURCE);
    }

    /**
     * Checks the conductivity that Standard Methods 2510 calculates from the ions against the measured one: {@code calculated / measured}
     * from 0.9 to 1.1.
     *
     * @param calculated by {@link evenwater.chemistry.instrument.CalculatedConductivity#byStandardMethods2510}; 0 or more
     * @param measured at 25 °C; above 0
     * @return the check
     * @throws IllegalArgumentException if the measured conductivity is not positive, or the calculated negative
     */
    public static Acceptance conductivityByStandardMethods(
            Quantity<Conductivity> calculated, Quantity<Conductivity> measured) {
        return new Acceptance(
                "conductivity calculated by Standard Methods 2510 over measured",
                notNegative(calculated) / positive(measured),
                0.9,
                1.1,
                "",
                SOURCE);
    }

    /**
     * Checks the conductivity of the speciated ions against the measured one: {@code calculated / measured} from 0.93 to 1.07.
     *
     * <p>The limits are those of {@link evenwater.chemistry.instrument.CalculatedConductivity}: of 59 fully analysed natural waters, all lie
     * within 6.3 %. What is outside has a wrong reading, or an ion that nobody measured.
     *
     * @param calculated at 25 °C; 0 or more
     * @param measured at 25 °C; above 0
     * @return the check
     * @throws IllegalArgumentException if the measured conductivity is not positive, or the calculated negative
     */
    public static Acceptance conductivityOfIons(Quantity<Conductivity> calculated, Quantity<Conductivity> measured) {
        return new Acceptance(
                "conductivity calculated from ions and pairs over measured",
                notNegative(calculated) / positive(measured),
                0.93,
                1.07,
                "",
                "59 natural waters lie within 6.3 %");
    }

    private static double notNegative(Quantity<Conductivity> calculated) {
        double value = Conductivity.from(calculated).in(MICROSIEMENS_PER_CENTIMETRE);
        if (value < 0) {
            throw new IllegalArgumentException("calculated conductivity must not be negative, but was " + calculated);
        }
        return value;
    }

    private static double notNegative(Quantity<MassConcentration> solids, String which) {
        double value = MassConcentration.from(solids).in(MILLIGRAM_PER_LITRE);
        if (value < 0) {
            throw new IllegalArgumentException(which + " dissolved solids must not be negative, but were " + solids);
        }
        return value;
    }

    private static double positive(Quantity<Conductivity> conductivity) {
        double value = Conductivity.from(conductivity).in(MICROSIEMENS_PER_CENTIMETRE);
        if (!(value > 0)) {
            throw new IllegalArgumentException("conductivity must be positive, but was " + conductivity);
        }
        return value;
    }
}
