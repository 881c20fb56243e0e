package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.record.NotAllowedException;
import org.vanewright.testing.Caller;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

class SecondFactorTest extends ServerTest {
    private static final String PATH = "/account/second-factor";
    private static final String FROM = "X-Forwarded-For";

    private Authenticator prepare(SignedIn person) {
        assertThat(person.postForm(PATH, Map.of()).statusCode()).isEqualTo(303);
        return new Authenticator(context(), person.id());
    }

    private List<String> switchOn(SignedIn person, Authenticator app) {
        HttpResponse<String> response =
                person.postForm(PATH + "/on", Map.of("password", NewPeople.PASSWORD, "code", app.code()));
        return parsed(response, 200).select(".recovery code").eachText();
    }

    /** Who gave the right password. */
    private Caller halfSignedIn(NewPerson person) {
        Caller caller = newVisitor();
        HttpResponse<String> response = caller.postForm(
                "/sign-in", Map.of("email", person.email(), "password", person.password(), "back", "/devices"));
        assertThat(response.statusCode()).isEqualTo(303);
        assertThat(response.headers().firstValue("location")).contains("/sign-in/code?back=%2Fdevices");
        assertThat(caller.get("/account").headers().firstValue("location").orElseThrow())
                .contains("/sign-in");
        return caller;
    }

    private static HttpResponse<String> give(Caller caller, String code, String address) {
        return caller.postForm("/sign-in/code", Map.of("code", code, "back", "/devices"), FROM, address);
    }

    @Test
    void itIsSwitchedOnByPasswordAndCode() {
        SignedIn member = signIn(Role.MEMBER);
        assertThat(member.page(PATH, 200).select("svg.qr")).isEmpty();
        Authenticator app = prepare(member);
        Document page = member.page(PATH, 200);
        assertThat(page.select("svg.qr path").attr("d")).hasSizeGreaterThan(1000);
        assertThat(page.select("#secret").val()).isEqualTo(app.text()).hasSize(32);
        HttpResponse<String> wrong = member.postForm(
                PATH + "/on", Map.of("password", NewPeople.PASSWORD, "code", "nonsense"), FROM, "198.51.100.50");
        assertThat(parsed(wrong, 422).select("#code-error").text()).contains("six digits");
        wrong = member.postForm(PATH + "/on", Map.of("password", "wrong", "code", app.code()), FROM, "198.51.100.50");
        assertThat(parsed(wrong, 422).select("#password-error").text()).contains("your password");
        assertThat(switchOn(member, app))
                .hasSize(10)
                .doesNotHaveDuplicates()
                .allMatch(code -> code.matches("[a-z2-9]{4}(-[a-z2-9]{4}){3}"));
        page = member.page(PATH, 200);
        assertThat(page.select("svg.qr, #secret, .recovery")).isEmpty();
        assertThat(page.select("main").text()).contains("Recovery codes left: 10");
    }

    @Test
    void signingInAsksForACodeThatWorksOnce() {
        SignedIn member = signIn(Role.MEMBER);
        Authenticator app = prepare(member);
        switchOn(member, app);
        Caller used = halfSignedIn(member.person());
        assertThat(give(used, app.code(), "198.51.100.20").statusCode()).isEqualTo(422);
        String before = used.cookie("SESSION");
        HttpResponse<String> right = give(used, app.nextCode(), "198.51.100.20");
        assertThat(right.statusCode()).isEqualTo(303);
        assertThat(right.headers().firstValue("location")).contains("/devices");
        assertThat(used.cookie("SESSION")).isNotEqualTo(before);
        assertThat(used.page("/account", 200).text()).contains(member.name());
        Caller replayed = halfSignedIn(member.person());
        assertThat(give(replayed, app.nextCode(), "198.51.100.20").statusCode()).isEqualTo(422);
        assertThat(replayed.get("/account").statusCode()).isEqualTo(303);
    }

