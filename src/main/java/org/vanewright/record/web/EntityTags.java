package org.vanewright.record.web;

import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;

/** Changes name what they start from by its strong entity tag in {@code If-Match} (RFC 9110, 13.1.1). */
final class EntityTags {
    private EntityTags() {}

    /**
     * @param ifMatch as sent
     * @param current the tag that must be among those named; {@code *} names any
     * @param changed a sentence for who named another
     * @throws ResponseStatusException 428 where nothing is named (RFC 6585), 412 where it is something else
     */
    static void require(@Nullable String ifMatch, String current, String changed) {
        if (ifMatch == null) {
            throw new ResponseStatusException(
                    HttpStatus.PRECONDITION_REQUIRED, "If-Match must name the entity tag of what you change.");
        }
        for (String tag : ifMatch.split(",", -1)) {
            if (tag.strip().equals("*") || tag.strip().equals(current)) {
                return;
            }
        }
        throw new ResponseStatusException(HttpStatus.PRECONDITION_FAILED, changed);
    }
}
