package org.vanewright.campaign.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.campaign.log.Reading;
import org.vanewright.testing.BrowserTest;
import tools.jackson.databind.node.ObjectNode;

/** From a recorded log to a test point, on a phone and at a desk, with scripts and without. */
class LogBrowserTest extends BrowserTest {
    private String draft(NewPerson member) {
        ObjectNode document =
                (ObjectNode) json(get("/api/v1/campaigns/clean-stall-with-pairs-over-the-taper/revisions/1"), 200)
                        .get("content");
        document.put("name", "Logged").remove(List.of("points", "handling", "provenance"));
        return "/campaigns/drafts/"
                + json(postJson("/api/v1/campaigns", document.toString(), "Authorization", bearer(member)), 201)
                        .get("id")
                        .asString();
    }

    @Test
    void fromLogToTestPoint() {
        NewPerson member = newPerson(Role.MEMBER);
        String draft = draft(member);
        walk(window(NARROW), member, draft, NARROW);
        walk(window(WIDE), member, draft, WIDE);
    }

    @Test
    void withoutScriptsTheSameIsReached() {
        NewPerson member = newPerson(Role.MEMBER);
        Page page = windowWithoutScripts(NARROW);
        signInWindow(page, member);
        String log = send(page, draft(member));
        assertThat(page.locator("h1")).hasText("What are its columns?");
        page.locator(".actions button[type=submit]").last().press("Enter");
        Reading.finish(context());
        page.navigate(log);
        assertThat(page.locator(".events li")).not().hasCount(0);
    }

    private static String send(Page page, String draft) {
        page.navigate(draft + "/logs");
        byte[] file = LogPagesTest.table("Time (s) browsed").getBytes(StandardCharsets.UTF_8);
        page.locator("#file").setInputFiles(new FilePayload("flight.csv", "text/csv", file));
        page.locator("form[enctype] button").press("Enter");
        page.waitForURL(java.util.regex.Pattern.compile(".*/logs/[0-9a-f-]{36}$"));
        return java.net.URI.create(page.url()).getPath();
    }

    private void walk(Page page, NewPerson member, String draft, int width) {
        signInWindow(page, member);
        String log = send(page, draft);
        looks(page, "log-columns-" + width);
        page.locator(".actions button[type=submit]").last().press("Enter");
        // The page asks by itself until the log is read.
        assertThat(page.locator("#found-title")).containsText("found");
        looks(page, "log-" + width);
        page.locator(".events li:has-text('Stall') a").first().press("Enter");
        assertThat(page.locator("h1")).hasText("A test point from a log");
        looks(page, "log-point-" + width);
        page.locator("#massKg").fill("556");
        page.locator(".actions button[type=submit]").last().press("Enter");
        assertThat(page.locator(".events li:has-text('accepted')")).hasCount(1);
        assertThat(page.url()).endsWith(log);
        page.navigate(draft + "/logs");
        looks(page, "logs-" + width);
    }

    private void looks(Page page, String name) {
        assertAccessible(page);
        assertFits(page);
        screenshot(page, name);
    }
}
