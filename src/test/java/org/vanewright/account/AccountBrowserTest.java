package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.OneTimeLink.Purpose;
import org.vanewright.testing.BrowserTest;

class AccountBrowserTest extends BrowserTest {
    @ParameterizedTest
    @ValueSource(ints = {NARROW, WIDE})
    void everyPageFitsAndIsAccessible(int width) {
        context().getBean(SettingRepository.class).put("registering", "open");
        Page page = window(width);
        look(page, "/sign-in", "sign-in", width);
        look(page, "/sign-in?back=/account", "sign-in-back", width);
        look(page, "/join", "join", width);
        look(page, "/join/" + invitation(), "invitation", width);
        look(page, "/join/" + "A".repeat(43), "link-gone", width);
        signInWindow(page, newPerson(Role.STEWARD));
        look(page, "/account", "account", width);
        look(page, "/", "home-of-a-steward", width);
        Page dark = darkWindow(width);
        look(dark, "/join", "join-dark", width);
        context().getBean(SettingRepository.class).put("registering", "closed");
    }

    private void look(Page page, String path, String name, int width) {
        page.navigate(path);
        assertAccessible(page);
        assertFits(page);
        screenshot(page, "account-" + name + "-" + width);
    }

    @Test
    void theMeterFollowsWhatIsTyped() {
        Page page = window(WIDE);
        page.navigate("/join/" + invitation());
        page.getByLabel("Password").fill("password1234");
        page.locator(".strength strong").waitFor();
        assertThat(page.locator(".strength").textContent()).contains("weak", "it would be refused");
        assertAccessible(page);
        page.getByLabel("Password").fill("five slow kites over reeds");
        page.locator(".strength :text('strong')").waitFor();
        assertFits(page);
        screenshot(page, "account-meter-" + WIDE);
    }

    @Test
    void somebodyJoinsWithoutScripts() {
        Page page = windowWithoutScripts(NARROW);
        page.navigate("/join/" + invitation());
        page.getByLabel("Name").fill("Noa");
        page.getByLabel("E-mail address").fill("noa@club.example");
        page.getByLabel("Password").fill("short");
        page.getByText("How strong is it?").click();
        assertThat(page.locator(".strength").textContent()).contains("weak");
        page.getByLabel("Password").fill("five slow kites over reeds");
        page.getByLabel("Password").press("Enter");
        assertThat(page.locator("h1").textContent()).isEqualTo("Noa");
        page.getByText("Sign out", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(page.locator(".yours").textContent()).contains("Sign in");
    }

    @Test
    void aFormThatOutlivesItsSessionComesBack() {
        NewPerson person = newPerson(Role.MEMBER);
        Page page = window(WIDE);
        signInWindow(page, person);
        page.navigate("/account");
        page.getByLabel("About you").fill("Kept through the night.");
        context().getBean(Sessions.class).endAll(person.id());
        page.getByText("Save", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(page.locator(".note").textContent()).contains("Your text is kept");
        assertAccessible(page);
        screenshot(page, "account-kept-" + WIDE);
        page.getByLabel("E-mail address").fill(person.email());
        page.getByLabel("Password").fill(person.password());
        page.getByLabel("Password").press("Enter");
        assertThat(page.getByLabel("About you").inputValue()).isEqualTo("Kept through the night.");
    }

    private String invitation() {
        return context()
                .getBean(Links.class)
                .make(Purpose.INVITATION, Role.MEMBER, null, "", "Robin", Duration.ofDays(1))
                .secret();
    }
}
