package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.NewPeople.NewPerson;
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
}
