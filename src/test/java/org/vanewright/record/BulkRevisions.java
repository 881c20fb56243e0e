package org.vanewright.record;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Puts many published revisions of one kind into the database, by the statements and the hashes of the service itself. */
public final class BulkRevisions<T extends RecordContent> {
    private final RevisionRepository<T> records;
    private final RevisionRepositoryInserts<T> inserts;
    private Instant now = Instant.EPOCH;

    public BulkRevisions(RevisionRepository<T> records, JdbcClient jdbc, CanonicalJson json) {
        this.records = records;
        String table = records.kind().replace('-', '_') + "_revision";
        this.inserts = new RevisionRepositoryInserts<>(jdbc, json, new Now(), table, records.kind(), records.type());
    }

    /**
     * Adds the first revision of a record. Whoever calls holds a transaction.
     *
     * @param slug as the service would make it from the name
     */
    public Revision<T> add(String slug, T content, PersonRef owner, Instant at) {
        if (!slug.equals(Slugs.candidate(content.name(), records.kind(), 1))) {
            throw new IllegalArgumentException("the service would call it otherwise: " + slug);
        }
        now = at;
        Standing standing =
                new Standing(owner.id(), Licence.CC_BY_SA_4_0, null, null, at, "Invented reviewer", null, null, null);
        RevisionRepositoryInserts.Frozen<T> frozen =
                inserts.frozen(content, owner.name(), null, RecordState.PUBLISHED, t -> standing);
        if (!inserts.insert(slug, 1, frozen)) {
            throw new IllegalStateException("there is one already: " + slug);
        }
        Revision<T> revision = frozen.as(slug, 1);
        records.inserted(revision);
        return revision;
    }

    /** The address part of the list's page after that record. */
    public static String cursor(Instant publishedAt, String slug) {
        return new ListCursor(publishedAt, slug).encode();
    }

    private final class Now extends Clock {
        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
