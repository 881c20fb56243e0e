package org.vanewright.bench.web.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.testing.BrowserTest;

/** The bench on a phone and on a laptop, light and dark. */
class BenchBrowserTest extends BrowserTest {
    private static final List<String> PAGES = List.of(
            "/bench",
            "/bench/section",
            "/bench/flow",
            "/bench/atmosphere",
            "/bench/airspeed",
            "/bench/flat-plate",
            "/bench/vane",
            "/bench/bond",
            "/bench/gps-airspeed",
            "/bench/stall-reduction",
            "/bench/comparison",
            "/bench/sample-size");

    private void lookAtAll(Page page, String name) {
        for (String path : PAGES) {
            page.navigate(path);
            assertAccessible(page);
            assertFits(page);
            screenshot(page, "bench" + path.replace("/bench", "").replace('/', '-') + "-" + name);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {NARROW, WIDE})
    void everyCalculatorFitsAndIsAccessible(int width) {
        lookAtAll(window(width), "light-" + width);
        lookAtAll(darkWindow(width), "dark-" + width);
    }

    @Test
    void aPersonWithoutScriptsGetsAnAddressToShare() {
        Page page = windowWithoutScripts(NARROW);
        page.navigate("/bench/atmosphere");
        page.locator("#pressureAltitudeFt").fill("high");
        page.locator("main form button").press("Enter");
        assertThat(page.locator("#pressureAltitudeFt-error")).containsText("a number such as");
        assertThat(page.locator("#pressureAltitudeFt")).hasValue("high");
        page.locator("#pressureAltitudeFt").fill("5000");
        page.locator("#outsideAirTemperatureC").fill("");
        page.locator("main form button").press("Enter");
        assertThat(page).hasURL(Pattern.compile(".*[?&]pressureAltitudeFt=5000[&#].*"));
        assertThat(page.locator("#result .facts")).containsText("5000");
    }

    @Test
    void onlyTheFieldsOfTheChosenKindOfSectionShow() {
        Page page = window(WIDE);
        page.navigate("/bench/section");
        assertThat(page.locator("#coordinates")).isHidden();
        page.locator("#kind-COORDINATES").check();
        assertThat(page.locator("#coordinates")).isVisible();
        assertThat(page.locator("#naca")).isHidden();
        page.locator("#coordinates").fill("1 0\n0.5 up");
        page.locator("main form button").click();
        assertThat(page.locator("#coordinates-error")).containsText("0.5 up");
        assertThat(page.locator("#coordinates")).isVisible();
        assertAccessible(page);
        screenshot(page, "bench-section-refused");
    }
}
