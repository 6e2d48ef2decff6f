package org.wetside.web.mixing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.mixing.DriftReadings;
import org.wetside.app.mixing.Mix;
import org.wetside.app.mixing.PredictDrift;
import org.wetside.app.mixing.Temper;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.thermal.TemperingQuestion;
import org.wetside.core.thermal.TimedReading;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;

/** {@code GET /api/mix}, {@code GET /api/temper}, {@code POST /api/drift}. */
public final class MixingRoutes implements Routes {
  private final Wetside wetside;

  /** Over one open home, for the minima typed into it. */
  public MixingRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/api/mix", ctx -> ctx.json(mix(ctx)));
    routes.get("/api/temper", ctx -> ctx.json(temper(ctx)));
    routes.post("/api/drift", ctx -> ctx.json(drift(ctx)));
  }

  private MixView mix(Context ctx) {
    MixQuery query =
        new MixQuery(
            ctx.queryParam("dilution"),
            ctx.queryParam("total"),
            ctx.queryParam("of"),
            ctx.queryParam("rolls"),
            ctx.queryParam("minimum"));
    return MixView.of(new Mix().answer(query.question(wetside.keepMinimum()::find)), Units.METRIC);
  }

  private static TemperView temper(Context ctx) {
    TemperingQuestion question =
        new TemperQuery(
                ctx.queryParam("to"),
                ctx.queryParam("total"),
                ctx.queryParam("cold"),
                ctx.queryParam("hot"),
                ctx.queryParam("ice"),
                ctx.queryParam("stock"),
                ctx.queryParam("vessel"))
            .question();
    return TemperView.of(question, new Temper().answer(question), Units.METRIC);
  }

  /** One reading in a body of JSON. */
  record ReadingBody(double seconds, double temperatureC) {}

  /** The body of a question about a drift: the readings, and the rest as it would be typed. */
  record DriftBody(
      List<ReadingBody> readings,
      @Nullable String room,
      @Nullable String aim,
      @Nullable String within,
      @Nullable String from,
      @Nullable String to,
      @Nullable String ahead) {}

  /** Takes JSON, or the same CSV as the command line with the rest in the query. */
  private static DriftView drift(Context ctx) {
    String type = String.valueOf(ctx.contentType());
    if (type.startsWith("text/csv")) {
      DriftQuery query =
          new DriftQuery(
              ctx.queryParam("room"),
              ctx.queryParam("aim"),
              ctx.queryParam("within"),
              ctx.queryParam("from"),
              ctx.queryParam("to"),
              ctx.queryParam("ahead"));
      return answer(query, DriftReadings.parse(ctx.body()));
    }
    DriftBody body = Json.read(ctx, DriftBody.class);
    List<TimedReading> readings = new ArrayList<>();
    for (ReadingBody reading : body.readings() == null ? List.<ReadingBody>of() : body.readings()) {
      readings.add(
          new TimedReading(
              TimeSpan.ofSeconds(reading.seconds()),
              Temperature.ofCelsius(reading.temperatureC())));
    }
    return answer(
        new DriftQuery(
            body.room(), body.aim(), body.within(), body.from(), body.to(), body.ahead()),
        readings);
  }

  private static DriftView answer(DriftQuery query, List<TimedReading> readings) {
    return DriftView.of(new PredictDrift().answer(query.question(readings)));
  }
}
