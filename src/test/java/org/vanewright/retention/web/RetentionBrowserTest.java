package org.vanewright.retention.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.net.URI;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.BrowserTest;

/** From putting devices on to what three inspections say of them. */
class RetentionBrowserTest extends BrowserTest {
    private static final String TAPE = "Browser tape";

    @Test
    void threeInspectionsChangeThePageOfRetention() {
        NewPerson member = newPerson(Role.MEMBER);
        Page page = window(NARROW);
        signInWindow(page, member);
        page.navigate("/installations/new?layout=low-wing-pairs-over-the-taper");
        page.locator("#name").fill("Browser installation");
        page.locator("#installedOn").fill("2026-04-18");
        page.locator("#doneBy").fill("Owner");
        page.locator("#adhesiveClass").fill(TAPE);
        page.locator("#material").selectOption(new SelectOption().setValue("ASA"));
        page.locator("#conditions-skinTemperatureC").fill("19");
        page.locator("#conditions-surfaceFinish").selectOption(new SelectOption().setValue("GEL_COAT"));
        for (int i = 0; i < 4; i++) {
            page.locator("#samples-" + i + "-heightMm").fill("10.1");
        }
        page.locator("#samples-3-angleDeg").fill("40");
        page.locator("#samples-3-angleDeg").blur();
        assertThat(page.locator("#preview")).containsText("One device is off by more than the tolerance");
        assertFits(page);
        assertAccessible(page);
        screenshot(page, "installation-edit-" + NARROW);
        String installation = save(page, member, "installations");

        page.navigate(installation);
        page.locator("a:has-text('Add an inspection')").press("Enter");
        page.waitForURL(Pattern.compile(".*/inspections/new.*"));
        inspect(page, "2026-05-02", "10");
        assertThat(page.locator("#form-problems li")).hasCount(0);
        save(page, member, "inspections");
        page.navigate("/retention");
        assertThat(page.locator(".claims")).containsText("No device of 136 in 1 installation was lost in 10 h");

        open(page, installation);
        inspect(page, "2026-06-02", "25");
        loss(page, 0, "LEFT 4 Wing");
        assertFits(page);
        screenshot(page, "inspection-edit-" + NARROW);
        save(page, member, "inspections");
        open(page, installation);
        inspect(page, "2026-07-02", "40");
        save(page, member, "inspections");

        page.navigate("/retention");
        assertThat(page.locator(".claims"))
                .containsText("1 of 136 devices in 1 installation was found lost within 40 h");
        page.locator("section:has(h2:text-is('" + TAPE + "')) td summary").press("Enter");
        page.locator("td details a").first().press("Enter");
        page.waitForURL(Pattern.compile(".*/inspections/browser-installation-inspection-2/revisions/1$"));
        assertThat(page.locator("table")).containsText("Wing, left 4");
        page.navigate(installation);
        assertThat(page.locator("#since")).containsText("40 h flown, 3 inspections, 1 found missing or loose");
    }

    private static void open(Page page, String installation) {
        page.navigate("/inspections/new?installation=" + installation.substring(installation.lastIndexOf('/') + 1));
    }

    private static void inspect(Page page, String on, String hours) {
        page.locator("#inspectedOn").fill(on);
        page.locator("#hoursFlown").fill(hours);
    }

    private static void loss(Page page, int index, String device) {
        page.locator("button[value='add losses']").press("Enter");
        page.locator("#losses-" + index + "-at").selectOption(new SelectOption().setValue(device));
        page.locator("#losses-" + index + "-state").selectOption(new SelectOption().setValue("MISSING"));
        page.locator("#losses-" + index + "-cause").selectOption(new SelectOption().setValue("UNKNOWN"));
    }

    /** Saves the draft, and has it published; gives the address of the record. */
    private String save(Page page, NewPerson member, String plural) {
        page.locator("button[value=save]").click();
        page.waitForURL(Pattern.compile(".*/" + plural + "/drafts/[0-9a-f-]{36}[?]saved$"));
        return publishing().publish(member, URI.create(page.url()).getPath());
    }

    @Test
    void pagesAreWellMade() {
        NewPerson member = newPerson(Role.MEMBER);
        assertWellMade(member, "/retention?invented=true", "retention");
        assertWellMade(member, "/installations/pairs-over-the-taper-put-on-in-spring", "installation");
        assertWellMade(member, "/inspections/pairs-over-the-taper-put-on-in-spring-inspection-3", "inspection");
    }
}
