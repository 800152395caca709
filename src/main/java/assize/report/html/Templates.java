package assize.report.html;

import assize.text.Ascii;
import freemarker.cache.ClassTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.core.TemplateHTMLOutputModel;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Prints pages: each with its style and script inside, and a policy that allows nothing else. */
public final class Templates {
  /** What all pages read lies below here, each with its folder before its name. */
  private static final String FILES = "/assize/report/";

  private static final Configuration TEMPLATES = configuration();

  private Templates() {}

  /**
   * Prints a page and checks it.
   *
   * @param model what the template reads; {@code style}, {@code script}, {@code policy} and {@code
   *     markdown} stand beside it
   * @param styles files of style, in their order
   * @param scripts files of script, in their order; may be none
   * @throws IllegalStateException if the finished page breaks a rule of {@link PageValidator}
   */
  public static String page(
      String template, Map<String, Object> model, List<String> styles, List<String> scripts) {
    return page(template, model, styles, "", scripts);
  }

  /**
   * Prints a page that has rules of style made for it, and checks it.
   *
   * @param rules stand after the files of style
   * @throws IllegalStateException if the finished page breaks a rule of {@link PageValidator}
   */
  public static String page(
      String template,
      Map<String, Object> model,
      List<String> styles,
      String rules,
      List<String> scripts) {
    String script = resources(scripts);
    Set<String> files = besides(model);
    String html = unchecked(template, model, resources(styles) + rules, script);
    PageValidator.check(html, script, files);
    return html;
  }

  /** Prints a page that nobody may get before it is checked. */
  static String unchecked(String template, Map<String, Object> model, String style, String script) {
    Map<String, Object> all = new HashMap<>(model);
    all.put("style", markup(style));
    all.put("script", markup(script));
    all.put("policy", markup(policy(style, script, !besides(model).isEmpty())));
    all.put("markdown", markdown());
    return printable(print(template, all));
  }

  /** Prints a part of a page. */
  public static String part(String template, Map<String, Object> model) {
    return printable(print(template, model));
  }

  /** Returns the addresses of the photos that are written beside the page. */
  private static Set<String> besides(Map<String, Object> model) {
    return model.getOrDefault("pictures", Map.of()) instanceof Map<?, ?> pictures
        ? pictures.values().stream()
            .flatMap(it -> it instanceof PageImage picture ? Stream.of(picture) : Stream.empty())
            .filter(PageImage::isBeside)
            .map(PageImage::src)
            .collect(Collectors.toUnmodifiableSet())
        : Set.of();
  }

  /**
   * Allows this style and this script by their hashes (Content Security Policy Level 3, 2.3.1), and
   * pictures inside the page; from beside it only where some are there ({@code 'self'} is what
   * browsers take for that, opened as a file too).
   */
  private static String policy(String style, String script, boolean beside) {
    return "default-src 'none'; style-src '"
        + hash(style)
        + "'; "
        + (script.isEmpty() ? "" : "script-src '" + hash(script) + "'; ")
        + (beside ? "img-src data: 'self'" : "img-src data:")
        + "; base-uri 'none'; form-action 'none'";
  }

  public static TemplateHTMLOutputModel markup(String html) {
    try {
      return HTMLOutputFormat.INSTANCE.fromMarkup(html);
    } catch (TemplateModelException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String print(String template, Map<String, Object> model) {
    PageWriter page = new PageWriter();
    try {
      TEMPLATES.getTemplate(template).process(model, page);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException(e);
    }
    return page.toString();
  }

  private static Configuration configuration() {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setTemplateLoader(new ClassTemplateLoader(Templates.class, FILES));
    configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
    configuration.setLocale(Locale.ROOT);
    configuration.setNumberFormat("computer");
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setLocalizedLookup(false);
    // Templates travel in the jar and never change.
    configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    return configuration;
  }

  private static TemplateMethodModelEx markdown() {
    return arguments -> {
      if (arguments.size() != 1) {
        throw new TemplateModelException("markdown takes one text");
      }
      return markup(Notes.toHtml(arguments.get(0).toString()));
    };
  }

  /** Returns files of style or script, one after another. */
  public static String resources(List<String> names) {
    return names.stream().map(Templates::resource).collect(Collectors.joining());
  }

  private static String resource(String name) {
    try (InputStream in = Templates.class.getResourceAsStream(FILES + name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its file " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Replaces what HTML cannot hold: control characters and halves of surrogate pairs. */
  private static String printable(String html) {
    if (!Ascii.hasBesides(html, c -> !isPrintable(c))) {
      return html;
    }
    StringBuilder kept = new StringBuilder(html.length());
    html.codePoints().map(c -> isPrintable(c) ? c : 0xFFFD).forEach(kept::appendCodePoint);
    return kept.toString();
  }

  private static boolean isPrintable(int c) {
    if (c == '\n' || c == '\t') {
      return true;
    }
    boolean bidi = c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    int type = Character.getType(c);
    return !bidi && type != Character.CONTROL && type != Character.SURROGATE;
  }
}
