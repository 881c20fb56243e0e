package org.vanewright.campaign.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.net.URI;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.BrowserTest;

/** From the plan to the claim on a phone, with the connection gone in between, and at a desk. */
class CampaignBrowserTest extends BrowserTest {
    private static final String DEMO = "/campaigns/clean-stall-with-pairs-over-the-taper";

    @Test
    void fromCardToClaim() {
        NewPerson member = newPerson(Role.MEMBER);
        Page phone = window(NARROW);
        signInWindow(phone, member);
        phone.navigate("/campaigns/new?layout=low-wing-pairs-over-the-taper");
        fillPlan(phone);
        phone.locator("button[value=save]").press("Enter");
        phone.waitForURL(Pattern.compile(".*/drafts/[0-9a-f-]{36}[?]saved$"));
        String draft = URI.create(phone.url()).getPath();
        assertFits(phone);

        phone.navigate(draft + "/record");
        assertAccessible(phone);
        assertFits(phone);
        screenshot(phone, "campaign-record-" + NARROW);
        record(phone, "A", "46.5", "1");
        assertThat(phone.locator(".note.done")).containsText("One test point is recorded");
        phone.context().setOffline(true);
        fill(phone, "A", "47", "2");
        phone.locator(".cockpit button[type=submit]").last().press("Enter");
        assertThat(phone.locator("#waiting")).containsText("One test point waits");
        assertThat(phone.locator("#indicatedAirspeedKt")).hasValue("");
        phone.locator("#indicatedAirspeedKt").fill("47.5");
        phone.context().setOffline(false);
        assertThat(phone.locator("#waiting")).isHidden();
        phone.reload();
        assertThat(phone.locator("#indicatedAirspeedKt")).hasValue("47.5");
        phone.locator("#block").fill("3");
        phone.locator(".cockpit button[type=submit]").last().press("Enter");
        assertThat(phone.locator(".note.done")).containsText("3 test points are recorded");

        Page desk = window(WIDE);
        signInWindow(desk, member);
        desk.navigate(draft + "/import");
        desk.locator("#table").fill(table());
        desk.locator("button[value=read]").press("Enter");
        assertThat(desk.locator("#read-title")).containsText("3 of 4 rows");
        assertThat(desk.locator("section.note")).containsText("Row 4: indicated_airspeed_kt is fast");
        assertAccessible(desk);
        screenshot(desk, "campaign-import-" + WIDE);
        desk.locator("button[value=accept]").press("Enter");
        assertThat(desk.locator(".recorded li")).hasCount(6);
        String page = publishing().publish(member, draft);
        desk.navigate(page);
        assertThat(desk.locator(".claim summary span")).containsText("Stall speed");
        desk.locator(".claim summary").press("Enter");
        assertThat(desk.locator(".claim dl")).containsText("Degrees of freedom");
        assertThat(desk.locator("#points tbody tr").first()).containsText("46.5 kt indicated");
    }

    private static void fillPlan(Page page) {
        page.locator("#name").fill("Browser campaign");
        page.locator("#plan-conditions-centreOfGravity").fill("forward");
        page.locator("#plan-conditions-lowestFt").fill("3000");
        page.locator("#plan-conditions-highestFt").fill("6000");
        page.locator("#plan-conditions-standardMassKg").fill("560");
        page.locator("#plan-repeats-scatter").fill("0.8");
        page.locator("#plan-repeats-change").fill("1.2");
        page.locator("#plan-instruments-0-resolution").fill("1");
        page.locator("#plan-instruments-0-resolution").blur();
        assertThat(page.locator("#preview")).containsText("9 stalls of each configuration");
    }

    private static void record(Page page, String key, String speed, String block) {
        fill(page, key, speed, block);
        page.locator(".cockpit button[type=submit]").last().press("Enter");
    }

    private static void fill(Page page, String key, String speed, String block) {
        page.locator("#configuration").selectOption(new SelectOption().setValue(key));
        page.locator("#block").fill(block);
        page.locator("#indicatedAirspeedKt").fill(speed);
        page.locator("#pressureAltitudeFt").fill("4000");
        page.locator("#outsideAirTemperatureC").fill("8");
        page.locator("#massKg").fill("556");
    }

    private static String table() {
        String header = "kind,configuration,sortie,block,indicated_airspeed_kt,pressure_altitude_ft,"
                + "outside_air_temperature_c,mass_kg\n";
        return header + "STALL,B,2,1,44.5,4000,8,556\nSTALL,B,2,2,45.5,4000,8,556\nSTALL,B,2,3,45,4000,8,556\n"
                + "STALL,B,2,4,fast,4000,8,556\n";
    }

    @Test
    void pagesAreWellMade() {
        NewPerson member = newPerson(Role.MEMBER);
        assertWellMade(member, DEMO, "campaign");
    }

    @Test
    void recordingWorksWithoutScripts() {
        NewPerson member = newPerson(Role.MEMBER);
        Page page = windowWithoutScripts(NARROW);
        signInWindow(page, member);
        page.navigate(DEMO);
        page.locator("form[action$='/start'] button").press("Enter");
        page.waitForURL(Pattern.compile(".*/campaigns/drafts/[0-9a-f-]{36}$"));
        page.navigate(URI.create(page.url()).getPath() + "/record");
        record(page, "B", "44", "7");
        assertThat(page.locator(".note.done")).containsText("32 test points are recorded");
        assertThat(page.url()).endsWith("/record?kind=STALL&saved");
    }
}
