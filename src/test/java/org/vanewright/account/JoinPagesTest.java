package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.OneTimeLink.Purpose;
import org.vanewright.testing.Caller;
import org.vanewright.testing.ServerTest;

class JoinPagesTest extends ServerTest {
    private static final String NEW = "five slow kites over reeds";

    @AfterEach
    void closeRegistering() {
        settings().put("registering", "closed");
    }

    @Test
    void anInvitationIsUsedOnceAndSignsIn() {
        String path = "/join/" + secret(Role.MAINTAINER);
        Caller caller = newVisitor();
        assertThat(caller.page(path, 200).text()).contains("Robin invites you as a maintainer");
        HttpResponse<String> joined = caller.postForm(path, details("lee@club.example", NEW));
        assertThat(joined.statusCode()).isEqualTo(303);
        assertThat(caller.page("/", 200).select(".yours a").eachText()).contains("Review");
        assertThat(newVisitor().page(path, 410).text()).contains("This link does not work");
        assertThat(newVisitor().postForm(path, details("lu@club.example", NEW)).statusCode())
                .isEqualTo(410);
        assertThat(people().findByEmail("lu@club.example")).isEmpty();
    }

    @Test
    void aRefusedPasswordLosesNothingElseAndIsNotRepeated() {
        String path = "/join/" + secret(Role.MEMBER);
        Caller caller = newVisitor();
        HttpResponse<String> refused = caller.postForm(path, details("lea@club.example", "password1234"));
        var page = parsed(refused, 422);
        assertThat(page.select("#newPassword-error").text()).contains("harder to guess");
        assertThat(page.select("input[name=email]").attr("value")).isEqualTo("lea@club.example");
        assertThat(page.select(".strength").text()).contains("weak");
        assertThat(refused.body()).doesNotContain("password1234");
    }

    @Test
    void theStrengthIsToldWithoutScriptsAndNothingIsDone() {
        String path = "/join/" + secret(Role.MEMBER);
        Map<String, String> typed =
                Map.of("email", "lia@club.example", "name", "Lia", "newPassword", NEW, "action", "check");
        HttpResponse<String> told = newVisitor().postForm(path, typed);
        assertThat(parsed(told, 200).select(".strength").text()).contains("This password is");
        assertThat(told.body()).doesNotContain(NEW);
        assertThat(people().findByEmail("lia@club.example")).isEmpty();
    }

    @Test
    void guessedLinksDoNotWork() {
        assertThat(get("/join/" + "A".repeat(43)).statusCode()).isEqualTo(410);
        assertThat(get("/set-up/" + "A".repeat(43)).statusCode()).isEqualTo(410);
        assertThat(get("/set-up/x").statusCode()).isEqualTo(404);
        String setUp = links().make(Purpose.SET_UP, Role.STEWARD, null, "", "x", Duration.ofHours(1))
                .secret();
        assertThat(get("/join/" + setUp).statusCode())
                .as("each link for its own purpose")
                .isEqualTo(410);
        signIn(Role.STEWARD);
        assertThat(get("/set-up/" + setUp).statusCode())
                .as("there is a steward already")
                .isEqualTo(410);
    }

    @Test
    void registeringIsClosedUnlessAStewardOpensIt() {
        assertThat(get("/join").statusCode()).isEqualTo(404);
        assertThat(postForm("/join", details("mo@club.example", NEW)).statusCode())
                .isEqualTo(404);
        assertThat(people().findByEmail("mo@club.example")).isEmpty();
        assertThat(get("/sign-in").body()).doesNotContain("href=\"/join\"");
    }

    @Test
    void whoRegistersWaitsForAStewardAndLearnsOfNoOtherAccount() {
        settings().put("registering", "open");
        assertThat(get("/sign-in").body()).contains("href=\"/join\"");
        NewPerson known = newPerson(Role.MEMBER);
        HttpResponse<String> fresh = postForm("/join", details("mia@club.example", NEW));
        HttpResponse<String> taken = postForm("/join", details(known.email(), NEW));
        assertThat(fresh.statusCode()).isEqualTo(200);
        assertThat(fresh.body()).isEqualTo(taken.body()).contains("A steward will look at it");
        assertThat(people().findByEmail("mia@club.example").map(Person::state)).contains(PersonState.PENDING);
        HttpResponse<String> early =
                newVisitor().postForm("/sign-in", Map.of("email", "mia@club.example", "password", NEW));
        assertThat(parsed(early, 422).text()).contains("has not admitted this account yet");
        Person mia = people().findByEmail("mia@club.example").orElseThrow();
        people().place(mia.id(), Role.MEMBER, PersonState.ACTIVE);
        assertThat(newVisitor()
                        .postForm("/sign-in", Map.of("email", "MIA@club.example ", "password", NEW))
                        .statusCode())
                .isEqualTo(303);
    }

    private static Map<String, String> details(String email, String password) {
        return Map.of("email", email, "name", "Lou", "newPassword", password, "action", "save");
    }

    private String secret(Role role) {
        return links().make(Purpose.INVITATION, role, null, "", "Robin", Duration.ofDays(1))
                .secret();
    }

    private Links links() {
        return context().getBean(Links.class);
    }

    private PersonRepository people() {
        return context().getBean(PersonRepository.class);
    }

    private SettingRepository settings() {
        return context().getBean(SettingRepository.class);
    }
}
