package org.wetside.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.wetside.app.CannotDoException;
import org.wetside.app.NoAnswerException;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.api.Json;
import org.wetside.web.api.Problem;
import org.wetside.web.page.FailurePage;
import org.wetside.web.page.Pages;

/**
 * What a person or a program meets when something went wrong: for pages what happened, what was
 * kept and what to do; under {@code /api} a {@link Problem}. The trace goes to the log only.
 */
final class Failures {
  private static final Logger LOG = LoggerFactory.getLogger(Failures.class);
  private static final int NOT_FOUND = 404;
  private static final int FIRST_SERVER_ERROR = 500;

  private final Pages pages;

  Failures(Pages pages) {
    this.pages = pages;
  }

  void register(RoutesConfig routes) {
    routes.exception(
        BadValueException.class,
        (refusal, ctx) -> answer(ctx, Problem.badInput(String.valueOf(refusal.getMessage()))));
    routes.exception(
        NoAnswerException.class,
        (limit, ctx) -> answer(ctx, Problem.noAnswer(String.valueOf(limit.getMessage()))));
    routes.exception(
        CannotDoException.class,
        (reason, ctx) -> answer(ctx, Problem.cannotDo(String.valueOf(reason.getMessage()))));
    routes.exception(HttpResponseException.class, (known, ctx) -> answer(ctx, problemOf(known)));
    routes.exception(
        Exception.class,
        (unforeseen, ctx) -> {
          LOG.error("{} {}", ctx.method(), ctx.path(), unforeseen);
          answer(ctx, Problem.couldNot("Something went wrong inside the program."));
        });
  }

  /**
   * Answers a request that failed. One whose answer has already begun is left as it is: words of
   * ours at its end would make half an answer look like a whole one.
   */
  void answer(Context ctx, Problem problem) {
    try {
      if (ctx.res().isCommitted()) {
        LOG.warn("{} {} failed after its answer began", ctx.method(), ctx.path());
      } else {
        say(ctx, problem);
      }
    } catch (RuntimeException over) {
      // The server has taken the request back: there is nobody left to answer, and a failure here
      // would be answered by this again.
      LOG.warn("a request failed after it was over: {}", problem.detail(), over);
    }
  }

  private void say(Context ctx, Problem problem) {
    ctx.status(problem.status());
    if (ctx.path().startsWith("/api")) {
      ctx.result(Json.write(problem)).contentType(Problem.MEDIA_TYPE);
      return;
    }
    String title = problem.status() == NOT_FOUND ? "Not here" : "Not done";
    FailurePage page =
        FailurePage.of(pages.sheet(ctx, Optional.empty(), title), problem, ctx.method().name());
    pages.show(ctx, "failure.jte", page);
  }

  private static Problem problemOf(HttpResponseException known) {
    String detail = String.valueOf(known.getMessage());
    if (known.getStatus() == NOT_FOUND) {
      return Problem.notFound(
          detail.startsWith("Endpoint") || detail.equals("Not Found")
              ? "There is nothing at this address."
              : detail);
    }
    if (known.getStatus() >= FIRST_SERVER_ERROR) {
      return Problem.couldNot(detail);
    }
    return new Problem("refused", detail, known.getStatus(), 2);
  }
}
