package org.vanewright.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.Caller;
import org.vanewright.testing.SignedIn;

/** Requests that another site sends in somebody's name, and sessions that somebody else chose. */
abstract class ForgeryCases extends WalkCases {
    /** Changes nothing but a cookie. */
    private static final String WITHOUT_TOKEN = "/units";

    private static final List<RouteTable.Line> FORMS = RouteTable.read("pages.txt").lines().stream()
            .filter(line -> line.method().equals("POST") && !line.outside())
            .filter(line -> !line.call().equals(WITHOUT_TOKEN))
            .toList();

    @Test
    void noFormIsTakenWithoutTheTokenOfItsSession() {
        SignedIn person = signIn(author);
        SignedIn judge = signIn(maintainer);
        String stolen = signIn(other).token();
        List<String> taken = new ArrayList<>();
        for (RouteTable.Line line : FORMS) {
            SignedIn victim = line.call().startsWith("/review") ? judge : person;
            String path = subjects.fill(line.call());
            Map<String, String> fields = Forms.fields(subjects.fill(line.body()));
            HttpResponse<String> none = victim.postFormWithoutToken(path, fields, "X-Forwarded-For", network());
            Map<String, String> forged = Forms.with(fields, "_csrf", stolen);
            HttpResponse<String> another = victim.postFormWithoutToken(path, forged, "X-Forwarded-For", network());
            if (!refused(none, path) || !refused(another, path)) {
                taken.add(line + " gave " + outcome(none) + " and " + outcome(another));
            }
        }
        assertThat(FORMS).hasSizeGreaterThan(40);
        assertThat(taken).isEmpty();
        assertThat(person.page("/account", 200).text()).as("still signed in").contains(author.name());
    }

    /** Not done; what was typed is shown again where it was typed. */
    private static boolean refused(HttpResponse<String> answer, String path) {
        String location = answer.headers().firstValue("Location").orElse("");
        return answer.statusCode() == 403
                || (answer.statusCode() == 303 && URI.create(location).getPath().equals(path));
    }

    @Test
    void whatWasForgedWasNotDone() {
        SignedIn person = signIn(author);
        String draft = subjects.fill("/drafts/{draft}");
        person.postFormWithoutToken(draft + "/discard", Map.of());
        person.postFormWithoutToken(draft + "/submit", Map.of("version", "1", "licence", "CC0_1_0"));
        person.postFormWithoutToken(draft + "/coauthors", Map.of("person", other.id()));
        assertThat(person.page(draft, 200).select("form[action$=remove]")).isEmpty();
        person.page(draft + "/submit", 200);
        String waiting = subjects.fill("/review/devices/{submitted}/1");
        SignedIn judge = signIn(maintainer);
        judge.postFormWithoutToken(waiting + "/publish", Map.of());
        judge.postFormWithoutToken(waiting + "/return", Map.of("reason", "No."));
        assertThat(judge.page("/review", 200).select("a[href=" + waiting + "]")).isNotEmpty();
        person.postFormWithoutToken("/account", Map.of("name", "Forged"));
        assertThat(person.page("/account", 200).select(".me").text()).doesNotContain("Forged");
        person.postFormWithoutToken("/sign-out", Map.of());
        person.page("/account", 200);
    }

    /** As another site's form can send it: the session's cookie comes along, a token does not. */
    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x"})
    void aSessionWritesNothingThroughTheApi(String type) {
        SignedIn person = signIn(author);
        String body = subjects.document("devices").toString();
        assertThat(person.call("POST", "/api/v1/devices", body, "Content-Type", type)
                        .statusCode())
                .isEqualTo(415);
        assertThat(person.postJson("/api/v1/devices", body).statusCode()).isEqualTo(401);
        assertThat(person.page("/drafts", 200).select(".drafts li")).isEmpty();
    }

    @Test
    void signingInGivesTheSessionAnotherIdAndAnotherToken() {
        NewPerson person = newPerson(Role.MEMBER);
        Caller caller = newVisitor();
        String tokenBefore = caller.token();
        String before = Objects.requireNonNull(caller.cookie("SESSION"));
        caller.postForm("/sign-in", Map.of("email", person.email(), "password", person.password()));
        String after = Objects.requireNonNull(caller.cookie("SESSION"));
        assertThat(after).isNotEqualTo(before);
        Caller attacker = newVisitor();
        attacker.setCookie("SESSION", before);
        assertThat(outcome(attacker.get("/account"))).isEqualTo("sign-in");
        HttpResponse<String> old =
                caller.postFormWithoutToken("/account", Map.of("_csrf", tokenBefore, "name", "Mine"));
        assertThat(refused(old, "/account")).isTrue();
        assertThat(caller.page("/account", 200).select(".me").text()).contains(person.name());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "YXR0YWNrZXItY2hvc2UtdGhpcy1pZC1mb3IteW91",
                "attacker",
                "00000000-0000-0000-0000-000000000000",
                "%00",
                "' or '1'='1",
                "../../etc/passwd"
            })
    void anIdThatSomebodyElseChoseIsNotTaken(String chosen) {
        NewPerson person = newPerson(Role.MEMBER);
        Caller caller = newVisitor();
        caller.setCookie("SESSION", chosen);
        caller.token();
        assertThat(caller.cookie("SESSION")).isNotEqualTo(chosen);
        caller.setCookie("SESSION", chosen);
        caller.postForm("/sign-in", Map.of("email", person.email(), "password", person.password()));
        assertThat(caller.cookie("SESSION")).isNotEqualTo(person.id());
        Caller attacker = newVisitor();
        attacker.setCookie("SESSION", chosen);
        assertThat(outcome(attacker.get("/account"))).isEqualTo("sign-in");
    }

    @Test
    void anIdInTheAddressIsNotTaken() {
        SignedIn person = signIn(author);
        String id = Objects.requireNonNull(person.cookie("SESSION"));
        for (String path : List.of("/account;jsessionid=" + id, "/account;SESSION=" + id, "/account?SESSION=" + id)) {
            HttpResponse<String> answer = get(path);
            assertThat(answer.body()).as(path).doesNotContain(author.email());
            assertThat(answer.statusCode()).as(path).isIn(303, 400, 404);
        }
    }
}
