package org.vanewright.review.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.vanewright.account.Role;
import org.vanewright.device.DeviceDocument;
import org.vanewright.record.Draft;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** Drafts, reviews and histories, as plain requests. */
class ReviewPagesTest extends ServerTest {
    private Submissions submissions() {
        return new Submissions(context());
    }

    private static String location(HttpResponse<String> response) {
        return response.headers().firstValue("Location").orElse("none, but " + response.statusCode());
    }

    private static String review(Revision<?> revision) {
        return "/review/devices/" + revision.slug() + "/" + revision.number();
    }

    @Test
    void aSubmissionComesBackWithRemarksAndIsPublishedInTheEnd() {
        SignedIn member = signIn(Role.MEMBER);
        SignedIn maintainer = signIn(Role.MAINTAINER);
        Draft<DeviceDocument> draft = submissions().draft(member.id(), "Story vane");
        String drafts = "/drafts/" + draft.id();
        assertThat(member.page("/drafts", 200).select(".drafts h2 a").eachAttr("href"))
                .contains(drafts);

        Document submit = member.page(drafts + "/submit", 200);
        assertThat(submit.select("input[name=licence][checked]").eachAttr("value"))
                .containsExactly("CC0_1_0");
        Map<String, String> form = Map.of("version", "2", "licence", "CC_BY_4_0", "summary", "First try");
        assertThat(location(member.postForm(drafts + "/submit", form))).endsWith("/devices/story-vane/revisions/1");
        assertThat(page("/devices/story-vane/revisions/1", 404).text()).doesNotContain("Story vane");
        assertThat(member.page("/devices/story-vane/revisions/1", 200).text()).contains("submitted");

        Document queue = maintainer.page("/review", 200);
        assertThat(queue.select(".queue h2 a").eachAttr("href")).contains("/review/devices/story-vane/1");
        String at = "/review/devices/story-vane/1";
        assertThat(location(maintainer.postForm(at + "/claim", Map.of()))).endsWith(at);
        Document open = maintainer.page(at, 200);
        assertThat(open.text()).contains("You look at it", "First try", "CC BY 4.0", "which it was made from");
        assertThat(open.select(".check-results tbody tr")).isNotEmpty();
        assertThat(open.select(".field-rows.two ins").eachText()).contains("Story vane");
        assertThat(open.select("[style], script:not([src]):not([type$=json])")).isEmpty();
        assertThat(location(maintainer.postForm(
                        at + "/remark", Map.of("field", "vane.heightMm", "text", "Why <b>so</b> tall?"))))
                .endsWith(at + "#remarks");
        assertThat(location(maintainer.postForm(at + "/return", Map.of("reason", "See my remark."))))
                .endsWith("/review");

        Document returned = member.page(drafts, 200);
        assertThat(returned.select(".returned").text())
                .contains("See my remark.", "vane.heightMm", "Why <b>so</b> tall?", maintainer.name());
        assertThat(member.page("/drafts", 200)
                        .select(".drafts > li:first-child .state")
                        .text())
                .isEqualTo("returned");
        assertThat(location(member.postForm(drafts + "/submit", form))).endsWith("/revisions/2");
        assertThat(location(maintainer.postForm("/review/devices/story-vane/2/publish", Map.of())))
                .endsWith("/devices/story-vane");
        assertThat(page("/devices/story-vane", 200).select("h1").text()).contains("Story vane");

        Document history = page("/devices/story-vane/history", 200);
        assertThat(history.text()).contains("Number 1 is missing here", "First try", maintainer.name());
        assertThat(history.select(".lineage a").eachText())
                .contains("Rectangular vane 8 by 20, revision 1", "Story vane, revision 2");
        assertThat(history.select("svg.lineage-tree[role=img] > title")).hasSize(1);
        assertThat(page("/people", 200).text()).contains(member.name()).doesNotContain(maintainer.name());
        assertThat(page("/people/" + member.id(), 200).text()).contains("Story vane, revision 2");
        page("/people/" + maintainer.id(), 404);
        maintainer.page("/people/" + maintainer.id(), 200);
    }

