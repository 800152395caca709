package assize.report.html;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.logging.Level;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A Chromium without a window, as it is installed on this machine. */
public final class Browser implements AutoCloseable {
  /** The widths that a report is read at: a desk, a phone, a small phone (in CSS pixels). */
  public static final List<Integer> WIDTHS = List.of(1280, 390, 320);

  /** What is left at the least of A4 (210 mm) between its margins, in CSS pixels of 1/96 in. */
  public static final int A4_BETWEEN_MARGINS = 672;

  /** How much of a page is seen at once, in CSS pixels. */
  static final int HEIGHT = 900;

  /** After this a script is taken to answer no more. */
  private static final Duration PATIENCE = Duration.ofMinutes(5);

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Starts it; without one the tests are skipped, except where CI is true. */
  public static Browser start(Path profile) {
    return start(profile, Map.of());
  }

  /**
   * Starts it with settings of its own.
   *
   * @param settings what a person may choose, by Chromium's names
   */
  public static Browser start(Path profile, Map<String, Object> settings) {
    Optional<Path> chromium = needed("chromium");
    Optional<Path> chromedriver = needed("chromedriver");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(chromium.orElseThrow().toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--hide-scrollbars",
        "--user-data-dir=" + profile);
    if (!settings.isEmpty()) {
      options.setExperimentalOption("prefs", settings);
    }
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    logs.enable(LogType.BROWSER, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(chromedriver.orElseThrow().toFile())
            .usingAnyFreePort()
            .build();
    options.setScriptTimeout(PATIENCE);
    Browser browser = new Browser(new ChromeDriver(service, options));
    // A window without a screen is not always the active one, and only there does :focus apply.
    browser.cdp("Emulation.setFocusEmulationEnabled", Map.of("enabled", true));
    return browser;
  }

  /** Finds a program; skips the test without it, except where CI is true. */
  static Optional<Path> needed(String program) {
    Optional<Path> found =
        Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
            .map(folder -> Path.of(folder, program))
            .filter(Files::isExecutable)
            .findFirst();
    if (found.isEmpty() && "true".equals(System.getenv("CI"))) {
      throw new AssertionError(program + " is not installed");
    }
    assumeTrue(found.isPresent(), program + " is not installed");
    return found;
  }

  public void open(Path page) {
    driver.get(page.toUri().toString());
  }

  /**
   * Lays all of the page out at once. What is far off waits until it is asked for, and asked one by
   * one a long page takes minutes.
   */
  void layOut() {
    result(
        "const all = new CSSStyleSheet();"
            + "all.replaceSync('* { content-visibility: visible !important; }');"
            + "document.adoptedStyleSheets = [all]; return 0;");
  }

  /** Gives the page a width and a look. */
  public void show(int width, String medium, String theme) {
    show(width, medium, Map.of("prefers-color-scheme", theme));
  }

  /** Gives the page a width, and what the reader asks for (CSS Media Queries Level 5). */
  void show(int width, String medium, Map<String, String> asked) {
    cdp(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", HEIGHT, "deviceScaleFactor", 1, "mobile", false));
    cdp(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            medium,
            "features",
            asked.entrySet().stream()
                .map(one -> Map.of("name", one.getKey(), "value", one.getValue()))
                .toList()));
  }

  /** Lets pages run their scripts, or not; those of the tests run all the same. */
  public void scripts(boolean run) {
    cdp("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
  }

  /** Returns what a screen reader is given of an element, generated text included. */
  public String spoken(String selector) {
    Map<?, ?> found =
        (Map<?, ?>)
            got(
                cdp(
                    "Runtime.evaluate",
                    Map.of("expression", "document.querySelector(\"" + selector + "\")")),
                "result");
    Map<String, Object> tree =
        cdp(
            "Accessibility.queryAXTree",
            Map.of("objectId", got(found, "objectId"), "role", "StaticText"));
    return ((List<?>) got(tree, "nodes"))
        .stream()
            .map(node -> (Map<?, ?>) got((Map<?, ?>) node, "name"))
            .map(name -> String.valueOf(name.get("value")))
            .collect(Collectors.joining());
  }

  private static Object got(Map<?, ?> answer, String name) {
    return Objects.requireNonNull(answer.get(name));
  }

  /** Returns a picture of a part of the page as a PNG. */
  byte[] picture(double top, double width, double height) {
    Map<String, Object> picture =
        cdp(
            "Page.captureScreenshot",
            Map.of(
                "captureBeyondViewport",
                true,
                "clip",
                Map.of("x", 0, "y", top, "width", width, "height", height, "scale", 1)));
    return Base64.getDecoder().decode(String.valueOf(picture.get("data")));
  }

  public String address() {
    return String.valueOf(driver.getCurrentUrl());
  }

  public Map<String, Object> cdp(String command, Map<String, Object> parameters) {
    return driver.executeCdpCommand(command, parameters);
  }

  /** Runs one of the scripts beside this class on the page and returns the faults it found. */
  public List<String> faults(String script, Object... arguments) throws IOException {
    return texts(read(script), arguments);
  }

  /** Runs one of the scripts beside this class that answers later, and returns its faults. */
  List<String> laterFaults(String script) throws IOException {
    Object found = Objects.requireNonNull(driver.executeAsyncScript(read(script)));
    return ((List<?>) found).stream().map(String::valueOf).toList();
  }

  /** Runs a script that returns texts. */
  public List<String> texts(String script, Object... arguments) {
    return ((List<?>) result(script, arguments)).stream().map(String::valueOf).toList();
  }

  /** Runs a script that returns something. */
  public Object result(String script, Object... arguments) {
    return Objects.requireNonNull(driver.executeScript(script, arguments));
  }

  public void press(Keys key, int times) {
    new Actions(driver).sendKeys(key.toString().repeat(times)).perform();
  }

  /** Types into what has the focus. */
  public void type(String text) {
    new Actions(driver).sendKeys(text).perform();
  }

  /** Loads the page anew. */
  public void reload() {
    driver.navigate().refresh();
  }

  /** Lets the page save files into a folder. */
  public void saveInto(Path folder) {
    cdp(
        "Browser.setDownloadBehavior",
        Map.of("behavior", "allow", "downloadPath", folder.toAbsolutePath().toString()));
  }

  /** Chooses a file in a field of the page. */
  public void choose(String selector, Path file) {
    driver.findElement(By.cssSelector(selector)).sendKeys(file.toAbsolutePath().toString());
  }

  /** Presses a key or a button with the pointer, once a page that works on shows it. */
  public void click(String selector) {
    for (int asked = 0; asked < 10_000 && !isShown(selector); asked++) {
      Thread.onSpinWait();
    }
    WebElement element = driver.findElement(By.cssSelector(selector));
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'});", element);
    element.click();
  }

  private boolean isShown(String selector) {
    return driver.findElements(By.cssSelector(selector)).stream()
        .limit(1)
        .anyMatch(WebElement::isDisplayed);
  }

  /**
   * Returns what was said on the console since this was last called, faults of scripts and such.
   */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(entry -> entry.getMessage())
        .toList();
  }

  /** Returns what the page asked for since this was last called. */
  public List<String> requests() {
    return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(entry -> entry.getMessage())
        .filter(message -> message.contains("\"Network.requestWillBeSent\""))
        .map(
            message -> message.replaceFirst("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
        .toList();
  }

  /**
   * Prints the page and returns the bytes of the PDF.
   *
   * @param width of the sheet, and {@code height}, in inches
   */
  public byte[] print(double width, double height) {
    Map<String, Object> pdf =
        cdp(
            "Page.printToPDF",
            Map.of(
                "paperWidth",
                width,
                "paperHeight",
                height,
                "preferCSSPageSize",
                true,
                "printBackground",
                false));
    return Base64.getDecoder().decode(String.valueOf(pdf.get("data")));
  }

  /** Returns one of the scripts beside this class. */
  public static String read(String script) throws IOException {
    try (InputStream in = Objects.requireNonNull(Browser.class.getResourceAsStream(script));
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return lines.lines().collect(Collectors.joining("\n"));
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
