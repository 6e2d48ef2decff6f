package org.wetside.web.pairing;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import java.util.regex.Pattern;
import org.wetside.app.Wetside;
import org.wetside.app.screens.Known;
import org.wetside.web.api.Json;
import org.wetside.web.api.Problem;
import org.wetside.web.page.FormTokens;
import org.wetside.web.page.Pages;

/**
 * Lets on what this machine or a paired screen asks for; everybody else gets the pairing page and
 * what it is drawn with, whatever they ask for.
 */
public final class Doorway {
  private static final Pattern OPEN =
      Pattern.compile(
          "/pair|/certificate(/.*)?|/favicon\\.ico"
              + "|/static/[0-9a-f]+/(wetside\\.css|mark\\.svg|faces/[a-z0-9.-]+\\.woff2)");
  private static final Pattern OPEN_WITHOUT_ENCRYPTION =
      Pattern.compile(OPEN.pattern().replace("/pair|", ""));

  private final Wetside wetside;
  private final Pages pages;
  private final Door door;

  /**
   * @param wetside knows the screens
   * @param pages draws the pairing page
   * @param door where the server is found
   */
  public Doorway(Wetside wetside, Pages pages, Door door) {
    this.wetside = wetside;
    this.pages = pages;
    this.door = door;
  }

  /** Ends a request that may not go on. */
  public void check(Context ctx) {
    if (Asker.isThisMachine(ctx)) {
      return;
    }
    if (!door.own().isNearby(Asker.address(ctx))) {
      throw new ForbiddenResponse("This program answers only to devices of its own network.");
    }
    if (door.isInTheOpen(ctx)) {
      keepToTheCertificate(ctx);
      return;
    }
    Optional<String> key = ScreenCookie.read(ctx);
    Known who = key.<Known>map(wetside.findScreens()::byKey).orElseGet(Known.Unknown::new);
    if (who instanceof Known.LetIn in) {
      FormTokens.bind(ctx, key.orElseThrow());
      wetside.findScreens().seen(in.screen());
      StillIn.remember(
          ctx, () -> wetside.findScreens().byKey(key.orElseThrow()) instanceof Known.LetIn);
    } else if (!OPEN.matcher(ctx.path()).matches()) {
      refuse(ctx, PairPage.why(who, key.isPresent(), wetside.clock()));
    }
  }

  private void keepToTheCertificate(Context ctx) {
    if (!OPEN_WITHOUT_ENCRYPTION.matcher(ctx.path()).matches()) {
      ctx.redirect("/certificate", HttpStatus.SEE_OTHER);
      ctx.skipRemainingHandlers();
    }
  }

  private void refuse(Context ctx, String why) {
    ctx.status(HttpStatus.FORBIDDEN);
    if (ctx.path().startsWith("/api")) {
      Problem problem = new Problem("not paired", why, HttpStatus.FORBIDDEN.getCode(), 2);
      ctx.result(Json.write(problem)).contentType(Problem.MEDIA_TYPE);
    } else {
      pages.show(ctx, "pair.jte", PairPage.unpaired(pages.bareSheet(ctx, "Not paired"), ctx, why));
    }
    ctx.skipRemainingHandlers();
  }
}
