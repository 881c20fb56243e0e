package org.vanewright.photograph;

import java.sql.Types;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.platform.attachment.Attachments;

/** Keeps photographs and who added them. */
@Repository
class PhotographRepository {
    static final String FOLDER = "photographs";

    private final JdbcClient jdbc;
    private final Attachments attachments;

    PhotographRepository(JdbcClient jdbc, Attachments attachments) {
        this.jdbc = jdbc;
        this.attachments = attachments;
    }

    private static String key(String sha256, boolean small) {
        return FOLDER + "/" + sha256 + (small ? "/small.jpg" : "/large.jpg");
    }

    /** Keeps it unless it is there already. */
    void add(String sha256, Picture picture, Instant at) {
        if (!existing(Set.of(sha256)).isEmpty()) {
            return;
        }
        try {
            jdbc.sql("insert into photograph (sha256, large, small, created_at)"
                            + " values (:sha256, :large, :small, :at)")
                    .param("sha256", sha256)
                    .param("large", attachments.keep(key(sha256, false), picture.large()), Types.VARBINARY)
                    .param("small", attachments.keep(key(sha256, true), picture.small()), Types.VARBINARY)
                    .param("at", at.atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException e) {
            // The same picture arrived twice at once: one of them is kept, and it is the same.
            return;
        }
    }

    void own(String sha256, String personId, Instant at) {
        if (isOwner(sha256, personId)) {
            return;
        }
        try {
            jdbc.sql("insert into photograph_owner (sha256, person_id, added_at) values (:sha256, :person, :at)")
                    .param("sha256", sha256)
                    .param("person", personId)
                    .param("at", at.atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException e) {
            // As above.
            return;
        }
    }

    boolean isOwner(String sha256, String personId) {
        return jdbc.sql("select count(*) from photograph_owner where sha256 = :sha256 and person_id = :person")
                        .param("sha256", sha256)
                        .param("person", personId)
                        .query(Integer.class)
                        .single()
                > 0;
    }

    int ownedBy(String personId) {
        return jdbc.sql("select count(*) from photograph_owner where person_id = :person")
                .param("person", personId)
                .query(Integer.class)
                .single();
    }

    Optional<Boolean> isPublic(String sha256) {
        return jdbc.sql("select is_public from photograph where sha256 = :sha256")
                .param("sha256", sha256)
                .query(Boolean.class)
                .optional();
    }

    /** The JPEG; the small one is for lists. */
    Optional<byte[]> bytes(String sha256, boolean small) {
        return jdbc.sql("select " + (small ? "small" : "large") + " as bytes from photograph where sha256 = :sha256")
                .param("sha256", sha256)
                .query((row, number) -> new Column(row.getBytes("bytes")))
                .optional()
                .map(column -> attachments.read(column.bytes(), key(sha256, small)));
    }

    /** Nothing where the bytes lie outside. */
    @SuppressWarnings("ArrayRecordComponent") // bytes on their way out, never compared
    private record Column(byte @Nullable [] bytes) {}

    /** Those of the hashes that are kept here. */
    Set<String> existing(Collection<String> hashes) {
        return hashes.isEmpty()
                ? Set.of()
                : new HashSet<>(jdbc.sql("select sha256 from photograph where sha256 in (:hashes)")
                        .param("hashes", hashes)
                        .query(String.class)
                        .list());
    }

    void makePublic(Collection<String> hashes) {
        if (!hashes.isEmpty()) {
            jdbc.sql("update photograph set is_public = true where sha256 in (:hashes)")
                    .param("hashes", hashes)
                    .update();
        }
    }
}
