package assize.judge;

import java.util.stream.LongStream;
import java.util.stream.Stream;

/** Seeds for properties: the same at every run. */
final class LongStreams {
  private LongStreams() {}

  static Stream<Long> upTo(long count) {
    return LongStream.range(0, count).boxed();
  }
}
