package org.vanewright.inspection;

import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.RevisionRepository;

@Repository
class InspectionRepository extends RevisionRepository<InspectionDocument> {
    private static final int MOST = 20_000;
    private static final Pattern SLUG = Pattern.compile("[a-z0-9-]{1,80}");

    private final JdbcClient jdbc;

    InspectionRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "inspection_revision", InspectionDocument.class);
        this.jdbc = jdbc;
    }

    /** Notes the installation that it looked at. */
    @Override
    protected void inserted(Revision<InspectionDocument> revision) {
        RevisionRef installation = revision.content().installation();
        if (installation != null && SLUG.matcher(installation.slug()).matches()) {
            jdbc.sql("insert into inspection_installation (slug, revision, installation_slug)"
                            + " values (:slug, :revision, :installation)")
                    .param("slug", revision.slug())
                    .param("revision", revision.number())
                    .param("installation", installation.slug())
                    .update();
        }
    }

    /** Published inspections of any revision of an installation, in no order. */
    public List<Revision<InspectionDocument>> ofInstallation(String slug) {
        return SLUG.matcher(slug).matches()
                ? publishedLinked("inspection_installation", "installation_slug", slug, MOST)
                : List.of();
    }

    /** Published inspections of any revision of each installation, in no order. */
    public List<Revision<InspectionDocument>> ofInstallations(Collection<String> slugs) {
        return findAll(refsLinked("inspection_installation", "installation_slug", slugs).values().stream()
                .flatMap(List::stream)
                .toList());
    }
}
