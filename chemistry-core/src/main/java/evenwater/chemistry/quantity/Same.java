package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.UnitConverter;

/**
 * The identity, as a converter that is none of indriya's: {@code AbstractConverter} wakes indriya's calculus as soon as it is
 * initialized, and the calculus has no place for strangers where it composes two identities.
 */
enum Same implements UnitConverter {
    INSTANCE;

    @Override
    public boolean isIdentity() {
        return true;
    }

    @Override
    public boolean isLinear() {
        return true;
    }

    @Override
    public UnitConverter inverse() {
        return this;
    }

    @Override
    public Number convert(Number value) {
        return value;
    }

    @Override
    public double convert(double value) {
        return value;
    }

    @Override
    public UnitConverter concatenate(UnitConverter converter) {
        return converter;
    }

    @Override
    public List<? extends UnitConverter> getConversionSteps() {
        return List.of(this);
    }
}
