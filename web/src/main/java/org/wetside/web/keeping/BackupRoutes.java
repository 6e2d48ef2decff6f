package org.wetside.web.keeping;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.nio.file.Files;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.app.keeping.KeptBackup;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The page of backups, {@code /equipment/backups}, and the same under {@code /api}. */
public final class BackupRoutes implements Routes {
  private static final String PAGE = "/equipment/backups";
  private static final String API = "/api/backups";
  private static final String TYPE = "application/vnd.sqlite3";

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the page
   */
  public BackupRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(PAGE, this::show);
    routes.post(PAGE, this::make);
    routes.get(PAGE + "/{name}", this::download);
    routes.addEndpoint(
        Operation.get(API, "The backups this home keeps, the newest first")
            .answers(BackupsView.class, ctx -> BackupsView.of(wetside)));
    routes.addEndpoint(
        Operation.post(API, "Make a backup now, in the folder of the home")
            .gives(HttpStatus.CREATED, BackupView.class)
            .handledBy(
                ctx ->
                    ctx.status(HttpStatus.CREATED)
                        .json(BackupView.of(wetside.makeBackup().byHand()))));
    routes.addEndpoint(
        Operation.get(API + "/{name}", "One backup as a file: a SQLite database")
            .gives(HttpStatus.OK, TYPE, "the whole file")
            .handledBy(this::download));
    routes.addEndpoint(
        Operation.get("/api/check", "Whether what is stored is whole and agrees with itself")
            .answers(FindingsView.class, ctx -> FindingsView.of(wetside.checkData())));
  }

  private void show(Context ctx) {
    pages.show(
        ctx,
        "equipment/backups.jte",
        BackupsPage.of(
            pages.sheet(ctx, Place.EQUIPMENT, "Backups"),
            BackupsView.of(wetside),
            wetside.clock()));
  }

  private void make(Context ctx) {
    try {
      pages.goSaying(ctx, PAGE, "Kept " + wetside.makeBackup().byHand().name() + ".");
    } catch (CannotDoException refused) {
      pages.goSaying(ctx, PAGE, "No backup was made: " + refused.getMessage());
    }
  }

  private void download(Context ctx) throws IOException {
    String name = ctx.pathParam("name");
    KeptBackup backup =
        wetside
            .keptBackups()
            .find(name)
            .orElseThrow(() -> new NotFoundResponse("There is no backup " + name + "."));
    ctx.contentType(TYPE);
    ctx.header("Content-Disposition", "attachment; filename=\"" + backup.name() + "\"");
    ctx.header("Cache-Control", "no-store");
    ctx.result(Files.newInputStream(backup.file()));
  }
}
