package lodeswing.web.landscape;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.rig.Layout;
import lodeswing.web.layout.LayoutDocument;
import org.springframework.stereotype.Component;

/** Makes layouts ready once and holds the latest; two layouts that move alike share one. */
@Component
public final class Landscapes {

  /** A table of a crowded plate takes some ten megabytes. */
  private static final int HELD_IN_MEMORY = 24;

  private final LoadingCache<Key, Landscape> held =
      Caffeine.newBuilder().maximumSize(HELD_IN_MEMORY).build(key -> Landscape.of(key.layout));

  /** The landscape of a layout; made now where it is not held. */
  public Landscape of(LayoutDocument document) {
    return held.get(new Key(document.physicsKey(), document.layout()));
  }

  /** Equal where the physics is: the layout itself is only carried along. */
  private record Key(String physicsKey, Layout layout) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Key key && key.physicsKey.equals(physicsKey);
    }

    @Override
    public int hashCode() {
      return physicsKey.hashCode();
    }
  }
}
