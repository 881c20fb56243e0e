package org.vanewright.review.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.BrowserTest;
import org.vanewright.testing.Tools;

/** A layout from its author's draft through a review to a visitor's template, and on to its next revision. */
class PublishingStoryBrowserTest extends BrowserTest {
    private static final String LAYOUT = "/layouts/story-of-a-row";
    private static final String REVIEW = "/review" + LAYOUT + "/";

    @TempDir
    Path directory;

    private void inspect(Page page, String name, int width) {
        assertAccessible(page);
        assertFits(page);
        screenshot(page, "story-" + name + "-" + width);
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }

    private static void fill(Page page, String label, String text) {
        page.getByLabel(label, new Page.GetByLabelOptions().setExact(true)).fill(text);
    }

    /** Saves what the form holds and submits it. */
    private void submit(Page page, String summary) {
        press(page, "Save and submit …");
        page.waitForURL(Pattern.compile(".*/drafts/[0-9a-f-]{36}/submit$"));
        page.getByLabel("CC BY 4.0", new Page.GetByLabelOptions().setExact(true))
                .check();
        fill(page, "What is new", summary);
        inspect(page, "submit", WIDE);
        press(page, "Submit");
        assertThat(page.locator("main .problems.some")).hasCount(0);
    }

    private byte[] template(Page visitor, String name) {
        Path file = directory.resolve(name);
        visitor.waitForDownload(
                        () -> visitor.getByText("Left wing, PDF on A4").first().click())
                .saveAs(file);
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private String printed(String name) {
        return Tools.run("pdftotext", "-layout", directory.resolve(name).toString(), "-");
    }

    private static String hash(Page page) {
        return Objects.requireNonNull(
                page.locator(".revision-line .hash").first().textContent());
    }

    @Test
    void threePeopleBringALayoutToItsSecondRevision() {
        NewPerson author = newPerson(Role.MEMBER);
        Page member = window(WIDE);
        signInWindow(member, author);
        draft(member);
        submit(member, "A first row.");
        assertThat(member).hasURL(Pattern.compile(".*" + LAYOUT + "/revisions/1$"));
        assertThat(member.locator("main")).containsText("waits for a review");

        Page maintainer = window(NARROW);
        signInWindow(maintainer, newPerson(Role.MAINTAINER));
        giveBack(maintainer);

        correct(member);
        submit(member, "Further back, as asked.");
        maintainer.navigate(REVIEW + "2");
        press(maintainer, "Publish it");
        assertThat(maintainer).hasURL(Pattern.compile(".*" + LAYOUT + "$"));

        Page visitor = window(NARROW);
        visitor.navigate(LAYOUT);
        inspect(visitor, "published", NARROW);
        String hash = hash(visitor);
        byte[] first = template(visitor, "first.pdf");
        assertThat(printed("first.pdf"))
                .contains("revision 2 · SHA-256 " + hash)
                .contains("CC BY 4.0");
        assertThat(visitor.locator(".licence").first()).containsText("CC BY 4.0");

        next(member);
        maintainer.navigate(REVIEW + "3");
        inspect(maintainer, "change", NARROW);
        assertThat(maintainer.locator(".field-rows ins").first()).isVisible();
        press(maintainer, "Publish it");

        visitor.navigate(LAYOUT);
        assertThat(hash(visitor)).isNotEqualTo(hash);
        assertThat(template(visitor, "second.pdf")).isNotEqualTo(first);
        assertThat(printed("second.pdf")).contains("revision 3 · SHA-256 " + hash(visitor));
        visitor.navigate(LAYOUT + "/revisions/2");
        assertThat(visitor.locator("main")).containsText("A later revision has been published");
        assertThat(hash(visitor)).isEqualTo(hash);
        assertThat(template(visitor, "again.pdf")).isEqualTo(first);
        for (String page : new String[] {"/history", "/compare?from=2&to=3"}) {
            visitor.navigate(LAYOUT + page);
            inspect(visitor, page.substring(1, 8), NARROW);
        }
    }

    private void draft(Page member) {
        member.navigate("/airframes/quillmere-strut-braced-high-wing");
        member.navigate("/layouts/new?airframe=quillmere-strut-braced-high-wing");
        fill(member, "Name", "Story of a row");
        member.locator("#rows-0-device").selectOption("rectangular-vane-8-by-20@1");
        member.locator("#rows-0-arrangement").selectOption("CO_ROTATING");
        member.locator("#rows-0-angleDeg").fill("15");
        fill(member, "First centre at station in mm", "1000");
        fill(member, "No centre beyond in mm", "2000");
        fill(member, "Fraction of the chord", "0.03");
        press(member, "State an origin");
        member.locator("#provenance-0-figures").selectOption("rows[0]");
        member.locator("#provenance-0-origin").selectOption("ESTIMATED");
        fill(member, "By whom", "The author");
        fill(member, "Method and notes", "From tufts on the same wing.");
        press(member, "Save as a draft");
        member.waitForURL(Pattern.compile(".*/layouts/drafts/[0-9a-f-]{36}[?]saved$"));
        inspect(member, "draft", WIDE);
    }

    private void giveBack(Page maintainer) {
        maintainer.navigate("/review");
        inspect(maintainer, "queue", NARROW);
        maintainer.getByText("Story of a row").click();
        press(maintainer, "Claim it");
        assertThat(maintainer.locator(".claim")).containsText("You look at it");
        inspect(maintainer, "review", NARROW);
        maintainer.locator("#field").selectOption("rows[0].chordFraction");
        fill(maintainer, "Remark", "Why so far forward?");
        press(maintainer, "Add the remark");
        assertThat(maintainer.locator(".remarks")).containsText("Why so far forward?");
        fill(maintainer, "Reasons for returning it", "See the chord position.");
        press(maintainer, "Return it");
        assertThat(maintainer).hasURL(Pattern.compile(".*/review$"));
    }

    private void correct(Page member) {
        member.navigate("/drafts");
        inspect(member, "drafts", WIDE);
        member.getByText("Edit", new Page.GetByTextOptions().setExact(false))
                .filter(new com.microsoft.playwright.Locator.FilterOptions().setHasText("Story of a row"))
                .first()
                .click();
        assertThat(member.locator(".returned")).containsText("See the chord position.");
        assertThat(member.locator("#rows-0-chordFraction-said")).containsText("Why so far forward?");
        inspect(member, "returned", WIDE);
        fill(member, "Fraction of the chord", "0.08");
    }

    private void next(Page member) {
        member.navigate(LAYOUT);
        press(member, "Edit");
        member.waitForURL(Pattern.compile(".*/layouts/drafts/[0-9a-f-]{36}$"));
        fill(member, "Pitch in mm", "80");
        submit(member, "Wider apart.");
    }
}
