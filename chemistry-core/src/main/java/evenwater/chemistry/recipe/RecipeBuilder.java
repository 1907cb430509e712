package evenwater.chemistry.recipe;

import evenwater.chemistry.analysis.CalciumToMagnesium;
import evenwater.chemistry.control.StockSolution;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * Collects waters, targets and the shelf of a {@link Recipe}.
 *
 * <p>The order of targets and of the shelf makes no difference; the order of the waters says which is wanted most. Not thread-safe.
 */
public final class RecipeBuilder {

    private static final double ROUNDING = 1e-9;

    /** So that equal shelves are solved alike in whatever order they were stated. */
    private static final Comparator<ShelfItem> ORDER =
            Comparator.comparing(item -> item.compound() + " " + item.compound().ions());

    private final WaterQuantity<Volume> volume;
    private final Map<String, Water> sources = new LinkedHashMap<>();
    private final List<Goal<?>> goals = new ArrayList<>();
    private final Map<Compound, ShelfItem> shelf = new LinkedHashMap<>();
    private double @Nullable [] presentShares;

    RecipeBuilder(WaterQuantity<Volume> volume) {
        this.volume = volume;
    }

    /**
     * Adds a water that may be blended in.
     *
     * @param name what to call it
     * @param water with its inorganic carbon or a measured pH, if the recipe shall have a pH
     * @return this builder
     * @throws IllegalArgumentException if another water has the name
     */
    public RecipeBuilder source(String name, Water water) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(water, "water");
        if (sources.putIfAbsent(name, water) != null) {
            throw new IllegalArgumentException("two waters of a recipe must not both be called " + name);
        }
        return this;
    }

    /**
     * States the shares of the waters in the present routine, from which equally good recipes shall depart least.
     *
     * @param shares one for each water, in their order; no unit, 0 to 1, 1 together
     * @return this builder
     * @throws IllegalArgumentException if a share is out of range or they do not add up to 1
     */
    public RecipeBuilder presentShares(double... shares) {
        double sum = 0;
        for (double share : shares) {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("present shares must be from 0 to 1, but one was " + share);
            }
            sum += share;
        }
        if (!(Math.abs(sum - 1) <= ROUNDING)) {
            throw new IllegalArgumentException("present shares must add up to 1, but were " + Arrays.toString(shares));
        }
        presentShares = shares.clone();
        return this;
    }

    /**
     * Adds a target of total hardness, by calcium and magnesium.
     *
     * @param target 0 or more
     * @return this builder
     * @throws IllegalArgumentException if the target is negative
     */
    public RecipeBuilder hardness(Target<? extends Quantity<Hardness>> target) {
        goals.add(Goal.hardness(target));
        return this;
    }

    /**
     * Adds a target of titration alkalinity.
     *
     * @param target may be negative
     * @return this builder
     */
    public RecipeBuilder alkalinity(Target<? extends Quantity<Alkalinity>> target) {
        goals.add(Goal.alkalinity(target));
        return this;
    }

    /**
     * Adds a target for the total of an ion, all its forms together.
     *
     * @param ion a reference form
     * @param target 0 or more
     * @return this builder
     * @throws IllegalArgumentException if the ion is counted elsewhere, or the target is negative or in the mass of another ion
     */
    public RecipeBuilder total(Ion ion, Target<? extends Quantity<AmountConcentration>> target) {
        goals.add(Goal.total(ion, target));
        return this;
    }

    /**
     * Adds a target for the ratio of two ions, such as chloride to sulfate. A water with neither has any ratio.
     *
     * @param target by amount or by mass
     * @return this builder
     */
    public RecipeBuilder ratio(Target<IonRatio> target) {
        goals.add(Goal.ratio(target));
        return this;
    }

    /**
     * Adds a target for the ratio of calcium to magnesium.
     *
     * @param target by amount or by mass
     * @return this builder
     */
    public RecipeBuilder calciumToMagnesium(Target<CalciumToMagnesium> target) {
        return ratio(target.of(IonRatio.from(target.value())));
    }

    /**
     * Adds a target of the {@linkplain evenwater.chemistry.instrument.CalculatedConductivity calculated} conductivity at 25 °C.
     *
     * @param target 0 or more
     * @return this builder
     * @throws IllegalArgumentException if the target is negative
     */
    public RecipeBuilder conductivity(Target<? extends Quantity<Conductivity>> target) {
        goals.add(Goal.conductivity(target));
        return this;
    }

    /**
     * Adds what a kind of tank asks for: the ends of hardness, alkalinity, conductivity and ions as targets that must be met, the middles of
     * hardness and alkalinity as wishes.
     *
     * <p>What a recipe cannot move, such as pH, chlorine or ammonia, and what is only for information is left out: judge
     * {@link Recipe#water()} afterwards.
     *
     * @param requirements of a kind of tank
     * @return this builder
     */
    public RecipeBuilder keeping(Requirements requirements) {
        RequirementTargets.add(Objects.requireNonNull(requirements, "requirements"), this);
        return this;
    }

    /**
     * Puts compounds on the shelf, to be weighed or measured dry; what stands there already is there once.
     *
     * @param compounds of their strength
     * @return this builder
     * @throws IllegalArgumentException if one is there as a stock
     */
    public RecipeBuilder shelf(Compound... compounds) {
        for (Compound compound : compounds) {
            put(ShelfItem.of(Objects.requireNonNull(compound, "compound")));
        }
        return this;
    }

    /**
     * Puts a stock solution on the shelf. The volume that it adds is neglected.
     *
     * @param stock what is dosed in millilitres
     * @return this builder
     * @throws IllegalArgumentException if its compound is there dry or as another stock
     */
    public RecipeBuilder stock(StockSolution stock) {
        put(ShelfItem.of(Objects.requireNonNull(stock, "stock")));
        return this;
    }

    private void put(ShelfItem item) {
        ShelfItem before = shelf.putIfAbsent(item.compound(), item);
        if (before != null && !before.stock().equals(item.stock())) {
            throw new IllegalArgumentException(item.compound().name()
                    + " must be on the shelf in one way, dry or in one stock, but was there twice");
        }
    }

    /**
     * Returns the best recipe, also where not all targets can be met.
     *
     * @return the recipe
     * @throws IllegalArgumentException if there is no water, or present shares are stated for another number of waters
     * @throws NoAnswerException if a conductivity has no answer or does not settle, or targets differ by so many powers of ten that the
     *     arithmetic fails
     */
    public Recipe solve() {
        if (sources.isEmpty()) {
            throw new IllegalArgumentException("a recipe needs a water, pure water for one");
        }
        if (presentShares != null && presentShares.length != sources.size()) {
            throw new IllegalArgumentException("present shares must be as many as the " + sources.size()
                    + " waters, but were " + presentShares.length);
        }
        List<ShelfItem> items = shelf.values().stream().sorted(ORDER).toList();
        List<Goal<?>> sorted =
                goals.stream().sorted(Comparator.comparing(Goal::toString)).toList();
        Setting setting = Setting.of(
                sources.values().stream().map(RecipeBuilder::withItsCarbon).toList(), items, sorted);
        RecipeSolver solver = new RecipeSolver(setting, sorted, Optional.ofNullable(presentShares));
        double[] solution = solver.solve();
        List<Conflict> conflicts = new ConflictSearch(setting).among(solver.rows(solution));
        return new Recipe(List.copyOf(sources.keySet()), volume, setting, solution, List.copyOf(goals), conflicts);
    }

    /** A blend or a dose drops a measured pH, but not the carbon that it tells. */
    private static Water withItsCarbon(Water water) {
        if (water.carbon().isPresent() || water.measuredPH().isEmpty()) {
            return water;
        }
        try {
            return Speciation.of(water).water();
        } catch (NoAnswerException | IllegalArgumentException noCarbon) {
            return water; // the recipe then says that its pH is unknown, and why
        }
    }
}
