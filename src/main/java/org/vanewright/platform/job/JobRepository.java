package org.vanewright.platform.job;

import java.io.IOException;
import java.io.InputStream;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Keeps jobs. A run holds a claim; what another run claimed since is no longer changed by it. */
@Repository
public class JobRepository {
    /** H2 holds 1 048 576 bytes in a column of bytes. */
    static final int PIECE = 900_000;

    private static final String COLUMNS =
            "id, kind, title, parameters, owner_id, state, attempts, done_count, of_count,"
                    + " words, link, file_name, file_type, file_size, problem, created_at, finished_at";

    private final JdbcClient jdbc;

    JobRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(Job job) {
        add(job, null);
    }

    /**
     * As {@link #add(Job)}, unless a job that is not finished holds the slot.
     *
     * @throws org.springframework.dao.DuplicateKeyException where one does
     */
    void add(Job job, @Nullable String slot) {
        jdbc.sql("insert into job (id, kind, title, parameters, owner_id, state, slot, created_at, changed_at)"
                        + " values (:id, :kind, :title, :parameters, :owner, 'WAITING', :slot, :at, :at)")
                .param("slot", slot)
                .param("id", job.id())
                .param("kind", job.kind())
                .param("title", job.title())
                .param("parameters", job.parameters())
                .param("owner", job.ownerId())
                .param("at", utc(job.createdAt()))
                .update();
    }

    Optional<Job> find(String id) {
        return jdbc.sql("select " + COLUMNS + " from job where id = :id")
                .param("id", id)
                .query((row, number) -> job(row))
                .optional();
    }

    /** The one that holds the slot. */
    Optional<Job> inSlot(String slot) {
        return jdbc.sql("select " + COLUMNS + " from job where slot = :slot")
                .param("slot", slot)
                .query((row, number) -> job(row))
                .optional();
    }

    /** The last one of a kind that came to that end. */
    Optional<Job> last(String kind, JobState state) {
        return jdbc.sql("select " + COLUMNS + " from job where kind = :kind and state = :state"
                        + " order by finished_at desc, id fetch first 1 rows only")
                .param("kind", kind)
                .param("state", state.name())
                .query((row, number) -> job(row))
                .optional();
    }

    /** Removes the finished ones of a kind but one. */
    void removeFinishedBut(String kind, String kept) {
        jdbc.sql("delete from job where kind = :kind and id <> :kept and finished_at is not null")
                .param("kind", kind)
                .param("kept", kept)
                .update();
    }

    private static Job job(ResultSet row) throws SQLException {
        String name = row.getString("file_name");
        OffsetDateTime finished = row.getObject("finished_at", OffsetDateTime.class);
        return new Job(
                row.getString("id"),
                row.getString("kind"),
                row.getString("title"),
                row.getString("parameters"),
                row.getString("owner_id"),
                JobState.valueOf(row.getString("state")),
                row.getInt("attempts"),
                row.getLong("done_count"),
                row.getLong("of_count"),
                row.getString("words"),
                row.getString("link"),
                name == null ? null : new Job.FileHead(name, row.getString("file_type"), row.getLong("file_size")),
                row.getString("problem"),
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                finished == null ? null : finished.toInstant());
    }

    /** Whether there is something left to do, which is the caller's now, whoever else was at it. */
    boolean begin(String id, String claim, Instant at) {
        return jdbc.sql("update job set state = 'RUNNING', claim = :claim, attempts = attempts + 1, done_count = 0,"
                                + " changed_at = :at where id = :id and state in ('WAITING', 'RUNNING')")
                        .param("claim", claim)
                        .param("at", utc(at))
                        .param("id", id)
                        .update()
                == 1;
    }

    /** False where the run must not go on. */
    boolean progress(String id, String claim, long done, long of, String words, Instant at) {
        return jdbc.sql("update job set done_count = :done, of_count = :of, words = :words, changed_at = :at"
                                + " where id = :id and claim = :claim and state = 'RUNNING' and cancel_asked = false")
                        .param("done", done)
                        .param("of", of)
                        .param("words", cut(words, 200))
                        .param("at", utc(at))
                        .param("id", id)
                        .param("claim", claim)
                        .update()
                == 1;
    }

    /** Whether nobody wants it any more; so it is where it is gone. */
    boolean isCancelAsked(String id) {
        return jdbc.sql("select cancel_asked from job where id = :id")
                .param("id", id)
                .query(Boolean.class)
                .optional()
                .orElse(true);
    }

    /** Whether the claim was still the caller's, so that what came of it is what counts. */
    @Transactional(rollbackFor = IOException.class)
    public boolean finish(
            String id, String claim, JobState state, @Nullable JobResult result, @Nullable String problem, Instant at)
            throws IOException {
        JobResult.JobFile file = result == null ? null : result.file();
        int finished = jdbc.sql("update job set state = :state, link = :link, file_name = :name, file_type = :type,"
                        + " file_size = :size, problem = :problem, claim = null, slot = null, changed_at = :at, finished_at = :at"
                        + " where id = :id and claim = :claim and state = 'RUNNING'")
                .param("state", state.name())
                .param("link", result == null ? null : result.link())
                .param("name", file == null ? null : file.name())
                .param("type", file == null ? null : file.type())
                .param("size", file == null ? null : (Long) file.sizeBytes())
                .param("problem", problem == null ? null : cut(problem, 1000))
                .param("at", utc(at))
                .param("id", id)
                .param("claim", claim)
                .update();
        if (finished == 1 && file != null) {
            keep(id, file.content());
        }
        return finished == 1;
    }

    private void keep(String id, InputStream content) throws IOException {
        byte[] piece = content.readNBytes(PIECE);
        for (int number = 0; piece.length > 0; number++) {
            jdbc.sql("insert into job_part (job_id, number, content) values (:id, :number, :content)")
                    .param("id", id)
                    .param("number", number)
                    .param("content", piece)
                    .update();
            piece = content.readNBytes(PIECE);
        }
    }

    /** A piece of the file that came of it, from 0; nothing behind the last one. */
    Optional<byte[]> piece(String id, int number) {
        return jdbc.sql("select content from job_part where job_id = :id and number = :number")
                .param("id", id)
                .param("number", number)
                .query((row, n) -> row.getBytes("content"))
                .optional();
    }

    /** Whoever runs it is told when it next says how far it has come, or when it begins. */
    void cancel(String id, Instant at) {
        jdbc.sql("update job set cancel_asked = true, changed_at = :at where id = :id"
                        + " and state in ('WAITING', 'RUNNING')")
                .param("at", utc(at))
                .param("id", id)
                .update();
    }

    int removeFinishedBefore(Instant at) {
        return jdbc.sql("delete from job where finished_at < :at")
                .param("at", utc(at))
                .update();
    }

    private static String cut(String words, int most) {
        return words.length() <= most ? words : words.substring(0, most);
    }

    private static OffsetDateTime utc(Instant at) {
        return at.atOffset(ZoneOffset.UTC);
    }
}
