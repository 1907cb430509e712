package evenwater.chemistry.recipe;

import static evenwater.chemistry.quantity.WaterUnits.GRAM;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.testing.Amounts.litres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of recipes: none is better, and nothing hangs on units, volume, scale or order. */
class RecipePropertiesTest {

    private static final double LITRES = 50;

    /** Doses and shares that are held against those of a recipe. */
    private static final int OTHERS = Integer.getInteger("recipe.others", 200);

    private static final List<Compound> COMPOUNDS = List.of(
            Compound.CALCIUM_CHLORIDE_DIHYDRATE,
            Compound.CALCIUM_SULFATE_DIHYDRATE,
            Compound.CALCIUM_HYDROXIDE,
            Compound.MAGNESIUM_CHLORIDE_HEXAHYDRATE,
            Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE,
            Compound.DOLOMITE,
            Compound.SODIUM_BICARBONATE,
            Compound.POTASSIUM_BICARBONATE,
            Compound.POTASSIUM_CHLORIDE,
            Compound.SODIUM_SULFATE,
            Compound.POTASSIUM_NITRATE,
            Compound.HYDROCHLORIC_ACID.ofStrength(0.37),
            Compound.SULFURIC_ACID);

    /** What a recipe is about, to be stated in several ways. */
    record Problem(List<Water> waters, Set<Compound> shelf, List<Wish> wishes) {

        RecipeBuilder builder(double litres, double factor) {
            RecipeBuilder builder = shelfAndWaters(litres, factor);
            wishes.forEach(wish -> wish.addTo(builder, factor));
            return builder;
        }

        RecipeBuilder shelfAndWaters(double litres, double factor) {
            RecipeBuilder builder = Recipe.blending(litres(litres));
            for (int i = 0; i < waters.size(); i++) {
                Water water = waters.get(i);
                builder.source("water " + i, factor < 1 ? water.dilutedBy(1 / factor) : water.concentratedBy(factor));
            }
            return builder.shelf(shelf.toArray(Compound[]::new));
        }

        Recipe solved() {
            return builder(LITRES, 1).solve();
        }
    }

    @Provide
    Arbitrary<Problem> problems() {
        Arbitrary<Water> waters = Arbitraries.oneOf(Arbitraries.just(Water.pure()), Waters.natural())
                .map(water -> water.dilutedBy(1)); // without a measured pH, which is a reading of one water
        return Combinators.combine(
                        waters.list().ofMinSize(1).ofMaxSize(3),
                        Arbitraries.of(COMPOUNDS).set().ofMaxSize(8),
                        Wish.any().list().ofMinSize(1).ofMaxSize(7))
                .as(Problem::new)
                .withoutEdgeCases();
    }

    /** Rank by rank: misses of what must be met, weighted misses of wishes, mass per litre. */
    private static double[] ranks(Recipe recipe) {
        return new double[] {
            sum(recipe, false),
            sum(recipe, true),
            recipe.doses().stream().mapToDouble(dose -> dose.mass().in(GRAM)).sum()
                    / recipe.shares().stream()
                            .mapToDouble(s -> s.volume().in(LITRE))
                            .sum()
        };
    }

    private static double sum(Recipe recipe, boolean wishes) {
        return recipe.residuals().stream()
                .filter(r -> (r.target().aim() == Aim.NEAR) == wishes)
                .mapToDouble(r -> r.target().weight() * r.relativeMiss())
                .sum();
    }

    /** Whether one is better than another at some rank by more than rounding and what the tiny losses at earlier ranks could buy. */
    private static boolean isBetter(double[] one, double[] other) {
        for (int i = 0; i < one.length; i++) {
            double size = Math.max(1, Math.abs(other[i]));
            if (one[i] > other[i] + 1e-10 * size) {
                return false;
            }
            if (one[i] < other[i] - 1e-8 * size) {
                return true;
            }
        }
        return false;
    }

    private static void assertAlike(Recipe expected, Recipe actual, double massFactor) {
        double[] one = ranks(expected);
        double[] other = ranks(actual);
        other[2] /= massFactor;
        for (int i = 0; i < one.length; i++) {
            assertEquals(
                    one[i], other[i], 1e-8 * Math.max(1, one[i]), "rank " + i + " of " + expected + " and " + actual);
        }
    }

    /** A longer run: {@code -Djqwik.tries.default=5000 -Drecipe.others=500}. */
    @Property
    void noOtherDosesAndSharesAreBetter(@ForAll("problems") Problem problem, @ForAll Random random) {
        Recipe best = problem.solved();
        List<Goal<?>> goals = problem.wishes().stream().<Goal<?>>map(Wish::goal).toList();
        List<ShelfItem> shelf = problem.shelf().stream()
                .sorted(Comparator.comparing(Compound::name))
                .<ShelfItem>map(ShelfItem::of)
                .toList();
        LinearRanks linear = LinearRanks.of(Setting.of(problem.waters(), shelf, goals), goals);
        double[] found = solution(best, shelf);
        double[] ranks = ranks(best);
        double[] again = linear.of(found);
        for (int i = 0; i < ranks.length; i++) {
            assertEquals(ranks[i], again[i], 1e-9 * Math.max(1, ranks[i]), () -> "ranks of " + best);
        }
        for (int i = 0; i < OTHERS; i++) {
            double[] tried = changed(found, problem.waters().size(), i % 2 == 0 ? 1 : 1e-3, random);
            assertTrue(!isBetter(linear.of(tried), ranks), () -> Arrays.toString(tried) + " is better than " + best);
        }
    }

