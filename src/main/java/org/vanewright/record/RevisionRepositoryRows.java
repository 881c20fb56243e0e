package org.vanewright.record;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/** Reads revisions of one kind from the rows of their table. */
final class RevisionRepositoryRows<T extends RecordContent> {
    private static final String LISTED = "slug, revision, state, sha256, contributor, created_at, contributor_id,"
            + " licence, summary, draft_id, published_at, published_by, closed_at, closed_by, reason, import_origin";

    private static final String COLUMNS = LISTED + ", content, derived_from_slug, derived_from_revision, localised";

    /** Characters of documents of one kind that are kept as they were read; what they say takes several times as much. */
    private static final long KEPT_CHARACTERS = Runtime.getRuntime().maxMemory() / 500;

    /**
     * By what they say, so that what stands in the database counts: pages read the same document several times, and many
     * name the same airframe or device.
     */
    private final Cache<String, T> contents = Caffeine.newBuilder()
            .maximumWeight(KEPT_CHARACTERS)
            .weigher((String text, T content) -> text.length())
            .build();

    private final String table;
    private final CanonicalJson json;
    private final Class<T> type;

    RevisionRepositoryRows(String table, CanonicalJson json, Class<T> type) {
        this.table = table;
        this.json = json;
        this.type = type;
    }

    String select(String rest) {
        return "select " + COLUMNS + " from " + table + " " + rest;
    }

    /** As {@link #select}, for {@link #listed}. */
    String selectListed(String rest) {
        return "select " + LISTED + " from " + table + " " + rest;
    }

    ListedRevision listed(ResultSet row, int rowNumber) throws SQLException {
        return new ListedRevision(
                row.getString("slug"),
                row.getInt("revision"),
                RecordState.valueOf(row.getString("state")),
                row.getString("sha256"),
                row.getString("contributor"),
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                standing(row));
    }

    Revision<T> revision(ResultSet row, int rowNumber) throws SQLException {
        String originSlug = row.getString("derived_from_slug");
        return new Revision<>(
                row.getString("slug"),
                row.getInt("revision"),
                RecordState.valueOf(row.getString("state")),
                contents.get(text(row), text -> json.read(text, type)),
                row.getString("sha256"),
                row.getString("contributor"),
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                originSlug == null ? null : new RevisionRef(originSlug, row.getInt("derived_from_revision")),
                standing(row));
    }

    static RevisionHead head(ResultSet row, int rowNumber) throws SQLException {
        return new RevisionHead(
                row.getString("slug"),
                row.getInt("revision"),
                row.getString("sha256"),
                row.getObject("published_at", OffsetDateTime.class).toInstant());
    }

    private Standing standing(ResultSet row) throws SQLException {
        String origin = row.getString("import_origin");
        String licence = row.getString("licence");
        return new Standing(
                row.getString("contributor_id"),
                licence == null ? null : Licence.valueOf(licence),
                row.getString("summary"),
                row.getString("draft_id"),
                instant(row, "published_at"),
                row.getString("published_by"),
                instant(row, "closed_at"),
                row.getString("closed_by"),
                row.getString("reason"),
                origin == null ? null : json.read(origin, ImportOrigin.class));
    }

    /** What an imported document names is looked up here, so its names here are read where they differ. */
    private static String text(ResultSet row) throws SQLException {
        String localised = row.getString("localised");
        return localised == null ? row.getString("content") : localised;
    }

    static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime at = row.getObject(column, OffsetDateTime.class);
        return at == null ? null : at.toInstant();
    }
}
