package evenwater.chemistry.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Blending;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Stage;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import javax.measure.Unit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The text of the steps, read by an evaluator that knows nothing of the library, gives the answer. */
class WorkedPropertiesTest {

    /** All digits are in the text; what is left are the roundings of some ten operations. */
    private static final double ROUNDING = 1e-11;

    @Property(tries = 300)
    void softening(
            @ForAll("waters") Water source,
            @ForAll("shares") double leaks,
            @ForAll("shares") double wanted,
            @ForAll("scales") Unit<Hardness> scale,
            @ForAll boolean potassium,
            @ForAll boolean blended) {
        Softener softener = (potassium ? Softener.withPotassium() : Softener.withSodium())
                .leaking(Hardness.from(source.hardness().multiply(leaks)));
        if (blended) {
            softener = softener.bypassFor(
                    Hardness.from(source.hardness().multiply(leaks + (1 - leaks) * Math.max(1e-6, wanted))));
        }
        Worked<Stage> worked = WorkedSolutions.softening(softener, source, scale);
        holds(worked);
        assertEquals(softener.treat(source), worked.answer().after());
        Unit<AmountConcentration> unit = softener.regenerant().milligramPerLitre();
        assertEquals(
                softener.treat(source).total(softener.regenerant()).in(unit),
                worked.results().get(0).value());
    }

    @Property(tries = 300)
    void blending(
            @ForAll("waters") Water one,
            @ForAll("waters") Water other,
            @ForAll("shares") double share,
            @ForAll("scales") Unit<Hardness> scale,
            @ForAll boolean wanted) {
        Hardness between = Hardness.from(one.mixedWith(other, share).hardness());
        Blending blending = wanted ? Blending.reaching(between, other) : Blending.with(other, share);
        Worked<Stage> worked = WorkedSolutions.blending(blending, one, scale);
        holds(worked);
        assertEquals(blending.treat(one), worked.answer().after());
    }

    @Property(tries = 300)
    void dosing(
            @ForAll("compounds") Compound compound, @ForAll("shares") double grams, @ForAll("volumes") String volume) {
        Dosing dosing =
                Dosing.of(compound, WaterUnits.mass(100 * grams, WaterUnits.GRAM), WaterUnits.parseVolume(volume));
        Worked<Change> worked = WorkedSolutions.dosing(dosing);
        holds(worked);
        for (Result result : worked.results()) {
            dosing.change().ions().stream()
                    .filter(ion -> ion.name().equals(result.name()))
                    .forEach(ion -> assertEquals(
                            dosing.change().total(ion).in(ion.milligramPerLitre()),
                            result.value(),
                            1e-12 * Math.abs(result.value())));
        }
    }

    @Property(tries = 200)
    void raising(
            @ForAll("compounds") Compound compound, @ForAll("shares") double rise, @ForAll("volumes") String volume) {
        boolean hardens =
                compound.ions().containsKey(Ion.CALCIUM) || compound.ions().containsKey(Ion.MAGNESIUM);
        double buffers = Dosing.of(compound, WaterUnits.mass(1, WaterUnits.GRAM), WaterUnits.parseVolume("1 L"))
                .change()
                .alkalinity()
                .getValue();
        if (hardens) {
            holds(WorkedSolutions.raisingHardness(
                    compound, Hardness.of(20 * rise, Hardness.GERMAN_DEGREE), WaterUnits.parseVolume(volume)));
        }
        if (buffers != 0) {
            holds(WorkedSolutions.raisingAlkalinity(
                    compound,
                    Alkalinity.of(Math.signum(buffers) * 9 * rise, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS),
                    WaterUnits.parseVolume(volume)));
        }
    }

    @Property(tries = 200)
    void waters(@ForAll("waters") Water water, @ForAll("scales") Unit<Hardness> scale) {
        holds(WorkedSolutions.ionBalance(water));
        holds(WorkedSolutions.hardness(water, scale));
        holds(WorkedSolutions.carbonDioxide(Speciation.of(water)));
    }

    @Property(tries = 300)
    void conversions(
            @ForAll("numbers") double value,
            @ForAll("scales") Unit<Hardness> from,
            @ForAll("scales") Unit<Hardness> to) {
        holds(WorkedSolutions.conversion(Hardness.of(value, from), to));
    }

    private static void holds(Worked<?> worked) {
        assertFalse(worked.steps().isEmpty());
        for (Step step : worked.steps()) {
            holds(step);
        }
        for (Mistake mistake : worked.mistakes()) {
            holds(mistake.step());
        }
    }

    private static void holds(Step step) {
        String text = step.calculation(17);
        double size = Math.max(step.size(), Math.abs(step.result()));
        assertEquals(step.result(), TextEvaluator.leftSide(text), ROUNDING * size, text);
        assertEquals(step.result(), TextEvaluator.rightSide(text), 1e-15 * Math.abs(step.result()), text);
        // and to the digits of a pocket calculator
        String rounded = step.calculation(8);
        assertEquals(step.result(), TextEvaluator.leftSide(rounded), 1e-6 * size, rounded);
    }

    @Provide
    Arbitrary<Water> waters() {
        return Combinators.combine(
                        number(1, 200), number(1, 60), number(1, 150), number(1, 150), number(0.2, 8), number(6.2, 8.8))
                .as((calcium, magnesium, sodium, chloride, alkalinity, pH) -> Water.builder()
                        .total(Ion.CALCIUM, AmountConcentration.of(calcium, Ion.CALCIUM.milligramPerLitre()))
                        .total(Ion.MAGNESIUM, AmountConcentration.of(magnesium, Ion.MAGNESIUM.milligramPerLitre()))
                        .total(Ion.SODIUM, AmountConcentration.of(sodium, Ion.SODIUM.milligramPerLitre()))
                        .total(Ion.CHLORIDE, AmountConcentration.of(chloride, Ion.CHLORIDE.milligramPerLitre()))
                        .alkalinity(Alkalinity.of(alkalinity, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                        .measuredPH(pH)
                        .build());
    }

    private static Arbitrary<Double> number(double least, double most) {
        return Arbitraries.doubles().between(least, most).ofScale(6);
    }

    @Provide
    Arbitrary<Double> numbers() {
        return number(-1000, 100_000);
    }

    @Provide
    Arbitrary<Double> shares() {
        return number(0, 1);
    }

    @Provide
    Arbitrary<Unit<Hardness>> scales() {
        return Arbitraries.of(Hardness.units());
    }

    @Provide
    Arbitrary<Compound> compounds() {
        return Combinators.combine(Arbitraries.of(Compound.all()), number(0.5, 1), Arbitraries.of(true, false))
                .as((compound, strength, pure) -> pure ? compound : compound.ofStrength(strength));
    }

    @Provide
    Arbitrary<String> volumes() {
        return Arbitraries.of("100 L", "40 gal(US)", "12.5 gal(imp)", "3 m³", "750 mL");
    }
}
