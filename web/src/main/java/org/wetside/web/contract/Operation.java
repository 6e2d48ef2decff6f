package org.wetside.web.contract;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.router.Endpoint;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.wetside.web.api.Json;

/**
 * The declaration of one route under {@code /api}, ended by its handler:
 *
 * <pre>{@code
 * routes.addEndpoint(
 *     Operation.get("/api/mix", "Concentrate and water to measure out")
 *         .query(MixQuery.class, "dilution", "total")
 *         .answers(MixView.class, this::mix));
 * }</pre>
 *
 * <p>Body and view are typed by the classes that are declared, and a query word that is not
 * declared is refused; so the OpenAPI document cannot say anything else than what happens.
 */
public final class Operation {
  private static final String JSON = "application/json";

  private final HandlerType method;
  private final String path;
  private final Contract contract;

  private Operation(HandlerType method, String path, Contract contract) {
    this.method = method;
    this.path = path;
    this.contract = contract;
  }

  /** A route that only reads. */
  public static Operation get(String path, String summary) {
    return of(HandlerType.GET, path, summary);
  }

  /** A route that makes or does something. */
  public static Operation post(String path, String summary) {
    return of(HandlerType.POST, path, summary);
  }

  /** A route that says the whole of something anew. */
  public static Operation put(String path, String summary) {
    return of(HandlerType.PUT, path, summary);
  }

  /** A route that changes what is said and leaves the rest. */
  public static Operation patch(String path, String summary) {
    return of(HandlerType.PATCH, path, summary);
  }

  /** A route that takes something away. */
  public static Operation delete(String path, String summary) {
    return of(HandlerType.DELETE, path, summary);
  }

  private static Operation of(HandlerType method, String path, String summary) {
    return new Operation(method, path, new Contract(summary, List.of(), List.of(), List.of()));
  }

  /**
   * The query words it knows: the components of a record, read by {@link Query#read}.
   *
   * @param needed those without which it refuses
   */
  public Operation query(Class<? extends Record> words, String... needed) {
    Operation all = this;
    for (RecordComponent word : words.getRecordComponents()) {
      String name = word.getName();
      boolean must = List.of(needed).contains(name);
      all = all.with(all.contract.with(new Contract.Word(name, words, "", must)));
    }
    return all;
  }

  /** One query word it knows. */
  public Operation query(String name, String meaning) {
    return with(contract.with(new Contract.Word(name, null, meaning, false)));
  }

  /** A record, or an array of records, that it takes as JSON. */
  public Operation takes(Class<?> body) {
    return with(contract.with(new Contract.Content(JSON, body, "")));
  }

  /** Text it takes, of a kind other than JSON. */
  public Operation takes(String mediaType, String meaning) {
    return with(contract.with(new Contract.Content(mediaType, null, meaning)));
  }

  /** A view it may answer with, as JSON. */
  public Operation gives(HttpStatus status, Class<?> view) {
    return gives(status, JSON, view, "");
  }

  /** Text it may answer with, of a kind other than JSON. */
  public Operation gives(HttpStatus status, String mediaType, String meaning) {
    return gives(status, mediaType, null, meaning);
  }

  /** A view it may answer with under a media type of its own. */
  public Operation gives(HttpStatus status, String mediaType, Class<?> view) {
    return gives(status, mediaType, view, "");
  }

  private Operation gives(
      HttpStatus status, String mediaType, @Nullable Class<?> view, String meaning) {
    return with(
        contract.with(
            new Contract.Answer(status.getCode(), new Contract.Content(mediaType, view, meaning))));
  }

  /** Done, and nothing to say about it. */
  public Operation givesNothing() {
    return with(contract.with(new Contract.Answer(HttpStatus.NO_CONTENT.getCode(), null)));
  }

  /** Answers 200 with the view that the handler makes. */
  public <V> Endpoint answers(Class<V> view, Function<Context, V> handler) {
    return gives(HttpStatus.OK, view).handledBy(ctx -> ctx.json(handler.apply(ctx)));
  }

  /** Takes a body and answers 200 with the view that the handler makes of it. */
  public <B, V> Endpoint answers(Class<B> body, Class<V> view, BiFunction<Context, B, V> handler) {
    return takes(body)
        .gives(HttpStatus.OK, view)
        .handledBy(ctx -> ctx.json(handler.apply(ctx, Json.read(ctx, body))));
  }

  /** Takes a body and answers 201 with the view of what was made of it. */
  public <B, V> Endpoint creates(Class<B> body, Class<V> view, BiFunction<Context, B, V> handler) {
    return takes(body)
        .gives(HttpStatus.CREATED, view)
        .handledBy(
            ctx -> ctx.status(HttpStatus.CREATED).json(handler.apply(ctx, Json.read(ctx, body))));
  }

  /** The route, where the handler itself reads and answers as declared. */
  public Endpoint handledBy(Handler handler) {
    return Endpoint.create(method, path)
        .addMetadata(contract)
        .handler(
            ctx -> {
              contract.checkQuery(ctx);
              handler.handle(ctx);
            });
  }

  private Operation with(Contract more) {
    return new Operation(method, path, more);
  }
}
