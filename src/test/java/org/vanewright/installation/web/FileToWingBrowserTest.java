package org.vanewright.installation.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.SelectOption;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.BrowserTest;

/** From a layout to pieces, tape, a sheet for the workshop, and the record of what was put on. */
class FileToWingBrowserTest extends BrowserTest {
    private static final String LAYOUT = "/layouts/high-wing-one-row-co-rotating";

    @Test
    void aMemberPrintsChoosesATapeAndPutsTheDevicesOn() {
        NewPerson member = newPerson(Role.MEMBER);
        Page page = window(WIDE);
        signInWindow(page, member);
        String run = print(page, member);
        understandMargins(page);
        takeTheSheet(page, run);
        putOn(page, member, run);
    }

    private String print(Page page, NewPerson member) {
        page.navigate(LAYOUT);
        page.getByText("What to print").press("Enter");
        assertThat(page.locator("#totals-title + dl")).containsText("on 1 plate");
        page.getByText("Record what you printed").press("Enter");
        page.waitForURL(Pattern.compile(".*/print-runs/new.*"));
        page.locator("#name").fill("Browser print run");
        page.locator("#printing-on").fill("2026-04-02");
        page.locator("#printing-material").selectOption(new SelectOption().setValue("ASA"));
        page.locator("#printing-machineClass").fill("Filament printer");
        page.locator("#settings-0-value").fill("0.2 mm");
        page.locator("#settings-1-value").fill("3 lines");
        page.locator("#sample-0-heightMm").fill("7.9");
        page.locator("#outcome-minutes").fill("240");
        page.locator("#outcome-minutes").blur();
        assertThat(page.locator("#preview")).containsText("15.0 min a piece");
        assertAccessible(page);
        return save(page, member, "print-runs");
    }

    private void understandMargins(Page page) {
        page.navigate(LAYOUT);
        page.getByText("Bond check").press("Enter");
        page.locator("#adhesive").selectOption(new SelectOption().setIndex(1));
        page.locator("main form button[type=submit]").first().press("Enter");
        assertThat(page.locator(".knock").first()).containsText("knock");
    }

    private void takeTheSheet(Page page, String run) {
        page.navigate(LAYOUT);
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Install sheet"))
                .press("Enter");
        page.locator("#sheet-adhesive").selectOption(new SelectOption().setIndex(1));
        page.locator("#sheet-run").selectOption(new SelectOption().setValue(run.replaceFirst("^.*/", "")));
        String address = (String) page.locator("main form")
                .evaluate("form => form.action + '?' + new URLSearchParams(new FormData(form))");
        APIResponse sheet = page.request().get(address);
        Assertions.assertThat(sheet.status()).isEqualTo(200);
        byte[] head = Arrays.copyOf(sheet.body(), 5);
        Assertions.assertThat(new String(head, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    }

    private void putOn(Page page, NewPerson member, String run) {
        page.navigate(LAYOUT);
        page.getByText("Record an installation").press("Enter");
        page.waitForURL(Pattern.compile(".*/installations/new.*"));
        page.locator("#name").fill("Put on in the browser");
        page.locator("#installedOn").fill("2026-04-18");
        page.locator("#doneBy").fill("Owner");
        page.locator("#adhesive").selectOption(new SelectOption().setIndex(1));
        page.locator("#printRun").selectOption(new SelectOption().setValue(run.replaceFirst("^.*/", "") + "@1"));
        page.locator("#conditions-skinTemperatureC").fill("19");
        page.locator("#conditions-surfaceFinish").selectOption(new SelectOption().setIndex(1));
        for (int i = 0; i < 4; i++) {
            page.locator("#samples-" + i + "-heightMm").fill("8");
        }
        String installation = save(page, member, "installations");
        page.navigate(installation);
        assertThat(page.locator("main a[href^='" + run + "']").first()).isVisible();
    }

    /** Saves the draft, and has it published; gives the address of the record. */
    private String save(Page page, NewPerson member, String plural) {
        page.locator("button[value=save]").click();
        page.waitForURL(Pattern.compile(".*/" + plural + "/drafts/[0-9a-f-]{36}[?]saved$"));
        return publishing().publish(member, URI.create(page.url()).getPath());
    }
}