    @Test
    void onlyWhoMayGetsToEachPage() {
        SignedIn author = signIn(Role.MEMBER);
        SignedIn other = signIn(Role.MEMBER);
        Draft<DeviceDocument> draft = submissions().draft(author.id(), "Private vane");
        String drafts = "/drafts/" + draft.id();
        Revision<DeviceDocument> waiting = submissions().submit(author.id(), draft);
        for (String path : new String[] {drafts, drafts + "/submit", drafts + "/discard"}) {
            other.page(path, 404);
            assertThat(location(get(path, "Accept", "text/html"))).contains("/sign-in");
        }
        for (String path : new String[] {"/review", review(waiting)}) {
            other.page(path, 403);
            author.page(path, 403);
            assertThat(location(get(path, "Accept", "text/html"))).contains("/sign-in");
        }
        for (String step : new String[] {"claim", "take-over", "release", "checks", "remark", "return", "publish"}) {
            var refused = other.postForm(review(waiting) + "/" + step, Map.of("reason", "no", "text", "no"));
            assertThat(refused.statusCode()).as(step).isIn(403, 404);
            assertThat(author.postForm(review(waiting) + "/" + step, Map.of("reason", "no", "text", "no"))
                            .statusCode())
                    .as(step)
                    .isEqualTo(403);
        }
        page("/devices/private-vane/history", 404);
        other.page("/devices/private-vane/history", 404);
        assertThat(author.page("/devices/private-vane/history", 200).text()).contains("submitted");
        page("/kites/private-vane/history", 404);
    }

    @Test
    void aRefusedSubmissionKeepsWhatWasTyped() {
        SignedIn member = signIn(Role.MEMBER);
        Draft<DeviceDocument> draft = submissions().draft(member.id(), "Unlicensed vane");
        String submit = "/drafts/" + draft.id() + "/submit";
        Document refused = parsed(member.postForm(submit, Map.of("version", "2", "summary", "Kept words")), 422);
        assertThat(refused.select("#licence-error").text()).isNotBlank();
        assertThat(refused.select("#summary").val()).isEqualTo("Kept words");
        Document late = parsed(
                member.postForm(submit, Map.of("version", "1", "licence", "CC0_1_0", "summary", "Kept words")), 409);
        assertThat(late.select("[role=alert]").text()).contains("version 2 is saved");
        assertThat(late.select("#summary").val()).isEqualTo("Kept words");
        assertThat(late.select("input[name=version]").val()).isEqualTo("2");
    }

    @Test
    void whatStandsInTheWayLeadsToTheEditorsFields() {
        SignedIn member = signIn(Role.MEMBER);
        Draft<DeviceDocument> draft = submissions().draft(member.id(), "");
        Document page = member.page("/drafts/" + draft.id() + "/submit", 200);
        assertThat(page.select("section.problems a").eachAttr("href"))
                .containsExactly("/devices/drafts/" + draft.id() + "#name");
    }

    @Test
    void coauthorsComeAndGoAndADraftIsGivenUpAfterAQuestion() {
        SignedIn author = signIn(Role.MEMBER);
        SignedIn other = signIn(Role.MEMBER);
        Draft<DeviceDocument> draft = submissions().draft(author.id(), "Shared vane");
        String drafts = "/drafts/" + draft.id();
        assertThat(author.page(drafts, 200).select("#person option").eachAttr("value"))
                .contains(other.id());
        author.postForm(drafts + "/coauthors", Map.of("person", other.id()));
        assertThat(other.page(drafts, 200).select("form[action$=discard], a[href$=discard]"))
                .isEmpty();
        author.postForm(drafts + "/coauthors/remove", Map.of("person", other.id()));
        other.page(drafts, 404);
        assertThat(author.postForm(drafts + "/coauthors", Map.of("person", "nobody"))
                        .statusCode())
                .isEqualTo(400);
        author.page(drafts + "/discard", 200);
        assertThat(location(author.postForm(drafts + "/discard", Map.of()))).endsWith("/drafts");
        author.page(drafts, 404);
    }

