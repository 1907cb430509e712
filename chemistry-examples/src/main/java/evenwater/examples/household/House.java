package evenwater.examples.household;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Bypass;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Neutralizer;
import evenwater.chemistry.treatment.ReverseOsmosis;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.treatment.Treatment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.quantity.Mass;

/**
 * What a house does to its water, in the order of the pipe: neutralizer, softener, membrane, doses.
 *
 * @param neutralizer the acid neutralizer, if there is one
 * @param softener the softener, if there is one
 * @param membrane the reverse-osmosis unit, if there is one
 * @param blend hardness to blend to past the membrane, if that is wanted
 * @param doses what is dissolved, in its order
 */
record House(
        Optional<Neutralizer> neutralizer,
        Optional<Softener> softener,
        Optional<ReverseOsmosis> membrane,
        Optional<Hardness> blend,
        List<Dosing> doses) {

    /** A pipe. */
    static final House NOTHING =
            new House(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    private static final Pattern DOSE = Pattern.compile("(?<compound>[^=]+)=(?<amount>[^/]+)/(?<volume>.+)");
    private static final Pattern SOLD = Pattern.compile("(?<compound>.+?),?\\s+(?<strength>[0-9.]+\\s*%)");
    private static final Pattern TEASPOONS = Pattern.compile(
            "\\s*(?<number>[0-9]+\\.?[0-9]*|\\.[0-9]+)\\s*(?:tsp|teaspoons?|US tsp|tsp\\(US\\))\\s*",
            Pattern.CASE_INSENSITIVE);

    Train train() {
        List<Treatment> treatments = new ArrayList<>();
        neutralizer.ifPresent(treatments::add);
        softener.ifPresent(treatments::add);
        membrane.map(this::withBypass).ifPresent(treatments::add);
        treatments.addAll(doses);
        return Train.of(treatments);
    }

    private Treatment withBypass(ReverseOsmosis unit) {
        return blend.isPresent() ? Bypass.around(unit, blend.get()) : unit;
    }

    boolean usesPotassium() {
        return softener.filter(s -> s.regenerant().equals(Ion.POTASSIUM)).isPresent();
    }

    /** Reads a neutralizer: what it is filled with, how much of what dissolves is magnesia, and where it gets to. */
    static Neutralizer neutralizer(
            String filling, Optional<String> magnesia, Optional<String> reaching, Optional<String> outletPH) {
        if (!filling.equalsIgnoreCase("calcite")) {
            throw new UsageException("--neutralizer: '" + filling + "' is no filling known here; expected calcite");
        }
        if (reaching.isPresent() && outletPH.isPresent()) {
            throw new UsageException("--reaching and --outlet-ph contradict each other: leave one out");
        }
        Neutralizer filter = Neutralizer.withCalcite();
        if (magnesia.isPresent()) {
            filter = option("--magnesia", () -> Neutralizer.withCalcite().withMagnesia(share(magnesia.get())));
        }
        Neutralizer filled = filter;
        if (reaching.isPresent()) {
            return option("--reaching", () -> filled.reaching(share(reaching.get())));
        }
        if (outletPH.isPresent()) {
            String text = outletPH.get().strip();
            if (!text.matches("[0-9]{1,2}(\\.[0-9]{1,9})?")) {
                throw new UsageException("--outlet-ph: '" + text + "' is no pH such as 7.4");
            }
            return option("--outlet-ph", () -> filled.toPH(Double.parseDouble(text)));
        }
        return filled;
    }

    /** Reads a softener; the salt is the one word that must be given. */
    static Softener softener(String salt, Optional<String> leakage, Optional<String> target) {
        Softener softener = switch (salt.toLowerCase(Locale.ROOT)) {
            case "sodium", "nacl" -> Softener.withSodium();
            case "potassium", "kcl" -> Softener.withPotassium();
            default ->
                throw new UsageException(
                        "--softener: '" + salt + "' is no salt of a softener; expected sodium or potassium");
        };
        if (leakage.isPresent()) {
            Softener tight = softener;
            softener = option("--leakage", () -> tight.leaking(Hardness.parse(leakage.get())));
        }
        if (target.isPresent()) {
            Softener whole = softener;
            softener = option("--target", () -> whole.bypassFor(Hardness.parse(target.get())));
        }
        return softener;
    }

    /** Reads {@code 95 %,98 %} or {@code 0.95,0.98}: rejections of single- and multiple-charged ions. */
    static ReverseOsmosis membrane(String rejections, Optional<String> recovery, List<String> special) {
        String[] parts = rejections.split(",", -1);
        if (parts.length != 2) {
            throw new UsageException("--reverse-osmosis: '" + rejections
                    + "' must be two rejections, of single- and of multiple-charged ions, such as 0.95,0.98");
        }
        ReverseOsmosis membrane =
                option("--reverse-osmosis", () -> ReverseOsmosis.rejecting(share(parts[0]), share(parts[1])));
        if (recovery.isPresent()) {
            ReverseOsmosis before = membrane;
            membrane = option("--recovery", () -> before.recovering(share(recovery.get())));
        }
        Map<Ion, Double> stated = new HashMap<>();
        for (String one : special) {
            ReverseOsmosis before = membrane;
            String[] ion = one.split("=", -1);
            if (ion.length != 2) {
                throw new UsageException("--reject: '" + one + "' must be an ion and its rejection, such as NO3-=0.85");
            }
            membrane = option("--reject", () -> {
                Double already = stated.put(Ion.parse(ion[0]), share(ion[1]));
                if (already != null && already != share(ion[1])) {
                    throw new UsageException("--reject: two rejections of " + Ion.parse(ion[0]) + ": leave one out");
                }
                return before.rejecting(Ion.parse(ion[0]), share(ion[1]));
            });
        }
        return membrane;
    }

    private static double share(String text) {
        return WaterUnits.parseShare(text).in(WaterUnits.ONE);
    }

    /** Reads {@code gypsum=1 g/10 L}, {@code Epsom salt=1 tsp/40 US gal} or {@code hydrochloric acid 31 %=5 g/100 L}. */
    static Dosing dose(String text) {
        Matcher m = DOSE.matcher(text);
        if (!m.matches()) {
            throw new UsageException(
                    "--dose: '" + text + "' must be a compound, an amount and the volume of the water, such as "
                            + "gypsum=1 g/10 L or Epsom salt=1 tsp/40 US gal");
        }
        Compound compound = option("--dose", () -> compound(m.group("compound").strip()));
        var volume = option("--dose", () -> WaterUnits.parseVolume(m.group("volume")));
        Matcher spoons = TEASPOONS.matcher(m.group("amount"));
        Dosing dosing = option(
                "--dose",
                () -> spoons.matches()
                        ? Dosing.teaspoons(compound, Double.parseDouble(spoons.group("number")), volume)
                        : Dosing.of(compound, mass(m.group("amount")), volume));
        if (dosing.most().dose().in(MassConcentration.KILOGRAM_PER_LITRE) > 1) {
            throw new UsageException("--dose: '" + text + "' is more than a kilogram for each litre");
        }
        return dosing;
    }

    private static WaterQuantity<Mass> mass(String text) {
        try {
            return WaterUnits.parseMass(text);
        } catch (UnreadableTextException e) {
            throw new UsageException(
                    "--dose: " + text.strip() + ": " + e.problem() + ", or tsp for a level US teaspoon");
        }
    }

    private static Compound compound(String text) {
        Matcher sold = SOLD.matcher(text);
        return sold.matches()
                ? Compound.named(sold.group("compound")).ofStrength(share(sold.group("strength")))
                : Compound.named(text);
    }

    /** Makes a value of an option, and one line of its error. */
    static <T> T option(String name, java.util.function.Supplier<T> value) {
        try {
            return value.get();
        } catch (UnreadableTextException e) {
            String text = e.text().isBlank() ? "'" + e.text() + "'" : e.text();
            throw new UsageException(name + ": " + text + ": " + e.problem());
        } catch (IllegalArgumentException e) {
            throw new UsageException(name + ": " + e.getMessage());
        }
    }
}
