package evenwater.chemistry.aquarium;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangeOverLimitsTest {

    private static TankReading reading(double hardness, double alkalinity, double conductivity, double pH) {
        return new TankReading(
                Hardness.of(hardness, Hardness.GERMAN_DEGREE),
                Alkalinity.of(alkalinity, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS),
                Conductivity.of(conductivity, Conductivity.MICROSIEMENS_PER_CENTIMETRE),
                pH);
    }

    private static final TankReading BEFORE = reading(8, 5, 400, 7.5);

    @Test
    void theNearestLimitCounts() {
        ChangeOverLimits limits = ChangeOverLimits.sensitive();
        assertEquals(0, limits.usedBy(BEFORE, BEFORE));
        assertEquals(0.5, limits.usedBy(BEFORE, reading(7.5, 5, 400, 7.5)), 1e-12);
        assertEquals(0.75, limits.usedBy(BEFORE, reading(8.5, 4.25, 400, 7.5)), 1e-12);
        assertEquals(2, limits.usedBy(BEFORE, reading(8, 5, 480, 7.5)), 1e-12);
        assertEquals(1, limits.usedBy(BEFORE, reading(8, 5, 400, 7.2)), 1e-12);
        assertEquals(0.5, ChangeOverLimits.hardy().usedBy(BEFORE, reading(7, 5, 400, 7.5)), 1e-12);
    }

    @Test
    void eachExcessSaysHowMuch() {
        assertEquals(
                List.of(
                        "hardness falls by 3 °dH, from 8 to 5: at most 1 in a day",
                        "conductivity falls by 100 µS/cm, from 400 to 300: at most 40 in a day",
                        "pH rises by 0.4, from 7.5 to 7.9: at most 0.3 in a day"),
                ChangeOverLimits.sensitive().excesses(BEFORE, reading(5, 4.5, 300, 7.9)));
        assertEquals(List.of(), ChangeOverLimits.sensitive().excesses(BEFORE, reading(7, 4, 360, 7.2)));
    }

    @Test
    void whatMustNotMoveMayStay() {
        ChangeOverLimits limits =
                ChangeOverLimits.hardy().withPH(0).withHardness(Hardness.of(4, Hardness.GERMAN_DEGREE));
        assertEquals(0.75, limits.usedBy(BEFORE, reading(5, 5, 400, 7.5)), 1e-12);
        assertEquals(Double.POSITIVE_INFINITY, limits.usedBy(BEFORE, reading(8, 5, 400, 7.51)));
        assertEquals(
                "at most pH 0.0, 4 °dH, 2 °dKH and a share of 0.15 of the conductivity in a day", limits.toString());
    }

    @Test
    void limitsOutOfRangeAreRefused() {
        ChangeOverLimits limits = ChangeOverLimits.hardy();
        Refused.argument("limit of pH in a day must be from 0 to 14, but was -0.1", () -> limits.withPH(-0.1));
        Refused.argument(
                "limit of hardness in a day must not be negative, but was -1 °dH",
                () -> limits.withHardness(Hardness.of(-1, Hardness.GERMAN_DEGREE)));
        Refused.argument(
                "limit of alkalinity in a day must not be negative, but was -1 °dKH",
                () -> limits.withAlkalinity(Alkalinity.of(-1, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS)));
        Refused.argument(
                "limit of conductivity in a day must be a share from 0 to 1000, but was NaN",
                () -> limits.withConductivityShare(Double.NaN));
        Refused.asNull("before", () -> limits.usedBy(null, BEFORE));
        Refused.asNull("after", () -> limits.excesses(BEFORE, null));
        Refused.asNull("newHardness", () -> limits.withHardness(null));
    }
}
