package evenwater.chemistry.testing;

import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.mmol;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.Tuple;

/** Random waters and changes for laws: ions at concentrations that nature and taps have, none of them rounded or balanced. */
public final class Waters {

    /** Own ions: a cation, an anion, a neutral solute and the forms of an acid. */
    public static final Ion LEAD = Ion.of("lead", Formula.parse("Pb^2+"));

    public static final Ion PERCHLORATE = Ion.of("perchlorate", Formula.parse("ClO4-"));
    public static final Ion UREA = Ion.of("urea", Formula.parse("CO(NH2)2"));
    public static final Ion DIHYDROGEN_ARSENATE = Ion.of("dihydrogen arsenate", Formula.parse("H2AsO4-"));
    public static final Ion HYDROGEN_ARSENATE =
            Ion.of("hydrogen arsenate", Formula.parse("HAsO4^2-")).countedAs(DIHYDROGEN_ARSENATE);
    public static final Ion ARSENATE =
            Ion.of("arsenate", Formula.parse("AsO4^3-")).countedAs(DIHYDROGEN_ARSENATE);

    public static final List<Ion> OWN =
            List.of(LEAD, PERCHLORATE, UREA, DIHYDROGEN_ARSENATE, HYDROGEN_ARSENATE, ARSENATE);

    /** What a water counts, with about the most that a hard or brackish well has, in mmol/L. */
    private static final Map<Ion, Double> USUAL = Map.ofEntries(
            Map.entry(Ion.CALCIUM, 6.0),
            Map.entry(Ion.MAGNESIUM, 4.0),
            Map.entry(Ion.SODIUM, 40.0),
            Map.entry(Ion.POTASSIUM, 2.0),
            Map.entry(Ion.AMMONIUM, 0.2),
            Map.entry(Ion.STRONTIUM, 0.1),
            Map.entry(Ion.BARIUM, 0.002),
            Map.entry(Ion.IRON_II, 0.1),
            Map.entry(Ion.MANGANESE_II, 0.02),
            Map.entry(Ion.ALUMINIUM, 0.01),
            Map.entry(Ion.CHLORIDE, 40.0),
            Map.entry(Ion.SULFATE, 10.0),
            Map.entry(Ion.NITRATE, 2.0),
            Map.entry(Ion.FLUORIDE, 0.2),
            Map.entry(Ion.DIHYDROGEN_PHOSPHATE, 0.1),
            Map.entry(Ion.BORIC_ACID, 0.1),
            Map.entry(Ion.SILICA, 0.7));

    private static final Map<Ion, Double> WITH_OWN = withOwn();

    private static Map<Ion, Double> withOwn() {
        Map<Ion, Double> most = new TreeMap<>(USUAL);
        most.putAll(Map.of(LEAD, 0.01, PERCHLORATE, 0.1, UREA, 0.3, DIHYDROGEN_ARSENATE, 0.01));
        return most;
    }

    private Waters() {}

    /** Ions that nobody has named before: any of some elements with a charge from −2 to 3. */
    public static Arbitrary<Ion> newIons() {
        Arbitrary<String> elements =
                Arbitraries.of("Cs", "Rb", "Ag", "Pb", "Ni", "Co", "La", "Ce", "Mo", "W", "V", "Se");
        Arbitrary<String> charges = Arbitraries.of("", "+", "^2+", "^3+", "-", "^2-");
        return Combinators.combine(elements, charges)
                .as((element, charge) -> Ion.of("new " + element, Formula.parse(element + charge)));
    }

    /** Waters of the built-in ions. */
    public static Arbitrary<Water> natural() {
        return of(USUAL);
    }

    /** Waters of built-in and own ions. */
    public static Arbitrary<Water> any() {
        return Arbitraries.oneOf(of(USUAL), of(WITH_OWN));
    }

    /** Waters with some calcium and magnesium among their ions. */
    public static Arbitrary<Water> hard() {
        return Combinators.combine(totals(WITH_OWN), amount(0.1, 6), amount(0.1, 4), rest())
                .as((totals, calcium, magnesium, rest) -> {
                    Map<Ion, Double> all = new TreeMap<>(totals);
                    all.put(Ion.CALCIUM, calcium);
                    all.put(Ion.MAGNESIUM, magnesium);
                    return rest.water(all);
                })
                .withoutEdgeCases();
    }

