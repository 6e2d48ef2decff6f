package org.wetside.web.contract;

import java.lang.reflect.AnnotatedArrayType;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * JSON Schemas of view records, by reflection: name, type, whether it may be null, the unit its
 * name ends with and what its Javadoc says. Each record becomes one named schema.
 */
final class Schemas {
  /** Which way a record goes. An answer has every field; what may be left out of a body may. */
  enum Way {
    SENT,
    ANSWERED
  }

  private static final String OURS = "org.wetside.web.";

  private final Map<String, Object> named = new TreeMap<>();

  /** All records met so far, by name. */
  Map<String, Object> named() {
    return named;
  }

  /** The schema of a record, or of an array of records. */
  Map<String, Object> of(Class<?> type, Way way) {
    Class<?> element = type.getComponentType();
    return element == null ? reference(type, way) : array(reference(element, way));
  }

  private Map<String, Object> reference(Class<?> type, Way way) {
    String name = nameOf(type, way);
    if (!named.containsKey(name)) {
      named.put(name, Map.of()); // a record may hold itself
      named.put(name, object(type, way));
    }
    return new LinkedHashMap<>(Map.of("$ref", "#/components/schemas/" + name));
  }

  /** Place and name; types of the routes around it are left out. */
  static String nameOf(Class<?> type, Way way) {
    StringBuilder name = new StringBuilder(type.getSimpleName());
    for (Class<?> around = type.getEnclosingClass();
        around != null && around.isRecord();
        around = around.getEnclosingClass()) {
      name.insert(0, around.getSimpleName() + ".");
    }
    String place = type.getPackageName();
    name.insert(0, (place.startsWith(OURS) ? place.substring(OURS.length()) : place) + ".");
    boolean said = way == Way.ANSWERED || name.toString().endsWith("Body");
    return said ? name.toString() : name + "Body";
  }

  private Map<String, Object> object(Class<?> type, Way way) {
    Map<String, Object> properties = new LinkedHashMap<>();
    List<String> required = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      properties.put(component.getName(), property(type, component, way));
      if (way == Way.ANSWERED || !mayBeNull(component.getAnnotatedType())) {
        required.add(component.getName());
      }
    }
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("type", "object");
    say(schema, Meanings.of(type));
    schema.put("properties", properties);
    if (!required.isEmpty()) {
      schema.put("required", required);
    }
    if (way == Way.SENT) {
      schema.put("additionalProperties", false);
    }
    return schema;
  }

  private Map<String, Object> property(Class<?> type, RecordComponent component, Way way) {
    Map<String, Object> schema = value(component.getAnnotatedType(), way);
    String meaning = Meanings.of(type, component.getName());
    Optional<Unit> unit = holdsNumbers(schema) ? Unit.of(component.getName()) : Optional.empty();
    unit.ifPresent(known -> schema.put("x-unit", known.symbol()));
    say(schema, meaning);
    return schema;
  }

  private static boolean holdsNumbers(Map<String, Object> schema) {
    Object held = schema.containsKey("items") ? schema.get("items") : schema;
    String type = held instanceof Map<?, ?> one ? String.valueOf(one.get("type")) : "";
    return type.contains("number") || type.contains("integer");
  }

  private static void say(Map<String, Object> schema, String meaning) {
    if (!meaning.isEmpty()) {
      schema.put("description", meaning);
    }
  }

  private Map<String, Object> value(AnnotatedType type, Way way) {
    Map<String, Object> schema = bare(type, way);
    if (!mayBeNull(type)) {
      return schema;
    }
    Map<String, Object> nullable = new LinkedHashMap<>();
    if (schema.containsKey("$ref")) {
      nullable.put("anyOf", List.of(schema, Map.of("type", "null")));
      return nullable;
    }
    nullable.putAll(schema);
    nullable.put("type", List.of(String.valueOf(schema.get("type")), "null"));
    return nullable;
  }

  private Map<String, Object> bare(AnnotatedType type, Way way) {
    if (type instanceof AnnotatedArrayType array) {
      return array(value(array.getAnnotatedGenericComponentType(), way));
    }
    if (type instanceof AnnotatedParameterizedType generic) {
      AnnotatedType[] held = generic.getAnnotatedActualTypeArguments();
      return held.length == 2 ? map(value(held[1], way)) : array(value(held[0], way));
    }
    Class<?> plain = (Class<?>) type.getType();
    return plain.isRecord() ? reference(plain, way) : scalar(plain);
  }

  private static Map<String, Object> scalar(Class<?> plain) {
    Map<String, Object> schema = new LinkedHashMap<>();
    if (plain == String.class) {
      schema.put("type", "string");
    } else if (plain == boolean.class || plain == Boolean.class) {
      schema.put("type", "boolean");
    } else if (plain == int.class || plain == Integer.class) {
      schema.put("type", "integer");
      schema.put("format", "int32");
    } else if (plain == long.class || plain == Long.class) {
      schema.put("type", "integer");
      schema.put("format", "int64");
    } else if (plain == double.class || plain == Double.class) {
      schema.put("type", "number");
      schema.put("format", "double");
    } else if (plain.isEnum()) {
      schema.put("type", "string");
      schema.put("enum", Arrays.stream(plain.getEnumConstants()).map(Object::toString).toList());
    } else if (plain != Object.class) { // of which every value is one
      throw new IllegalStateException("a view may not hold a " + plain.getName());
    }
    return schema;
  }

  private static Map<String, Object> array(Map<String, Object> items) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("type", "array");
    schema.put("items", items);
    return schema;
  }

  private static Map<String, Object> map(Map<String, Object> values) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("type", "object");
    schema.put("additionalProperties", values);
    return schema;
  }

  private static boolean mayBeNull(AnnotatedType type) {
    return type.isAnnotationPresent(Nullable.class);
  }
}
