package org.vanewright.evidence.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.vanewright.evidence.FlownCampaigns;
import org.vanewright.testing.BrowserTest;
import tools.jackson.databind.JsonNode;

/** What flights have shown, on a phone and in the dark; and what a page's metadata does to a browser: nothing. */
class EvidenceBrowserTest extends BrowserTest {
    @Test
    void theChoiceStandsInTheAddressAndThePageFits() {
        JsonNode demo = json(get("/api/v1/campaigns/" + FlownCampaigns.DEMO + "/revisions/1"), 200)
                .get("content");
        FlownCampaigns.series(demo, "Seen by a browser", "as the browser sees", 5)
                .forEach(document -> shipped("campaigns", document));
        Page page = window(NARROW);
        page.navigate("/evidence");
        page.locator("#group")
                .selectOption(page.locator("#group option")
                        .filter(new Locator.FilterOptions().setHasText("as the browser sees"))
                        .getAttribute("value"));
        page.locator("main form button").click();
        page.waitForURL(Pattern.compile(".*group=as.the.browser.sees.*"));
        assertThat(page.locator("#summary")).containsText("over 5 campaigns");
        assertFits(page);
        assertAccessible(page);
        screenshot(page, "evidence-" + NARROW);
        Page dark = darkWindow(WIDE);
        dark.navigate(page.url().replaceFirst("^https?://[^/]+", ""));
        assertThat(dark.locator("#summary")).containsText("over 5 campaigns");
        assertAccessible(dark);
        screenshot(dark, "evidence-dark-" + WIDE);
    }

    /** A data block is not run, so that the policy against inline script has nothing to say against it. */
    @Test
    void metadataIsThereAndTheBrowserDoesNotComplain() {
        Page page = window(WIDE);
        page.navigate("/layouts/" + FlownCampaigns.LAYOUT);
        String block =
                (String) page.evaluate("document.querySelector('script[type=\"application/ld+json\"]').textContent");
        Assertions.assertThat(mapper().readTree(block).get("@type").asString()).isEqualTo("Dataset");
    }
}
