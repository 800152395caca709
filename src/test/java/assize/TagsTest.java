package assize;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.AnnotatedElement;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Holds the tags of DEVELOPERS.md, by which the build selects tests. */
class TagsTest {
  private static final String BROWSER = "assize.report.html.Browser";

  /** Returns the test classes that the build runs by their names. */
  private static List<JavaClass> tests() {
    return new ClassFileImporter()
        .importPackages("assize").stream()
            .filter(it -> it.getSimpleName().endsWith("Test"))
            .toList();
  }

  @Test
  void aClassThatUsesTheBrowserSaysSo() {
    List<Class<?>> users =
        tests().stream()
            .filter(
                it ->
                    it.getDirectDependenciesFromSelf().stream()
                        .anyMatch(to -> to.getTargetClass().getName().equals(BROWSER)))
            .<Class<?>>map(JavaClass::reflect)
            .toList();
    assertThat(users).isNotEmpty().allMatch(it -> isTagged("browser", it));
  }

  @Test
  void aTestWithAnExpectedFileSaysSo() {
    List<JavaMethod> users =
        tests().stream()
            .flatMap(it -> it.getMethods().stream())
            .filter(
                it ->
                    it.getMethodCallsFromSelf().stream()
                        .anyMatch(call -> call.getTargetOwner().isEquivalentTo(Pinned.class)))
            .toList();
    assertThat(users).isNotEmpty().allMatch(it -> isTagged("pinned", it.reflect()));
  }

  private static boolean isTagged(String tag, AnnotatedElement at) {
    return Stream.of(at.getAnnotationsByType(Tag.class)).anyMatch(it -> it.value().equals(tag));
  }
}
