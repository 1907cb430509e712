package evenwater.chemistry.validation;

import java.util.List;

/** All comparisons with published figures, in the order of the page. */
final class PublishedChecks {

    private static final List<Topic> TOPICS = List.of(
            AtomicWeightChecks.topic(),
            MolarMassChecks.molarMasses(),
            MolarMassChecks.equivalentMasses(),
            FactorChecks.asCalciumCarbonate(),
            FactorChecks.equivalents(),
            FactorChecks.otherBases(),
            CustomaryUnitChecks.topic(),
            ScaleChecks.topic(),
            ScaleTableChecks.hardness(),
            ScaleTableChecks.alkalinity(),
            WaterChecks.ions(),
            WaterChecks.solids(),
            WaterChecks.reconstituted(),
            SeawaterChecks.substitute(),
            SeawaterChecks.reference(),
            AnalysisChecks.criteria(),
            AnalysisChecks.classes(),
            EquilibriumChecks.constants(),
            EquilibriumChecks.waters(),
            AmmoniaChecks.fraction(),
            AmmoniaChecks.criteria(),
            MetabolismChecks.topic(),
            DechlorinationChecks.topic(),
            SaturationFormChecks.shortForm(),
            SaturationFormChecks.factorTable(),
            InstrumentChecks.temperature(),
            InstrumentChecks.solids(),
            ConductivityChecks.topic(),
            SofteningChecks.exchange(),
            SofteningChecks.sizing(),
            SaltChecks.theory(),
            SaltChecks.efficiency(),
            SaltChecks.capacity(),
            ResinChecks.equilibrium(),
            ResinChecks.capacity(),
            RecipeChecks.topic(),
            UncertaintyChecks.topic());

    private PublishedChecks() {}

    static List<Topic> topics() {
        return TOPICS;
    }

    /** Returns the rows of all tables. */
    static List<PublishedCheck> all() {
        return TOPICS.stream().flatMap(topic -> topic.checks().stream()).toList();
    }

    /** Returns the check with an id. */
    static PublishedCheck withId(String id) {
        return all().stream()
                .filter(check -> check.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no check " + id));
    }
}
