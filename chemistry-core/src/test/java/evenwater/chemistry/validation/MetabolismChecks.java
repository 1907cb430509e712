package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.Alkalinity.DEGREE_OF_CARBONATE_HARDNESS;
import static evenwater.chemistry.quantity.Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE;

import evenwater.chemistry.equilibrium.Metabolism;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/** What bacteria do to alkalinity. */
final class MetabolismChecks {

    private MetabolismChecks() {}

    static Topic topic() {
        Result food = new Result(
                "nitrate-from-food",
                "alkalinity that 10 mg/L of nitrate from food take",
                "°dKH",
                -Metabolism.nitrateFromFood(AmountConcentration.of(10, Ion.NITRATE.milligramPerLitre()))
                        .alkalinity()
                        .in(DEGREE_OF_CARBONATE_HARDNESS));
        Result nitrification = new Result(
                "nitrification",
                "alkalinity that nitrification of 1 mg/L of ammonium N takes",
                "mg/L CaCO₃",
                -Metabolism.nitrifying(AmountConcentration.of(1, Ion.AMMONIUM.milligramPerLitreAs(Element.NITROGEN)))
                        .alkalinity()
                        .in(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
        Result denitrification = new Result(
                "denitrification",
                "alkalinity that denitrification of 1 mg/L of nitrate N gives back",
                "mg/L CaCO₃",
                Metabolism.denitrifying(AmountConcentration.of(1, Ion.NITRATE.milligramPerLitreAs(Element.NITROGEN)))
                        .alkalinity()
                        .in(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
        return new Topic(
                "Alkalinity and living things",
                "",
                List.of(
                        food.computed("0.452205"),
                        nitrification
                                .printed("7.14", Source.METCALF_EDDY, Status.FROM_MEMORY)
                                .differing(
                                        "printed with round masses, 100 over 14",
                                        BigDecimal.valueOf(100).divide(BigDecimal.valueOf(14), MathContext.DECIMAL64)),
                        nitrification.computed("7.14543"),
                        denitrification.printed("3.57", Source.METCALF_EDDY, Status.FROM_MEMORY)));
    }
}
