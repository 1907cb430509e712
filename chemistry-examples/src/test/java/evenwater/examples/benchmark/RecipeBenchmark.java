package evenwater.examples.benchmark;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.recipe.IonRatio;
import evenwater.chemistry.recipe.Recipe;
import evenwater.chemistry.recipe.RecipeBuilder;
import evenwater.chemistry.recipe.Target;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What it costs to find a recipe: a usual one, a large one, and the same with a conductivity, which is not linear. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(
        value = 1,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m", "-XX:+AlwaysPreTouch"})
public class RecipeBenchmark {

    /** The first twenty of the built-in compounds. */
    private static final Compound[] LARGE_SHELF =
            Compound.all().stream().limit(20).toArray(Compound[]::new);

    private static RecipeBuilder small() {
        return Recipe.builder(Water.pure(), WaterUnits.volume(60, WaterUnits.LITRE))
                .hardness(Target.exactly(Hardness.of(6, Hardness.GERMAN_DEGREE)))
                .alkalinity(Target.exactly(Alkalinity.of(4, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS)))
                .ratio(Target.near(IonRatio.byAmount(Ion.CALCIUM, Ion.MAGNESIUM, 3)))
                .total(Ion.POTASSIUM, Target.near(millimoles(0.2)))
                .shelf(
                        Compound.CALCIUM_CHLORIDE_DIHYDRATE,
                        Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE,
                        Compound.SODIUM_BICARBONATE,
                        Compound.POTASSIUM_BICARBONATE);
    }

    private static RecipeBuilder large() {
        return Recipe.builder(Water.pure(), WaterUnits.volume(60, WaterUnits.LITRE))
                .hardness(Target.exactly(Hardness.of(6, Hardness.GERMAN_DEGREE)))
                .alkalinity(Target.atLeast(Alkalinity.of(4, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS)))
                .alkalinity(Target.near(Alkalinity.of(5, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS)))
                .ratio(Target.near(IonRatio.byAmount(Ion.CALCIUM, Ion.MAGNESIUM, 3)))
                .ratio(Target.near(IonRatio.byMass(Ion.CHLORIDE, Ion.SULFATE, 0.5), 2))
                .total(Ion.POTASSIUM, Target.near(millimoles(0.2)))
                .total(Ion.SODIUM, Target.atMost(millimoles(1)))
                .total(Ion.CHLORIDE, Target.atMost(millimoles(1)))
                .total(Ion.NITRATE, Target.near(millimoles(0.1)))
                .total(Ion.SULFATE, Target.near(millimoles(0.5)))
                .shelf(LARGE_SHELF);
    }

    private static RecipeBuilder withConductivity(RecipeBuilder builder) {
        return builder.conductivity(Target.atMost(Conductivity.of(400, Conductivity.MICROSIEMENS_PER_CENTIMETRE)));
    }

    private static AmountConcentration millimoles(double value) {
        return AmountConcentration.of(value, AmountConcentration.MILLIMOLE_PER_LITRE);
    }

    /** 4 compounds, 4 targets. */
    @Benchmark
    public Recipe fourTargets() {
        return small().solve();
    }

    /** 4 compounds, 4 targets and a limit of conductivity. */
    @Benchmark
    public Recipe fourTargetsAndConductivity() {
        return withConductivity(small()).solve();
    }

    /** 20 compounds, 10 targets. */
    @Benchmark
    public Recipe tenTargets() {
        return large().solve();
    }

    /** 20 compounds, 10 targets and a limit of conductivity. */
    @Benchmark
    public Recipe tenTargetsAndConductivity() {
        return withConductivity(large()).solve();
    }
}
