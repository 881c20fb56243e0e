package org.vanewright.platform;

import java.io.IOException;
import java.sql.SQLException;
import java.sql.SQLNonTransientConnectionException;
import java.sql.SQLRecoverableException;
import java.sql.SQLTransientConnectionException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;

/** What is nobody's mistake and passes: it is told calmly, and the log needs no stack trace. */
public enum Outage {
    /** The database does not answer. */
    DATABASE_AWAY(
            HttpStatus.SERVICE_UNAVAILABLE,
            "Back in a moment",
            "The service cannot reach its records just now, and keeps trying. If you sent something, look whether it is"
                    + " there before you send it again."),
    /** There is no room left on a disk. */
    STORAGE_FULL(
            HttpStatus.INSUFFICIENT_STORAGE,
            "No room left",
            "There is no room left where the service keeps its files. Nothing of this was kept. Tell the keeper of this"
                    + " service.");

    /** Seconds after which it is worth to ask again. */
    public static final String RETRY_AFTER_S = "5";

    /** 08 is a connection that failed; 57P01 to 57P03 a server that stops or starts; 53300 one that has too many. */
    private static final Set<String> AWAY = Set.of("57P01", "57P02", "57P03", "53300");

    /** H2: connection broken, database closed, object closed. */
    private static final Set<Integer> AWAY_H2 = Set.of(90067, 90098, 90121);

    private static final String FULL = "53100";
    private static final List<String> FULL_WORDS =
            List.of("no space left on device", "disk quota exceeded", "not enough space on the disk");
    private static final int DEEPEST = 30;

    private final HttpStatus status;
    private final String title;
    private final String detail;

    Outage(HttpStatus status, String title, String detail) {
        this.status = status;
        this.title = title;
        this.detail = detail;
    }

    /** What lies beneath an error; null where it is something else. */
    public static @Nullable Outage of(@Nullable Object error) {
        Throwable cause = error instanceof Throwable thrown ? thrown : null;
        for (int depth = 0; cause != null && depth < DEEPEST; depth++) {
            if (isFull(cause)) {
                return STORAGE_FULL;
            }
            if (isAway(cause)) {
                return DATABASE_AWAY;
            }
            cause = cause.getCause();
        }
        return null;
    }

    private static boolean isFull(Throwable cause) {
        if (cause instanceof SQLException sql && FULL.equals(sql.getSQLState())) {
            return true;
        }
        String words = String.valueOf(cause.getMessage()).toLowerCase(Locale.ROOT);
        return cause instanceof IOException && FULL_WORDS.stream().anyMatch(words::contains);
    }

    private static boolean isAway(Throwable cause) {
        if (!(cause instanceof SQLException sql)) {
            return false;
        }
        String state = String.valueOf(sql.getSQLState());
        return sql instanceof SQLTransientConnectionException
                || sql instanceof SQLNonTransientConnectionException
                || sql instanceof SQLRecoverableException
                || state.startsWith("08")
                || AWAY.contains(state)
                || AWAY_H2.contains(sql.getErrorCode());
    }

    public HttpStatus status() {
        return status;
    }

    String title() {
        return title;
    }

    String detail() {
        return detail;
    }
}
