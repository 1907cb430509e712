package evenwater.chemistry.validation;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The page of published checks as Markdown; the same bytes in every locale and on every machine. */
final class ValidationPage {

    static final String COMMAND = "mvn -pl chemistry-core test -Dtest=ValidationPageTest -Dvalidation.write=true";

    private static final String INTRODUCTION = """
            # Published checks

            <!-- Written by ValidationPageTest; do not edit by hand. -->

            This page compares results of Evenwater with figures that others have published. The tests of the build compute it:
            `mvn verify` fails when a result leaves the tolerance of its source, and when this page and the run differ.
            To write it anew after a change, from the root of the repository:

                {command}

            There are **{all} checks**: {statuses}.
            In {agree} of them ours agrees with the published figure as closely as that is printed; in {differ} it differs, for a
            reason that the remark names. {recomputed} results are recomputed in decimal arithmetic from weights and definitions,
            without the library.

            - **Verified**: the figure was read in a public copy of its source or in a page that quotes it.
            - **From memory**: known to us, but the source could not be opened to read it again.
            - **Common practice**: used by a trade, by laboratories or by aquarists, without a single source to name.
            - **Computed**: no published figure; arithmetic from the inputs of the source, done without the library, takes its place.

            *Deviation* is ours minus published. *Allowed* is what the source itself leaves open, as a rule half a unit of its last
            digit; it is never widened to let a result pass. A deviation in **bold** is larger: then both figures stand, and the
            remark names the inputs that give the published figure when it is recomputed without the library. Where a source does
            not say which inputs it used, they are our reading of it. Ours is printed with six digits, or as many as the published
            figure has; E-9 means a factor of one in a billion.

            """;

    private static final String NOT_COVERED = """
            ## Not covered yet

            The library does not compute these; published figures for them wait:

            - hydroxide, carbonate and bicarbonate alkalinity from the two end points (P and T) of a titration;
            - leakage of a resin bed: published curves are good to half of themselves; docs/resin-bed.md has them beside the model.
            """;

    private ValidationPage() {}

    static String render(List<Topic> topics, int recomputed) {
        StringBuilder page = new StringBuilder(introduction(topics, recomputed));
        overview(page, topics);
        topics.forEach(topic -> table(page, topic));
        page.append(NaturalWaterTable.render());
        page.append(KitOfNaturalWaters.render());
        page.append(NOT_COVERED);
        sources(page, topics);
        return page.toString();
    }

    private static String introduction(List<Topic> topics, int recomputed) {
        List<PublishedCheck> all =
                topics.stream().flatMap(topic -> topic.checks().stream()).toList();
        long agree = all.stream().filter(PublishedCheck::agrees).count();
        String statuses = Stream.of(Status.values())
                .map(status -> count(all, status) + " " + status.words())
                .collect(Collectors.joining(", "));
        return INTRODUCTION
                .replace("{command}", COMMAND)
                .replace("{all}", Integer.toString(all.size()))
                .replace("{statuses}", statuses)
                .replace("{agree}", Long.toString(agree))
                .replace("{differ}", Long.toString(all.size() - agree))
                .replace("{recomputed}", Integer.toString(recomputed));
    }

    private static long count(List<PublishedCheck> checks, Status status) {
        return checks.stream().filter(check -> check.status() == status).count();
    }

    private static void overview(StringBuilder page, List<Topic> topics) {
        page.append("| Table | Checks");
        for (Status status : Status.values()) {
            page.append(" | ").append(status.words());
        }
        page.append(" |\n|---|---:|---:|---:|---:|---:|\n");
        for (Topic topic : topics) {
            page.append("| ")
                    .append(topic.title())
                    .append(" | ")
                    .append(topic.checks().size());
            for (Status status : Status.values()) {
                page.append(" | ").append(count(topic.checks(), status));
            }
            page.append(" |\n");
        }
        page.append('\n');
    }

    private static void table(StringBuilder page, Topic topic) {
        page.append("## ").append(topic.title()).append("\n\n");
        if (!topic.introduction().isEmpty()) {
            page.append(topic.introduction()).append("\n\n");
        }
        page.append("| Check | Published | Ours | Unit | Deviation | Allowed | Status | Source | Remark |\n")
                .append("|---|---:|---:|---|---:|---:|---|---|---|\n");
        topic.checks().forEach(check -> row(page, check));
        page.append('\n');
    }

    private static void row(StringBuilder page, PublishedCheck check) {
        Figure published = check.published();
        String deviation = published.deviation(check.ours());
        List<String> cells = List.of(
                check.what(),
                published.text(),
                published.rounded(check.ours()),
                check.unit(),
                check.agrees() ? deviation : "**" + deviation + "**",
                published.allowed(),
                check.status().words(),
                check.source().label(),
                check.remark());
        for (String cell : cells) {
            page.append("| ").append(cell.replace("|", "\\|")).append(cell.isEmpty() ? "" : " ");
        }
        page.append("|\n");
    }

    private static void sources(StringBuilder page, List<Topic> topics) {
        Set<Source> used = EnumSet.of(Source.IUPAC_2005, Source.USGS_09402500);
        topics.forEach(topic -> topic.checks().forEach(check -> used.add(check.source())));
        page.append("\n## Sources\n\n");
        for (Source source : used) {
            page.append("- *")
                    .append(source.label())
                    .append("*: ")
                    .append(source.citation())
                    .append('\n');
        }
    }
}
