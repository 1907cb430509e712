package evenwater.chemistry.uncertainty;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** The declared inputs of a computation, in their order. */
final class Inputs {

    /** A mistake of the caller, not a draw without an answer: it is not counted but thrown. */
    static final class UndeclaredInputException extends IllegalArgumentException {

        private static final long serialVersionUID = 1L;

        private UndeclaredInputException(String message) {
            super(message);
        }
    }

    private final List<Uncertain<?>> list;
    private final IdentityHashMap<Uncertain<?>, Integer> places = new IdentityHashMap<>();

    Inputs(List<? extends Uncertain<?>> declared) {
        Objects.requireNonNull(declared, "inputs");
        this.list = List.copyOf(declared);
        for (Uncertain<?> input : list) {
            if (places.put(input, places.size()) != null) {
                throw new IllegalArgumentException("input '" + input.name() + "' must be declared once");
            }
        }
    }

    List<Uncertain<?>> list() {
        return list;
    }

    int placeOf(Uncertain<?> input) {
        Integer place = places.get(input);
        if (place == null) {
            String declared = list.stream().map(Uncertain::name).collect(Collectors.joining(", "));
            throw new UndeclaredInputException("input '" + input.name() + "' was not declared; declared "
                    + (list.isEmpty() ? "was none" : "were " + declared));
        }
        return place;
    }

    /** Draws all inputs in their order, whichever of them the computation asks for. */
    Draw draw(SplittableRandom random) {
        double[] numbers = new double[list.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = list.get(i).knowledge().draw(random);
        }
        return new Draw(this, numbers);
    }

    /** All inputs at their expectations. */
    double[] expectations() {
        return list.stream()
                .mapToDouble(input -> input.knowledge().expectation())
                .toArray();
    }
}
