package lodeswing.core.rest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lodeswing.core.motion.Motion;

/** The connected unsafe regions of a grid. */
final class UnsafeZones {

  private final ScanGrid grid;
  private final int[] zone;
  private final List<UnsafeZone> list = new ArrayList<>();

  UnsafeZones(Motion motion, ScanGrid grid) {
    this.grid = grid;
    this.zone = new int[grid.nodes()];
    Arrays.fill(zone, -1);
    int[] stack = new int[grid.nodes()];
    for (int n = 0; n < grid.nodes(); n++) {
      if (!grid.safe(n) && zone[n] < 0) {
        list.add(spread(motion, n, stack));
      }
    }
  }

  int count() {
    return list.size();
  }

  List<UnsafeZone> list() {
    return list;
  }

  /** The zone of a node, or -1. */
  int zoneOf(int node) {
    return zone[node];
  }

  /** The zone that reaches into a cell, by its lowest unsafe corner, or -1. */
  int zoneOfCell(int lower) {
    int found = -1;
    double lowest = Double.POSITIVE_INFINITY;
    for (int k = 0; k < 4; k++) {
      int corner = grid.corner(lower, k);
      if (zone[corner] >= 0 && (found < 0 || grid.potential[corner] < lowest)) {
        found = zone[corner];
        lowest = grid.potential[corner];
      }
    }
    return found;
  }

  private UnsafeZone spread(Motion motion, int start, int[] stack) {
    int index = list.size();
    int lowest = start;
    double least = Double.POSITIVE_INFINITY;
    int top = 0;
    stack[top++] = start;
    zone[start] = index;
    while (top > 0) {
      int n = stack[--top];
      boolean rim = false;
      for (int k = 0; k < 8; k++) {
        int m = grid.neighbour(n, k);
        if (m >= 0 && grid.safe(m)) {
          rim = true;
        } else if (m >= 0 && zone[m] < 0) {
          zone[m] = index;
          stack[top++] = m;
        }
      }
      if (rim && grid.potential[n] < least) {
        lowest = n;
        least = grid.potential[n];
      }
    }
    double[] state = {grid.q0(lowest), grid.q1(lowest), 0, 0};
    double[] plan = new double[4];
    motion.toPlan(state, plan);
    UnsafeZone.Border border = grid.border(lowest);
    double potential = grid.potential[lowest];
    return new UnsafeZone(
        index, border, state[0], state[1], plan[0], plan[1], potential, holds(lowest));
  }

  /** Whether no safe place beside a node lies lower: a bob that comes there stays. */
  private boolean holds(int node) {
    boolean lower = false;
    for (int k = 0; k < 8; k++) {
      int m = grid.neighbour(node, k);
      lower |= m >= 0 && grid.safe(m) && grid.potential[m] < grid.potential[node];
    }
    return !lower;
  }
}
