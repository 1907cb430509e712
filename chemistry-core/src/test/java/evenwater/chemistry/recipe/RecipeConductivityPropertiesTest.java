package evenwater.chemistry.recipe;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.litres;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Water;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A wish for the least conductivity: a water of two salts may conduct more than both, so the search must not stop at the nearest. */
class RecipeConductivityPropertiesTest {

    private static final Conductivity NONE = Conductivity.of(0, MICROSIEMENS_PER_CENTIMETRE);

    @Property(tries = 40)
    void noSaltAloneConductsLess(
            @ForAll("waters") Water water,
            @ForAll("shelves") Set<Compound> shelf,
            @ForAll("amounts") double millimoles) {
        Recipe best = builder(water, millimoles)
                .conductivity(Target.near(NONE))
                .shelf(shelf.toArray(Compound[]::new))
                .solve();
        for (Compound salt : shelf) {
            Water other = builder(water, millimoles).shelf(salt).solve().water();
            assertTrue(
                    conductivity(best.water()) <= conductivity(other) * (1 + 1e-6),
                    () -> salt + " conducts less than " + best);
        }
    }

    private static RecipeBuilder builder(Water water, double millimoles) {
        double there = water.hardness().in(Hardness.MILLIMOLE_PER_LITRE);
        return Recipe.builder(water, litres(10)).hardness(Target.exactly(hardness(there + millimoles)));
    }

    private static double conductivity(Water water) {
        return CalculatedConductivity.at25Celsius(water).in(MICROSIEMENS_PER_CENTIMETRE);
    }

    @Provide
    Arbitrary<Water> waters() {
        return Arbitraries.oneOf(
                Arbitraries.just(Water.pure()),
                Waters.natural().map(water -> water.dilutedBy(10)).filter(water -> {
                    try {
                        return conductivity(water) > 0;
                    } catch (NoAnswerException contradiction) {
                        return false;
                    }
                }));
    }

    @Provide
    Arbitrary<Set<Compound>> shelves() {
        return Arbitraries.of(
                        Compound.CALCIUM_CHLORIDE_DIHYDRATE,
                        Compound.CALCIUM_SULFATE_DIHYDRATE,
                        Compound.CALCIUM_NITRATE_TETRAHYDRATE,
                        Compound.MAGNESIUM_CHLORIDE_HEXAHYDRATE,
                        Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE)
                .set()
                .ofMinSize(2);
    }

    @Provide
    Arbitrary<Double> amounts() {
        return Arbitraries.doubles().between(0.1, 10).ofScale(6);
    }
}
