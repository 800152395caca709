package assize.bench;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a benchmark is measured against: another one of the same class. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Repeatable(Baseline.All.class)
public @interface Baseline {
  /** The method that does the same in a plain way. */
  String value();

  /** What is compared, in a few words, as a row of the table begins. */
  String says();

  /** The ratio of speeds that is aimed at: 0.5 is half as fast as the other. */
  double goal();

  /** Several of them. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.METHOD)
  @interface All {
    Baseline[] value();
  }
}
