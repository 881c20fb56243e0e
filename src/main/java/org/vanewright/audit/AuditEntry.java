package org.vanewright.audit;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Something that happened. Entries are added and read, never changed or removed.
 *
 * @param id counts up
 * @param at when
 * @param personId who did it; null for a visitor or the service itself
 * @param person the person's name at that time
 * @param event what happened, such as {@code draft.submitted} or {@code sign-in.refused}
 * @param subject what it happened to, such as {@code layouts/high-wing revision 2}
 * @param detail more words, such as a reason; may be empty
 * @param address network address of the request; empty outside of any
 */
public record AuditEntry(
        long id,
        Instant at,
        @Nullable String personId,
        String person,
        String event,
        String subject,
        String detail,
        String address) {}
