package org.vanewright.layout.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.test.context.TestPropertySource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.testing.BrowserTest;
import org.vanewright.testing.Raster;
import org.vanewright.testing.Tools;

/** The main job, from the home page to a printed template; on a service of its own, so that it starts as a new one. */
@TestPropertySource(properties = "spring.application.name=layout-browser-test")
class LayoutBrowserTest extends BrowserTest {
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

    @TempDir
    Path directory;

    @ParameterizedTest
    @ValueSource(ints = {NARROW, WIDE})
    void fromTheHomePageToAPrintedDemonstrationLayout(int width) {
        Page page = window(width);
        page.navigate("/");
        page.locator(".opening a.button").click();
        page.waitForURL(Pattern.compile(".*/layouts/[a-z0-9-]+$"));
        assertThat(page.locator(".invented")).isVisible();
        assertThat(page.locator("img.plan").first()).isVisible();
        assertAccessible(page);
        assertFits(page);
        screenshot(page, "layout-" + width);

        checkTemplate(downloaded(page, "a:has-text('Left wing, PDF on A4')", "template.pdf"), "LEFT");
        page.locator(".row-block dl a").first().click();
        page.waitForURL(Pattern.compile(".*/devices/.*"));
        String report = Tools.run(
                "admesh",
                downloaded(page, "a[download][href*='solid.stl']", "device.stl").toString());
        assertThat(report).containsPattern("Number of parts +: +1\\b").containsPattern("Degenerate facets +: +0\\b");
        assertThat(report).containsPattern("Facets reversed +: +0\\b").containsPattern("Edges fixed +: +0\\b");
    }

    @ParameterizedTest
    @ValueSource(ints = {NARROW, WIDE})
    void anOwnTaperedWingAndARowOnIt(int width) {
        Page page = window(width);
        String name = "Own taper " + width;
        publishAirframe(page, name);

        page.locator("nav a:has-text('Layouts')").click();
        page.locator("a:has-text('Lay out a row')").click();
        assertThat(page.locator("#airframe option:checked")).containsText(name);
        assertAccessible(page);
        assertFits(page);
        page.locator("#name").fill("Row on " + name);
        fill(page, "rows-0-fromMm", "900");
        fill(page, "rows-0-toMm", "3900");
        page.locator("#rows-0-toMm").blur();
        assertThat(page.locator("#preview svg").first()).isVisible();
        assertThat(page.locator("#preview")).containsText("devices, both wings together");
        fill(page, "rows-0-pitchMm", "12");
        page.locator("#rows-0-pitchMm").blur();
        assertThat(page.locator("#rows-0-pitchMm-error")).containsText("neighbouring bases overlap");
        fill(page, "rows-0-pitchMm", "75");
        page.locator("#rows-0-pitchMm").blur();
        assertThat(page.locator("#rows-0-pitchMm-error")).isEmpty();
        screenshot(page, "layout-form-" + width);
        publish(page);

        assertThat(page.locator("h1")).hasText("Row on " + name);
        assertThat(page.locator("main")).containsText("unrolls exactly");
        assertAccessible(page);
        assertFits(page);
        checkTemplate(downloaded(page, "a:has-text('Right wing, PDF on A4')", "own.pdf"), "RIGHT");
    }

