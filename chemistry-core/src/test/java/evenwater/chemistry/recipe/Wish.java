package evenwater.chemistry.recipe;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.mmol;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** A target of a random recipe that can be stated anew at another scale or in another unit. */
record Wish(int kind, Aim aim, double value, double weight) {

    private static final List<Ion> IONS = List.of(Ion.SODIUM, Ion.POTASSIUM, Ion.MAGNESIUM, Ion.CHLORIDE, Ion.SULFATE);

    static final int HARDNESS = 0;
    private static final int ALKALINITY = 1;
    private static final int CALCIUM_TO_MAGNESIUM = 2;
    private static final int CHLORIDE_TO_SULFATE = 3;
    private static final int TOTALS = 4;

    static Arbitrary<Wish> any() {
        // on a grid: two targets that differ by a millionth are no recipe, but a test of the solver's last digits
        Arbitrary<Double> values = Arbitraries.oneOf(
                Arbitraries.just(0.0), Arbitraries.integers().between(1, 80).map(steps -> 0.05 * steps));
        return Combinators.combine(
                        Arbitraries.integers().between(0, TOTALS + IONS.size() - 1),
                        Arbitraries.of(Aim.class),
                        values,
                        // alike or a quarter apart: between weights that differ in their last digits no recipe is the
                        // better one in doubles
                        Arbitraries.integers().between(-10, 10).map(tenths -> Math.pow(10, tenths / 10.0)))
                .as((kind, aim, value, weight) -> new Wish(kind, aim, value, aim == Aim.NEAR ? weight : 1));
    }

    private <T> Target<T> target(T stated) {
        return new Target<>(aim, stated, weight);
    }

    private IonRatio ratio() {
        return kind == CALCIUM_TO_MAGNESIUM
                ? IonRatio.byAmount(Ion.CALCIUM, Ion.MAGNESIUM, value + 0.5)
                : IonRatio.byMass(Ion.CHLORIDE, Ion.SULFATE, value + 0.5);
    }

    Goal<?> goal() {
        return switch (kind) {
            case HARDNESS -> Goal.hardness(target(hardness(value)));
            case ALKALINITY -> Goal.alkalinity(target(alkalinity(value)));
            case CALCIUM_TO_MAGNESIUM, CHLORIDE_TO_SULFATE -> Goal.ratio(target(ratio()));
            default -> Goal.total(IONS.get(kind - TOTALS), target(mmol(value)));
        };
    }

    /** All concentrations times a factor. */
    void addTo(RecipeBuilder builder, double factor) {
        switch (kind) {
            case HARDNESS -> builder.hardness(target(hardness(value * factor)));
            case ALKALINITY -> builder.alkalinity(target(alkalinity(value * factor)));
            case CALCIUM_TO_MAGNESIUM, CHLORIDE_TO_SULFATE -> builder.ratio(target(ratio()));
            default -> builder.total(IONS.get(kind - TOTALS), target(mmol(value * factor)));
        }
    }

    /** The same in units of the trade. */
    void addInOtherUnits(RecipeBuilder builder) {
        switch (kind) {
            case HARDNESS -> builder.hardness(target(hardness(value).to(Hardness.GRAIN_PER_US_GALLON)));
            case ALKALINITY ->
                builder.alkalinity(target(alkalinity(value).to(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS)));
            case CALCIUM_TO_MAGNESIUM, CHLORIDE_TO_SULFATE -> builder.ratio(target(ratio()));
            default -> {
                Ion ion = IONS.get(kind - TOTALS);
                builder.total(ion, target(mmol(value).to(ion.milligramPerLitre())));
            }
        }
    }
}
