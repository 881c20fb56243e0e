package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.security.core.context.SecurityContextHolder;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;
import org.vanewright.testing.Caller;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

class SignInTest extends ServerTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/airframes",
                "/devices",
                "/layouts",
                "/devices/rectangular-vane-8-by-20",
                "/nothing-here",
                "/css/vanewright.css",
                "/api/v1/airframes",
                "/v3/api-docs"
            })
    void whoOnlyReadsGetsNoCookie(String path) {
        HttpResponse<String> response = get(path);
        assertThat(response.statusCode()).isIn(200, 404);
        assertThat(response.headers().allValues("set-cookie")).isEmpty();
    }

    @Test
    void theSessionGetsANewIdAndASafeCookie() {
        NewPerson person = newPerson(Role.MEMBER);
        Caller caller = newVisitor();
        caller.token();
        String before = caller.cookie("SESSION");
        assertThat(before).isNotNull();
        HttpResponse<String> response =
                caller.postForm("/sign-in", Map.of("email", person.email(), "password", person.password()));
        assertThat(response.statusCode()).isEqualTo(303);
        List<String> cookies = response.headers().allValues("set-cookie");
        assertThat(cookies).hasSize(1);
        assertThat(cookies.get(0)).contains("HttpOnly", "SameSite=Lax").doesNotContain("Secure");
        assertThat(caller.cookie("SESSION")).isNotEqualTo(before);
        assertThat(caller.page("/", 200).select(".yours .me").text()).contains(person.name());
        Caller attacker = newVisitor();
        attacker.setCookie("SESSION", String.valueOf(before));
        assertThat(attacker.page("/", 200).select(".yours .me")).isEmpty();
    }

    @Test
    void behindTlsTheCookieIsSecure() {
        HttpResponse<String> response = get("/sign-in", "X-Forwarded-Proto", "https");
        assertThat(response.headers().allValues("set-cookie")).hasSize(1).allMatch(c -> c.contains("; Secure"));
    }

    @Test
    void signingOutEndsTheSession() {
        SignedIn member = signIn(Role.MEMBER);
        String session = String.valueOf(member.cookie("SESSION"));
        assertThat(member.postForm("/sign-out", Map.of()).statusCode()).isEqualTo(303);
        member.setCookie("SESSION", session);
        assertThat(member.get("/account").statusCode()).isEqualTo(303);
    }

    @Test
    void aClosedAccountIsOutAtOnceAndAChangedRoleCountsAtOnce() {
        SignedIn member = signIn(Role.MEMBER);
        assertThat(member.page("/", 200).select(".yours a").eachText()).doesNotContain("Review");
        people().place(member.id(), Role.MAINTAINER, PersonState.ACTIVE);
        assertThat(member.page("/", 200).select(".yours a").eachText()).contains("My drafts", "Review");
        people().place(member.id(), Role.MAINTAINER, PersonState.CLOSED);
        assertThat(member.page("/", 200).select(".yours a").eachText()).containsExactly("Sign in");
        assertThat(member.get("/account").statusCode()).isEqualTo(303);
    }

    @Test
    void signingOutEverywhereEndsEverySession() {
        NewPerson person = newPerson(Role.MEMBER);
        SignedIn here = signIn(person);
        SignedIn there = signIn(person);
        SignedIn other = signIn(Role.MEMBER);
        assertThat(here.postForm("/account/sign-out-everywhere", Map.of()).statusCode())
                .isEqualTo(303);
        assertThat(here.get("/account").statusCode()).isEqualTo(303);
        assertThat(there.get("/account").statusCode()).isEqualTo(303);
        assertThat(other.get("/account").statusCode()).isEqualTo(200);
    }

    @Test
    void aNewPasswordNeedsTheOldOneAndEndsTheOtherSessions() {
        NewPerson person = newPerson(Role.MEMBER);
        SignedIn here = signIn(person);
        SignedIn there = signIn(person);
        String next = "five slow kites over reeds";
        assertThat(here.postForm("/account/password", Map.of("currentPassword", "wrong", "newPassword", next))
                        .statusCode())
                .isEqualTo(422);
        HttpResponse<String> changed =
                here.postForm("/account/password", Map.of("currentPassword", person.password(), "newPassword", next));
        assertThat(changed.statusCode()).isEqualTo(303);
        assertThat(here.get("/account").statusCode()).isEqualTo(200);
        assertThat(there.get("/account").statusCode()).isEqualTo(303);
        assertThat(signInAs(person.email(), person.password()).statusCode()).isEqualTo(422);
        assertThat(signInAs(person.email(), next).statusCode()).isEqualTo(303);
    }

    @Test
    void knownAndUnknownAccountsAreAnsweredWithTheSamePage() {
        NewPerson person = newPerson(Role.MEMBER);
        HttpResponse<String> known = signInAs(person.email(), "wrong");
        HttpResponse<String> unknown = signInAs("nobody@club.example", "wrong");
        assertThat(known.statusCode()).isEqualTo(422);
        assertThat(unknown.statusCode()).isEqualTo(422);
        assertThat(withoutSecrets(known, person.email())).isEqualTo(withoutSecrets(unknown, "nobody@club.example"));
        assertThat(withoutSecrets(known, person.email())).contains("E-mail address or password is not right.");
    }

    private static String withoutSecrets(HttpResponse<String> response, String email) {
        return response.body().replace(email, "somebody").replaceAll("name=\"_csrf\" value=\"[^\"]*\"", "");
    }

    @Test
    void nothingOfProvidersIsThereWhereNoneIsConfigured() {
        SignedIn member = signIn(Role.MEMBER);
        for (String path : List.of(
                "/oauth2/authorization/club",
                "/login/oauth2/code/club?code=a&state=b",
                "/sign-in/with/club",
                "/join/with/club",
                "/account/providers")) {
            assertThat(member.get(path).statusCode()).as(path).isEqualTo(404);
        }
        assertThat(member.get("/account").body()).doesNotContain("Signing in elsewhere");
        assertThat(get("/sign-in").body()).doesNotContain("Sign in with");
    }

    @Test
    void tooManyAttemptsAreToldToWait() {
        NewPerson person = newPerson(Role.MEMBER);
        for (int i = 0; i < 5; i++) {
            signInAs(person.email(), "wrong");
        }
        HttpResponse<String> limited = signInAs(person.email(), person.password());
        assertThat(limited.statusCode()).isEqualTo(429);
        assertThat(limited.headers().firstValueAsLong("Retry-After").orElseThrow())
                .isBetween(1L, 30L);
        // The network is that of all tests; others shall not wait for this one.
        people().find(person.id())
                .ifPresent(p -> context().getBean(AttemptLimits.class).succeeded(p.email(), "127.0.0.1"));
    }

    @ParameterizedTest
    @CsvSource({
        "/devices, /devices",
        "/layouts?cursor=a, /layouts?cursor=a",
        "https://elsewhere.example/, /",
        "//elsewhere.example/, /",
        "/\\elsewhere.example, /",
        "javascript:alert(1), /",
        "'/a\r\nSet-Cookie: a=b', /"
    })
    void signingInLeadsToAPageOfThisServiceOnly(String back, String location) {
        NewPerson person = newPerson(Role.MEMBER);
        String sent = back.replace("\\r\\n", "\r\n");
        HttpResponse<String> response = newVisitor()
                .postForm("/sign-in", Map.of("email", person.email(), "password", person.password(), "back", sent));
        assertThat(response.headers().firstValue("Location")).contains(location);
        assertThat(response.headers().allValues("set-cookie")).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Kim\r\nSet-Cookie: a=b", "Kim\u0000", "\u202Emik", " ", ""})
    void aNameIsOneReadableLine(String name) {
        SignedIn member = signIn(Role.MEMBER);
        assertThat(member.postForm("/account", Map.of("name", name, "about", ""))
                        .statusCode())
                .isEqualTo(422);
        assertThat(member.page("/account", 200).select("h1").text()).isEqualTo(member.name());
    }

    @Test
    void aNameIsWrittenAsTextAndMassAssignmentChangesNothingElse() {
        SignedIn member = signIn(Role.MEMBER);
        Map<String, String> typed = Map.of(
                "name",
                "<script>alert(1)</script>",
                "about",
                "",
                "role",
                "STEWARD",
                "email",
                "x@club.example",
                "id",
                "1");
        assertThat(member.postForm("/account", typed).statusCode()).isEqualTo(303);
        assertThat(member.get("/").body()).contains("&lt;script&gt;").doesNotContain("<script>alert");
        assertThat(people().find(member.id())).hasValueSatisfying(p -> {
            assertThat(p.role()).isEqualTo(Role.MEMBER);
            assertThat(p.email()).isEqualTo(member.person().email());
        });
    }

    @Test
    void theApiLooksAtNoSession() {
        SignedIn steward = signIn(Role.STEWARD);
        HttpResponse<String> response = steward.get("/api/v1/airframes", "Authorization", "Bearer nonsense");
        assertThat(response.statusCode()).isEqualTo(401);
        assertThat(response.headers().firstValue("WWW-Authenticate").orElseThrow())
                .startsWith("Bearer ");
        assertThat(steward.get("/api/v1/airframes").headers().allValues("set-cookie"))
                .isEmpty();
    }

    @Test
    void pagesOfSomebodyAreNotStored() {
        assertThat(signIn(Role.MEMBER).get("/account").headers().firstValue("Cache-Control"))
                .contains("no-store");
    }

    @Test
    void aSignInEndsAfterItsLongestTime() {
        SessionSettings settings = context().getBean(SessionSettings.class);
        NewPerson person = newPerson(Role.MEMBER);
        PersonAuthentication old = PersonAuthentication.bySignIn(
                person.id(), Instant.now().minus(settings.longest()).minusSeconds(60));
        PersonAuthentication recent = PersonAuthentication.bySignIn(
                person.id(), Instant.now().minus(settings.longest()).plusSeconds(600));
        assertThat(actorOf(old).signedIn()).isFalse();
        assertThat(actorOf(recent).is(person.id())).isTrue();
    }

    @Test
    void aTokenCarriesNoMoreThanItsScopeAndItsOwner() {
        NewPerson member = newPerson(Role.MEMBER);
        Set<Power> scope = EnumSet.of(Power.READ_OWN, Power.REVIEW);
        assertThat(actorOf(PersonAuthentication.byToken(member.id(), Instant.now(), scope))
                        .powers())
                .containsExactly(Power.READ_OWN);
    }

    private Actor actorOf(PersonAuthentication authentication) {
        SecurityContextHolder.getContext().setAuthentication(authentication);
        try {
            return context().getBean(Actors.class).current();
        } finally {
            SecurityContextHolder.clearContext();
        }
    }

    private HttpResponse<String> signInAs(String email, String password) {
        return newVisitor().postForm("/sign-in", Map.of("email", email, "password", password));
    }

    private PersonRepository people() {
        return context().getBean(PersonRepository.class);
    }
}
