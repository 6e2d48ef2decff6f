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
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;

/** {@code GET /api/mix}, {@code GET /api/temper}, {@code POST /api/drift}. */
public final class MixingRoutes implements Routes {
  private final Wetside wetside;

  /** Over one open home, for the minima typed into it. */
  public MixingRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get("/api/mix", "How much concentrate and how much water to measure out")
            .query(MixQuery.class, "dilution", "total")
            .answers(MixView.class, this::mix));
    routes.addEndpoint(
        Operation.get("/api/temper", "Which waters to pour together for a temperature")
            .query(TemperQuery.class, "to", "total")
            .answers(TemperView.class, MixingRoutes::temper));
    routes.addEndpoint(
        Operation.post("/api/drift", "Where a bath that is left alone is going")
            .query(DriftQuery.class)
            .takes(DriftBody.class)
            .takes("text/csv", "one reading a row; the rest stands in the query")
            .answers(DriftView.class, MixingRoutes::drift));
  }

  private MixView mix(Context ctx) {
    MixQuery query = Query.read(ctx, MixQuery.class);
    return MixView.of(new Mix().answer(query.question(wetside.keepMinimum()::find)), Units.METRIC);
  }

  private static TemperView temper(Context ctx) {
    TemperingQuestion question = Query.read(ctx, TemperQuery.class).question();
    return TemperView.of(question, new Temper().answer(question), Units.METRIC);
  }

  /**
   * One reading in a body of JSON.
   *
   * @param seconds since any beginning, the same for all
   * @param temperatureC of the bath
   */
  record ReadingBody(double seconds, double temperatureC) {}

  /**
   * The body of a question about a drift: the readings, and the rest as it would be typed.
   *
   * @param readings two or more
   * @param room surroundings, for example {@code 15C}
   * @param aim centre of the band asked for, for example {@code 20C}
   * @param within half width of the band, for example {@code 0.5K}; 0.5 K when not said
   * @param from beginning of the stretch whose mean is asked, for example {@code 5:00}
   * @param to its end
   * @param ahead moment whose temperature is asked, counted like the readings
   */
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
      return answer(Query.read(ctx, DriftQuery.class), DriftReadings.parse(ctx.body()));
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
