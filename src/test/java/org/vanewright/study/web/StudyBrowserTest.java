package org.vanewright.study.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.vanewright.account.Role;
import org.vanewright.testing.BrowserTest;

/** A row is moved, what changes is seen, and a suggestion is taken, with scripts and without. */
class StudyBrowserTest extends BrowserTest {
    private static final String LAYOUT = "/layouts/high-wing-one-row-co-rotating";
    private static final String STUDY = LAYOUT + "/study?condition=APPROACH";
    private static final String SUGGESTIONS = LAYOUT + "/revisions/1/suggestions";
    private static final String PLACE =
            "/airframes/quillmere-strut-braced-high-wing/study?condition=APPROACH&heightMm=6";

    private static Locator slider(Page page, String field) {
        return page.locator("input[type=range][data-slides=" + field + "]");
    }

    @Test
    void aSliderMovesTheRowAndASuggestionBecomesADraft() {
        Page page = window(WIDE);
        signInWindow(page, newPerson(Role.MEMBER));
        page.navigate(STUDY);
        assertThat(page.locator("#study-said")).containsText("8.0 mm high at 8.0 %");

        slider(page, "heightMm").press("ArrowRight");
        assertThat(page.locator("#heightMm")).hasValue("8.5");
        assertThat(page.locator("#study-said")).containsText("8.5 mm high at 8.0 %");
        assertThat(page.locator("#study-result svg.section").nth(1)).containsText("h 8.5 mm");
        assertThat(page).hasURL(Pattern.compile(".*[?&]heightMm=8\\.5.*"));

        slider(page, "calibratedAirspeedKt").press("End");
        assertThat(page.locator("#condition")).hasValue("SPEED");
        assertThat(page.locator("#study-result")).containsText("Another speed");
        page.locator("#chordFraction").fill("two");
        page.locator("#chordFraction").blur();
        assertThat(page.locator("#chordFraction-error")).containsText("a number such as");

        page.navigate(STUDY);
        page.getByText("Look for a row that meets recommendations better").press("Enter");
        takeTheFirst(page);
    }

    /** By key: without scripts nobody can wait for a button to stand still. */
    private static void takeTheFirst(Page page) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Make a draft with this row"))
                .first()
                .press("Enter");
        assertThat(page).hasURL(Pattern.compile(".*/layouts/drafts/[0-9a-f-]{36}"));
        assertThat(page.locator("#rows-0-chordFraction")).not().hasValue("");
    }

    @Test
    void theSameGoesWithoutScripts() {
        Page page = windowWithoutScripts(NARROW);
        signInWindow(page, newPerson(Role.MEMBER));
        page.navigate(STUDY);
        assertThat(slider(page, "heightMm")).isHidden();
        page.locator("#heightMm").fill("8.5");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Compute"))
                .press("Enter");
        assertThat(page.locator("#study-said")).containsText("8.5 mm high at 8.0 %");
        page.getByText("Look for a row that meets recommendations better").press("Enter");
        takeTheFirst(page);
    }

    @Test
    void studiesFitAndAreAccessible() {
        lookAtAll(window(NARROW), "light-" + NARROW);
        lookAtAll(darkWindow(WIDE), "dark-" + WIDE);
    }

    private void lookAtAll(Page page, String name) {
        List<String> pages = List.of(STUDY, SUGGESTIONS, PLACE);
        for (int i = 0; i < pages.size(); i++) {
            page.navigate(pages.get(i));
            assertAccessible(page);
            assertFits(page);
            screenshot(page, "study-" + i + "-" + name);
        }
    }
}
