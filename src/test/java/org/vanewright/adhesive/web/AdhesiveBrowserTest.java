package org.vanewright.adhesive.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;
import org.vanewright.account.Role;
import org.vanewright.testing.BrowserTest;

/** From an adhesive to the margins of a layout and to its tape, on a phone without scripts. */
class AdhesiveBrowserTest extends BrowserTest {
    @Test
    void fromAnAdhesiveToMarginsAndTape() {
        Page page = windowWithoutScripts(NARROW);
        page.navigate("/adhesives/foam-tape-30-pound-pack");
        assertFits(page);
        page.navigate("/layouts/high-wing-one-row-co-rotating/bond?adhesive=foam-tape-30-pound-pack");
        assertThat(page.locator(".gives-way").first()).containsText("Gives way first");
        assertFits(page);
        page.locator("#speedKt").fill("60");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Compute"))
                .press("Enter");
        assertThat(page.locator(".knock").first()).containsText("the air at 60 kt");
        page.getByText("How much tape it takes").press("Enter");
        assertThat(page.locator("h1")).hasText("Tape plan");
        assertFits(page);
    }

    @Test
    void newPagesAreAccessible() {
        for (int width : new int[] {NARROW, WIDE}) {
            Page page = width == NARROW ? window(width) : darkWindow(width);
            signInWindow(page, newPerson(Role.MEMBER));
            for (String path : new String[] {
                "/adhesives",
                "/adhesives/new",
                "/adhesives/foam-tape-30-pound-pack",
                "/layouts/high-wing-one-row-co-rotating/bond?adhesive=foam-tape-30-pound-pack",
                "/layouts/high-wing-one-row-co-rotating/tape-plan"
            }) {
                page.navigate(path);
                assertAccessible(page);
                assertFits(page);
                screenshot(page, "adhesive" + path.replaceAll("[^a-z]+", "-") + width);
            }
        }
    }
}
