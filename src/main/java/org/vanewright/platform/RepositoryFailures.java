package org.vanewright.platform;

import java.sql.SQLException;
import java.sql.SQLNonTransientConnectionException;
import java.sql.SQLRecoverableException;
import java.sql.SQLTransientConnectionException;
import java.util.Set;

/** What a database says of itself when a statement fails. */
final class RepositoryFailures {
    /** A server that stops or starts, or has too many connections: PostgreSQL 17, appendix A. */
    private static final Set<String> AWAY = Set.of("57P01", "57P02", "57P03", "53300");

    /** All of them mean a connection that failed. */
    private static final String CONNECTION_CLASS = "08";

    private static final String DISK_FULL = "53100";

    /** H2: connection broken, database closed, object closed. */
    private static final Set<Integer> AWAY_H2 = Set.of(90067, 90098, 90121);

    /** The pool says so, without a code, where a transaction is to be rolled back whose connection broke. */
    private static final String CLOSED = "Connection is closed";

    private RepositoryFailures() {}

    static boolean isFull(Throwable cause) {
        return cause instanceof SQLException sql && DISK_FULL.equals(sql.getSQLState());
    }

    static boolean isAway(Throwable cause) {
        if (!(cause instanceof SQLException sql)) {
            return false;
        }
        String state = String.valueOf(sql.getSQLState());
        return sql instanceof SQLTransientConnectionException
                || sql instanceof SQLNonTransientConnectionException
                || sql instanceof SQLRecoverableException
                || state.startsWith(CONNECTION_CLASS)
                || AWAY.contains(state)
                || sql.getSQLState() == null && CLOSED.equals(sql.getMessage())
                || AWAY_H2.contains(sql.getErrorCode());
    }
}
