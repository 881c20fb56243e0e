package org.vanewright.account;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.testing.BrowserTest;

/** A person makes a token, and signs in with a second factor. */
class TokenBrowserTest extends BrowserTest {
    private void look(Page page, String name, int width) {
        assertAccessible(page);
        assertFits(page);
        screenshot(page, name + "-" + width);
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }

    @ParameterizedTest
    @ValueSource(ints = {NARROW, WIDE})
    void aTokenIsMadeAndRevoked(int width) {
        Page page = width == WIDE ? darkWindow(width) : window(width);
        signInWindow(page, newPerson(Role.MAINTAINER));
        page.navigate("/account");
        look(page, "account", width);
        page.getByText("My tokens").click();
        press(page, "Make the token");
        assertThat(page.locator("#name-error")).containsText("1 to 60 characters");
        look(page, "tokens-refused", width);
        page.getByLabel("Name").fill("Workshop computer");
        page.getByLabel("Submit").check();
        press(page, "Make the token");
        assertThat(page.locator("#secret")).hasValue(Pattern.compile("vanewright_.{43}"));
        look(page, "tokens", width);
        press(page, "Revoke Workshop computer");
        assertThat(page.locator("main")).containsText("The token is revoked");
        assertThat(page.locator(".entries li").count()).isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {NARROW, WIDE})
    void aSecondFactorIsSwitchedOnAndUsed(int width) {
        NewPerson person = newPerson(Role.MEMBER);
        Page page = width == WIDE ? window(width) : darkWindow(width);
        signInWindow(page, person);
        page.navigate("/account");
        page.getByText("Second factor").click();
        look(page, "second-factor-off", width);
        press(page, "Begin");
        assertThat(page.locator("svg.qr")).isVisible();
        look(page, "second-factor-begun", width);
        Authenticator app = new Authenticator(context(), person.id());
        assertThat(page.locator("#secret")).hasValue(app.text());
        page.getByLabel("Code").fill(app.code());
        page.getByLabel("Password").fill(person.password());
        press(page, "Switch on");
        assertThat(page.locator(".recovery li")).hasCount(10);
        look(page, "second-factor-on", width);
        Page phone = windowWithoutScripts(width);
        phone.navigate("/sign-in");
        phone.getByLabel("E-mail address").fill(person.email());
        phone.getByLabel("Password").fill(person.password());
        press(phone, "Sign in");
        assertThat(phone.locator("h1")).hasText("Your code");
        Page other = window(width);
        other.navigate("/sign-in");
        other.getByLabel("E-mail address").fill(person.email());
        other.getByLabel("Password").fill(person.password());
        press(other, "Sign in");
        look(other, "sign-in-code", width);
        phone.getByLabel("Code").fill(app.nextCode());
        press(phone, "Sign in");
        assertThat(phone.locator(".yours .me")).containsText(person.name());
    }
}
