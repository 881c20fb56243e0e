package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.testing.Caller;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** What happens to a form whose session ended while it stood open. The account's own form stands for all editors. */
class KeptFormTest extends ServerTest {
    private static final Map<String, String> TYPED =
            Map.of("name", "Kim of the Lake", "about", "Two lines\nof <text>", "currentPassword", "a secret thing");

    @Test
    void theTextComesBackAfterSigningInAndNothingWasDone() {
        NewPerson person = newPerson(Role.MEMBER);
        Caller caller = newVisitor();
        assertComesBack(caller, person, caller.postFormWithoutToken("/account", TYPED));
    }

    @Test
    void theTextOfAFormWithFilesComesBackToo() {
        NewPerson person = newPerson(Role.MEMBER);
        Caller caller = newVisitor();
        assertComesBack(caller, person, caller.postMultipartWithoutToken("/account", TYPED, Map.of("file", "1.0 2.0")));
    }

    @Test
    void aVisitorWhoseTokenIsRightButWhoIsNotSignedInKeepsTheTextToo() {
        NewPerson person = newPerson(Role.MEMBER);
        Caller caller = newVisitor();
        assertComesBack(caller, person, caller.postForm("/account", TYPED));
    }

    private void assertComesBack(Caller caller, NewPerson person, HttpResponse<String> refused) {
        assertThat(refused.statusCode()).isEqualTo(303);
        assertThat(refused.headers().firstValue("Location")).contains("/sign-in?back=%2Faccount");
        assertThat(caller.page("/sign-in?back=/account", 200).text()).contains("Your text is kept");
        HttpResponse<String> inside = caller.postForm(
                "/sign-in", Map.of("email", person.email(), "password", person.password(), "back", "/account"));
        assertThat(inside.headers().firstValue("Location")).contains("/account");
        var page = caller.page("/account", 200);
        assertThat(page.select("input[name=name]").attr("value")).isEqualTo("Kim of the Lake");
        assertThat(page.select("textarea[name=about]").text().replaceAll("\\s+", " "))
                .isEqualTo("Two lines of <text>");
        assertThat(page.html()).doesNotContain("a secret thing");
        assertThat(page.select("h1").text()).as("nothing was saved").isEqualTo(person.name());
        assertThat(caller.page("/account", 200).select("input[name=name]").attr("value"))
                .as("given back once")
                .isEqualTo(person.name());
    }

    @Test
    void whoIsSignedInAnewGetsTheTextBackAtOnce() {
        SignedIn member = signIn(Role.MEMBER);
        HttpResponse<String> refused = member.postFormWithoutToken("/account", TYPED);
        assertThat(refused.statusCode()).isEqualTo(303);
        assertThat(refused.headers().firstValue("Location")).contains("/account");
        var page = member.page("/account", 200);
        assertThat(page.select("input[name=name]").attr("value")).isEqualTo("Kim of the Lake");
        assertThat(page.select("h1").text()).isEqualTo(member.name());
    }

    @Test
    void aFormWithNothingToKeepIsRefusedAndDoesNothing() {
        SignedIn member = signIn(Role.MEMBER);
        assertThat(member.postFormWithoutToken("/sign-out", Map.of()).statusCode())
                .isEqualTo(403);
        assertThat(member.postFormWithoutToken("/sign-out", Map.of("_csrf", "guess"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(member.get("/account").statusCode()).isEqualTo(200);
    }

    @Test
    void moreThanCanBeKeptIsRefused() {
        HttpResponse<String> refused = postFormWithoutSession("/account", Map.of("about", "x".repeat(600_000)));
        assertThat(refused.statusCode()).isEqualTo(403);
    }

    @Test
    void thePageBehindTheSignInIsTheOneWithTheFormButNeverOnAnotherSite() {
        Map<String, String> fields = Map.of("name", "Kim");
        String own = origin() + "/devices/new?from=kite";
        assertThat(location(postFormWithoutSession("/devices/drafts", fields, "Referer", own)))
                .isEqualTo("/sign-in?back=%2Fdevices%2Fnew%3Ffrom%3Dkite");
        String other = "https://elsewhere.example/devices/new";
        assertThat(location(postFormWithoutSession("/devices/drafts", fields, "Referer", other)))
                .isEqualTo("/sign-in?back=%2Fdevices%2Fdrafts");
        assertThat(location(postFormWithoutSession("/devices/drafts", fields, "Referer", "http://["))
                        .lines())
                .containsExactly("/sign-in?back=%2Fdevices%2Fdrafts");
    }

    @Test
    void aSignInFormThatStoodOpenTooLongKeepsTheAddressOnly() {
        Caller caller = newVisitor();
        HttpResponse<String> refused = caller.postFormWithoutToken(
                "/sign-in", Map.of("email", "kim@club.example", "password", "a secret thing", "back", "/devices"));
        assertThat(location(refused)).isEqualTo("/sign-in");
        var page = caller.page("/sign-in", 200);
        assertThat(page.select("input[name=email]").attr("value")).isEqualTo("kim@club.example");
        assertThat(page.select("input[name=back]").attr("value")).isEqualTo("/devices");
        assertThat(page.html()).doesNotContain("a secret thing");
    }

    @Test
    void aScriptIsRefusedOrLedToTheSignIn() {
        assertThat(postFormWithoutSession("/password-strength", Map.of("newPassword", "x"), "HX-Request", "true")
                        .statusCode())
                .isEqualTo(403);
        HttpResponse<String> visitor = get("/account", "HX-Request", "true");
        assertThat(visitor.statusCode()).isEqualTo(401);
        assertThat(visitor.headers().firstValue("HX-Redirect")).contains("/sign-in?back=%2Faccount");
    }

    private static String location(HttpResponse<String> response) {
        assertThat(response.statusCode()).isEqualTo(303);
        return response.headers().firstValue("Location").orElseThrow();
    }
}
