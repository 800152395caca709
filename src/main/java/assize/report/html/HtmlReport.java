package assize.report.html;

import assize.report.view.ReportView;
import freemarker.cache.ClassTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Locale;
import java.util.Map;

/** Prints a finished report as one page: no script, nothing loaded, all of it readable offline. */
public final class HtmlReport {
  private static final Configuration TEMPLATES = templates();

  private HtmlReport() {}

  /** Returns the page without any picture. */
  public static String render(ReportView view) {
    return render(view, Map.of());
  }

  /**
   * Returns the page.
   *
   * @param pictures what to show for a piece of evidence, by its name in the record
   * @throws IllegalStateException if the finished page breaks a rule of {@link FinishedPage}
   */
  public static String render(ReportView view, Map<String, Picture> pictures) {
    String style = resource("report.css");
    StringWriter page = new StringWriter();
    try {
      TEMPLATES
          .getTemplate("report.ftlh")
          .process(
              Map.of(
                  "report", view,
                  "pictures", pictures,
                  "style", HTMLOutputFormat.INSTANCE.fromMarkup(style),
                  "styleHash", hash(style),
                  "markdown", markdown()),
              page);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException(e);
    }
    String html = printable(page.toString());
    FinishedPage.check(html);
    return html;
  }

  private static Configuration templates() {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setTemplateLoader(new ClassTemplateLoader(HtmlReport.class, ""));
    configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
    configuration.setLocale(Locale.ROOT);
    configuration.setNumberFormat("computer");
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setLocalizedLookup(false);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    return configuration;
  }

  private static TemplateMethodModelEx markdown() {
    return arguments -> {
      if (arguments.size() != 1) {
        throw new TemplateModelException("markdown takes one text");
      }
      return HTMLOutputFormat.INSTANCE.fromMarkup(Notes.toHtml(arguments.get(0).toString()));
    };
  }

  private static String resource(String name) {
    try (InputStream in = HtmlReport.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its file " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The policy names the one style sheet by its hash (Content Security Policy Level 3, 2.3.1). */
  private static String hash(String style) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Replaces what HTML cannot hold: control characters and halves of surrogate pairs. */
  private static String printable(String html) {
    StringBuilder kept = new StringBuilder(html.length());
    html.codePoints().map(c -> isPrintable(c) ? c : 0xFFFD).forEach(kept::appendCodePoint);
    return kept.toString();
  }

  private static boolean isPrintable(int c) {
    boolean control = Character.getType(c) == Character.CONTROL && c != '\n' && c != '\t';
    boolean bidi = c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    return !control && !bidi && Character.getType(c) != Character.SURROGATE;
  }
}
