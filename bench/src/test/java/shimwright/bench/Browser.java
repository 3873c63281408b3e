// size: all that a person does with a browser, one tool for every browser test
package shimwright.bench;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.cert.Certificate;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.By;
import org.openqa.selenium.ElementNotInteractableException;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.SessionNotCreatedException;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.TimeoutException;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real Chromium, driven by keys and looks. */
final class Browser implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(40);

    private static final Duration PATIENCE_FOR_EVERY_ELEMENT = Duration.ofMinutes(3);

    private static final String AXE = axe();

    private final ChromeDriver driver;

    Browser() {
        this(new ChromeOptions());
    }

    /** One whose person has looked at the certificate and said that it is right. */
    static Browser trustingAnyCertificate() {
        ChromeOptions options = new ChromeOptions();
        options.setAcceptInsecureCerts(true);
        return new Browser(options);
    }

    /** One that keeps what it keeps in a folder, so that another one can go on from there. */
    static Browser onProfile(Path folder) {
        ChromeOptions options = new ChromeOptions();
        options.addArguments("--user-data-dir=" + folder);
        return new Browser(options);
    }

    /** One of a device on which the shop's certificate was put among those it trusts: worker and pages alike. */
    static Browser trusting(Certificate certificate) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256")
                    .digest(certificate.getPublicKey().getEncoded());
            ChromeOptions options = new ChromeOptions();
            options.addArguments("--ignore-certificate-errors-spki-list="
                    + Base64.getEncoder().encodeToString(hash));
            return new Browser(options);
        } catch (NoSuchAlgorithmException none) {
            throw new IllegalStateException(none);
        }
    }

    /** Ends every process of this browser at once, as an empty battery does; it cannot be used any more. */
    void batteryGone() {
        String folder = String.valueOf(
                ((Map<?, ?>) Objects.requireNonNull(driver.getCapabilities().getCapability("chrome")))
                        .get("userDataDir"));
        ProcessHandle.current()
                .descendants()
                .filter(process -> process.info().commandLine().orElse("").contains("--user-data-dir=" + folder))
                .flatMap(process -> Stream.concat(process.parent().stream(), Stream.of(process)))
                .filter(process -> process.pid() != ProcessHandle.current().pid())
                .collect(Collectors.toSet())
                .forEach(ProcessHandle::destroyForcibly);
        try {
            driver.quit();
        } catch (WebDriverException gone) {
            // nobody is there to be told
        }
    }

    private static String axe() {
        try (InputStream script = Objects.requireNonNull(Browser.class.getResourceAsStream("/axe.min.js"))) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private Browser(ChromeOptions options) {
        options.setBinary(program("chromium"));
        options.addArguments(
                "--headless=new",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                "--window-size=1180,960");
        if ("root".equals(System.getProperty("user.name"))) {
            options.addArguments("--no-sandbox");
        }
        driver = started(options);
        tablet();
    }

    /** Root may not, and a container or chroot often cannot, have the browser's own sandbox; only our own pages are opened. */
    private static ChromeDriver started(ChromeOptions options) {
        try {
            return new ChromeDriver(service(), options);
        } catch (SessionNotCreatedException noSandbox) {
            return new ChromeDriver(service(), options.addArguments("--no-sandbox"));
        }
    }

    private static ChromeDriverService service() {
        return new ChromeDriverService.Builder()
                .usingDriverExecutable(new File(program("chromedriver")))
                .withSilent(true)
                .build();
    }

    private static String program(String name) {
        return Stream.of("/usr/bin/" + name, "/usr/lib/chromium/" + name, "/usr/local/bin/" + name)
                .filter(path -> Files.isExecutable(Path.of(path)))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        name + " is not installed: run ./check, or install the packages chromium and chromium-driver"));
    }

    /** A tablet lying on its side, 1180×820. */
    void tablet() {
        size(1180, 820, false);
    }

    /** A tablet lying on its side, with a finger for a pointer. */
    void touchTablet() {
        size(1180, 820, true);
    }

    /** A phone lying on its side, 844×390. */
    void phoneOnItsSide() {
        size(844, 390, true);
    }

    /** A phone held upright, 390×844, with a finger for a pointer. */
    void phone() {
        size(390, 844, true);
    }

    private void size(int width, int height, boolean touch) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", touch));
        driver.executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", touch));
    }

    /** Cuts the network, or gives it back. */
    void offline(boolean off) {
        driver.executeCdpCommand("Network.enable", Map.of());
        driver.executeCdpCommand(
                "Network.emulateNetworkConditions",
                Map.of("offline", off, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    /** Keys one after the other without a wait between, as a gauge that types like a keyboard sends them; \n is Enter. */
    void gauge(String keys) {
        Actions burst = new Actions(driver);
        burst.sendKeys(keys.replace("\n", Keys.ENTER)).perform();
    }

    /** Touches a place on the page, in px. */
    void touch(double x, double y) {
        PointerInput finger = new PointerInput(PointerInput.Kind.TOUCH, "finger");
        Sequence tap = new Sequence(finger, 0)
                .addAction(finger.createPointerMove(
                        Duration.ZERO, PointerInput.Origin.viewport(), (int) Math.round(x), (int) Math.round(y)))
                .addAction(finger.createPointerDown(0))
                .addAction(finger.createPointerUp(0));
        driver.perform(List.of(tap));
    }

    /**
     * Draws over an element with the mouse or a finger.
     *
     * @param path places in shares of its width and height, by turns
     */
    void drag(String css, boolean finger, double... path) {
        shown(css);
        List<?> box = (List<?>) script("const r = document.querySelector(\"" + css
                + "\").getBoundingClientRect(); return [r.left, r.top, r.width, r.height]");
        PointerInput pointer = new PointerInput(
                finger ? PointerInput.Kind.TOUCH : PointerInput.Kind.MOUSE, finger ? "finger" : "mouse");
        Sequence stroke = new Sequence(pointer, 0);
        for (int i = 0; i < path.length; i += 2) {
            stroke.addAction(pointer.createPointerMove(
                    Duration.ofMillis(30),
                    PointerInput.Origin.viewport(),
                    (int) Math.round(number(box, 0) + path[i] * number(box, 2)),
                    (int) Math.round(number(box, 1) + path[i + 1] * number(box, 3))));
            if (i == 0) {
                stroke.addAction(pointer.createPointerDown(0));
            }
        }
        driver.perform(List.of(stroke.addAction(pointer.createPointerUp(0))));
    }

    private static double number(List<?> of, int at) {
        return ((Number) of.get(at)).doubleValue();
    }

    /** Keys one after the other into whatever has the focus. */
    void keys(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    /** Opens an address anew; the driver may come back before the page stands, or while the one before still does. */
    void open(String url) {
        if (!url.contains("#")) {
            driver.executeScript("document.documentElement.dataset.left = 'yes'");
        }
        driver.get(url);
        wait(
                url,
                () -> Boolean.TRUE.equals(driver.executeScript(
                                "return !document.documentElement.dataset.left && document.readyState === 'complete'"))
                        ? Boolean.TRUE
                        : null);
    }

    String url() {
        return driver.getCurrentUrl();
    }

    String path() {
        return java.net.URI.create(url()).getPath();
    }

    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    WebElement one(String css) {
        return wait(
                css,
                () -> driver.findElements(By.cssSelector(css)).stream()
                        .findFirst()
                        .orElse(null));
    }

    /** The first such thing, scrolled to where nothing lies over it. */
    WebElement shown(String css) {
        WebElement one = one(css);
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", one);
        return one;
    }

    /** Types into an emptied field. */
    void type(String css, String text) {
        WebElement field = one(css);
        field.clear();
        field.sendKeys(text);
    }

    /** Opens whatever is folded and types into a field, again where the page was made anew meanwhile, until the text stands there. */
    void typeUnfolded(String css, String text) {
        wait(text + " in " + css, () -> {
            script("document.querySelectorAll('details').forEach(e => e.open = true); return 1");
            try {
                WebElement field = one(css);
                if (!text.equals(field.getDomProperty("value"))) {
                    field.clear();
                    field.sendKeys(text);
                }
                return text.equals(one(css).getDomProperty("value")) ? Boolean.TRUE : null;
            } catch (ElementNotInteractableException folded) {
                return null;
            }
        });
    }

    /** Presses what leads to another page. */
    void press(String css) {
        changes(() -> shown(css).click());
    }

    boolean has(String css) {
        return !all(css).isEmpty();
    }

    String text() {
        return one("body").getText();
    }

    /** The first number in an element's text. */
    double number(String css) {
        String text = one(css).getText().replace('−', '-');
        java.util.regex.Matcher matcher =
                java.util.regex.Pattern.compile("-?\\d+(\\.\\d+)?").matcher(text);
        if (!matcher.find()) {
            throw new IllegalStateException("no number in " + text);
        }
        return Double.parseDouble(matcher.group());
    }

    /** Types into whatever has the focus and presses Enter there. */
    void typeAndEnter(String text) {
        driver.switchTo().activeElement().sendKeys(text + Keys.ENTER);
    }

    /** Presses Enter on whatever has the focus, and waits until the page has changed. */
    void enter() {
        changes(() -> driver.switchTo().activeElement().sendKeys(Keys.ENTER));
    }

    /** Whether the page has put the keys on this. */
    boolean keysAre(String css) {
        return Boolean.TRUE.equals(script("return document.activeElement.matches(\"" + css + "\")"));
    }

    /** Types and presses Enter, and waits until the page has changed. */
    void typeAndSend(String text) {
        changes(() -> typeAndEnter(text));
    }

    /** Does something that leads to another page, or to this one anew. */
    void changes(Runnable action) {
        driver.executeScript("document.body.dataset.before = 'yes'");
        action.run();
        wait("a new page", () -> fresh() ? Boolean.TRUE : null);
    }

    private boolean fresh() {
        Object fresh = driver.executeScript(
                "return !document.body.dataset.before && document.readyState === 'complete' && !document.querySelector('button[disabled]')");
        return Boolean.TRUE.equals(fresh);
    }

    <T> T wait(String what, Supplier<@Nullable T> look) {
        T found = new WebDriverWait(driver, PATIENCE)
                .ignoring(StaleElementReferenceException.class)
                .withMessage(() -> what + " at " + driver.getCurrentUrl())
                .until(d -> look.get());
        return Objects.requireNonNull(found);
    }

    /** What the accessibility checks of axe-core find on the page as it stands, each with its rule and where. */
    List<?> barriers() {
        driver.manage().timeouts().scriptTimeout(PATIENCE_FOR_EVERY_ELEMENT);
        driver.executeScript(AXE);
        return (List<?>) Objects.requireNonNull(driver.executeAsyncScript("""
                const done = arguments[arguments.length - 1];
                axe.run(document, {resultTypes: ['violations']}).then(
                    found => done(found.violations.map(v => v.id + ' at ' + v.nodes.map(n => n.target.join(' ') + ' ' + n.html.slice(0, 90)).slice(0, 4).join(' | '))),
                    wrong => done(['axe itself: ' + wrong]))
                """));
    }

    Object script(String script) {
        return Objects.requireNonNullElse(driver.executeScript(script), "nothing");
    }

    /** Keeps a picture of the page under target/pictures, to be looked at. */
    void picture(String name) {
        try {
            Path folder = Files.createDirectories(Path.of("target", "pictures"));
            // a crowded machine may leave the browser no time to paint: once more then
            byte[] picture = wait("a picture", () -> {
                try {
                    return driver.getScreenshotAs(OutputType.BYTES);
                } catch (TimeoutException crowded) {
                    return null;
                }
            });
            Files.write(folder.resolve(name + ".png"), picture);
        } catch (IOException full) {
            throw new java.io.UncheckedIOException(full);
        }
    }

    /** The page from its top as a small WebP picture, at most so many screens of it, at this share of its size. */
    byte[] whole(double screens, double scale) {
        Map<?, ?> size =
                (Map<?, ?>) script("return {width: innerWidth, height: Math.min(document.documentElement.scrollHeight, "
                        + screens + " * innerHeight)}");
        Map<String, Object> clip =
                Map.of("x", 0, "y", 0, "width", size.get("width"), "height", size.get("height"), "scale", scale);
        return Base64.getDecoder().decode(wait("a picture", () -> {
            try {
                return (String) driver.executeCdpCommand(
                                "Page.captureScreenshot",
                                Map.of("format", "webp", "quality", 32, "captureBeyondViewport", true, "clip", clip))
                        .get("data");
            } catch (TimeoutException crowded) {
                return null;
            }
        }));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
