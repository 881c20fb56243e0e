package org.vanewright.audit;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
    List<AuditEntry> newest(AuditFilter filter, @Nullable Long beforeId, int limit) {
        Map<String, Object> params = new HashMap<>();
        params.put("before", beforeId == null ? Long.MAX_VALUE : beforeId);
        params.put("rows", limit);
        return jdbc.sql("select * from audit_entry where id < :before" + conditions(filter, params)
                        + " order by id desc fetch first :rows rows only")
                .params(params)
                .query(AuditRepository::entry)
                .list();
    }

    /**
     * Every entry that stands there now, oldest first, a part of them at a time so that a long log needs little memory.
     */
    void forEach(AuditFilter filter, Consumer<AuditEntry> reader) {
        Map<String, Object> params = new HashMap<>();
        String conditions = conditions(filter, params);
        params.put("rows", READ_AT_A_TIME);
        params.put(
                "end",
                jdbc.sql("select coalesce(max(id), 0) from audit_entry")
                        .query(Long.class)
                        .single());
        params.put("last", 0L);
        List<AuditEntry> part;
        do {
            part = jdbc.sql("select * from audit_entry where id > :last and id <= :end" + conditions
                            + " order by id fetch first :rows rows only")
                    .params(params)
                    .query(AuditRepository::entry)
                    .list();
            part.forEach(reader);
            if (!part.isEmpty()) {
                params.put("last", part.get(part.size() - 1).id());
            }
        } while (part.size() == READ_AT_A_TIME);
    }

    /** Every kind of event that has happened. */
    List<String> events() {
        return jdbc.sql("select distinct event from audit_entry order by event")
                .query(String.class)
                .list();
    }

    private static String conditions(AuditFilter filter, Map<String, Object> params) {
        StringBuilder sql = new StringBuilder();
        String event = filter.event();
        if (event != null) {
            sql.append(" and event = :event");
            params.put("event", event);
        }
        for (String word : filter.words()) {
            String name = "word" + params.size();
            sql.append(" and lower(person || ' ' || subject || ' ' || address) like :")
                    .append(name)
                    .append(" escape '!'");
            params.put(name, "%" + word.replaceAll("[!%_]", "!$0") + "%");
        }
        return sql.toString();
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
