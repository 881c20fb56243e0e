package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.testing.BrowserTest;

/** The steward's console as people see it. */
class StewardBrowserTest extends BrowserTest {
    @ParameterizedTest
    @ValueSource(ints = {NARROW, WIDE})
    void everyRoomFitsAndIsAccessible(int width) {
        NewPerson waiting = NewPeople.add(context(), Role.MEMBER, PersonState.PENDING);
        Page page = width == NARROW ? windowWithoutScripts(width) : window(width);
        signInWindow(page, newPerson(Role.STEWARD));
        for (String room : List.of("", "/people", "/instance", "/log", "/people/" + waiting.id())) {
            page.navigate("/steward" + room);
            look(page, room.length() > 20 ? "waiting" : room.replace("/", ""), width);
        }
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Admit"))
                .click();
        assertThat(page.locator("[role=status]").textContent()).contains("Admitted");
        page.getByText("Make a link for a new password").click();
        assertThat(page.getByLabel("The link").inputValue()).contains("/reset/");
        look(page, "person", width);
        page.navigate("/steward/invitations");
        page.getByLabel("For whom").fill("Kim from the workshop");
        page.getByText("Make the link").click();
        assertThat(page.locator("textarea.secret").inputValue()).contains("/join/");
        look(page, "invitations", width);
        page.navigate("/steward/people/" + waiting.id());
        page.getByText("Close the account").click();
        assertThat(page.locator("[role=status]").textContent()).contains("Closed");
    }

    private void look(Page page, String name, int width) {
        if (width == WIDE) {
            assertAccessible(page);
        }
        assertFits(page);
        screenshot(page, "steward-" + name + "-" + width);
    }
}
