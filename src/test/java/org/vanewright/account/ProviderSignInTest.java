package org.vanewright.account;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.nimbusds.jwt.JWTClaimsSet;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.web.util.UriComponentsBuilder;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.OneTimeLink.Purpose;
import org.vanewright.audit.AuditEntry;
import org.vanewright.audit.AuditLog;
import org.vanewright.testing.Caller;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** Signing in with an account at an OpenID provider, which here is a server of the test. */
class ProviderSignInTest extends ServerTest {
    private static final FakeProvider PROVIDER = new FakeProvider();
    private static final String CLIENT = "spring.security.oauth2.client.";

    @DynamicPropertySource
    static void configure(DynamicPropertyRegistry properties) {
        properties.add(CLIENT + "registration.club.client-id", () -> FakeProvider.CLIENT);
        properties.add(CLIENT + "registration.club.client-secret", () -> "secret of the test");
        properties.add(CLIENT + "registration.club.client-name", () -> "Club pass");
        properties.add(CLIENT + "provider.club.issuer-uri", PROVIDER::issuer);
        properties.add(CLIENT + "registration.down.client-id", () -> "nobody");
        properties.add(CLIENT + "provider.down.issuer-uri", () -> "http://localhost:1");
    }

    @AfterAll
    static void stop() {
        PROVIDER.close();
    }

    @AfterEach
    void closeRegistering() {
        settings().put("registering", "closed");
    }

    /** What the service asks of the provider. */
    private record Asked(String nonce, String state, Map<String, String> all) {}

    /** Where the service sends somebody who wants to go to the provider, with what it asks there. */
    private static Asked asked(Caller caller, String start) {
        HttpResponse<String> first = caller.get(start);
        assertThat(location(first)).isEqualTo("/oauth2/authorization/club");
        return askedAt(caller.get("/oauth2/authorization/club"));
    }

    private static Asked askedAt(HttpResponse<String> onward) {
        String address = onward.headers().firstValue("Location").orElseThrow();
        assertThat(address).startsWith(PROVIDER.issuer() + "/authorize?");
        Map<String, String> query = new LinkedHashMap<>();
        UriComponentsBuilder.fromUriString(address)
                .build()
                .getQueryParams()
                .toSingleValueMap()
                .forEach((name, text) -> query.put(name, URLDecoder.decode(text, UTF_8)));
        return new Asked(Objects.requireNonNull(query.get("nonce")), Objects.requireNonNull(query.get("state")), query);
    }

    private static HttpResponse<String> comeBack(Caller caller, String code, String state) {
        return caller.get("/login/oauth2/code/club?code=" + code + "&state=" + URLEncoder.encode(state, UTF_8));
    }

    /** The whole way there and back. */
    private static HttpResponse<String> visit(Caller caller, String start, String subject) {
        Asked query = asked(caller, start);
        String code = PROVIDER.code(PROVIDER.claims(subject, query.nonce()));
        return comeBack(caller, code, query.state());
    }

    private NewPerson linked(String subject, Role role) {
        NewPerson person = newPerson(role);
        assertThat(identities().add(person.id(), identity(subject), Instant.now()))
                .isTrue();
        return person;
    }

    private static ProviderIdentity identity(String subject) {
        return new ProviderIdentity(PROVIDER.issuer(), subject, "Club pass");
    }

