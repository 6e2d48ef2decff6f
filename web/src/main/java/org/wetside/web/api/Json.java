package org.wetside.web.api;

import io.javalin.http.Context;
import io.javalin.json.JsonMapper;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.wetside.core.quantity.BadValueException;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;

/**
 * The one JSON mapper: view records in, JSON out, and back. Unknown fields are refused, so that a
 * misspelt one is not silently dropped. The mapper itself is made at first use: pages do without.
 */
public final class Json implements JsonMapper {

  /** Writes the JSON of a view record, as the interface and {@code --json} print it. */
  public static String write(Object view) {
    return Mapper.ONE.writeValueAsString(view);
  }

  /**
   * Reads a record from a request's body.
   *
   * @throws BadValueException when the body is not JSON or does not fit the record
   */
  public static <T> T read(Context ctx, Class<T> type) {
    return read(ctx.body(), type);
  }

  /**
   * Reads a record.
   *
   * @throws BadValueException when the text is not JSON or does not fit the record
   */
  public static <T> T read(String json, Class<T> type) {
    try {
      T read = Mapper.ONE.readValue(json, type);
      if (read == null) {
        throw new BadValueException("body", shortened(json), "it holds nothing");
      }
      return read;
    } catch (JacksonException unreadable) {
      throw new BadValueException("body", shortened(json), unreadable.getOriginalMessage());
    }
  }

  @Override
  public String toJsonString(Object view, Type type) {
    return write(view);
  }

  @Override
  public InputStream toJsonStream(Object view, Type type) {
    return new ByteArrayInputStream(write(view).getBytes(StandardCharsets.UTF_8));
  }

  @Override
  @SuppressWarnings("TypeParameterUnusedInFormals") // the signature is Javalin's
  public <T> T fromJsonString(String json, Type type) {
    return Mapper.ONE.readValue(json, Mapper.ONE.constructType(type));
  }

  @Override
  @SuppressWarnings("TypeParameterUnusedInFormals") // the signature is Javalin's
  public <T> T fromJsonStream(InputStream json, Type type) {
    return Mapper.ONE.readValue(json, Mapper.ONE.constructType(type));
  }

  @Override
  public void writeToOutputStream(Stream<?> views, OutputStream out) {
    Mapper.ONE.writeValue(out, views.toList());
  }

  private static String shortened(String json) {
    int enoughToRecogniseIt = 80;
    return json.length() <= enoughToRecogniseIt
        ? json
        : json.substring(0, enoughToRecogniseIt) + "…";
  }

  /** Loaded with the first JSON, not with the first page. */
  private static final class Mapper {
    private static final tools.jackson.databind.json.JsonMapper ONE =
        tools.jackson.databind.json.JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private Mapper() {}
  }
}
