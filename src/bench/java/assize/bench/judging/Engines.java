package assize.bench.judging;

import assize.bench.judging.Standard.Item;
import assize.bench.judging.Standard.Kind;
import assize.measure.CieLab;
import assize.measure.Ciede2000;
import assize.measure.Conformity;
import com.google.common.collect.ImmutableList;
import dev.cel.common.CelFunctionDecl;
import dev.cel.common.CelOverloadDecl;
import dev.cel.common.CelValidationException;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelFunctionBinding;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelRuntimeFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.runtime.StatelessKieSession;

/**
 * The standard as rules of Drools (each with a finding to match) and as expressions of CEL (each
 * with the facts of one finding). They only count what meets; nothing is added up.
 */
public final class Engines {
  private static final String DRL =
      """
      package measured
      import assize.bench.judging.Engines.Vehicle
      import assize.bench.judging.Engines.Found
      import assize.bench.judging.Engines.Met
      import static assize.bench.judging.Engines.within
      import static assize.bench.judging.Engines.near
      """;

  private final Standard standard;
  private final Fleet fleet;
  private final StatelessKieSession drools;
  private final List<CelRuntime.Program> cel = new ArrayList<>();

  /** What both look at of a vehicle; Drools asks for beans. */
  public static final class Vehicle {
    private final int model;
    private final int year;

    Vehicle(int model, int year) {
      this.model = model;
      this.year = year;
    }

    public int getModel() {
      return model;
    }

    public int getYear() {
      return year;
    }
  }

  /** Counts. */
  public static final class Met {
    private long count;

    public void more() {
      count++;
    }
  }

  /**
   * One finding: a part number in capitals without spaces and dashes, a size in hundredths of a
   * millimeter, a color.
   */
  public static final class Found {
    private final int item;
    private final String word;
    private final String text;
    private final double value;
    private final double l;
    private final double a;
    private final double b;
    private final double u;

    Found(
        int item, String word, String text, double value, double l, double a, double b, double u) {
      this.item = item;
      this.word = word;
      this.text = text;
      this.value = value;
      this.l = l;
      this.a = a;
      this.b = b;
      this.u = u;
    }

    public int getItem() {
      return item;
    }

    public String getWord() {
      return word;
    }

    public String getText() {
      return text;
    }

    public double getValue() {
      return value;
    }

    public double getL() {
      return l;
    }

    public double getA() {
      return a;
    }

    public double getB() {
      return b;
    }

    public double getU() {
      return u;
    }
  }

