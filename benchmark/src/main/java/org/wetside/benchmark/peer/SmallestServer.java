package org.wetside.benchmark.peer;

import io.javalin.Javalin;

/** The smallest program on the same web server: answers 200 with one word on {@code /}. */
public final class SmallestServer {
  private SmallestServer() {}

  /**
   * Serves until killed and says where.
   *
   * @param arguments {@code once}: ends after one answer to itself, as a training
   */
  public static void main(String[] arguments) throws java.io.IOException {
    Javalin server =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.startup.showOldJavalinVersionWarning = false;
              config.startup.startupWatcherEnabled = false;
              config.jetty.host = "127.0.0.1";
              config.jetty.port = 0;
              config.routes.get("/", ctx -> ctx.html("hello"));
            });
    int port = server.start().port();
    System.out.println("Serving at http://127.0.0.1:" + port + "/");
    if (arguments.length > 0) {
      try (java.io.InputStream page =
          java.net.URI.create("http://127.0.0.1:" + port + "/").toURL().openStream()) {
        page.readAllBytes();
      }
      server.stop();
      System.exit(0);
    }
  }
}
