package org.vanewright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.Paths;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.vanewright.account.NewPeople.NewPerson;

/**
 * A real browser on the whole service. Chromium comes from {@code VANEWRIGHT_CHROMIUM}, else from
 * {@code /usr/bin/chromium-headless-shell} or {@code /usr/bin/chromium}. What a page writes to its console as an error, and what its scripts throw, fails the test.
 */
@Tag("browser")
public abstract class BrowserTest extends ServerTest {
    /** A phone. */
    protected static final int NARROW = 390;
    /** A laptop. */
    protected static final int WIDE = 1280;

    /** The shell without a window starts and draws in less time; either will do. */
    private static final List<Path> CHROMIUM =
            List.of(Paths.get("/usr/bin/chromium-headless-shell"), Paths.get("/usr/bin/chromium"));

    private static final List<String> WCAG = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    private static final double PATIENCE_MS = 90_000;

    private static final Pattern UNREMARKABLE =
            Pattern.compile("Failed to load resource|htmx:(afterRequest|sendError|sendAbort)\\b");

    private static @Nullable Playwright playwright;
    private static @Nullable Browser browser;

    private final List<BrowserContext> open = new ArrayList<>();
    private final List<String> complaints = new ArrayList<>();

    @BeforeAll
    static void startBrowser() {
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS / 3);
        playwright = Playwright.create();
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setHeadless(true)
                        .setExecutablePath(chromium())
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-dev-shm-usage",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync",
                                "--no-first-run")));
    }

    private static Path chromium() {
        String given = System.getenv("VANEWRIGHT_CHROMIUM");
        return given != null
                ? Paths.get(given)
                : CHROMIUM.stream().filter(Files::isExecutable).findFirst().orElse(CHROMIUM.get(CHROMIUM.size() - 1));
    }

    @AfterAll
    static void stopBrowser() {
        if (browser != null) {
            browser.close();
        }
        if (playwright != null) {
            playwright.close();
        }
    }

    @AfterEach
    void closeWindows() {
        open.forEach(BrowserContext::close);
        assertThat(complaints).as("errors in the browser's console").isEmpty();
    }

    /** A fresh window of that width, light. */
    protected final Page window(int width) {
        return window(new Browser.NewContextOptions().setViewportSize(width, 900));
    }

    protected final Page darkWindow(int width) {
        return window(
                new Browser.NewContextOptions().setViewportSize(width, 900).setColorScheme(ColorScheme.DARK));
    }

    protected final Page windowWithoutScripts(int width) {
        return window(
                new Browser.NewContextOptions().setViewportSize(width, 900).setJavaScriptEnabled(false));
    }

    private Page window(Browser.NewContextOptions options) {
        if (browser == null) {
            throw new IllegalStateException("the browser has not been started");
        }
        // A page that scrolls smoothly is still moving when the next step wants to press something on it.
        BrowserContext context =
                browser.newContext(options.setBaseURL(origin()).setReducedMotion(ReducedMotion.REDUCE));
        open.add(context);
        Page page = context.newPage();
        // A busy machine is no fault of the page.
        page.setDefaultTimeout(PATIENCE_MS);
        page.setDefaultNavigationTimeout(PATIENCE_MS);
        page.onPageError(complaints::add);
        page.onConsoleMessage(message -> {
            // The console repeats a refused form's status; the test asserts on that itself. A preview that was still
            // under way when somebody left the page is no error either.
            if (message.type().equals("error")
                    && !UNREMARKABLE.matcher(message.text()).lookingAt()) {
                complaints.add(message.text());
            }
        });
        return page;
    }

    /** Signs somebody in through the page, as a person would. */
    protected final void signInWindow(Page page, NewPerson person) {
        page.navigate("/sign-in");
        page.getByLabel("E-mail address").fill(person.email());
        page.getByLabel("Password").fill(person.password());
        page.locator("main").getByRole(AriaRole.BUTTON).click();
        assertThat(page.locator(".yours .me").textContent()).contains(person.name());
    }

    /**
     * No violation of WCAG 2.2 A or AA that axe-core can find. What is inside a drawing is presentation (WAI-ARIA 1.2,
     * role img) and left out, which spares minutes; the drawing itself is looked at.
     */
    protected final void assertAccessible(Page page) {
        List<String> violations = new AxeBuilder(page)
                .withTags(WCAG).exclude("svg[role=img] *").analyze().getViolations().stream()
                        .map(BrowserTest::describe)
                        .toList();
        assertThat(violations).as("accessibility of " + page.url()).isEmpty();
    }

    private static String describe(Rule rule) {
        return rule.getId() + ": " + rule.getHelp() + " "
                + rule.getNodes().stream().map(n -> n.getHtml()).toList();
    }

    /**
     * A page as that person sees it: accessible and fitting on a phone in light and on a laptop in dark, which between them
     * find what all four would.
     */
    protected final void assertWellMade(NewPerson person, String path, String name) {
        inspect(window(NARROW), person, path, name + "-light-" + NARROW);
        inspect(darkWindow(WIDE), person, path, name + "-dark-" + WIDE);
    }

    private void inspect(Page page, NewPerson person, String path, String name) {
        // Signing in through the page has tests of its own.
        String session = Objects.requireNonNull(signIn(person).cookie("SESSION"), "no session");
        page.context().addCookies(List.of(new Cookie("SESSION", session).setUrl(origin())));
        page.navigate(path);
        assertThat(page.locator(".yours .me").textContent()).contains(person.name());
        assertAccessible(page);
        assertFits(page);
        screenshot(page, name);
    }

    /** Nothing sticks out of the window, so nobody scrolls sideways. */
    protected final void assertFits(Page page) {
        Object excess = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(((Number) excess).intValue())
                .as("pixels that stick out of " + page.url())
                .isZero();
    }

    /** Kept under {@code target/screenshots} for people to look at. */
    protected final void screenshot(Page page, String name) {
        Path file = Paths.get("target", "screenshots", name + ".png");
        page.screenshot(new Page.ScreenshotOptions().setPath(file).setFullPage(true));
        assertThat(file).isNotEmptyFile();
    }
}