    private static Arbitrary<Water> of(Map<Ion, Double> most) {
        return Combinators.combine(totals(most), rest())
                .as((totals, rest) -> rest.water(totals))
                .withoutEdgeCases(); // they outnumber the tries; zeros and missing ions come without them
    }

    private static Arbitrary<Map<Ion, Double>> totals(Map<Ion, Double> most) {
        return Arbitraries.maps(Arbitraries.of(most.keySet()), amount(0, 1)).map(shares -> {
            Map<Ion, Double> totals = new TreeMap<>();
            shares.forEach((ion, share) -> totals.put(ion, share * most.get(ion)));
            return totals;
        });
    }

    private static Arbitrary<Double> amount(double from, double to) {
        return Arbitraries.doubles().between(from, to).ofScale(6).withDistribution(RandomDistribution.uniform());
    }

    /** What a water holds beside its totals; NaN is not stated. */
    private record Rest(double alkalinity, double unmeasured, double carbon, double pH, double celsius) {

        Water water(Map<Ion, Double> totals) {
            WaterBuilder builder = Water.builder().temperature(Amounts.celsius(celsius));
            totals.forEach((ion, n) -> builder.total(ion, mmol(n)));
            if (!Double.isNaN(alkalinity)) {
                builder.alkalinity(Amounts.alkalinity(alkalinity));
            } else if (!Double.isNaN(unmeasured)) {
                builder.unmeasuredCharge(charge(unmeasured));
            }
            if (!Double.isNaN(carbon)) {
                builder.carbon(mmol(carbon));
            } else if (!Double.isNaN(pH)) {
                builder.measuredPH(pH);
            }
            return builder.build();
        }
    }

    private static Arbitrary<Rest> rest() {
        return Combinators.combine(
                        zeroOr(amount(-1, 12)).injectNull(0.5),
                        amount(-2, 2).injectNull(0.5), // not stated is 0
                        zeroOr(amount(0, 15)).injectNull(0.3),
                        amount(4, 10).injectNull(0.5),
                        amount(0, 100))
                .as((alkalinity, unmeasured, carbon, pH, celsius) ->
                        new Rest(orNaN(alkalinity), orNaN(unmeasured), orNaN(carbon), orNaN(pH), celsius));
    }

    private static Arbitrary<Double> zeroOr(Arbitrary<Double> amount) {
        return Arbitraries.frequencyOf(Tuple.of(1, Arbitraries.just(0.0)), Tuple.of(9, amount));
    }

    private static double orNaN(Double value) {
        return value == null ? Double.NaN : value;
    }

    /** Amounts of any ions in any form, built-in and own, whose charges cancel; what a change is made of. */
    public static Arbitrary<Map<Ion, AmountConcentration>> neutralAmounts(double from, double to) {
        List<Ion> ions = new ArrayList<>(Ion.all());
        ions.addAll(OWN);
        return Arbitraries.maps(Arbitraries.of(ions), amount(from, to))
                .ofMaxSize(8)
                .map(Waters::neutralised)
                .withoutEdgeCases();
    }

    /** Sodium and chloride take up the charge that is left, so no amount becomes negative. */
    private static Map<Ion, AmountConcentration> neutralised(Map<Ion, Double> amounts) {
        Map<Ion, AmountConcentration> neutral = new TreeMap<>();
        double charge = 0;
        for (Map.Entry<Ion, Double> e : new TreeMap<>(amounts).entrySet()) {
            charge += e.getKey().chargeNumber() * e.getValue();
            neutral.put(e.getKey(), mmol(e.getValue()));
        }
        Ion closing = charge > 0 ? Ion.CHLORIDE : Ion.SODIUM;
        double before = amounts.getOrDefault(closing, 0.0);
        neutral.put(closing, mmol(before + Math.abs(charge)));
        return neutral;
    }

    /** Changes that move anything either way. */
    public static Arbitrary<Change> changes() {
        return neutralAmounts(-5, 5).map(Change::of);
    }

    /** Changes that only bring: any ions in any form. */
    public static Arbitrary<Change> additions() {
        return neutralAmounts(0, 5).map(Change::of);
    }

    /** Shares from 0 to 1, both ends among them. */
    public static Arbitrary<Double> shares() {
        return Arbitraries.frequencyOf(
                Tuple.of(1, Arbitraries.of(0.0, 1.0)), Tuple.of(1, amount(0, 1e-3)), Tuple.of(8, amount(0, 1)));
    }
}
