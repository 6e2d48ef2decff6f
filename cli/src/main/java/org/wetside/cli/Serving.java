package org.wetside.cli;

import io.javalin.util.JavalinBindException;
import java.io.PrintWriter;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.app.home.Home;
import org.wetside.app.home.ServerAddress;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Reach;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/** Serves one open home until the program is told to stop. */
final class Serving {
  private static final int TOKEN_BYTES = 24;
  private static final int LAST_PORT = 65_535;

  private Serving() {}

  /**
   * Serves, and closes the home at the end, which is a signal to the program or an interrupt of
   * this thread.
   *
   * @param port as typed
   * @param reach from where it can be asked
   * @param afterwards done last of all
   */
  static int until(
      Wetside wetside, String port, Reach reach, PrintWriter out, Runnable afterwards) {
    Closing closing = new Closing();
    closing.add(afterwards);
    closing.add(wetside::close);
    try {
      // Before anything is written that somebody has to take away again.
      Runtime.getRuntime().addShutdownHook(new Thread(closing::now, "stop"));
      open(wetside, port, reach, out, closing);
      closing.await();
    } catch (InterruptedException toldToStop) {
      // Closing waits as well: the flag goes up again after it.
      closing.now();
      Thread.currentThread().interrupt();
    } finally {
      closing.now();
    }
    return ExitCode.DONE;
  }

  private static void open(
      Wetside wetside, String port, Reach reach, PrintWriter out, Closing closing) {
    Home home = wetside.home();
    String token = freshToken();
    WebServer server = start(wetside, portOf(port), token, reach);
    closing.add(server::close);
    String address = "http://127.0.0.1:" + server.port();
    wetside.bench().resume();
    if (!home.isDemo()) {
      wetside.dailyBackup().begin();
    }
    wetside.servingAt(address);
    closing.add(() -> ServerAddress.remove(home));
    new ServerAddress(address, token).write(home);
    out.println("Wetside is at " + server.address());
    sayWhereElse(server, out);
    out.println("Data: " + home.folder());
    out.println("Ctrl-C stops it; a run that is under way goes on by the clock.");
    out.flush();
  }

  private static void sayWhereElse(WebServer server, PrintWriter out) {
    if (!server.addresses().isEmpty()) {
      out.println("On this network: " + String.join(" ", server.addresses()));
      out.println("Let a screen in at " + server.address() + "screens");
    }
  }

  private static WebServer start(Wetside wetside, int port, String token, Reach reach) {
    try {
      return WebServer.start(
          wetside, new WebOptions(port, wetside.home().isDemo(), Optional.of(token), reach));
    } catch (JavalinBindException taken) {
      throw new CannotDoException(
          "port "
              + port
              + (reach == Reach.LAN_TLS && port > 0 ? " or " + (port + 1) : "")
              + " is taken by another program. Say another one with --port, or 0 for any free one.",
          taken);
    }
  }

  private static int portOf(String text) {
    try {
      int port = Integer.parseInt(text.strip());
      if (port >= 0 && port <= LAST_PORT) {
        return port;
      }
    } catch (NumberFormatException notOne) {
      throw badPort(text);
    }
    throw badPort(text);
  }

  private static BadValueException badPort(String text) {
    return new BadValueException(
        "port", text, "a whole number from 0 (any free one) to " + LAST_PORT);
  }

  private static String freshToken() {
    byte[] bytes = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }
}
