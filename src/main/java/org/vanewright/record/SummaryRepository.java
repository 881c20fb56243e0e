package org.vanewright.record;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class SummaryRepository {
    private final JdbcClient jdbc;

    SummaryRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Map<RevisionRef, String> find(String kind, int version, Collection<RevisionRef> refs) {
        Map<RevisionRef, String> found = new HashMap<>();
        if (!refs.isEmpty()) {
            // By pairs in arrays: for a list of pairs H2 would read all of the kind.
            jdbc.sql("select s.slug, s.revision, s.summary"
                            + " from unnest(cast(:slugs as varchar array), cast(:revisions as integer array)) k (slug, revision)"
                            + " join record_summary s on s.kind = :kind and s.slug = k.slug and s.revision = k.revision"
                            + " where s.version = :version")
                    .param("kind", kind)
                    .param("version", version)
                    .param("slugs", refs.stream().map(RevisionRef::slug).toArray(String[]::new))
                    .param("revisions", refs.stream().map(RevisionRef::revision).toArray(Integer[]::new))
                    .query(row -> {
                        found.put(
                                new RevisionRef(row.getString("slug"), row.getInt("revision")),
                                row.getString("summary"));
                    });
        }
        return found;
    }

    /** Whoever comes second finds it there. */
    void put(String kind, int version, RevisionRef ref, String summary) {
        int changed = jdbc.sql("update record_summary set version = :version, summary = :summary"
                        + " where kind = :kind and slug = :slug and revision = :revision")
                .param("version", version)
                .param("summary", summary)
                .param("kind", kind)
                .param("slug", ref.slug())
                .param("revision", ref.revision())
                .update();
        if (changed == 0) {
            jdbc.sql("insert into record_summary (kind, slug, revision, version, summary)"
                            + " values (:kind, :slug, :revision, :version, :summary) on conflict do nothing")
                    .param("kind", kind)
                    .param("slug", ref.slug())
                    .param("revision", ref.revision())
                    .param("version", version)
                    .param("summary", summary)
                    .update();
        }
    }
}
