package org.wetside.cli;

import java.io.StringWriter;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.temporal.Temporal;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * A view record as JSON, the same text that the server's binding library makes of it.
 *
 * <p>A short command would spend longer on waking the binding library than on its answer, so the
 * records are walked here and only the library's writer is used; a test holds the two against each
 * other for every view.
 */
final class JsonText {
  private final JsonGenerator json;

  private JsonText(JsonGenerator json) {
    this.json = json;
  }

  /** The view as indented JSON. */
  static String of(@Nullable Object view) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(new Indented(), text)) {
      new JsonText(json).write(view);
    }
    return text.toString();
  }

  private void write(@Nullable Object value) {
    if (value == null) {
      json.writeNull();
    } else if (value instanceof Record view) {
      writeRecord(view);
    } else if (value instanceof Iterable<?> list) {
      json.writeStartArray();
      for (Object element : list) {
        write(element);
      }
      json.writeEndArray();
    } else if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        json.writeName(String.valueOf(entry.getKey()));
        write(entry.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof Optional<?> maybe) {
      write(maybe.orElse(null));
    } else {
      writeScalar(value);
    }
  }

  private void writeRecord(Record view) {
    json.writeStartObject();
    for (RecordComponent component : view.getClass().getRecordComponents()) {
      json.writeName(component.getName());
      write(valueOf(component, view));
    }
    json.writeEndObject();
  }

  private void writeScalar(Object value) {
    if (value instanceof Boolean flag) {
      json.writeBoolean(flag);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Long number) {
      json.writeNumber(number);
    } else if (value instanceof Double number) {
      json.writeNumber(number);
    } else if (value instanceof BigDecimal number) {
      json.writeNumber(number);
    } else if (value instanceof Enum<?> constant) {
      json.writeString(constant.name());
    } else if (value instanceof CharSequence || value instanceof Temporal) {
      json.writeString(value.toString());
    } else if (value instanceof double[] numbers) {
      json.writeArray(numbers, 0, numbers.length);
    } else {
      throw new IllegalArgumentException("a view may not hold a " + value.getClass().getName());
    }
  }

  private static @Nullable Object valueOf(RecordComponent component, Record view) {
    try {
      Method accessor = component.getAccessor();
      accessor.setAccessible(true);
      return accessor.invoke(view);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("cannot read " + component, e);
    }
  }

  /** Asks the writer for indentation. */
  private static final class Indented extends ObjectWriteContext.Base {
    @Override
    public tools.jackson.core.PrettyPrinter getPrettyPrinter() {
      return new DefaultPrettyPrinter();
    }

    @Override
    public boolean hasPrettyPrinter() {
      return true;
    }
  }
}
