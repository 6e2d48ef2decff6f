package org.wetside.web.trial;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Locale;
import org.wetside.app.Wetside;
import org.wetside.app.trial.FindTests;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.core.trial.Sighting;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;

/** Tests of baths and of washed film as JSON: {@code /api/tests/{subject}}. */
public final class TestApi implements Routes {
  private static final String SUBJECT = "/api/tests/{subject}";

  private final Wetside wetside;

  /** Over one open home. */
  public TestApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(SUBJECT, "The tests of a bottle, or of film: how, which runs, what came")
            .answers(TestsView.class, ctx -> TestsView.of(found(wetside, ctx), Units.METRIC)));
    routes.addEndpoint(
        Operation.post(SUBJECT, "Begin a test now, or write one down that was made")
            .creates(TestBody.class, TestView.class, this::begin));
    routes.addEndpoint(
        Operation.post(SUBJECT + "/seen", "Judge the test that runs; again changes nothing")
            .answers(SeenBody.class, TestView.class, this::judge));
  }

  private TestView begin(Context ctx, TestBody body) {
    return TestView.of(body.to(wetside, subject(ctx)), Units.METRIC);
  }

  private TestView judge(Context ctx, SeenBody body) {
    FindTests.Found found = found(wetside, ctx);
    if (body.seen() == null) {
      throw new BadValueException("what was seen", "nothing", "it is good, bad or unsure");
    }
    long test =
        body.test() != null
            ? body.test()
            : found
                .open()
                .orElseThrow(() -> new BadValueException("test", "none", "no test of it runs now"))
                .id();
    String note = body.note() == null ? "" : body.note();
    return TestView.of(
        wetside.bathTests().judgeTest().judge(test, Sighting.parse(body.seen()), note),
        Units.METRIC);
  }

  /** What an address names: a letter in any case, or film. */
  static String subject(Context ctx) {
    String said = ctx.pathParam("subject").strip();
    return said.equalsIgnoreCase(TestsView.FILM) ? TestsView.FILM : said.toUpperCase(Locale.ROOT);
  }

  /** The tests of what an address names. */
  static FindTests.Found found(Wetside wetside, Context ctx) {
    String subject = subject(ctx);
    return subject.equals(TestsView.FILM)
        ? wetside.bathTests().findTests().ofFilm()
        : wetside
            .bathTests()
            .findTests()
            .of(subject)
            .orElseThrow(
                () -> new NotFoundResponse("No bottle " + subject + " stands on the shelf."));
  }
}
