package org.vanewright.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.transaction.CannotCreateTransactionException;
import org.springframework.transaction.TransactionSystemException;

class OutageTest {
    /** PostgreSQL 17, appendix A, "PostgreSQL Error Codes". */
    @ParameterizedTest
    @CsvSource({
        "08006, DATABASE_AWAY",
        "08001, DATABASE_AWAY",
        "57P01, DATABASE_AWAY",
        "57P03, DATABASE_AWAY",
        "53300, DATABASE_AWAY",
        "53100, STORAGE_FULL",
        "23505,",
        "57014,",
    })
    void aDatabaseSaysSoByItsCode(String state, Outage outage) {
        assertThat(Outage.of(new IllegalStateException(new SQLException("words", state))))
                .isEqualTo(outage);
    }

    @Test
    void aPoolThatWaitedInVainSaysSoByItsException() {
        var waited = new SQLTransientConnectionException("not available, request timed out after 5000ms");
        assertThat(Outage.of(new CannotCreateTransactionException("no connection", waited)))
                .isEqualTo(Outage.DATABASE_AWAY);
    }

    @Test
    void aConnectionThatBrokeInATransactionCannotBeRolledBack() {
        var closed = new TransactionSystemException("JDBC rollback failed", new SQLException("Connection is closed"));
        assertThat(Outage.of(closed)).isEqualTo(Outage.DATABASE_AWAY);
    }

    @ParameterizedTest
    @ValueSource(strings = {"No space left on device", "Disk quota exceeded", "There is not enough space on the disk"})
    void aSystemSaysInWordsThatItsDiskIsFull(String words) {
        assertThat(Outage.of(new UncheckedIOException(new IOException(words)))).isEqualTo(Outage.STORAGE_FULL);
        assertThat(Outage.of(new IllegalArgumentException(words)))
                .as("somebody's text")
                .isNull();
    }

    @Test
    void otherErrorsAreNone() {
        assertThat(Outage.of(new IOException("Connection reset"))).isNull();
        assertThat(Outage.of(null)).isNull();
        assertThat(Outage.of("words")).isNull();
    }
}
