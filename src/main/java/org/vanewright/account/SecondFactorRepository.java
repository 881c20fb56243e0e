package org.vanewright.account;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Keeps second factors. Whatever works once is used up by one statement, so that only one of many at once succeeds. */
@Repository
class SecondFactorRepository {
    private final JdbcClient jdbc;

    SecondFactorRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * A person's factor.
     *
     * @param secret as {@link StoredSecrets} wrote it
     * @param on false until the person proved to have the secret
     */
    record Stored(String secret, boolean on) {}

    Optional<Stored> find(String personId) {
        return jdbc.sql("select secret, on_since from second_factor where person_id = :id")
                .param("id", personId)
                .query((row, number) -> new Stored(row.getString("secret"), row.getObject("on_since") != null))
                .optional();
    }

    /** Keeps a secret that is not in use yet; changes nothing where one is. */
    @Transactional
    void prepare(String personId, String secret) {
        jdbc.sql("insert into second_factor (person_id, secret, last_step) values (:id, :secret, 0)"
                        + " on conflict do nothing")
                .param("id", personId)
                .param("secret", secret)
                .update();
        jdbc.sql("update second_factor set secret = :secret where person_id = :id and on_since is null")
                .param("id", personId)
                .param("secret", secret)
                .update();
    }

    /** Takes a prepared secret into use; false where it is another one meanwhile, or in use already. */
    @Transactional
    boolean switchOn(String personId, String secret, long step, Instant now, List<String> codeHashes) {
        int changed = jdbc.sql("update second_factor set on_since = :now, last_step = :step"
                        + " where person_id = :id and secret = :secret and on_since is null")
                .param("now", now.atOffset(ZoneOffset.UTC))
                .param("step", step)
                .param("id", personId)
                .param("secret", secret)
                .update();
        if (changed == 1) {
            codeHashes.forEach(hash -> jdbc.sql("insert into recovery_code (person_id, code_hash) values (:id, :hash)")
                    .param("id", personId)
                    .param("hash", hash)
                    .update());
        }
        return changed == 1;
    }

    /** True for exactly one of those who come with the code of a step, and never for an earlier one. */
    boolean useStep(String personId, long step) {
        return jdbc.sql("update second_factor set last_step = :step"
                                + " where person_id = :id and last_step < :step and on_since is not null")
                        .param("step", step)
                        .param("id", personId)
                        .update()
                == 1;
    }

    /** True for exactly one of those who come with a recovery code. */
    boolean useRecoveryCode(String personId, String hash) {
        return jdbc.sql("delete from recovery_code where person_id = :id and code_hash = :hash")
                        .param("id", personId)
                        .param("hash", hash)
                        .update()
                == 1;
    }

    int recoveryCodes(String personId) {
        return jdbc.sql("select count(*) from recovery_code where person_id = :id")
                .param("id", personId)
                .query(Integer.class)
                .single();
    }

    /** False where there was none. */
    @Transactional
    boolean remove(String personId) {
        jdbc.sql("delete from recovery_code where person_id = :id")
                .param("id", personId)
                .update();
        return jdbc.sql("delete from second_factor where person_id = :id")
                        .param("id", personId)
                        .update()
                == 1;
    }
}
