package org.vanewright.platform;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.vanewright.platform.attachment.AttachmentsAwayException;

/** What is nobody's mistake and passes: it is told calmly, and the log needs no stack trace. */
public enum Outage {
    /** The database does not answer. */
    DATABASE_AWAY(
            HttpStatus.SERVICE_UNAVAILABLE,
            "Back in a moment",
            "The service cannot reach its records just now, and keeps trying. If you sent something, look whether it is"
                    + " there before you send it again."),
    /** The object storage of attachments does not answer. */
    ATTACHMENTS_AWAY(
            HttpStatus.SERVICE_UNAVAILABLE,
            "Back in a moment",
            "The service cannot reach the place where photographs and logs are kept just now. Nothing of this was kept."),
    /** There is no room left on a disk. */
    STORAGE_FULL(
            HttpStatus.INSUFFICIENT_STORAGE,
            "No room left",
            "There is no room left where the service keeps its files. Nothing of this was kept. Tell the keeper of this"
                    + " service.");

    /** Seconds after which it is worth to ask again. */
    public static final String RETRY_AFTER_S = "5";

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
            if (RepositoryFailures.isAway(cause)) {
                return DATABASE_AWAY;
            }
            if (cause instanceof AttachmentsAwayException) {
                return ATTACHMENTS_AWAY;
            }
            cause = cause.getCause();
        }
        return null;
    }

    private static boolean isFull(Throwable cause) {
        String words = String.valueOf(cause.getMessage()).toLowerCase(Locale.ROOT);
        return RepositoryFailures.isFull(cause)
                || cause instanceof IOException && FULL_WORDS.stream().anyMatch(words::contains);
    }

    /** Whether it is worth to ask again soon, with nothing changed. */
    public boolean passes() {
        return status == HttpStatus.SERVICE_UNAVAILABLE;
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
