package org.wetside.web.pairing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.app.screens.Screen;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;
import org.wetside.web.rolls.Days;

/** The page about screens, on any screen that is let in: show a code, see who is in, remove. */
public final class ScreensRoutes implements Routes {
  private static final String PAGE = "/screens";

  private final Wetside wetside;
  private final Pages pages;
  private final Door door;

  /**
   * @param wetside knows the screens
   * @param pages draws the page
   * @param door where the server is found
   */
  public ScreensRoutes(Wetside wetside, Pages pages, Door door) {
    this.wetside = wetside;
    this.pages = pages;
    this.door = door;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(PAGE, ctx -> pages.show(ctx, "screens.jte", page(ctx)));
    routes.post(PAGE + "/code", this::showCode);
    routes.post(PAGE + "/remove", this::remove);
  }

  private ScreensPage page(Context ctx) {
    Days days = Days.of(wetside.clock());
    List<Screen> screens = wetside.findScreens().all();
    List<String> addresses = door.reach().isLan() ? door.addresses() : List.of();
    Optional<ScreensPage.CodePart> code =
        addresses.isEmpty()
            ? Optional.empty()
            : wetside
                .pairScreen()
                .invitation()
                .map(shown -> ScreensPage.CodePart.of(shown, addresses));
    return new ScreensPage(
        pages.sheet(ctx, Place.EQUIPMENT, "Screens"),
        door,
        screens.stream().map(one -> ScreensPage.ScreenLine.of(one, days)).toList(),
        code);
  }

  private void showCode(Context ctx) {
    if (!door.reach().isLan()) {
      throw new CannotDoException("No other device can ask this program: start it with --lan.");
    }
    wetside.pairScreen().invite();
    ctx.redirect(PAGE, HttpStatus.SEE_OTHER);
  }

  private void remove(Context ctx) {
    long id = number(String.valueOf(ctx.formParam("screen")));
    String name =
        wetside.findScreens().all().stream()
            .filter(one -> one.id() == id)
            .map(Screen::name)
            .findFirst()
            .orElse("The screen");
    wetside.removeScreen().remove(id);
    pages.goSaying(ctx, PAGE, name + " is not let in any more.");
  }

  /** The number of a screen as it was typed or sent. */
  static long number(String text) {
    try {
      return Long.parseLong(text.strip());
    } catch (NumberFormatException notOne) {
      throw new BadValueException("screen", text, "its number, as the list shows it");
    }
  }
}
