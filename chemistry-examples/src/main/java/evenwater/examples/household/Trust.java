package evenwater.examples.household;

import evenwater.chemistry.analysis.Acceptance;
import evenwater.chemistry.analysis.AcceptanceCriteria;
import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.water.IonBalance;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.quantity.Dimensionless;

/** How far the readings of a report may be trusted, by whether their ions balance. */
final class Trust {

    /** For a figure that a criterion has no answer for. */
    private static final double NOWHERE = 1e9;

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

    /** Whether a criterion accepts all waters that the report leaves open, or none; empty if some, or nobody can say. */
    Optional<Boolean> verdict(Function<Water, Optional<Acceptance>> judge) {
        Bounds<WaterQuantity<Dimensionless>> placed = source.bounds(
                water -> WaterUnits.share(judge.apply(water).map(Trust::place).orElse(NOWHERE), WaterUnits.ONE));
        double low = placed.low().in(WaterUnits.ONE);
        double high = placed.high().in(WaterUnits.ONE);
        if (low >= -1 && high <= 1) {
            return Optional.of(true);
        }
        return low > 1 || high < -1 ? Optional.of(false) : Optional.empty();
    }

    /** Where a figure lies: -1 at the lower limit of the criterion, 1 at the upper one. */
    private static double place(Acceptance check) {
        double middle = (check.low() + check.high()) / 2;
        double place = (check.value() - middle) / (check.high() - middle);
        return check.accepted() ? Math.max(-1, Math.min(1, place)) : place;
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
        return criterion().isPresent()
                && missing().stream().noneMatch(couldMend::contains)
                && verdict(Trust::criterion).filter(accepted -> !accepted).isPresent();
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
