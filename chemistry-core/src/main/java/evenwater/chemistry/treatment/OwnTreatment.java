package evenwater.chemistry.treatment;

import evenwater.chemistry.water.Water;
import java.util.Objects;
import java.util.function.UnaryOperator;

/** A treatment by a function. */
record OwnTreatment(String name, UnaryOperator<Water> function) implements Treatment {

    OwnTreatment {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(function, "treat");
    }

    @Override
    public Water treat(Water source) {
        return Objects.requireNonNull(function.apply(Objects.requireNonNull(source, "source")), "water behind " + name);
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name;
    }
}
