package org.vanewright.record;

import java.time.Instant;
import java.time.ZoneOffset;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Moves revisions of one kind from state to state, each by one statement that says where it stood. */
final class RevisionRepositoryMoves {
    private final JdbcClient jdbc;
    private final String table;

    RevisionRepositoryMoves(JdbcClient jdbc, String table) {
        this.jdbc = jdbc;
        this.table = table;
    }

    /**
     * Whoever comes second waits here, and then finds what the first one did. All take the rows in the same order: otherwise two
     * could wait for each other.
     */
    void lock(String slug) {
        jdbc.sql("select revision from " + table + " where slug = :slug order by revision for update")
                .param("slug", slug)
                .query(Integer.class)
                .list();
    }

    /** @return false if it is not the published one */
    boolean supersede(RevisionRef ref) {
        return jdbc.sql("update " + table + " set state = 'SUPERSEDED'"
                                + " where slug = :slug and revision = :revision and state = 'PUBLISHED'")
                        .param("slug", ref.slug())
                        .param("revision", ref.revision())
                        .update()
                == 1;
    }

    /** @return false if it does not wait for a review */
    boolean publish(RevisionRef ref, String by, Instant at) {
        return jdbc.sql("update " + table + " set state = 'PUBLISHED', published_at = :at, published_by = :by"
                                + " where slug = :slug and revision = :revision and state = 'SUBMITTED'")
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .param("by", by)
                        .param("slug", ref.slug())
                        .param("revision", ref.revision())
                        .update()
                == 1;
    }

    /** @return false if it does not stand at {@code from} */
    boolean close(RevisionRef ref, RecordState from, RecordState to, String by, String reason, Instant at) {
        return jdbc.sql("update " + table + " set state = :to, closed_at = :at, closed_by = :by, reason = :reason"
                                + " where slug = :slug and revision = :revision and state = :from")
                        .param("to", to.name())
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .param("by", by)
                        .param("reason", reason)
                        .param("slug", ref.slug())
                        .param("revision", ref.revision())
                        .param("from", from.name())
                        .update()
                == 1;
    }
}
