package lodeswing.web.body;

/** A shape whose values are JSON objects. */
public sealed interface RecordShape extends Shape permits ObjectShape, OneOfShape {

  /** The name of its schema among the components. */
  String name();

  /**
   * The members that an object already read has, for looking up what may be changed in it.
   *
   * @param body an object that this shape has read
   */
  ObjectShape shapeOf(Body body);
}
