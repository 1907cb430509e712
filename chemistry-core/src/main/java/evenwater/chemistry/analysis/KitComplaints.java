package evenwater.chemistry.analysis;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;

import evenwater.chemistry.kernel.KitKernel;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.kernel.KitState;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.NoAnswerException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Says why no water has the readings of a kit. Immutable and thread-safe. */
final class KitComplaints {

    private static final int DIGITS = 3;

    private final Map<KitQuantity, KitRange> measured;
    private final Map<KitQuantity, String> words;
    private final String ofPH;
    private final KitRange microsiemens;

    KitComplaints(
            Map<KitQuantity, KitRange> measured, Map<KitQuantity, String> words, String ofPH, KitRange microsiemens) {
        this.measured = measured;
        this.words = words;
        this.ofPH = ofPH;
        this.microsiemens = microsiemens;
    }

    /** Why not: by one reading beside pH and conductivity if that is enough, else by all together. */
    NoAnswerException exception(
            int status, KitState all, Function<Map<KitQuantity, KitRange>, Optional<KitState>> alone) {
        if (status == KitKernel.NOT_SOLVED) {
            return notSolved();
        }
        if (status == KitKernel.PH_TOO_HIGH) {
            return new NoAnswerException("no water has these readings: at " + ofPH + " hydroxide alone is more than "
                    + words.getOrDefault(KitQuantity.ALKALINITY, "the alkalinity"));
        }
        for (Map.Entry<KitQuantity, KitRange> one : measured.entrySet()) {
            Map<KitQuantity, KitRange> single = new EnumMap<>(KitQuantity.class);
            single.put(one.getKey(), one.getValue());
            Optional<KitState> enough = alone.apply(single);
            if (enough.isPresent() && measured.size() > 1) {
                return because(status, enough.get(), words.get(one.getKey()) + " alone makes");
            }
        }
        List<String> together = new ArrayList<>(words.values());
        together.add(ofPH);
        return because(status, all, String.join(", ", together) + " together make");
    }

    private NoAnswerException because(int status, KitState state, String what) {
        if (status == KitKernel.NO_BALANCE) {
            return new NoAnswerException("no water has these readings: the charges of "
                    + String.join(", ", words.values()) + " cannot balance");
        }
        boolean more = status == KitKernel.CONDUCTS_MORE;
        Conductivity made = conductivity(more ? state.leastConductivity() : state.mostConductivity());
        Conductivity read = conductivity(more ? microsiemens.most() : microsiemens.least());
        return new NoAnswerException(
                "no water has these readings: " + what + " at " + (more ? "least " : "most ") + text(made)
                        + " at 25 °C, but the reading is at " + (more ? "most " : "least ") + text(read)
                        + " with the allowance for the model",
                made,
                read);
    }

    static NoAnswerException notSolved() {
        return new NoAnswerException(
                "the bounds of these readings cannot be computed: some waters within them would be far too strong");
    }

    private static Conductivity conductivity(double value) {
        return Conductivity.of(value, MICROSIEMENS_PER_CENTIMETRE);
    }

    private static String text(Conductivity conductivity) {
        return conductivity.toText(Locale.ROOT, DIGITS);
    }
}
