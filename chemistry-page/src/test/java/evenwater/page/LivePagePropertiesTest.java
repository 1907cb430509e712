package evenwater.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

class LivePagePropertiesTest {

    @Property(tries = 2000)
    void anyEntriesGetFiguresOrProblems(@ForAll("parts") String part, @ForAll("entered") List<String> texts) {
        Map<String, String> entries = new HashMap<>();
        int i = 0;
        for (Control control : partOf(part).controls()) {
            if (control instanceof Control.NumberField field) {
                entries.put(field.id(), texts.get(i++));
                entries.put(field.unitId(), pick(field.units(), texts.get(i++)));
            } else if (control instanceof Control.Choice choice) {
                entries.put(choice.id(), pick(choice.options(), texts.get(i++)));
            }
        }
        Answer answer = LivePage.answer(part, entries);
        assertEquals(answer.problems().isEmpty(), !answer.tables().isEmpty(), entries.toString());
        assertFalse(answer.summary().contains("NaN"), answer.summary());
        for (Problem problem : answer.problems()) {
            assertFalse(problem.message().contains("NaN"), problem.message());
            assertFalse(problem.message().contains("Infinity"), problem.message());
            assertFalse(problem.message().contains("null"), problem.message());
        }
    }

    @Property
    void ordinaryWatersHaveStepsToTheirFigures(
            @ForAll("ordinary") double hardness, @ForAll("ordinary") double other, @ForAll("ordinary") double sodium) {
        Map<String, String> softening = Map.of("raw", hardness + "", "leakage", "0.2", "sodium", sodium + "");
        Map<String, String> blend =
                Map.of("hardness", hardness + "", "other-hardness", other + "", "sodium", sodium + "");
        Map<String, String> gas = Map.of("alkalinity", other + "", "ph", 5.5 + hardness / 10 + "");
        assertEquals(1, LivePage.answer("softening", softening).solutions().size());
        assertEquals(1, LivePage.answer("blend", blend).solutions().size());
        assertEquals(1, LivePage.answer("carbon-dioxide", gas).solutions().size());
    }

    @Provide
    Arbitrary<Double> ordinary() {
        return Arbitraries.doubles().between(1, 40).ofScale(3);
    }

    @Property
    void aScaleLeadsBackToWhatWasStated(
            @ForAll("numbers") double value, @ForAll("hardnessUnits") String from, @ForAll("hardnessUnits") String to) {
        Figure there = hardnessIn(to, Double.toString(value), from);
        Figure back = hardnessIn(from, Double.toString(there.value()), to);
        assertEquals(value, back.value(), Math.abs(value) * 1e-14); // two conversions, four roundings each
    }

    private static Figure hardnessIn(String unit, String value, String statedIn) {
        return LivePage.answer("scales", Map.of("hardness", value, "hardness-unit", statedIn))
                .figure("hardness in " + unit)
                .orElseThrow();
    }

    @Property
    void theRoundedTextIsNearTheValue(@ForAll("numbers") double value) {
        String text = PlainNumber.rounded(value, 4);
        assertTrue(PlainNumber.isWellFormed(text), text);
        assertEquals(value, Double.parseDouble(text), Math.abs(value) * 5.01e-4); // half of the fourth digit of 1000
    }

    private static Part partOf(String id) {
        return LivePage.PARTS.stream()
                .filter(part -> part.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String pick(List<Control.Option> options, String seed) {
        return options.get(Math.floorMod(seed.hashCode(), options.size())).value();
    }

    @Provide
    Arbitrary<String> parts() {
        return Arbitraries.of(LivePage.parts());
    }

    /** Numbers that people write, numbers that nobody writes, and no numbers. */
    @Provide
    Arbitrary<List<String>> entered() {
        Arbitrary<String> usual =
                Arbitraries.doubles().between(0, 40).ofScale(3).map(String::valueOf);
        Arbitrary<String> odd = Arbitraries.of(
                "0",
                "-0",
                "-1",
                "1e300",
                "1e9",
                "1e8",
                "-1e300",
                "1e-300",
                "4.9e-324",
                "1e17",
                "1e5",
                "3000",
                "14",
                "100",
                "0.5",
                "+7",
                "1e-9");
        Arbitrary<String> any = Arbitraries.strings().ascii().ofMaxLength(6);
        return Arbitraries.frequencyOf(Tuple.of(10, usual), Tuple.of(6, odd), Tuple.of(1, any))
                .list()
                .ofSize(24);
    }

    @Provide
    Arbitrary<Double> numbers() {
        return Arbitraries.doubles().between(0.001, 5000).ofScale(6);
    }

    @Provide
    Arbitrary<String> hardnessUnits() {
        return Arbitraries.of(
                UnitOptions.HARDNESS.stream().map(Control.Option::value).toList());
    }
}
