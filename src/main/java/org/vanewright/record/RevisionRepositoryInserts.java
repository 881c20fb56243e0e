package org.vanewright.record;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Freezes documents of one kind into revisions and gives each its slug and number. */
final class RevisionRepositoryInserts<T extends RecordContent> {
    private final JdbcClient jdbc;
    private final CanonicalJson json;
    private final Clock clock;
    private final String table;
    private final String kind;
    private final Class<T> type;

    RevisionRepositoryInserts(
            JdbcClient jdbc, CanonicalJson json, Clock clock, String table, String kind, Class<T> type) {
        this.jdbc = jdbc;
        this.json = json;
        this.clock = clock;
        this.table = table;
        this.kind = kind;
        this.type = type;
    }

    Frozen<T> frozen(
            T content,
            String contributor,
            @Nullable RevisionRef derivedFrom,
            RecordState state,
            Function<Instant, Standing> standing) {
        String canonical = json.write(content);
        // Read back, so that what is returned is what will be found, and nothing unreadable is ever stored.
        T stored = json.read(canonical, type);
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        return new Frozen<>(
                stored,
                canonical,
                json.sha256(canonical),
                null,
                contributor,
                now,
                derivedFrom,
                state,
                standing.apply(now));
    }

    /** Under a slug made from its name; two at once with the same name get two. */
    Revision<T> insertFirst(Frozen<T> frozen) {
        int attempt = 1;
        String slug = Slugs.candidate(frozen.content().name(), kind, attempt);
        while (!insert(slug, 1, frozen)) {
            slug = Slugs.candidate(frozen.content().name(), kind, ++attempt);
        }
        return frozen.as(slug, 1);
    }

    /** Under the next number of that record. */
    Revision<T> insertNext(String slug, Frozen<T> frozen) {
        int next = newestNumber(slug) + 1;
        while (!insert(slug, next, frozen)) {
            next++;
        }
        return frozen.as(slug, next);
    }

    private int newestNumber(String slug) {
        return jdbc.sql("select coalesce(max(revision), 0) from " + table + " where slug = :slug")
                .param("slug", slug)
                .query(Integer.class)
                .single();
    }

    /** False if that revision exists already. */
    boolean insert(String slug, int number, Frozen<T> frozen) {
        RevisionRef origin = frozen.derivedFrom();
        Standing standing = frozen.standing();
        Instant published = standing.publishedAt();
        return jdbc.sql("insert into " + table + " (slug, revision, state, name, content, sha256, contributor,"
                                + " created_at, derived_from_slug, derived_from_revision, contributor_id, licence,"
                                + " summary, draft_id, published_at, published_by, import_origin, localised) values (:slug, :revision, :state,"
                                + " :name, :content, :sha256, :contributor, :createdAt, :originSlug, :originRevision,"
                                + " :contributorId, :licence, :summary, :draftId, :publishedAt, :publishedBy,"
                                + " :origin, :localised)"
                                + " on conflict do nothing")
                        .param("slug", slug)
                        .param("revision", number)
                        .param("state", frozen.state().name())
                        .param("name", frozen.content().name())
                        .param("content", frozen.canonical())
                        .param("sha256", frozen.sha256())
                        .param("contributor", frozen.contributor())
                        .param("createdAt", frozen.createdAt().atOffset(ZoneOffset.UTC))
                        .param("originSlug", origin == null ? null : origin.slug())
                        .param("originRevision", origin == null ? null : origin.revision())
                        .param("contributorId", standing.contributorId())
                        .param(
                                "licence",
                                standing.licence() == null
                                        ? null
                                        : standing.licence().name())
                        .param("summary", standing.summary())
                        .param("draftId", standing.draftId())
                        .param("publishedAt", published == null ? null : published.atOffset(ZoneOffset.UTC))
                        .param("publishedBy", standing.publishedBy())
                        .param("origin", standing.origin() == null ? null : json.write(standing.origin()))
                        .param("localised", frozen.localised())
                        .update()
                == 1;
    }

    /**
     * A revision before it has its place.
     *
     * @param canonical the document that is hashed
     * @param localised the same with names of records here, where an imported one has others; null where it is the same
     */
    record Frozen<T extends RecordContent>(
            T content,
            String canonical,
            String sha256,
            @Nullable String localised,
            String contributor,
            Instant createdAt,
            @Nullable RevisionRef derivedFrom,
            RecordState state,
            Standing standing) {
        Revision<T> as(String slug, int number) {
            return new Revision<>(slug, number, state, content, sha256, contributor, createdAt, derivedFrom, standing);
        }
    }
}
