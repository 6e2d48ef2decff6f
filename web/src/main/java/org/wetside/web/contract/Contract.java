package org.wetside.web.contract;

import io.javalin.http.Context;
import io.javalin.router.EndpointMetadata;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;

/**
 * What one route takes and gives; hangs on the endpoint itself, so that the document is made of
 * what is registered and of nothing else.
 *
 * @param summary what it does, in a few words
 * @param query the words it knows after the question mark
 * @param bodies each form of body it takes; empty when it takes none
 * @param answers each answer that is not a problem
 */
record Contract(String summary, List<Word> query, List<Content> bodies, List<Answer> answers)
    implements EndpointMetadata {
  /** A word of the query; what it means stands with the record it belongs to, or here. */
  record Word(String name, @Nullable Class<?> record, String said, boolean needed) {
    /** Looked up only when the document is made: start-up does without. */
    String meaning() {
      return record == null ? said : Meanings.of(record, name);
    }
  }

  /** One form of a body: a record as JSON, or text of another kind. */
  record Content(String mediaType, @Nullable Class<?> type, String meaning) {}

  /** An answer; without content for 204. */
  record Answer(int status, @Nullable Content content) {}

  Contract with(Word word) {
    return new Contract(summary, joined(query, word), bodies, answers);
  }

  Contract with(Content body) {
    return new Contract(summary, query, joined(bodies, body), answers);
  }

  Contract with(Answer answer) {
    return new Contract(summary, query, bodies, joined(answers, answer));
  }

  /** Refuses a word that is not declared: a misspelt one would otherwise be silently ignored. */
  void checkQuery(Context ctx) {
    for (String given : ctx.queryParamMap().keySet()) {
      if (query.stream().noneMatch(word -> word.name().equals(given))) {
        throw new BadValueException(
            "query parameter",
            given,
            query.isEmpty()
                ? "this address takes none"
                : "this address knows "
                    + query.stream().map(Word::name).collect(Collectors.joining(", ")));
      }
    }
  }

  private static <T> List<T> joined(List<T> some, T more) {
    List<T> all = new ArrayList<>(some);
    all.add(more);
    return List.copyOf(all);
  }
}
