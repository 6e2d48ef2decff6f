package org.wetside.web.strip;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.curves.FamilyAnswer;
import org.wetside.app.curves.ReadFamily;
import org.wetside.core.strip.KeptStrip;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;

/** Strips that were measured, over HTTP: {@code /api/curves}. */
public final class StripApi implements Routes {
  private static final String ALL = "/api/curves";
  private static final String ONE = ALL + "/{curve}";

  private final Wetside wetside;

  /** Over one open home. */
  public StripApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(ALL, "The strips of film that were measured")
            .answers(StripsView.class, ctx -> StripsView.of(wetside)));
    routes.addEndpoint(
        Operation.post(ALL, "Write a strip down; answers with what its curve shows")
            .creates(
                StripBody.class,
                ReadStripView.class,
                (ctx, body) ->
                    read(
                        wetside
                            .sensitometry()
                            .keepStrips()
                            .keep(body.strip(wetside.densitometry())))));
    routes.addEndpoint(
        Operation.get(ALL + "/family", "What strips of several times show: times for N-2 to N+2")
            .query(FamilyQuery.class, "curves")
            .answers(
                FamilyView.class,
                ctx -> FamilyView.of(family(Query.read(ctx, FamilyQuery.class)))));
    routes.addEndpoint(
        Operation.post(ALL + "/times", "Put a time of a family among the user's own, as measured")
            .creates(
                MeasuredTimeBody.class,
                MeasuredTimeView.class,
                (ctx, body) ->
                    MeasuredTimeView.of(
                        wetside
                            .sensitometry()
                            .keepMeasuredTime()
                            .keep(family(body.query()), body.wanted(), body.index()))));
    routes.addEndpoint(
        Operation.get(ONE, "One strip, and what its curve shows")
            .answers(ReadStripView.class, ctx -> read(known(ctx))));
    routes.addEndpoint(
        Operation.put(ONE, "Write a strip down anew; the old one stays on file out of use")
            .answers(
                StripBody.class,
                ReadStripView.class,
                (ctx, body) ->
                    read(
                        wetside
                            .sensitometry()
                            .keepStrips()
                            .keepInPlaceOf(known(ctx).id(), body.strip(wetside.densitometry())))));
    routes.addEndpoint(
        Operation.delete(ONE, "Take a strip out of use; answers with those left")
            .answers(StripsView.class, this::withdrawn));
  }

  private ReadStripView read(KeptStrip kept) {
    return ReadStripView.of(kept, wetside.densitometry());
  }

  private FamilyAnswer family(FamilyQuery query) {
    return new ReadFamily()
        .answer(wetside.sensitometry().keepStrips().find(query.numbers()), query.aim());
  }

  private StripsView withdrawn(Context ctx) {
    boolean there = wetside.sensitometry().keepStrips().withdraw(known(ctx).id());
    if (!there) {
      throw new NotFoundResponse("There is no curve " + ctx.pathParam("curve") + ".");
    }
    return StripsView.of(wetside);
  }

  private KeptStrip known(Context ctx) {
    return known(wetside, ctx.pathParam("curve"));
  }

  /**
   * The strip of a number in an address.
   *
   * @throws NotFoundResponse when there is none
   */
  static KeptStrip known(Wetside wetside, String number) {
    Optional<KeptStrip> found =
        number.matches("\\d{1,15}")
            ? wetside.sensitometry().keepStrips().find(Long.parseLong(number))
            : Optional.empty();
    return found.orElseThrow(() -> new NotFoundResponse("There is no curve " + number + "."));
  }
}
