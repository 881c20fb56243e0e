package org.vanewright.platform.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.vanewright.account.Acting;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;

class JobsTest extends ServerTest {
    private String started(NewPerson owner, String text) {
        return Acting.as(owner, () -> NoteJob.start(context(), text));
    }

    @Test
    void whatCameOfItIsForItsOwnerAndForStewards() {
        SignedIn owner = signIn(Role.MEMBER);
        String id = started(owner.person(), "two vanes came off");
        NoteJob.await(context(), id, JobState.DONE);
        Document page = owner.page("/jobs/" + id, 200);
        assertThat(page.select("h1").text()).isEqualTo("Note: two vanes came off");
        assertThat(page.select("main").text()).contains("It is done.", "note.txt, 1 KiB");
        assertThat(page.select("noscript")).isEmpty();
        HttpResponse<String> file = owner.get(page.select("main a[href$=/file]").attr("href"));
        assertThat(file.body()).isEqualTo("two vanes came off");
        assertThat(file.headers().firstValue("Content-Disposition")).contains("attachment; filename=\"note.txt\"");
        assertThat(file.headers().firstValue("Cache-Control").orElseThrow()).contains("no-store");
        String bearer = bearer(owner.person());
        JsonNode status = json(get("/api/v1/jobs/" + id, "Authorization", bearer), 200);
        assertThat(status.get("state").asString()).isEqualTo("DONE");
        assertThat(status.get("percent").asInt()).isEqualTo(100);
        assertThat(get(status.get("file").asString(), "Authorization", bearer).body())
                .isEqualTo("two vanes came off");
        signIn(Role.MEMBER).page("/jobs/" + id, 404);
        signIn(Role.MAINTAINER).page("/jobs/" + id, 404);
        signIn(Role.STEWARD).page("/jobs/" + id, 200);
    }

    @Test
    void whatCannotBeDoneSaysWhy() {
        SignedIn owner = signIn(Role.MEMBER);
        String refused = started(owner.person(), "refuse");
        NoteJob.await(context(), refused, JobState.FAILED);
        assertThat(owner.page("/jobs/" + refused, 200).select("[role=alert]").text())
                .contains("It could not be done", "There is no ink.");
        String broken = started(owner.person(), "break");
        NoteJob.await(context(), broken, JobState.FAILED);
        assertThat(owner.page("/jobs/" + broken, 200).text())
                .contains("The service's log says what.")
                .doesNotContain("secret");
        assertThat(NoteJob.GAVE_UP).containsKey(broken).doesNotContainKey(refused);
    }

    /** One is done at a time here, so that the second waits. */
    @Test
    void whatRunsAndWhatWaitsCanBeCancelled() {
        SignedIn owner = signIn(Role.MEMBER);
        String running = started(owner.person(), "wait for ink");
        NoteJob.await(context(), running, JobState.RUNNING);
        String waiting = started(owner.person(), "never begun");
        Document page = owner.page("/jobs/" + running, 200);
        assertThat(page.select("noscript meta[http-equiv=refresh]").attr("content"))
                .isEqualTo("3");
        assertThat(page.select("main[hx-get]").attr("hx-get")).isEqualTo("/jobs/" + running);
        assertThat(page.select("progress").attr("max")).isEqualTo("100");
        assertThat(signIn(Role.MEMBER)
                        .postForm("/jobs/" + running + "/cancel", Map.of())
                        .statusCode())
                .isEqualTo(404);
        assertThat(json(send("DELETE", "/api/v1/jobs/" + waiting, owner.person()), 200)
                        .get("state")
                        .asString())
                .isEqualTo("WAITING");
        assertThat(owner.postForm("/jobs/" + running + "/cancel", Map.of()).statusCode())
                .isEqualTo(303);
        NoteJob.await(context(), running, JobState.CANCELLED);
        NoteJob.await(context(), waiting, JobState.CANCELLED);
        assertThat(NoteJob.RUN).doesNotContain("never begun");
        assertThat(NoteJob.GAVE_UP.get(waiting)).isEqualTo("It was cancelled.");
        assertThat(owner.page("/jobs/" + running, 200).select("main").text()).contains("It was cancelled.");
    }

    private HttpResponse<String> send(String method, String path, NewPerson person) {
        return newVisitor().call(method, path, "", "Authorization", bearer(person));
    }
}
