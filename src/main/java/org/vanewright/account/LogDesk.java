package org.vanewright.account;

import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.audit.AuditEntry;
import org.vanewright.audit.AuditFilter;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;
import org.vanewright.record.RecordPage;

/** The audit log as stewards read it; everything here asks for {@link Power#RUN}. */
@Service
public class LogDesk {
    static final int PAGE = 50;
    private static final Pattern CURSOR = Pattern.compile("\\d{1,18}");

    private final AuditLog audit;
    private final Actors actors;

    LogDesk(AuditLog audit, Actors actors) {
        this.audit = audit;
        this.actors = actors;
    }

    /**
     * A page of entries, newest first.
     *
     * @param cursor from the page before; null for the first
     */
    public RecordPage<AuditEntry> page(AuditFilter filter, @Nullable String cursor) {
        actors.current().require(Power.RUN);
        List<AuditEntry> found = audit.newest(filter, cursor == null ? null : decoded(cursor), PAGE + 1);
        if (found.size() <= PAGE) {
            return new RecordPage<>(found, null);
        }
        List<AuditEntry> shown = found.subList(0, PAGE);
        return new RecordPage<>(shown, Long.toString(shown.get(PAGE - 1).id()));
    }

    /** Every kind of event that has happened. */
    public List<String> events() {
        actors.current().require(Power.RUN);
        return audit.events();
    }

    /** Entries that are handed out one by one, oldest first. */
    public interface Export {
        void forEach(Consumer<AuditEntry> reader);
    }

    /** Every entry, to be taken away; that somebody does so is an entry itself. */
    public Export export(AuditFilter filter) {
        Actor steward = actors.current();
        String id = steward.require(Power.RUN);
        String which = filter.event() == null ? "every event" : filter.event();
        String words = filter.words().isEmpty() ? "" : ", with " + String.join(" ", filter.words());
        audit.add(id, steward.name(), "audit.exported", "audit log", which + words);
        return reader -> audit.forEach(filter, reader);
    }

    private static Long decoded(String cursor) {
        if (!CURSOR.matcher(cursor).matches()) {
            String shown = cursor.length() <= 80 ? cursor : cursor.substring(0, 77) + "…";
            throw new InvalidInputException(
                    new FieldProblem("cursor", shown, "the nextCursor of an earlier page, unchanged"));
        }
        return Long.valueOf(cursor);
    }
}
