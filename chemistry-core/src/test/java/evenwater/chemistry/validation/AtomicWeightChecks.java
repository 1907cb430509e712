package evenwater.chemistry.validation;

import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.substance.Element;
import java.util.List;

/** Standard atomic weights that were compared with copies of the published table. */
final class AtomicWeightChecks {

    /** Symbol and abridged value, with the digits of the table. */
    private static final String PUBLISHED = """
            H 1.0080
            Li 6.94
            B 10.81
            C 12.011
            N 14.007
            O 15.999
            F 18.998
            Na 22.990
            Mg 24.305
            Al 26.982
            Si 28.085
            P 30.974
            S 32.06
            Cl 35.45
            K 39.098
            Ca 40.078
            Mn 54.938
            Fe 55.845
            Ni 58.693
            Cu 63.546
            Zn 65.38
            Br 79.904
            Sr 87.62
            Mo 95.95
            I 126.90
            Ba 137.33
            """;

    private AtomicWeightChecks() {}

    static Topic topic() {
        List<PublishedCheck> checks =
                PUBLISHED.lines().map(AtomicWeightChecks::check).toList();
        int others = Element.values().length - checks.size();
        return new Topic(
                "Atomic weights",
                "The elements of water analysis. The weights of the other " + others
                        + " elements that the library knows are from memory and have no row here.",
                checks);
    }

    private static PublishedCheck check(String line) {
        String[] parts = line.split(" ", -1);
        Element element = Element.withSymbol(parts[0]).orElseThrow();
        return PublishedCheck.of(
                "weight-" + parts[0],
                parts[0],
                "g/mol",
                Source.IUPAC_2021,
                Status.VERIFIED,
                Figure.exact(parts[1]),
                element.atomicWeight().in(MolarMass.GRAM_PER_MOLE));
    }
}
