package org.vanewright.record.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.Draft;
import org.vanewright.record.DraftState;
import org.vanewright.record.PersonRef;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RevisionRef;

/**
 * One's own draft in the API.
 *
 * @param version counts savings; also its entity tag
 * @param author display name
 * @param coauthors display names
 * @param base the published revision that it changes
 * @param origin the revision of another record that it was started from
 * @param submitted the revision it was last submitted as
 * @param problems what stands in the way of submitting it
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record DraftBody<T extends RecordContent>(
        String id,
        String kind,
        DraftState state,
        int version,
        String author,
        List<String> coauthors,
        Instant createdAt,
        Instant changedAt,
        @Nullable RevisionRef base,
        @Nullable RevisionRef origin,
        @Nullable RevisionRef submitted,
        @Nullable List<FieldProblem> problems,
        T content) {
    public static <T extends RecordContent> DraftBody<T> of(Draft<T> d, @Nullable List<FieldProblem> problems) {
        return new DraftBody<>(
                d.id(),
                d.kind(),
                d.state(),
                d.version(),
                d.author().name(),
                d.coauthors().stream().map(PersonRef::name).toList(),
                d.createdAt(),
                d.changedAt(),
                d.base(),
                d.origin(),
                d.submitted(),
                problems,
                d.content());
    }
}
