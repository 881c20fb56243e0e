package org.vanewright.campaign.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.BrowserTest;

/** Tapping tufts on a phone, and laying maps side by side. */
class TuftBrowserTest extends BrowserTest {
    private static final String DEMO = "/campaigns/clean-stall-with-pairs-over-the-taper";

    @Test
    void mapsAreLaidSideBySideOrOverOneAnother() {
        for (int width : new int[] {NARROW, WIDE}) {
            Page page = window(width);
            page.navigate(DEMO);
            Locator pair = page.locator(".tuft-pair").last();
            assertThat(pair.locator(".tuft-before")).isVisible();
            assertThat(pair.locator(".tuft-change")).isHidden();
            pair.locator("input[value=change]").check();
            assertThat(pair.locator(".tuft-change")).isVisible();
            assertThat(pair.locator(".tuft-before")).isHidden();
            pair.locator("input[value=after]").check();
            assertThat(pair.locator(".tuft-after")).isVisible();
            assertThat(pair.locator(".tuft-change")).isHidden();
            assertThat(page.locator(".tuft-pair").first().locator(".tuft-before"))
                    .isVisible();
            pair.locator("input[value=both]").check();
            assertFits(page);
            assertAccessible(page);
            screenshot(page, "campaign-tufts-" + width);
        }
    }

    @Test
    void aTapOnTheMapAndAButtonBeneathSayTheSame() {
        NewPerson member = newPerson(Role.MEMBER);
        Page phone = window(NARROW);
        signInWindow(phone, member);
        phone.navigate(DEMO);
        phone.locator("form[action$='/edit'] button, form[action$='/start'] button")
                .first()
                .press("Enter");
        phone.waitForURL(Pattern.compile(".*/drafts/[0-9a-f-]{36}.*"));
        phone.locator(".recording a[href$='/tufts']").click();
        assertFits(phone);
        assertAccessible(phone);
        phone.locator("a.button[href*='/tufts/']").click();
        phone.locator("#configuration").selectOption(new SelectOption().setValue("B"));
        phone.locator("#indicatedAirspeedKt").fill("52");
        assertThat(phone.locator("[data-tap]")).isVisible();
        Locator tuft = phone.locator("[data-tuft='right[2].row[1]']");
        tuft.click();
        assertThat(phone.locator("input[name='right[2].row[1]'][value=S]")).isChecked();
        tuft.click();
        assertThat(phone.locator("input[name='right[2].row[1]'][value=U]")).isChecked();
        phone.locator("input[name='right[0].row[3]'][value=R]").check();
        assertThat(phone.locator("[data-tuft='right[0].row[3]'] use")).hasAttribute("href", "#tuft-reversed");
        assertFits(phone);
        assertAccessible(phone);
        screenshot(phone, "campaign-tuft-survey-" + NARROW);
        Page desk = window(WIDE);
        signInWindow(desk, member);
        desk.navigate(phone.url());
        screenshot(desk, "campaign-tuft-survey-" + WIDE);
        phone.locator("button[value=save]").press("Enter");
        phone.waitForURL(Pattern.compile(".*/tufts$"));
        assertThat(phone.locator(".recorded li")).hasCount(5);
        assertThat(phone.locator(".recorded li").last().textContent()).contains("B at 52 kt indicated");
    }
}