    @Test
    void whoIsLinkedSignsInAndGoesOn() {
        NewPerson person = linked("s-linked", Role.MEMBER);
        Caller caller = newVisitor();
        assertThat(caller.page("/sign-in?back=/devices", 200)
                        .select(".providers a")
                        .eachText())
                .containsExactly("Sign in with Club pass", "Sign in with down");
        caller.token();
        String before = caller.cookie("SESSION");
        Asked query = asked(caller, "/sign-in/with/club?back=/devices");
        assertThat(query.all()).containsEntry("client_id", FakeProvider.CLIENT).containsEntry("response_type", "code");
        assertThat(query.all().get("scope")).contains("openid");
        assertThat(query.all().get("redirect_uri")).isEqualTo(origin() + "/login/oauth2/code/club");
        assertThat(query.all()).containsKey("code_challenge");
        String code = PROVIDER.code(PROVIDER.claims("s-linked", query.nonce()));
        assertThat(location(comeBack(caller, code, query.state()))).isEqualTo("/devices");
        assertThat(caller.cookie("SESSION")).as("against session fixation").isNotEqualTo(before);
        assertThat(caller.page("/account", 200).text()).contains(person.name());
        assertThat(newest("sign-in.accepted")).hasValueSatisfying(entry -> {
            assertThat(entry.subject()).isEqualTo(person.email());
            assertThat(entry.detail()).isEqualTo("Club pass");
        });
        assertThat(location(comeBack(newVisitor(), code, query.state())))
                .as("in another browser")
                .isEqualTo("/sign-in?provider=failed");
    }

    @ParameterizedTest
    @CsvSource({"https://elsewhere.example/", "//elsewhere.example/", "/\\elsewhere.example"})
    void itLeadsToNoOtherHost(String back) {
        linked("s-back" + back.length(), Role.MEMBER);
        String start = "/sign-in/with/club?back=" + URLEncoder.encode(back, UTF_8);
        assertThat(location(visit(newVisitor(), start, "s-back" + back.length())))
                .isEqualTo("/");
    }

    @Test
    void aWrongStateIsRefused() {
        linked("s-state", Role.MEMBER);
        Caller caller = newVisitor();
        Asked query = asked(caller, "/sign-in/with/club");
        String code = PROVIDER.code(PROVIDER.claims("s-state", query.nonce()));
        assertRefused(caller, comeBack(caller, code, "guessed"));
    }

    @Test
    void aWrongNonceIsRefused() {
        linked("s-nonce", Role.MEMBER);
        assertRefusedWith(
                "s-nonce",
                claims ->
                        new JWTClaimsSet.Builder(claims).claim("nonce", "other").build());
        assertRefusedWith(
                "s-nonce",
                claims -> new JWTClaimsSet.Builder(claims).claim("nonce", null).build());
    }

    @Test
    void anotherAudienceIssuerOrTimeIsRefused() {
        linked("s-claims", Role.MEMBER);
        assertRefusedWith(
                "s-claims",
                claims -> new JWTClaimsSet.Builder(claims).audience("another").build());
        assertRefusedWith(
                "s-claims",
                claims -> new JWTClaimsSet.Builder(claims)
                        .issuer("http://localhost:1")
                        .build());
        assertRefusedWith(
                "s-claims",
                claims -> new JWTClaimsSet.Builder(claims)
                        .issueTime(Date.from(Instant.now().minusSeconds(7200)))
                        .expirationTime(Date.from(Instant.now().minusSeconds(3600)))
                        .build());
    }

    @Test
    void anotherSignatureIsRefused() {
        linked("s-forged", Role.MEMBER);
        Caller caller = newVisitor();
        Asked query = asked(caller, "/sign-in/with/club");
        String code = PROVIDER.forgedCode(PROVIDER.claims("s-forged", query.nonce()));
        assertRefused(caller, comeBack(caller, code, query.state()));
    }

    @Test
    void whatTheProviderSaysOfAFailureReachesTheLogInPart() {
        Caller caller = newVisitor();
        Asked query = asked(caller, "/sign-in/with/club");
        HttpResponse<String> back = caller.get("/login/oauth2/code/club?error=" + "a".repeat(200) + "&state="
                + URLEncoder.encode(query.state(), UTF_8));
        assertThat(location(back)).isEqualTo("/sign-in?provider=failed");
        assertThat(newest("sign-in.refused").map(AuditEntry::detail)).contains("Club pass: " + "a".repeat(60));
    }

    private void assertRefusedWith(String subject, UnaryOperator<JWTClaimsSet> change) {
        Caller caller = newVisitor();
        Asked query = asked(caller, "/sign-in/with/club");
        String code = PROVIDER.code(change.apply(PROVIDER.claims(subject, query.nonce())));
        assertRefused(caller, comeBack(caller, code, query.state()));
    }