    @Test
    void ownWorkIsPublishedBySomebodyElse() {
        signIn(Role.MAINTAINER);
        SignedIn maintainer = signIn(Role.MAINTAINER);
        Revision<DeviceDocument> own =
                submissions().submit(maintainer.id(), submissions().draft(maintainer.id(), "Own vane"));
        Document page = maintainer.page(review(own), 200);
        assertThat(page.text()).contains("This is your own work. Another maintainer has to publish it.");
        assertThat(page.select("form[action$=publish]")).isEmpty();
        assertThat(maintainer.postForm(review(own) + "/publish", Map.of()).statusCode())
                .isEqualTo(403);
    }

    @Test
    void anOvertakenChangeIsExplainedAndCanBeReturned() {
        SignedIn ann = signIn(Role.MEMBER);
        SignedIn ben = signIn(Role.MEMBER);
        SignedIn mia = signIn(Role.MAINTAINER);
        Submissions s = submissions();
        RevisionRef base = s.submit(ann.id(), s.draft(ann.id(), "Raced vane")).ref();
        s.publish(mia.id(), base);
        Revision<DeviceDocument> sooner = s.submit(ann.id(), s.change(ann.id(), base, 1100));
        Revision<DeviceDocument> later = s.submit(ben.id(), s.change(ben.id(), base, 1200));
        s.publish(mia.id(), sooner.ref());
        Document page = mia.page(review(later), 200);
        assertThat(page.text()).contains("so it cannot be published as it is");
        assertThat(page.select("form[action$=publish]")).isEmpty();
        Document conflict = parsed(mia.postForm(review(later) + "/publish", Map.of()), 409);
        assertThat(conflict.select("#reason").val()).contains("revision 2 is published");
        mia.postForm(
                review(later) + "/return",
                Map.of("reason", conflict.select("#reason").val()));
        Document compared = page("/devices/raced-vane/compare?from=1&to=2", 200);
        assertThat(compared.select(".field-rows.two ins").eachText()).anyMatch(t -> t.contains("1100"));
        page("/devices/raced-vane/compare?from=1&to=3", 404);
        page("/devices/raced-vane/compare?from=x&to=3", 400);
    }

    @Test
    void aClaimIsHeldByOneAndTakenOverOnPurpose() {
        SignedIn mia = signIn(Role.MAINTAINER);
        SignedIn max = signIn(Role.MAINTAINER);
        SignedIn member = signIn(Role.MEMBER);
        Revision<DeviceDocument> waiting =
                submissions().submit(member.id(), submissions().draft(member.id(), "Claimed vane"));
        String at = review(waiting);
        mia.postForm(at + "/claim", Map.of());
        assertThat(parsed(max.postForm(at + "/claim", Map.of()), 409).text()).contains("is looking at it already");
        assertThat(max.page(at, 200).text()).contains(mia.name() + " looks at it");
        max.postForm(at + "/take-over", Map.of());
        assertThat(max.page(at, 200).text()).contains("You look at it");
        max.postForm(at + "/release", Map.of());
        assertThat(mia.page(at, 200).text()).contains("Nobody looks at it yet");
    }

    @Test
    void aWithdrawnRevisionShowsItsReason() {
        SignedIn member = signIn(Role.MEMBER);
        SignedIn mia = signIn(Role.MAINTAINER);
        Submissions s = submissions();
        Revision<DeviceDocument> r = s.submit(member.id(), s.draft(member.id(), "Withdrawn vane"));
        s.publish(mia.id(), r.ref());
        assertThat(parsed(mia.postForm(review(r) + "/withdraw", Map.of("reason", " ")), 422)
                        .select("[role=alert]")
                        .text())
                .contains("Reason");
        mia.postForm(review(r) + "/withdraw", Map.of("reason", "It breaks."));
        assertThat(page("/devices/withdrawn-vane/history", 200).text()).contains("Withdrawn: It breaks.");
        page("/devices/withdrawn-vane/revisions/1", 200);
    }
}
