package org.vanewright.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads and writes people. Hashes of passwords leave it only for comparing. */
@Repository
class PersonRepository {
    private static final String COLUMNS =
            "select id, email, name, role, state, about, version, created_at, signed_in_at from person ";

    private final JdbcClient jdbc;

    PersonRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** False where somebody has that e-mail address already; nothing is changed then. */
    boolean add(Person person, @Nullable String passwordHash) {
        if (findByEmail(person.email()).isPresent()) {
            return false;
        }
        try {
            jdbc.sql("insert into person (id, email, name, role, state, password_hash, about, version, created_at)"
                            + " values (:id, :email, :name, :role, :state, :hash, :about, :version, :createdAt)")
                    .param("id", person.id())
                    .param("email", person.email())
                    .param("name", person.name())
                    .param("role", person.role().name())
                    .param("state", person.state().name())
                    .param("hash", passwordHash)
                    .param("about", person.about())
                    .param("version", person.version())
                    .param("createdAt", utc(person.createdAt()))
                    .update();
            return true;
        } catch (DuplicateKeyException e) {
            return false;
        }
    }

    Optional<Person> find(String id) {
        if (id.indexOf('\0') >= 0) {
            // PostgreSQL would refuse to look for it.
            return Optional.empty();
        }
        return jdbc.sql(COLUMNS + "where id = :id")
                .param("id", id)
                .query(PersonRepository::person)
                .optional();
    }

    List<Person> find(Collection<String> ids) {
        return ids.isEmpty()
                ? List.of()
                : jdbc.sql(COLUMNS + "where id in (:ids)")
                        .param("ids", ids)
                        .query(PersonRepository::person)
                        .list();
    }

    Optional<Person> findByEmail(String email) {
        return jdbc.sql(COLUMNS + "where email = :email")
                .param("email", email)
                .query(PersonRepository::person)
                .optional();
    }

    /** Everybody, by name. */
    List<Person> all() {
        return jdbc.sql(COLUMNS + "order by lower(name), id")
                .query(PersonRepository::person)
                .list();
    }

    /**
     * Some of them, by name.
     *
     * @param state null for any
     * @param words part of name or e-mail address; empty for anybody
     * @param after the last one of the page before; null for the first page
     */
    List<Person> page(@Nullable PersonState state, String words, @Nullable PersonCursor after, int limit) {
        StringBuilder sql = new StringBuilder(COLUMNS).append("where 1 = 1");
        Map<String, Object> params = new HashMap<>();
        if (state != null) {
            sql.append(" and state = :state");
            params.put("state", state.name());
        }
        if (!words.isEmpty()) {
            sql.append(" and (lower(name) like lower(:words) escape '!' or email like lower(:words) escape '!')");
            params.put("words", "%" + words.replaceAll("[!%_]", "!$0") + "%");
        }
        if (after != null) {
            sql.append(" and (lower(name), id) > (lower(:afterName), :afterId)");
            params.put("afterName", after.name());
            params.put("afterId", after.id());
        }
        sql.append(" order by lower(name), id fetch first :rows rows only");
        params.put("rows", limit);
        return jdbc.sql(sql.toString())
                .params(params)
                .query(PersonRepository::person)
                .list();
    }

    /** Those who can sign in, by name. */
    List<Person> active() {
        return jdbc.sql(COLUMNS + "where state = 'ACTIVE' order by lower(name), id")
                .query(PersonRepository::person)
                .list();
    }

    /** Whether somebody active has that role, or one of them, besides that person. */
    boolean otherActive(List<Role> roles, String personId) {
        return jdbc.sql("select count(*) from person where state = 'ACTIVE' and role in (:roles) and id <> :id")
                        .param("roles", roles.stream().map(Role::name).toList())
                        .param("id", personId)
                        .query(Long.class)
                        .single()
                > 0;
    }

    /** The active stewards; no other transaction changes them before this one ends. */
    List<String> lockStewards() {
        return jdbc.sql("select id from person where state = 'ACTIVE' and role = 'STEWARD' order by id for update")
                .query(String.class)
                .list();
    }

    Optional<String> passwordHash(String id) {
        return jdbc.sql("select password_hash from person where id = :id and password_hash is not null")
                .param("id", id)
                .query(String.class)
                .optional();
    }

    void changePassword(String id, String hash) {
        changed(jdbc.sql("update person set password_hash = :hash, version = version + 1 where id = :id")
                .param("hash", hash)
                .param("id", id)
                .update());
    }

    /** Replaces a hash by one of the same password, unless it was changed meanwhile. */
    void rehash(String id, String before, String hash) {
        jdbc.sql("update person set password_hash = :hash where id = :id and password_hash = :before")
                .param("hash", hash)
                .param("id", id)
                .param("before", before)
                .update();
    }

    void describe(String id, String name, @Nullable String about) {
        changed(jdbc.sql("update person set name = :name, about = :about, version = version + 1 where id = :id")
                .param("name", name)
                .param("about", about)
                .param("id", id)
                .update());
    }

    void place(String id, Role role, PersonState state) {
        changed(jdbc.sql("update person set role = :role, state = :state, version = version + 1 where id = :id")
                .param("role", role.name())
                .param("state", state.name())
                .param("id", id)
                .update());
    }

    /** By name, then by id, those behind somebody; everybody from the start where that is null. */
    List<Person> byName(@Nullable Person after, int most) {
        String where = after == null ? "" : " where lower(name) > :name or lower(name) = :name and id > :id";
        JdbcClient.StatementSpec asked = jdbc.sql(
                        COLUMNS + where + " order by lower(name), id fetch first :most rows only")
                .param("most", most);
        if (after != null) {
            asked = asked.param("name", after.name().toLowerCase(Locale.ROOT)).param("id", after.id());
        }
        return asked.query(PersonRepository::person).list();
    }

    void signedIn(String id, Instant at) {
        jdbc.sql("update person set signed_in_at = :at where id = :id")
                .param("at", utc(at))
                .param("id", id)
                .update();
    }

    private static void changed(int rows) {
        if (rows != 1) {
            throw new IllegalStateException("no such person");
        }
    }

    private static OffsetDateTime utc(Instant at) {
        return at.atOffset(ZoneOffset.UTC);
    }

    private static Person person(ResultSet row, int number) throws SQLException {
        OffsetDateTime signedIn = row.getObject("signed_in_at", OffsetDateTime.class);
        return new Person(
                row.getString("id"),
                row.getString("email"),
                row.getString("name"),
                Role.valueOf(row.getString("role")),
                PersonState.valueOf(row.getString("state")),
                row.getString("about"),
                row.getInt("version"),
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                signedIn == null ? null : signedIn.toInstant());
    }
}