    @Test
    void theLayoutFormWorksWithoutScripts() {
        Page page = windowWithoutScripts(NARROW);
        signInWindow(page, member());
        page.navigate("/layouts/new?airframe=quillmere-strut-braced-high-wing");
        page.locator("#name").fill("Without scripts");
        fill(page, "rows-0-fromMm", "1000");
        fill(page, "rows-0-toMm", "2000");
        page.locator("button[value='add rows']").press("Enter");
        fill(page, "rows-1-fromMm", "2200");
        fill(page, "rows-1-toMm", "3000");
        page.locator("button[value=check]").last().press("Enter");
        assertThat(page.locator("#preview svg").first()).isVisible();
        page.locator("button[value='remove rows[0]']").press("Enter");
        assertThat(page.locator("#rows-0-fromMm")).hasValue("2200");
        fill(page, "rows-0-pitchMm", "none");
        page.locator("button[value=save]").press("Enter");
        assertThat(page.locator("#rows-0-pitchMm-error")).containsText("a number such as 12.5");
        assertThat(page.locator("#rows-0-pitchMm")).hasValue("none");
        assertFits(page);
        fill(page, "rows-0-pitchMm", "80");
        publish(page);
        assertThat(page.locator("h1")).hasText("Without scripts");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/layouts",
                "/layouts/low-wing-pairs-over-the-taper",
                "/layouts/low-wing-underside-of-the-stabiliser",
                "/layouts/new"
            })
    void pagesAreAccessibleInBothLightsAndFitAPhone(String path) {
        assertWellMade(member(), path, "page" + path.replaceAll("[^a-z0-9]+", "-"));
    }

    private void publishAirframe(Page page, String name) {
        signInWindow(page, member());
        page.navigate("/airframes/new");
        page.locator("#name").fill(name);
        page.locator("#operatingBasis").selectOption("EXPERIMENTAL_AMATEUR_BUILT");
        fill(page, "masses-emptyKg", "300");
        fill(page, "masses-maximumKg", "560");
        fill(page, "wingAreaM2", "10.8");
        fill(page, "speeds-vs1Kt", "42");
        fill(page, "speeds-vneKt", "120");
        fill(page, PANEL + "innerStationMm", "400");
        fill(page, PANEL + "outerStationMm", "4400");
        fill(page, PANEL + "innerChordMm", "1600");
        fill(page, PANEL + "outerChordMm", "900");
        fill(page, PANEL + "outerLeadingEdgeMm", "150");
        page.locator("#" + PANEL + "innerSection-kind-COORDINATES").check();
        page.locator("#" + PANEL + "innerSection-file").setInputFiles(sectionFile());
        publish(page);
    }

    private static void fill(Page page, String id, String text) {
        page.locator("#" + id).fill(text);
    }

    private Path downloaded(Page page, String link, String name) {
        Download download =
                page.waitForDownload(() -> page.locator(link).first().click());
        Path file = directory.resolve(name);
        download.saveAs(file);
        return file;
    }

    /** As outside programs see it: sound, of the right wing, and with bars that measure 100 mm in both directions. */
    private void checkTemplate(Path pdf, String wing) {
        assertThat(Tools.run("qpdf", "--check", pdf.toString())).contains("No syntax or stream encoding errors");
        assertThat(Tools.run("pdftotext", "-layout", pdf.toString(), "-")).contains(" · " + wing + " · piece ");
        Raster page = Raster.ofPdfPage(pdf, 1, directory);
        assertThat(page.widthMm() * page.heightMm()).as("A4, ISO 216").isCloseTo(210 * 297, within(60.0));
        List<Double> level = page.levelLines(99).stream()
                .filter(l -> l.lengthMm() < 101)
                .map(l -> ends(page.darkAcross(l.atMm() + 2.1, l.fromMm() - 0.5, l.toMm() + 0.5)))
                .toList();
        List<Double> upright = page.uprightLines(99).stream()
                .filter(l -> l.lengthMm() < 101)
                .map(l -> ends(page.darkAlong(l.atMm() - 2.0, l.fromMm() - 0.5, l.toMm() + 0.5)))
                .toList();
        assertThat(level).isNotEmpty().allSatisfy(l -> assertThat(l).isCloseTo(100, within(0.1)));
        assertThat(upright).isNotEmpty().allSatisfy(l -> assertThat(l).isCloseTo(100, within(0.1)));
    }

    private static double ends(List<Double> ticks) {
        return ticks.get(ticks.size() - 1) - ticks.get(0);
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
