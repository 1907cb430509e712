package evenwater.chemistry.verdict;

import evenwater.chemistry.substance.Compound;
import java.util.Collection;
import java.util.List;
import java.util.Objects;

/**
 * What people must know where something can hurt them, their pipes or their animals.
 *
 * @param topic what makes it apply
 * @param text one or more sentences for people
 * @param citation who says so
 */
public record Caution(CautionTopic topic, String text, Citation citation) {

    /**
     * Checks the parts.
     *
     * @param topic see the record
     * @param text see the record; not blank
     * @param citation see the record
     */
    public Caution {
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(citation, "citation");
        if (text.isBlank()) {
            throw new IllegalArgumentException("a caution must say something");
        }
    }

    /**
     * Returns the cautions about some topics.
     *
     * @param topics any topics
     * @return those of the topics and those that always apply, in a fixed order
     */
    public static List<Caution> about(Collection<CautionTopic> topics) {
        Objects.requireNonNull(topics, "topics");
        return VerdictTables.cautions().stream()
                .filter(caution -> caution.topic == CautionTopic.ALWAYS || topics.contains(caution.topic))
                .toList();
    }

    /**
     * Returns the caution of handling a compound.
     *
     * @param compound what is dosed
     * @return the compound's own caution, such as "caustic, eye damage"; about the topic of doses
     */
    static Caution handling(Compound compound) {
        return new Caution(
                CautionTopic.DOSE,
                "Handling " + compound.name() + ": " + compound.caution() + ".",
                Citation.COMMON_PRACTICE);
    }

    /** Returns the text. */
    @Override
    public String toString() {
        return text;
    }
}
