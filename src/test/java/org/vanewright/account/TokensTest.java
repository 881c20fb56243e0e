package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.vanewright.audit.AuditEntry;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

class TokensTest extends ServerTest {
    private static final String FROM = "X-Forwarded-For";
    private static final String API = "/api/v1/devices";

    private static Map<String, String> form(String name, String... scopes) {
        Map<String, String> form = new HashMap<>(Map.of("name", name, "days", "30"));
        List.of(scopes).forEach(scope -> form.put(scope, "true"));
        return form;
    }

    private static String create(SignedIn person, String name, String... scopes) {
        HttpResponse<String> response = person.postForm("/account/tokens", form(name, scopes));
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("cache-control")).contains("no-store");
        return Jsoup.parse(response.body()).select("#secret").val();
    }

    private HttpResponse<String> call(String token, String address) {
        return get(API, "Authorization", "Bearer " + token, FROM, address);
    }

    @Test
    void aTokenIsShownOnceAndLetsAProgramIn() {
        SignedIn member = signIn(Role.MEMBER);
        String secret = create(member, "workshop computer", "read", "submit");
        assertThat(secret).matches("vanewright_[A-Za-z0-9_-]{43}");
        Document page = member.page("/account/tokens", 200);
        assertThat(page.html()).doesNotContain(secret);
        assertThat(page.select(".entries h3").eachText()).containsExactly("workshop computer");
        assertThat(page.select(".entries dd").eachText())
                .startsWith("Read, Submit")
                .contains("never");
        assertThat(call(secret, "198.51.100.1").statusCode()).isEqualTo(200);
        assertThat(member.page("/account/tokens", 200).select(".entries dd").eachText())
                .doesNotContain("never");
        assertThat(events(member.id())).contains("token.created");
    }

    @Test
    void aRevokedTokenIsRefusedInTheSameWordsAsAnUnknownOne() {
        SignedIn member = signIn(Role.MEMBER);
        String secret = create(member, "old laptop", "read");
        String revoke =
                member.page("/account/tokens", 200).select(".entries form").attr("action");
        assertThat(signIn(Role.MEMBER).postForm(revoke, Map.of()).statusCode()).isEqualTo(404);
        assertThat(call(secret, "198.51.100.2").statusCode()).isEqualTo(200);
        assertThat(member.postForm(revoke, Map.of()).statusCode()).isEqualTo(303);
        HttpResponse<String> revoked = call(secret, "198.51.100.2");
        assertThat(revoked.statusCode()).isEqualTo(401);
        assertThat(revoked.headers().firstValue("www-authenticate").orElseThrow())
                .startsWith("Bearer ")
                .contains("error=\"invalid_token\"");
        assertThat(revoked.headers().firstValue("content-type")).contains("application/problem+json");
        assertThat(call("vanewright_" + "x".repeat(43), "198.51.100.2").body()).isEqualTo(revoked.body());
        assertThat(call("nonsense", "198.51.100.2").body()).isEqualTo(revoked.body());
        assertThat(events(member.id())).contains("token.revoked");
    }

    @Test
    void aClosedAccountsTokenIsRefused() {
        SignedIn member = signIn(Role.MEMBER);
        String secret = create(member, "laptop", "read");
        context().getBean(PersonRepository.class).place(member.id(), Role.MEMBER, PersonState.CLOSED);
        assertThat(call(secret, "198.51.100.3").statusCode()).isEqualTo(401);
    }

    @Test
    void tokensOpenNoPages() {
        SignedIn member = signIn(Role.MEMBER);
        String secret = create(member, "laptop", "read", "submit");
        HttpResponse<String> response = get("/account", "Authorization", "Bearer " + secret);
        assertThat(response.statusCode()).isEqualTo(303);
        assertThat(response.headers().firstValue("location").orElseThrow()).contains("/sign-in");
    }

    @Test
    void manyRefusedTokensMakeAnAddressWaitButNotTheKnownOnes() {
        String secret = create(signIn(Role.MEMBER), "laptop", "read");
        List<Integer> answers = new ArrayList<>();
        for (int i = 0; i < 32; i++) {
            answers.add(call("vanewright_wrong" + i, "198.51.100.4").statusCode());
        }
        assertThat(answers).startsWith(401).endsWith(429).containsOnly(401, 429);
        HttpResponse<String> limited = call("nonsense", "198.51.100.4");
        assertThat(Long.parseLong(limited.headers().firstValue("retry-after").orElseThrow()))
                .isBetween(1L, 900L);
        assertThat(call(secret, "198.51.100.4").statusCode()).isEqualTo(200);
        assertThat(call("nonsense", "198.51.100.5").statusCode()).isEqualTo(401);
    }

    @Test
    void aTokenCarriesNoMoreThanItsScopesAndItsOwnersRole() {
        SignedIn steward = signIn(Role.STEWARD);
        assertThat(powers(create(steward, "reads", "read"))).containsExactly(Power.READ_OWN);
        assertThat(powers(create(steward, "writes", "submit"))).containsExactlyInAnyOrder(Power.READ_OWN, Power.SUBMIT);
        String all = create(steward, "all", "read", "submit", "review");
        assertThat(powers(all)).containsExactlyInAnyOrder(Power.READ_OWN, Power.SUBMIT, Power.REVIEW);
        context().getBean(PersonRepository.class).place(steward.id(), Role.MEMBER, PersonState.ACTIVE);
        assertThat(powers(all)).containsExactlyInAnyOrder(Power.READ_OWN, Power.SUBMIT);
    }

    private Set<Power> powers(String secret) {
        TokenSignIn.Holder holder =
                context().getBean(AccessTokens.class).find(secret).orElseThrow();
        Actor actor = Acting.with(
                PersonAuthentication.byToken(holder.personId(), Instant.now(), holder.scope()),
                context().getBean(Actors.class)::current);
        return actor.powers();
    }

    @Test
    void unusableTokensAreRefusedBesideTheirFields() {
        SignedIn member = signIn(Role.MEMBER);
        assertThat(member.page("/account/tokens", 200).select("#review")).isEmpty();
        HttpResponse<String> response =
                member.postForm("/account/tokens", Map.of("name", "  ", "review", "true", "days", "9999"));
        Document page = parsed(response, 422);
        assertThat(page.select("#name-error").text()).contains("1 to 60 characters");
        assertThat(page.select("#scopes-error").text()).contains("your role");
        assertThat(page.select("#days-error").text()).contains("30, 90 or 365 days");
        create(member, "twice", "read");
        page = parsed(member.postForm("/account/tokens", form("twice", "read")), 422);
        assertThat(page.select("#name-error").text()).contains("none of your other tokens");
        assertThat(page.select("#name").attr("value")).isEqualTo("twice");
    }

    @Test
    void nobodyHasMoreThanTwentyEvenAtOnce() throws Exception {
        String id = newPerson(Role.MEMBER).id();
        AccessTokens tokens = context().getBean(AccessTokens.class);
        for (int i = 1; i < AccessTokens.MOST; i++) {
            create(tokens, id, "token " + i);
        }
        int last = AtOnce.successes(4, () -> {
            try {
                return create(tokens, id, "of " + Thread.currentThread().getName());
            } catch (InvalidInputException e) {
                return false;
            }
        });
        assertThat(last).isEqualTo(1);
        assertThatExceptionOfType(InvalidInputException.class)
                .isThrownBy(() -> create(tokens, id, "one more"))
                .withMessageContaining("20");
    }

    private static boolean create(AccessTokens tokens, String id, String name) {
        return Acting.as(id, () -> tokens.create(name, EnumSet.of(TokenScope.READ), 30))
                .secret()
                .startsWith(AccessTokens.PREFIX);
    }

    private List<String> events(String personId) {
        return context().getBean(AuditLog.class).newest(null, 200).stream()
                .filter(entry -> personId.equals(entry.personId()))
                .map(AuditEntry::event)
                .toList();
    }
}
