package evenwater.page.browser;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** A headless Chromium that shows the page from disk; nothing is downloaded. */
final class Chromium implements AutoCloseable {

    private final ChromeDriver driver;

    private Chromium(ChromeDriver driver) {
        this.driver = driver;
    }

    static Chromium withPage() {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(program("chromium"));
        // without a sandbox, since builds in containers run as root, where Chromium refuses its own
        options.addArguments("--headless=new", "--no-sandbox", "--disable-dev-shm-usage", "--window-size=1280,900");
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(new File(program("chromedriver")))
                .usingAnyFreePort()
                .build();
        Chromium chromium = new Chromium(new ChromeDriver(service, options));
        chromium.open();
        return chromium;
    }

    /** Finds a program by the system property of its name or on the path. */
    static String program(String name) {
        String stated = System.getProperty(name, "");
        if (!stated.isEmpty()) {
            return stated;
        }
        for (String directory : System.getenv("PATH").split(File.pathSeparator, -1)) {
            Path file = Path.of(directory, name);
            if (Files.isExecutable(file)) {
                return file.toString();
            }
        }
        throw new IllegalStateException(
                "the test of the live page needs the programs chromium and chromedriver of one version, but "
                        + name
                        + " is not on the path: install both (on Debian the packages chromium and chromium-driver), or say where it is "
                        + "with -D" + name + "=FILE");
    }

    static Path page() {
        Path file = Path.of(Objects.requireNonNull(System.getProperty("page.file"), "page.file"));
        if (!Files.isRegularFile(file)) {
            throw new IllegalStateException("the page is built before its tests, but there is no " + file);
        }
        return file;
    }

    /** Opens the page anew, with its initial values. */
    void open() {
        driver.get(page().toUri().toString());
    }

    ChromeDriver driver() {
        return driver;
    }

    WebElement element(String css) {
        return driver.findElement(By.cssSelector(css));
    }

    Object script(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    /** Makes the window so many CSS pixels wide; with a scale of 2, as a window twice as wide looks at a zoom of 200 %. */
    void width(int pixels, double scale) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", pixels, "height", 800, "deviceScaleFactor", scale, "mobile", false));
    }

    /** Asks for what somebody can set in a system, such as {@code prefers-color-scheme} and {@code dark}. */
    void prefer(String feature, String value) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia", Map.of("features", List.of(Map.of("name", feature, "value", value))));
    }

    void waitFor(Duration atMost, BooleanSupplier condition) {
        long end = System.nanoTime() + atMost.toNanos();
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("still not so after " + atMost.toSeconds() + " s");
            }
        }
    }

    @Override
    public void close() {
        driver.quit();
    }
}
