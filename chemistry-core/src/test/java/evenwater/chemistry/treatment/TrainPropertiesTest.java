package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.elementsOf;
import static evenwater.chemistry.testing.Amounts.grams;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.of;
import static evenwater.chemistry.testing.Amounts.unmeasuredOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of trains of random treatments, and of their ledgers. */
class TrainPropertiesTest {

    @Provide
    Arbitrary<Water> waters() {
        return Waters.any();
    }

    @Provide
    Arbitrary<List<Treatment>> treatments() {
        return treatment().list().ofMaxSize(6);
    }

    @Provide
    Arbitrary<Treatment> treatment() {
        Arbitrary<Double> share = Waters.shares();
        Arbitrary<Treatment> softener = share.map(s -> Softener.withSodium().leaking(hardness(s)));
        Arbitrary<Treatment> bypass = share.map(s -> Softener.withPotassium().bypassFor(hardness(s)));
        Arbitrary<Treatment> blend = Combinators.combine(Waters.any(), share).as(Blending::with);
        Arbitrary<Treatment> toHardness =
                Combinators.combine(share, Waters.any()).as((s, other) -> Blending.reaching(hardness(3 * s), other));
        Arbitrary<Treatment> dilution = share.map(Blending::withPureWater);
        Arbitrary<Treatment> dosing = Combinators.combine(Arbitraries.of(Compound.all()), share)
                .as((compound, s) -> Dosing.of(compound, grams(s), litres(5)));
        Arbitrary<Treatment> membrane =
                Combinators.combine(share, share).as((one, many) -> ReverseOsmosis.rejecting(one, many));
        return Arbitraries.oneOf(softener, bypass, blend, toHardness, dilution, dosing, membrane)
                .withoutEdgeCases();
    }

    /** The ledger, or nothing where a treatment has no answer; then treating has none either. */
    private static Optional<Ledger> run(Train train, Water source) {
        try {
            return Optional.of(train.run(source));
        } catch (NoAnswerException e) {
            NoAnswerException same = assertThrows(NoAnswerException.class, () -> train.treat(source));
            assertEquals(e.getMessage(), same.getMessage());
            return Optional.empty();
        }
    }

    /** What the books turn over, in mmol/L and meq/L, with room for carbon. */
    private static double turnover(Ledger ledger) {
        double sum = chargesIn(ledger.source()) + 20;
        for (Stage stage : ledger.stages()) {
            sum += chargesIn(stage.change()) + 20;
        }
        return sum;
    }

    @Property
    void runningIsTreatingOneAfterTheOther(
            @ForAll("treatments") List<Treatment> treatments, @ForAll("waters") Water source) {
        Train train = Train.of(treatments);
        run(train, source).ifPresent(ledger -> {
            Water water = source;
            for (int i = 0; i < treatments.size(); i++) {
                Stage stage = ledger.stages().get(i);
                assertEquals(treatments.get(i).name(), stage.name());
                assertSame(water, stage.before());
                water = treatments.get(i).treat(water);
                assertEquals(water, stage.after());
                water = stage.after();
            }
            assertEquals(treatments.size(), ledger.stages().size());
            assertEquals(water, ledger.result());
            assertEquals(water, train.treat(source));
        });
    }

    @Property
    void beforeAndChangeMakeAfterInEveryLineAndInTheSum(
            @ForAll("treatments") List<Treatment> treatments, @ForAll("waters") Water source) {
        run(Train.of(treatments), source).ifPresent(ledger -> {
            for (Stage stage : ledger.stages()) {
                assertAlike(stage.after(), stage.before().plus(stage.change()), 1e-14 * turnover(ledger));
            }
            assertAlike(ledger.result(), source.plus(ledger.change()), 1e-14 * turnover(ledger));
        });
    }

