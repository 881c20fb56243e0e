package org.vanewright.device.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.BrowserTest;

/** A person designs a device, turns it about and takes it away. */
class DeviceBrowserTest extends BrowserTest {
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

    @ParameterizedTest
    @ValueSource(ints = {NARROW, WIDE})
    void aDeviceIsDesignedSeenAndDownloaded(int width) throws IOException {
        Page page = window(width);
        signInWindow(page, member());
        page.navigate("/devices/new");
        assertAccessible(page);
        assertFits(page);
        page.locator("#name").fill("Browser vane " + width);
        page.locator("#vane-planform-OGIVAL").check();
        assertThat(page.locator("#vane-tipLengthMm")).isHidden();
        page.locator("#vane-heightMm").fill("99");
        page.locator("#vane-heightMm").blur();
        assertThat(page.locator("#vane-heightMm-error")).containsText("from 0.5 mm to 60 mm");
        page.locator("#vane-heightMm").fill("9");
        page.locator("#vane-heightMm").blur();
        assertThat(page.locator("#vane-heightMm-error")).isEmpty();
        assertThat(page.locator("#preview svg.views")).containsText("ogival");
        assertAccessible(page);
        publish(page);
        checkSolid(page);
        assertAccessible(page);
        assertFits(page);
        screenshot(page, "device-" + width);
        Download stl =
                page.waitForDownload(() -> page.locator(".downloads a", new Page.LocatorOptions().setHasText("STL"))
                        .click());
        assertThat(stl.suggestedFilename()).isEqualTo("browser-vane-" + width + "-r1.stl");
        byte[] bytes = Files.readAllBytes(stl.path());
        assertThat((bytes.length - 84) % 50).isZero();
        assertThat(new String(bytes, 0, 7, StandardCharsets.US_ASCII)).isEqualTo("Unit mm");
    }

    /** The canvas holds more than one flat colour, and other pixels after a turn. */
    private static void checkSolid(Page page) throws IOException {
        Locator canvas = page.locator(".solid-view canvas[data-drawn=yes]");
        assertThat(canvas).isVisible();
        assertThat(page.locator(".solid-still")).isHidden();
        BufferedImage before = image(canvas);
        assertThat(colours(before)).hasSizeGreaterThan(20);
        page.getByLabel("Turn left").click();
        page.getByLabel("Tilt towards you").click();
        page.waitForFunction(
                "() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))");
        BufferedImage after = image(canvas);
        assertThat(differing(before, after)).isGreaterThan(before.getWidth() * before.getHeight() / 100);
    }

    private static BufferedImage image(Locator canvas) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(canvas.screenshot()));
    }

    private static Set<Integer> colours(BufferedImage image) {
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                colours.add(image.getRGB(x, y));
            }
        }
        return colours;
    }

    private static int differing(BufferedImage a, BufferedImage b) {
        int differing = 0;
        for (int x = 0; x < a.getWidth(); x++) {
            for (int y = 0; y < a.getHeight(); y++) {
                differing += a.getRGB(x, y) == b.getRGB(x, y) ? 0 : 1;
            }
        }
        return differing;
    }

    @Test
    void theSameWithoutScripts() {
        Page page = windowWithoutScripts(NARROW);
        signInWindow(page, member());
        page.navigate("/devices/new");
        page.locator("#name").fill("Vane without scripts");
        page.locator("#piece-PAIR").press("Space");
        page.locator("#vane-heightMm").fill("not high");
        page.locator("#base-widthMm").fill("44");
        page.locator("button[value=check]").last().press("Enter");
        assertThat(page.locator("#vane-heightMm-error")).containsText("a number such as");
        page.locator("#vane-heightMm").fill("8,5");
        page.locator("button[value=check]").last().press("Enter");
        assertThat(page.locator("#form-problems li")).hasCount(0);
        assertThat(page.locator("#preview svg.views")).isVisible();
        publish(page);
        assertThat(page.locator(".solid-still img")).isVisible();
        assertThat(page.locator(".solid-hint")).isHidden();
        assertThat(page.locator("main")).containsText("8.5 mm");
        page.locator(".plate-form button").press("Enter");
        assertThat(page.locator(".plates .card")).hasCount(1);
    }

    @Test
    void theStillDrawingStaysWhereThereIsNoWebGl() {
        Page page = window(WIDE);
        page.addInitScript(
                "HTMLCanvasElement.prototype.getContext = () => null;" + " window.WebGL2RenderingContext = undefined;");
        page.addInitScript("const error = console.error; console.error = (...said) =>"
                + " String(said[0]).includes('THREE.WebGLRenderer') ? undefined : error(...said);");
        page.navigate("/devices/rectangular-vane-8-by-20");
        assertThat(page.locator(".solid-still img")).isVisible();
        assertThat(page.locator(".solid-view canvas")).hasCount(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/devices",
                "/devices/ogival-pair-on-one-base",
                "/devices/new",
                "/devices/rectangular-vane-8-by-20/plates?count=60&bedWidthMm=120&bedDepthMm=90",
                "/devices/rectangular-vane-8-by-20/plates?count=none"
            })
    void pagesAreAccessibleInBothLightsAndFitAPhone(String path) {
        assertWellMade(member(), path, "page" + path.replaceAll("[^a-z0-9]+", "-"));
    }
}
