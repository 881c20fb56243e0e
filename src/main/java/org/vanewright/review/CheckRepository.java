package org.vanewright.review;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.check.CheckResult;

/** What the automatic checks found when they last ran. */
@Repository
class CheckRepository {
    private static final int LONGEST_NAME = 120;
    private static final int LONGEST_DETAIL = 2000;
    private static final String KEY = " where kind = :kind and slug = :slug and revision = :revision";

    private final JdbcClient jdbc;

    CheckRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Call it within a transaction. */
    void replace(String kind, RevisionRef ref, List<CheckResult> results, Instant at) {
        keyed("delete from submission_check" + KEY, kind, ref).update();
        for (int i = 0; i < results.size(); i++) {
            CheckResult result = results.get(i);
            keyed(
                            "insert into submission_check (kind, slug, revision, place, name, outcome, detail,"
                                    + " checked_at) values (:kind, :slug, :revision, :place, :name, :outcome, :detail,"
                                    + " :at) on conflict do nothing",
                            kind,
                            ref)
                    .param("place", i)
                    .param("name", cut(result.name(), LONGEST_NAME))
                    .param("outcome", result.outcome().name())
                    .param("detail", cut(result.detail(), LONGEST_DETAIL))
                    .param("at", at.atOffset(ZoneOffset.UTC))
                    .update();
        }
    }

    /** In the order they ran; empty where they have not. */
    List<CheckResult> of(String kind, RevisionRef ref) {
        return keyed("select name, outcome, detail from submission_check" + KEY + " order by place", kind, ref)
                .query((row, n) -> new CheckResult(
                        row.getString("name"),
                        CheckResult.Outcome.valueOf(row.getString("outcome")),
                        row.getString("detail")))
                .list();
    }

    private JdbcClient.StatementSpec keyed(String sql, String kind, RevisionRef ref) {
        return jdbc.sql(sql).param("kind", kind).param("slug", ref.slug()).param("revision", ref.revision());
    }

    private static String cut(String text, int longest) {
        return text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
    }
}
