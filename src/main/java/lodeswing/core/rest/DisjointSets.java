package lodeswing.core.rest;

/** Sets without common members under union, with path halving (Tarjan and van Leeuwen 1984). */
final class DisjointSets {

  private final int[] parent;

  DisjointSets(int members) {
    parent = new int[members];
    for (int i = 0; i < members; i++) {
      parent[i] = i;
    }
  }

  int root(int member) {
    int m = member;
    while (parent[m] != m) {
      parent[m] = parent[parent[m]];
      m = parent[m];
    }
    return m;
  }

  /** Hangs one root below another, which stays the root. */
  void hang(int root, int below) {
    parent[root] = below;
  }
}
