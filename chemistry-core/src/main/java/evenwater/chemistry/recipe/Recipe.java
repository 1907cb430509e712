package evenwater.chemistry.recipe;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.WaterCondition;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * The doses, and of several waters the shares, that bring a volume of water to its targets.
 *
 * <p>Hardness, alkalinity, totals and ratios are linear in doses and shares, so the best of all recipes is found, by linear programmes in
 * order of rank, none of which may spoil an earlier one:
 *
 * <ol>
 *   <li>the targets that must be met: exactly, at most, at least. If they cannot all be met, the sum of their relative misses is least, and
 *       {@link #conflicts} says which of them fight;
 *   <li>the targets to come near to: the sum of weight × relative miss is least;
 *   <li>of a blend with a stated present routine, the sum of the changes of its shares is least;
 *   <li>the mass of all doses, as sold, is least;
 *   <li>the most of the water that was named first, then of the second.
 * </ol>
 *
 * <p>A miss is relative to the value of the target. Where that is 0 (or below a ten-thousandth of the reference concentration) it is relative to the
 * reference concentration: the largest target of all in meq/L, 100 µS/cm counting as 1 meq/L; without targets above 0 the charges of the
 * saltiest water. A ratio is missed by the share that one ion has too much of the sum of both, in equivalents, times that sum over the
 * reference concentration; a water with neither ion meets it.
 *
 * <p>Misses count by their amount, not by their square. Where wishes fight, the heaviest are then met in full and the lightest pays, as a
 * person would decide; least squares would miss all of them a little. The other side: between wishes of equal weight there may be several best
 * recipes, and the mass decides.
 *
 * <p>A conductivity is not linear. It is approached by linear programmes with its slopes until they settle, from the waters as they are, from each
 * water alone and from each compound alone. The best of these recipes is returned: none nearby is better, but no proof says so of all. Two recipes
 * count as equal if they differ by less than a millionth. A wish for a conductivity with bases such as lime or dolomite on the shelf may not settle.
 *
 * <p>The volume that doses add is neglected, and all of a dose is taken to dissolve and nothing to drop: {@link #findings} says where that
 * is doubtful. Immutable and thread-safe.
 */
public final class Recipe {

    private final List<SourceShare> shares;
    private final List<RecipeDose> doses;
    private final Water water;
    private final Water blend;
    private final List<Residual<?>> residuals;
    private final List<Conflict> conflicts;

    Recipe(
            List<String> names,
            WaterQuantity<Volume> volume,
            Setting setting,
            double[] solution,
            List<Goal<?>> goals,
            List<Conflict> conflicts) {
        double litres = volume.in(WaterUnits.LITRE);
        int waters = names.size();
        List<SourceShare> parts = new ArrayList<>();
        for (int i = 0; i < waters; i++) {
            double share = Math.min(1, solution[i]); // rounding must not lead out of the range
            parts.add(new SourceShare(
                    names.get(i), setting.waters().get(i), share, WaterUnits.volume(volume.multiply(share))));
        }
        List<RecipeDose> dosed = new ArrayList<>();
        for (int i = waters; i < solution.length; i++) {
            if (solution[i] > 0) {
                ShelfItem item = setting.shelf().get(i - waters);
                WaterQuantity<Mass> mass = WaterUnits.mass(solution[i] * litres, WaterUnits.GRAM);
                dosed.add(new RecipeDose(Dosing.of(item.compound(), mass, volume), item.stock(), volume));
            }
        }
        this.shares = List.copyOf(parts);
        this.doses = List.copyOf(dosed);
        this.blend = setting.blend(solution);
        this.water = treated(blend, doses, RecipeDose::dosing);
        this.residuals = goals.stream()
                .<Residual<?>>map(goal -> Residual.of(goal, setting, water))
                .toList();
        this.conflicts = conflicts;
    }

    /**
     * Returns a builder for a recipe with one water.
     *
     * @param water what the doses go into; with its inorganic carbon or a measured pH, if the recipe shall have a pH
     * @param volume net volume of the water; above 0
     * @return a builder
     * @throws IllegalArgumentException if the volume is out of range
     */
    public static RecipeBuilder builder(Water water, Quantity<Volume> volume) {
        return blending(volume).source("the water", water);
    }

    /**
     * Returns a builder for a recipe with shares of several waters.
     *
     * @param volume net volume of the blend; above 0
     * @return a builder, which takes waters by {@link RecipeBuilder#source}
     * @throws IllegalArgumentException if the volume is out of range
     */
    public static RecipeBuilder blending(Quantity<Volume> volume) {
        WaterQuantity<Volume> stated = WaterUnits.volume(volume);
        if (!(stated.in(WaterUnits.LITRE) > 0)) {
            throw new IllegalArgumentException("volume of a recipe must be positive, but was " + stated);
        }
        return new RecipeBuilder(stated);
    }

    /**
     * Returns how much of each water to take.
     *
     * @return one for each water, in their order; shares add up to 1
     */
    public List<SourceShare> shares() {
        return shares;
    }

    /**
     * Returns what to dose.
     *
     * @return one for each compound that is needed, in the order of their names
     */
    public List<RecipeDose> doses() {
        return doses;
    }

    /**
     * Returns the water that results.
     *
     * @return the blend with all doses
     */
    public Water water() {
        return water;
    }

    /**
     * Returns the water if every level teaspoon holds as little as its uncertainty allows; doses without a teaspoon are weighed.
     *
     * @return the water in which whatever all doses raise is least
     */
    public Water leastByTeaspoons() {
        return byTeaspoons(Dosing::least);
    }

    /**
     * Returns the water if every level teaspoon holds as much as its uncertainty allows; doses without a teaspoon are weighed.
     *
     * @return the water in which whatever all doses raise is most
     */
    public Water mostByTeaspoons() {
        return byTeaspoons(Dosing::most);
    }

    private Water byTeaspoons(UnaryOperator<Dosing> end) {
        return treated(blend, doses, dose -> end.apply(dose.byTeaspoons().orElse(dose.dosing())));
    }

    private static Water treated(Water blend, List<RecipeDose> doses, Function<RecipeDose, Dosing> as) {
        Water water = blend;
        for (RecipeDose dose : doses) {
            water = as.apply(dose).treat(water);
        }
        return water;
    }

    /**
     * Tells how every target came out.
     *
     * @return one for each target, in the order in which they were stated
     */
    public List<Residual<?>> residuals() {
        return residuals;
    }

    /**
     * Tells whether all targets are met that must be.
     *
     * @return false if one is missed; targets to come near to do not count
     */
    public boolean isMet() {
        return residuals.stream().allMatch(r -> r.target().aim() == Aim.NEAR || r.isMet());
    }

    /**
     * Returns which targets fight.
     *
     * @return irreducible conflicts that share no target; more may come to light when these are resolved; empty if all can be met
     */
    public List<Conflict> conflicts() {
        return conflicts;
    }

    /**
     * Returns pH, saturation and conductivity of the water, closed to the air.
     *
     * @return the condition; without pH if a water that was used states neither carbon nor a pH
     */
    public WaterCondition closed() {
        return WaterCondition.of(water);
    }

    /**
     * Returns pH, saturation and conductivity of the water after it has come to equilibrium with outdoor air, whatever its carbon.
     *
     * @return the condition; empty if the equilibrium cannot be computed
     */
    public Optional<WaterCondition> openToAir() {
        try {
            return Optional.of(WaterCondition.of(GasExchange.equilibrated(water, GasExchange.OUTDOOR_AIR)));
        } catch (NoAnswerException | IllegalArgumentException beyondTheModel) {
            return Optional.empty();
        }
    }

    /**
     * Returns what to mind: what does not dissolve, may drop, must not share a bottle, and the cautions of the compounds.
     *
     * @return findings; possibly empty
     */
    public List<RecipeFinding> findings() {
        return RecipeFindings.of(this);
    }

    /** Returns waters, doses and how the targets came out, for people. */
    @Override
    public String toString() {
        Stream<String> parts = Stream.concat(
                shares.size() > 1
                        ? shares.stream().filter(part -> part.share() > 0).map(SourceShare::toString)
                        : Stream.of(),
                doses.stream().map(RecipeDose::toString));
        String all = parts.collect(Collectors.joining(", "));
        return (all.isEmpty() ? "nothing to dose" : all)
                + residuals.stream().map(r -> "; " + r).collect(Collectors.joining());
    }
}
