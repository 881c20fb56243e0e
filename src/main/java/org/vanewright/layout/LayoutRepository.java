package org.vanewright.layout;

import java.time.Clock;
import java.util.List;
import java.util.regex.Pattern;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.RevisionRepository;

@Repository
class LayoutRepository extends RevisionRepository<LayoutDocument> {
    private static final Pattern SLUG = Pattern.compile("[a-z0-9-]{1,80}");

    private final JdbcClient jdbc;

    LayoutRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "layout_revision", LayoutDocument.class);
        this.jdbc = jdbc;
    }

    /** Notes the airframe that it is for. */
    @Override
    protected void inserted(Revision<LayoutDocument> revision) {
        RevisionRef airframe = revision.content().airframe();
        if (airframe != null && SLUG.matcher(airframe.slug()).matches()) {
            jdbc.sql("insert into layout_airframe (slug, revision, airframe_slug) values (:slug, :revision, :airframe)")
                    .param("slug", revision.slug())
                    .param("revision", revision.number())
                    .param("airframe", airframe.slug())
                    .update();
        }
    }

    /** Published layouts for any revision of an airframe, newest first. */
    public List<RevisionHead> headsOfAirframe(String airframeSlug, int most) {
        return headsLinked("layout_airframe", "airframe_slug", airframeSlug, most);
    }
}
