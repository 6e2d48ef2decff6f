package org.wetside.web.pairing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.authority.Authority;
import org.wetside.web.Routes;
import org.wetside.web.page.Pages;
import org.wetside.web.rolls.Days;

/** The certificate of the authority, and the steps by which a phone is told to trust it. */
public final class CertificateRoutes implements Routes {
  /** Where the certificate is loaded from. */
  static final String FILE = "/certificate/wetside.crt";

  private final Wetside wetside;
  private final Pages pages;
  private final Door door;
  private final @Nullable Encryption encryption;

  /**
   * @param wetside says which day it is
   * @param pages draws the page
   * @param door where the server is found
   * @param encryption null when nothing is encrypted
   */
  public CertificateRoutes(
      Wetside wetside, Pages pages, Door door, @Nullable Encryption encryption) {
    this.wetside = wetside;
    this.pages = pages;
    this.door = door;
    this.encryption = encryption;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/certificate", this::show);
    routes.get(FILE, this::load);
  }

  private void show(Context ctx) {
    Authority authority = authority();
    boolean onThePhone = door.isInTheOpen(ctx) && !Asker.isThisMachine(ctx);
    List<String> open = door.openAddresses();
    String address = open.isEmpty() ? "" : open.get(0) + "/certificate";
    List<String> secure = door.addresses();
    pages.show(
        ctx,
        "certificate.jte",
        new CertificatePage(
            pages.bareSheet(ctx, "Trust this machine"),
            authority.certificate().getSubjectX500Principal().getName().replace("CN=", ""),
            parts(authority.fingerprint()),
            Days.of(wetside.clock()).day(authority.certificate().getNotAfter().toInstant()),
            secure.isEmpty() ? "" : secure.get(0) + "/pair",
            onThePhone || address.isEmpty() ? null : QrDrawing.of(address),
            address));
  }

  private void load(Context ctx) {
    ctx.contentType("application/x-x509-ca-cert");
    ctx.header("Content-Disposition", "attachment; filename=\"wetside.crt\"");
    ctx.header("Cache-Control", "no-store");
    ctx.result(authority().encoded());
  }

  private Authority authority() {
    if (encryption == null) {
      throw new NotFoundResponse("There is no certificate: the program was started without --tls.");
    }
    return encryption.authority();
  }

  /** In parts of four pairs, which are easier to compare than one long line. */
  private static List<String> parts(String fingerprint) {
    return Arrays.asList(fingerprint.split("(?<=\\G.{11}):"));
  }
}