    @Test
    void aRecoveryCodeSignsInOnce() {
        SignedIn member = signIn(Role.MEMBER);
        List<String> codes = switchOn(member, prepare(member));
        String typed = codes.get(3).toUpperCase(Locale.ROOT).replace('-', ' ');
        assertThat(give(halfSignedIn(member.person()), typed, "198.51.100.21").statusCode())
                .isEqualTo(303);
        assertThat(give(halfSignedIn(member.person()), codes.get(3), "198.51.100.21")
                        .statusCode())
                .isEqualTo(422);
        assertThat(member.page(PATH, 200).select("main").text()).contains("Recovery codes left: 9");
    }

    @Test
    void guessingAtCodesIsSlowedDownForTheAccount() {
        SignedIn member = signIn(Role.MEMBER);
        Authenticator app = prepare(member);
        switchOn(member, app);
        Caller caller = halfSignedIn(member.person());
        List<Integer> answers = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            answers.add(give(caller, "guess " + i, "198.51.100." + (30 + i)).statusCode());
        }
        assertThat(answers).startsWith(422, 422, 422, 422).endsWith(429);
        HttpResponse<String> limited = give(caller, app.nextCode(), "198.51.100.40");
        assertThat(limited.statusCode()).isEqualTo(429);
        assertThat(limited.headers().firstValue("retry-after")).isPresent();
        assertThat(halfSignedIn(member.person()).get("/account").statusCode()).isEqualTo(303);
    }

    @Test
    void aPasswordGivenBeforeItChangedIsNoStepTowardsSigningIn() {
        SignedIn member = signIn(Role.MEMBER);
        Authenticator app = prepare(member);
        switchOn(member, app);
        Caller caller = halfSignedIn(member.person());
        PersonRepository people = context().getBean(PersonRepository.class);
        people.changePassword(member.id(), people.passwordHash(member.id()).orElseThrow());
        HttpResponse<String> response = give(caller, app.nextCode(), "198.51.100.22");
        assertThat(response.headers().firstValue("location")).contains("/sign-in?back=%2Fdevices");
        assertThat(caller.get("/account").statusCode()).isEqualTo(303);
    }

    @Test
    void itIsSwitchedOffByPasswordAndCode() {
        SignedIn member = signIn(Role.MEMBER);
        List<String> codes = switchOn(member, prepare(member));
        HttpResponse<String> wrong = member.postForm(
                PATH + "/off", Map.of("password", "wrong", "code", codes.get(0)), FROM, "198.51.100.51");
        assertThat(parsed(wrong, 422).select("#password-error").text()).contains("your password");
        wrong = member.postForm(
                PATH + "/off", Map.of("password", NewPeople.PASSWORD, "code", "000000x"), FROM, "198.51.100.51");
        assertThat(parsed(wrong, 422).select("#code-error").text()).contains("recovery code");
        assertThat(member.postForm(PATH + "/off", Map.of("password", NewPeople.PASSWORD, "code", codes.get(0)))
                        .statusCode())
                .isEqualTo(303);
        assertThat(signIn(member.person()).get("/account").statusCode()).isEqualTo(200);
    }

    @Test
    void onlyAStewardTakesItFromSomebodyElse() {
        SignedIn member = signIn(Role.MEMBER);
        switchOn(member, prepare(member));
        SecondFactor factor = context().getBean(SecondFactor.class);
        assertThatExceptionOfType(NotAllowedException.class).isThrownBy(() -> reset(factor, Role.MAINTAINER, member));
        halfSignedIn(member.person());
        assertThat(reset(factor, Role.STEWARD, member)).isTrue();
        assertThat(signIn(member.person()).get("/account").statusCode()).isEqualTo(200);
    }

    private boolean reset(SecondFactor factor, Role by, SignedIn member) {
        return Acting.as(newPerson(by).id(), () -> {
            factor.reset(member.id());
            return true;
        });
    }
}
