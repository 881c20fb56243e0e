package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetupTest;
import jakarta.mail.internet.MimeMessage;
import java.net.URI;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.testing.ServerTest;

class PasswordResetMailTest extends ServerTest {
    private static final long PATIENCE_MS = 30_000;
    private static final GreenMail MAIL = new GreenMail(ServerSetupTest.SMTP.dynamicPort());

    @DynamicPropertySource
    static void mailServer(DynamicPropertyRegistry properties) {
        MAIL.start();
        properties.add("spring.mail.host", () -> "localhost");
        properties.add("spring.mail.port", () -> MAIL.getSmtp().getPort());
        properties.add("vanewright.base-url", () -> "https://vanes.club.example");
        properties.add("vanewright.mail-from", () -> "vanes@club.example");
    }

    @AfterAll
    static void stop() {
        MAIL.stop();
    }

    private HttpResponse<String> ask(String email) {
        return postForm("/reset", Map.of("email", email));
    }

    @Test
    void aLinkComesByMailToWhoHasAnAccountAndTheAnswerTellsNobody() throws Exception {
        context().getBean(SettingRepository.class).put("name", "Club\r\nBcc: thief@elsewhere.example");
        NewPerson person = newPerson(Role.MEMBER);
        HttpResponse<String> unknown = ask("nobody@club.example");
        HttpResponse<String> known = ask(person.email().toUpperCase(Locale.ROOT));
        assertThat(parsed(known, 200).select("main").html())
                .isEqualTo(parsed(unknown, 200).select("main").html())
                .contains("Look into your mail");
        assertThat(MAIL.waitForIncomingEmail(PATIENCE_MS, 1)).isTrue();
        MimeMessage[] mails = MAIL.getReceivedMessages();
        assertThat(mails).hasSize(1);
        assertThat(mails[0].getAllRecipients()).extracting(Object::toString).containsExactly(person.email());
        assertThat(mails[0].getHeader("Bcc")).isNull();
        assertThat(mails[0].getSubject()).isEqualTo("Choose a new password for Club Bcc: thief@elsewhere.example");
        assertThat(mails[0].getFrom()[0].toString()).contains("<vanes@club.example>");
        Matcher link = Pattern.compile("https://vanes\\.club\\.example(/reset/[A-Za-z0-9_-]{43})")
                .matcher(GreenMailUtil.getBody(mails[0]));
        assertThat(link.find()).isTrue();
        HttpResponse<String> done = postForm(
                URI.create(link.group(1)).getPath(),
                Map.of("newPassword", "eleven loud geese at noon", "action", "save"));
        assertThat(done.statusCode()).isEqualTo(303);
    }

    @Test
    void askingIsLimitedForKnownAndUnknownAlike() {
        NewPerson closed = newPerson(Role.MEMBER);
        context().getBean(PersonRepository.class).place(closed.id(), Role.MEMBER, PersonState.CLOSED);
        for (String email : List.of(closed.email(), "stranger@club.example")) {
            HttpResponse<String> last = ask(email);
            for (int i = 0; i < 6; i++) {
                last = ask(email);
            }
            assertThat(last.statusCode()).isEqualTo(429);
            assertThat(parsed(last, 429).select("[role=alert]").text()).contains("Too many attempts");
        }
    }

    @Test
    void whatIsNoAddressIsRefusedBesideTheField() {
        HttpResponse<String> response = ask("kim@club.example\r\nBcc: lou@club.example");
        assertThat(parsed(response, 422).select("#email-error").text()).contains("e-mail address");
    }
}
