package assize.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import assize.production.AttributeValue;
import assize.production.VehicleAttribute;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Descriptions of vehicles, joined as by trying every pair over and over. */
class JoiningTest {
  @Test
  void joinsAsTryingEveryPairDoes() {
    Random random = new Random(1);
    for (int round = 0; round < 300; round++) {
      List<VehicleGroup> some = new ArrayList<>(kinds(2 + round % 4));
      some.removeIf(it -> random.nextInt(3) == 0);
      assertThat(Joining.of(some)).as("round %s", round).isEqualTo(byPairs(some));
    }
  }

  @Test
  void joinsThousandsOfKinds() {
    List<VehicleGroup> all = kinds(13);
    assertThat(Joining.of(all)).hasSize(1);
    List<VehicleGroup> most = Joining.of(all.subList(1, all.size()));
    assertThat(most).hasSizeLessThan(100);
    assertThat(most.stream().mapToInt(JoiningTest::size).sum()).isEqualTo(all.size() - 1);
  }

  /** Returns how many kinds a description is of. */
  private static int size(VehicleGroup one) {
    return one.values().values().stream().mapToInt(Set::size).reduce(1, (a, b) -> a * b);
  }

  /** Every way of having some equipment. */
  private static List<VehicleGroup> kinds(int equipment) {
    List<VehicleGroup> kinds = new ArrayList<>();
    for (int bits = 0; bits < 1 << equipment; bits++) {
      Map<VehicleAttribute, Set<AttributeValue>> values = new LinkedHashMap<>();
      for (int i = 0; i < equipment; i++) {
        values.put(
            new VehicleAttribute.OfEquipment("e" + i),
            Set.of(new AttributeValue.Fitted((bits >> i & 1) == 0)));
      }
      kinds.add(new VehicleGroup(values));
    }
    return kinds;
  }

  private static List<VehicleGroup> byPairs(List<VehicleGroup> some) {
    List<VehicleGroup> joined = new ArrayList<>(some);
    boolean again = true;
    while (again) {
      again = false;
      for (int i = 0; i < joined.size() && !again; i++) {
        for (int j = i + 1; j < joined.size() && !again; j++) {
          Optional<VehicleGroup> both = joined.get(i).joined(joined.get(j));
          if (both.isPresent()) {
            joined.set(i, both.get());
            joined.remove(j);
            again = true;
          }
        }
      }
    }
    return joined;
  }
}
