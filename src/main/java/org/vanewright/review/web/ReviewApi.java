package org.vanewright.review.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.record.RecordState;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.check.CheckResult;
import org.vanewright.review.QueueItem;
import org.vanewright.review.Remark;
import org.vanewright.review.ReviewDesk;
import org.vanewright.review.Reviewing;

/** Reviews as JSON, for maintainers' programs. */
@RestController
@RequestMapping("/api/v1/review")
@Tag(name = "Review", description = "What waits for a review, and the steps of one.")
class ReviewApi {
    private static final String ONE = "/{plural}/{slug}/{number}/";

    private final ReviewDesk desk;
    private final Reviewing reviewing;

    ReviewApi(ReviewDesk desk, Reviewing reviewing) {
        this.desk = desk;
        this.reviewing = reviewing;
    }

    /**
     * A submission that waits.
     *
     * @param claimedBy who looks at it
     * @param own whether it is one's own work
     */
    record Waiting(
            String kind,
            String plural,
            String slug,
            int revision,
            String name,
            String contributor,
            Instant submittedAt,
            String sha256,
            @Nullable String claimedBy,
            boolean own,
            List<CheckResult> checks) {
        static Waiting of(QueueItem item) {
            Revision<?> r = item.revision();
            return new Waiting(
                    item.kind(),
                    item.plural(),
                    r.slug(),
                    r.number(),
                    r.content().name(),
                    r.contributor(),
                    r.createdAt(),
                    r.sha256(),
                    item.claim() == null ? null : item.claim().person().name(),
                    item.own(),
                    item.checks());
        }
    }

    /** @param takeOver whether to take it from who has it; absent means not */
    record ClaimRequest(@Nullable Boolean takeOver) {}

    /** @param reason why, in words for people */
    record ReasonRequest(@Nullable String reason) {}

    /**
     * @param field path such as {@code masses.emptyKg}; absent for the whole
     * @param text what to say
     */
    record RemarkRequest(@Nullable String field, @Nullable String text) {}

    /** Where a revision stands after a step. */
    record Standing(String slug, int revision, RecordState state) {}

    /** A remark as kept. */
    record RemarkBody(String field, String text, String person, Instant at) {}

    @Operation(summary = "What waits for a review, oldest first")
    @GetMapping
    public List<Waiting> queue() {
        return desk.queue().stream().map(Waiting::of).toList();
    }

    @Operation(summary = "Claim a submission")
    @PostMapping(ONE + "claim")
    public Standing claim(
            @PathVariable("plural") String plural,
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @RequestBody(required = false) @Nullable ClaimRequest body) {
        RevisionRef ref = new RevisionRef(slug, number);
        reviewing.claim(plural, ref, body != null && Boolean.TRUE.equals(body.takeOver()));
        return standing(plural, ref);
    }

    @Operation(summary = "Give one's claim up")
    @PostMapping(ONE + "release")
    public Standing release(
            @PathVariable("plural") String plural,
            @PathVariable("slug") String slug,
            @PathVariable("number") int number) {
        RevisionRef ref = new RevisionRef(slug, number);
        reviewing.release(plural, ref);
        return standing(plural, ref);
    }

    @Operation(summary = "Return a submission to its authors with a reason")
    @PostMapping(ONE + "return")
    public Standing giveBack(
            @PathVariable("plural") String plural,
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @RequestBody ReasonRequest body) {
        RevisionRef ref = new RevisionRef(slug, number);
        reviewing.giveBack(plural, ref, body.reason());
        return standing(plural, ref);
    }

    @Operation(summary = "Publish a submission")
    @PostMapping(ONE + "publish")
    public Standing publish(
            @PathVariable("plural") String plural,
            @PathVariable("slug") String slug,
            @PathVariable("number") int number) {
        RevisionRef ref = new RevisionRef(slug, number);
        reviewing.publish(plural, ref);
        return standing(plural, ref);
    }

    @Operation(summary = "Withdraw a public revision with a public reason")
    @PostMapping(ONE + "withdraw")
    public Standing withdraw(
            @PathVariable("plural") String plural,
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @RequestBody ReasonRequest body) {
        RevisionRef ref = new RevisionRef(slug, number);
        reviewing.withdraw(plural, ref, body.reason());
        return standing(plural, ref);
    }

    @Operation(summary = "Say something about a field, or about the whole")
    @PostMapping(ONE + "remarks")
    @ResponseStatus(HttpStatus.CREATED)
    public RemarkBody remark(
            @PathVariable("plural") String plural,
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @RequestBody RemarkRequest body) {
        Remark remark = reviewing.remark(plural, new RevisionRef(slug, number), body.field(), body.text());
        return new RemarkBody(remark.field(), remark.text(), remark.person().name(), remark.at());
    }

    private Standing standing(String plural, RevisionRef ref) {
        return new Standing(ref.slug(), ref.revision(), desk.entry(plural, ref).revision().state());
    }
}
