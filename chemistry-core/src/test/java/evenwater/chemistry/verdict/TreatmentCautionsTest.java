package evenwater.chemistry.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.treatment.Dechlorination;
import evenwater.chemistry.treatment.ThiosulfateProduct;
import evenwater.chemistry.treatment.Train;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TreatmentCautionsTest {

    private static final MassConcentration CHLORINE = MassConcentration.of(2, MassConcentration.MILLIGRAM_PER_LITRE);

    /** 2 mg/L as Cl₂ · 18.039/70.906 = 0.51 mg/L NH₄⁺. */
    @Test
    void chloramineThatIsBrokenDownLeavesAmmoniaToMind() {
        TreatmentCautions cautions =
                TreatmentCautions.of(Train.of(Dechlorination.ofChloramine(CHLORINE, ThiosulfateProduct.SULFATE)
                        .withLeastDose()));
        assertEquals(Set.of(CautionTopic.CHLORINE, CautionTopic.DOSE, CautionTopic.AMMONIA), cautions.topics());
        assertEquals(
                List.of(
                        "Chloramine sets free 0.51 mg/L NH₄⁺, which thiosulfate does not bind: it must be dealt with by a filter or a "
                                + "binder, above all at high pH."),
                cautions.handling().stream().map(Caution::text).toList());
    }

    @Test
    void thiosulfateBeyondWhatFreeChlorineTakesAsksForAir() {
        TreatmentCautions cautions =
                TreatmentCautions.of(Dechlorination.ofFreeChlorine(CHLORINE, ThiosulfateProduct.SULFATE));
        assertEquals(Set.of(CautionTopic.CHLORINE, CautionTopic.DOSE), cautions.topics());
        assertEquals(
                List.of("Thiosulfate that is not needed stays, and bacteria take oxygen to oxidise it: aerate."),
                cautions.handling().stream().map(Caution::text).toList());
    }
}
