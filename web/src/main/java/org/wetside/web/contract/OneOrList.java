package org.wetside.web.contract;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.function.Function;

/**
 * How a route about one thing answers: with its view, or with a list of one where {@code as=list}
 * is asked for, so that whoever reads lists (the commands do) reads one shape only.
 *
 * @param view of the one
 * @param list view of many
 * @param listed makes the second of the first
 */
public record OneOrList<V, L>(Class<V> view, Class<L> list, Function<List<V>, L> listed) {
  /** Declares it. */
  public Operation on(Operation operation, HttpStatus status) {
    return operation
        .query("as", "list: in a list of one, in the shape that lists have")
        .gives(status, view)
        .gives(status, list);
  }

  /** Answers as asked. */
  public void answer(Context ctx, V one) {
    ctx.json("list".equals(ctx.queryParam("as")) ? listed.apply(List.of(one)) : one);
  }
}