    private static double[] solution(Recipe recipe, List<ShelfItem> shelf) {
        return DoubleStream.concat(
                        recipe.shares().stream().mapToDouble(SourceShare::share),
                        shelf.stream()
                                .mapToDouble(item -> recipe.doses().stream()
                                        .filter(dose -> dose.compound().equals(item.compound()))
                                        .mapToDouble(dose -> dose.mass().in(GRAM) / LITRES)
                                        .sum()))
                .toArray();
    }

    /** One or two variables a little or much up or down, none below 0, shares made 1 again. */
    private static double[] changed(double[] solution, int waters, double size, Random random) {
        double[] changed = solution.clone();
        for (int n = random.nextInt(3); n >= 0; n--) {
            int i = random.nextInt(changed.length);
            double unit = i < waters ? 1 : 0.3; // g/L
            changed[i] = Math.max(0, changed[i] + size * unit * (random.nextDouble() - 0.5));
        }
        double sum = 0;
        for (int i = 0; i < waters; i++) {
            sum += changed[i];
        }
        for (int i = 0; i < waters; i++) {
            changed[i] = sum == 0 ? 1.0 / waters : changed[i] / sum;
        }
        return changed;
    }

    @Property(tries = 60)
    void sharesAndDosesAreNeverNegative(@ForAll("problems") Problem problem) {
        Recipe recipe = problem.solved();
        recipe.doses().forEach(dose -> assertTrue(dose.mass().in(GRAM) > 0, dose.toString()));
        assertEquals(1, recipe.shares().stream().mapToDouble(SourceShare::share).sum(), 1e-11, recipe.toString());
        assertEquals(recipe.isMet(), recipe.conflicts().isEmpty(), () -> recipe + " " + recipe.conflicts());
    }

    @Property(tries = 50)
    void theVolumeOnlyScalesTheDoses(@ForAll("problems") Problem problem, @ForAll("volumes") double litres) {
        assertAlike(problem.solved(), problem.builder(litres, 1).solve(), 1);
    }

    @Provide
    Arbitrary<Double> volumes() {
        return Arbitraries.of(1e-6, 0.3, 7.0, 1e9, 1e200);
    }

    @Property(tries = 50)
    void theScaleOfAllConcentrationsOnlyScalesTheDoses(
            @ForAll("problems") Problem problem, @ForAll("factors") double factor) {
        assertAlike(problem.solved(), problem.builder(LITRES, factor).solve(), factor);
    }

    @Provide
    Arbitrary<Double> factors() {
        return Arbitraries.of(1e-6, 1.0 / 3, 3.0, 1e3);
    }

    @Property(tries = 50)
    void unitsMakeNoDifference(@ForAll("problems") Problem problem) {
        RecipeBuilder builder = problem.shelfAndWaters(LITRES, 1);
        problem.wishes().forEach(wish -> wish.addInOtherUnits(builder));
        assertAlike(problem.solved(), builder.solve(), 1);
    }

    @Property(tries = 50)
    void theOrderOfTargetsAndShelfMakesNoDifference(@ForAll("problems") Problem problem, @ForAll Random random) {
        RecipeBuilder builder = Recipe.blending(litres(LITRES));
        for (int i = 0; i < problem.waters().size(); i++) {
            builder.source("water " + i, problem.waters().get(i));
        }
        List<Compound> shelf = new ArrayList<>(problem.shelf());
        Collections.shuffle(shelf, random);
        shelf.forEach(builder::shelf);
        List<Wish> wishes = new ArrayList<>(problem.wishes());
        Collections.shuffle(wishes, random);
        wishes.forEach(wish -> wish.addTo(builder, 1));
        Recipe shuffled = builder.solve();
        Recipe recipe = problem.solved();
        assertEquals(recipe.water(), shuffled.water());
        assertEquals(recipe.shares(), shuffled.shares());
        assertEquals(recipe.conflicts(), shuffled.conflicts());
    }

    /** Each conflict cannot be met, and without any one of its targets it can. */
    @Property(tries = 50)
    void conflictsAreIrreducible(@ForAll("problems") Problem problem) {
        for (Conflict conflict : problem.solved().conflicts()) {
            List<Wish> fighting = new ArrayList<>();
            for (String target : conflict.targets()) {
                fighting.add(problem.wishes().stream()
                        .filter(wish -> wish.goal().toString().equals(target) && !fighting.contains(wish))
                        .findFirst()
                        .orElseThrow());
            }
            assertTrue(!met(problem, fighting), () -> conflict + " can be met");
            for (Wish wish : fighting) {
                List<Wish> fewer = new ArrayList<>(fighting);
                fewer.remove(wish);
                assertTrue(met(problem, fewer), () -> fewer + " cannot be met");
            }
        }
    }

    private static boolean met(Problem problem, List<Wish> wishes) {
        return new Problem(problem.waters(), problem.shelf(), wishes).solved().isMet();
    }
}
