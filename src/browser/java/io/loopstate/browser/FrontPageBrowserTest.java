package io.loopstate.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import io.loopstate.testing.Http;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The front page in a browser: by keyboard, on a phone, in the dark, with and without scripts. Pictures of it are left in {@code
 * target/screenshots} to be looked at.
 */
@QuarkusTest
class FrontPageBrowserTest {
    private static final Path CHROMIUM = Path.of(System.getProperty("browser.executable", "/usr/bin/chromium"));
    private static final Path PICTURES = Path.of("target", "screenshots");
    private static final List<String> QUIET = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");
    private static final String ANSWERED =
            "?ask=readings&refrigerant=R-290&suctionPressure=12+psig&suctionLineTemperature=-24+degF&dischargePressure=175+psig"
                    + "&dischargeLineTemperature=150+degF&liquidLineTemperature=92+degF&altitude=700+ft&units=IP&digits=5";

    private static Playwright playwright;
    private static Browser browser;

    @TestHTTPResource
    URI server;

    private BrowserContext context;
    private final List<String> complaints = new ArrayList<>();

    @BeforeAll
    static void start() {
        assertThat(Files.isExecutable(CHROMIUM))
                .as("No browser at " + CHROMIUM + ": apt-get install chromium, or name one with -Dbrowser.executable=")
                .isTrue();
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(CHROMIUM)
                        .setArgs(QUIET));
    }

    @AfterAll
    static void stop() {
        if (playwright != null) {
            playwright.close();
        }
    }

    @BeforeEach
    void nothingComplainedOf() {
        complaints.clear();
    }

    @AfterEach
    void nothingBroke() {
        context.close();
        assertThat(complaints).isEmpty();
    }

    private Page open(String address, Browser.NewContextOptions options) {
        context = browser.newContext(options);
        Page page = context.newPage();
        page.onConsoleMessage(message -> {
            // A refusal is a reply with a page; the browser logs its status.
            if (message.type().equals("error") && !message.text().contains("status of 4")) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
        page.navigate(server.resolve("/" + address).toString());
        return page;
    }

    private Page open(String address) {
        return open(address, new Browser.NewContextOptions().setViewportSize(1280, 900));
    }

    private JsonNode reply(Page page) {
        URI address = URI.create(page.locator("#address").innerText());
        assertThat(address.getAuthority()).isEqualTo(server.getAuthority());
        return Http.json(
                Http.get(address.getRawPath() + '?' + address.getRawQuery()).statusCode(200));
    }

    private static double figure(Page page, String label) {
        Locator line = page.locator(".figures > div")
                .filter(new Locator.FilterOptions()
                        .setHas(page.locator("dt", new Page.LocatorOptions().setHasText(label))));
        return Double.parseDouble(line.locator(".number").innerText().replace('−', '-'));
    }

    /** Tabs to an element and says on the way that the focus can be seen. */
    private static void tabTo(Page page, String id) {
        for (int i = 0; i < 120; i++) {
            page.keyboard().press("Tab");
            Object outline = page.evaluate("() => getComputedStyle(document.activeElement).outlineStyle");
            assertThat(outline).as("outline of the focus").isNotEqualTo("none");
            if (id.equals(page.evaluate("() => document.activeElement.id || document.activeElement.type"))) {
                return;
            }
        }
        throw new AssertionError("the keyboard does not reach " + id);
    }

    @Test
    void keyboardAloneGetsAnAnswer() {
        Page page = open("");
        page.keyboard().press("Tab");
        assertThat(page.evaluate("() => document.activeElement.className")).isEqualTo("skip");
        tabTo(page, "refrigerant");
        page.keyboard().type("R-134a");
        tabTo(page, "suctionPressure");
        page.keyboard().type("18");
        tabTo(page, "suctionLineTemperature");
        page.keyboard().type("35");
        tabTo(page, "dischargePressure");
        page.keyboard().type("135");
        tabTo(page, "dischargeLineTemperature");
        page.keyboard().type("160");
        page.keyboard().press("Enter");
        page.locator(".figures").waitFor();
        assertThat(page.locator("#status").innerText()).startsWith("Answer below. Superheat 15.61");
        JsonNode reply = reply(page);
        assertThat(figure(page, "Superheat"))
                .isEqualTo(reply.at("/superheat/value").doubleValue());
        assertThat(figure(page, "Isentropic efficiency"))
                .isEqualTo(reply.at("/compression/isentropicEfficiency").doubleValue());
        assertThat(page.locator("#suctionPressure").inputValue()).isEqualTo("18");
        assertThat(page.url())
                .contains("suctionPressure=18", "suctionPressureUnit=psig")
                .doesNotContain("liquidLine");
        page.reload();
        assertThat(figure(page, "Superheat"))
                .isEqualTo(reply.at("/superheat/value").doubleValue());
    }

    @Test
    void faultTakesTheFocusAndIsTold() {
        Page page = open("");
        page.locator("#refrigerant").selectOption("R-134a");
        page.locator("#suctionPressure").fill("abc");
        page.locator("#suctionLineTemperature").fill("35");
        page.locator("#dischargePressure").fill("135");
        page.locator("button[type=submit]").click();
        page.locator(".refusal").waitFor();
        assertThat(page.locator("#status").innerText()).startsWith("No answer: one fault");
        assertThat(page.evaluate("() => document.activeElement.id")).isEqualTo("suctionPressure");
        assertThat(page.locator("#suctionPressure").getAttribute("aria-invalid"))
                .isEqualTo("true");
        assertThat(page.locator("#suctionPressure-error").innerText()).isNotBlank();
        page.locator("#suctionPressure").fill("18");
        page.keyboard().press("Enter");
        page.locator(".figures").waitFor();
        assertThat(page.locator("#suctionPressure-error").innerText()).isBlank();
        assertThat(page.locator("[aria-invalid]").count()).isZero();
    }

    @Test
    void emptyFieldsFollowTheUnitsOfTheAnswer() {
        Page page = open("");
        page.locator("#suctionPressure").fill("18");
        page.locator("#units").selectOption("SI,pressure=bar_g");
        assertThat(page.locator("[name=suctionPressureUnit]").inputValue()).isEqualTo("psig");
        assertThat(page.locator("[name=dischargePressureUnit]").inputValue()).isEqualTo("bar_g");
        assertThat(page.locator("[name=suctionLineTemperatureUnit]").inputValue())
                .isEqualTo("degC");
    }

    @Test
    void textsAreCopied() {
        Page page = open(
                ANSWERED, new Browser.NewContextOptions().setPermissions(List.of("clipboard-read", "clipboard-write")));
        for (String id : List.of("address", "curl", "webservice", "importdata")) {
            Locator take = page.locator(".take").filter(new Locator.FilterOptions().setHas(page.locator("#" + id)));
            take.locator("button").click();
            page.waitForCondition(() -> page.locator("#status").innerText().startsWith("Copied"));
            assertThat(page.evaluate("() => navigator.clipboard.readText()"))
                    .isEqualTo(page.locator("#" + id).innerText());
        }
    }

    /** The same page, the same numbers, by a plain form. */
    @Test
    void scriptsAreNotNeeded() {
        Page page = open("", new Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.locator("#refrigerant").selectOption("R-454B");
        page.locator("#suctionPressure").fill("118");
        page.locator("#suctionLineTemperature").fill("55");
        page.locator("#dischargePressure").fill("340");
        page.locator("#liquidLineTemperature").fill("95");
        page.locator("button[type=submit]").click();
        page.locator(".figures").waitFor();
        assertThat(page.url()).endsWith("#answer");
        JsonNode reply = reply(page);
        assertThat(figure(page, "Superheat"))
                .isEqualTo(reply.at("/superheat/value").doubleValue());
        assertThat(figure(page, "Subcooling"))
                .isEqualTo(reply.at("/subcooling/value").doubleValue());
        assertThat(page.locator(".copy").count()).isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {320, 360, 414, 768})
    void phoneNeverScrollsSideways(int width) {
        for (String address :
                List.of("", ANSWERED, "?ask=design", "?refrigerant=R-999&suctionPressure=" + "x".repeat(300))) {
            Page page = open(address, new Browser.NewContextOptions().setViewportSize(width, 800));
            assertThat((Integer) page.evaluate("() => document.documentElement.scrollWidth"))
                    .as(address)
                    .isLessThanOrEqualTo(width);
            context.close();
        }
    }

    @Test
    void pictureIsDrawnAndSaysWhatItShows() {
        Page page = open(ANSWERED);
        Locator picture = page.locator("figure img");
        picture.scrollIntoViewIfNeeded();
        page.waitForCondition(() -> (Boolean) picture.evaluate("image => image.complete"));
        assertThat((Integer) picture.evaluate("image => image.naturalWidth")).isGreaterThan(500);
        assertThat(picture.getAttribute("alt")).contains("R-290", "pressure over enthalpy");
    }

    /** WCAG 2.2, success criterion 1.4.3: 4.5 to 1 for text. Relative luminance as defined there. */
    @ParameterizedTest
    @CsvSource({"LIGHT, ''", "DARK, ''", "LIGHT, answered", "DARK, answered", "LIGHT, refused", "DARK, refused"})
    void textStandsOutFromItsBackground(ColorScheme scheme, String kind) {
        String address =
                kind.isEmpty() ? "" : kind.equals("answered") ? ANSWERED : "?refrigerant=R-999&suctionPressure=x";
        Page page = open(address, new Browser.NewContextOptions().setColorScheme(scheme));
        Object faint = page.evaluate("""
                () => {
                  const parse = (text) => text.match(/[\\d.]+/g).map(Number);
                  const light = (rgb) => {
                    const [r, g, b] = rgb.slice(0, 3).map((c) => c / 255).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
                    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
                  };
                  const behind = (element) => {
                    for (let e = element; e; e = e.parentElement) {
                      const color = parse(getComputedStyle(e).backgroundColor);
                      if (color.length === 3 || color[3] > 0) return color;
                    }
                    return [255, 255, 255];
                  };
                  const found = [];
                  for (const element of document.querySelectorAll('body *')) {
                    const text = [...element.childNodes].filter((n) => n.nodeType === 3).map((n) => n.textContent.trim()).join('');
                    if (!text || element.closest('option, optgroup') || !element.checkVisibility()) continue;
                    const [a, b] = [light(parse(getComputedStyle(element).color)), light(behind(element))].sort((x, y) => y - x);
                    const ratio = (a + 0.05) / (b + 0.05);
                    if (ratio < 4.5) found.push(`${ratio.toFixed(2)} ${element.tagName} ${text.slice(0, 40)}`);
                  }
                  return found;
                }
                """);
        assertThat((List<?>) faint).isEmpty();
        String background = (String) page.evaluate("() => getComputedStyle(document.body).backgroundColor");
        int red = Integer.parseInt(background.replaceAll("\\D+(\\d+).*", "$1"));
        assertThat(red < 64).isEqualTo(scheme == ColorScheme.DARK);
    }

    /** Names by which a screen reader calls what can be operated. */
    @ParameterizedTest
    @ValueSource(strings = {"", ANSWERED, "?ask=saturation", "?ask=design"})
    void everythingThatCanBeOperatedHasAName(String address) {
        Page page = open(address);
        Object nameless = page.evaluate("""
                () => [...document.querySelectorAll('a, button, input:not([type=hidden]), select, summary, [tabindex="0"]')]
                  .filter((e) => !(e.getAttribute('aria-label') || e.getAttribute('aria-labelledby') || e.labels?.length || e.textContent.trim()))
                  .map((e) => e.outerHTML.slice(0, 80))
                """);
        assertThat((List<?>) nameless).isEmpty();
        assertThat(page.locator("h1").count()).isOne();
        assertThat(page.locator("html").getAttribute("lang")).isEqualTo("en");
        assertThat(page.locator("#status").getAttribute("role")).isEqualTo("status");
    }

    @ParameterizedTest
    @CsvSource({
        "1280, LIGHT, '', desktop-light-form",
        "1280, DARK, '', desktop-dark-form",
        "390, LIGHT, '', phone-light-form",
        "1280, LIGHT, answered, desktop-light-answer",
        "1280, DARK, answered, desktop-dark-answer",
        "390, LIGHT, answered, phone-light-answer",
        "390, DARK, answered, phone-dark-answer"
    })
    void pictureOfThePage(int width, ColorScheme scheme, String kind, String name) {
        Page page = open(
                kind.isEmpty() ? "" : ANSWERED,
                new Browser.NewContextOptions().setViewportSize(width, 900).setColorScheme(scheme));
        page.evaluate("() => document.querySelectorAll('img').forEach((image) => { image.loading = 'eager'; })");
        page.waitForCondition(
                () -> (Boolean) page.evaluate("() => [...document.images].every((image) => image.complete)"));
        Path file = PICTURES.resolve(name + ".png");
        page.screenshot(new Page.ScreenshotOptions().setPath(file).setFullPage(true));
        assertThat(file).isNotEmptyFile();
    }
}
