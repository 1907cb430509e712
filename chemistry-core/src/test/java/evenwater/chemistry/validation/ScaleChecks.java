package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.Hardness.ENGLISH_DEGREE;
import static evenwater.chemistry.quantity.Hardness.FRENCH_DEGREE;
import static evenwater.chemistry.quantity.Hardness.GERMAN_DEGREE;
import static evenwater.chemistry.quantity.Hardness.GRAIN_PER_US_GALLON;
import static evenwater.chemistry.quantity.Hardness.MILLIEQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE;
import static evenwater.chemistry.quantity.Hardness.MILLIGRAM_PER_LITRE_CALCIUM_OXIDE;
import static evenwater.chemistry.quantity.Hardness.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import javax.measure.Unit;

/** One unit of a scale of hardness in another, as it is printed. */
final class ScaleChecks {

    private ScaleChecks() {}

    static Topic topic() {
        return new Topic(
                "Scales of hardness, printed factors",
                "Sources round these factors to two to five digits. The degrees themselves are defined exactly; see the cross table.",
                List.of(
                        of(
                                GERMAN_DEGREE,
                                MILLIGRAM_PER_LITRE_CALCIUM_OXIDE,
                                Source.DIN_38409_6,
                                Status.FROM_MEMORY,
                                Figure.exact("10")),
                        usage(GERMAN_DEGREE, MILLIMOLE_PER_LITRE, "0.1783"),
                        usage(GERMAN_DEGREE, MILLIEQUIVALENT_PER_LITRE, "0.357"),
                        of(
                                GERMAN_DEGREE,
                                MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE,
                                Source.SCALE_PAGE,
                                Status.VERIFIED,
                                Figure.printed("17.848")),
                        usage(GERMAN_DEGREE, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "17.8"),
                        usage(GERMAN_DEGREE, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "17.85"),
                        usage(GERMAN_DEGREE, ENGLISH_DEGREE, "1.25"),
                        usage(GERMAN_DEGREE, FRENCH_DEGREE, "1.78"),
                        usage(GERMAN_DEGREE, FRENCH_DEGREE, "1.79")
                                .differing("as if rounded once more from 17.85 mg/L CaCO₃", new BigDecimal("1.785")),
                        usage(GERMAN_DEGREE, GRAIN_PER_US_GALLON, "1.04"),
                        inMagnesiumOxide("7.19"),
                        usage(MILLIMOLE_PER_LITRE, GERMAN_DEGREE, "5.6"),
                        usage(MILLIMOLE_PER_LITRE, GERMAN_DEGREE, "5.608"),
                        usage(MILLIMOLE_PER_LITRE, FRENCH_DEGREE, "10.0"),
                        usage(MILLIMOLE_PER_LITRE, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "100.1"),
                        usage(MILLIEQUIVALENT_PER_LITRE, GERMAN_DEGREE, "2.8"),
                        usage(MILLIEQUIVALENT_PER_LITRE, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "50.0"),
                        usage(FRENCH_DEGREE, GERMAN_DEGREE, "0.56"),
                        usage(FRENCH_DEGREE, ENGLISH_DEGREE, "0.70"),
                        usage(ENGLISH_DEGREE, MILLIMOLE_PER_LITRE, "0.142"),
                        usage(ENGLISH_DEGREE, FRENCH_DEGREE, "1.43"),
                        usage(ENGLISH_DEGREE, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "14.25"),
                        usage(ENGLISH_DEGREE, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "14.3"),
                        partIn70000("14.29"),
                        partIn70000("14.286"),
                        of(
                                GRAIN_PER_US_GALLON,
                                MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE,
                                Source.SCALE_PAGE,
                                Status.VERIFIED,
                                Figure.printed("17.118")),
                        trade(GRAIN_PER_US_GALLON, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "17.1"),
                        usage(GRAIN_PER_US_GALLON, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "17.12"),
                        usage(GRAIN_PER_US_GALLON, GERMAN_DEGREE, "0.96"),
                        usage(GRAIN_PER_US_GALLON, MILLIMOLE_PER_LITRE, "0.171"),
                        of(
                                        GRAIN_PER_US_GALLON,
                                        ENGLISH_DEGREE,
                                        Source.ARITHMETIC,
                                        Status.COMPUTED,
                                        Figure.printed("1.200949925505"))
                                .remarking("imperial over US gallon, free of atomic weights")));
    }

    private static PublishedCheck partIn70000(String published) {
        return usage(ENGLISH_DEGREE, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, published)
                .differing(
                        "another convention: 1 part in 70 000, for a gallon of water that weighs 70 000 grains at 62 °F; "
                                + "0.23 % apart",
                        new BigDecimal(1_000_000).divide(new BigDecimal(70_000), MathContext.DECIMAL64));
    }

    private static PublishedCheck inMagnesiumOxide(String published) {
        AmountConcentration magnesium = AmountConcentration.of(
                Hardness.of(1, GERMAN_DEGREE).in(MILLIMOLE_PER_LITRE), AmountConcentration.MILLIMOLE_PER_LITRE);
        return PublishedCheck.of(
                "scale-°dH-MgO",
                "1 °dH of magnesium",
                "mg/L MgO",
                Source.DIN_38409_6,
                Status.FROM_MEMORY,
                Figure.printed(published),
                magnesium.in(Ion.MAGNESIUM.milligramPerLitreAs(Formula.parse("MgO"))));
    }

    private static PublishedCheck usage(Unit<Hardness> from, Unit<Hardness> to, String published) {
        return of(from, to, Source.LABORATORIES, Status.COMMON_PRACTICE, Figure.printed(published));
    }

    private static PublishedCheck trade(Unit<Hardness> from, Unit<Hardness> to, String published) {
        return of(from, to, Source.SOFTENING_TRADE, Status.COMMON_PRACTICE, Figure.printed(published));
    }

    private static PublishedCheck of(
            Unit<Hardness> from, Unit<Hardness> to, Source source, Status status, Figure published) {
        return PublishedCheck.of(
                "scale-" + from + "-" + to + "-" + published.text(),
                "1 " + from,
                to.toString(),
                source,
                status,
                published,
                Hardness.of(1, from).in(to));
    }
}
