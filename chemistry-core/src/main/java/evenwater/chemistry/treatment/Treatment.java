package evenwater.chemistry.treatment;

import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.Water;
import java.util.function.UnaryOperator;

/**
 * Something a house does to water; immutable, so that it can treat any number of waters.
 *
 * <p><b>The pH behind it.</b> A measured pH is a reading of one water: a treatment that changes the water drops it, and where the inorganic
 * carbon was unknown too, {@code Speciation.of(treated)} refuses. For a pH behind a treatment start from {@code Speciation.of(source).water()},
 * the same water with the carbon that its pH tells. Treatments that need the carbon, such as a {@link Neutralizer}, do so themselves.
 *
 * <p>Your own treatment answers {@code source.plus(change)}, a blend, or any other water: implement it, or wrap a function by
 * {@link #of}.
 */
public interface Treatment {

    /**
     * Returns a treatment of your own.
     *
     * @param name a few words without a final dot
     * @param treat the treated water for a source; must answer the same for the same
     * @return the treatment
     */
    static Treatment of(String name, UnaryOperator<Water> treat) {
        return new OwnTreatment(name, treat);
    }

    /**
     * Returns the treated water.
     *
     * @param source water before the treatment
     * @return water behind it
     * @throws NoAnswerException if the treatment cannot do what it was set to with this water
     */
    Water treat(Water source);

    /**
     * Returns what it is, for a ledger.
     *
     * @return a few words without a final dot
     */
    String name();
}
