package org.vanewright.audit;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Adds and reads entries; there is no statement that changes or removes one. */
@Repository
class AuditRepository {
    private static final int READ_AT_A_TIME = 1000;

    private final JdbcClient jdbc;

    AuditRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The id of the entry is ignored: the database counts. */
    void add(AuditEntry entry) {
        jdbc.sql("insert into audit_entry (at, person_id, person, event, subject, detail, address)"
                        + " values (:at, :personId, :person, :event, :subject, :detail, :address)")
                .param("at", entry.at().atOffset(ZoneOffset.UTC))
                .param("personId", entry.personId())
                .param("person", entry.person())
                .param("event", entry.event())
                .param("subject", entry.subject())
                .param("detail", entry.detail())
                .param("address", entry.address())
                .update();
    }

    /** Newest first, those before {@code beforeId} where it is given. */
    List<AuditEntry> newest(@Nullable Long beforeId, int limit) {
        return jdbc.sql("select * from audit_entry where id < :before order by id desc fetch first :rows rows only")
                .param("before", beforeId == null ? Long.MAX_VALUE : beforeId)
                .param("rows", limit)
                .query(AuditRepository::entry)
                .list();
    }

    /** Every entry, oldest first, a part of them at a time so that a long log needs little memory. */
    void forEach(Consumer<AuditEntry> reader) {
        long last = 0;
        List<AuditEntry> part;
        do {
            part = jdbc.sql("select * from audit_entry where id > :last order by id fetch first :rows rows only")
                    .param("last", last)
                    .param("rows", READ_AT_A_TIME)
                    .query(AuditRepository::entry)
                    .list();
            part.forEach(reader);
            last = part.isEmpty() ? last : part.get(part.size() - 1).id();
        } while (part.size() == READ_AT_A_TIME);
    }

    private static AuditEntry entry(ResultSet row, int number) throws SQLException {
        return new AuditEntry(
                row.getLong("id"),
                row.getObject("at", OffsetDateTime.class).toInstant(),
                row.getString("person_id"),
                row.getString("person"),
                row.getString("event"),
                row.getString("subject"),
                row.getString("detail"),
                row.getString("address"));
    }
}
