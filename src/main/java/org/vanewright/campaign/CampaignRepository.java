package org.vanewright.campaign;

import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.RevisionRepository;

@Repository
class CampaignRepository extends RevisionRepository<CampaignDocument> {
    private static final int MOST = 200;
    private static final Pattern SLUG = Pattern.compile("[a-z0-9-]{1,80}");

    private final JdbcClient jdbc;

    CampaignRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "campaign_revision", CampaignDocument.class);
        this.jdbc = jdbc;
    }

    /** Notes the aircraft and the layouts that it names. */
    @Override
    protected void inserted(Revision<CampaignDocument> revision) {
        RevisionRef airframe = revision.content().plan().airframe();
        if (airframe != null && SLUG.matcher(airframe.slug()).matches()) {
            jdbc.sql("insert into campaign_airframe (slug, revision, airframe_slug)"
                            + " values (:slug, :revision, :airframe)")
                    .param("slug", revision.slug())
                    .param("revision", revision.number())
                    .param("airframe", airframe.slug())
                    .update();
        }
        List<String> layouts = revision.content().plan().configurations().stream()
                .map(ConfigurationDocument::layout)
                .filter(Objects::nonNull)
                .map(RevisionRef::slug)
                .filter(slug -> SLUG.matcher(slug).matches())
                .distinct()
                .toList();
        for (String layout : layouts) {
            jdbc.sql("insert into campaign_layout (slug, revision, layout_slug) values (:slug, :revision, :layout)")
                    .param("slug", revision.slug())
                    .param("revision", revision.number())
                    .param("layout", layout)
                    .update();
        }
    }

    /** Published campaigns with any revision of an airframe, newest first. */
    public List<RevisionHead> headsOfAirframe(String airframeSlug, int most) {
        return headsLinked("campaign_airframe", "airframe_slug", airframeSlug, most);
    }

    /** Published campaigns with any revision of each layout, newest first, without what they say. */
    public Map<String, List<RevisionRef>> refsOfLayouts(Collection<String> layoutSlugs) {
        return refsLinked("campaign_layout", "layout_slug", layoutSlugs);
    }

    /** Published campaigns with any revision of a layout, newest first. */
    public List<Revision<CampaignDocument>> withLayout(String layoutSlug) {
        if (!SLUG.matcher(layoutSlug).matches()) {
            return List.of();
        }
        return publishedLinked("campaign_layout", "layout_slug", layoutSlug, MOST).stream()
                .filter(r -> r.content().plan().configurations().stream()
                        .anyMatch(c -> c.layout() != null && c.layout().slug().equals(layoutSlug)))
                .toList();
    }
}
