package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.EnumSet;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.vanewright.record.NotAllowedException;
import org.vanewright.testing.Caller;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

class PasswordResetTest extends ServerTest {
    private static final String NEW = "eleven loud geese at noon";

    private String link(String personId) {
        PasswordReset reset = context().getBean(PasswordReset.class);
        String link = Acting.as(newPerson(Role.STEWARD).id(), () -> reset.issueResetLink(personId));
        return URI.create(link).getPath();
    }

    @Test
    void withoutAMailServerThePageSaysWhomToAsk() {
        assertThat(page("/reset", 200).select("main").text()).contains("Ask a steward");
        assertThat(page("/reset", 200).select("main form")).isEmpty();
    }

    @Test
    void aStewardsLinkGivesANewPasswordOnceAndEndsSessionsAndTokens() {
        SignedIn member = signIn(Role.MEMBER);
        AccessTokens tokens = context().getBean(AccessTokens.class);
        String token = Acting.as(
                member.id(),
                () -> tokens.create("laptop", EnumSet.of(TokenScope.READ), 30).secret());
        String link = link(member.id());
        Caller visitor = newVisitor();
        assertThat(visitor.page(link, 200).select("#newPassword")).hasSize(1);
        HttpResponse<String> weak = visitor.postForm(link, Map.of("newPassword", "short", "action", "save"));
        assertThat(parsed(weak, 422).select("#newPassword-error").text()).contains("12 characters");
        HttpResponse<String> done = visitor.postForm(link, Map.of("newPassword", NEW, "action", "save"));
        assertThat(done.statusCode()).isEqualTo(303);
        assertThat(visitor.get("/account").statusCode()).isEqualTo(303);
        assertThat(member.get("/account").statusCode()).isEqualTo(303);
        assertThat(tokens.find(token)).isEmpty();
        assertThat(visitor.page(link, 410).select("h1").text()).contains("does not work");
        assertThat(visitor.postForm("/sign-in", Map.of("email", member.person().email(), "password", NEW))
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void aLaterLinkEndsTheEarlierOne() {
        String id = newPerson(Role.MEMBER).id();
        String earlier = link(id);
        String later = link(id);
        page(earlier, 410);
        page(later, 200);
        page("/reset/" + "x".repeat(43), 410);
    }

    @Test
    void oneOfManyAtOnceChangesThePassword() throws Exception {
        String secret = link(newPerson(Role.MEMBER).id()).substring("/reset/".length());
        PasswordReset reset = context().getBean(PasswordReset.class);
        assertThat(AtOnce.successes(3, () -> reset.choose(secret, NEW))).isEqualTo(1);
    }

    @Test
    void onlyAStewardMakesALinkAndNotForAClosedAccount() {
        String id = newPerson(Role.MEMBER).id();
        String link = link(id);
        PasswordReset reset = context().getBean(PasswordReset.class);
        String maintainer = newPerson(Role.MAINTAINER).id();
        assertThatExceptionOfType(NotAllowedException.class)
                .isThrownBy(() -> Acting.as(maintainer, () -> reset.issueResetLink(id)));
        context().getBean(PersonRepository.class).place(id, Role.MEMBER, PersonState.CLOSED);
        page(link, 410);
        assertThatExceptionOfType(NotAllowedException.class).isThrownBy(() -> link(id));
    }
}
