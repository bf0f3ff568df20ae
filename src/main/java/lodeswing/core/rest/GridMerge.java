package lodeswing.core.rest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Floods the grid from below and notes at which level wells and unsafe zones join.
 *
 * <p>Nodes are taken in the order of their potential and joined with those of their eight
 * neighbours that are already under water. Unsafe zones are there from the beginning; a rest point
 * is joined to the corners of its cell. A join of two bodies of water that both hold a sink is a
 * pass. Source: Carr, Snoeyink and Axen, Computational Geometry 24 (2003) 75 (join tree).
 */
final class GridMerge {

  private static final int INDEX_BITS = 22;

  private final ScanGrid grid;
  private final UnsafeZones zones;
  private final List<CriticalPoint> minima;
  private final DisjointSets sets;
  private final int[] sink;
  private final boolean[] wet;
  private final List<Pass> passes = new ArrayList<>();

  private GridMerge(ScanGrid grid, UnsafeZones zones, List<CriticalPoint> minima) {
    this.grid = grid;
    this.zones = zones;
    this.minima = minima;
    int members = grid.nodes() + minima.size();
    this.sets = new DisjointSets(members);
    this.sink = new int[members];
    this.wet = new boolean[members];
    Arrays.fill(sink, -1);
  }

  /** The passes, lowest first; sinks are the minima in their order, then the zones. */
  static List<Pass> passes(ScanGrid grid, UnsafeZones zones, List<CriticalPoint> minima) {
    GridMerge merge = new GridMerge(grid, zones, minima);
    merge.floodZones();
    merge.placeMinima();
    merge.floodNodes();
    return merge.passes;
  }

  private void floodZones() {
    int[] first = new int[zones.count()];
    Arrays.fill(first, -1);
    for (int n = 0; n < grid.nodes(); n++) {
      int zone = zones.zoneOf(n);
      if (zone >= 0) {
        wet[n] = true;
        if (first[zone] < 0) {
          first[zone] = n;
          sink[n] = minima.size() + zone;
        } else {
          sets.hang(n, first[zone]);
        }
      }
    }
  }

  private void placeMinima() {
    for (int m = 0; m < minima.size(); m++) {
      int member = grid.nodes() + m;
      wet[member] = true;
      sink[member] = m;
      CriticalPoint p = minima.get(m);
      int lower = grid.cellCorner(p.q0(), p.q1());
      for (int k = 0; k < 4; k++) {
        int corner = grid.corner(lower, k);
        if (wet[corner]) {
          join(member, corner, p.potential(), 0);
        }
      }
    }
  }

  private void floodNodes() {
    List<List<Integer>> atCorner = minimaAtCorners();
    for (long key : order()) {
      int n = (int) (key & ((1L << INDEX_BITS) - 1));
      wet[n] = true;
      double level = grid.potential[n];
      for (int k = 0; k < 8; k++) {
        int m = grid.neighbour(n, k);
        if (m >= 0 && wet[m]) {
          join(n, m, level, n);
        }
      }
      if (cornerSlot[n] > 0) {
        for (int m : atCorner.get(cornerSlot[n] - 1)) {
          join(n, grid.nodes() + m, Math.max(level, minima.get(m).potential()), n);
        }
      }
    }
  }

  private int[] cornerSlot = new int[0];

  private List<List<Integer>> minimaAtCorners() {
    cornerSlot = new int[grid.nodes()];
    List<List<Integer>> at = new ArrayList<>();
    for (int m = 0; m < minima.size(); m++) {
      int lower = grid.cellCorner(minima.get(m).q0(), minima.get(m).q1());
      for (int k = 0; k < 4; k++) {
        int corner = grid.corner(lower, k);
        if (cornerSlot[corner] == 0) {
          at.add(new ArrayList<>());
          cornerSlot[corner] = at.size();
        }
        at.get(cornerSlot[corner] - 1).add(m);
      }
    }
    return at;
  }

  /** Safe nodes by rising potential: level in the high bits of a key, node in the low ones. */
  private long[] order() {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    int count = 0;
    for (int n = 0; n < grid.nodes(); n++) {
      if (grid.safe(n)) {
        low = Math.min(low, grid.potential[n]);
        high = Math.max(high, grid.potential[n]);
        count++;
      }
    }
    double scale = high > low ? (double) (1L << (62 - INDEX_BITS)) / (high - low) : 0;
    long[] keys = new long[count];
    int at = 0;
    for (int n = 0; n < grid.nodes(); n++) {
      if (grid.safe(n)) {
        keys[at++] = ((long) ((grid.potential[n] - low) * scale) << INDEX_BITS) | n;
      }
    }
    Arrays.sort(keys);
    return keys;
  }

  private void join(int one, int other, double level, int node) {
    int a = sets.root(one);
    int b = sets.root(other);
    if (a == b) {
      return;
    }
    if (sink[a] >= 0 && sink[b] >= 0) {
      passes.add(new Pass(level, grid.roughness(node), sink[a], sink[b], Pass.NO_SADDLE));
    }
    if (sink[a] >= 0) {
      sets.hang(b, a);
    } else {
      sets.hang(a, b);
    }
  }
}
