package org.wetside.web.contract;

import io.javalin.http.Context;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Reads the query of an address into a record of texts; null is not said. */
public final class Query {
  private Query() {}

  /**
   * The record with what was said, each component by its own name.
   *
   * @param words a record whose components are nullable strings
   */
  public static <Q extends Record> Q read(Context ctx, Class<Q> words) {
    RecordComponent[] components = words.getRecordComponents();
    Object[] said = Arrays.stream(components).map(one -> ctx.queryParam(one.getName())).toArray();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      var constructor = words.getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return constructor.newInstance(said);
    } catch (InvocationTargetException refused) {
      if (refused.getCause() instanceof RuntimeException reason) {
        throw reason;
      }
      throw new IllegalStateException(refused);
    } catch (ReflectiveOperationException notOfTexts) {
      throw new IllegalStateException(words + " is not a record of texts", notOfTexts);
    }
  }
}