  Engines(Standard standard, Fleet fleet) {
    this.standard = standard;
    this.fleet = fleet;
    this.drools = drools();
    try {
      compileCel();
    } catch (CelValidationException | CelEvaluationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Says whether a size meets. */
  public static boolean within(double value, double u, double least, double most) {
    return Conformity.meets(
        Conformity.probability(value, u, OptionalDouble.of(least), OptionalDouble.of(most)));
  }

  /** Says whether a color that was read meets. */
  public static boolean near(double l, double a, double b, double u, int color) {
    double[] lab = Standard.COLORS[color];
    double difference =
        Ciede2000.of(new CieLab(l, a, b), new CieLab(lab[0], lab[1], lab[2])).de00();
    return Conformity.meets(
        Conformity.probability(
            difference, u, OptionalDouble.empty(), OptionalDouble.of(Standard.TOLERANCE)));
  }

  private StatelessKieSession drools() {
    StringBuilder drl = new StringBuilder(DRL);
    for (int i = 0; i < Standard.ITEMS; i++) {
      Item item = standard.items().get(i);
      drl.append(
          """
          rule "%d" when
            $met : Met()
            Vehicle(model in (%s), year >= %d, year <= %d)
            Found(item == %d, %s)
          then $met.more(); end
          """
              .formatted(
                  i, models(item), item.fromYear(), item.toYear(), i, check(item, "matches")));
    }
    KieServices services = KieServices.Factory.get();
    KieFileSystem files = services.newKieFileSystem();
    files.write("src/main/resources/measured/standard.drl", drl.toString());
    KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
    if (builder.getResults().hasMessages(Message.Level.ERROR)) {
      throw new IllegalStateException(builder.getResults().toString());
    }
    KieBase base = services.newKieContainer(builder.getKieModule().getReleaseId()).getKieBase();
    return base.newStatelessKieSession();
  }

  private static String models(Item item) {
    List<String> models = new ArrayList<>();
    for (int i = 0; i < Standard.MODELS; i++) {
      if ((item.models() >> i & 1) == 1) {
        models.add(Integer.toString(i));
      }
    }
    return String.join(", ", models);
  }

  private static String check(Item item, String matches) {
    double least = item.millimeters() - 20;
    double most = item.millimeters() + 20;
    String pattern = "[AB]" + item.series() + "[0-9]{3}";
    return switch (item.kind()) {
      case FINISH -> "word == \"" + Standard.FINISHES[item.right()] + "\"";
      case PART_NUMBER ->
          matches.equals("matches")
              ? "text matches \"" + pattern + "\""
              : "text.matches(\"^" + pattern + "$\")";
      case SIZE -> "within(value, u, %s, %s)".formatted(least, most);
      case COLOR ->
          "(word == \"%s\" || word == \"\" && near(l, a, b, u, %d))"
              .formatted(Standard.color(item.right()), item.right());
    };
  }

  private void compileCel() throws CelValidationException, CelEvaluationException {
    var compiler = CelCompilerFactory.standardCelCompilerBuilder();
    for (String name : List.of("model", "year")) {
      compiler.addVar(name, SimpleType.INT);
    }
    for (String name : List.of("word", "text")) {
      compiler.addVar(name, SimpleType.STRING);
    }
    for (String name : List.of("value", "u", "l", "a", "b")) {
      compiler.addVar(name, SimpleType.DOUBLE);
    }
    var number = SimpleType.DOUBLE;
    compiler.addFunctionDeclarations(
        CelFunctionDecl.newFunctionDeclaration(
            "within",
            CelOverloadDecl.newGlobalOverload(
                "within_size", SimpleType.BOOL, number, number, number, number)),
        CelFunctionDecl.newFunctionDeclaration(
            "near",
            CelOverloadDecl.newGlobalOverload(
                "near_color", SimpleType.BOOL, number, number, number, number, SimpleType.INT)));
    CelCompiler compiling = compiler.build();
    CelRuntime runtime =
        CelRuntimeFactory.standardCelRuntimeBuilder()
            .addFunctionBindings(
                CelFunctionBinding.from(
                    "within_size",
                    ImmutableList.of(Double.class, Double.class, Double.class, Double.class),
                    of -> within((Double) of[0], (Double) of[1], (Double) of[2], (Double) of[3])),
                CelFunctionBinding.from(
                    "near_color",
                    ImmutableList.of(
                        Double.class, Double.class, Double.class, Double.class, Long.class),
                    of ->
                        near(
                            (Double) of[0],
                            (Double) of[1],
                            (Double) of[2],
                            (Double) of[3],
                            ((Long) of[4]).intValue())))
            .build();
    for (Item item : standard.items()) {
      String expression =
          "model in [%s] && year >= %d && year <= %d && %s"
              .formatted(models(item), item.fromYear(), item.toYear(), check(item, "method"));
      cel.add(runtime.createProgram(compiling.compile(expression).getAst()));
    }
  }

  private Found found(int v, int i) {
    int at = v * Standard.ITEMS + i;
    Kind kind = standard.items().get(i).kind();
    int word = fleet.words[at];
    String name =
        word < 0 ? "" : kind == Kind.FINISH ? Standard.FINISHES[word] : Standard.color(word);
    StringBuilder text = new StringBuilder();
    for (int c = fleet.numbers[at]; c < fleet.numbers[at + 1]; c++) {
      char sign = (char) fleet.characters[c];
      text.append(sign == ' ' || sign == '-' ? "" : sign);
    }
    double[] figures = fleet.figures;
    return new Found(
        i,
        name,
        text.toString().toUpperCase(Locale.ROOT),
        figures[3 * at],
        figures[3 * at],
        figures[3 * at + 1],
        figures[3 * at + 2],
        fleet.uncertain[at]);
  }

  /** The findings of some vehicles, made ready. */
  List<List<Found>> findings(int vehicles) {
    List<List<Found>> all = new ArrayList<>();
    for (int v = 0; v < vehicles; v++) {
      List<Found> findings = new ArrayList<>();
      for (int i = 0; i < Standard.ITEMS; i++) {
        if (fleet.shown[v * Standard.ITEMS + i]) {
          findings.add(found(v, i));
        }
      }
      all.add(findings);
    }
    return all;
  }

  long byDrools(List<List<Found>> findings) {
    long met = 0;
    for (int v = 0; v < findings.size(); v++) {
      Met counting = new Met();
      List<Object> facts = new ArrayList<>(findings.get(v));
      facts.add(new Vehicle(fleet.models[v], fleet.firstYear[v]));
      facts.add(counting);
      drools.execute(facts);
      met += counting.count;
    }
    return met;
  }

  long byCel(List<List<Found>> findings) {
    long met = 0;
    try {
      for (int v = 0; v < findings.size(); v++) {
        Map<String, Object> facts = new HashMap<>();
        facts.put("model", (long) fleet.models[v]);
        facts.put("year", (long) fleet.firstYear[v]);
        for (Found found : findings.get(v)) {
          facts.put("word", found.getWord());
          facts.put("text", found.getText());
          facts.put("value", found.getValue());
          facts.put("u", found.getU());
          facts.put("l", found.getL());
          facts.put("a", found.getA());
          facts.put("b", found.getB());
          met += (Boolean) cel.get(found.getItem()).eval(facts) ? 1 : 0;
        }
      }
    } catch (CelEvaluationException e) {
      throw new IllegalStateException(e);
    }
    return met;
  }
}
