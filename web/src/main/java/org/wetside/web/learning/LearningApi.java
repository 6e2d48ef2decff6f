package org.wetside.web.learning;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.learning.Learning;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;

/** Judging and learning over HTTP: {@code /api/rolls/{number}/judgement}, {@code /api/learned}. */
public final class LearningApi implements Routes {
  private static final String JUDGEMENT = "/api/rolls/{number}/judgement";
  private static final String LEARNED = "/api/learned";

  private final Wetside wetside;

  /** Over one open home. */
  public LearningApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.put(JUDGEMENT, "Judge the negatives of a roll, in the place of an earlier word")
            .answers(JudgeBody.class, JudgementView.class, this::judge));
    routes.addEndpoint(
        Operation.delete(JUDGEMENT, "Take the judgement of a roll back; answers with what it said")
            .answers(
                JudgementView.class,
                ctx -> JudgementView.of(learning().judgeRoll().takeBack(number(ctx)))));
    routes.addEndpoint(
        Operation.get(LEARNED, "What was learned from negatives, with the control chart")
            .answers(LearnedView.class, ctx -> learned()));
    routes.addEndpoint(
        Operation.post(LEARNED + "/in-use", "Use the factor of a film in a developer")
            .answers(
                FactorBody.class,
                LearnedView.class,
                (ctx, body) -> {
                  var unused =
                      learning()
                          .acceptFactor()
                          .accept(said("film", body.film()), said("developer", body.developer()));
                  return learned();
                }));
    routes.addEndpoint(
        Operation.delete(LEARNED + "/in-use", "Use what is printed again for a film in a developer")
            .query(FactorQuery.class, "film", "developer")
            .answers(LearnedView.class, this::takeBack));
    routes.addEndpoint(
        Operation.post(LEARNED + "/index-in-use", "Use the own index of a film in a developer")
            .answers(
                FactorBody.class,
                LearnedView.class,
                (ctx, body) -> {
                  var unused =
                      learning()
                          .acceptIndex()
                          .accept(said("film", body.film()), said("developer", body.developer()));
                  return learned();
                }));
    routes.addEndpoint(
        Operation.delete(LEARNED + "/index-in-use", "Use no own index for a film in a developer")
            .query(FactorQuery.class, "film", "developer")
            .answers(LearnedView.class, this::takeIndexBack));
  }

  private JudgementView judge(Context ctx, JudgeBody body) {
    return JudgementView.of(learning().judgeRoll().judge(number(ctx), body.seen(), body.used()));
  }

  private LearnedView takeBack(Context ctx) {
    FactorQuery query = Query.read(ctx, FactorQuery.class);
    learning()
        .acceptFactor()
        .takeBack(said("film", query.film()), said("developer", query.developer()));
    return learned();
  }

  private LearnedView takeIndexBack(Context ctx) {
    FactorQuery query = Query.read(ctx, FactorQuery.class);
    learning()
        .acceptIndex()
        .takeBack(said("film", query.film()), said("developer", query.developer()));
    return learned();
  }

  private LearnedView learned() {
    return LearnedView.of(learning().seeLearned().now());
  }

  private Learning learning() {
    return wetside.learning();
  }

  private static String number(Context ctx) {
    return ctx.pathParam("number");
  }

  private static String said(String thing, @Nullable String text) {
    if (text == null || text.isBlank()) {
      throw new BadValueException(thing, "", "say which");
    }
    return text.strip();
  }
}
