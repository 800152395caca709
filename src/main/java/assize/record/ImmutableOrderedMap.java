package assize.record;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * A map that never changes and keeps the order in which it was filled. Names and what they stand
 * for each lie side by side, so that many records are gone through faster than from link to link.
 */
final class ImmutableOrderedMap<V> extends AbstractMap<String, V> {
  private final List<String> names;
  private final List<V> values;
  private final Map<String, V> byName;

  private ImmutableOrderedMap(Map<String, V> map) {
    this.names = List.copyOf(map.keySet());
    this.values = List.copyOf(map.values());
    this.byName = Map.copyOf(map);
  }

  static <V> Map<String, V> copyOf(Map<String, V> map) {
    return map instanceof ImmutableOrderedMap ? map : new ImmutableOrderedMap<>(map);
  }

  @Override
  public int size() {
    return names.size();
  }

  @Override
  public @Nullable V get(Object name) {
    return byName.get(name);
  }

  @Override
  public boolean containsKey(Object name) {
    return byName.containsKey(name);
  }

  @Override
  public List<V> values() {
    return values;
  }

  @Override
  public void forEach(BiConsumer<? super String, ? super V> action) {
    for (int i = 0; i < names.size(); i++) {
      action.accept(names.get(i), values.get(i));
    }
  }

  @Override
  public Set<Map.Entry<String, V>> entrySet() {
    return new Entries();
  }

  private final class Entries extends AbstractSet<Map.Entry<String, V>> {
    @Override
    public int size() {
      return names.size();
    }

    @Override
    public Iterator<Map.Entry<String, V>> iterator() {
      return new Iterator<>() {
        private int next;

        @Override
        public boolean hasNext() {
          return next < names.size();
        }

        @Override
        public Map.Entry<String, V> next() {
          if (!hasNext()) {
            throw new NoSuchElementException();
          }
          int at = next++;
          return Map.entry(names.get(at), values.get(at));
        }
      };
    }
  }
}
