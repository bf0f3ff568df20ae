package lodeswing.core.rig;

/** Everything that decides the motion: a rig on the bench or the plane idealisation of papers. */
public sealed interface Layout permits BenchLayout, TextbookLayout {

  /** How many magnets stand on the plate. */
  int magnetCount();

  /** Whether nothing takes energy out: then a bob that swings never comes to rest. */
  boolean lossless();

  /** The same without magnets on the plate and steel below it; the bob keeps its own. */
  Layout withoutMagnets();
}
