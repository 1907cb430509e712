package evenwater.chemistry.treatment;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.water.Water;
import java.util.Objects;

/**
 * One step of a plan to take alkalinity away: a dose of acid, then aeration.
 *
 * @param hydrogen what the acid brings of H⁺ in this step
 * @param atOnce the water right after the dose, with its CO₂ and pH at their worst
 * @param aerated the water after aeration, before the next step
 */
public record AcidStep(AmountConcentration hydrogen, Speciation atOnce, Water aerated) {

    /**
     * Checks that all is there.
     *
     * @param hydrogen see the record
     * @param atOnce see the record
     * @param aerated see the record
     */
    public AcidStep {
        Objects.requireNonNull(hydrogen, "hydrogen");
        Objects.requireNonNull(atOnce, "atOnce");
        Objects.requireNonNull(aerated, "aerated");
    }
}
