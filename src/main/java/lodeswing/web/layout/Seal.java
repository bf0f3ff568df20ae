package lodeswing.web.layout;

import java.util.LinkedHashMap;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.TextShape;

/**
 * What makes a layout its owner's alone, stored with it and never answered.
 *
 * @param owner names the owner
 * @param salt what nobody else knows, so that the layout's id cannot be guessed from its content
 */
record Seal(String owner, String salt) {

  /** The member of stored layouts that has it. */
  static final String MEMBER = "seal";

  /** How it is stored. */
  static final ObjectShape SHAPE =
      ObjectShape.named("Seal", "Whose a private layout is.")
          .required("owner", new TextShape(200), "The owner.")
          .required("salt", new TextShape(40), "What nobody else knows.")
          .build();

  static Seal of(Body stored) {
    return new Seal(stored.text("owner"), stored.text("salt"));
  }

  Body body() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("owner", owner);
    members.put("salt", salt);
    return Body.of(members);
  }
}
