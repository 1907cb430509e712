package evenwater.examples.household;

import evenwater.chemistry.analysis.Acceptance;
import evenwater.chemistry.analysis.AcceptanceCriteria;
import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.IonBalance;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far the readings of a report may be trusted, by whether their ions balance. */
final class Trust {

    private final Interpretation source;
    private final IonBalance balance;

    Trust(Interpretation source) {
        this.source = source;
        this.balance = source.water().ionBalance();
    }

    IonBalance balance() {
        return balance;
    }

    /** Whether the ions balance by the best guess; empty for brines, for which the criterion was not made. */
    Optional<Acceptance> criterion() {
        return criterion(source.water());
    }

    /** The same for one of the waters that the report leaves open. */
    static Optional<Acceptance> criterion(Water water) {
        try {
            return Optional.of(AcceptanceCriteria.ionBalance(water.ionBalance()));
        } catch (NoAnswerException e) {
            return Optional.empty();
        }
    }

    /** Parts whose charge nobody measured; a hardness has the charge of its calcium and magnesium. */
    List<String> missing() {
        List<String> missing = new ArrayList<>(source.notMeasured());
        if (source.report().hardness().isPresent()) {
            missing.removeAll(List.of("calcium", "magnesium"));
        }
        return missing;
    }

    /** True if the ions do not balance in any water that the report leaves open, and nothing that is missing could make them. */
    boolean isBroken() {
        boolean cationsPrevail = balance.difference().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE) > 0;
        List<String> couldMend = new ArrayList<>(
                cationsPrevail
                        ? List.of("chloride", "sulfate", "alkalinity")
                        : List.of("calcium", "magnesium", "sodium", "potassium"));
        if (source.bounds(Water::alkalinity).openBelow()) {
            couldMend.add("alkalinity"); // acid that nobody measured counts as a cation
        }
        return missing().stream().noneMatch(couldMend::contains)
                && source.corners().stream()
                        .allMatch(corner -> criterion(corner)
                                .filter(check -> !check.accepted())
                                .isPresent());
    }

    /** A warning for everything that is computed from such readings. */
    Optional<String> doubt() {
        return isBroken()
                ? Optional.of("The ions of the source do not balance ("
                        + Page.number(balance.percentDifference())
                        + " % of their sum): a reading is wrong, or something big was not measured. "
                        + "Doubt every figure below until it is found.")
                : Optional.empty();
    }
}
