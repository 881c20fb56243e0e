package org.vanewright.review.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.device.DeviceDocument;
import org.vanewright.record.Draft;
import org.vanewright.record.Revision;
import org.vanewright.testing.BrowserTest;

/** Drafts and reviews in a real browser, on a phone and on a laptop. */
class ReviewBrowserTest extends BrowserTest {
    private static void signIn(Page page, NewPerson person) {
        page.navigate("/sign-in");
        page.locator("input[name=email]").fill(person.email());
        page.locator("input[name=password]").fill(person.password());
        page.locator("main form button[type=submit]").first().click();
        page.waitForURL(url -> !url.contains("/sign-in"));
    }

    private void inspect(Page page, String name, int width) {
        assertAccessible(page);
        assertFits(page);
        screenshot(page, "review-" + name + "-" + width);
    }

    @ParameterizedTest
    @ValueSource(ints = {NARROW, WIDE})
    void aMemberSubmitsAndAMaintainerReturnsAndPublishes(int width) {
        NewPerson member = newPerson(Role.MEMBER);
        NewPerson maintainer = newPerson(Role.MAINTAINER);
        Submissions submissions = new Submissions(context());
        Draft<DeviceDocument> draft = submissions.draft(member.id(), "Browser vane " + width);

        Page members = windowWithoutScripts(width);
        signIn(members, member);
        members.navigate("/drafts");
        screenshot(members, "review-drafts-" + width);
        assertFits(members);
        members.navigate("/drafts/" + draft.id() + "/submit");
        members.getByLabel("CC BY 4.0", new Page.GetByLabelOptions().setExact(true)).check();
        members.getByLabel("What is new").fill("Taller than the one it came from.");
        assertFits(members);
        screenshot(members, "review-submit-" + width);
        members.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Submit").setExact(true)).click();
        assertThat(members.url()).contains("/devices/browser-vane-" + width + "/revisions/1");

        Page maintainers = window(width);
        signIn(maintainers, maintainer);
        maintainers.navigate("/review");
        inspect(maintainers, "queue", width);
        maintainers.navigate("/review/devices/browser-vane-" + width + "/1");
        inspect(maintainers, "one", width);
        maintainers.getByLabel("About").selectOption("name");
        maintainers.getByLabel("Remark", new Page.GetByLabelOptions().setExact(true)).fill("A better name, please.");
        maintainers.getByText("Add the remark").click();
        maintainers.getByLabel("Reasons for returning it").fill("Only the name.");
        maintainers.getByText("Return it", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(maintainers.url()).endsWith("/review");

        Page again = window(width);
        signIn(again, member);
        for (String path : new String[] {"/drafts", "/drafts/" + draft.id(), "/drafts/" + draft.id() + "/submit",
                "/drafts/" + draft.id() + "/discard"}) {
            again.navigate(path);
            inspect(again, path.replaceAll("/|[0-9a-f-]{36}", "") + "-returned", width);
        }
        Revision<DeviceDocument> second = submissions.submit(member.id(), draft);
        submissions.publish(maintainer.id(), second.ref());
        Revision<DeviceDocument> third =
                submissions.submit(member.id(), submissions.change(member.id(), second.ref(), 1234));
        submissions.publish(maintainer.id(), third.ref());
        for (String path : new String[] {"/history", "/compare?from=2&to=3"}) {
            again.navigate("/devices/browser-vane-" + width + path);
            inspect(again, path.substring(1, 8), width);
        }
        again.navigate("/people");
        inspect(again, "people", width);
    }
}