    private void assertRefused(Caller caller, HttpResponse<String> response) {
        assertThat(location(response)).isEqualTo("/sign-in?provider=failed");
        assertThat(caller.page("/sign-in?provider=failed", 200)
                        .select("[role=alert]")
                        .text())
                .contains("did not work");
        assertThat(location(caller.get("/account"))).startsWith("/sign-in");
        assertThat(newest("sign-in.refused").map(AuditEntry::subject)).contains("by Club pass");
    }

    @Test
    void anUnknownPersonIsNobodyHereEvenWithAKnownAddress() {
        NewPerson person = newPerson(Role.STEWARD);
        Caller caller = newVisitor();
        Asked query = asked(caller, "/sign-in/with/club");
        JWTClaimsSet claims = new JWTClaimsSet.Builder(PROVIDER.claims("s-unknown", query.nonce()))
                .claim("email", person.email())
                .claim("email_verified", true)
                .build();
        HttpResponse<String> back = comeBack(caller, PROVIDER.code(claims), query.state());
        assertThat(location(back)).isEqualTo("/sign-in?provider=unknown");
        assertThat(caller.page("/sign-in?provider=unknown", 200)
                        .select("[role=alert]")
                        .text())
                .contains("No account here is linked");
        assertThat(location(caller.get("/account"))).startsWith("/sign-in");
        assertThat(caller.get("/join/details").statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource({"CLOSED, closed, This account is closed", "PENDING, waiting, has not admitted"})
    void whoseAccountIsNotOpenStaysOut(PersonState state, String why, String words) {
        NewPerson person = linked("s-" + why, Role.MEMBER);
        people().place(person.id(), Role.MEMBER, state);
        settings().put("registering", "open");
        Caller caller = newVisitor();
        assertThat(location(visit(caller, "/sign-in/with/club", "s-" + why))).isEqualTo("/sign-in?provider=" + why);
        assertThat(caller.page("/sign-in?provider=" + why, 200)
                        .select("[role=alert]")
                        .text())
                .contains(words);
        assertThat(location(caller.get("/account"))).startsWith("/sign-in");
        assertThat(newest("sign-in.refused").map(AuditEntry::subject)).contains(person.email());
    }

    @Test
    void theSecondFactorIsStillAsked() {
        NewPerson person = linked("s-factor", Role.MEMBER);
        SignedIn member = signIn(person);
        member.postForm("/account/second-factor", Map.of());
        Authenticator app = new Authenticator(context(), person.id());
        member.postForm("/account/second-factor/on", Map.of("password", person.password(), "code", app.code()));
        Caller caller = newVisitor();
        assertThat(location(visit(caller, "/sign-in/with/club?back=/devices", "s-factor")))
                .isEqualTo("/sign-in/code?back=%2Fdevices");
        assertThat(location(caller.get("/account"))).startsWith("/sign-in");
        HttpResponse<String> inside = post(
                caller,
                "/sign-in/code?back=/devices",
                "/sign-in/code",
                Map.of("code", app.nextCode(), "back", "/devices"));
        assertThat(location(inside)).isEqualTo("/devices");
        assertThat(newest("sign-in.accepted").map(AuditEntry::detail)).contains("Club pass and code");
    }

    @Test
    void anInvitationIsCompletedWithoutAPassword() {
        String secret = context()
                .getBean(Links.class)
                .make(Purpose.INVITATION, Role.MAINTAINER, null, "", "Robin", Duration.ofDays(1))
                .secret();
        Caller caller = newVisitor();
        String page = "/join/" + secret;
        assertThat(location(caller.get(page + "/details")))
                .as("without the provider")
                .isEqualTo(page);
        assertThat(caller.page(page, 200).select(".providers a").attr("href")).isEqualTo(page + "/with/club");
        assertThat(location(visit(caller, page + "/with/club", "s-invited"))).isEqualTo(page + "/details");
        var form = caller.page(page + "/details", 200);
        assertThat(form.select("[name=name]").val()).isEqualTo("Kim of the club");
        assertThat(form.select("[name=email]").val()).isEqualTo("kim.s-invited@club.example");
        assertThat(form.select("[type=password]")).isEmpty();
        NewPerson known = newPerson(Role.MEMBER);
        HttpResponse<String> taken =
                post(caller, page + "/details", page + "/details", Map.of("name", "Kim", "email", known.email()));
        assertThat(parsed(taken, 422).select("#email-error").text()).contains("no account here");
        HttpResponse<String> joined = post(
                caller,
                page + "/details",
                page + "/details",
                Map.of("name", "Kim", "email", "kim.s-invited@club.example"));
        assertThat(location(joined)).isEqualTo("/account");
        var account = caller.page("/account", 200);
        assertThat(account.text()).contains("Maintainer", "Set a password");
        assertThat(account.select("#currentPassword")).isEmpty();
        assertThat(location(visit(newVisitor(), "/sign-in/with/club", "s-invited")))
                .isEqualTo("/");
        assertThat(caller.page("/account/providers", 200).select("form[action*=/links/]"))
                .as("the only way in cannot be removed")
                .isEmpty();
        String link =
                identities().find(PROVIDER.issuer(), "s-invited").orElseThrow().id();
        assertThat(post(caller, "/account", "/account/providers/links/" + link + "/remove", Map.of())
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void whoAsksForAnAccountWaitsAndLearnsOfNoOther() {
        settings().put("registering", "open");
        NewPerson known = newPerson(Role.MEMBER);
        Caller fresh = newVisitor();
        assertThat(location(visit(fresh, "/join/with/club", "s-fresh"))).isEqualTo("/join/details");
        HttpResponse<String> first =
                post(fresh, "/join/details", "/join/details", Map.of("name", "Kim", "email", "fresh@club.example"));
        Caller other = newVisitor();
        assertThat(location(visit(other, "/sign-in/with/club", "s-other"))).isEqualTo("/join/details");
        HttpResponse<String> second =
                post(other, "/join/details", "/join/details", Map.of("name", "Kim", "email", known.email()));
        assertThat(first.statusCode()).isEqualTo(200);
        assertThat(first.body()).contains("A steward will look at it").isEqualTo(second.body());
        assertThat(people().findByEmail("fresh@club.example").map(Person::state))
                .contains(PersonState.PENDING);
        assertThat(identities().find(PROVIDER.issuer(), "s-other"))
                .as("no link by address")
                .isEmpty();
        assertThat(location(visit(newVisitor(), "/sign-in/with/club", "s-fresh")))
                .isEqualTo("/sign-in?provider=waiting");
        assertThat(location(fresh.get("/join/details"))).as("once").isEqualTo("/join");
    }

    @Test
    void somebodyLinksAndUnlinks() {
        SignedIn member = signIn(Role.MEMBER);
        String mine = "/account/providers";
        HttpResponse<String> wrong = member.postForm(mine + "/club", Map.of("password", "wrong"));
        assertThat(parsed(wrong, 422).select("#password-club-error").text()).contains("your password");
        HttpResponse<String> right = member.postForm(
                mine + "/club", Map.of("password", member.person().password()));
        assertThat(parsed(right, 200).select("a.button").attr("href")).isEqualTo("/oauth2/authorization/club");
        Asked query = askedAt(member.get("/oauth2/authorization/club"));
        String code = PROVIDER.code(PROVIDER.claims("s-mine", query.nonce()));
        assertThat(location(comeBack(member, code, query.state()))).isEqualTo(mine + "?link=done");
        assertThat(member.page("/account", 200).select("h1").text()).isEqualTo(member.name());
        assertThat(newest("provider.linked").map(AuditEntry::subject))
                .contains(member.person().email());
        assertThat(location(visit(newVisitor(), "/sign-in/with/club", "s-mine")))
                .isEqualTo("/");
        var page = member.page(mine, 200);
        assertThat(page.select(".entries h3").eachText()).containsExactly("Club pass");
        assertThat(page.select("form[action$=/club]"))
                .as("one of each provider")
                .isEmpty();
        String action = page.select("form[action*=/links/]").attr("action");
        SignedIn stranger = signIn(Role.STEWARD);
        assertThat(stranger.postForm(action, Map.of()).statusCode()).isEqualTo(404);
        assertThat(location(post(member, mine, action, Map.of()))).isEqualTo(mine + "?removed");
        assertThat(location(visit(newVisitor(), "/sign-in/with/club", "s-mine")))
                .isEqualTo("/sign-in?provider=unknown");
        assertThat(newest("provider.unlinked").map(AuditEntry::subject))
                .contains(member.person().email());
    }

    @Test
    void whatIsLinkedWithSomebodyElseStaysTheirs() {
        NewPerson owner = linked("s-theirs", Role.MEMBER);
        SignedIn member = signIn(Role.MEMBER);
        member.postForm(
                "/account/providers/club", Map.of("password", member.person().password()));
        Asked query = askedAt(member.get("/oauth2/authorization/club"));
        String code = PROVIDER.code(PROVIDER.claims("s-theirs", query.nonce()));
        assertThat(location(comeBack(member, code, query.state()))).isEqualTo("/account/providers?link=taken");
        assertThat(identities().find(PROVIDER.issuer(), "s-theirs").map(ProviderIdentity.Linked::personId))
                .contains(owner.id());
        assertThat(newest("provider.link-refused").map(AuditEntry::subject))
                .contains(member.person().email());
    }

    @Test
    void withoutThePasswordNothingIsLinked() {
        SignedIn member = signIn(Role.MEMBER);
        Asked query = askedAt(member.get("/oauth2/authorization/club"));
        String code = PROVIDER.code(PROVIDER.claims("s-unasked", query.nonce()));
        assertThat(location(comeBack(member, code, query.state()))).isEqualTo("/sign-in?provider=unknown");
        assertThat(identities().of(member.id())).isEmpty();
        assertThat(member.postFormWithoutToken(
                                "/account/providers/club",
                                Map.of("password", member.person().password()))
                        .headers()
                        .firstValue("Location")
                        .orElse(""))
                .doesNotContain("oauth2");
    }

    @Test
    void aProviderThatDoesNotAnswerIsSaidToBeDown() {
        Caller caller = newVisitor();
        assertThat(location(caller.get("/sign-in/with/down"))).isEqualTo("/sign-in?provider=unreachable");
        assertThat(caller.page("/sign-in?provider=unreachable", 200)
                        .select("[role=alert]")
                        .text())
                .contains("cannot be reached now");
        assertThat(caller.get("/sign-in/with/nobody").statusCode()).isEqualTo(404);
        assertThat(caller.get("/oauth2/authorization/nobody").statusCode()).isEqualTo(404);
        assertThat(caller.get("/oauth2/authorization/down").statusCode()).isEqualTo(404);
        assertThat(location(caller.get("/login/oauth2/code/nobody?code=a&state=b")))
                .isEqualTo("/sign-in?provider=failed");
    }

    /** As from a page, with the token that stands on it now. */
    private static HttpResponse<String> post(Caller caller, String page, String path, Map<String, String> fields) {
        Map<String, String> sent = new LinkedHashMap<>(fields);
        List<String> tokens = caller.page(page, 200).select("input[name=_csrf]").eachAttr("value");
        sent.put("_csrf", tokens.get(0));
        return caller.postFormWithoutToken(path, sent);
    }

    private Optional<AuditEntry> newest(String event) {
        return context().getBean(AuditLog.class).newest(null, 200).stream()
                .filter(entry -> entry.event().equals(event))
                .findFirst();
    }

    private static String location(HttpResponse<String> response) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
        return response.headers().firstValue("Location").orElseThrow();
    }

    private ProviderIdentityRepository identities() {
        return context().getBean(ProviderIdentityRepository.class);
    }

    private PersonRepository people() {
        return context().getBean(PersonRepository.class);
    }

    private SettingRepository settings() {
        return context().getBean(SettingRepository.class);
    }
}
