package org.vanewright.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.springframework.test.context.TestPropertySource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.Caller;
import org.vanewright.testing.RawHttp;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** The service under a prefix, as behind a proxy that serves other things beside it. */
@TestPropertySource(properties = "server.servlet.context-path=/club")
class PrefixTest extends ServerTest {
    private static final List<String> ADDRESSES =
            List.of("href", "src", "action", "formaction", "hx-get", "hx-post", "data-solid", "poster");

    @Test
    void everyAddressOnAPageLiesUnderIt() {
        SignedIn member = signIn(Role.MEMBER);
        for (String path : List.of(
                "/",
                "/airframes",
                "/airframes/quillmere-tapered-low-wing",
                "/devices/ogival-pair-on-one-base",
                "/layouts/low-wing-pairs-over-the-taper",
                "/layouts/low-wing-pairs-over-the-taper/study",
                "/layouts/low-wing-pairs-over-the-taper/history",
                "/layouts/new",
                "/campaigns",
                "/retention",
                "/bench",
                "/about/method",
                "/drafts",
                "/account")) {
            List<String> outside = addresses(member.page(path, 200))
                    .filter(address -> address.startsWith("/") && !address.startsWith("/club/"))
                    .toList();
            assertThat(outside).as(path).isEmpty();
        }
    }

    private static Stream<String> addresses(Document page) {
        return ADDRESSES.stream().flatMap(name -> page.select("[" + name + "]").eachAttr(name).stream());
    }

    @Test
    void formsLeadOnUnderIt() {
        HttpResponse<String> units =
                newVisitor().postFormWithoutToken("/units", Map.of("system", "us", "back", "/devices"));
        assertThat(units.headers().firstValue("Location")).hasValue("/club/devices");
        HttpResponse<String> elsewhere =
                newVisitor().postFormWithoutToken("/units", Map.of("system", "us", "back", "//elsewhere.example"));
        assertThat(elsewhere.headers().firstValue("Location")).hasValue("/club/");
    }

    @Test
    void whoHasToSignInComesBack() {
        Caller visitor = newVisitor();
        HttpResponse<String> refused = visitor.get("/layouts/new", "Accept", "text/html");
        assertThat(refused.headers().firstValue("Location")).hasValue("/club/sign-in?back=%2Flayouts%2Fnew");
        NewPerson person = newPerson(Role.MEMBER);
        HttpResponse<String> signedIn = visitor.postForm(
                "/sign-in", Map.of("email", person.email(), "password", person.password(), "back", "/layouts/new"));
        assertThat(signedIn.headers().firstValue("Location")).hasValue("/club/layouts/new");
    }

    /** What was typed waits behind the sign-in, at the page that it was typed on. */
    @Test
    void aFormWhoseSessionEndedIsKept() {
        HttpResponse<String> late = newVisitor()
                .postFormWithoutToken(
                        "/devices/new",
                        Map.of("name", "Late", "_csrf", "gone"),
                        "Referer",
                        origin() + "/devices/new",
                        "Accept",
                        "text/html");
        assertThat(late.headers().firstValue("Location")).hasValue("/club/sign-in?back=%2Fdevices%2Fnew");
    }

    @Test
    void theApiRefusesWithProblemsUnderItToo() {
        HttpResponse<String> tooLarge = postJson("/api/v1/calculations/section", " ".repeat(300_000));
        assertThat(json(tooLarge, 413).path("title").stringValue()).isEqualTo("Request too large");
        RawHttp.Answer unreadable = RawHttp.ask(origin(), "GET /club/api/v1/devices/%2f HTTP/1.1");
        assertThat(unreadable.status()).isEqualTo(400);
        assertThat(unreadable.body()).contains("\"status\":400");
    }
}
