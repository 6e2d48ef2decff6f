package org.wetside.web.times;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.times.OwnLine;
import org.wetside.app.times.TimeRequest;
import org.wetside.app.times.TypeLeaflet;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;

/** The interface of Times: {@code /api/time} and {@code /api/times…}. */
public final class TimesRoutes implements Routes {
  private static final String CSV = "text/csv";

  private final Wetside wetside;

  /**
   * @param wetside the open home
   */
  public TimesRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get("/api/time", "A development time, with its steps, standing and bands")
            .query(TimeQuery.class, "film", "developer")
            .answers(TimeView.class, this::time));
    routes.addEndpoint(
        Operation.get("/api/times", "Your own times, as JSON or as a file to exchange")
            .query("format", "csv: as a file; the same as Accept: text/csv")
            .query("csv", "yes: the file as text within the JSON")
            .gives(HttpStatus.OK, TimesView.class)
            .gives(HttpStatus.OK, CSV, "a file that can be taken in again")
            .handledBy(this::list));
    routes.addEndpoint(
        Operation.post("/api/times", "Keep one line from a leaflet")
            .answers(LineBody.class, TimesView.class, (ctx, body) -> keep(body)));
    routes.addEndpoint(
        Operation.post("/api/times/import", "Take in a file of times, the whole of it or nothing")
            .takes(CSV, "UTF-8; columns as GET /api/times?format=csv gives them")
            .answers(TimesView.class, this::takeIn));
    routes.addEndpoint(
        Operation.post("/api/times/leaflet", "Keep a printed table of times")
            .answers(LeafletBody.class, TimesView.class, (ctx, body) -> keep(body)));
    routes.addEndpoint(
        Operation.post("/api/times/withdraw", "Use an entry no more; it stays in the record")
            .query("id", "of the entry, for example own-3")
            .answers(TimesView.class, this::withdraw));
  }

  private TimeView time(Context ctx) {
    return TimeView.of(
        wetside.askTime().answer(request(ctx)), wetside.learning().seeLearned()::now);
  }

  static TimeRequest request(Context ctx) {
    return Query.read(ctx, TimeQuery.class).request();
  }

  private void list(Context ctx) {
    String accept = String.valueOf(ctx.header("Accept"));
    boolean file = accept.contains(CSV) || "csv".equals(ctx.queryParam("format"));
    if (file) {
      ctx.header("Content-Disposition", "attachment; filename=\"times.csv\"");
      ctx.result(wetside.exportTimes().csv()).contentType(CSV + "; charset=utf-8");
      return;
    }
    TimesView view = TimesView.listed(own());
    ctx.json(
        "yes".equals(ctx.queryParam("csv")) ? view.withCsv(wetside.exportTimes().csv()) : view);
  }

  private List<OwnTimeView> own() {
    return wetside.listTimes().inUse().stream().map(OwnTimeView::of).toList();
  }

  private TimesView keep(LineBody body) {
    return TimesView.kept(KeptView.of("time", wetside.addTime().add(body.line())));
  }

  private TimesView keep(LeafletBody body) {
    return TimesView.kept(KeptView.of("leaflet", wetside.typeLeaflet().keep(body.leaflet())));
  }

  private TimesView takeIn(Context ctx) {
    return TimesView.kept(KeptView.of("file", wetside.importTimes().from(ctx.bodyAsBytes())));
  }

  private TimesView withdraw(Context ctx) {
    wetside.withdrawTime().withdraw(text(ctx.queryParam("id")));
    return TimesView.listed(own());
  }

  /**
   * A line as JSON; what is absent is not stated.
   *
   * @param film as it is usually written
   * @param developer as it is usually written
   * @param dilution {@code stock}, {@code 1+1} or a letter
   * @param ei exposure index
   * @param temp temperature with its unit
   * @param minutes {@code 9:45}, {@code 9.75}, or a printed range {@code 7:00-8:00}
   * @param vessel small, large, rotary or tray
   * @param agitation as the leaflet words it
   * @param contrast what contrast it aims at, as printed
   * @param source where it is printed; without it the time counts as from memory
   */
  record LineBody(
      @Nullable String film,
      @Nullable String developer,
      @Nullable String dilution,
      @Nullable String ei,
      @Nullable String temp,
      @Nullable String minutes,
      @Nullable String vessel,
      @Nullable String agitation,
      @Nullable String contrast,
      @Nullable String source) {
    OwnLine line() {
      return new OwnLine(
          text(film),
          text(developer),
          text(dilution),
          text(ei),
          text(temp),
          text(minutes),
          text(vessel),
          text(agitation),
          text(contrast),
          text(source));
    }
  }

  /**
   * A row of a leaflet as JSON.
   *
   * @param head the dilution or the exposure index of the row
   * @param minutes one time for each temperature; empty where none is printed
   */
  record RowBody(@Nullable String head, @Nullable List<@Nullable String> minutes) {}

  /**
   * A leaflet as JSON: what is common, temperatures across, rows of dilutions or indexes.
   *
   * @param common what holds for every cell
   * @param down {@code indexes}, else the rows are dilutions
   * @param temperatures across, each with its unit
   * @param rows down
   */
  record LeafletBody(
      LineBody common,
      @Nullable String down,
      @Nullable List<String> temperatures,
      @Nullable List<RowBody> rows) {
    TypeLeaflet.Leaflet leaflet() {
      List<TypeLeaflet.Row> typed = new ArrayList<>();
      for (RowBody row : rows == null ? List.<RowBody>of() : rows) {
        List<String> cells = new ArrayList<>();
        if (row.minutes() != null) {
          row.minutes().forEach(cell -> cells.add(text(cell)));
        }
        typed.add(new TypeLeaflet.Row(text(row.head()), cells));
      }
      return new TypeLeaflet.Leaflet(
          common.line(),
          "indexes".equals(down) ? TypeLeaflet.Down.INDEXES : TypeLeaflet.Down.DILUTIONS,
          temperatures == null ? List.of() : temperatures,
          typed);
    }
  }

  private static String text(@Nullable String value) {
    return value == null ? "" : value;
  }
}
