package org.vanewright.record;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
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
            List<Object[]> keys = refs.stream()
                    .map(ref -> new Object[] {ref.slug(), ref.revision()})
                    .toList();
            jdbc.sql("select slug, revision, summary from record_summary where kind = :kind and version = :version"
                            + " and (slug, revision) in (:refs)")
                    .param("kind", kind)
                    .param("version", version)
                    .param("refs", keys)
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
