package org.wetside.web.times;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.times.OwnLine;
import org.wetside.app.times.TimeRequest;
import org.wetside.app.times.TypeLeaflet;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;

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
    routes.get("/api/time", ctx -> ctx.json(TimeView.of(wetside.askTime().answer(request(ctx)))));
    routes.get("/api/times", this::list);
    routes.post("/api/times", ctx -> keep(ctx, Json.read(ctx, LineBody.class)));
    routes.post(
        "/api/times/import",
        ctx ->
            ctx.json(
                TimesView.kept(
                    KeptView.of("file", wetside.importTimes().from(ctx.bodyAsBytes())))));
    routes.post("/api/times/leaflet", this::leaflet);
    routes.post("/api/times/withdraw", this::withdraw);
  }

  static TimeRequest request(Context ctx) {
    return new TimeRequest(
        said(ctx, "film"),
        said(ctx, "developer"),
        said(ctx, "dilution"),
        said(ctx, "ei"),
        said(ctx, "temp"),
        said(ctx, "vessel"),
        said(ctx, "format"),
        said(ctx, "agitation"),
        said(ctx, "aim"),
        said(ctx, "beyond").equals("yes"));
  }

  private static String said(Context ctx, String name) {
    String value = ctx.queryParam(name);
    return value == null ? "" : value;
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

  private void keep(Context ctx, LineBody body) {
    ctx.json(TimesView.kept(KeptView.of("time", wetside.addTime().add(body.line()))));
  }

  private void withdraw(Context ctx) {
    String id = said(ctx, "id");
    wetside.withdrawTime().withdraw(id);
    ctx.json(TimesView.listed(own()));
  }

  private void leaflet(Context ctx) {
    LeafletBody body = Json.read(ctx, LeafletBody.class);
    ctx.json(TimesView.kept(KeptView.of("leaflet", wetside.typeLeaflet().keep(body.leaflet()))));
  }

  /** A line as JSON; what is absent is not stated. */
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

  /** A row of a leaflet as JSON. */
  record RowBody(@Nullable String head, @Nullable List<@Nullable String> minutes) {}

  /** A leaflet as JSON: what is common, temperatures across, rows of dilutions or indexes. */
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
