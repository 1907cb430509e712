package evenwater.chemistry.recipe;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirement;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.verdict.Weight;
import java.util.Optional;
import java.util.function.Consumer;

/** The targets by which a recipe keeps the requirements of a kind of tank. */
final class RequirementTargets {

    private final RecipeBuilder builder;

    private RequirementTargets(RecipeBuilder builder) {
        this.builder = builder;
    }

    static void add(Requirements requirements, RecipeBuilder builder) {
        RequirementTargets targets = new RequirementTargets(builder);
        for (Requirement<?> requirement : requirements.list()) {
            if (requirement.weight() != Weight.FOR_INFORMATION) {
                targets.add(requirement);
            }
        }
    }

    private <Q extends WaterQuantity<?>> void add(Requirement<Q> requirement) {
        Parameter<Q> parameter = requirement.parameter();
        if (parameter == Parameter.GENERAL_HARDNESS) {
            ends(requirement, target -> builder.hardness(target.of((Hardness) target.value())));
            middle(requirement).ifPresent(middle -> builder.hardness(Target.near((Hardness) middle)));
        } else if (parameter == Parameter.CARBONATE_HARDNESS) {
            ends(requirement, target -> builder.alkalinity(target.of((Alkalinity) target.value())));
            middle(requirement).ifPresent(middle -> builder.alkalinity(Target.near((Alkalinity) middle)));
        } else if (parameter == Parameter.CONDUCTIVITY) {
            ends(requirement, target -> builder.conductivity(target.of((Conductivity) target.value())));
        } else {
            parameter
                    .ion()
                    .ifPresent(ion -> ends(
                            requirement,
                            target -> builder.total(ion, target.of((AmountConcentration) target.value()))));
        }
    }

    private static <Q extends WaterQuantity<?>> void ends(Requirement<Q> requirement, Consumer<Target<Q>> add) {
        requirement.least().ifPresent(least -> add.accept(Target.atLeast(least)));
        requirement.most().ifPresent(most -> add.accept(Target.atMost(most)));
    }

    /** Away from both ends, so that a reading or a spoon a little off does not lead out. */
    private static <Q extends WaterQuantity<?>> Optional<Q> middle(Requirement<Q> requirement) {
        Parameter<Q> parameter = requirement.parameter();
        return requirement
                .least()
                .flatMap(least -> requirement
                        .most()
                        .map(most -> parameter.of((parameter.number(least) + parameter.number(most)) / 2)));
    }
}
