package org.vanewright.catalogue.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.vanewright.testing.BrowserTest;

/** From the field on every page to one layout. */
class SearchBrowserTest extends BrowserTest {
    @Test
    void aPhoneFindsALayoutWithASlipAndTwoFacets() {
        Page page = window(NARROW);
        page.navigate("/devices");
        page.locator("#find").fill("quilmere");
        page.locator("header form[role=search] button").click();
        page.waitForURL(Pattern.compile(".*/search\\?q=quilmere.*"));
        assertThat(page.locator(".search-found .note")).containsText("quillmere");
        assertFits(page);
        assertAccessible(page);
        screenshot(page, "search-" + NARROW);
        page.locator(".facets a", new Page.LocatorOptions().setHasText("Layout"))
                .click();
        assertThat(page.locator(".chips li").first()).containsText("Kind: Layout");
        page.locator(".facets summary", new Page.LocatorOptions().setHasText("Arrangement"))
                .click();
        page.locator(".facets a", new Page.LocatorOptions().setHasText("Co-rotating"))
                .click();
        assertThat(page.locator(".chips li")).hasCount(3);
        page.locator(".hits a", new Page.LocatorOptions().setHasText("High wing, one row co-rotating"))
                .click();
        page.waitForURL(Pattern.compile(".*/layouts/high-wing-one-row-co-rotating"));
    }
}
