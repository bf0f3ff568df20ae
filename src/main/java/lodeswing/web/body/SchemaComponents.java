package lodeswing.web.body;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Collects the schemas of named shapes while a document is written. */
public final class SchemaComponents {
  private final SortedMap<String, Map<String, Object>> schemas = new TreeMap<>();

  /** The schemas by name. */
  public SortedMap<String, Map<String, Object>> schemas() {
    return Collections.unmodifiableSortedMap(schemas);
  }

  /** A reference to a named schema, made at its first use. */
  Map<String, Object> reference(String name, Supplier<Map<String, Object>> schema) {
    if (!schemas.containsKey(name)) {
      schemas.put(name, Map.of());
      schemas.put(name, schema.get());
    }
    var reference = new LinkedHashMap<String, Object>();
    reference.put("$ref", "#/components/schemas/" + name);
    return reference;
  }
}
