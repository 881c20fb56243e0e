package org.vanewright.audit;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** Writes and reads the log. Who may read it is decided by its callers. */
@Service
public class AuditLog {
    private static final int LONGEST_SUBJECT = 300;
    private static final int LONGEST_DETAIL = 2000;

    private final AuditRepository entries;
    private final Clock clock;

    AuditLog(AuditRepository entries, Clock clock) {
        this.entries = entries;
        this.clock = clock;
    }

    /**
     * Adds an entry, within the caller's transaction if there is one.
     *
     * @param personId who did it; null for a visitor or the service itself
     * @param person the name of who did it
     * @param event such as {@code draft.submitted}
     * @param subject what it happened to
     * @param detail more words; may be empty
     */
    public void add(@Nullable String personId, String person, String event, String subject, String detail) {
        entries.add(new AuditEntry(
                0,
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                personId,
                shortened(person, 120),
                event,
                shortened(subject, LONGEST_SUBJECT),
                shortened(detail, LONGEST_DETAIL),
                address()));
    }

    /** Newest first; {@code beforeId} is the last one of the page before. */
    public List<AuditEntry> newest(@Nullable Long beforeId, int limit) {
        return newest(AuditFilter.ALL, beforeId, limit);
    }

    /** As {@link #newest(Long, int)}, of those that the filter lets pass. */
    public List<AuditEntry> newest(AuditFilter filter, @Nullable Long beforeId, int limit) {
        return entries.newest(filter, beforeId, limit);
    }

    /** Every entry that the filter lets pass, oldest first. */
    public void forEach(AuditFilter filter, Consumer<AuditEntry> reader) {
        entries.forEach(filter, reader);
    }

    /** Every kind of event that has happened, in the order of the alphabet. */
    public List<String> events() {
        return entries.events();
    }

    private static String address() {
        return RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes request
                ? shortened(String.valueOf(request.getRequest().getRemoteAddr()), 60)
                : "";
    }

    private static String shortened(String text, int longest) {
        return text.length() <= longest ? text : String.format(Locale.ROOT, "%." + (longest - 1) + "s…", text);
    }
}