    private static void assertAlike(Water expected, Water actual, double rounding) {
        Set<Ion> ions = new TreeSet<>(expected.ions());
        ions.addAll(actual.ions());
        for (Ion ion : ions) {
            assertEquals(of(ion, expected), of(ion, actual), rounding, ion::symbol);
        }
        assertEquals(alkalinityOf(expected), alkalinityOf(actual), rounding);
        assertEquals(unmeasuredOf(expected), unmeasuredOf(actual), rounding);
    }

    @Property
    void chargesOfEveryLineAndOfTheSumCancel(
            @ForAll("treatments") List<Treatment> treatments, @ForAll("waters") Water source) {
        run(Train.of(treatments), source).ifPresent(ledger -> {
            for (Stage stage : ledger.stages()) {
                double charges = chargesIn(stage.before()) + chargesIn(stage.after());
                assertEquals(0, stage.change().netCharge().getValue(), 1e-12 * charges, stage::name);
                assertEquals(0, stage.after().netCharge().getValue(), 1e-12 * chargesIn(stage.after()), stage::name);
            }
            assertEquals(0, ledger.change().netCharge().getValue(), 1e-12 * turnover(ledger));
        });
    }

    @Property
    void everyElementIsInTheBooks(@ForAll("treatments") List<Treatment> treatments, @ForAll("waters") Water source) {
        run(Train.of(treatments), source).ifPresent(ledger -> {
            Water result = ledger.result();
            Set<Element> elements = EnumSet.noneOf(Element.class);
            elements.addAll(elementsOf(source).keySet());
            elements.addAll(elementsOf(result).keySet());
            if (source.carbon().isEmpty() || result.carbon().isEmpty()) {
                elements.remove(Element.CARBON);
            }
            for (Element element : elements) {
                double expected = elementsOf(source).getOrDefault(element, 0.0)
                        + elementsOf(ledger.change()).getOrDefault(element, 0.0);
                assertEquals(
                        expected,
                        elementsOf(result).getOrDefault(element, 0.0),
                        1e-14 * turnover(ledger),
                        element::symbol);
            }
        });
    }

    @Property
    void linesAddUpToTheSum(@ForAll("treatments") List<Treatment> treatments, @ForAll("waters") Water source) {
        run(Train.of(treatments), source).ifPresent(ledger -> {
            Change sum = Change.between(source, source);
            for (Stage stage : ledger.stages()) {
                sum = sum.plus(stage.change());
            }
            Set<Ion> ions = new TreeSet<>(sum.ions());
            ions.addAll(ledger.change().ions());
            for (Ion ion : ions) {
                assertEquals(of(ion, ledger.change()), of(ion, sum), 1e-14 * turnover(ledger), ion::symbol);
            }
            assertEquals(
                    ledger.change().alkalinity().getValue(), sum.alkalinity().getValue(), 1e-14 * turnover(ledger));
        });
    }

    @Property
    void onlyWhatScalesAWholeWaterMovesUnmeasuredCharge(
            @ForAll("treatments") List<Treatment> treatments, @ForAll("waters") Water source) {
        run(Train.of(treatments), source).ifPresent(ledger -> {
            for (int i = 0; i < treatments.size(); i++) {
                Stage stage = ledger.stages().get(i);
                if (treatments.get(i) instanceof Softener || treatments.get(i) instanceof Dosing) {
                    assertEquals(
                            stage.before().unmeasuredCharge(), stage.after().unmeasuredCharge());
                    assertEquals(0, stage.change().unmeasuredCharge().getValue());
                }
            }
        });
    }

    @Property
    void trainsOfTrainsAreTrains(
            @ForAll("treatments") List<Treatment> first,
            @ForAll("treatments") List<Treatment> second,
            @ForAll("waters") Water source) {
        Train nested = Train.of(Train.of(first), Train.of(second));
        run(nested, source).ifPresent(ledger -> {
            Train flat = Train.of(Stream.concat(first.stream(), second.stream()).toList());
            assertEquals(flat.treat(source), ledger.result());
            assertEquals(flat.run(source).change(), ledger.change());
        });
    }
}
