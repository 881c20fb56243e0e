package org.vanewright.airframe.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.testing.BrowserTest;

/** A person describes a tapered wing with a section from a file. */
class AirframeBrowserTest extends BrowserTest {
    private @Nullable NewPerson member;

    private NewPerson member() {
        if (member == null) {
            member = newPerson(Role.MEMBER);
        }
        return member;
    }

    /** Saves the draft, then has it published by somebody else, and goes to its page. */
    private void publish(Page page) {
        page.locator("button[value=save]").press("Enter");
        page.waitForURL(Pattern.compile(".*/drafts/[0-9a-f-]{36}[?]saved$"));
        String draft = URI.create(page.url()).getPath();
        page.navigate(publishing().publish(member(), draft));
    }

    private static final String PANEL = "surfaces-0-panels-0-";

    @ParameterizedTest
    @ValueSource(ints = {NARROW, WIDE})
    void aTaperedWingWithAnUploadedSection(int width) {
        Page page = window(width);
        signInWindow(page, member());
        page.navigate("/airframes/new");
        assertAccessible(page);
        assertFits(page);
        describe(page, "Browser wing " + width);
        page.locator("#" + PANEL + "innerSection-kind-COORDINATES").check();
        page.locator("#" + PANEL + "innerSection-file").setInputFiles(sectionFile());
        publish(page);
        checkShown(page, "Browser wing " + width);
        assertAccessible(page);
        assertFits(page);
        screenshot(page, "airframe-" + width);
    }

    @Test
    void theSameWithoutScripts() {
        Page page = windowWithoutScripts(NARROW);
        signInWindow(page, member());
        page.navigate("/airframes/new");
        describe(page, "Wing without scripts");
        page.locator("button[value='add surfaces[0].keepOuts']").press("Enter");
        page.locator("#surfaces-0-keepOuts-0-fromMm").fill("900");
        page.locator("#surfaces-0-keepOuts-0-toMm").fill("1000");
        page.locator("#surfaces-0-keepOuts-0-reason").fill("Fuel vent");
        page.locator("#" + PANEL + "innerSection-kind-COORDINATES").press("Space");
        page.locator("#" + PANEL + "innerSection-file").setInputFiles(sectionFile());
        page.locator("button[value=check]").last().press("Enter");
        // The file has become text that stays in the form.
        assertThat(page.locator("#" + PANEL + "innerSection-coordinates"))
                .hasValue(Pattern.compile("Club section.*", Pattern.DOTALL));
        publish(page);
        checkShown(page, "Wing without scripts");
        assertThat(page.locator("main")).containsText("Fuel vent");
    }

    @Test
    void theDrawingAndTheErrorsFollowWhatIsTyped() {
        Page page = window(WIDE);
        signInWindow(page, member());
        page.navigate("/airframes/new");
        describe(page, "Live wing");
        page.locator("#" + PANEL + "innerSection-naca").fill("4412");
        page.locator("#" + PANEL + "innerSection-naca").blur();
        assertThat(page.locator("#preview svg.plan")).isVisible();
        page.locator("#" + PANEL + "outerChordMm").fill("-5");
        page.locator("#" + PANEL + "outerChordMm").blur();
        assertThat(page.locator("#" + PANEL + "outerChordMm-error")).containsText("from 50 mm to 5000 mm");
        assertAccessible(page);
        page.locator("#" + PANEL + "outerChordMm").fill("900");
        page.locator("#" + PANEL + "outerChordMm").blur();
        assertThat(page.locator("#" + PANEL + "outerChordMm-error")).isEmpty();
    }

    @Test
    void aRefusedFormIsAccessibleAndKeepsTheFile() {
        Page page = window(NARROW);
        signInWindow(page, member());
        page.navigate("/airframes/new");
        page.locator("#" + PANEL + "innerSection-kind-COORDINATES").check();
        page.locator("#" + PANEL + "innerSection-file")
                .setInputFiles(
                        new FilePayload("bad.dat", "text/plain", "1 0\n0.5 oops\n".getBytes(StandardCharsets.UTF_8)));
        page.locator("button[value=save]").click();
        assertThat(page.locator("#" + PANEL + "innerSection-coordinates-error"))
                .containsText(Pattern.compile("Line 2"));
        assertThat(page.locator("#" + PANEL + "innerSection-coordinates"))
                .hasValue(Pattern.compile(".*oops.*", Pattern.DOTALL));
        assertAccessible(page);
        assertFits(page);
        screenshot(page, "airframe-refused-390");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/airframes", "/airframes/quillmere-tapered-low-wing", "/airframes/new", "/nowhere"})
    void pagesAreAccessibleInBothLightsAndFitAPhone(String path) {
        assertWellMade(member(), path, "page" + path.replaceAll("[^a-z0-9]+", "-"));
    }

    private static void describe(Page page, String name) {
        page.locator("#name").fill(name);
        page.locator("#operatingBasis").selectOption("EXPERIMENTAL_AMATEUR_BUILT");
        fill(page, "masses-emptyKg", "300");
        fill(page, "masses-maximumKg", "560");
        fill(page, "wingAreaM2", "10,8");
        fill(page, "speeds-vs1Kt", "42");
        fill(page, "speeds-vneKt", "120");
        fill(page, PANEL + "innerStationMm", "400");
        fill(page, PANEL + "outerStationMm", "4400");
        fill(page, PANEL + "innerChordMm", "1600");
        fill(page, PANEL + "outerChordMm", "900");
        fill(page, PANEL + "outerLeadingEdgeMm", "150");
    }

    private static void fill(Page page, String id, String text) {
        page.locator("#" + id).fill(text);
    }

    private static void checkShown(Page page, String name) {
        assertThat(page.locator("h1")).hasText(name);
        Locator plan = page.locator("svg.plan");
        assertThat(plan.locator("path.fill-tint")).hasCount(2);
        assertThat(page.locator("main")).containsText("Club section");
        assertThat(page.locator("main")).containsText("unrolls exactly");
    }

    /** A cambered section as a coordinate file: a title, then one loop from the trailing edge over the top. */
    private static FilePayload sectionFile() {
        Section section = Sections.naca("4412");
        StringBuilder text = new StringBuilder("Club section\n");
        for (int i = 0; i <= 40; i++) {
            point(text, section, SurfaceSide.UPPER, section.arcLength(SurfaceSide.UPPER) * (1 - i / 40.0));
        }
        for (int i = 1; i <= 40; i++) {
            point(text, section, SurfaceSide.LOWER, section.arcLength(SurfaceSide.LOWER) * i / 40.0);
        }
        return new FilePayload("club.dat", "text/plain", text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static void point(StringBuilder text, Section section, SurfaceSide side, double arc) {
        var p = section.atArcLength(side, arc);
        text.append(String.format(Locale.ROOT, "%.6f %.6f%n", p.x(), p.y()));
    }
}
