package evenwater.chemistry.verdict;

import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.AlkalinityReduction;
import evenwater.chemistry.treatment.Bypass;
import evenwater.chemistry.treatment.Dechlorination;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Neutralizer;
import evenwater.chemistry.treatment.ResinBedSoftener;
import evenwater.chemistry.treatment.ReverseOsmosis;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.treatment.Treatment;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What must be said about a treatment.
 *
 * @param topics what applies
 * @param handling of what is dosed, each compound once
 */
record TreatmentCautions(Set<CautionTopic> topics, List<Caution> handling) {

    static TreatmentCautions of(Treatment treatment) {
        TreatmentCautions cautions = new TreatmentCautions(EnumSet.noneOf(CautionTopic.class), new ArrayList<>());
        cautions.add(treatment);
        return cautions;
    }

    private void add(Treatment treatment) {
        if (treatment instanceof Train train) {
            train.treatments().forEach(this::add);
        } else if (treatment instanceof Bypass bypass) {
            add(bypass.treatment());
        } else if (treatment instanceof Softener softener) {
            topics.addAll(Set.of(CautionTopic.SOFTENER, CautionTopic.STAGNANT));
            topics.add(softener.regenerant().equals(Ion.POTASSIUM) ? CautionTopic.POTASSIUM : CautionTopic.SODIUM);
        } else if (treatment instanceof ResinBedSoftener) {
            topics.addAll(Set.of(CautionTopic.SOFTENER, CautionTopic.STAGNANT));
        } else if (treatment instanceof ReverseOsmosis) {
            topics.add(CautionTopic.MEMBRANE);
        } else if (treatment instanceof Neutralizer) {
            topics.addAll(Set.of(CautionTopic.NEUTRALIZER, CautionTopic.AMMONIA));
        } else if (treatment instanceof AlkalinityReduction) {
            topics.add(CautionTopic.ACID);
        } else if (treatment instanceof Dechlorination dechlorination) {
            add(dechlorination);
        } else if (treatment instanceof Dosing dosing) {
            add(dosing.compound());
            if (dosing.most().exceedsSolubility()) {
                handling.add(new Caution(
                        CautionTopic.DOSE,
                        "Some of the " + dosing.compound().name()
                                + " stays undissolved: hardness and alkalinity are lower than computed until it dissolves.",
                        Citation.OWN_RULE));
            }
        }
    }

    private void add(Dechlorination dechlorination) {
        topics.addAll(Set.of(CautionTopic.CHLORINE, CautionTopic.DOSE));
        if (dechlorination.change().total(Ion.AMMONIUM).getValue() > 0) {
            topics.add(CautionTopic.AMMONIA);
        }
        for (String words : dechlorination.cautions()) {
            String sentence = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
            handling.add(new Caution(CautionTopic.CHLORINE, sentence, Citation.COMMON_PRACTICE));
        }
    }

    private void add(Compound compound) {
        topics.add(CautionTopic.DOSE);
        Set<Ion> ions = compound.ions().keySet();
        if (ions.contains(Ion.POTASSIUM)) {
            topics.add(CautionTopic.POTASSIUM);
        }
        if (ions.contains(Ion.HYDROGEN)) {
            topics.add(CautionTopic.ACID);
        }
        if (ions.contains(Ion.HYDROXIDE) || ions.contains(Ion.CARBONATE)) {
            topics.addAll(Set.of(CautionTopic.BASE, CautionTopic.AMMONIA));
        }
        if (ions.contains(Ion.COPPER_II)) {
            topics.add(CautionTopic.COPPER);
        }
        Caution own = Caution.handling(compound);
        if (!compound.caution().isEmpty() && !handling.contains(own)) {
            handling.add(own);
        }
    }
}
