package org.vanewright.campaign.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.SelectOption;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.engineering.tuft.SyntheticTufts;
import org.vanewright.engineering.tuft.TuftMark;
import org.vanewright.testing.BrowserTest;
import org.vanewright.testing.Pictures;

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

    @Test
    void tuftsAreMarkedByTapsOnTheFirstFrame() {
        NewPerson member = newPerson(Role.MEMBER);
        Page phone = window(NARROW);
        signInWindow(phone, member);
        phone.navigate(DEMO);
        phone.locator("form[action$='/edit'] button, form[action$='/start'] button")
                .first()
                .press("Enter");
        phone.waitForURL(Pattern.compile(".*/drafts/[0-9a-f-]{36}.*"));
        phone.locator(".recording a[href$='/tufts']").click();
        phone.locator("a[href$='/frames']").first().click();
        SyntheticTufts picture = new SyntheticTufts(320, 240, 8).grid(2, 3);
        phone.locator("#frames").setInputFiles(files(picture));
        phone.locator("#indicatedAirspeedKt").fill("52");
        Locator ask = phone.locator("[data-ask]");
        assertThat(ask).containsText("tap its root");
        Locator canvas = phone.locator("canvas");
        for (TuftMark mark : picture.marks()) {
            tap(canvas, mark.rootX(), mark.rootY());
            assertThat(ask).containsText("tap where its tip");
            tap(canvas, mark.tipX(), mark.tipY());
            assertThat(ask).containsText("tap its root");
        }
        phone.locator("[data-back]").click();
        assertThat(ask).containsText("Tuft 6");
        tap(canvas, picture.marks().get(5).rootX(), picture.marks().get(5).rootY());
        tap(canvas, picture.marks().get(5).tipX(), picture.marks().get(5).tipY());
        phone.locator("[data-skip]").click();
        assertThat(ask).containsText("Tuft 8");
        assertThat(phone.locator("#marks").inputValue().lines()).hasSize(6);
        assertFits(phone);
        assertAccessible(phone);
        screenshot(phone, "campaign-tuft-frames-" + NARROW);
        phone.locator("form[data-frames] button[type=submit]").press("Enter");
        phone.waitForURL(Pattern.compile(".*/surveys/[0-9a-f-]{36}$"));
        assertThat(phone.locator(".from-frames .note")).containsText("A proposal");
        phone.locator(".from-frames summary").first().click();
        assertThat(phone.locator(".from-frames table").first().locator("tbody tr"))
                .hasCount(6);
        assertFits(phone);
        assertAccessible(phone);
        screenshot(phone, "campaign-tuft-proposal-" + NARROW);
        phone.locator("button[value=save]").press("Enter");
        phone.waitForURL(Pattern.compile(".*/tufts$"));
        assertThat(phone.locator(".recorded li").last()).containsText("gone through by a person");
    }

    private static void tap(Locator canvas, double x, double y) {
        double by = canvas.boundingBox().width / 320;
        canvas.click(new Locator.ClickOptions().setPosition((x + 0.5) * by, (y + 0.5) * by));
    }

    private static FilePayload[] files(SyntheticTufts picture) {
        return IntStream.range(0, 6)
                .mapToObj(i -> new FilePayload(
                        i + ".png",
                        "image/png",
                        Pictures.encoded(Pictures.grey(picture.frame(0.5 * i, 0.3 * i, 1, 2)), "png")))
                .toArray(FilePayload[]::new);
    }
}
