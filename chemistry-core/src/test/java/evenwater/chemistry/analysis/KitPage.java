package evenwater.chemistry.analysis;

import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.testing.Kits;
import evenwater.chemistry.testing.NaturalWater;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The figures of {@code docs/kit.md} as Markdown. */
final class KitPage {

    /** Mass of an equivalent of sodium, in mg/meq. */
    private static final double SODIUM = 22.99;

    /** Soft to brackish, from different surveys, some with much sulfate or chloride, one with more alkalinity than hardness. */
    private static final List<String> SHOWN = List.of(
            "NRSA08-FW08KY025-20090813",
            "NRSA18-NRS18CO10064-20190625",
            "NRSA13-PAR90910-20130624",
            "NRSA08-FW08NV069-20080806",
            "CSLS-LL01MONITORINGWELL-20191119",
            "WSA04-WCAP990600-20000802",
            "NLA12-NLA12IA120-20120723",
            "CSLS-LL03MONITORINGWELL-20191204",
            "WSA04-OWW044400835-20040810",
            "COLO-09402500-20170222",
            "NLA12-NLA12AZ123-20120824",
            "NRSA13-NJRM1001-20130710");

    private static final List<KitQuantity> WIDTHS = List.of(
            KitQuantity.SODIUM_AND_POTASSIUM,
            KitQuantity.STRONG_ANIONS,
            KitQuantity.SODIUM,
            KitQuantity.CHLORIDE,
            KitQuantity.SULFATE,
            KitQuantity.CALCIUM,
            KitQuantity.MAGNESIUM);

    private final Map<NaturalWater, KitBounds> bounds = new LinkedHashMap<>();
    private final StringBuilder page = new StringBuilder();

    private KitPage() {
        NaturalWater.all()
                .forEach(natural -> bounds.put(natural, Kits.readingsOf(natural).bounds()));
    }

    static String render() {
        KitPage page = new KitPage();
        page.waters();
        page.widths();
        page.tests(KitQuantity.SODIUM_AND_POTASSIUM);
        page.tests(KitQuantity.SODIUM);
        return page.page.toString();
    }

    private void line(String format, Object... arguments) {
        page.append(String.format(Locale.ROOT, format, arguments)).append('\n');
    }

    private void waters() {
        line(
                "| water | GH turns at, °dH | KH turns at, °dKH | pH | µS/cm | sodium and potassium, bounds | measured | width |");
        line("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        bounds.forEach((natural, found) -> {
            if (SHOWN.contains(natural.id())) {
                double least = SODIUM * KitSamples.least(found, KitQuantity.SODIUM_AND_POTASSIUM);
                double most = SODIUM * KitSamples.most(found, KitQuantity.SODIUM_AND_POTASSIUM);
                line(
                        "| %s | %d | %d | %.1f | %.0f | %s to %s | %s | %s |",
                        natural.id(),
                        Kits.hardnessDrops(natural.water()),
                        Kits.alkalinityDrops(natural.water()),
                        Kits.shownPH(natural.water()),
                        natural.measuredMicrosiemens(),
                        milligrams(least),
                        milligrams(most),
                        milligrams(SODIUM * Kits.held(natural.water(), KitQuantity.SODIUM_AND_POTASSIUM)),
                        milligrams(most - least));
            }
        });
        line("");
    }

    private static String milligrams(double value) {
        return String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value);
    }

    private void widths() {
        line("| of all %d waters | measured value inside | least is above 0 | median width |", bounds.size());
        line("| --- | ---: | ---: | ---: |");
        for (KitQuantity quantity : WIDTHS) {
            List<Double> shares = new ArrayList<>();
            long inside = 0;
            long above = 0;
            for (Map.Entry<NaturalWater, KitBounds> one : bounds.entrySet()) {
                double least = KitSamples.least(one.getValue(), quantity);
                double most = KitSamples.most(one.getValue(), quantity);
                double truth = Kits.held(one.getKey().water(), quantity);
                shares.add(100 * (most - least) / one.getKey().measuredMicrosiemens());
                inside += truth >= least && truth <= most ? 1 : 0;
                above += least > 0 ? 1 : 0;
            }
            line("| %s | %d | %d | %.2f |", quantity, inside, above, median(shares));
        }
        line("");
    }

    /** What each test leaves of the width, for the waters shown. */
    private void tests(KitQuantity wanted) {
        Map<ExtraTest, List<Double>> left = new LinkedHashMap<>();
        Map<ExtraTest, Integer> first = new LinkedHashMap<>();
        ExtraTest.usual().forEach(test -> left.put(test, new ArrayList<>()));
        for (NaturalWater natural : bounds.keySet()) {
            if (SHOWN.contains(natural.id())) {
                List<Narrowing> ranked = Kits.readingsOf(natural).narrowings(wanted);
                ranked.forEach(narrowing -> left.get(narrowing.test()).add(narrowing.meanWidthLeft()));
                first.merge(ranked.get(0).test(), 1, Integer::sum);
            }
        }
        line("| %s, of these %d waters | median of the width left | best test of |", wanted, SHOWN.size());
        line("| --- | ---: | ---: |");
        left.forEach((test, shares) ->
                line("| %s | %.0f %% | %d |", test, 100 * median(shares), first.getOrDefault(test, 0)));
        line("");
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int n = sorted.size();
        return (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
    }
}
