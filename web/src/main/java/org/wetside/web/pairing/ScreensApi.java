package org.wetside.web.pairing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;

/** Paired screens over HTTP: {@code /api/screens}. */
public final class ScreensApi implements Routes {
  private static final String ALL = "/api/screens";

  private final Wetside wetside;
  private final Door door;

  /**
   * @param wetside knows the screens
   * @param door where the server is found
   */
  public ScreensApi(Wetside wetside, Door door) {
    this.wetside = wetside;
    this.door = door;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(ALL, "The screens that are let in over the network")
            .answers(PairedScreensView.class, ctx -> PairedScreensView.of(wetside)));
    routes.addEndpoint(
        Operation.post(ALL + "/code", "Make a code that lets one screen in, once")
            .answers(CodeView.class, ctx -> code()));
    routes.addEndpoint(
        Operation.delete(ALL + "/{screen}", "Shut a screen out; answers with those that are left")
            .answers(PairedScreensView.class, this::remove));
  }

  private CodeView code() {
    if (!door.reach().isLan()) {
      throw new CannotDoException("No other device can ask this program: start it with --lan.");
    }
    return CodeView.of(wetside.pairScreen().invite(), door);
  }

  private PairedScreensView remove(Context ctx) {
    wetside.removeScreen().remove(ScreensRoutes.number(ctx.pathParam("screen")));
    return PairedScreensView.of(wetside);
  }
}
